import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  balancingValves,
  type FlowSplitInput,
  flowSplitInputShape,
  pumpCurve,
  pumpOperatingPoint,
  type RatedDrop,
  solveFlowSplit,
} from '../../src/circuit/index.js';
import {
  bars,
  cubicMetresPerHour,
  type Diameter,
  diameterMillimetres,
  headMetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metres,
  millipascalSeconds,
  pascals,
  pipeMetres,
  ratio,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const bore = (millimetres: number): { readonly insideDiameter: Diameter } => ({ insideDiameter: diameterMillimetres(millimetres) });
const run = (millimetres: number, length: number): FlowSplitInput['circuits'][number] => ({ pipe: bore(millimetres), length: pipeMetres(length) });
const water = { density: kilogramsPerCubicMetre(999.97), viscosity: millipascalSeconds(1.5182) };
const four: FlowSplitInput = {
  arrangement: 'common manifold',
  circuits: [1, 2, 3, 4].map(() => run(21.844, 152.4)),
  flow: litresPerSecond(0.76),
  fluid: water,
};
const full: FlowSplitInput = {
  ...four,
  arrangement: 'reverse return',
  circuits: [
    { ...run(21.844, 150), fittings: ratio(5), valve: { ratedFlow: cubicMetresPerHour(2.5), ratedDrop: bars(1) } },
    { ...run(21.844, 152), blocked: true },
    run(27.3, 160),
  ],
  supply: [{ ...run(34.5, 3), fittings: ratio(1) }, run(27.3, 3)],
  return: [run(27.3, 3), { ...run(34.5, 4), fittings: ratio(2) }],
  header: { ...run(49.4, 30), fittings: ratio(8) },
  roughness: metres(2e-6),
};
const blockedAt = (input: FlowSplitInput, blocked: number): FlowSplitInput => ({
  ...input,
  circuits: input.circuits.map((circuit, index) => (index === blocked ? { ...circuit, blocked: true } : circuit)),
});
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const loops: fc.Arbitrary<FlowSplitInput> = fc
  .record({
    arrangement: fc.constantFrom('direct return' as const, 'reverse return' as const),
    circuits: fc.array(fc.record({ bore: between(15, 40), length: between(30, 400), kv: between(0.5, 10) }), { minLength: 2, maxLength: 8 }),
    headers: fc.array(fc.record({ bore: between(18, 60), length: between(0, 15) }), { minLength: 14, maxLength: 14 }),
    flow: between(0.05, 4),
    viscosity: between(1, 20),
  })
  .map(({ arrangement, circuits, headers, flow, viscosity }) => {
    const sections = headers.map((section) => run(section.bore, section.length));
    const header = { supply: sections.slice(0, circuits.length - 1), return: sections.slice(7, 7 + circuits.length - 1) };
    const valve = (kv: number): RatedDrop => ({ ratedFlow: cubicMetresPerHour(kv), ratedDrop: bars(1) });
    return {
      arrangement,
      circuits: circuits.map((circuit) => ({ ...run(circuit.bore, circuit.length), valve: valve(circuit.kv) })),
      ...header,
      flow: litresPerSecond(flow),
      fluid: { ...water, viscosity: millipascalSeconds(viscosity) },
    };
  });

describe('solveFlowSplit', () => {
  it('conserves mass at every take-off and drops the same along every path, to 1e-9', () => {
    fc.assert(
      fc.property(loops, (input) => {
        const { circuits, supply, return: back, fieldDrop } = solveFlowSplit(input);
        const flows = circuits.map(({ flow }) => flow);
        expect(Math.abs(sum(flows) / input.flow - 1)).toBeLessThan(1e-12);
        const reverse = input.arrangement === 'reverse return';
        const signed = ({ flow, pressureDrop }: { readonly flow: number; readonly pressureDrop: number }): number => Math.sign(flow) * pressureDrop;
        circuits.forEach((circuit, k) => {
          if (k < supply.length) expect(Math.abs((supply[k]?.flow ?? NaN) - sum(flows.slice(k + 1)))).toBeLessThan(1e-12 * input.flow);
          const beyond = reverse ? flows.slice(0, k + 1) : flows.slice(k + 1);
          if (k < back.length) expect(Math.abs((back[k]?.flow ?? NaN) - sum(beyond))).toBeLessThan(1e-12 * input.flow);
          const out = sum(supply.slice(0, k).map(signed));
          const home = sum((reverse ? back.slice(k) : back.slice(0, k)).map(signed));
          const own = signed(circuit) + Math.sign(circuit.flow) * circuit.valveDrop;
          expect(Math.abs((out + own + home) / fieldDrop - 1)).toBeLessThan(1e-9);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('shares equally among equal circuits on a manifold, whatever their valves as long as they are alike', () => {
    const { circuits, flowSpread, findings } = solveFlowSplit(four);
    for (const { flow, flowShare } of circuits) {
      expect(flow / four.flow).toBeCloseTo(0.25, 12);
      expect(flowShare).toBeCloseTo(1, 12);
    }
    expect(flowSpread).toBeLessThan(1e-12);
    expect(findings).toEqual([]);
  });

  it('goes with bore⁴/length while laminar, and with √(bore⁵/length) where only fittings count', () => {
    const thick = { ...water, viscosity: millipascalSeconds(50) };
    const laminar = solveFlowSplit({ ...four, circuits: [run(20, 100), run(26, 180)], flow: litresPerSecond(0.1), fluid: thick });
    expect((laminar.circuits[0]?.flow ?? NaN) / (laminar.circuits[1]?.flow ?? NaN) / ((20 / 26) ** 4 * 1.8)).toBeCloseTo(1, 6);
    const fittings = [ratio(100), ratio(100 / (20 / 26))];
    const constant = solveFlowSplit({ ...four, circuits: [20, 26].map((size, k) => ({ ...run(size, 0), fittings: fittings[k] ?? ratio(0) })) });
    expect((constant.circuits[0]?.flow ?? NaN) / (constant.circuits[1]?.flow ?? NaN) / (20 / 26) ** 1.5).toBeCloseTo(1, 9);
  });

  it('leaves the others a third more when one of four is blocked at the same flow; a circuit then drops 65 ± 3 % more', () => {
    const [sound, blocked] = [solveFlowSplit(four), solveFlowSplit(blockedAt(four, 1))];
    expect(blocked.circuits[1]).toMatchObject({ flow: 0, pressureDrop: 0, flowShare: 0 });
    for (const k of [0, 2, 3]) {
      expect((blocked.circuits[k]?.flow ?? NaN) / (sound.circuits[k]?.flow ?? NaN)).toBeCloseTo(4 / 3, 9);
    }
    expect(blocked.flowSpread).toBeLessThan(1e-12);
    expect(Math.abs(blocked.fieldDrop / sound.fieldDrop - 1.65)).toBeLessThan(0.03);
  });

  it('leaves them less than that, at less flow of the loop, when a pump drives it', () => {
    const curve = pumpCurve({ points: [0, 1, 2].map((flow) => ({ flow: litresPerSecond(flow), head: headMetres(9 - 2 * flow ** 2) })) });
    const flowWith = (input: FlowSplitInput): number =>
      pumpOperatingPoint({ curve, density: water.density, dropAt: (flow) => solveFlowSplit({ ...input, flow }).pressureDrop }).flow;
    const ratioOfFlows = flowWith(blockedAt(four, 0)) / flowWith(four);
    expect(ratioOfFlows).toBeGreaterThan(0.75);
    expect(ratioOfFlows).toBeLessThan(1);
  });

  it('evens the flow by throttling the circuit that gets the most', () => {
    const uneven: FlowSplitInput = { ...four, circuits: [run(21.844, 100), run(21.844, 180)] };
    const split = solveFlowSplit(uneven);
    expect(split.findings.map(({ code }) => code)).toEqual(['flow-split-uneven']);
    // The valve that takes what the shorter circuit drops less at half of the flow.
    const [short, long] = [100, 180].map((length) => solveFlowSplit({ ...four, circuits: [run(21.844, length)], flow: litresPerSecond(0.38) }));
    const valve = { ratedFlow: litresPerSecond(0.38), ratedDrop: pascals(((long?.fieldDrop ?? NaN) - (short?.fieldDrop ?? NaN)) * (999.1 / 999.97)) };
    const even = solveFlowSplit({ ...uneven, circuits: [{ ...run(21.844, 100), valve }, run(21.844, 180)] });
    expect(even.flowSpread).toBeLessThan(1e-9);
    expect(even.circuits[0]?.valveDrop).toBeGreaterThan(0);
  });

  it('finds a circuit that runs backwards between headers that choke at opposite ends', () => {
    const input: FlowSplitInput = {
      ...four,
      arrangement: 'reverse return',
      circuits: [run(30, 1), run(21.844, 50), run(30, 1)],
      supply: [run(10, 20), run(40, 1)],
      return: [run(40, 1), run(10, 20)],
    };
    const { circuits, findings } = solveFlowSplit(input);
    expect(circuits[1]?.flow).toBeLessThan(0);
    expect(findings.map(({ code }) => code)).toEqual(['flow-split-uneven', 'circuit-runs-backwards']);
  });

  it('adds the run to the house, and takes the supply’s sections for the return', () => {
    const { fieldDrop, header, pressureDrop } = solveFlowSplit(full);
    expect(fieldDrop + (header?.pressureDrop ?? NaN)).toBeCloseTo(pressureDrop, 9);
    const alike: FlowSplitInput = { ...four, arrangement: 'direct return', supply: [run(34, 3), run(34, 3), run(27, 3)] };
    expect(solveFlowSplit(alike).fieldDrop).toBe(solveFlowSplit({ ...alike, return: alike.supply ?? [] }).fieldDrop);
  });

  it('refuses circuits all blocked, headers that do not fit, and bad input by name', () => {
    const none = { ...four, circuits: four.circuits.map((circuit) => ({ ...circuit, blocked: true })) };
    expect(() => solveFlowSplit(none)).toThrow('circuits: all blocked');
    expect(() => solveFlowSplit({ ...four, arrangement: 'direct return' })).toThrow(expect.objectContaining({ argument: 'supply' }));
    expect(() => solveFlowSplit({ ...four, arrangement: 'direct return' })).toThrow(/3 sections of header between the circuits.*`common manifold`/u);
    expect(() => solveFlowSplit({ ...four, supply: [run(30, 1)] })).toThrow(expect.objectContaining({ argument: 'supply' }));
    expect(() => solveFlowSplit({ ...four, circuits: [run(20, 0), run(20, 0)] })).toThrow(expect.objectContaining({ code: 'impossible' }));
    refuses(solveFlowSplit, flowSplitInputShape, full);
  });
});

describe('balancingValves', () => {
  const targets = fc.constantFrom('equal flow' as const, 'flow by length' as const);
  const bare = (input: FlowSplitInput): FlowSplitInput => ({ ...input, circuits: input.circuits.map(({ pipe, length }) => ({ pipe, length })) });

  it('give the flows wanted when they are fitted, and leave one open', () => {
    fc.assert(
      fc.property(loops, targets, (input, target) => {
        const settings = balancingValves(input, target);
        expect(Math.min(...settings.map((setting) => setting?.valveDrop ?? NaN))).toBe(0);
        const circuits = bare(input).circuits.map((circuit, k) => {
          const kv = settings[k]?.flowAtOneBar;
          return kv === undefined ? circuit : { ...circuit, valve: { ratedFlow: kv, ratedDrop: bars(1) } };
        });
        const split = solveFlowSplit({ ...input, circuits });
        const length = sum(circuits.map((circuit) => circuit.length));
        split.circuits.forEach(({ flow }, k) => {
          const share = target === 'equal flow' ? 1 / circuits.length : (circuits[k]?.length ?? NaN) / length;
          expect(flow / input.flow / share).toBeCloseTo(1, 8);
          expect(settings[k]?.flow).toBeCloseTo(input.flow * share, 12);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('do as well as loss coefficients among the fittings', () => {
    const input = bare({ ...four, circuits: [run(21.844, 100), run(21.844, 150), run(21.844, 180)] });
    const settings = balancingValves(input);
    const fitted = input.circuits.map((circuit, k) => ({ ...circuit, fittings: ratio(settings[k]?.valveCoefficient ?? NaN) }));
    expect(solveFlowSplit({ ...input, circuits: fitted }).flowSpread).toBeLessThan(1e-9);
  });

  it('pass over a blocked circuit, and refuse bad input by name', () => {
    expect(balancingValves(blockedAt(four, 2))[2]).toBeUndefined();
    expect(() => balancingValves(four, 'none of these' as never)).toThrow(expect.objectContaining({ argument: 'target' }));
    expect(() => balancingValves({ ...four, circuits: [run(20, 0), run(20, 9)] }, 'flow by length')).toThrow(
      expect.objectContaining({ argument: 'circuits.0.length' }),
    );
    refuses((input: FlowSplitInput) => balancingValves(input), flowSplitInputShape, full);
  });
});
