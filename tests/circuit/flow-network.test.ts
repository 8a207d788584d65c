import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FlowNetworkInput, type LinkEnds, type NetworkLink, solveFlowNetwork } from '../../src/circuit/index.js';
import { cubicMetresPerSecond, type Flow, pascals, type Pressure, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

interface Bare {
  readonly inflows: readonly Flow[];
  readonly links: readonly LinkEnds[];
}
const shape: Shape<Bare> = { inflows: { list: 'flow' }, links: { list: { from: 'count', to: 'count' } } };
const power =
  (factor: number, exponent: number) =>
  (flow: Flow): Pressure =>
    pascals(factor * flow ** exponent);
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const DIAGONAL = [
  [0, 1],
  [1, 2],
  [0, 2],
  [0, 3],
  [3, 2],
  [1, 3],
] as const;
const networks: fc.Arbitrary<FlowNetworkInput> = fc
  .record({
    factors: fc.array(between(0.01, 1000), { minLength: 6, maxLength: 6 }),
    exponents: fc.array(between(1, 2), { minLength: 6, maxLength: 6 }),
    out: fc.array(between(-1, 1), { minLength: 3, maxLength: 3 }).filter((flows) => flows.some((flow) => Math.abs(flow) > 1e-6)),
  })
  .map(({ factors, exponents, out }) => ({
    inflows: [-out.reduce((sum, flow) => sum + flow, 0), ...out].map((flow) => cubicMetresPerSecond(flow)),
    links: DIAGONAL.map(([from, to], index) => ({ from, to, dropAt: power(factors[index] ?? 1, exponents[index] ?? 1) })),
  }));

describe('solveFlowNetwork', () => {
  it('conserves mass at every node and closes every loop', () => {
    fc.assert(
      fc.property(networks, (input) => {
        const { flows, drops, nodeDrops } = solveFlowNetwork(input);
        const most = Math.max(...input.inflows.map(Math.abs));
        input.inflows.forEach((inflow, node) => {
          const left = input.links.reduce<number>(
            (sum, { from, to }, k) => sum + (flows[k] ?? NaN) * (to === node ? 1 : from === node ? -1 : 0),
            inflow,
          );
          expect(Math.abs(left)).toBeLessThanOrEqual(1e-12 * most);
        });
        const largest = Math.max(...drops.map(Math.abs));
        input.links.forEach(({ from, to }, k) => {
          expect(Math.abs((nodeDrops[to] ?? NaN) - (nodeDrops[from] ?? NaN) - (drops[k] ?? NaN))).toBeLessThanOrEqual(1e-9 * largest);
        });
      }),
    );
  });

  it('turns every flow round when all that flows in flows out instead', () => {
    fc.assert(
      fc.property(networks, (input) => {
        const [there, back] = [input, { ...input, inflows: input.inflows.map((flow) => cubicMetresPerSecond(-flow)) }].map(solveFlowNetwork);
        const most = Math.max(...input.inflows.map(Math.abs));
        there?.flows.forEach((flow, k) => {
          expect(Math.abs(flow + (back?.flows[k] ?? NaN))).toBeLessThanOrEqual(1e-7 * most);
        });
      }),
    );
  });

  it('rests when nothing flows in', () => {
    const links = DIAGONAL.map(([from, to]) => ({ from, to, dropAt: power(1, 2) }));
    expect(solveFlowNetwork({ inflows: [0, 0, 0, 0].map((flow) => cubicMetresPerSecond(flow)), links }).flows.map(Math.abs)).toEqual([
      0, 0, 0, 0, 0, 0,
    ]);
  });

  it('leaves a balanced bridge at rest and turns with the balance', () => {
    const bridge = (factor: number): number =>
      solveFlowNetwork({
        inflows: [1, 0, 0, -1].map((flow) => cubicMetresPerSecond(flow)),
        links: [
          { from: 0, to: 1, dropAt: power(1, 2) },
          { from: 0, to: 2, dropAt: power(1, 2) },
          { from: 1, to: 3, dropAt: power(factor, 2) },
          { from: 2, to: 3, dropAt: power(2, 2) },
          { from: 1, to: 2, dropAt: power(5, 2) },
        ],
      }).flows[4] ?? NaN;
    expect(Math.abs(bridge(2))).toBeLessThan(1e-7);
    expect(bridge(3)).toBeGreaterThan(0.01);
    expect(bridge(1)).toBeLessThan(-0.01);
  });

  it('refuses what has no one answer, and bad input by name', () => {
    const two = { inflows: [cubicMetresPerSecond(1), cubicMetresPerSecond(-1)], links: [{ from: 0, to: 1, dropAt: power(1, 2) }] };
    const code = (input: FlowNetworkInput): string => {
      try {
        solveFlowNetwork(input);
        return 'none';
      } catch (error) {
        return String(Reflect.get(Object(error), 'code'));
      }
    };
    expect(code(two)).toBe('none');
    expect(code({ ...two, inflows: [cubicMetresPerSecond(1), cubicMetresPerSecond(-0.9)] })).toBe('impossible');
    expect(code({ ...two, inflows: [...two.inflows, cubicMetresPerSecond(0)] })).toBe('impossible');
    expect(code({ ...two, links: [{ from: 0, to: 0, dropAt: power(1, 2) }] })).toBe('impossible');
    expect(code({ ...two, inflows: [cubicMetresPerSecond(1e-300), cubicMetresPerSecond(-1e-300)] })).toBe('out-of-range');
    const lossless = { from: 0, to: 1, dropAt: () => pascals(0) };
    expect(code({ ...two, links: [lossless, lossless] })).toBe('impossible');
    expect(code({ ...two, links: [...two.links, { from: 0, to: 1, dropAt: () => pascals(NaN) }] })).toBe('not-finite');
    const square = DIAGONAL.map(([from, to]) => ({ from, to }));
    const driven = (link: LinkEnds): NetworkLink => (typeof link === 'object' && link !== null ? { ...link, dropAt: power(1, 2) } : link);
    const wrapped = ({ inflows, links }: Bare): unknown =>
      solveFlowNetwork({ inflows, links: Array.isArray(links) ? links.map(driven) : (links as readonly NetworkLink[]) });
    refuses(wrapped, shape, { inflows: [1, 0, -0.5, -0.5].map((flow) => cubicMetresPerSecond(flow)), links: square });
  });
});
