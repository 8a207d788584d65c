import { flatOverlappedCoil, onePipe, type RingLayout, ringResponse, type RingResponse, uprightOverlappedCoil } from '../../src/ground/index.js';
import { diameterMetres, metres, seconds } from '../../src/units/index.js';
import { responseOf, soilOf } from '../ground/support.js';
import { type Fixture, type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const four = loadFixture('loop-oracle-rings');
const long = loadFixture('rings-long-coils');

const layoutOf = (row: FixtureRow): RingLayout => {
  const section = {
    ringDiameter: metres(row.number('coil_diameter_m')),
    pitch: metres(row.number('pitch_m')),
    depth: metres(row.number('centre_depth_m')),
    turns: row.number('n_rings'),
    trenches: 1,
    trenchSpacing: metres(4),
  };
  return row.text('kind') === 'flat' ? flatOverlappedCoil(section) : uprightOverlappedCoil(section);
};
const radiusOf = (row: FixtureRow): number => row.number('tube_outer_radius_m');
// The tables take a ring's own heat as leaving a line.
const responseOfRow = (row: FixtureRow): RingResponse =>
  ringResponse({
    layout: layoutOf(row),
    pipe: { outsideDiameter: diameterMetres(2 * radiusOf(row)) },
    soil: soilOf(row.number('k_W_mK'), row.number('alpha_m2_s')),
    selfTerm: 'line',
  });
const label = (row: FixtureRow): string => `${row.text('kind')}, ${row.text('n_rings')} rings ${row.text('pitch_m')} m apart, ${row.text('label')}`;
const check = (fixture: Fixture, id: string, quantity: string, rings?: number): PublishedCheck =>
  fromFixture(fixture, {
    id,
    room: 'ground',
    quantity,
    column: 'mean_ring_wall_per_W_per_m_pipe',
    where: (row) => rings === undefined || row.number('n_rings') === rings,
    label,
    compute: (row) => responseOfRow(row).riseAfter(seconds(row.number('t_s'))),
  });

/** Outside checks of overlapped coils against ring sources. */
export const groundRingChecks: readonly PublishedCheck[] = [
  check(four, 'LS-rings', 'rise of overlapped coils of 4 rings'),
  check(long, 'LS-rings-4', 'rise of overlapped coils of 4 rings, by even points', 4),
  check(long, 'LS-rings-12', 'rise of overlapped coils of 12 rings', 12),
  check(long, 'LS-rings-40', 'rise of overlapped coils of 40 rings', 40),
  fromFixture(four, {
    id: 'LS-rings-straight',
    room: 'ground',
    quantity: 'rise of a straight pipe at the depth of the coils',
    column: 'straight_single_pipe_same_depth',
    label,
    compute: (row) =>
      responseOf(onePipe({ depth: metres(row.number('centre_depth_m')), trenches: 1, trenchSpacing: metres(4) }), {
        radius: radiusOf(row),
        conductivity: row.number('k_W_mK'),
        diffusivity: row.number('alpha_m2_s'),
        selfTerm: 'line',
      }).riseAfter(seconds(row.number('t_s'))),
  }),
];
