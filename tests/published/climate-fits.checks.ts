import {
  diffusivityFromAmplitudes,
  diffusivityFromLags,
  diffusivityFromQuarters,
  fitGroundProbe,
  fitWaveSeries,
  groundTemperature,
  groundTemperatureRange,
  type GroundProbeFit,
  type GroundReading,
  type WaveSeriesFit,
} from '../../src/climate/index.js';
import {
  celsius,
  dayOfYear,
  days,
  type Diffusivity,
  kelvinDifference,
  metres,
  squareMetresPerDay,
  squareMetresPerSecond,
} from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck, type PublishedValue } from '../support/published.js';
import { soilRecord } from '../support/soil-records.js';

const YEAR = days(365.25);
const room = 'climate';

const depthFit = loadFixture('ground-temperature-soil-depthfit');
const jointFit = loadFixture('ground-temperature-soil-jointfit');

/** Keeps what a function gave for a name; the records are long. */
function once<T>(compute: (name: string) => T): (name: string) => T {
  const known = new Map<string, T>();
  return (name) => {
    const found = known.get(name) ?? compute(name);
    known.set(name, found);
    return found;
  };
}

const joint = once((record): GroundProbeFit => fitGroundProbe({ readings: soilRecord(record).readings, period: YEAR }));

/** The sine at one depth of a record; the air by the name `air`. */
const single = once((name): WaveSeriesFit => {
  const [record = '', depth = ''] = name.split('|');
  const { air, readings } = soilRecord(record);
  return fitWaveSeries({ readings: depth === 'air' ? air : readings.filter((reading) => reading.depth === Number(depth)), period: YEAR });
});

const nameOf = (row: FixtureRow): string => `${row.text('record')}|${row.text('depth_m') === 'air' ? 'air' : String(row.number('depth_m'))}`;

/** The table divides by all readings, the library by those less the three parameters. */
const overAll = (deviation: number, count: number): number => deviation * Math.sqrt((count - 3) / count);

const countOf = (row: FixtureRow): number => {
  const { air, readings } = soilRecord(row.text('record'));
  return row.text('depth_m') === 'air' ? air.length : readings.filter(({ depth }) => depth === row.number('depth_m')).length;
};

const SINGLE: Readonly<Record<string, (row: FixtureRow) => number>> = {
  mean_C: (row) => single(nameOf(row)).wave.mean,
  amplitude_C: (row) => single(nameOf(row)).wave.amplitude,
  tmin_day: (row) => single(nameOf(row)).wave.coldestDay - 1,
  rms_single_sine_C: (row) => overAll(single(nameOf(row)).residualDeviation, countOf(row)),
  n: countOf,
};

/** Wave at some depths of a record, for the methods that go by depth. */
const wavesAt = (record: string, depths: readonly number[]) =>
  depths.map((depth) => ({ depth: metres(depth), ...single(`${record}|${String(depth)}`).wave }));
const amplitudeMethod = (record: string, depths: readonly number[]): number =>
  squareMetresPerDay.of(diffusivityFromAmplitudes({ amplitudes: wavesAt(record, depths), period: YEAR }).diffusivity);
const lagMethod = (record: string, depths: readonly number[]): number =>
  squareMetresPerDay.of(
    diffusivityFromLags({ arrivals: wavesAt(record, depths).map((wave) => ({ depth: wave.depth, day: wave.coldestDay })), period: YEAR }).diffusivity,
  );

const pairOf = (row: FixtureRow): readonly number[] => {
  const { depths } = soilRecord(row.text('record'));
  const at = depths.indexOf(row.number('depth_m'));
  return depths.slice(at - 1, at + 1);
};

/** Root mean square by which the air taken for the surface misses a depth. */
function missedByAir(row: FixtureRow): number {
  const { readings } = soilRecord(row.text('record'));
  const wave = { ...single(`${row.text('record')}|air`).wave, of: 'ground surface' as const };
  const there = readings.filter(({ depth }) => depth === row.number('depth_m'));
  const squares = there.map(({ depth, day, temperature }) => {
    return (groundTemperature({ wave, diffusivity: squareMetresPerDay(0.05), depth, day }) - temperature) ** 2;
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

const atDepth = (row: FixtureRow): boolean => row.text('depth_m') !== 'air';

const BY_DEPTH: Readonly<Record<string, (row: FixtureRow) => number>> = {
  alpha_amplitude_pair_m2_day: (row) => amplitudeMethod(row.text('record'), pairOf(row)),
  alpha_phase_pair_m2_day: (row) => lagMethod(row.text('record'), pairOf(row)),
  rms_joint_model_C: (row) => joint(row.text('record')).byDepth.find(({ depth }) => depth === row.number('depth_m'))?.rootMeanSquare ?? NaN,
  'rms_airOnly_alpha0.05_C': missedByAir,
};

const ends = (row: FixtureRow): readonly number[] => {
  const { depths } = soilRecord(row.text('record'));
  return [depths[0] ?? 0, depths.at(-1) ?? 0];
};
const all = (row: FixtureRow): readonly number[] => soilRecord(row.text('record')).depths;
const airOf = (row: FixtureRow): WaveSeriesFit => single(`${row.text('record')}|air`);

const JOINT: Readonly<Record<string, (row: FixtureRow, fit: GroundProbeFit) => number>> = {
  Tm_C: (_, { wave }) => wave.mean,
  A0_C: (_, { wave }) => wave.amplitude,
  t0_day: (_, { wave }) => wave.coldestDay - 1,
  alpha_m2_day: (_, { diffusivity }) => squareMetresPerDay.of(diffusivity),
  alpha_m2_s: (_, { diffusivity }) => diffusivity,
  rms_C: (row, { residualDeviation }) => {
    const count = soilRecord(row.text('record')).readings.length;
    return residualDeviation * Math.sqrt((count - 4) / count);
  },
  n: (row) => soilRecord(row.text('record')).readings.length,
  alpha_amplitude_ends: (row) => amplitudeMethod(row.text('record'), ends(row)),
  alpha_phase_ends: (row) => lagMethod(row.text('record'), ends(row)),
  alpha_lnA_regression: (row) => amplitudeMethod(row.text('record'), all(row)),
  alpha_lag_regression: (row) => lagMethod(row.text('record'), all(row)),
  Tm_minus_airmean_C: (row, { wave }) => wave.mean - airOf(row).wave.mean,
  A0_over_airA: (row, { wave }) => wave.amplitude / airOf(row).wave.amplitude,
  t0_minus_air_t0_day: (row, { wave }) => wave.coldestDay - airOf(row).wave.coldestDay,
};

/** The made readings of a table. */
export const probeReadings = (name: string): readonly GroundReading[] =>
  loadFixture(name).rows.map((row) => ({
    day: dayOfYear(row.number('t_day') + 1),
    depth: metres(row.number('z_m')),
    temperature: celsius(row.number('T_C')),
  }));

const wanted = [{ depth: metres(1.5), day: dayOfYear(61) }];
const probeFit = once((name) => fitGroundProbe({ readings: probeReadings(name), wanted }));
const knownFit = once((name) => fitGroundProbe({ readings: probeReadings(name), diffusivity: squareMetresPerDay(0.055), wanted }));

const FULL = 'ground-temperature-probe';
const SPARSE = 'ground-temperature-probe-sparse';
const fitted = (label: string, expected: number, digit: number, of: (fit: GroundProbeFit) => number, fit: () => GroundProbeFit): PublishedValue => ({
  label,
  expected,
  compute: () => of(fit()),
  tolerance: { absolute: 0.501 * digit, reason: 'half a unit of the last printed digit' },
});
const full = () => probeFit(FULL);
const sparse = () => probeFit(SPARSE);
const known = () => knownFit(FULL);
const mean = ({ wave }: GroundProbeFit): number => wave.mean;
const amplitude = ({ wave }: GroundProbeFit): number => wave.amplitude;
const coldest = ({ wave }: GroundProbeFit): number => wave.coldestDay - 1;
const alpha = ({ diffusivity }: GroundProbeFit): number => squareMetresPerDay.of(diffusivity);
const alphaError = ({ diffusivityError }: GroundProbeFit): number => squareMetresPerDay.of(diffusivityError);
const dayError = ({ standardErrors }: GroundProbeFit): number => days.of(standardErrors.coldestDay);

const computed = { room, seen: 'computed independently' as const, source: 'nonlinear least squares by another program on the same readings' };

/**
 * Two values of the other program end one unit high in their last digit; a third computation (Gauss and Newton's, with the least-squares solver of a
 * numerical library) agrees with the numbers here: the error of the mean of the made readings, and the amplitude of one record.
 */
export const FITS_LEFT_OUT = {
  meanError: { expected: 0.0436, third: 0.04354627, compute: (): number => full().standardErrors.mean },
  princetonAmplitude: {
    record: 'USGS_MN_Princeton_MC11 1993 (1 Mar-30 Nov)',
    expected: 13.0582,
    third: 13.05814815,
    compute: (): number => joint('USGS_MN_Princeton_MC11 1993 (1 Mar-30 Nov)').wave.amplitude,
  },
} as const;

const probeCheck: PublishedCheck = {
  ...computed,
  id: 'GT-probe',
  quantity: 'joint fit of made readings of a probe, with standard errors',
  unit: 'degC, K, d, m2/d, 1',
  tolerance: { absolute: 0, reason: 'each value has its own' },
  values: [
    fitted('mean', 11.03118, 1e-5, mean, full),
    fitted('amplitude', 10.3525, 1e-4, amplitude, full),
    fitted('coldest day', 32.4055, 1e-4, coldest, full),
    fitted('diffusivity', 0.05654, 1e-5, alpha, full),
    fitted('error of amplitude', 0.1659, 1e-4, (fit) => fit.standardErrors.amplitude, full),
    fitted('error of coldest day', 0.931, 1e-3, dayError, full),
    fitted('error of diffusivity', 0.00449, 1e-5, alphaError, full),
    fitted('residual deviation', 0.1847, 1e-4, (fit) => fit.residualDeviation, full),
    fitted('correlation of amplitude and diffusivity', -0.847, 1e-3, (fit) => fit.amplitudeDiffusivityCorrelation, full),
    fitted('1.5 m on day 60', 5.3001, 1e-4, (fit) => fit.temperatures[0]?.temperatureBand.estimate ?? NaN, full),
    fitted('error of 1.5 m on day 60', 0.0904, 1e-4, (fit) => fit.temperatures[0]?.temperatureError ?? NaN, full),
    fitted('mean, diffusivity known', 11.03121, 1e-5, mean, known),
    fitted('amplitude, diffusivity known', 10.4018, 1e-4, amplitude, known),
    fitted('coldest day, diffusivity known', 32.1332, 1e-4, coldest, known),
    fitted('sparse: mean', 9.169, 1e-3, mean, sparse),
    fitted('sparse: amplitude', 9.905, 1e-3, amplitude, sparse),
    fitted('sparse: coldest day', 18.02, 1e-2, coldest, sparse),
    fitted('sparse: diffusivity', 0.0659, 1e-4, alpha, sparse),
    fitted('sparse: error of mean', 0.945, 1e-3, (fit) => fit.standardErrors.mean, sparse),
    fitted('sparse: error of amplitude', 0.548, 1e-3, (fit) => fit.standardErrors.amplitude, sparse),
    fitted('sparse: error of coldest day', 7.04, 1e-2, dayError, sparse),
    fitted('sparse: error of diffusivity', 0.0221, 1e-4, alphaError, sparse),
    // 9.169 − 4.303 · 0.945: the printed parts leave three hundredths.
    fitted('sparse: lower limit of mean', 5.1, 0.1, (fit) => fit.meanBand.low, sparse),
  ],
};

const upper = { depth: metres(0.5), quarterly: [1.28649, 5.62127, 18.71351, 14.37873].map((read) => celsius(read)) };
const lower = { depth: metres(1.5), quarterly: [5.89943, 5.03399, 14.10057, 14.96601].map((read) => celsius(read)) };
const quarters = (): ReturnType<typeof diffusivityFromQuarters> => diffusivityFromQuarters({ probes: [upper, lower] });
const sixDigits = (label: string, expected: number, compute: () => number): PublishedValue => ({ label, expected, compute });

const quartersCheck: PublishedCheck = {
  ...computed,
  id: 'GT-quarters',
  source: 'Horton, Wierenga and Nielsen 1983, equations from memory; values by another program from a wave of 10 °C, 12 K, day 35, 0.05 m2/d',
  quantity: 'arctangent and logarithm from four readings at two depths',
  unit: 'rad, 1, m2/d',
  tolerance: { absolute: 1.5e-6, reason: 'readings rounded to 1e-5 of 12 K' },
  values: [
    sixDigits('angle', 0.4149, () => quarters().phaseShift),
    sixDigits('ratio', 2.29286, () => quarters().squaredSwingRatio),
    sixDigits('diffusivity by arctangent', 0.05, () => squareMetresPerDay.of(quarters().byArctangent)),
    sixDigits('diffusivity by logarithm', 0.05, () => squareMetresPerDay.of(quarters().byLogarithm)),
  ],
};

const harestock = (amplitudes: readonly (readonly [number, number])[]): number => {
  const pairs = amplitudes.map(([depth, kelvin]) => ({ depth: metres(depth), amplitude: kelvinDifference(kelvin) }));
  return Math.sqrt((diffusivityFromAmplitudes({ amplitudes: pairs }).diffusivity * days(365)) / Math.PI);
};

const oldRecords: PublishedCheck = {
  id: 'GT-old-records',
  room,
  seen: 'quoted',
  source:
    'Harestock near Winchester, 1890s, quoted in a public forum (amplitudes 6.5, 1.9, 0.45 K at 1.2, 3, 6 m); Fodor, 19th century, quoted in a digitised book ' +
    '(three weeks a yard)',
  quantity: 'damping depth and diffusivity that old records imply; what they imply was worked out independently',
  unit: 'm, m2/d',
  tolerance: { absolute: 0.0051, reason: 'half a unit of the last digit worked out' },
  values: [
    sixDigits('Harestock, 1.2 to 3 m', 1.46, () =>
      harestock([
        [1.2, 6.5],
        [3, 1.9],
      ]),
    ),
    sixDigits('Harestock, 3 to 6 m', 2.08, () =>
      harestock([
        [3, 1.9],
        [6, 0.45],
      ]),
    ),
    {
      label: 'Fodor',
      expected: 0.0551,
      compute: () => {
        const arrivals = [0, 0.9144].map((depth) => ({ depth: metres(depth), day: dayOfYear(50 + (21 * depth) / 0.9144) }));
        return squareMetresPerDay.of(diffusivityFromLags({ arrivals }).diffusivity);
      },
      tolerance: { absolute: 5.1e-5, reason: 'half a unit of the last digit worked out' },
    },
  ],
};

const snow = (harmonics: number) => () => {
  const readings = soilRecord('USCRN_MN_Sandstone 2020').readings.filter(({ depth }) => depth === 1);
  const { residualDeviation } = fitWaveSeries({ readings, period: YEAR, harmonics });
  return residualDeviation * Math.sqrt((readings.length - 1 - 2 * harmonics) / readings.length);
};

const snowCheck: PublishedCheck = {
  ...computed,
  id: 'GT-two-harmonics-fit',
  quantity: 'root mean square left by one and by two harmonics under lasting snow, Sandstone MN 2020, 1 m',
  unit: 'K',
  tolerance: { absolute: 0.0051, reason: 'half a unit of the last printed digit' },
  values: [sixDigits('one', 1.15, snow(1)), sixDigits('two', 0.48, snow(2))],
};

const hours = loadFixture('weather-dry-bulbs');
const statistics = loadFixture('ground-temperature-epw-check');
const FILES = Object.keys(statistics.meta.columns);

/** The sines through the 8760 hours of a weather file, by its name and the number of harmonics. */
export const hoursFit = once((name): WaveSeriesFit => {
  const [file = '', harmonics = ''] = name.split('|');
  const readings = hours.rows.map((row) => ({ day: dayOfYear(1 + (row.number('hour') + 0.5) / 24), temperature: celsius(row.number(file)) }));
  return fitWaveSeries({ readings, harmonics: Number(harmonics) });
});

/** The table divides by all hours. */
const overHours = ({ residualDeviation }: WaveSeriesFit, parameters: number): number => residualDeviation * Math.sqrt((8760 - parameters) / 8760);

const HOURS: Readonly<Record<string, readonly [digit: number, of: (file: string) => number]>> = {
  mean_C: [1e-4, (file) => hoursFit(`${file}|1`).wave.mean],
  A_hourlyfit_C: [1e-4, (file) => hoursFit(`${file}|1`).wave.amplitude],
  t0_hourlyfit_day: [1e-3, (file) => hoursFit(`${file}|1`).wave.coldestDay - 1],
  rms_hourlyfit_C: [1e-4, (file) => overHours(hoursFit(`${file}|1`), 3)],
  A2_C: [1e-4, (file) => hoursFit(`${file}|2`).secondHarmonic?.amplitude ?? Number.NaN],
  t02_day: [1e-3, (file) => (hoursFit(`${file}|2`).secondHarmonic?.coldestDay ?? Number.NaN) - 1],
  rms_2harm_C: [1e-4, (file) => overHours(hoursFit(`${file}|2`), 5)],
};

const hoursChecks = Object.entries(HOURS).map(([quantity, [digit, of]]): PublishedCheck => {
  const [row] = statistics.rows.filter((each) => each.text('quantity') === quantity);
  if (row === undefined) throw new Error(`no row ${quantity}`);
  return {
    id: `GT-hours-${quantity}`,
    room,
    seen: statistics.meta.seen,
    source: `${statistics.meta.source} (${statistics.meta.at})`,
    quantity: `sines through 8760 hours of weather files: ${quantity}`,
    unit: 'degC, K or d',
    tolerance: { absolute: 0.501 * digit, reason: 'half a unit of the last printed digit' },
    values: FILES.map((file) => ({ label: file, expected: row.number(file), compute: () => of(file) })),
  };
});

const left = (diffusivity: Diffusivity): number =>
  groundTemperatureRange({
    wave: { of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36), period: days(365) },
    diffusivity,
    depth: metres(1.5),
  }).amplitude;

const dryCheck: PublishedCheck = {
  ...computed,
  id: 'GT-dry-soil',
  source: 'worked out independently; a dry winter soil has warmer ground at depth, so its conductivity and its wave belong to one state',
  quantity: 'amplitude at 1.5 m under 12 K in dry and in moist ground, 4e-7 and 7e-7 m2/s',
  unit: 'K',
  tolerance: { absolute: 0.051, reason: 'half a unit of the last printed digit' },
  values: [
    sixDigits('dry', 5.7, () => left(squareMetresPerSecond(4e-7))),
    sixDigits('moist', 6.8, () => left(squareMetresPerSecond(7e-7))),
    sixDigits('difference', 1.1, () => left(squareMetresPerSecond(7e-7)) - left(squareMetresPerSecond(4e-7))),
  ],
};

/** Outside checks of the fits of readings. */
export const climateFitChecks: readonly PublishedCheck[] = [
  ...Object.entries(SINGLE).map(([column, compute]) =>
    fromFixture(depthFit, {
      id: `GT-depthfit-${column}`,
      room,
      quantity: `sine at one depth of measured records: ${column}`,
      column,
      label: nameOf,
      compute,
    }),
  ),
  ...Object.entries(BY_DEPTH).map(([column, compute]) =>
    fromFixture(depthFit, {
      id: `GT-depthfit-${column}`,
      room,
      quantity: `measured records by depth: ${column}`,
      column,
      where: atDepth,
      label: nameOf,
      compute,
    }),
  ),
  ...Object.entries(JOINT).map(([column, of]) =>
    fromFixture(jointFit, {
      id: `GT-jointfit-${column}`,
      room,
      quantity: `joint fit of measured records: ${column}`,
      column,
      where: (row) => column !== 'A0_C' || row.text('record') !== FITS_LEFT_OUT.princetonAmplitude.record,
      label: (row) => row.text('record'),
      compute: (row) => of(row, joint(row.text('record'))),
    }),
  ),
  probeCheck,
  quartersCheck,
  oldRecords,
  snowCheck,
  ...hoursChecks,
  dryCheck,
];
