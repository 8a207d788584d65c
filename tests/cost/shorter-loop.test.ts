import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { investmentMeasures, type LoopOfLength, shorterLoopCosts, type ShorterLoopInput, shorterLoopInputShape } from '../../src/cost/index.js';
import {
  electricKilowattHours,
  fraction,
  kelvinDifference,
  kilowattHours,
  money,
  percentPerYear,
  perKilowattHour,
  perMetre,
  pipeMetres,
  ratio,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const loop = (lengthRatio: number, limitMargin: number, used: number, unmet: number): LoopOfLength => ({
  lengthRatio: ratio(lengthRatio),
  pipe: pipeMetres(600 * lengthRatio),
  limitMargin: kelvinDifference(limitMargin),
  usedElectricity: electricKilowattHours(used),
  unmetEnergy: kilowattHours(unmet),
});
const input: ShorterLoopInput = {
  loops: [loop(0.7, -2.5, 5400, 700), loop(0.85, -0.8, 5250, 300), loop(1, 0.3, 5100, 120), loop(1.2, 1.4, 5000, 60)],
  lengthPrice: perMetre(12),
  energyPrice: perKilowattHour(0.3),
  auxiliaryEfficiency: fraction(1),
  discountRate: percentPerYear(3),
  years: 25,
  escalation: percentPerYear(1),
};

describe('a shorter loop', () => {
  it('is worth what an investment in the missing pipe is, turned round', () => {
    const within = input.loops.map((each) => ({ ...each, limitMargin: kelvinDifference(0.1) }));
    for (const each of shorterLoopCosts({ ...input, loops: within }).lengths) {
      const { discountRate, years, escalation } = { ...input, escalation: percentPerYear(1) };
      const saving = { extraCost: money(each.firstCostSaved), yearlySaving: money(each.yearlyExtraCost) };
      expect(each.netSavings).toBeCloseTo(-investmentMeasures({ ...saving, discountRate, years, escalation }).netSavings, 9);
    }
  });

  it('of the length planned saves and costs nothing', () => {
    expect(shorterLoopCosts(input).lengths[2]).toMatchObject({ firstCostSaved: 0, yearlyExtraCost: 0, netSavings: 0 });
  });

  it('is named where the fluid leaves its limits', () => {
    const { findings } = shorterLoopCosts(input);
    expect(findings.map(({ values }) => values)).toEqual([
      { pipe: pipeMetres(420), limitMargin: kelvinDifference(-2.5) },
      { pipe: pipeMetres(510), limitMargin: kelvinDifference(-0.8) },
    ]);
  });

  it('saves nothing that can be told where the unit stops', () => {
    expect(shorterLoopCosts(input).lengths.map(({ netSavings }) => netSavings !== undefined)).toEqual([false, false, true, true]);
    const edge = [loop(0.8, 0, 5300, 400), loop(1, 0.3, 5100, 120)];
    expect(shorterLoopCosts({ ...input, loops: edge }).lengths[0]).toHaveProperty('netSavings');
  });

  it('pays for what the unit leaves to the heater, by its efficiency', () => {
    const boiler = shorterLoopCosts({ ...input, auxiliaryEfficiency: fraction(0.5) }).lengths;
    expect(electricKilowattHours.of(boiler[0]?.auxiliaryElectricity ?? electricKilowattHours(0))).toBeCloseTo(1400, 9);
    expect(boiler[0]?.yearlyExtraCost).toBeCloseTo((300 + 2 * 580) * 0.3, 9);
  });

  it('costs in proportion to the prices', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (times) => {
        const scaled = shorterLoopCosts({ ...input, lengthPrice: perMetre(12 * times), energyPrice: perKilowattHour(0.3 * times) }).lengths;
        shorterLoopCosts(input).lengths.forEach(({ netSavings }, index) => {
          expect(scaled[index]?.netSavings === undefined).toBe(netSavings === undefined);
          expect(Math.abs((scaled[index]?.netSavings ?? 0) - times * (netSavings ?? 0))).toBeLessThan(1e-9 * (1 + times));
        });
      }),
    );
  });
});

describe('refusals', () => {
  it('name the number', () => {
    // The last row is the one planned; a row that is not may have any ratio.
    refuses(shorterLoopCosts, shorterLoopInputShape, { ...input, loops: [loop(0.8, -1, 5300, 400), loop(1, 0.3, 5100, 120)] });
  });

  it('come where no row is the loop planned', () => {
    expect(() => shorterLoopCosts({ ...input, loops: input.loops.slice(0, 2) })).toThrow(
      'loops: nothing is not allowed; allowed: one with the length ratio 1',
    );
  });
});
