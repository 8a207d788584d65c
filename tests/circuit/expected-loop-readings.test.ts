import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circuitHead, expectedLoopReadings, type LoopToRead } from '../../src/circuit/index.js';
import { fluidProperties } from '../../src/fluid/index.js';
import {
  celsius,
  diameterMillimetres,
  fraction,
  kelvinDifference,
  litresPerSecond,
  massPercent,
  pipeMetres,
  ratio,
  type Shape,
  watts,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

type NamedLoop = LoopToRead & { readonly fluid: 'water' | 'propylene-glycol' };
const runShape = { pipe: { insideDiameter: 'diameter' }, length: 'pipe length', fittings: { optional: 'ratio' } } as const;
const inputShape: Shape<NamedLoop> = {
  circuit: runShape,
  circuits: 'count',
  header: { optional: runShape },
  flow: 'flow',
  groundHeat: 'power',
  testTemperature: 'temperature',
  readTemperatures: { optional: { list: 'temperature' } },
  flowError: { optional: 'fraction' },
  heatError: { optional: 'fraction' },
  sensorError: { optional: 'temperature difference' },
  fluid: ['water', 'propylene-glycol'],
  massFraction: 'mass fraction',
};
const loop: NamedLoop = {
  circuit: { pipe: { insideDiameter: diameterMillimetres(27.3) }, length: pipeMetres(180), fittings: ratio(5) },
  circuits: 4,
  header: { pipe: { insideDiameter: diameterMillimetres(49.35) }, length: pipeMetres(40), fittings: ratio(8) },
  flow: litresPerSecond(0.8),
  groundHeat: watts(8000),
  testTemperature: celsius(12),
  fluid: 'propylene-glycol',
  massFraction: massPercent(25),
};

describe('expectedLoopReadings', () => {
  it('has the estimate of circuitHead for water and for the fluid at each temperature, five where none are asked for', () => {
    const { onTestDay, filled } = expectedLoopReadings(loop);
    const dropOf = (fluid: 'water' | 'propylene-glycol', share: number, temperature: number): number =>
      circuitHead({ ...loop, fluid: fluidProperties({ fluid, massFraction: massPercent(share), temperature: celsius(temperature) }) }).pressureDrop;
    expect(onTestDay.pressureDrop.estimate).toBeCloseTo(dropOf('water', 0, 12), 6);
    expect(filled.map(({ temperature }) => temperature)).toEqual([-5, 0, 5, 10, 20]);
    for (const { temperature, pressureDrop } of filled) {
      expect(pressureDrop.estimate).toBeCloseTo(dropOf('propylene-glycol', 25, temperature), 6);
    }
  });

  it('has limits that hold each viscosity and flow between theirs while the regime stays, and widen with every error', () => {
    const reading = (of: Partial<NamedLoop>): ReturnType<typeof expectedLoopReadings>['onTestDay'] =>
      expectedLoopReadings({ ...loop, ...of }).onTestDay;
    fc.assert(
      fc.property(fc.double({ min: 0.6, max: 2, noNaN: true }), fc.double({ min: 0.01, max: 0.3, noNaN: true }), (flow, error) => {
        const tight = reading({ flow: litresPerSecond(flow), flowError: fraction(0), heatError: fraction(0) });
        const loose = reading({ flow: litresPerSecond(flow), flowError: fraction(error), heatError: fraction(0) });
        const slower = reading({ flow: litresPerSecond(flow * (1 - error)) }).pressureDrop.estimate;
        const faster = reading({ flow: litresPerSecond(flow * (1 + error)) }).pressureDrop.estimate;
        expect(loose.pressureDrop.low).toBeLessThan(tight.pressureDrop.low);
        expect(loose.pressureDrop.high).toBeGreaterThan(tight.pressureDrop.high);
        expect(slower).toBeGreaterThanOrEqual(loose.pressureDrop.low);
        expect(faster).toBeLessThanOrEqual(loose.pressureDrop.high);
        expect(loose.temperatureDifference.high).toBeGreaterThan(tight.temperatureDifference.high);
        expect(reading({ sensorError: kelvinDifference(0.5) }).temperatureDifference.low).toBeLessThan(reading({}).temperatureDifference.low);
      }),
      { numRuns: 40 },
    );
  });

  it('makes ±22 % of heat of two thermometers of ±0.5 K at 3.2 K, and ±4 % of a pair zeroed to ±0.1 K', () => {
    const error = (sensors: number): number =>
      expectedLoopReadings({
        ...loop,
        flow: litresPerSecond(0.6),
        groundHeat: watts(0.6 * 4190 * 3.2),
        flowError: fraction(0),
        sensorError: kelvinDifference(sensors),
      }).onTestDay.heatReadingError;
    // The specific heat of water itself adds little; printed values are the thermometers' alone.
    expect(100 * error(0.5)).toBeCloseTo(22, 0);
    expect(Math.floor(100 * error(0.1))).toBe(4);
  });

  it('drops more the colder the fluid is, as long as it is turbulent, and warms less the more flows', () => {
    const fast = expectedLoopReadings({ ...loop, flow: litresPerSecond(6) }).filled;
    expect(fast.flatMap(({ regimes }) => regimes).every((regime) => regime === 'turbulent')).toBe(true);
    const drops = fast.map(({ pressureDrop }) => pressureDrop.estimate);
    expect([...drops].sort((a, b) => b - a)).toEqual(drops);
    expect(fast[0]?.temperatureDifference.estimate).toBeLessThan(expectedLoopReadings(loop).filled[0]?.temperatureDifference.estimate ?? 0);
  });

  it('names the temperatures at which the fluid is frozen instead of reading it there', () => {
    const { filled, frozenAt } = expectedLoopReadings({ ...loop, massFraction: massPercent(10) });
    expect(frozenAt).toEqual([-5]);
    expect(filled).toHaveLength(4);
  });

  it('refuses bad input by name', () => {
    const errors = { flowError: fraction(0.1), heatError: fraction(0.1), sensorError: kelvinDifference(0.1) };
    const full: NamedLoop = { ...loop, ...errors, readTemperatures: [celsius(0), celsius(10)] };
    refuses(expectedLoopReadings, inputShape, full);
  });
});
