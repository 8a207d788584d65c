import { type GroundResponse, type Layout, singlePipeResistance } from '../../src/ground/index.js';
import { diameterMetres, metres, seconds, wattsPerMetreKelvin, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { layoutOf, responseOf } from '../ground/support.js';
import { type Fixture, type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { risesAt, SECTIONS, sectionOf, soilOfRow, timed } from './ground-rows.js';

const room = 'ground';

const singlePipeChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('loop-oracle-single-pipe');
  const layout = (row: FixtureRow): Layout => layoutOf([[0, row.number('depth_m')]]);
  const label = (row: FixtureRow): string => `depth ${row.text('depth_m')}, k ${row.text('k_W_mK')}, ${row.text('label')}`;
  const exact = (row: FixtureRow): number =>
    singlePipeResistance({
      depth: metres(row.number('depth_m')),
      outsideDiameter: diameterMetres(2 * row.number('ro_m')),
      conductivity: wattsPerMetreKelvin(row.number('k_W_mK')),
    });
  return [
    fromFixture(fixture, {
      id: 'LS-13-line',
      room,
      quantity: 'rise of one pipe, line source',
      column: 'wall_line_minus_image',
      label,
      compute: (row) => risesAt(responseOf(layout(row), { ...soilOfRow(row), selfTerm: 'line' }), row).mean,
    }),
    fromFixture(fixture, {
      id: 'LS-13-cylinder',
      room,
      quantity: 'rise of one pipe, cylinder source; steady: arccosh',
      column: 'wall_cylinder_minus_image(steady row: acosh form)',
      label,
      compute: (row) => (row.text('t_s') === 'inf' ? exact(row) : risesAt(responseOf(layout(row), soilOfRow(row)), row).mean),
    }),
  ];
};

const trenchChecks = (): readonly PublishedCheck[] => {
  const trench = loadFixture('loop-oracle-trench');
  const array = loadFixture('loop-oracle-array');
  const lineResponse = (row: FixtureRow, trenches = 1, spacing = 100): GroundResponse =>
    responseOf(layoutOf(sectionOf(row), trenches, spacing), { ...soilOfRow(row), selfTerm: 'line' });
  const arrayResponse = (row: FixtureRow): GroundResponse => lineResponse(row, row.number('n_trenches'), row.number('spacing_m'));
  const of = (id: string, fixture: Fixture, quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
    fromFixture(fixture, { id, room, quantity, column, label: timed, compute });
  return [
    of('LS-14', trench, 'mean rise of a trench', 'mean_wall_per_W_per_m_of_EACH_pipe', (row) => risesAt(lineResponse(row), row).mean),
    of('LS-14-min', trench, 'rise of the least warmed pipe', 'min_pipe', (row) => risesAt(lineResponse(row), row).min),
    of('LS-14-max', trench, 'rise of the most warmed pipe', 'max_pipe', (row) => risesAt(lineResponse(row), row).max),
    of('LS-14-trench', trench, 'rise per heat per metre of trench', 'mean_wall_per_W_per_m_of_TRENCH', (row) => {
      const response = lineResponse(row);
      return (row.text('t_s') === 'inf' ? response.steadyTrenchRise : response.trenchRiseAfter(seconds(row.number('t_s')))) ?? Number.NaN;
    }),
    of('LS-15', array, 'mean rise of parallel trenches', 'mean_wall_all', (row) => risesAt(arrayResponse(row), row).mean),
    of('LS-15-one', array, 'mean rise of one of them alone', 'mean_wall_single_trench', (row) => risesAt(lineResponse(row), row).mean),
    of('LS-15-min', array, 'rise of the least warmed pipe of parallel trenches', 'min_pipe', (row) => risesAt(arrayResponse(row), row).min),
    of('LS-15-max', array, 'rise of the most warmed pipe of parallel trenches', 'max_pipe', (row) => risesAt(arrayResponse(row), row).max),
  ];
};

const superpositionChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('loop-oracle-superposition');
  const month = 30.4375 * 86400;
  const response = responseOf(layoutOf(SECTIONS['2-pipe over-under 1.2192/1.8288'] ?? []), {
    radius: 0.0167,
    conductivity: 1.5,
    diffusivity: 6e-7,
    selfTerm: 'line',
  });
  const monthOf = (row: FixtureRow): number => 12 * (row.number('year') - 1) + row.number('month');
  const profile = fixture.rows.slice(0, 12).map((row) => row.number('q_extracted_W_per_m_pipe'));
  const step = response.risesAfter(Array.from({ length: 241 }, (_, index) => seconds(index * month)));
  const load = (index: number): number => (index < 0 ? 0 : (profile[index % 12] ?? Number.NaN));
  const change = (months: number): number =>
    -Array.from({ length: months }, (_, index) => (load(index) - load(index - 1)) * (step[months - index] ?? Number.NaN)).reduce((a, b) => a + b, 0);
  const label = (row: FixtureRow): string => `year ${row.text('year')}, month ${row.text('month')}`;
  return [
    fromFixture(fixture, {
      id: 'LS-21-step',
      room,
      quantity: 'step response at month ends',
      column: 'g_step_at_end_of_month(i+1)_Km_W',
      label,
      compute: (row) => step[monthOf(row)] ?? Number.NaN,
    }),
    fromFixture(fixture, {
      id: 'LS-21',
      room,
      quantity: 'wall temperature under a monthly load, superposed steps',
      column: 'wall_change_at_month_end_K(negative=colder)',
      label,
      compute: (row) => change(monthOf(row)),
    }),
  ];
};

const filmChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('loop-oracle-robin');
  const compute = (selfTerm: 'line', row: FixtureRow): number =>
    responseOf(layoutOf([[0, row.number('depth_m')]]), {
      ...soilOfRow(row),
      selfTerm,
      surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(row.number('h_W_m2K')) },
    }).riseAfter(seconds(row.number('t_s')));
  const of = (id: string, quantity: string, column: string): PublishedCheck =>
    fromFixture(fixture, {
      id,
      room,
      quantity,
      column,
      label: (row) => `depth ${row.text('depth_m')}, h ${row.text('h_W_m2K')}, ${row.text('label')}`,
      compute: (row) => compute('line', row),
    });
  return [
    of('LS-17', 'rise below a surface film, added depth against the exact film', 'wall_robin'),
    of('LS-17-depth', 'rise below a surface film as added depth', 'wall_isothermal_at_depth+k/h'),
  ];
};

/** Outside checks of step responses against special functions. */
export const groundStepChecks: readonly PublishedCheck[] = [...singlePipeChecks(), ...trenchChecks(), ...superpositionChecks(), ...filmChecks()];
