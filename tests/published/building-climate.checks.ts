import {
  energySignature,
  erbsDegreeDays,
  erbsSpread,
  monthlyLoads,
  runFractions,
  schoenauKehrigDegreeDays,
  type MonthRun,
} from '../../src/building/index.js';
import {
  celsius,
  fahrenheit,
  fahrenheitDays,
  fahrenheitDifference,
  kelvinDifference,
  kilowattHours,
  kilowatts,
  type Temperature,
  type TemperatureDifference,
} from '../../src/units/index.js';
import { loadFixture, type FixtureRow, type Tolerance } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { coolingLine, heatingLine } from './building-lines.js';

const weather = loadFixture('load-weather-checks');
const urbana = loadFixture('load-climate-normals-urbana');

const BASE = fahrenheit(65);
/** Erbs with the deviations of the US line, as the table was made. */
const urbanaMonth = (row: FixtureRow) =>
  erbsDegreeDays({
    base: BASE,
    meanOutdoor: fahrenheit(row.number('published_mean_F')),
    yearToYear: fahrenheitDifference(row.number('erbs_sigma_m_F')),
    days: row.number('days'),
  });
export const urbanaYear = (of: 'heating' | 'cooling'): number =>
  fahrenheitDays.of(sum(urbana.rows.map((row) => urbanaMonth(row)[of])) as ReturnType<typeof fahrenheitDays>);
/** The library's own way from the means alone. */
const urbanaMeans = urbana.rows.map((row) => fahrenheit(row.number('published_mean_F')));
const urbanaLoads = (mode: 'heating' | 'cooling') => {
  const line = { designLoad: kilowatts(10), indoor: fahrenheit(75), balancePoint: BASE };
  const signature =
    mode === 'heating'
      ? energySignature({ mode, form: 'anchored at design', designOutdoor: fahrenheit(0), ...line })
      : energySignature({ mode, designOutdoor: fahrenheit(92), ...line });
  return monthlyLoads({ signature, meanOutdoor: urbanaMeans });
};
export const urbanaDegreeDays = (mode: 'heating' | 'cooling', month: number): number =>
  fahrenheitDays.of(urbanaLoads(mode).months[month - 1]?.degreeDays ?? fahrenheitDays(Number.NaN));
/** Months in which the method misses the published degree days by more than is tolerated, and by how much [degF.d]; the tests hold it. */
export const URBANA_LEFT_OUT: Readonly<Record<'heating' | 'cooling', ReadonlyMap<number, number>>> = {
  heating: new Map([
    [6, 4.2],
    [7, 10.5],
    [8, 12],
  ]),
  cooling: new Map([
    [10, 3.7],
    [11, 2.6],
  ]),
};
/** Method less published degree days of a month [degF.d], and what is tolerated there. */
export function urbanaDisagreement(mode: 'heating' | 'cooling', month: number): { readonly off: number; readonly tolerated: number } {
  const column = mode === 'heating' ? 'published_HDD65F' : 'published_CDD65F';
  const { absolute = Number.NaN, relative = Number.NaN } = urbana.meta.columns[column]?.tolerance ?? {};
  const published = urbana.rows.find((row) => row.number('month') === month)?.number(column) ?? Number.NaN;
  return { off: urbanaDegreeDays(mode, month) - published, tolerated: Math.max(absolute, relative * published) };
}
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

// --- two weather years, hour by hour
const STATIONS = {
  'Chicago OHare TMY3': { heating: heatingLine(12, -20, 16), heater: 9, cooling: coolingLine(8, 33, 20), cooler: 9 },
  'Bologna TMYx': { heating: heatingLine(10, -4, 16), heater: 7, cooling: coolingLine(9, 34, 21), cooler: 8 },
} as const;
type Station = keyof typeof STATIONS;
const stationOf = (row: FixtureRow): Station => (row.text('station') === 'Bologna TMYx' ? 'Bologna TMYx' : 'Chicago OHare TMY3');
const rowsOf = (station: Station): readonly FixtureRow[] => weather.rows.filter((row) => row.text('station') === station);
const hourlyYear = (station: Station, mode: 'heating' | 'cooling') => {
  const rows = rowsOf(station);
  const meanOutdoor = rows.map((row) => celsius(row.number('mean_C')));
  const spread = rows.map((row) => kelvinDifference(row.number('sigma_hourly_K')));
  const { heater, cooler, ...lines } = STATIONS[station];
  const loads = monthlyLoads({ signature: lines[mode], meanOutdoor, spread });
  return { loads, run: runFractions({ loads, capacity: kilowatts(mode === 'heating' ? heater : cooler) }) };
};
const monthOf = (row: FixtureRow, mode: 'heating' | 'cooling'): MonthRun => {
  const run = hourlyYear(stationOf(row), mode).run.months[row.number('month') - 1];
  if (run === undefined) throw new Error('no such month');
  return run;
};
const weatherLabel = (row: FixtureRow): string => `${row.text('station')} month ${row.text('month')}`;
const fromWeather = (column: string, quantity: string, compute: (row: FixtureRow) => number, where: (row: FixtureRow) => boolean = () => true) =>
  fromFixture(weather, { id: `LD-weather ${column}`, room: 'building', quantity, column, label: weatherLabel, compute, where });
/** Months that a loop may be sized by; in others the method is not stated to hold (see the tests of run fractions). */
const inSeason =
  (column: string) =>
  (row: FixtureRow): boolean =>
    row.number(column) >= 0.1;
const base16 = (row: FixtureRow, spread: number): number =>
  schoenauKehrigDegreeDays({
    base: celsius(16),
    meanOutdoor: celsius(row.number('mean_C')),
    spread: kelvinDifference(spread),
    days: row.number('days'),
  }).heating;
const erbsOf = (row: FixtureRow): number => {
  const means = rowsOf(stationOf(row)).map((each): Temperature => celsius(each.number('mean_C')));
  const yearToYear: TemperatureDifference = erbsSpread(means).yearToYear[row.number('month') - 1] ?? kelvinDifference(Number.NaN);
  return erbsDegreeDays({ base: celsius(16), meanOutdoor: celsius(row.number('mean_C')), yearToYear, days: row.number('days') }).heating;
};

const year = (
  id: string,
  quantity: string,
  unit: string,
  of: { source: string; seen: PublishedCheck['seen'] },
  tolerance: Tolerance,
  values: readonly (readonly [label: string, expected: number, compute: () => number])[],
): PublishedCheck => ({
  id,
  room: 'building',
  quantity,
  unit,
  ...of,
  tolerance,
  values: values.map(([label, expected, compute]) => ({ label, expected, compute })),
});
const HOURS = { source: `${weather.meta.source} (${weather.meta.at})`, seen: 'computed independently' } as const;
const NORMALS = { source: urbana.meta.source, seen: 'original' } as const;
/** The columns of Erbs’ method, which stand beside the normals and were computed outside this library. */
const besideNormals = (of: Parameters<typeof fromFixture>[1]): PublishedCheck => ({ ...fromFixture(urbana, of), seen: 'computed independently' });
const EACH = Object.keys(STATIONS).map((name): Station => (name === 'Bologna TMYx' ? name : 'Chicago OHare TMY3'));
const hoursOf = (station: Station, column: string): number => sum(rowsOf(station).map((row) => row.number(column)));

/** Months whose cold end is long enough to weigh in a year. */
const unmetMonths = weather.rows.filter((row) => row.number('aux_kWh_hourly') >= 100);
const unmetOf = (row: FixtureRow): number => kilowattHours.of(monthOf(row, 'heating').unmetEnergy);
/** The month among them that is missed by more than is stated, as a share of the hourly sum; the tests hold it. */
export const UNMET_LEFT_OUT = { month: 'Chicago OHare TMY3 month 2', off: -0.289 } as const;
export const unmetDisagreement = (label: string): number => {
  const row = unmetMonths.find((each) => weatherLabel(each) === label);
  return row === undefined ? Number.NaN : unmetOf(row) / row.number('aux_kWh_hourly') - 1;
};

export const climateLoadChecks: readonly PublishedCheck[] = [
  besideNormals({
    id: 'LD-Urbana Erbs heating',
    room: 'building',
    quantity: 'Erbs heating degree days by month',
    column: 'erbs_HDD65F',
    label: (row) => `month ${row.text('month')}`,
    compute: (row) => fahrenheitDays.of(urbanaMonth(row).heating),
  }),
  besideNormals({
    id: 'LD-Urbana Erbs cooling',
    room: 'building',
    quantity: 'Erbs cooling degree days by month',
    column: 'erbs_CDD65F',
    label: (row) => `month ${row.text('month')}`,
    compute: (row) => fahrenheitDays.of(urbanaMonth(row).cooling),
  }),
  besideNormals({
    id: 'LD-Urbana deviation',
    room: 'building',
    quantity: 'year-to-year deviation of the monthly mean',
    column: 'erbs_sigma_m_F',
    label: (row) => `month ${row.text('month')}`,
    compute: (row) => fahrenheitDifference.of(erbsSpread(urbanaMeans).yearToYear[row.number('month') - 1] ?? kelvinDifference(Number.NaN)),
  }),
  fromFixture(urbana, {
    id: 'LD-Urbana heating',
    room: 'building',
    quantity: 'published heating degree days by month',
    column: 'published_HDD65F',
    where: (row) => !URBANA_LEFT_OUT.heating.has(row.number('month')),
    label: (row) => `month ${row.text('month')}`,
    compute: (row) => urbanaDegreeDays('heating', row.number('month')),
  }),
  fromFixture(urbana, {
    id: 'LD-Urbana cooling',
    room: 'building',
    quantity: 'published cooling degree days by month',
    column: 'published_CDD65F',
    where: (row) => !URBANA_LEFT_OUT.cooling.has(row.number('month')),
    label: (row) => `month ${row.text('month')}`,
    compute: (row) => urbanaDegreeDays('cooling', row.number('month')),
  }),
  year(
    'LD-Urbana year, heating',
    'published heating degree days of the year',
    'degF.d',
    NORMALS,
    { relative: 0.05, reason: 'what this library asks of the method over a heating year; its authors’ own figure was not read' },
    [['1981–2010', 5878, () => fahrenheitDays.of(urbanaLoads('heating').degreeDays)]],
  ),
  year(
    'LD-Urbana year, cooling',
    'published cooling degree days of the year',
    'degF.d',
    NORMALS,
    { relative: 0.1, reason: 'what this library asks of the method over a cooling year; its authors’ own figure was not read' },
    [['1981–2010', 1016, () => fahrenheitDays.of(urbanaLoads('cooling').degreeDays)]],
  ),
  fromWeather('HDD_normal_sigma_d', 'degree days, normal, spread of days', (row) => base16(row, row.number('sigma_daily_mean_K'))),
  fromWeather('HDD_normal_sigma_h', 'degree days, normal, spread of hours', (row) => base16(row, row.number('sigma_hourly_K'))),
  fromWeather('HDD_erbs', 'degree days after Erbs', erbsOf),
  fromWeather('aux_kWh_normal', 'unmet heat, closed form', (row) => kilowattHours.of(monthOf(row, 'heating').unmetEnergy)),
  fromWeather('F_heat_normal', 'heating run fraction, closed form', (row) => monthOf(row, 'heating').runFraction),
  fromWeather('F_cool_normal', 'cooling run fraction, closed form', (row) => monthOf(row, 'cooling').runFraction),
  fromWeather('F_heat_hourly', 'heating run fraction hour by hour', (row) => monthOf(row, 'heating').runFraction, inSeason('F_heat_hourly')),
  fromWeather('F_cool_hourly', 'cooling run fraction hour by hour', (row) => monthOf(row, 'cooling').runFraction, inSeason('F_cool_hourly')),
  year(
    'LD-weather year',
    'heat of a year hour by hour',
    'kWh',
    HOURS,
    { relative: 0.005, reason: 'stated error of the normal form with the spread of hours' },
    [
      ...EACH.map(
        (station) => [station, hoursOf(station, 'heat_load_kWh'), () => kilowattHours.of(hourlyYear(station, 'heating').loads.energy)] as const,
      ),
    ],
  ),
  year(
    'LD-weather auxiliary',
    'unmet heat hour by hour, of a year and of months with 100 kWh or more',
    'kWh',
    HOURS,
    { relative: 0.25, reason: 'error stated beside the function: the cold end of real weather is not normal' },
    [
      ...unmetMonths
        .filter((row) => weatherLabel(row) !== UNMET_LEFT_OUT.month)
        .map((row) => [weatherLabel(row), row.number('aux_kWh_hourly'), () => unmetOf(row)] as const),
      ...EACH.map(
        (station) => [station, hoursOf(station, 'aux_kWh_hourly'), () => kilowattHours.of(hourlyYear(station, 'heating').run.unmetEnergy)] as const,
      ),
    ],
  ),
];
