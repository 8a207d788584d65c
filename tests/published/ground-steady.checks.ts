import {
  equalTemperatureResistance,
  type GroundResponse,
  periodicResponse,
  type PeriodicResponse,
  pipeRowResistance,
  singlePipeResistance,
} from '../../src/ground/index.js';
import { diameterMetres, metres, seconds, wattsPerMetreKelvin } from '../../src/units/index.js';
import { layoutOf, responseOf, soilOf } from '../ground/support.js';
import { type Fixture, type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { sectionOf } from './ground-rows.js';

const room = 'ground';

const steadyChecks = (): readonly PublishedCheck[] => {
  const sections = loadFixture('loop-oracle-steady-sections');
  const rows = loadFixture('loop-oracle-steady-row');
  const unit = { conductivity: 1, diffusivity: 1e-6 };
  const equalHeat = (row: FixtureRow): GroundResponse => responseOf(layoutOf(sectionOf(row)), { ...unit, radius: row.number('ro_m') });
  const equalTemperature = (row: FixtureRow): ReturnType<typeof equalTemperatureResistance> =>
    equalTemperatureResistance({
      layout: layoutOf(sectionOf(row)),
      pipe: { outsideDiameter: diameterMetres(2 * row.number('ro_m')) },
      conductivity: wattsPerMetreKelvin(1),
    });
  const pipeOf = (row: FixtureRow) => ({
    depth: metres(row.number('depth_m')),
    outsideDiameter: diameterMetres(2 * row.number('ro_m')),
    conductivity: wattsPerMetreKelvin(1),
  });
  const row = (r: FixtureRow): number => pipeRowResistance({ ...pipeOf(r), spacing: metres(r.number('spacing_m')) });
  const of = (id: string, fixture: Fixture, quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
    fromFixture(fixture, {
      id,
      room,
      quantity,
      column,
      label: (r) => (fixture === sections ? r.text('section') : `depth ${r.text('depth_m')}, spacing ${r.text('spacing_m')}`),
      compute,
    });
  return [
    {
      id: 'LS-03',
      room,
      quantity: 'shape factor of one buried pipe',
      unit: 'm',
      source: 'Worked value in the file ht/conduction.py of a general, open heat-transfer library, D = 1, z = 100, L = 3; here in centimetres',
      seen: 'quoted',
      tolerance: { relative: 1e-14, reason: 'printed to the last digit of a double' },
      values: [
        {
          label: 'D 0.01 m, z 1 m, L 3 m',
          expected: 3.146071454894645,
          compute: () => 3 / singlePipeResistance({ depth: metres(1), outsideDiameter: diameterMetres(0.01), conductivity: wattsPerMetreKelvin(1) }),
        },
      ],
    },
    of('LS-04', sections, 'steady rise at equal heat', 'kR_equal_flux_mean', (r) => equalHeat(r).steadyRise ?? Number.NaN),
    of('LS-04-min', sections, 'steady rise of the least warmed pipe', 'kR_pipe_min', (r) =>
      Math.min(...(equalHeat(r).steadyPipeRises?.flat() ?? [])),
    ),
    of('LS-04-max', sections, 'steady rise of the most warmed pipe', 'kR_pipe_max', (r) => Math.max(...(equalHeat(r).steadyPipeRises?.flat() ?? []))),
    of('LS-04-equal', sections, 'steady rise at equal wall temperature', 'kR_equal_temperature', (r) => equalTemperature(r).resistance),
    of('LS-04-least', sections, 'least share of heat at equal wall temperature', 'q_share_min', (r) =>
      Math.min(...equalTemperature(r).heatShares.flat()),
    ),
    of('LS-04-most', sections, 'greatest share of heat at equal wall temperature', 'q_share_max', (r) =>
      Math.max(...equalTemperature(r).heatShares.flat()),
    ),
    of('LS-05-single', rows, 'steady resistance of one pipe', 'kR_single_acosh', (r) => singlePipeResistance(pipeOf(r))),
    of(
      'LS-05-line',
      rows,
      'steady rise of one pipe as a line',
      'kR_single_log',
      (r) => responseOf(layoutOf([[0, r.number('depth_m')]]), { ...unit, radius: r.number('ro_m') }).steadyRise ?? Number.NaN,
    ),
    of('LS-05-row', rows, 'steady resistance of an endless row', 'kR_infinite_row_sinh', row),
    of('LS-05-images', rows, 'steady resistance of an endless row, against its images', 'kR_infinite_row_by_400001_images', row),
  ];
};

const periodicChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('loop-oracle-periodic');
  const of = (id: string, quantity: string, column: string, pick: (response: PeriodicResponse) => number): PublishedCheck =>
    fromFixture(fixture, {
      id,
      room,
      quantity,
      column,
      label: (row) => `${row.text('section')}, k ${row.text('k_W_mK')}, period ${row.text('period_s')} s`,
      compute: (row) =>
        pick(
          periodicResponse({
            layout: layoutOf(sectionOf(row)),
            pipe: { outsideDiameter: diameterMetres(2 * row.number('ro_m')) },
            soil: soilOf(row.number('k_W_mK'), row.number('alpha_m2_s')),
            period: seconds(row.number('period_s')),
            selfTerm: 'line',
          }),
        ),
    });
  return [
    of('LS-23', 'swing of the wall under a sine of heat', 'amplitude_Km_W', ({ amplitude }) => amplitude),
    of('LS-23-lag', 'lag of the wall behind a sine of heat', 'lag_days', ({ lag }) => lag / 86400),
  ];
};

/** Outside checks of steady and steadily swinging responses. */
export const groundSteadyChecks: readonly PublishedCheck[] = [...steadyChecks(), ...periodicChecks()];
