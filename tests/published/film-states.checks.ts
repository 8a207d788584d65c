import { filmStates } from '../support/film-states.js';
import { loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const STATES = ['cold', 'middle', 'warm'];

/** Film and fluid that feed on each other: each state of the one case. */
export const filmStateChecks: readonly PublishedCheck[] = [
  fromFixture(loadFixture('film-three-states'), {
    id: 'PI-film states',
    room: 'pipe',
    quantity: 'mean fluid where film and fluid agree',
    column: 'mean_fluid_C',
    label: (row) => row.text('state'),
    compute: (row) => filmStates(row, row.number('heat_W_m'))[STATES.indexOf(row.text('state'))] ?? Number.NaN,
  }),
];
