import {
  blockedCircuits,
  expectedLoopReadings,
  flushLoop,
  pipeBuoyancy,
  planPressureTest,
  sealedPressureSwing,
  type FlushedLoop,
  type SealedLoop,
} from '../../src/circuit/index.js';
import {
  celsius,
  cubicMetresPerSecond,
  diameterInches,
  diameterMillimetres,
  fraction,
  gallonsPerMinute,
  kilogramsForcePerMetre,
  kilogramsPerCubicMetre,
  kilojoules,
  litres,
  litresPerSecond,
  massPercent,
  metresPerSecond,
  pascals,
  pascalSeconds,
  pipeFeet,
  pipeMetres,
  psi,
  ratio,
  watts,
  type Pressure,
} from '../../src/units/index.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const purge = loadFixture('hydraulics-purge');
/** Water of 10 °C. */
const WATER = { density: kilogramsPerCubicMetre(999.7), viscosity: pascalSeconds(1.3059e-3) };
const GRAVITY = 9.80665;

/** 2 ft/s [m/s]. */
const VELOCITY = 0.6096;

/** The pipe of the row twice: as one of two circuits, and as the header of both; at a share of the flow that runs the circuits at 2 ft/s. */
const flushed = (row: FixtureRow, share = 1): FlushedLoop => {
  const insideDiameter = diameterMillimetres(row.number('ID_minwall_mm'));
  const run = { pipe: { insideDiameter }, length: pipeMetres(100) };
  const flow = cubicMetresPerSecond(2 * share * VELOCITY * (Math.PI / 4) * insideDiameter ** 2);
  return flushLoop({ circuit: run, circuits: 2, headers: [{ ...run, circuits: 2 }], flow, fluid: WATER });
};
const ofPurge = (quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(purge, { id: 'H-FLUSH', room: 'circuit', quantity, column, label: (row) => row.text('pipe'), compute });

/** Hydraulics 5.4: six circuits of 3/4 in DR 11 purged together through 2 in DR 11. */
const six = (): FlushedLoop =>
  flushLoop({
    circuit: { pipe: { insideDiameter: diameterInches(0.86) }, length: pipeFeet(500) },
    circuits: 6,
    headers: [{ pipe: { insideDiameter: diameterInches(1.943) }, length: pipeFeet(100), circuits: 6 }],
    flow: litresPerSecond(1.371),
    fluid: WATER,
  });
const header = (loop: FlushedLoop): FlushedLoop['circuit'] => loop.headers[0] ?? loop.circuit;
const column = (pressure: number): number => pressure / (WATER.density * GRAVITY);

/** Fluids 7, example W4: propylene glycol of 25 % in DR 11. */
const sealed = (warm: number, of: Partial<SealedLoop> = {}): SealedLoop => ({
  pipe: { outsideDiameter: diameterMillimetres(33), insideDiameter: diameterMillimetres(27) },
  fluid: 'propylene-glycol',
  massFraction: massPercent(25),
  filledAt: celsius(warm),
  coldestMean: celsius(-2),
  warmestMean: celsius(25),
  charge: pascals(2e5),
  ...of,
});
const bars = (pressure: Pressure): number => pressure / 1e5;
const narrow = (): SealedLoop =>
  sealed(15, { linearExpansion: { low: ratio(1.5e-4), estimate: ratio(1.5e-4), high: ratio(1.8e-4), coverage: fraction(0.9) } });

const float = (contents: number, surroundings: number): number =>
  kilogramsForcePerMetre.of(
    pipeBuoyancy({
      pipe: { outsideDiameter: diameterInches(1.05), insideDiameter: diameterInches(0.86) },
      contents: kilogramsPerCubicMetre(contents),
      surroundings: kilogramsPerCubicMetre(surroundings),
    }).uplift,
  );

const blocked = (): ReturnType<typeof blockedCircuits> =>
  blockedCircuits({
    circuit: { pipe: { insideDiameter: diameterInches(0.86) }, length: pipeFeet(500) },
    circuits: 4,
    flow: gallonsPerMinute(12),
    fluid: WATER,
  });

/** One ton of cooling less the compressor's part at a coefficient of 3.5. */
const warming = (flow: number): number =>
  expectedLoopReadings({
    circuit: { pipe: { insideDiameter: diameterInches(0.86) }, length: pipeFeet(500) },
    circuits: 1,
    flow: gallonsPerMinute(flow),
    groundHeat: watts(3516.853 * (1 - 1 / 3.5)),
    testTemperature: celsius(10),
    fluid: 'water',
    massFraction: massPercent(0),
    readTemperatures: [celsius(10)],
  }).onTestDay.temperatureDifference.estimate;

const computed = (id: string, quantity: string, unit: string, source: string, digit: number, values: PublishedCheck['values']): PublishedCheck => ({
  id,
  room: 'circuit',
  quantity,
  unit,
  source,
  seen: 'computed independently',
  tolerance: { absolute: digit / 2 + 1e-9, reason: 'half a unit of the last printed digit' },
  values,
});
const PURGED = 'Six circuits of 152.4 m of 3/4 in DR 11 purged through 2 in DR 11 with water of 10 °C, worked out by hand';
const W4 = 'Propylene glycol of 25 % sealed in DR 11, linear expansion 1.5e-4/K, modulus 400 MPa, worked out by hand';

/** Outside checks of flushing, testing, filling and reading. */
export const circuitPurgeChecks: readonly PublishedCheck[] = [
  ofPurge('least flow to purge one circuit', 'flow_L_s_at_0.6096_m_s', (row) => litresPerSecond.of(flushed(row, 0.7).circuit.leastFlow) / 2),
  ofPurge('least flow to purge a header of the same bore', 'flow_USgpm_at_2_ft_s', (row) => gallonsPerMinute.of(header(flushed(row, 3)).leastFlow)),
  ofPurge('friction while flushed', 'dp_Pa_per_m', (row) => flushed(row).circuit.gradient),
  ofPurge('Reynolds number while flushed', 'Re_water_10C', (row) => flushed(row).circuit.reynolds),
  ofPurge('head of a circuit', 'head_per_100_length_units', (row) => column(flushed(row).circuit.pressureDrop)),
  ofPurge('friction factor while flushed', 'f_churchill', (row) => {
    const { gradient, velocity } = flushed(row).circuit;
    return (2 * gradient * row.number('ID_minwall_mm')) / (1000 * WATER.density * velocity ** 2);
  }),
  computed('H-FLUSH', 'velocity in the header', 'm/s', PURGED, 0.001, [
    { label: '2 in', expected: 0.717, compute: () => metresPerSecond.of(header(six()).velocity) },
  ]),
  computed('H-FLUSH', 'head', 'm', PURGED, 0.01, [
    { label: 'circuit', expected: 4.09, compute: () => column(six().circuit.pressureDrop) },
    { label: 'header', expected: 0.39, compute: () => column(header(six()).pressureDrop) },
  ]),
  computed('H-SEALED', 'change of pressure', 'bar', W4, 0.1, [
    { label: '15 to −2 °C', expected: 1, compute: () => bars(sealedPressureSwing(sealed(15)).coldest.pressureChange.estimate) },
  ]),
  computed('H-SEALED', 'change of pressure in summer', 'bar', W4, 0.01, [
    { label: '10 to 25 °C', expected: -0.36, compute: () => bars(sealedPressureSwing(sealed(10)).warmest.pressureChange.estimate) },
  ]),
  computed('H-SEALED', 'mismatch of volumes', '%', `${W4}; difference of two printed numbers`, 0.002, [
    { label: '15 to −2 °C', expected: 0.739 - 0.495, compute: () => 100 * sealedPressureSwing(sealed(15)).coldest.mismatch.estimate },
    { label: '10 to 25 °C', expected: 0.567 - 0.653, compute: () => 100 * sealedPressureSwing(sealed(10)).warmest.mismatch.estimate },
  ]),
  // The printed range is that of 1.5e-4 to 1.8e-4 per kelvin and 200 to 800 MPa; with the whole listed range of expansion it is 0.3 to 4.0 bar.
  computed('H-SEALED', 'limits of the change of pressure', 'bar', `${W4}; range over plausible walls`, 0.1, [
    { label: 'least', expected: 0.5, compute: () => bars(sealedPressureSwing(narrow()).coldest.pressureChange.low) },
    { label: 'most', expected: 3.2, compute: () => bars(sealedPressureSwing(narrow()).coldest.pressureChange.high) },
  ]),
  computed('H-FLOAT', 'uplift of a metre', 'kg', '3/4 in DR 11 in a wet trench, worked out by hand', 0.01, [
    { label: 'full of air, in water', expected: 0.38, compute: () => float(1.2, 1000) },
    { label: 'full of water, in liquefied backfill', expected: 0.34, compute: () => float(1000, 1600) },
  ]),
  computed('H-FLOAT', 'uplift of a metre that nearly balances', 'kg', '3/4 in DR 11 full of water in water: about nothing, worked out by hand', 0.1, [
    { label: 'full of water, in water', expected: 0, compute: () => float(1000, 1000) },
  ]),
  computed('H-BLOCK', 'flow of the others', '%', 'One circuit in four blocked at the same flow of the loop, worked out by hand', 1, [
    { label: 'one in four', expected: 33, compute: () => 100 * ((blocked()[1]?.circuitFlowRatio ?? Number.NaN) - 1) },
  ]),
  {
    ...computed('H-BLOCK', 'pressure drop of a circuit', '%', 'One circuit in four blocked at the same flow, by the power 1.75', 1, [
      { label: 'one in four', expected: 65, compute: () => 100 * ((blocked()[1]?.circuitDropRatio ?? Number.NaN) - 1) },
    ]),
    tolerance: { absolute: 3, reason: 'the power of 1.75 is that of smooth pipe by Blasius; the friction factor here is Churchill’s' },
  },
  computed('H-READ', 'difference of water', 'K', 'One ton of cooling at a coefficient of 3.5, worked out by hand', 0.1, [
    { label: '2.25 gpm', expected: 4.2, compute: () => warming(2.25) },
    { label: '3 gpm', expected: 3.2, compute: () => warming(3) },
  ]),
  computed('H-ENERGY', 'energy of compressed air', 'kJ', '57 L at 100 psi, isothermal to the atmosphere, worked out by hand', 1, [
    {
      label: '57 L',
      expected: 53,
      compute: () =>
        kilojoules.of(planPressureTest({ rule: 'model code', workingPressure: psi(60), rating: psi(160), loopVolume: litres(57) }).airEnergy),
    },
  ]),
];
