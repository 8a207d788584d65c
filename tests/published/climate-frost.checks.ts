import {
  berggrenCoefficient,
  computedFrostDepth,
  type ComputedFrostDepth,
  coveredSurface,
  degreeDays,
  designTemperatures,
  exceededTemperature,
  freezingIndex,
  type FrostSurface,
  monthlyDegreeDays,
  monthlyFreezingIndex,
  nFactors,
  stefanFrostDepth,
  sturmSnowConductivity,
  type SurfaceOffsets,
} from '../../src/climate/index.js';
import { latentHeat } from '../../src/soil/index.js';
import {
  btuPerCubicFoot,
  btuPerCubicFootFahrenheit,
  btuPerHourFootFahrenheit,
  celsius,
  dayOfYear,
  days,
  fahrenheit,
  fahrenheitDays,
  feet,
  fraction,
  hours,
  joulesPerCubicMetre,
  kelvinDays,
  kelvinDifference,
  kilogramsPerCubicMetre,
  metres,
  dryBasisPercent,
  poundsPerCubicFoot,
  ratio,
  squareMetresPerDay,
  type Temperature,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { type FixtureRow, loadFixture, type Tolerance } from '../support/fixture.js';
import { fromFixture, type PublishedCheck, type PublishedValue } from '../support/published.js';

const dryBulbs = loadFixture('weather-dry-bulbs');
const statistics = loadFixture('ground-temperature-epw-check');
const months = loadFixture('ground-temperature-epw-monthly');
const sums = loadFixture('load-weather-checks');
const coefficients = loadFixture('frost-berggren');
const depths = loadFixture('frost-stefan');
const manual = loadFixture('frost-manual');
const factors = loadFixture('frost-n-factors');
const film = loadFixture('snow-film');
const surfaces = loadFixture('ground-temperature-soil-jointfit');

const room = 'climate';
const FILES = Object.keys(dryBulbs.meta.columns).filter((column) => column !== 'hour');
const bulbs = new Map<string, readonly Temperature[]>(FILES.map((file) => [file, dryBulbs.rows.map((row) => celsius(row.number(file)))]));
const hourly = (file: string): { temperatures: readonly Temperature[]; step: ReturnType<typeof hours> } => ({
  temperatures: bulbs.get(file) ?? [],
  step: hours(1),
});

const base = celsius(18.3);
const MONTHS = ['01', '02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12'];
const monthlyMeans = (file: string): readonly Temperature[] => {
  const row = months.rows.find((each) => each.text('file') === file);
  return MONTHS.map((month) => celsius(row?.number(`m${month}_C`) ?? NaN));
};
const shown = (absolute: number, reason = 'half a unit of the last printed digit'): Tolerance => ({ absolute, reason });

/** What each row of the table is, and how near it must come. */
const STATISTICS: Readonly<Record<string, readonly [of: (file: string) => number, tolerance?: Tolerance]>> = {
  'HDD18.3_24hmean_Cday': [(file) => degreeDays({ ...hourly(file), base }).heating],
  HDD65F_24hmean_Fday: [(file) => fahrenheitDays.of(degreeDays({ ...hourly(file), base: fahrenheit(65) }).heating)],
  'HDD18.3_maxmin_Cday': [(file) => degreeDays({ ...hourly(file), base, counting: 'daily extremes' }).heating],
  'HDH18.3_over24_Cday': [(file) => degreeDays({ ...hourly(file), base, counting: 'every step' }).heating],
  HDD18_24hmean_Cday: [(file) => degreeDays({ ...hourly(file), base: celsius(18) }).heating],
  'DB99.6_linear': [(file) => designTemperatures(hourly(file)).heating[0]?.temperature ?? NaN, shown(5.1e-5)],
  DB99_linear: [(file) => exceededTemperature({ ...hourly(file), exceeded: fraction(0.99) }), shown(5.1e-5)],
  min_C: [(file) => designTemperatures(hourly(file)).lowest, shown(0.051)],
  max_C: [(file) => designTemperatures(hourly(file)).highest, shown(0.051)],
  FI_cumulative_daily_Cday: [(file) => freezingIndex({ ...hourly(file), afterLast: 'first day' }).freezing.seasonIndex, shown(0.051)],
  FI_sum_negative_daily_Cday: [(file) => freezingIndex({ ...hourly(file), afterLast: 'first day' }).freezing.totalIndex, shown(0.051)],
  FI_cumulative_monthly_Cday: [(file) => monthlyFreezingIndex(monthlyMeans(file)).freezing.seasonIndex, shown(0.051)],
  FI_sum_negative_monthly_Cday: [(file) => monthlyFreezingIndex(monthlyMeans(file)).freezing.totalIndex, shown(0.051)],
};

const PRINTED = statistics.meta.columns[FILES[0] ?? '']?.tolerance ?? shown(0.0051);
const statisticChecks: readonly PublishedCheck[] = Object.entries(STATISTICS).map(([quantity, [of, tolerance = PRINTED]]) => ({
  id: `GT-${quantity}`,
  room,
  quantity: `weather year: ${quantity}`,
  unit: 'K.d, degF.d or degC',
  source: `${statistics.meta.source} (${statistics.meta.at})`,
  seen: statistics.meta.seen,
  tolerance,
  values: statistics.rows
    .filter((row) => row.text('quantity') === quantity)
    .flatMap((row) => FILES.map((file): PublishedValue => ({ label: file, expected: row.number(file), compute: () => of(file) }))),
}));

/** Sums of a station's twelve months, against the closed form with the spread of daily means. */
const stations = [...new Set(sums.rows.map((row) => row.text('station')))];
const ofStation = (station: string, column: string): readonly number[] =>
  sums.rows.filter((row) => row.text('station') === station).map((row) => row.number(column));
const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
const monthlyChecks: PublishedCheck = {
  id: 'GT-monthly-degree-days',
  room,
  quantity: 'degree days from monthly means and the spread of daily means',
  unit: 'K.d',
  source: `${sums.meta.source} (${sums.meta.at})`,
  seen: sums.meta.seen,
  tolerance: { absolute: 2.4e-4, reason: 'six printed digits of mean and spread, times the days of twelve months' },
  values: stations.map((station) => ({
    label: station,
    expected: total(ofStation(station, 'HDD_normal_sigma_d')),
    compute: () =>
      monthlyDegreeDays({
        monthlyMeans: ofStation(station, 'mean_C').map((mean) => celsius(mean)),
        spread: ofStation(station, 'sigma_daily_mean_K').map((spread) => kelvinDifference(spread)),
        base: celsius(16),
      }).heating,
  })),
};

const moisture = { basis: 'dry', value: dryBasisPercent(15) } as const;
const manualHeat = (): number => latentHeat({ dryDensity: poundsPerCubicFoot(100), moisture });
const manualWinter = { freezingIndex: fahrenheitDays(2500), duration: days(160), mean: fahrenheit(37.2) };
const manualGround = {
  thickness: feet(20),
  frozenConductivity: btuPerHourFootFahrenheit(0.72),
  latentHeat: btuPerCubicFoot(2160),
  heatCapacity: btuPerCubicFootFahrenheit(28.25),
};
const manualDepth = (): ComputedFrostDepth =>
  computedFrostDepth({ layers: [manualGround], surface: 'bare soil', nFactor: ratio(1), ...manualWinter });
const { frozenConductivity, latentHeat: heat } = manualGround;

const CHART = shown(0.0061, 'read off a chart to two digits, where 0.01 is the width of a line; exact 0.8956');
const MANUAL: Readonly<Record<string, readonly [of: () => number, tolerance?: Tolerance]>> = {
  'Stefan depth ft': [() => feet.of(stefanFrostDepth({ frozenConductivity, latentHeat: heat, ...manualWinter })), shown(5.1e-7)],
  'latent heat Btu/ft3': [
    () => btuPerCubicFoot.of(joulesPerCubicMetre(manualHeat())),
    shown(7, 'the manual rounds the heat of fusion to 144 Btu/lb, 334.9 against 334 kJ/kg'),
  ],
  'thermal ratio': [() => manualDepth().correction?.thermalRatio ?? NaN],
  'fusion parameter': [() => manualDepth().correction?.fusionParameter ?? NaN],
  'exact coefficient': [() => manualDepth().correction?.berggrenCoefficient ?? NaN, shown(5.1e-4, 'thermal ratio and fusion parameter not rounded')],
  'chart coefficient': [() => manualDepth().correction?.berggrenCoefficient ?? NaN, CHART],
  'depth ft': [
    () => feet.of(manualDepth().depth),
    shown(0.09, 'half a unit of the last printed digit, and the chart reading of 0.89 for 0.8956 in 6.32 ft'),
  ],
  'exact depth ft': [() => feet.of(manualDepth().depth)],
};
const byRow = (row: FixtureRow, of: readonly [of: () => number, tolerance?: Tolerance]): PublishedValue => ({
  label: row.text('quantity'),
  expected: row.number('value'),
  compute: of[0],
  ...(of[1] === undefined ? {} : { tolerance: of[1] }),
});
const manualCheck: PublishedCheck = {
  id: 'GT-frost-manual',
  room,
  quantity: 'worked example of the modified Berggren formula, US units',
  unit: 'by row',
  source: `${manual.meta.source} (${manual.meta.at})`,
  seen: manual.meta.seen,
  tolerance: manual.meta.columns['value']?.tolerance ?? shown(0),
  values: manual.rows.map((row) => byRow(row, MANUAL[row.text('quantity')] ?? [() => NaN])),
};

const snowConductivity = (): number => sturmSnowConductivity({ density: kilogramsPerCubicMetre(250) });
const FILM: Readonly<Record<string, readonly [of: () => number, tolerance?: Tolerance]>> = {
  'conductivity W/(m.K)': [snowConductivity, shown(5.1e-4)],
  'film W/(m2.K)': [() => snowConductivity() / 0.3, shown(0.051)],
  'added depth m': [() => (1.5 * 0.3) / snowConductivity()],
};
const filmCheck: PublishedCheck = {
  id: 'GT-snow-film',
  room,
  quantity: 'snow as a film on the ground',
  unit: 'by row',
  source: `${film.meta.source} (${film.meta.at})`,
  seen: film.meta.seen,
  tolerance: film.meta.columns['value']?.tolerance ?? shown(0),
  values: film.rows.map((row) => byRow(row, FILM[row.text('quantity')] ?? [() => NaN])),
};

/** Grass under the usual snow of the region, east-central Minnesota; none was measured at the station. */
export const SANDSTONE_SNOW = [0.2, 0.25, 0.15, 0.02, 0, 0, 0, 0, 0, 0, 0.03, 0.12].map((depth) => ({ depth: metres(depth) }));

/** The wave of the air of the snowy record. */
export const SANDSTONE_AIR = {
  of: 'air',
  mean: celsius(6.1249),
  amplitude: kelvinDifference(14.7873),
  coldestDay: dayOfYear(18.69),
  period: days(365.25),
} as const;

const snowy = (): SurfaceOffsets =>
  coveredSurface({
    air: SANDSTONE_AIR,
    cover: 'grass',
    snow: SANDSTONE_SNOW,
    conductivity: wattsPerMetreKelvin(1.5),
    diffusivity: squareMetresPerDay(0.05),
  }).offsets;
/** How near the surface below snow claims to come to the record; no snow was measured there, and the fit of one winter has no better mean. */
const CLAIM = 'what the surface below snow claims for this record, the usual snow of the region standing in for what was not measured';
const SNOWY = [
  ['Tm_minus_airmean_C', 0.1, () => snowy().meanOffset.estimate],
  ['A0_over_airA', 0.03, () => snowy().amplitudeRatio.estimate],
  ['t0_minus_air_t0_day', 1, () => days.of(snowy().lag.estimate)],
] as const;
const snowyCheck: PublishedCheck = {
  id: 'GT-snow-record',
  room,
  quantity: 'surface below snow against the air of one measured winter: mean, swing, lag',
  unit: 'K, 1, d',
  source: `${surfaces.meta.source} (${surfaces.meta.at})`,
  seen: surfaces.meta.seen,
  tolerance: shown(0, CLAIM),
  values: surfaces.rows
    .filter((row) => row.text('record').includes('Sandstone'))
    .flatMap((row) =>
      SNOWY.map(
        ([column, near, compute]): PublishedValue => ({ label: column, expected: row.number(column), compute, tolerance: shown(near, CLAIM) }),
      ),
    ),
};

/** Outside checks of degree days, frost and snow. */
export const frostChecks: readonly PublishedCheck[] = [
  ...statisticChecks,
  monthlyChecks,
  fromFixture(coefficients, {
    id: 'GT-berggren',
    room,
    quantity: 'coefficient of the modified Berggren formula',
    column: 'lambda',
    label: (row) => `thermal ratio ${row.text('thermal_ratio')}, fusion parameter ${row.text('fusion_parameter')}`,
    compute: (row) =>
      berggrenCoefficient({ thermalRatio: ratio(row.number('thermal_ratio')), fusionParameter: ratio(row.number('fusion_parameter')) }),
  }),
  fromFixture(depths, {
    id: 'GT-stefan',
    room,
    quantity: 'frost depth by Stefan',
    column: 'depth_m',
    label: (row) => row.text('case'),
    compute: (row) =>
      stefanFrostDepth({
        frozenConductivity: wattsPerMetreKelvin(row.number('k_W_mK')),
        latentHeat: joulesPerCubicMetre(row.number('L_J_m3')),
        freezingIndex: kelvinDays(row.number('FI_Cd')),
        nFactor: ratio(row.number('n')),
      }),
  }),
  manualCheck,
  ...(
    [
      ['freezing', 'freezingFactor'],
      ['thawing_low', 'thawingFactorLow'],
      ['thawing_high', 'thawingFactorHigh'],
    ] as const
  ).map(([column, key]) =>
    fromFixture(factors, {
      id: `GT-n-${column}`,
      room,
      quantity: `n-factor, ${column}`,
      column,
      label: (row) => row.text('surface'),
      compute: (row) => nFactors(row.text('surface') as FrostSurface)[key] ?? NaN,
    }),
  ),
  filmCheck,
  snowyCheck,
];
