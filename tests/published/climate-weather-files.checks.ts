import { fitAnnualWave, readWeatherFile, type WeatherFile } from '../../src/climate/index.js';
import { solveSymmetric } from '../../src/numerics/index.js';
import { FILE_NAMES, PUBLIC_FILES, type PublicFile, wholeYearOf } from '../climate/weather-texts.js';
import { type FixtureRow, loadFixture, type Tolerance } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const statistics = loadFixture('ground-temperature-epw-check');
const months = loadFixture('ground-temperature-epw-monthly');
const header = loadFixture('ground-temperature-epw-header');

const read = new Map<PublicFile, WeatherFile>();
function fileOf(name: PublicFile): WeatherFile {
  const known = read.get(name) ?? readWeatherFile({ text: wholeYearOf(name) });
  read.set(name, known);
  return known;
}
const fileNamed = (fileName: string): WeatherFile => fileOf(PUBLIC_FILES.find((each) => FILE_NAMES[each] === fileName) ?? 'chicago');

// The statistics are made from what was read with nothing of the library but its solver, so that a row read wrong shows.
const OMEGA = (2 * Math.PI) / 365;
const MIDDLES = [15.5, 45, 74.5, 105, 135.5, 166, 196.5, 227.5, 258, 288.5, 319, 349.5];
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const sum = (row: Iterable<number>): number => [...row].reduce((total, each) => total + each, 0);
const mean = (row: ArrayLike<number>): number => sum(Array.from(row)) / row.length;

interface Sine {
  readonly mean: number;
  readonly amplitude: number;
  readonly coldest: number;
  readonly rms: number;
  readonly second: { readonly amplitude: number; readonly coldest: number };
  readonly errors: { readonly mean: number; readonly amplitude: number; readonly coldest: number };
}

/** Least squares of one sine, or two, through points in time. */
function sineThrough(times: readonly number[], values: ArrayLike<number>, harmonics: 1 | 2): Sine {
  const rows = times.map((t) =>
    [1, Math.cos(OMEGA * t), Math.sin(OMEGA * t), Math.cos(2 * OMEGA * t), Math.sin(2 * OMEGA * t)].slice(0, 1 + 2 * harmonics),
  );
  const size = Array.from({ length: 1 + 2 * harmonics }, (_, index) => index);
  const normal = size.map((i) => size.map((j) => rows.reduce((total, row) => total + (row[i] ?? 0) * (row[j] ?? 0), 0)));
  const found = solveSymmetric(
    normal,
    size.map((i) => rows.reduce((total, row, at) => total + (row[i] ?? 0) * (values[at] ?? 0), 0)),
  );
  const square = rows.reduce((total, row, at) => total + ((values[at] ?? 0) - row.reduce((s, each, i) => s + each * (found[i] ?? 0), 0)) ** 2, 0);
  const [level = 0, c = 0, s = 0, c2 = 0, s2 = 0] = found;
  const amplitude = Math.hypot(c, s);
  const wrap = (t: number, period: number): number => ((t % period) + period) % period;
  const deviation = Math.sqrt(square / (times.length - 3));
  const error = (gradient: readonly number[]): number =>
    deviation * Math.sqrt(solveSymmetric(normal, gradient).reduce((total, each, i) => total + each * (gradient[i] ?? 0), 0));
  return {
    mean: level,
    amplitude,
    coldest: wrap(Math.atan2(-s, -c) / OMEGA, 365),
    rms: Math.sqrt(square / times.length),
    second: { amplitude: Math.hypot(c2, s2), coldest: wrap(Math.atan2(-s2, -c2) / (2 * OMEGA), 182.5) },
    errors: {
      mean: error([1, 0, 0]),
      amplitude: error([0, c / amplitude, s / amplitude]),
      coldest: error([0, -s / amplitude, c / amplitude]) / (amplitude * OMEGA),
    },
  };
}

const hourly = (harmonics: 1 | 2): ((file: WeatherFile) => Sine) => {
  const times = Array.from({ length: 8760 }, (_, hour) => (hour + 0.5) / 24);
  return ({ temperatures }) => sineThrough(times, temperatures, harmonics);
};
const monthly = ({ monthlyMeans }: WeatherFile): Sine => sineThrough(MIDDLES, monthlyMeans, 1);
const daysOf = ({ temperatures }: WeatherFile): readonly Float64Array[] =>
  Array.from({ length: 365 }, (_, day) => temperatures.subarray(24 * day, 24 * day + 24));
const below = (base: number, row: Iterable<number>): number => sum([...row].map((each) => Math.max(0, base - each)));
const daily = (file: WeatherFile): readonly number[] => daysOf(file).map(mean);
const middles = (file: WeatherFile): readonly number[] => daysOf(file).map((day) => (Math.min(...day) + Math.max(...day)) / 2);

/** The value that a share of the sorted hours lies below, linear between two. */
function percentile({ temperatures }: WeatherFile, share: number): number {
  const sorted = Float64Array.from(temperatures).sort();
  const at = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(at)] ?? Number.NaN, sorted[Math.ceil(at)] ?? Number.NaN];
  return low + (high - low) * (at - Math.floor(at));
}
const ranked = ({ temperatures }: WeatherFile, rank: number): number => Float64Array.from(temperatures).sort()[rank - 1] ?? Number.NaN;

/** From the highest point of the running sum down to the lowest after it, the year beginning in July so that a winter is whole. */
function fall(steps: readonly number[], start: number): number {
  let [total, highest, largest] = [0, 0, 0];
  for (const step of [...steps.slice(start), ...steps.slice(0, start)]) {
    total += step;
    highest = Math.max(highest, total);
    largest = Math.max(largest, highest - total);
  }
  return largest;
}
const perMonth = ({ monthlyMeans }: WeatherFile): readonly number[] => monthlyMeans.map((each, month) => each * (MONTH_DAYS[month] ?? 0));
const designAt = ({ header: { designConditions } }: WeatherFile, share: number): number =>
  designConditions[0]?.heating.find(({ exceeded }) => exceeded === share)?.temperature ?? Number.NaN;

const STATISTICS: Readonly<Record<string, (file: WeatherFile) => number>> = {
  n_hours: ({ temperatures }) => temperatures.length,
  mean_C: (file) => file.mean,
  min_C: (file) => file.lowest,
  max_C: (file) => file.highest,
  A_hourlyfit_C: (file) => hourly(1)(file).amplitude,
  t0_hourlyfit_day: (file) => hourly(1)(file).coldest,
  rms_hourlyfit_C: (file) => hourly(1)(file).rms,
  A2_C: (file) => hourly(2)(file).second.amplitude,
  t02_day: (file) => hourly(2)(file).second.coldest,
  rms_2harm_C: (file) => hourly(2)(file).rms,
  mean_monthfit_C: (file) => monthly(file).mean,
  A_monthfit_C: (file) => monthly(file).amplitude,
  t0_monthfit_day: (file) => monthly(file).coldest,
  rms_monthfit_C: (file) => monthly(file).rms,
  se_mean_monthfit: (file) => monthly(file).errors.mean,
  se_A_monthfit: (file) => monthly(file).errors.amplitude,
  se_t0_monthfit: (file) => monthly(file).errors.coldest,
  mean_of_12_months_C: ({ monthlyMeans }) => mean(monthlyMeans),
  'HDD18.3_24hmean_Cday': (file) => below(18.3, daily(file)),
  HDD65F_24hmean_Fday: (file) => 1.8 * below(55 / 3, daily(file)),
  'HDD18.3_maxmin_Cday': (file) => below(18.3, middles(file)),
  'HDH18.3_over24_Cday': ({ temperatures }) => below(18.3, temperatures) / 24,
  HDD18_24hmean_Cday: (file) => below(18, daily(file)),
  'DB99.6_linear': (file) => percentile(file, 0.004),
  'DB99.6_rank36': (file) => ranked(file, 36),
  DB99_linear: (file) => percentile(file, 0.01),
  DB99_rank88: (file) => ranked(file, 88),
  'header_99.6_DB': (file) => designAt(file, 0.996),
  header_99_DB: (file) => designAt(file, 0.99),
  FI_cumulative_daily_Cday: (file) => fall(daily(file), 181),
  FI_sum_negative_daily_Cday: (file) => below(0, daily(file)),
  FI_cumulative_monthly_Cday: (file) => fall(perMonth(file), 6),
  FI_sum_negative_monthly_Cday: (file) => below(0, perMonth(file)),
};

const reason = 'half a unit of the last printed digit; how many digits are printed differs from row to row and is read off the cell';
/** Half a unit of the last digit that a cell prints, and the rounding of a sum. */
const half = (cell: string): number => 0.5 * 10 ** -(cell.split('.')[1]?.length ?? 0) + 1e-9;
const place = (row: FixtureRow): string => row.text('quantity');
/** What is counted or stands in the header is read and nothing more. */
const isRead = (row: FixtureRow): boolean => /^(?:header_|n_hours)/u.test(place(row));
const toleranceOf = (row: FixtureRow, file: PublicFile): Tolerance =>
  isRead(row) ? { absolute: 0, reason: 'read, not computed' } : { absolute: half(row.text(FILE_NAMES[file])), reason };

const statisticChecks: readonly PublishedCheck[] = statistics.rows.map((row) => ({
  id: `GT-file-${place(row)}`,
  room: 'climate',
  quantity: `weather file read: ${place(row)}`,
  unit: 'as named',
  source: `${statistics.meta.source} (${statistics.meta.at})`,
  seen: statistics.meta.seen,
  tolerance: toleranceOf(row, 'chicago'),
  values: PUBLIC_FILES.filter((file) => row.has(FILE_NAMES[file])).map((file) => ({
    label: `${place(row)} ${file}`,
    expected: row.number(FILE_NAMES[file]),
    compute: () => STATISTICS[place(row)]?.(fileOf(file)) ?? Number.NaN,
    tolerance: toleranceOf(row, file),
  })),
}));

const FIT = 'the minimiser and the average over 744 hourly values instead of the integral, and means printed to 1e-4';

/** Outside checks of the readers of weather files. */
export const weatherFileChecks: readonly PublishedCheck[] = [
  ...statisticChecks,
  {
    id: 'GT-file-months',
    room: 'climate',
    quantity: 'monthly means of weather files',
    unit: 'degC',
    source: `${months.meta.source} (${months.meta.at})`,
    seen: months.meta.seen,
    tolerance: { absolute: 5.1e-5, reason: 'half a unit of the last printed digit' },
    values: months.rows.flatMap((row) =>
      MIDDLES.map((_, month) => ({
        label: `${row.text('file')} month ${String(month + 1)}`,
        expected: row.number(`m${String(month + 1).padStart(2, '0')}_C`),
        compute: () => fileNamed(row.text('file')).monthlyMeans[month] ?? Number.NaN,
      })),
    ),
  },
  {
    id: 'GT-file-wave',
    room: 'climate',
    quantity: 'amplitude of the wave through the monthly means of a file read',
    unit: 'K',
    source: `${months.meta.source} (${months.meta.at})`,
    seen: months.meta.seen,
    tolerance: { absolute: 1e-4, reason: FIT },
    values: months.rows.map((row) => ({
      label: row.text('file'),
      expected: row.number('A_average_C'),
      compute: () => fitAnnualWave({ of: 'air', monthlyMeans: fileNamed(row.text('file')).monthlyMeans }).wave.amplitude,
    })),
  },
  fromFixture(header, {
    id: 'GT-file-header',
    room: 'climate',
    quantity: 'ground line of a weather file rebuilt from its own hours',
    column: 'header_C',
    label: (row) => `${row.text('file')} ${row.text('depth_label_m')} m, month ${row.text('month')}`,
    compute: (row) =>
      fileNamed(row.text('file')).groundHeaders.find(({ depth }) => depth === row.number('depth_label_m'))?.rebuilt[row.number('month') - 1] ??
      Number.NaN,
  }),
];
