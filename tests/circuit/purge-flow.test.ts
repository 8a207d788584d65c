import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { purgeFlow, type PurgeFlowInput } from '../../src/circuit/index.js';
import {
  type Diameter,
  diameterMillimetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  millipascalSeconds,
  pipeMetres,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const pipeShape = { insideDiameter: 'diameter' } as const;
const inputShape: Shape<PurgeFlowInput> = {
  circuit: { pipe: pipeShape, length: 'pipe length', fittings: { optional: 'ratio' } },
  circuits: 'count',
  headers: { optional: { list: { pipe: pipeShape, length: 'pipe length', fittings: { optional: 'ratio' }, circuits: 'count' } } },
  fluid: { density: 'density', viscosity: 'dynamic viscosity' },
};
const bore = (millimetres: number): { readonly insideDiameter: Diameter } => ({ insideDiameter: diameterMillimetres(millimetres) });
const water = { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.3059) };
const example: PurgeFlowInput = { circuit: { pipe: bore(21.844), length: pipeMetres(152.4) }, circuits: 6, fluid: water };
const full: PurgeFlowInput = {
  ...example,
  circuit: { ...example.circuit, fittings: ratio(5) },
  headers: [
    { pipe: bore(49.35), length: pipeMetres(30), circuits: 6, fittings: ratio(4) },
    { pipe: bore(34.49), length: pipeMetres(6), circuits: 3 },
  ],
};

describe('purgeFlow', () => {
  it('runs a section at its widest bore at just the purging velocity, and a wider one slower', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.double({ min: 15, max: 50, noNaN: true }), (beyond, circuit) => {
        const at = (widening: number): ReturnType<typeof purgeFlow> =>
          purgeFlow({
            ...example,
            circuits: 12,
            circuit: { pipe: bore(circuit), length: pipeMetres(100) },
            headers: [{ pipe: bore(circuit * Math.sqrt(beyond) * widening), length: pipeMetres(10), circuits: beyond }],
          });
        expect(at(1 - 1e-9).headers[0]?.velocity).toBeCloseTo(0.6096, 6);
        expect(at(1 - 1e-9).findings).toEqual([]);
        expect(at(1.05).headers[0]?.velocity).toBeLessThan(0.6096);
        expect(at(1.05).findings.map(({ code }) => code)).toEqual(['header-not-purged']);
      }),
    );
  });

  it('takes flow in proportion to the circuits and the same head', () => {
    const [one, six] = [purgeFlow({ ...example, circuits: 1 }), purgeFlow(example)];
    expect(six.flow / one.flow).toBeCloseTo(6, 12);
    expect(six.head).toBe(one.head);
  });

  it('gives the worked case: six circuits of 152.4 m of 3/4 DR 11 take 1.371 L/s and 4.09 m; 2 in DR 11 then runs at 0.717 m/s and loses 0.39 m', () => {
    const { flow, circuit, headers } = purgeFlow({
      ...example,
      headers: [{ pipe: bore(49.3522), length: pipeMetres(30.48), circuits: 6 }],
    });
    expect(litresPerSecond.of(flow)).toBeCloseTo(1.371, 3);
    expect(circuit.pressureDrop / (999.7 * 9.80665)).toBeCloseTo(4.09, 2);
    expect(headers[0]?.velocity).toBeCloseTo(0.717, 3);
    expect((headers[0]?.pressureDrop ?? Number.NaN) / (999.7 * 9.80665)).toBeCloseTo(0.39, 2);
  });

  it('allows the bores of the rule: 21.8, 30.9, 37.8, 43.7 and 53.5 mm for 1, 2, 3, 4 and 6 circuits of 21.84 mm', () => {
    const serving = [1, 2, 3, 4, 6];
    const { headers } = purgeFlow({ ...example, headers: serving.map((circuits) => ({ pipe: bore(21.84), length: pipeMetres(1), circuits })) });
    expect(headers.map(({ widestBore }) => Number(diameterMillimetres.of(widestBore).toFixed(1)))).toEqual([21.8, 30.9, 37.8, 43.7, 53.5]);
  });

  it('refuses more circuits beyond a section than there are, and bad input by name', () => {
    expect(() => purgeFlow({ ...example, headers: [{ pipe: bore(30), length: pipeMetres(1), circuits: 7 }] })).toThrow(
      expect.objectContaining({ argument: 'headers.0.circuits' }),
    );
    refuses(purgeFlow, inputShape, example, { more: [full] });
  });
});
