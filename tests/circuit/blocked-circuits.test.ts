import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blockedCircuits, circuitHead, type BlockableLoop } from '../../src/circuit/index.js';
import {
  diameterMillimetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  millipascalSeconds,
  pipeMetres,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const runShape = { pipe: { insideDiameter: 'diameter' }, length: 'pipe length', fittings: { optional: 'ratio' } } as const;
const inputShape: Shape<BlockableLoop> = {
  circuit: runShape,
  circuits: 'count',
  flow: 'flow',
  fluid: { density: 'density', viscosity: 'dynamic viscosity' },
  header: { optional: runShape },
};
const loop: BlockableLoop = {
  circuit: { pipe: { insideDiameter: diameterMillimetres(21.844) }, length: pipeMetres(152.4), fittings: ratio(5) },
  circuits: 4,
  flow: litresPerSecond(0.76),
  fluid: { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.3059) },
  header: { pipe: { insideDiameter: diameterMillimetres(34.5) }, length: pipeMetres(30), fittings: ratio(12) },
};

describe('blockedCircuits', () => {
  it('shares the flow among those that run and drops more the more are blocked', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 20 }), fc.double({ min: 0.1, max: 3, noNaN: true }), (circuits, flow) => {
        const rows = blockedCircuits({ ...loop, circuits, flow: litresPerSecond(flow) });
        expect(rows).toHaveLength(Math.min(4, circuits));
        for (const [index, { blocked, circuitFlow, pressureDrop, flowAtSameDrop }] of rows.entries()) {
          const before = rows[index - 1];
          expect(blocked).toBe(index);
          expect(1000 * circuitFlow * (circuits - blocked)).toBeCloseTo(flow, 9);
          expect(pressureDrop).toBeGreaterThan(before?.pressureDrop ?? 0);
          expect(flowAtSameDrop).toBeLessThan(before?.flowAtSameDrop ?? Infinity);
        }
      }),
    );
  });

  it('agrees with a loop of that many circuits, and at the flow for the same drop has that drop', () => {
    const rows = blockedCircuits(loop);
    for (const { blocked, pressureDrop, flowAtSameDrop } of rows) {
      const left = { ...loop, circuits: loop.circuits - blocked };
      expect(circuitHead(left).pressureDrop).toBeCloseTo(pressureDrop, 6);
      expect(circuitHead({ ...left, flow: flowAtSameDrop }).pressureDrop).toBeCloseTo(rows[0]?.pressureDrop ?? NaN, 6);
    }
  });

  it('drops by the flow itself while laminar', () => {
    const [, one] = blockedCircuits({ ...loop, circuit: { pipe: loop.circuit.pipe, length: pipeMetres(150) }, flow: litresPerSecond(0.02) });
    expect(one?.circuitDropRatio).toBeCloseTo(4 / 3, 6);
  });

  it('refuses bad input by name', () => {
    refuses(blockedCircuits, inputShape, loop);
  });
});
