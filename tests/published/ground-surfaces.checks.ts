import { groundTemperature, surfaceWaveThroughFilm } from '../../src/climate/index.js';
import { filmResponse, type FilmResponseInput, groundResponse, type GroundSurface } from '../../src/ground/index.js';
import {
  celsius,
  dayOfYear,
  days,
  diameterMetres,
  diameterMillimetres,
  kelvinDifference,
  metres,
  seconds,
  type SurfaceCoefficient,
  wattsPerSquareMetreKelvin,
} from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { pipesOf, soilOfRow } from './ground-rows.js';

const room = 'ground';
const film = loadFixture('fem-f-film');
const annual = loadFixture('fem-f-film-annual');

const soilOfFilm = (row: FixtureRow): FilmResponseInput['soil'] => soilOf(row.number('k_W_mK'), row.number('k_W_mK') / row.number('C_J_m3K'));
const inputOf = (row: FixtureRow): FilmResponseInput => ({
  layout: layoutOf(pipesOf(row)),
  pipe: { outsideDiameter: diameterMillimetres(row.number('od_mm')) },
  soil: soilOfFilm(row),
  coefficient: wattsPerSquareMetreKelvin(row.number('h_W_m2K')),
});
const steady = (row: FixtureRow): boolean => row.text('t_s') === 'inf';
const riseAt = (row: FixtureRow, response: ReturnType<typeof groundResponse>): number =>
  (steady(row) ? response.steadyRise : response.riseAfter(seconds(row.number('t_s')))) ?? Number.NaN;
const below = (row: FixtureRow, surface: GroundSurface): number => {
  const { coefficient: _, ...input } = inputOf(row);
  return riseAt(row, groundResponse({ ...input, surface }));
};
const exact = (row: FixtureRow): number => riseAt(row, filmResponse(inputOf(row)));
const asDepth = (row: FixtureRow, coefficient: SurfaceCoefficient): number => below(row, { type: 'film', coefficient });
/** The depth by which pipes below an isothermal surface would have to lie deeper for the same rise, by halving. */
const equivalentDepth = (row: FixtureRow): number => {
  const wanted = exact(row);
  let [low, high] = [0, 2];
  for (let halvings = 0; halvings < 40; halvings += 1) {
    const middle = (low + high) / 2;
    if (asDepth(row, wattsPerSquareMetreKelvin(row.number('k_W_mK') / middle)) < wanted) low = middle;
    else high = middle;
  }
  return low;
};

const label = (row: FixtureRow): string => `${row.text('case')} h ${row.text('h_W_m2K')} ${row.text('t')}`;
const check = (id: string, quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(film, { id, room, quantity, column, label, compute });

const PERIOD = days(365);
/** The wave of the air at the depth of pipes: how much is left of it, and how late it is. */
const wave = (row: FixtureRow): { readonly gain: number; readonly lag: number } => {
  const { conductivity, diffusivity } = soilOfFilm(row);
  const air = { of: 'air', mean: celsius(0), amplitude: kelvinDifference(1), coldestDay: dayOfYear(1), period: PERIOD } as const;
  const surface = surfaceWaveThroughFilm({ air, coefficient: wattsPerSquareMetreKelvin(row.number('h_W_m2K')), conductivity, diffusivity }).wave;
  const mean = (day: number): number =>
    pipesOf(row).reduce((sum, [, depth]) => sum + groundTemperature({ wave: surface, depth: metres(depth), diffusivity, day: dayOfYear(day) }), 0) /
    pipesOf(row).length;
  // −cos and its quarter turn
  const [even, odd] = [-mean(1), -mean(1 + 365 / 4)];
  return { gain: Math.hypot(even, odd), lag: (Math.atan2(odd, even) * 365) / (2 * Math.PI) };
};
const waveCheck = (id: string, quantity: string, column: string, part: 'gain' | 'lag'): PublishedCheck =>
  fromFixture(annual, {
    id,
    room,
    quantity,
    column,
    label: (row) => `${row.text('case')} h ${row.text('h_W_m2K')}`,
    compute: (row) => wave(row)[part],
  });

const robin = fromFixture(loadFixture('loop-oracle-robin'), {
  id: 'LS-17-exact',
  room,
  quantity: 'rise below a surface film',
  column: 'wall_robin',
  label: (row) => `depth ${row.text('depth_m')}, h ${row.text('h_W_m2K')}, ${row.text('label')}`,
  compute: (row) =>
    riseAt(
      row,
      filmResponse({
        layout: layoutOf([[0, row.number('depth_m')]]),
        pipe: { outsideDiameter: diameterMetres(2 * row.number('ro_m')) },
        soil: soilOf(soilOfRow(row).conductivity, soilOfRow(row).diffusivity),
        selfTerm: 'line',
        coefficient: wattsPerSquareMetreKelvin(row.number('h_W_m2K')),
      }),
    ),
});

/** Outside checks of pipes below a surface film. */
export const groundSurfaceChecks: readonly PublishedCheck[] = [
  check('FEM-f', 'rise below a film against finite elements', 'rise_film_mK_W', exact),
  check('FEM-f-depth', 'rise below a film as added depth against finite elements with the film', 'rise_film_mK_W', (row) =>
    asDepth(row, wattsPerSquareMetreKelvin(row.number('h_W_m2K'))),
  ),
  check('FEM-f-isothermal', 'rise of the same pipes below an isothermal surface', 'rise_isothermal_mK_W', (row) =>
    below(row, { type: 'isothermal' }),
  ),
  check(
    'FEM-f-increase',
    'rise below a film over that below an isothermal surface, less 1',
    'increase_pct',
    (row) => 100 * (exact(row) / below(row, { type: 'isothermal' }) - 1),
  ),
  check('FEM-f-equivalent', 'added depth that stands for a film, steady', 'equivalent_extra_depth_m', equivalentDepth),
  check('FEM-f-exact', 'rise below a film by its closed form, steady', 'semi_exact_steady', exact),
  waveCheck('FEM-f-gain', 'what is left of a wave of the air at the pipes below a film', 'air_gain_fem', 'gain'),
  waveCheck('FEM-f-lag', 'how late it is', 'air_lag_days_fem', 'lag'),
  waveCheck('FEM-f-gain-exact', 'what is left of it, by closed form', 'gain_exact_film', 'gain'),
  waveCheck('FEM-f-lag-exact', 'how late it is, by closed form', 'lag_exact_film', 'lag'),
  {
    ...robin,
    tolerance: { relative: 1e-7, reason: 'what the table says of its quadrature' },
  },
];
