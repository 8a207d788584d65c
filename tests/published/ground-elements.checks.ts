import { singlePipeResistance } from '../../src/ground/index.js';
import { diameterMillimetres, metres, wattsPerMetreKelvin } from '../../src/units/index.js';
import { layoutOf, responseOf } from '../ground/support.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { pipesOf, risesAt } from './ground-rows.js';

const room = 'ground';

const elementChecks = (): readonly PublishedCheck[] => {
  const rises = (row: FixtureRow): { mean: number; min: number; max: number } =>
    risesAt(
      responseOf(layoutOf(pipesOf(row)), {
        radius: row.number('od_mm') / 2000,
        conductivity: row.number('k_W_mK'),
        diffusivity: row.number('k_W_mK') / row.number('C_J_m3K'),
      }),
      row,
    );
  const label = (row: FixtureRow): string => `${row.text('case')} k ${row.text('k_W_mK')} ${row.text('t')}`;
  const steps = (['b', 'c'] as const).flatMap((part) =>
    (
      [
        ['mean', 'rise_mean_mK_W'],
        ['min', 'rise_min'],
        ['max', 'rise_max'],
      ] as const
    ).map(([which, column]) =>
      fromFixture(loadFixture(`fem-${part}-step`), {
        id: `FEM-${part}-${which}`,
        room,
        quantity: `${which} rise of ${part === 'b' ? 'one trench' : 'parallel trenches'} against finite elements`,
        column,
        label,
        compute: (row) => rises(row)[which],
      }),
    ),
  );
  return [
    fromFixture(loadFixture('fem-a-steady'), {
      id: 'FEM-a',
      room,
      quantity: 'shape factor of one pipe against finite elements',
      column: 'S_fem',
      label: (row) => row.text('case'),
      compute: (row) =>
        1 /
        singlePipeResistance({
          depth: metres(row.number('depth_m')),
          outsideDiameter: diameterMillimetres(row.number('od_mm')),
          conductivity: wattsPerMetreKelvin(1),
        }),
    }),
    ...steps,
  ];
};

/** Outside checks against finite elements, an independent method. */
export const groundElementChecks: readonly PublishedCheck[] = elementChecks();
