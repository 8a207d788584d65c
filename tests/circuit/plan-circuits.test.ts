import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  circuitOption,
  type CircuitNeed,
  type CircuitOptionInput,
  circuitSpread,
  planCircuits,
  type CircuitPlanInput,
  type CircuitPlanResult,
} from '../../src/circuit/index.js';
import { InputError } from '../../src/errors/index.js';
import { litresPerSecond, pipeFeet, pipeMetres, ratio, type Shape, trenchMetres } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const needShape: Shape<CircuitNeed> = {
  pipeLength: 'pipe length',
  flow: 'flow',
  pipePerTrench: 'ratio',
  circuitsPerTrench: { optional: 'count' },
  trenchesPerCircuit: { optional: 'count' },
  leadLength: { optional: 'pipe length' },
};
const optionShape: Shape<CircuitOptionInput> = {
  ...needShape,
  coilLength: 'pipe length',
  circuits: 'count',
  coilsPerCircuit: { optional: 'count' },
};
const inputShape: Shape<CircuitPlanInput> = {
  ...needShape,
  coilLengths: { list: 'pipe length' },
  trenches: { optional: 'count' },
  longestTrench: { optional: 'trench length' },
  longestCircuit: { optional: 'pipe length' },
};
const metric = [100, 150, 200].map((length) => pipeMetres(length));
const example: CircuitPlanInput = { pipeLength: pipeMetres(488), flow: litresPerSecond(0.6), coilLengths: metric, pipePerTrench: ratio(2) };

const whole = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const arbitraryInput: fc.Arbitrary<CircuitPlanInput> = fc
  .record({
    pipe: between(20, 5000),
    flow: between(0.05, 5),
    coils: fc.array(between(40, 300), { minLength: 1, maxLength: 5 }),
    perTrench: fc.constantFrom(1, 2, 4, 6, 7.32),
    grouping: fc.constantFrom<readonly [number, number]>([1, 1], [2, 1], [3, 1], [1, 2], [1, 4]),
    lead: between(0, 30),
    trenches: fc.option(whole(1, 8), { nil: undefined }),
  })
  .map(({ pipe, flow, coils, perTrench, grouping: [circuitsPerTrench, trenchesPerCircuit], lead, trenches }) => ({
    pipeLength: pipeMetres(pipe),
    flow: litresPerSecond(flow),
    coilLengths: coils.map((coil) => pipeMetres(coil)),
    pipePerTrench: ratio(perTrench),
    circuitsPerTrench,
    trenchesPerCircuit,
    leadLength: pipeMetres(lead),
    ...(trenches === undefined ? {} : { trenches: trenches * trenchesPerCircuit }),
  }));
const codes = ({ findings }: CircuitPlanResult): readonly string[] => findings.map(({ code }) => code);

describe('planCircuits', () => {
  it('lays at least the pipe needed, and the next smaller loop would not', () => {
    fc.assert(
      fc.property(arbitraryInput, (input) => {
        const plan = planCircuits(input);
        expect(plan.circuits * plan.activeLength).toBeGreaterThanOrEqual(input.pipeLength);
        expect(plan.activePipe - input.pipeLength).toBe(plan.spare);
        const step = input.circuitsPerTrench ?? 1;
        const oneLess =
          input.trenches === undefined ? (plan.circuits - step) * plan.activeLength : plan.circuits * (plan.activeLength - plan.coilLength);
        expect(oneLess).toBeLessThan(input.pipeLength);
        if (plan.nextSmaller !== undefined) {
          const { circuits, coilsPerCircuit, coilLength, shortBy } = plan.nextSmaller;
          expect(shortBy).toBeGreaterThan(0);
          expect(input.pipeLength - circuits * (coilsPerCircuit * coilLength - (input.leadLength ?? 0))).toBeCloseTo(shortBy, 6);
        }
      }),
    );
  });

  it('uses whole coils in whole trenches that hold exactly the active pipe, and divides the flow without rest', () => {
    fc.assert(
      fc.property(arbitraryInput, (input) => {
        const plan = planCircuits(input);
        expect(input.coilLengths).toContain(plan.coilLength);
        expect([plan.circuits, plan.coilsPerCircuit, plan.trenches].every((count) => Number.isInteger(count) && count > 0)).toBe(true);
        expect(plan.boughtPipe).toBeCloseTo(plan.circuits * plan.coilsPerCircuit * plan.coilLength, 6);
        expect((plan.trenches * plan.trenchLength * input.pipePerTrench) / plan.activePipe).toBeCloseTo(1, 12);
        expect((plan.circuitFlow * plan.circuits) / input.flow).toBeCloseTo(1, 12);
        expect(plan.activeLength + (input.leadLength ?? 0)).toBeCloseTo(plan.circuitLength, 9);
        expect(plan.arrangement).toBe(plan.circuits === 1 ? 'single' : 'parallel');
        if (input.trenches !== undefined) expect(plan.trenches).toBe(input.trenches);
      }),
    );
  });

  it('joins no coils where one is long enough, and buys no more than any other way without joints', () => {
    fc.assert(
      fc.property(arbitraryInput, (input) => {
        const plan = planCircuits(input);
        if (input.trenches === undefined) expect(plan.coilsPerCircuit).toBe(1);
        for (const other of plan.others) {
          expect(other.coilsPerCircuit).toBeGreaterThanOrEqual(plan.coilsPerCircuit);
          if (other.coilsPerCircuit === plan.coilsPerCircuit) expect(other.boughtPipe).toBeGreaterThanOrEqual(plan.boughtPipe);
        }
      }),
    );
  });

  it('needs no spare where coils fit exactly', () => {
    fc.assert(
      fc.property(whole(1, 60), between(20, 300), (count, coil) => {
        const plan = planCircuits({ ...example, pipeLength: pipeMetres(count * coil), coilLengths: [pipeMetres(coil)] });
        expect([plan.circuits, plan.spare]).toEqual([count, 0]);
      }),
    );
  });

  it('takes the shortest coil that is enough when the trenches are given', () => {
    const plan = planCircuits({ ...example, trenches: 4 });
    expect([plan.circuits, plan.coilLength, plan.trenchLength, plan.spare]).toEqual([4, 150, 75, 112]);
    expect(plan.nextSmaller).toEqual({ circuits: 4, coilsPerCircuit: 1, coilLength: 100, shortBy: 88 });
    expect(codes(plan)).toEqual(['spare-pipe-high']);
  });

  it('says so when a circuit would need a joint under the ground', () => {
    const plan = planCircuits({ ...example, trenches: 2 });
    expect([plan.coilsPerCircuit, plan.coilLength, plan.circuitLength]).toEqual([2, 150, 300]);
    expect(plan.findings).toContainEqual({
      code: 'circuit-longer-than-coil',
      level: 'warning',
      values: { circuitLength: 300, longestCoil: 200, coilsPerCircuit: 2 },
      source: 'common practice',
    });
  });

  it('lays two circuits side by side in a four-pipe trench, and one circuit through two trenches', () => {
    const four = planCircuits({ ...example, pipePerTrench: ratio(4), circuitsPerTrench: 2, coilLengths: [pipeMetres(150)] });
    expect([four.circuits, four.trenches, four.trenchLength]).toEqual([4, 2, 75]);
    const ring = planCircuits({ ...example, pipePerTrench: ratio(1), trenchesPerCircuit: 2, coilLengths: [pipeMetres(150)] });
    expect([ring.circuits, ring.trenches, ring.trenchLength]).toEqual([4, 8, 75]);
  });

  it('does without coils that need more trench than the land has or more circuit than is wanted', () => {
    // 600 m three ways: the fewest circuits win, until the land or the wish for shorter circuits rules them out.
    expect(planCircuits({ ...example, pipeLength: pipeMetres(590) }).coilLength).toBe(200);
    expect(planCircuits({ ...example, pipeLength: pipeMetres(590), longestTrench: trenchMetres(60) }).coilLength).toBe(100);
    expect(planCircuits({ ...example, pipeLength: pipeMetres(590), longestCircuit: pipeMetres(180) }).coilLength).toBe(150);
    expect(codes(planCircuits({ ...example, longestCircuit: pipeMetres(80) }))).toEqual(['circuit-long']);
    expect(() => planCircuits({ ...example, longestTrench: trenchMetres(40) })).toThrow(
      expect.objectContaining({
        code: 'unreachable',
        argument: 'longestTrench',
        allowed: 'at least 50 m, which the shortest circuit on offer needs',
      }),
    );
  });

  it('refuses what cannot be built', () => {
    expect(() => planCircuits({ ...example, leadLength: pipeMetres(199.5) })).toThrow(
      expect.objectContaining({ code: 'impossible', argument: 'leadLength' }),
    );
    expect(() => planCircuits({ ...example, circuitsPerTrench: 2, trenchesPerCircuit: 2 })).toThrow(
      expect.objectContaining({ argument: 'trenchesPerCircuit' }),
    );
    expect(() => planCircuits({ ...example, trenches: 3, trenchesPerCircuit: 2 })).toThrow(
      expect.objectContaining({ code: 'impossible', argument: 'trenches' }),
    );
    expect(() => planCircuits({ ...example, coilLengths: [] })).toThrow(InputError);
  });

  it('counts the same in feet: 1600 ft of need is four coils of 400 ft', () => {
    const plan = planCircuits({ ...example, pipeLength: pipeFeet(1600), coilLengths: [pipeFeet(400)] });
    expect([plan.circuits, plan.spare]).toEqual([4, 0]);
  });

  it('refuses bad input by name', () => {
    refuses(planCircuits, inputShape, example, {
      more: [
        {
          ...example,
          circuitsPerTrench: 2,
          trenchesPerCircuit: 1,
          trenches: 2,
          leadLength: pipeMetres(5),
          longestTrench: trenchMetres(200),
          longestCircuit: pipeMetres(180),
        },
      ],
    });
  });
});

describe('circuitOption', () => {
  const three: CircuitOptionInput = { ...example, coilLength: pipeMetres(150), circuits: 3 };

  it('is what planCircuits took, for the counts it took', () => {
    fc.assert(
      fc.property(arbitraryInput, (input) => {
        const plan = planCircuits(input);
        const { coilLength, circuits, coilsPerCircuit } = plan;
        expect(plan).toMatchObject(circuitOption({ ...input, coilLength, circuits, coilsPerCircuit }));
      }),
    );
  });

  it('falls short by its negative spare', () => {
    expect([circuitOption(three).spare, circuitOption({ ...three, circuits: 4 }).spare]).toEqual([-38, 112]);
  });

  it('refuses bad input by name, circuits that do not fill trenches, and leads that use up the coils', () => {
    const more = [{ ...three, circuitsPerTrench: 3, trenchesPerCircuit: 1, leadLength: pipeMetres(5), coilsPerCircuit: 2 }];
    refuses(circuitOption, optionShape, three, { more });
    expect(() => circuitOption({ ...three, circuitsPerTrench: 2 })).toThrow(expect.objectContaining({ code: 'impossible', argument: 'circuits' }));
    expect(() => circuitOption({ ...three, leadLength: pipeMetres(149.5) })).toThrow(
      expect.objectContaining({ code: 'impossible', argument: 'leadLength' }),
    );
  });
});

describe('circuitSpread', () => {
  it('is 0 for equal circuits and the same in any order', () => {
    fc.assert(
      fc.property(fc.array(between(50, 300), { minLength: 1, maxLength: 8 }), (lengths) => {
        const circuits = lengths.map((length) => pipeMetres(length));
        expect(circuitSpread(circuits).spread).toBeCloseTo(circuitSpread(circuits.toReversed()).spread, 12);
        expect(circuitSpread([pipeMetres(150), pipeMetres(150), pipeMetres(150)]).spread).toBe(0);
      }),
    );
  });

  it('finds circuits that differ by more than a tenth of their mean', () => {
    expect(circuitSpread([pipeMetres(150), pipeMetres(160)]).findings).toEqual([]);
    expect(circuitSpread([pipeMetres(122), pipeMetres(152), pipeMetres(183)]).findings[0]?.code).toBe('circuits-unequal');
  });

  it('refuses bad input by name', () => {
    expect(() => circuitSpread([])).toThrow(expect.objectContaining({ argument: 'lengths' }));
    expect(() => circuitSpread([pipeMetres(150), pipeMetres(Number.NaN)])).toThrow(expect.objectContaining({ argument: 'lengths.1' }));
  });
});
