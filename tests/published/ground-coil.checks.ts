import { coilPipe, type CoilPipe } from '../../src/ground/index.js';
import { inches, metres } from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const coils = loadFixture('loop-oracle-coil-length');
const coilOf = (row: FixtureRow): CoilPipe => coilPipe({ ringDiameter: metres(row.number('coil_diameter_m')), pitch: metres(row.number('pitch_m')) });
const check = (quantity: string, column: string, compute: (coil: CoilPipe) => number): PublishedCheck =>
  fromFixture(coils, {
    id: 'LS-30-arc',
    room: 'ground',
    quantity,
    column,
    label: (row) => `D ${row.text('coil_diameter_m')} m, pitch ${row.text('pitch_m')} m`,
    compute: (row) => compute(coilOf(row)),
  });

/** Outside checks of the pipe in an overlapped coil. */
export const groundCoilChecks: readonly PublishedCheck[] = [
  check('pipe of a turn', 'arc_length_per_pitch_m', ({ pipePerTurn }) => pipePerTurn),
  check('pipe per metre of trench', 'arc_m_per_m_trench', ({ ringPipePerTrench }) => ringPipePerTrench),
  check('circles per metre of trench', 'circle_only_piD_per_pitch', ({ circlesPerTrench }) => circlesPerTrench),
  check('pipe with a return per metre of trench', 'arc_plus_one_return_m_per_m', ({ pipePerTrench }) => pipePerTrench),
  {
    id: 'LS-30',
    room: 'ground',
    quantity: 'pipe per foot of trench, 36 in rings 10 in apart with a return',
    unit: '1',
    source: 'Education page of an electric utility: 12 ft of pipe per foot of trench (address withheld)',
    seen: 'quoted',
    tolerance: { absolute: 0.5, reason: 'half a unit of the printed digit' },
    values: [
      {
        label: '36 in, 10 in',
        expected: 12,
        compute: () => coilPipe({ ringDiameter: inches(36), pitch: inches(10) }).pipePerTrench,
      },
    ],
  },
];
