import { circuitHead, loopVolume, purgeFlow, type CircuitHead, type PipeRun, type PurgeFlow } from '../../src/circuit/index.js';
import {
  cubicMetresPerSecond,
  diameterInches,
  diameterMetres,
  diameterMillimetres,
  gallons,
  gallonsPerMinute,
  kilogramsPerCubicMetre,
  litres,
  litresPerSecond,
  metres,
  pascals,
  pascalSeconds,
  pipeFeet,
  pipeMetres,
  ratio,
} from '../../src/units/index.js';
import { loadFixture, type FixtureRow, type Tolerance } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const hydraulics = loadFixture('hydraulics-check');
const inch = loadFixture('hydraulics-pipe-inch');

const isPipe = (row: FixtureRow): boolean => row.text('kind') === 'pipe';
const bore = (insideDiameter: number): PipeRun['pipe'] => ({ insideDiameter: diameterMetres(insideDiameter) });

/** Four equal circuits, each the pipe of the row at its flow. */
function headOf(row: FixtureRow): CircuitHead {
  return circuitHead({
    circuit: { pipe: bore(diameterMillimetres(row.number('ID_mm'))), length: pipeMetres(row.number('L_m')) },
    circuits: 4,
    flow: cubicMetresPerSecond(4 * litresPerSecond(row.number('flow_L_s'))),
    fluid: { density: kilogramsPerCubicMetre(row.number('rho_kg_m3')), viscosity: pascalSeconds(row.number('mu_Pa_s')) },
    roughness: metres(row.number('roughness_mm') / 1000),
  });
}

const ofCircuit = (quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(hydraulics, {
    id: 'H-DP',
    room: 'circuit',
    quantity,
    column,
    where: isPipe,
    label: (row) => `${row.text('case')} ${row.text('pipe')}`,
    compute,
  });

/** Hydraulics 5.3: four circuits of 3/4 DR 11, a header and a heat pump on one pump curve; flow and parts as printed. */
interface PumpedLoop {
  readonly fluid: string;
  readonly density: number;
  readonly viscosity: number;
  readonly flow: number;
  readonly head: number;
  readonly circuit: number;
  readonly header: number;
  readonly equipment: number;
  readonly reynolds: number;
}
const PUMPED: readonly PumpedLoop[] = [
  {
    fluid: 'water',
    density: 999.97,
    viscosity: 1.5182e-3,
    flow: 0.75289,
    head: 6.7326,
    circuit: 29_985,
    header: 11_503,
    equipment: 24_535,
    reynolds: 7226,
  },
  {
    fluid: 'glycol-like',
    density: 1022,
    viscosity: 3.9e-3,
    flow: 0.72261,
    head: 6.9113,
    circuit: 33_721,
    header: 12_946,
    equipment: 22_601,
    reynolds: 2759,
  },
];
const pumped = ({ density, viscosity, flow }: PumpedLoop): CircuitHead =>
  circuitHead({
    circuit: { pipe: bore(0.021844), length: pipeFeet(500) },
    circuits: 4,
    flow: litresPerSecond(flow),
    fluid: { density: kilogramsPerCubicMetre(density), viscosity: pascalSeconds(viscosity) },
    header: { pipe: bore(0.0344932), length: pipeFeet(100), fittings: ratio(12) },
    equipmentDrop: pascals(25_000 * (flow / 0.76) ** 2),
  });
/** Half a unit of the last printed digit, and twice the rounding of the printed flow, since losses go at most with its square. */
const roundingOf = (halfDigit: number, { flow }: PumpedLoop, value: number): Tolerance => ({
  absolute: halfDigit + (2 * 5e-6 * value) / flow,
  reason: 'half a unit of the last printed digit, and what the rounding of the printed flow makes of it',
});
const ofPump = (
  quantity: string,
  unit: string,
  halfDigit: number,
  expected: (loop: PumpedLoop) => number,
  compute: (head: CircuitHead) => number,
): PublishedCheck => {
  const values = PUMPED.map((loop) => ({
    label: loop.fluid,
    expected: expected(loop),
    compute: () => compute(pumped(loop)),
    tolerance: roundingOf(halfDigit, loop, expected(loop)),
  }));
  return {
    id: 'H-PUMP',
    room: 'circuit',
    quantity,
    unit,
    source:
      'Four circuits of 152.4 m of 3/4 DR 11, header 30.48 m with K 12, heat pump 25 kPa at 0.76 L/s: operating points solved on a given pump curve',
    seen: 'computed independently',
    tolerance: { absolute: halfDigit, reason: 'half a unit of the last printed digit; each value adds the rounding of the printed flow' },
    values,
  };
};

const purge = loadFixture('hydraulics-purge');
/** Water of 10 °C. */
const WATER = { density: kilogramsPerCubicMetre(999.7), viscosity: pascalSeconds(1.3059e-3) };
const purged = (row: FixtureRow): PurgeFlow =>
  purgeFlow({
    circuit: { pipe: { insideDiameter: diameterMillimetres(row.number('ID_minwall_mm')) }, length: pipeFeet(500) },
    circuits: 1,
    fluid: WATER,
  });
const ofPurge = (quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(purge, { id: 'H-PURGE', room: 'circuit', quantity, column, label: (row) => row.text('pipe'), compute });

/** The fixture quotes diameters and walls; their contents were computed outside this library. */
const contents = (of: Parameters<typeof fromFixture>[1]): PublishedCheck => ({ ...fromFixture(inch, of), seen: 'computed independently' });

export const circuitChecks: readonly PublishedCheck[] = [
  ofCircuit('pressure drop of a circuit', 'dp_churchill_Pa', (row) => headOf(row).circuit.pressureDrop),
  ofCircuit('head of a circuit', 'head_churchill_m', (row) => headOf(row).head),
  ofCircuit('velocity in a circuit', 'velocity_m_s', (row) => headOf(row).circuit.velocity),
  ofCircuit('Reynolds number in a circuit', 'Re', (row) => headOf(row).circuit.reynolds),
  ofPump(
    'head of loop, header and heat pump',
    'm',
    5e-5,
    ({ head }) => head,
    ({ head }) => head,
  ),
  ofPump(
    'circuit part',
    'Pa',
    0.5,
    ({ circuit }) => circuit,
    ({ circuit }) => circuit.pressureDrop,
  ),
  ofPump(
    'header part with its fittings',
    'Pa',
    0.5,
    ({ header }) => header,
    ({ header }) => header?.pressureDrop ?? Number.NaN,
  ),
  ofPump(
    'Reynolds number',
    '1',
    0.5,
    ({ reynolds }) => reynolds,
    ({ circuit }) => circuit.reynolds,
  ),
  contents({
    id: 'H-VOL',
    room: 'circuit',
    quantity: 'volume of a metre of pipe',
    column: 'vol_minwall_L_per_m',
    label: (row) => `${row.text('system')} ${row.text('nominal_in')} DR ${row.text('DR')}`,
    compute: (row) => litres.of(loopVolume({ pipes: [{ pipe: bore(diameterInches(row.number('ID_minwall_in'))), length: pipeMetres(1) }] }).total),
  }),
  contents({
    id: 'H-VOL',
    room: 'circuit',
    quantity: 'volume of 100 ft of pipe',
    column: 'vol_minwall_USgal_per_100ft',
    label: (row) => `${row.text('system')} ${row.text('nominal_in')} DR ${row.text('DR')}`,
    compute: (row) =>
      gallons.of(loopVolume({ pipes: [{ pipe: bore(diameterInches(row.number('ID_minwall_in'))), length: pipeFeet(25), count: 4 }] }).total),
  }),
  ofPurge('purging flow', 'flow_L_s_at_0.6096_m_s', (row) => litresPerSecond.of(purged(row).flow)),
  ofPurge('purging flow in US units', 'flow_USgpm_at_2_ft_s', (row) => gallonsPerMinute.of(purged(row).flow)),
  ofPurge('friction while purging', 'dp_Pa_per_m', (row) => purged(row).circuit.gradient),
  ofPurge('Reynolds number while purging', 'Re_water_10C', (row) => purged(row).circuit.reynolds),
];
