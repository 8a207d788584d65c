import { groundTemperature } from '../../src/climate/index.js';
import { exponentialResponse } from '../../src/ground/index.js';
import { neighbourChange, simulateSections } from '../../src/operation/index.js';
import {
  celsius,
  dayOfYear,
  days,
  diameterMillimetres,
  hours,
  kelvinDifference,
  metres,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  seconds,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const room = 'operation';

const DEPTH = 1.5;
const soil = soilOf(1.5, 1.5 / 2.3e6);
/** 1 September 00:00, where the years of the finite elements begin. */
const BEGINS = 244;
const PIPE = 300;

/** Walls at the end of half days of three years [degC], in two sections of unlike length of the same pipes, laid out from 1 September as day 1. */
function sectionWalls(loadYear: ReturnType<typeof loadFixture>, year: number): ArrayLike<number> {
  const wave = { of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(11), coldestDay: dayOfYear(19), period: days(365) } as const;
  const section = (share: number): Parameters<typeof simulateSections>[0]['sections'][number] => ({
    pipeLength: pipeMetres(share * PIPE),
    ground: Array.from({ length: 730 }, (_, half) =>
      groundTemperature({ wave, diffusivity: soil.diffusivity, depth: metres(DEPTH), day: dayOfYear(BEGINS + (half + 1) / 2) }),
    ),
    response: exponentialResponse({
      layout: layoutOf([
        [-0.3, DEPTH],
        [0.3, DEPTH],
      ]),
      pipe: { outsideDiameter: diameterMillimetres(33.4) },
      soil,
    }),
    resistanceAt: () => pipeMetreKelvinPerWatt(0.12),
  });
  const heats = loadYear.rows.flatMap((row) => {
    const heat = PIPE * row.number('q_extraction_W_per_m_per_pipe');
    return [heat, heat];
  });
  const { sectionCourses = [] } = simulateSections({
    step: hours(12),
    duty: { from: 'ground', loads: heats },
    heatCapacityRate: wattsPerKelvin(1500),
    sections: [section(0.35), section(0.65)],
    years: year,
    withCourse: true,
  });
  return sectionCourses[1]?.walls ?? [];
}

const yearChecks = (): readonly PublishedCheck[] => {
  const loadYear = loadFixture('fem-h-year');
  return [1, 3].flatMap((year) => {
    const walls = sectionWalls(loadYear, year);
    return (['noon', 'end_of_day'] as const).map((when) =>
      fromFixture(loadYear, {
        id: 'FEM-h-sections',
        room,
        quantity: `wall of a section of the loop, ${when === 'noon' ? 'noon' : 'end of day'}, year ${String(year)}, against finite elements of all`,
        column: `Twall_${when}_year${String(year)}`,
        label: (row) => `day ${row.text('day_from_1_Sep')}`,
        compute: (row) => walls[2 * row.number('day_from_1_Sep') - (when === 'noon' ? 2 : 1)] ?? Number.NaN,
      }),
    );
  });
};

/** What the second of two trenches of one pipe adds to the first, 28 steps of the table's time. */
function withNeighbour(row: FixtureRow): number {
  const [depth, spacing] = [1.8288, row.number('spacing_m')];
  const steps = Math.max(28, Math.ceil(row.number('t_s') / 86_400));
  const { mutualResistance } = neighbourChange({
    pipes: [{ x: metres(0), depth: metres(depth) }],
    neighbourPipes: [{ x: metres(spacing), depth: metres(depth) }],
    soil: soilOf(row.number('k_W_mK'), row.number('alpha_m2_s')),
    step: seconds(row.number('t_s') / steps),
    groundHeats: new Float64Array(steps).fill(1),
    neighbourLength: pipeMetres(1),
    years: 1,
  });
  return row.number('mean_wall_single_trench') + mutualResistance;
}

/** Outside checks of sections in parallel and of one beside another. */
export const sectionChecks: readonly PublishedCheck[] = [
  ...yearChecks(),
  fromFixture(loadFixture('loop-oracle-array'), {
    id: 'LS-array-neighbour',
    room,
    quantity: 'wall of a trench with what one beside it adds',
    column: 'mean_wall_all',
    label: (row) => `${row.text('section')}, ${row.text('label')}`,
    where: (row) => row.number('n_trenches') === 2 && row.number('t_s') >= 86_400,
    compute: withNeighbour,
  }),
];
