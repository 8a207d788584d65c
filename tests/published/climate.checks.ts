import {
  type AnnualWaveFit,
  fitAnnualWave,
  groundTemperature,
  type GroundTemperatureRange,
  groundTemperatureRange,
  groundWave,
  meanTemperatureOverDepth,
  meanTemperatureOverTime,
  type SurfaceFilmWave,
  type SurfaceKnowledge,
  surfaceWaveThroughFilm,
} from '../../src/climate/index.js';
import type { AnnualWave } from '../../src/states/index.js';
import {
  celsius,
  type DayOfYear,
  dayOfYear,
  days,
  type Diffusivity,
  fahrenheit,
  fahrenheitDifference,
  feet,
  kelvinDifference,
  metres,
  ratio,
  squareFeetPerDay,
  squareFeetPerHour,
  squareMetresPerDay,
  squareMetresPerSecond,
  wattsPerMetreKelvin,
  wattsPerSquareMetreKelvin,
} from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { frostChecks } from './climate-frost.checks.js';
import { weatherYearChecks } from './climate-year.checks.js';

const cases = loadFixture('ground-temperature-cases');
const extremes = loadFixture('ground-temperature-extremes');
const swing = loadFixture('ground-temperature-swing');
const means = loadFixture('ground-temperature-means');
const film = loadFixture('ground-temperature-film');
const months = loadFixture('ground-temperature-epw-monthly');
const header = loadFixture('ground-temperature-epw-header');
const records = loadFixture('ground-temperature-records');
const fromAir = loadFixture('ground-temperature-from-air');

/** The tables count the days elapsed since 1 January 00:00; the day of year is one more. */
const elapsed = (t: number): DayOfYear => dayOfYear(t + 1);

const surface = (mean: number, amplitude: number, t0: number, period = 365): AnnualWave => ({
  of: 'ground surface',
  mean: celsius(mean),
  amplitude: kelvinDifference(amplitude),
  coldestDay: elapsed(t0),
  period: days(period),
});

function pointOf(row: FixtureRow): number {
  const second = row.has('A2_C') ? { amplitude: kelvinDifference(row.number('A2_C')), coldestDay: elapsed(row.number('t02_day')) } : undefined;
  return groundTemperature({
    wave: surface(row.number('Tm_C'), row.number('A_C'), row.number('t0_day'), row.number('period_day')),
    ...(second === undefined ? {} : { secondHarmonic: second }),
    diffusivity: squareMetresPerDay(row.number('alpha_m2_per_day')),
    depth: metres(row.number('z_m')),
    day: elapsed(row.number('t_day')),
  });
}

const US_WAVE: AnnualWave = { ...surface(0, 0, 33), mean: fahrenheit(55), amplitude: fahrenheitDifference(23) };

const rangeOf = (row: FixtureRow): GroundTemperatureRange =>
  groundTemperatureRange({
    wave: surface(row.number('Tm_C'), row.number('A_C'), row.number('t0_day'), row.number('period_day')),
    diffusivity: squareMetresPerDay(row.number('alpha_m2_day')),
    depth: metres(row.number('z_m')),
  });

const EXTREMES: Readonly<Record<string, (range: GroundTemperatureRange) => number>> = {
  damping_depth_m: ({ dampingDepth }) => dampingDepth,
  amplitude_C: ({ amplitude }) => amplitude,
  Tmin_C: ({ lowest }) => lowest,
  tmin_day: ({ coldestDay }) => coldestDay - 1,
  Tmax_C: ({ highest }) => highest,
  tmax_day: ({ warmestDay }) => warmestDay - 1,
  lag_day: ({ lag }) => days.of(lag),
};

const swingOf = (row: FixtureRow): GroundTemperatureRange =>
  groundTemperatureRange({
    wave: surface(10, 12, 35),
    diffusivity: squareMetresPerSecond(row.number('alpha_m2_s')),
    depth: metres(row.number('z_m')),
  });

const SWING: Readonly<Record<string, (row: FixtureRow) => number>> = {
  damping_depth_m: (row) => swingOf(row).dampingDepth,
  amplitude_ratio: (row) => swingOf(row).amplitudeRatio,
  lag_day: (row) => days.of(swingOf(row).lag),
  alpha_ft2_day: (row) => squareFeetPerDay.of(squareMetresPerSecond(row.number('alpha_m2_s'))),
};

function meanOf(row: FixtureRow): number {
  const wave = surface(row.number('Tm_C'), row.number('A_C'), row.number('t0_day'));
  const diffusivity = squareMetresPerDay(row.number('alpha_m2_day'));
  const [top, start] = [metres(row.number('z1_m')), elapsed(row.number('t1_day'))];
  return row.text('form') === 'slab'
    ? meanTemperatureOverDepth({ wave, diffusivity, top, bottom: metres(row.number('z2_m')), day: start })
    : meanTemperatureOverTime({ wave, diffusivity, depth: top, start, end: elapsed(row.number('t2_day')) });
}

/** What the header of a weather file holds: the wave of the air, 0.6 rad late, averaged from the surface to the labelled depth. */
const headerOf = (row: FixtureRow): number =>
  meanTemperatureOverDepth({
    wave: surface(row.number('monthly_mean_C'), row.number('half_range_C'), row.number('shift_day') + (0.6 * 365) / (2 * Math.PI)),
    diffusivity: squareFeetPerHour(0.025),
    top: metres(0),
    bottom: metres(row.number('depth_label_m')),
    day: elapsed(row.number('day')),
  });

const filmOf = (row: FixtureRow): SurfaceFilmWave =>
  surfaceWaveThroughFilm({
    air: { ...surface(10, 12, 35), of: 'air' },
    coefficient: wattsPerSquareMetreKelvin(row.number('h')),
    conductivity: wattsPerMetreKelvin(row.number('k')),
    diffusivity: squareMetresPerDay(row.number('alpha_m2_day')),
  });

const MONTHS = ['01', '02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12'];

/** The fit through the monthly means of a weather file. */
export const fitOf = (row: FixtureRow): AnnualWaveFit =>
  fitAnnualWave({ of: 'air', monthlyMeans: MONTHS.map((month) => celsius(row.number(`m${month}_C`))) });

/** What a month of mean length leaves of a sine. */
const SHAVED = Math.sin(Math.PI / 12) / (Math.PI / 12);

const FITS: Readonly<Record<string, (fit: AnnualWaveFit) => number>> = {
  mean_average_C: ({ wave }) => wave.mean,
  A_average_C: ({ wave }) => wave.amplitude,
  t0_average_day: ({ wave }) => wave.coldestDay - 1,
  s_average_C: ({ residualDeviation }) => residualDeviation,
  se_mean_average: ({ standardErrors }) => standardErrors.mean,
  se_A_average: ({ standardErrors }) => standardErrors.amplitude,
  se_t0_average: ({ standardErrors }) => days.of(standardErrors.coldestDay),
  weighted_mean_C: ({ weightedMean }) => weightedMean,
  mean_monthfit_C: ({ wave }) => wave.mean,
  A_monthfit_C: ({ wave }) => wave.amplitude * SHAVED,
  t0_monthfit_day: ({ wave }) => wave.coldestDay - 1,
};

/** The sine through all hours of a file, which the twelve means must come to within the standard error that the table states for the fit. */
const AGAINST_HOURS = [
  ['mean', 'mean_C', 'se_mean_average', ({ wave }: AnnualWaveFit) => wave.mean],
  ['amplitude', 'A_hourlyfit_C', 'se_A_average', ({ wave }: AnnualWaveFit) => wave.amplitude],
  ['coldest day', 't0_hourlyfit_day', 'se_t0_average', ({ wave }: AnnualWaveFit) => wave.coldestDay - 1],
] as const;
const STATED = 'one standard error of the fit through twelve means, as stated in the table by another program';
const againstHours: PublishedCheck = {
  id: 'GT-hours',
  room: 'climate',
  quantity: 'wave through twelve monthly means against the sine through 8760 hours',
  unit: 'K or d',
  source: `${months.meta.source} (${months.meta.at})`,
  seen: 'computed independently',
  tolerance: { absolute: 0, reason: STATED },
  values: months.rows.flatMap((row) =>
    AGAINST_HOURS.map(([what, column, error, of]) => ({
      label: `${row.text('file')} ${what}`,
      expected: row.number(column),
      compute: () => of(fitOf(row)),
      tolerance: { absolute: row.number(error), reason: STATED },
    })),
  ),
};

const NONE: SurfaceKnowledge = { meanOffset: kelvinDifference(0), amplitudeRatio: ratio(1), lag: days(0) };
const KNOWLEDGE: Readonly<Record<string, SurfaceKnowledge>> = { none: NONE, grass: {}, 'lasting snow': { cover: 'lasting snow' } };

/** How far the ground computed from the air alone lies from the measured, root mean square [K]. */
function missed(row: FixtureRow, column: string, depth: number): number {
  const { wave } = groundWave({
    from: 'air-wave',
    mean: celsius(row.number('air_mean_C')),
    amplitude: kelvinDifference(row.number('air_A_C')),
    coldestDay: elapsed(row.number('air_t0_day')),
    period: days(365.25),
    ...KNOWLEDGE[row.text('offsets')],
  });
  const diffusivity: Diffusivity = squareMetresPerDay(0.05);
  const squares = records.rows
    .filter((day) => day.text('station') === row.text('station') && day.has(column))
    .map((day) => {
      const noon = dayOfYear(day.number('day_of_record') + 0.5);
      return (groundTemperature({ wave, diffusivity, depth: metres(depth), day: noon }) - day.number(column)) ** 2;
    });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

const room = 'climate';
const caseOf = (row: FixtureRow): string => `${row.text('case')}, ${row.text('z_m')} m`;

/** Outside checks of the climate room. */
export const climateChecks: readonly PublishedCheck[] = [
  fromFixture(cases, {
    id: 'GT-point',
    room,
    quantity: 'ground temperature at a depth and day',
    column: 'T_C',
    label: (row) => row.text('id'),
    compute: pointOf,
  }),
  fromFixture(cases, {
    id: 'GT-point-us',
    room,
    quantity: 'ground temperature from US units: 55 °F, 23 °F, 0.62 ft2/d, depths in feet',
    column: 'T_C',
    where: (row) => row.text('case').startsWith('IP input: Tm 55F'),
    label: (row) => row.text('id'),
    compute: (row) =>
      groundTemperature({
        wave: US_WAVE,
        diffusivity: squareFeetPerDay(0.62),
        depth: feet(Math.round(row.number('z_m') / 0.3048)),
        day: elapsed(row.number('t_day')),
      }),
  }),
  ...Object.entries(EXTREMES).map(([column, of]) =>
    fromFixture(extremes, {
      id: `GT-${column}`,
      room,
      quantity: `extremes at depth: ${column}`,
      column,
      label: caseOf,
      compute: (row) => of(rangeOf(row)),
    }),
  ),
  ...Object.entries(SWING).map(([column, compute]) =>
    fromFixture(swing, {
      id: `GT-swing-${column}`,
      room,
      quantity: `swing at depth: ${column}`,
      column,
      label: (row) => `${row.text('alpha_m2_s')} m2/s, ${row.text('z_m')} m`,
      compute,
    }),
  ),
  fromFixture(means, {
    id: 'GT-means',
    room,
    quantity: 'mean over a slab, mean over a season',
    column: 'T_C',
    label: (row) => `${row.text('form')} line ${String(row.line)}`,
    compute: meanOf,
  }),
  fromFixture(header, {
    id: 'GT-header',
    room,
    quantity: 'slab mean against the ground line of weather files',
    column: 'header_C',
    label: (row) => `${row.text('file')} ${row.text('depth_label_m')} m, month ${row.text('month')}`,
    compute: headerOf,
  }),
  ...(['ratio', 'lag_day'] as const).map((column) =>
    fromFixture(film, {
      id: `GT-film-${column}`,
      room,
      quantity: `wave below a film: ${column}`,
      column,
      label: (row) => `k ${row.text('k')}, h ${row.text('h')}`,
      compute: (row) => (column === 'ratio' ? filmOf(row).amplitudeRatio : days.of(filmOf(row).lag)),
    }),
  ),
  ...Object.entries(FITS).map(([column, of]) =>
    fromFixture(months, {
      id: `GT-${column}`,
      room,
      quantity: `wave through twelve monthly means: ${column}`,
      column,
      label: (row) => row.text('file'),
      compute: (row) => of(fitOf(row)),
    }),
  ),
  againstHours,
  ...weatherYearChecks,
  ...frostChecks,
  ...(
    [
      ['rms_050cm_K', 'soil_050cm_C', 0.5],
      ['rms_100cm_K', 'soil_100cm_C', 1],
    ] as const
  ).map(([column, measured, depth]) =>
    fromFixture(fromAir, {
      id: `GT-${column}`,
      room,
      quantity: `error of the ground computed from the air against daily records, ${String(depth)} m`,
      column,
      label: (row) => `${row.text('station')}, offsets ${row.text('offsets')}`,
      compute: (row) => missed(row, measured, depth),
    }),
  ),
];
