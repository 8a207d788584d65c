import { dampingDepth } from '../../src/climate/index.js';
import { customLayout, groundResponse } from '../../src/ground/index.js';
import {
  contactGap,
  effectiveConductivity,
  layeredResponse,
  layerMeans,
  logResistanceConductivity,
  resistanceShare,
  type EffectiveGroundResult,
  type LayeredGround,
  type SoilLayer,
} from '../../src/soil/index.js';
import type { SoilThermal } from '../../src/states/index.js';
import {
  days,
  diameterMillimetres,
  fraction,
  megajoulesPerCubicMetreKelvin,
  metres,
  pipeMetreKelvinPerWatt,
  squareMillimetresPerSecond,
  wattsPerMetreKelvin,
  type Length,
} from '../../src/units/index.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const room = 'soil';

/** Layers, bedding and trench fill by finite elements, at seven times each. */
export const elements = loadFixture('fem-d-layers');

/** A soil from conductivity and heat capacity, W/(m·K) and MJ/(m³·K). */
export const thermal = (conductivity: number, heatCapacity = 2): SoilThermal => ({
  conductivity: wattsPerMetreKelvin(conductivity),
  heatCapacity: megajoulesPerCubicMetreKelvin(heatCapacity),
  diffusivity: squareMillimetresPerSecond(conductivity / heatCapacity),
});

/** A log from the surface down: conductivity and lower end of each layer. */
export const log = (...layers: readonly (readonly [conductivity: number, bottom: number])[]): readonly SoilLayer[] =>
  layers.map(([conductivity, bottom], index) => ({
    top: metres(layers[index - 1]?.[1] ?? 0),
    bottom: metres(bottom),
    thermal: thermal(conductivity),
  }));

/* Finite elements */

const pipesOf = (row: FixtureRow): LayeredGround['pipes'] =>
  row
    .text('pipes_x:depth_m')
    .split(';')
    .map((pair) => pair.split(':').map((each): Length => metres(Number(each))))
    .map(([x = metres(NaN), depth = metres(NaN)]) => ({ x, depth }));

/** The numbers in a text, in their order. */
const numbersIn = (text: string): readonly number[] => [...text.matchAll(/\d[\d.e+]*/gu)].map(([each]) => Number(each));

const TWO_LAYERS = /^interface/u;

function layersOf(row: FixtureRow): readonly SoilLayer[] {
  const [first = NaN, second = NaN, third = NaN, fourth = NaN, fifth = NaN] = numbersIn(row.text('ground').replaceAll(' m:', ''));
  if (!TWO_LAYERS.test(row.text('ground'))) return [{ top: metres(0), bottom: metres(3), thermal: thermal(first, second / 1e6) }];
  return [
    { top: metres(0), bottom: metres(first), thermal: thermal(second, fourth / 1e6) },
    { top: metres(first), bottom: metres(first + 2), thermal: thermal(third, fifth / 1e6) },
  ];
}

/** What lies about the pipes of a case: a ring, a square whose sides are as far from the axis, or the fill of a trench. */
function inclusionOf(row: FixtureRow): Pick<LayeredGround, 'fill' | 'bedding'> {
  const [native = NaN, nativeStored = NaN, k = NaN, stored = NaN] = numbersIn(row.text('ground'));
  const filled = thermal(k, stored / 1e6);
  const [first = NaN, last = NaN] = numbersIn(row.text('description'));
  switch (row.text('description').split(' ')[0]) {
    case 'ring':
      return { bedding: { thickness: metres(first), thermal: filled } };
    case 'square':
      // A trench filled with the native ground, with bedding from wall to wall of it, is a square of bedding.
      return {
        fill: { width: metres(2 * first), depth: metres(1.5 + first), thermal: thermal(native, nativeStored / 1e6) },
        bedding: { thickness: metres(first - row.number('od_mm') / 2000), thermal: filled },
      };
    case '0.6':
      return { fill: { width: metres(first), depth: metres(last), thermal: filled } };
    default:
      return {};
  }
}

/** The ground of a row of the finite elements. */
export const groundOf = (row: FixtureRow): LayeredGround => ({
  layers: layersOf(row),
  pipes: pipesOf(row),
  outsideDiameter: diameterMillimetres(row.number('od_mm')),
  ...inclusionOf(row),
});

/** It as this library sees it. */
export const meshed = (row: FixtureRow): EffectiveGroundResult => effectiveConductivity(groundOf(row));

/** The same by the rule of logarithms, which knows layers only. */
export const ruled = (row: FixtureRow): number =>
  logResistanceConductivity({ layers: layersOf(row), pipes: pipesOf(row), outsideDiameter: diameterMillimetres(row.number('od_mm')) }).conductivity;

const DAYS: Readonly<Record<string, number>> = { '1d': 1, '7d': 7, '30d': 30, '120d': 120, '365d': 365, '5y': 1826.25 };

/** Warming by the native response with what fill or bedding adds to it, at the time of a row. */
export const inSeries = (row: FixtureRow): number => {
  const { native, addedResistance } = meshed(row);
  const response = groundResponse({
    layout: customLayout({ pipes: pipesOf(row), trenches: 1, trenchSpacing: metres(10) }),
    pipe: { outsideDiameter: diameterMillimetres(row.number('od_mm')) },
    soil: native,
  });
  return response.riseAfter(days(DAYS[row.text('t')] ?? NaN)) + addedResistance;
};

/** Rows of bedding and fill before the long run. */
export const inTime = (row: FixtureRow): boolean => !TWO_LAYERS.test(row.text('ground')) && !isSteady(row);

/** Warming in time by the response of the layered ground. */
export const responded = (row: FixtureRow): number => layeredResponse(groundOf(row)).riseAfter(days(DAYS[row.text('t')] ?? NaN));

const isLayered = (row: FixtureRow): boolean => TWO_LAYERS.test(row.text('ground'));
const isFilled = (row: FixtureRow): boolean => row.text('description').startsWith('0.6 m wide');
const isFirstDay = (row: FixtureRow): boolean => row.text('t') === '1d';

interface InTime extends Pick<PublishedCheck, 'id' | 'quantity'> {
  readonly where: (row: FixtureRow) => boolean;
  readonly tolerance?: PublishedCheck['tolerance'];
}

/** The first day in trench fill is left out: the whole of its resistance is counted before the heat has crossed it, 7 % too much. */
const IN_TIME: readonly InTime[] = [
  { id: 'SO-D layers in time', quantity: 'warming of pipes in two layers from a day to five years', where: isLayered },
  {
    id: 'SO-D bedding in time',
    quantity: 'warming of pipes in bedding from a week to five years',
    where: (row) => !isLayered(row) && !isFilled(row) && !isFirstDay(row),
  },
  {
    id: 'SO-D bedding, first day',
    quantity: 'warming of pipes in bedding after a day',
    where: (row) => !isLayered(row) && !isFilled(row) && isFirstDay(row),
    tolerance: { relative: 0.02, reason: 'the storage of the bedding is taken for that of the native ground' },
  },
  {
    id: 'SO-D fill in time',
    quantity: 'warming of pipes in trench fill from a week to five years',
    where: (row) => isFilled(row) && !isFirstDay(row),
    tolerance: { relative: 0.03, reason: 'the resistance of the fill is counted as if it were steady; too much, on the safe side' },
  },
];

const isSteady = (row: FixtureRow): boolean => row.text('t') === 'steady';
const steady = (id: string): FixtureRow => {
  const [row] = elements.rows.filter((each) => each.text('case') === id && isSteady(each));
  if (row === undefined) throw new Error(`no steady row of ${id}`);
  return row;
};

/** How far the rule is off in the steady rows, as its source states it. D06 is stated as −4.7 %, at the mean depth of two pipes. */
const RULE: readonly (readonly [id: string, off: number])[] = [
  ['D01', 0.009],
  ['D02', 0.022],
  ['D03', -0.006],
  ['D04', -0.055],
  ['D05', 0.074],
];

/** The case whose stated deviation does not reproduce: pipe by pipe the rule is nearer. */
export const RULE_LEFT_OUT = { id: 'D06', stated: -0.047, off: -0.001 };

/** How far the rule is off from the elements in a case. */
export const ruleOff = (id: string): number => ruled(steady(id)) / steady(id).number('k_eff_W_mK') - 1;

/* Worked figures */

const PILE = layerMeans(log([0.8, 0.4], [1.4, 1], [2, 1.8]));
const WORKED = { source: 'definitions, by hand', seen: 'computed independently' } as const;
const DIGITS = { relative: 1e-4, reason: 'five digits are carried' };
const shareWithin = (distance: number): number =>
  resistanceShare({ depth: metres(1.2), outsideDiameter: diameterMillimetres(32), distance: metres(distance) });
const WIDE = { low: wattsPerMetreKelvin(1), estimate: wattsPerMetreKelvin(1.2), high: wattsPerMetreKelvin(1.5), coverage: fraction(0.8) };

/** Outside checks of layers, fill and bedding. */
export const soilLayerChecks: readonly PublishedCheck[] = [
  fromFixture(elements, {
    id: 'SO-D zones rise',
    room,
    quantity: 'steady rise of pipes in layers, bedding and trench fill',
    column: 'rise_mean_mK_W',
    label: (row) => row.text('case'),
    compute: (row) => meshed(row).steadyRise,
    where: isSteady,
  }),
  fromFixture(elements, {
    id: 'SO-D zones k',
    room,
    quantity: 'steady effective conductivity in layers, bedding and trench fill',
    column: 'k_eff_W_mK',
    label: (row) => row.text('case'),
    compute: (row) => meshed(row).thermal.conductivity,
    where: isSteady,
  }),
  ...IN_TIME.map(({ id, quantity, where, tolerance }): PublishedCheck => {
    const check = fromFixture(elements, {
      id,
      room,
      quantity,
      column: 'rise_mean_mK_W',
      label: (row) => `${row.text('case')} ${row.text('t')}`,
      compute: responded,
      where: (row) => !isSteady(row) && where(row),
    });
    return { ...check, tolerance: tolerance ?? check.tolerance };
  }),
  {
    id: 'SO-D rule',
    room,
    quantity: 'how far the rule of logarithms is off, share of the effective conductivity',
    unit: '1',
    source: 'rule applied by hand to the same finite elements, apart from this library',
    seen: 'computed independently',
    tolerance: { absolute: 6e-4, reason: 'stated to a tenth of a per cent' },
    values: RULE.map(([id, expected]) => ({ label: id, expected, compute: () => ruleOff(id) })),
  },
  {
    id: 'SO-Y means',
    room,
    quantity: 'means of 0.8, 1.4 and 2.0 W/(m.K) over 0.4, 0.6 and 0.8 m',
    unit: 'W/(m.K)',
    ...WORKED,
    tolerance: DIGITS,
    values: [
      { label: 'arithmetic', expected: 1.5333, compute: () => PILE.alongLayers },
      { label: 'harmonic', expected: 1.3548, compute: () => PILE.acrossLayers },
      { label: 'geometric', expected: 1.4487, compute: () => PILE.geometricMean },
      { label: 'about a line', expected: 1.4413, compute: () => PILE.aroundLine },
    ],
  },
  {
    id: 'SO-Y share',
    room,
    quantity: 'share of the steady resistance within 0.1 and 0.3 m of a pipe of 32 mm at 1.2 m',
    unit: '1',
    ...WORKED,
    tolerance: { absolute: 0.005, reason: 'two digits are carried' },
    values: [
      { label: '0.1 m', expected: 0.37, compute: () => shareWithin(0.1) },
      { label: '0.3 m', expected: 0.58, compute: () => shareWithin(0.3) },
    ],
  },
  {
    id: 'SO-Y ring',
    room,
    quantity: 'effective conductivity of backfill 1.0 out to 0.3 m in native 1.8 W/(m.K)',
    unit: 'W/(m.K)',
    ...WORKED,
    tolerance: { absolute: 5e-4, reason: 'four digits are carried' },
    values: [
      {
        label: '32 mm at 1.2 m',
        expected: 1.226,
        compute: () =>
          effectiveConductivity({
            layers: log([1.8, 3]),
            pipes: [{ x: metres(0), depth: metres(1.2) }],
            outsideDiameter: diameterMillimetres(32),
            bedding: { thickness: metres(0.284), thermal: thermal(1) },
          }).thermal.conductivity,
      },
    ],
  },
  {
    id: 'SO-Y depth',
    room,
    quantity: 'depth of influence of a year and of thirty days at 0.6 mm2/s',
    unit: 'm',
    ...WORKED,
    tolerance: { absolute: 0.005, reason: 'three digits are carried' },
    values: [
      { label: 'year', expected: 2.46, compute: () => dampingDepth({ diffusivity: squareMillimetresPerSecond(0.6), period: days(365.25) }) },
      { label: '30 d', expected: 0.7, compute: () => dampingDepth({ diffusivity: squareMillimetresPerSecond(0.6), period: days(30) }) },
    ],
  },
  {
    id: 'SO-Y gap',
    room,
    quantity: 'resistance of half a millimetre of air about a pipe of 33.4 mm',
    unit: 'm.K/W',
    ...WORKED,
    tolerance: { absolute: 0.005, reason: 'two digits are carried' },
    values: [
      {
        label: '0.5 mm',
        expected: 0.19,
        compute: () =>
          contactGap({
            conductivity: WIDE,
            steadyRise: pipeMetreKelvinPerWatt(0.5),
            outsideDiameter: diameterMillimetres(33.4),
            gap: diameterMillimetres(0.5),
          }).gapResistance,
      },
    ],
  },
];
