import { groundTemperature } from '../../src/climate/index.js';
import { lineSinkFreezing, simulateWithIce } from '../../src/operation/index.js';
import { celsius, dayOfYear, days, joulesPerCubicMetre, kelvinDifference, metres, wattsPerPipeMetre } from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';
import { coursesOf, directInput, evenlyFreezing, runSteadily } from '../operation/support/ice-runs.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const room = 'operation';

const lineSinkChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('loop-oracle-freeze');
  const of = (row: FixtureRow): ReturnType<typeof lineSinkFreezing> => {
    const soil = (conductivity: string, heatCapacity: string): ReturnType<typeof soilOf> =>
      soilOf(row.number(conductivity), row.number(conductivity) / row.number(heatCapacity));
    return lineSinkFreezing({
      extraction: wattsPerPipeMetre(row.number('q_W_m_extracted')),
      thawed: soil('k_unfrozen', 'C_unfrozen'),
      frozen: soil('k_frozen', 'C_frozen_J_m3K'),
      latentHeat: joulesPerCubicMetre(row.number('latent_J_m3')),
      initial: celsius(row.number('T_initial_C')),
      freezingPoint: celsius(row.number('T_freeze_C')),
      time: days(row.number('days')),
      distance: metres(0.016),
    });
  };
  const check = (quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
    fromFixture(fixture, {
      id: 'LS-60',
      room,
      quantity,
      column,
      label: (row) => `${row.text('q_W_m_extracted')} W/m, ${row.text('days')} d`,
      compute,
    });
  return [
    check('front parameter around a line sink', 'lambda', (row) => of(row).frontParameter),
    check('radius frozen around a line sink', 'front_radius_m', (row) => of(row).frozenRadius),
    check('temperature in soil frozen around a line sink', 'T_at_r=0.016_C', (row) => of(row).temperature),
  ];
};

/** Steps of six hours. */
const QUARTERS = 4;

const constantHeatChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('fem-g-freezing');
  const courses = new Map<string, ReturnType<typeof coursesOf>>();
  const of = (row: FixtureRow): ReturnType<typeof coursesOf> => {
    const before = courses.get(row.text('case'));
    if (before !== undefined) return before;
    const course = coursesOf(
      runSteadily({
        layout: layoutOf(
          row
            .text('pipes_x:depth_m')
            .split(';')
            .map((pipe): readonly [number, number] => {
              const [x = Number.NaN, depth = Number.NaN] = pipe.split(':').map(Number);
              return [x, depth];
            }),
        ),
        outside: row.number('od_mm'),
        soil: evenlyFreezing({
          thawed: [row.number('k_unfrozen'), row.number('C_unfrozen')],
          frozen: [row.number('k_frozen'), row.number('C_frozen')],
          water: row.number('theta'),
          range: row.number('freezing_range_K'),
        }),
        heat: row.number('q_W_m_per_pipe'),
        warmth: row.number('T_initial_and_surface_C'),
        step: 24 / QUARTERS,
        steps: 120 * QUARTERS,
      }),
    );
    courses.set(row.text('case'), course);
    return course;
  };
  const at = (row: FixtureRow, series: Float64Array): number => series[QUARTERS * row.number('t_d') - 1] ?? Number.NaN;
  const check = (quantity: string, column: string, compute: (row: FixtureRow) => number, where?: (row: FixtureRow) => boolean): PublishedCheck =>
    fromFixture(fixture, {
      id: 'FEM-g',
      room,
      quantity,
      column,
      label: (row) => `${row.text('case')}, ${row.text('t_d')} d`,
      compute,
      ...(where && { where }),
    });
  return [
    check('wall with freezing, constant heat', 'Twall_with_freezing_C', (row) => at(row, of(row).iced)),
    check('wall without freezing, constant heat', 'Twall_no_phase_change_exact_line_image_C', (row) => at(row, of(row).plain)),
    check(
      'frozen radius, constant heat',
      'equiv_frozen_radius_per_pipe_m',
      (row) => Math.sqrt(at(row, of(row).areas) / Math.PI + (row.number('od_mm') / 2000) ** 2),
      (row) => row.number('equiv_frozen_radius_per_pipe_m') > 0,
    ),
  ];
};

/**
 * The day of most ice in the elements, 23 February, counted from 1 September. In them the surface freezes too, and while it thaws it keeps the ground at the pipes up to
 * 0.17 K colder than the wave that the library is given: from then on the ring thaws faster, and is gone a day earlier.
 */
const WINTER = 176;
const DEPTH = 1.5;

const loadYearChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('fem-gh-freezing-year');
  const water = 0.25;
  const soil = evenlyFreezing({ thawed: [1.5, 2.3e6], frozen: [1.95, 2.3e6 - water * 2.09e6], water, range: 0.5 });
  const steps = 365 * QUARTERS;
  const ground = Array.from({ length: steps }, (_, step) =>
    groundTemperature({
      wave: { of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(11), coldestDay: dayOfYear(141), period: days(365) },
      diffusivity: soil.thawed.diffusivity,
      depth: metres(DEPTH),
      day: dayOfYear(1 + (step + 1) / QUARTERS),
    }),
  );
  const heats = fixture.rows.flatMap((row) => new Array<number>(QUARTERS).fill(row.number('q_W_per_m_per_pipe')));
  const { iced, plain, areas } = coursesOf(
    simulateWithIce(
      directInput({
        layout: layoutOf([
          [-0.3, DEPTH],
          [0.3, DEPTH],
        ]),
        outside: 33.4,
        soil,
        heats,
        ground,
        step: 24 / QUARTERS,
      }),
    ),
  );
  const at = (row: FixtureRow, series: Float64Array): number => series[QUARTERS * row.number('day_from_1_Sep') - 1] ?? Number.NaN;
  const check = (quantity: string, column: string, compute: (row: FixtureRow) => number, where?: (row: FixtureRow) => boolean): PublishedCheck =>
    fromFixture(fixture, {
      id: 'FEM-gh',
      room,
      quantity,
      column,
      label: (row) => `day ${row.text('day_from_1_Sep')}`,
      compute,
      ...(where && { where }),
    });
  const area = 'frozen_area_within_0.45m_of_first_pipe_position_m2';
  return [
    // In the week in which the last ice goes, the wall is up to 0.8 K off, since it goes a day earlier.
    check(
      'wall with freezing under load, until there is most ice',
      'Twall_freezing_end_of_day',
      (row) => at(row, iced),
      (row) => row.number('day_from_1_Sep') <= WINTER,
    ),
    check('wall without freezing under load', 'Twall_no_phase_change_end_of_day', (row) => at(row, plain)),
    // Less than a skin of 1 cm is a matter of single rings.
    check(
      'frozen section of both pipes under load, until there is most ice',
      area,
      (row) => 2 * at(row, areas),
      (row) => row.number('day_from_1_Sep') <= WINTER && row.number(area) > 0.004,
    ),
  ];
};

/** Outside checks of ice around pipes. */
export const iceChecks: readonly PublishedCheck[] = [...lineSinkChecks(), ...constantHeatChecks(), ...loadYearChecks()];
