import {
  minimumBendRadius,
  pipeDimensions,
  pipePressureRating,
  type DeratingSource,
  type DimensionRatio,
  type PipeMaterial,
  type PipeSize,
} from '../../src/pipe/index.js';
import { bars, celsius, diameterInches, diameterMillimetres, fahrenheit, inches, psi } from '../../src/units/index.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const inch = loadFixture('hydraulics-pipe-inch');
const metric = loadFixture('hydraulics-pipe-metric');
const sdr9 = loadFixture('hydraulics-pipe-sdr9');

const cold = (material: PipeMaterial, ratio: string): number =>
  pipePressureRating({ material, dimensionRatio: ratio as DimensionRatio, temperature: celsius(20) }).rating;

const fromInch = (column: string, material: PipeMaterial): PublishedCheck => ({
  ...fromFixture(inch, {
    id: `HY-rating ${material}`,
    room: 'pipe',
    quantity: `pressure rating of ${material}`,
    column,
    label: (row) => `${row.text('system')} ${row.text('nominal_in')} DR ${row.text('DR')}`,
    compute: (row) => psi.of(cold(material, row.text('DR')) as ReturnType<typeof psi>),
  }),
  seen: 'computed independently',
});

const fromMetric = (column: string, material: PipeMaterial): PublishedCheck => ({
  ...fromFixture(metric, {
    id: `HY-rating ${material}`,
    room: 'pipe',
    quantity: `nominal pressure of ${material}`,
    column,
    label: (row) => `DN ${row.text('DN_OD_mm')} SDR ${row.text('SDR')}`,
    compute: (row) => bars.of(cold(material, row.text('SDR')) as ReturnType<typeof bars>),
  }),
  seen: 'computed independently',
});

const fromSdr9 = (column: string, quantity: string, compute: (of: ReturnType<typeof pipeDimensions>) => number): PublishedCheck =>
  fromFixture(sdr9, {
    id: `HY-SDR 9 ${column}`,
    room: 'pipe',
    quantity,
    column,
    label: (row: FixtureRow) => `DN ${row.text('DN_OD_mm')} SDR 9`,
    compute: (row) => compute(pipeDimensions({ series: 'metric', size: row.text('DN_OD_mm') as PipeSize, dimensionRatio: '9' })),
  });

/** Factors of the three lists; the head that a pipe of 160 m is allowed by temperature for AS/NZS 4130. */
const DERATED: readonly (readonly [list: DeratingSource, expected: number, temperature: ReturnType<typeof celsius>])[] = [
  ['awwaM55', 1, fahrenheit(80)],
  ['awwaM55', 0.9, fahrenheit(81)],
  ['awwaM55', 0.9, fahrenheit(90)],
  ['awwaM55', 0.8, fahrenheit(91)],
  ['awwaM55', 0.8, fahrenheit(100)],
  ['asNzs4130', 160 / 160, celsius(25)],
  ['asNzs4130', 150 / 160, celsius(30)],
  ['asNzs4130', 143 / 160, celsius(35)],
  ['iso4427Temperature', 1, celsius(20)],
  ['iso4427Temperature', 0.87, celsius(30)],
];

/** Computed radii of the chapter: nominal size and outside diameter in inches, radius in inches for DR 11. */
const RADII = [
  ['3/4', 1.05, 26.25],
  ['1', 1.315, 32.9],
  ['1-1/4', 1.66, 41.5],
  ['2', 2.375, 59.4],
] as const;

export const pipeStrengthChecks: readonly PublishedCheck[] = [
  fromInch('rating_PE4710_HDS1000_psi_73F', 'PE4710'),
  fromInch('rating_PE3608_HDS800_psi_73F', 'PE3608'),
  fromMetric('PN_calc_bar_PE100_C1.25', 'PE100'),
  fromMetric('PN_calc_bar_PE80_C1.27', 'PE80'),
  {
    id: 'HY-rating rule',
    room: 'pipe',
    quantity: 'pressure rating of PE3608',
    unit: 'psi',
    // The PE4710 column of the same table, 202 psi for DR 11, counts with 1008 psi; the standard's 1000 psi give 200. It is left out.
    source: 'Maine rule 144-232-6, Table 604.2',
    seen: 'original',
    tolerance: { absolute: 0.5001, reason: 'half a unit of the last printed digit' },
    values: (['9', '11', '13.5', '15.5', '17'] as const).map((ratio, index) => ({
      label: `DR ${ratio}`,
      expected: [200, 160, 128, 110, 100][index] ?? NaN,
      compute: () => psi.of(cold('PE3608', ratio) as ReturnType<typeof psi>),
    })),
  },
  {
    id: 'HY-derating',
    room: 'pipe',
    quantity: 'temperature factor of polyethylene by three lists',
    unit: '1',
    source: 'AWWA M55 (2006) Table 4-6, a maker’s table for AS/NZS 4130 pipe (addresses withheld), and ISO 4427-1 Annex A recalled',
    seen: 'quoted',
    tolerance: { absolute: 1e-9, reason: 'the printed factors and heads themselves' },
    values: DERATED.map(([list, expected, temperature]) => ({
      label: `${list} ${String(temperature)} degC`,
      expected,
      compute: () => pipePressureRating({ material: 'PE100', dimensionRatio: '11', temperature }).listedFactors[list],
    })),
  },
  fromSdr9('emin_mm', 'minimum wall', ({ minimumWall }) => diameterMillimetres.of(minimumWall)),
  fromSdr9('emax_mm', 'maximum wall', ({ wall, minimumWall }) => 2 * diameterMillimetres.of(wall) - diameterMillimetres.of(minimumWall)),
  {
    id: 'PR-bend',
    room: 'pipe',
    quantity: 'least bend radius of DR 11',
    unit: 'in',
    source: 'Plastics Pipe Institute, Handbook of Polyethylene Pipe, chapter 7: 25 outside diameters (copies, addresses withheld)',
    seen: 'quoted',
    tolerance: { absolute: 0.05001, reason: 'half a unit of the last printed digit' },
    values: RADII.map(([size, outside, expected]) => ({
      label: `${size} in`,
      expected,
      compute: () => inches.of(minimumBendRadius({ outsideDiameter: diameterInches(outside), dimensionRatio: '11' }).leastBendRadius),
    })),
  },
];
