import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DropRead, expectedLoopReadings, flowFromDrop } from '../../src/circuit/index.js';
import { celsius, diameterMillimetres, litresPerSecond, massPercent, pascals, pipeMetres, ratio, type Shape, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

type NamedRead = DropRead & { readonly fluid: 'water' | 'propylene-glycol' };
const runShape = { pipe: { insideDiameter: 'diameter' }, length: 'pipe length', fittings: { optional: 'ratio' } } as const;
const inputShape: Shape<NamedRead> = {
  circuit: runShape,
  circuits: 'count',
  header: { optional: runShape },
  dropRead: 'pressure',
  dropError: { optional: 'pressure' },
  fluid: ['water', 'propylene-glycol'],
  massFraction: 'mass fraction',
  temperature: 'temperature',
};
const read: NamedRead = {
  circuit: { pipe: { insideDiameter: diameterMillimetres(27.3) }, length: pipeMetres(180), fittings: ratio(5) },
  circuits: 4,
  header: { pipe: { insideDiameter: diameterMillimetres(49.35) }, length: pipeMetres(40), fittings: ratio(8) },
  dropRead: pascals(15_000),
  dropError: pascals(1000),
  fluid: 'propylene-glycol',
  massFraction: massPercent(25),
  temperature: celsius(5),
};

describe('flowFromDrop', () => {
  it('finds the flow whose expected drop was read, in every regime', () => {
    const inRange = fc.double({ min: 0.05, max: 5, noNaN: true });
    fc.assert(
      fc.property(inRange, fc.double({ min: -5, max: 20, noNaN: true }), (flow, degrees) => {
        const temperature = celsius(degrees);
        const [reading] = expectedLoopReadings({
          ...read,
          flow: litresPerSecond(flow),
          groundHeat: watts(5000),
          testTemperature: celsius(10),
          readTemperatures: [temperature],
        }).filled;
        const found = flowFromDrop({ ...read, temperature, dropError: pascals(0), dropRead: pascals(reading?.pressureDrop.estimate ?? NaN) }).flow;
        expect(litresPerSecond.of(found.estimate)).toBeCloseTo(flow, 8);
        expect(found.low).toBeLessThanOrEqual(found.estimate);
        expect(found.high).toBeGreaterThanOrEqual(found.estimate);
      }),
    );
  });

  it('has wider limits the less the gauges are sure', () => {
    const width = (error: number): number => {
      const { low, high } = flowFromDrop({ ...read, dropError: pascals(error) }).flow;
      return high - low;
    };
    expect(width(3000)).toBeGreaterThan(width(500));
  });

  it('refuses bad input by name', () => {
    refuses(flowFromDrop, inputShape, read);
  });
});
