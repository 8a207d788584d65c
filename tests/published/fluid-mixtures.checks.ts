import {
  antifreezeCharge,
  antifreezeForProtection,
  CALCIUM_CHLORIDE,
  correctedFill,
  ETHANOL,
  ETHYLENE_GLYCOL,
  expectedHydrometer,
  fluidTransport,
  freezingPoint,
  GLYCEROL,
  massFractionForFreezingPoint,
  massFromVolumeFraction,
  METHANOL,
  POTASSIUM_ACETATE,
  POTASSIUM_CARBONATE,
  POTASSIUM_FORMATE,
  PROPYLENE_GLYCOL,
  siteConstant,
  thermalExpansion,
  volumeChange,
  volumeFromMassFraction,
  WATER,
  type FluidRecord,
} from '../../src/fluid/index.js';
import { celsius, diameterMillimetres, litres, type massFraction, massPercent, volumePercent } from '../../src/units/index.js';
import type { Tolerance } from '../support/fixture.js';
import type { PublishedCheck, PublishedValue } from '../support/published.js';

type Line = readonly [label: string, expected: number, compute: () => number];

const HALF_DIGIT = 'half a unit of the last printed digit';

const values = (lines: readonly Line[]): readonly PublishedValue[] => lines.map(([label, expected, compute]) => ({ label, expected, compute }));

const byHand = (id: string, quantity: string, unit: string, tolerance: Tolerance, lines: readonly Line[]): PublishedCheck => ({
  id,
  room: 'fluid',
  quantity,
  unit,
  source: 'Melinder (2010) fits and handbook densities at 20 °C (worked out outside this library, printed to the digits given)',
  seen: 'computed independently',
  tolerance,
  values: values(lines),
});
const half = (digit: number): Tolerance => ({ absolute: digit / 2 + 1e-5, reason: HALF_DIGIT });

const percentByMass = (record: FluidRecord, t: number): number =>
  massPercent.of(massFractionForFreezingPoint({ fluid: record, freezingPoint: celsius(t) }));
const percentByVolume = (record: FluidRecord, t: number): number =>
  volumePercent.of(volumeFromMassFraction({ fluid: record, massFraction: massPercent(percentByMass(record, t)) }));

/** Freezing points of the next table [degC]. */
const FREEZING = [-5, -7, -8, -10, -12, -15, -18, -20] as const;

/** Least share for each freezing point, per cent by mass and, for what is poured, by volume. */
const NEEDED: readonly (readonly [record: FluidRecord, mass: readonly number[], volume: readonly number[]])[] = [
  [ETHYLENE_GLYCOL, [14.0, 18.2, 20.1, 23.5, 26.5, 30.5, 34.1, 36.2], [12.8, 16.7, 18.5, 21.7, 24.6, 28.5, 31.9, 34.1]],
  [PROPYLENE_GLYCOL, [15.3, 19.6, 21.7, 25.4, 28.8, 33.2, 37.1, 39.4], [14.9, 19.2, 21.2, 25.0, 28.4, 32.9, 36.9, 39.2]],
  [METHANOL, [7.9, 10.6, 11.9, 14.3, 16.6, 19.9, 23.0, 24.9], [9.8, 13.1, 14.7, 17.7, 20.4, 24.3, 27.9, 30.2]],
  [ETHANOL, [11.1, 14.4, 15.9, 18.6, 21.1, 24.5, 27.8, 29.9], [13.8, 17.8, 19.6, 22.9, 25.8, 29.9, 33.7, 36.1]],
  [GLYCEROL, [18.5, 23.7, 26.1, 30.5, 34.4, 39.5, 43.8, 46.4], [15.3, 19.9, 22.0, 26.0, 29.6, 34.4, 38.5, 41.0]],
  [POTASSIUM_CARBONATE, [13.2, 17.1, 18.8, 21.7, 24.1, 27.1, 29.6, 31.0], []],
  [POTASSIUM_FORMATE, [10.2, 13.5, 15.0, 17.9, 20.5, 24.0, 27.1, 29.0], []],
  [POTASSIUM_ACETATE, [10.8, 14.2, 15.7, 18.5, 20.9, 23.9, 26.4, 27.9], []],
  [CALCIUM_CHLORIDE, [9.0, 11.3, 12.3, 14.1, 15.8, 17.9, 19.8, 21.0], []],
];

/** Finished solution of 100 L at 20 °C: per cent by volume, mass fraction, litres of water and of contraction, freezing point, specific gravity. */
const HUNDRED_LITRES: readonly (readonly [FluidRecord, number, number, number, number, number, number])[] = [
  [PROPYLENE_GLYCOL, 20, 0.204, 80.94, 0.94, -7.4, 1.017],
  [PROPYLENE_GLYCOL, 25, 0.254, 76.2, 1.2, -10.0, 1.0215],
  [PROPYLENE_GLYCOL, 30, 0.304, 71.45, 1.45, -13.0, 1.0259],
  [ETHYLENE_GLYCOL, 20, 0.217, 80.52, 0.52, -8.9, 1.0283],
  [ETHYLENE_GLYCOL, 25, 0.269, 75.67, 0.67, -12.3, 1.0356],
  [ETHYLENE_GLYCOL, 30, 0.321, 70.82, 0.82, -16.3, 1.0428],
  [METHANOL, 15, 0.121, 86.12, 1.12, -8.2, 0.9801],
  [METHANOL, 20, 0.163, 81.54, 1.54, -11.7, 0.974],
  [METHANOL, 25, 0.205, 76.96, 1.96, -15.5, 0.9678],
  [ETHANOL, 20, 0.162, 81.75, 1.75, -8.2, 0.9756],
  [ETHANOL, 25, 0.204, 77.25, 2.25, -11.4, 0.9702],
  [ETHANOL, 30, 0.246, 72.7, 2.7, -15.1, 0.9642],
];

const shareAt = (record: FluidRecord, percent: number): ReturnType<typeof massFraction> =>
  massFromVolumeFraction({ fluid: record, volumeFraction: volumePercent(percent) });
const mixed = (record: FluidRecord, percent: number, loop: number): ReturnType<typeof antifreezeCharge> =>
  antifreezeCharge({ fluid: record, massFraction: shareAt(record, percent), loopVolume: litres(loop) });
const hundredLitres = (compute: (record: FluidRecord, percent: number) => number, column: 2 | 3 | 4 | 5 | 6): readonly Line[] =>
  HUNDRED_LITRES.map((row): Line => [`${row[0].name} ${String(row[1])} %`, row[column], () => compute(row[0], row[1])]);

/** A table of the trade: per cent by volume for a "protection temperature", and where that mixture freezes by the fit. */
const TRADE_TABLE: readonly (readonly [record: FluidRecord, rows: readonly (readonly [percent: number, freezes: number])[]])[] = [
  [
    METHANOL,
    [
      [25, -15.5],
      [21, -12.4],
      [16, -8.9],
      [10, -5.1],
    ],
  ],
  [
    PROPYLENE_GLYCOL,
    [
      [38, -18.9],
      [25, -10.0],
      [22, -8.4],
      [15, -5.0],
    ],
  ],
  [
    ETHANOL,
    [
      [29, -14.3],
      [25, -11.4],
      [20, -8.2],
      [14, -5.1],
    ],
  ],
];

/** Expansion in 1e-4/K at −2, 5, 10 and 20 °C, and change of volume in per cent from 15 to −3 °C and from 15 to 30 °C. */
const EXPANSION: readonly (readonly [record: FluidRecord, percent: number, slopes: readonly number[], changes: readonly number[]])[] = [
  [PROPYLENE_GLYCOL, 20, [1.5, 2.2, 2.6, 3.4], [-0.41, 0.55]],
  [PROPYLENE_GLYCOL, 25, [2.2, 2.8, 3.2, 4.0], [-0.52, 0.62]],
  [PROPYLENE_GLYCOL, 30, [2.9, 3.4, 3.8, 4.5], [-0.63, 0.7]],
  [ETHYLENE_GLYCOL, 20, [1.6, 2.1, 2.4, 3.1], [-0.38, 0.49]],
  [ETHYLENE_GLYCOL, 25, [2.1, 2.6, 2.9, 3.5], [-0.47, 0.55]],
  [ETHYLENE_GLYCOL, 30, [2.6, 3.0, 3.3, 3.9], [-0.55, 0.61]],
  [METHANOL, 12, [0.5, 1.2, 1.7, 2.7], [-0.24, 0.43]],
  [METHANOL, 15, [1.1, 1.7, 2.2, 3.0], [-0.33, 0.48]],
  [METHANOL, 20, [2.1, 2.6, 3.0, 3.7], [-0.48, 0.58]],
  [ETHANOL, 16, [1.3, 2.1, 2.7, 3.7], [-0.4, 0.59]],
  [ETHANOL, 20, [2.2, 3.0, 3.6, 4.5], [-0.56, 0.7]],
  [ETHANOL, 25, [3.6, 4.2, 4.7, 5.4], [-0.77, 0.84]],
];
const expansionOf = (record: FluidRecord, percent: number, t: number): number =>
  1e4 * thermalExpansion({ fluid: record, massFraction: massPercent(percent), temperature: celsius(t) });
/** Values of that table that were rounded twice (2.649 to 2.65 to 2.7) and are left out; the tests hold that this is so. */
export const ROUNDED_TWICE: ReadonlyMap<string, number> = new Map([
  ['methanol 12 %, 20 degC', 2.7],
  ['ethanol 16 %, -2 degC', 1.3],
  ['ethanol 20 %, 10 degC', 3.6],
  ['ethanol 25 %, 10 degC', 4.7],
  ['propylene-glycol 20 %, 15 to 30 degC', 0.55],
  ['methanol 15 %, 15 to -3 degC', -0.33],
]);
const onceRounded = (lines: readonly Line[]): readonly Line[] => lines.filter(([label]) => !ROUNDED_TWICE.has(label));
const changeOf = (record: FluidRecord, percent: number, from: number, to: number): number =>
  100 * volumeChange({ fluid: record, massFraction: massPercent(percent), filledAt: celsius(from), temperature: celsius(to) });

const EXPANSION_LINES: readonly Line[] = EXPANSION.flatMap(([record, percent, slopes]) =>
  slopes.map((expected, i): Line => {
    const t = [-2, 5, 10, 20][i] ?? NaN;
    return [`${record.name} ${String(percent)} %, ${String(t)} degC`, expected, () => expansionOf(record, percent, t)];
  }),
);
const CHANGE_LINES: readonly Line[] = EXPANSION.flatMap(([record, percent, , changes]) =>
  changes.map((expected, i): Line => {
    const to = [-3, 30][i] ?? NaN;
    return [`${record.name} ${String(percent)} %, 15 to ${String(to)} degC`, expected, () => changeOf(record, percent, 15, to)];
  }),
);
/** What this library computes for a value of the table, unrounded. */
export const expansionOfTable = (label: string): number => [...EXPANSION_LINES, ...CHANGE_LINES].find(([each]) => each === label)?.[2]() ?? NaN;

/** Turbulent pump power for the same heat and film at the same velocity at 0 °C, over those of water. */
const COSTS: readonly (readonly [record: FluidRecord, percent: number, pump: number | undefined, film: number | undefined])[] = [
  [PROPYLENE_GLYCOL, 25, 1.59, 0.55],
  [PROPYLENE_GLYCOL, 20, 1.45, undefined],
  [ETHYLENE_GLYCOL, 25, 1.53, 0.66],
  [METHANOL, 15, 1.22, 0.74],
  [ETHANOL, 20, 1.25, 0.57],
  [POTASSIUM_ACETATE, 19, 1.53, undefined],
  [POTASSIUM_FORMATE, 18, undefined, 0.92],
  [CALCIUM_CHLORIDE, 14, 1.63, undefined],
];
const transportOf = (record: FluidRecord, percent: number): ReturnType<typeof fluidTransport> =>
  fluidTransport({ fluid: record, massFraction: massPercent(percent), temperature: celsius(0), insideDiameter: diameterMillimetres(26) });
const costs = (column: 2 | 3, compute: (record: FluidRecord, percent: number) => number): readonly Line[] =>
  COSTS.flatMap((row): readonly Line[] => {
    const expected = row[column];
    return expected === undefined ? [] : [[`${row[0].name} ${String(row[1])} %`, expected, () => compute(row[0], row[1])]];
  });

/** Freezing point of 5 % by mass after the ideal law of dilute solutions, 1.86 K kg/mol times molality [degC]. */
const CRYOSCOPIC: readonly (readonly [record: FluidRecord, molarMass: number, fit: number])[] = [
  [ETHYLENE_GLYCOL, 62.068, -1.58],
  [PROPYLENE_GLYCOL, 76.094, -1.21],
  [METHANOL, 32.042, -3.0],
  [ETHANOL, 46.068, -2.03],
  [GLYCEROL, 92.094, -1.03],
];
const freezesAt = (record: FluidRecord, percent: number): number => freezingPoint({ fluid: record, massFraction: massPercent(percent) });

/** What is needed for −9.6 °C before any rounding: per cent by mass, and by volume of what is poured. */
const W1: readonly (readonly [record: FluidRecord, mass: number, volume: number | undefined])[] = [
  [PROPYLENE_GLYCOL, 24.7, 24.3],
  [ETHYLENE_GLYCOL, 22.8, 21.1],
  [METHANOL, 13.9, 17.1],
  [ETHANOL, 18.1, 22.2],
  [POTASSIUM_ACETATE, 18.0, undefined],
  [CALCIUM_CHLORIDE, 13.8, undefined],
];

const loop400 = (): ReturnType<typeof correctedFill> =>
  correctedFill({
    fluid: PROPYLENE_GLYCOL,
    massFraction: shareAt(PROPYLENE_GLYCOL, 20),
    wantedMassFraction: shareAt(PROPYLENE_GLYCOL, 25),
    loopVolume: litres(400),
  });

const usConstant = (record: FluidRecord, percent: number, t: number): number =>
  siteConstant({ fluid: record, massFraction: massPercent(percent), temperature: celsius(t) }).btuPerGallonPerMinute;

const trade = (id: string, reason: string, relative: number, lines: readonly Line[]): PublishedCheck => ({
  id,
  room: 'fluid',
  quantity: 'heat per flow and temperature difference',
  unit: 'Btu/(h.gpm.degF)',
  source: 'Rule of the trade for checking on site: 500 with water (read in a manual, address withheld), 485 with antifreeze (recalled)',
  seen: 'from memory',
  tolerance: { relative, reason },
  values: values(lines),
});

/** Checks of concentrations, charges, readings and comparisons. */
export const fluidMixtureChecks: readonly PublishedCheck[] = [
  byHand(
    'FL-needed mass',
    'mass per cent for a freezing point',
    '%',
    half(0.1),
    NEEDED.flatMap(([record, mass]) =>
      mass.map((expected, i): Line => [`${record.name} ${String(FREEZING[i])} degC`, expected, () => percentByMass(record, FREEZING[i] ?? NaN)]),
    ),
  ),
  byHand(
    'FL-needed volume',
    'volume per cent for a freezing point',
    '%',
    half(0.1),
    NEEDED.flatMap(([record, , volume]) =>
      volume.map((expected, i): Line => [`${record.name} ${String(FREEZING[i])} degC`, expected, () => percentByVolume(record, FREEZING[i] ?? NaN)]),
    ),
  ),
  byHand(
    'FL-W1 mass',
    'mass per cent for −9.6 °C',
    '%',
    half(0.1),
    W1.map(([record, mass]): Line => [record.name, mass, () => percentByMass(record, -9.6)]),
  ),
  byHand(
    'FL-W1',
    'volume per cent for −9.6 °C before rounding',
    '%',
    half(0.1),
    W1.flatMap(([record, , volume]): readonly Line[] =>
      volume === undefined
        ? []
        : [[record.name, volume, () => volumePercent.of(antifreezeForProtection({ fluid: record, protectTo: celsius(-9.6) }).neededVolumeFraction)]],
    ),
  ),
  byHand('FL-100L mass', 'mass fraction of a mixture by volume', 'kg/kg', half(0.001), hundredLitres(shareAt, 2)),
  byHand(
    'FL-100L water',
    'water in 100 L of solution',
    'L',
    half(0.01),
    hundredLitres((record, at) => litres.of(mixed(record, at, 100).waterVolume), 3),
  ),
  byHand(
    'FL-100L contraction',
    'contraction of 100 L of solution',
    'L',
    half(0.01),
    hundredLitres((record, at) => litres.of(mixed(record, at, 100).contraction), 4),
  ),
  byHand(
    'FL-100L freezing',
    'freezing point of a mixture by volume',
    'degC',
    half(0.1),
    hundredLitres((record, at) => freezingPoint({ fluid: record, massFraction: shareAt(record, at) }), 5),
  ),
  byHand(
    'FL-100L gravity',
    'specific gravity of a mixture by volume, 20 °C',
    '1',
    half(0.0001),
    hundredLitres(
      (record, at) => expectedHydrometer({ fluid: record, massFraction: shareAt(record, at), temperature: celsius(20) }).specificGravity,
      6,
    ),
  ),
  byHand('FL-W2', 'charge of a 400 L loop with 25 % by volume', 'L', half(0.1), [
    ['glycol', 100, () => litres.of(mixed(PROPYLENE_GLYCOL, 25, 400).concentrateVolume)],
    ['water', 304.8, () => litres.of(mixed(PROPYLENE_GLYCOL, 25, 400).waterVolume)],
  ]),
  byHand('FL-W3', 'from 20 to 25 % by volume in a 400 L loop', 'L', half(0.1), [
    ['drained', 23.4, () => litres.of(loop400().drainedVolume)],
    ['glycol added', 24.7, () => litres.of(loop400().concentrateVolume)],
    ['by volumes alone', 25.0, () => litres.of(loop400().simpleExchange)],
  ]),
  byHand(
    'FL-trade table',
    'freezing point of what a table of the trade has for a protection temperature',
    'degC',
    half(0.1),
    TRADE_TABLE.flatMap(([record, rows]) =>
      rows.map(
        ([percent, freezes]): Line => [
          `${record.name} ${String(percent)} %`,
          freezes,
          () => freezingPoint({ fluid: record, massFraction: shareAt(record, percent) }),
        ],
      ),
    ),
  ),
  byHand(
    'FL-cryoscopic fit',
    'freezing point of 5 % by mass',
    'degC',
    half(0.01),
    CRYOSCOPIC.map(([record, , fit]): Line => [record.name, fit, () => freezesAt(record, 5)]),
  ),
  {
    id: 'FL-cryoscopic law',
    room: 'fluid',
    quantity: 'freezing point of 5 % by mass',
    unit: 'degC',
    source: 'Law of ideal dilute solutions, 1.86 K kg/mol times molality',
    seen: 'computed independently',
    tolerance: { relative: 0.07, reason: 'a solution of 0.6 to 1.6 mol/kg is not quite ideal' },
    values: values(CRYOSCOPIC.map(([record, molarMass]): Line => [record.name, (-1.86 * 50) / (0.95 * molarMass), () => freezesAt(record, 5)])),
  },
  byHand('FL-expansion', 'thermal expansion', '1e-4/K', half(0.1), onceRounded(EXPANSION_LINES)),
  byHand('FL-expansion water', 'thermal expansion of water', '1e-4/K', half(0.01), [
    ['5 degC', 0.16, () => expansionOf(WATER, 0, 5)],
    ['10 degC', 0.88, () => expansionOf(WATER, 0, 10)],
    ['20 degC', 2.07, () => expansionOf(WATER, 0, 20)],
  ]),
  byHand('FL-volume change', 'change of volume', '%', half(0.01), [
    ['water, 15 to 1 degC', -0.08, () => changeOf(WATER, 0, 15, 1)],
    ['water, 15 to 30 degC', 0.35, () => changeOf(WATER, 0, 15, 30)],
    ...onceRounded(CHANGE_LINES),
  ]),
  byHand('FL-W4', 'change of volume of propylene glycol, 25 % by mass', '%', half(0.001), [
    ['15 to −2 degC', -0.495, () => changeOf(PROPYLENE_GLYCOL, 25, 15, -2)],
    ['10 to 25 degC', 0.567, () => changeOf(PROPYLENE_GLYCOL, 25, 10, 25)],
  ]),
  byHand(
    'FL-pump power',
    'pump power over that of water at 0 °C',
    '1',
    half(0.01),
    costs(2, (record, at) => transportOf(record, at).pumpPowerRatio),
  ),
  byHand(
    'FL-film',
    'film coefficient over that of water at 0 °C',
    '1',
    half(0.01),
    costs(3, (record, at) => transportOf(record, at).filmRatio),
  ),
  trade(
    'FL-site 500',
    'a round number for water from 0 to 40 °C',
    0.01,
    [0, 10, 20, 30, 40].map((t): Line => [`water, ${String(t)} degC`, 500, () => usConstant(WATER, 0, t)]),
  ),
  trade(
    'FL-site 485',
    'one number for every antifreeze: 25 % of propylene glycol and 20 % of methanol lie 2 % below it, 20 % of ethanol 5 % above',
    0.015,
    [
      ['propylene glycol 20 %, 0 degC', 485, () => usConstant(PROPYLENE_GLYCOL, 20, 0)],
      ['propylene glycol 20 %, 10 degC', 485, () => usConstant(PROPYLENE_GLYCOL, 20, 10)],
      ['methanol 15 %, 0 degC', 485, () => usConstant(METHANOL, 15, 0)],
    ],
  ),
];
