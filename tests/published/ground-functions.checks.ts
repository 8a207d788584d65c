import { cylinderSource, cylinderWall, exponentialIntegral } from '../../src/numerics/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const room = 'numerics';

const e1Checks = (): readonly PublishedCheck[] => {
  const huisman = loadFixture('e1-huisman');
  const printed = fromFixture(huisman, {
    id: 'LS-10',
    room,
    quantity: 'exponential integral, printed table',
    column: 'E1',
    where: (row) => row.text('reproduces') === 'yes',
    label: (row) => `E1(${row.text('x')})`,
    compute: (row) => exponentialIntegral(row.number('x')),
  });
  const rows = huisman.rows.filter((row) => row.text('reproduces') === 'yes');
  const table = (name: string, id: string, column: string): PublishedCheck =>
    fromFixture(loadFixture(name), {
      id,
      room,
      quantity: 'exponential integral',
      column,
      label: (row) => `E1(${row.text('x')})`,
      compute: (row) => exponentialIntegral(row.number('x')),
    });
  return [
    {
      ...printed,
      values: printed.values.map((value, index) => ({
        ...value,
        tolerance: { absolute: rows[index]?.number('half_of_last_digit') ?? 0, reason: 'half a unit of the last printed digit' },
      })),
    },
    table('loop-oracle-e1', 'LS-11', 'E1(x)'),
    table('e1-high-precision', 'LS-11-wide', 'E1'),
  ];
};

const cylinderChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('loop-oracle-cyl-g');
  const of = (id: string, quantity: string, atWall: boolean, compute: (row: FixtureRow) => number): PublishedCheck =>
    fromFixture(fixture, {
      id,
      room,
      quantity,
      column: 'G_cyl',
      where: (row) => !atWall || row.number('p=r/ro') === 1,
      label: (row) => `G(${row.text('Fo')}, ${row.text('p=r/ro')})`,
      compute,
    });
  return [
    of('LS-12-wall', 'cylinder source at its wall', true, (row) => cylinderWall(row.number('Fo'))),
    of('LS-12', 'cylinder source at and away from its wall', false, (row) => cylinderSource(row.number('Fo'), row.number('p=r/ro'))),
  ];
};

/** Outside checks of the special functions that the ground response stands on. */
export const groundFunctionChecks: readonly PublishedCheck[] = [...e1Checks(), ...cylinderChecks()];
