import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CashPlan,
  compareLifeCycles,
  type CompareLifeCyclesInput,
  compareLifeCyclesInputShape,
  type LifeCycleInput,
  lifeCycleCost,
  lifeCycleInputShape,
  type LifeCyclePlan,
} from '../../src/cost/index.js';
import type { Band } from '../../src/states/index.js';
import { fraction, money, perYear, percentPerYear, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const terms = { discountRate: percentPerYear(3), years: 20 };
const rises = (low: number, estimate: number, high: number): Band<'yearly rate'> => ({
  low: percentPerYear(low),
  estimate: percentPerYear(estimate),
  high: percentPerYear(high),
  coverage: fraction(0.8),
});
const priceLevel = { low: ratio(0.8), estimate: ratio(1), high: ratio(1.5), coverage: fraction(0.8) };
const oil: LifeCyclePlan = {
  label: 'oil',
  firstCost: money(9000),
  replacements: [{ year: 15, replacementCost: money(4000) }],
  yearlyEnergyCost: money(2400),
  yearlyUpkeep: money(250),
  outlook: { escalation: rises(-1, 1, 4), priceLevel },
};
const ground: LifeCyclePlan = {
  label: 'ground source',
  firstCost: money(24_000),
  replacements: [{ year: 18, replacementCost: money(9000) }],
  residualValue: money(6000),
  yearlyEnergyCost: money(1100),
  yearlyUpkeep: money(100),
  outlook: { escalation: rises(-1, 0, 2) },
};
const input: CompareLifeCyclesInput = { ...terms, baseline: oil, alternative: ground };

const amount = fc.double({ min: 0, max: 1e5, noNaN: true }).map((each) => money(each));
const plans: fc.Arbitrary<CashPlan> = fc.record({
  label: fc.constant('plan'),
  firstCost: amount,
  replacements: fc.array(fc.record({ year: fc.integer({ min: 1, max: 20 }), replacementCost: amount }), { minLength: 1, maxLength: 4 }),
  residualValue: amount,
  yearlyEnergyCost: amount,
  yearlyUpkeep: amount,
});
const outlooks = fc
  .tuple(fc.array(fc.double({ min: -5, max: 8, noNaN: true }), { minLength: 3, maxLength: 3 }))
  .map(([ends]) => [...ends].sort((a, b) => a - b))
  .map(([low = 0, estimate = 0, high = 0]) => ({ escalation: rises(low, estimate, high), priceLevel }));
const outlined: fc.Arbitrary<LifeCyclePlan> = fc.tuple(plans, outlooks).map(([plan, outlook]) => ({ ...plan, outlook }));

/** The same by the calendar: every payment brought back by itself. */
const byCalendar = (plan: CashPlan, discount: number, rise: number, years: number): number => {
  let total: number = plan.firstCost;
  for (let year = 1; year <= years; year += 1) {
    const due = (plan.replacements ?? []).filter((each) => each.year === year).reduce((sum, each) => sum + each.replacementCost, 0);
    total += (plan.yearlyEnergyCost * (1 + rise) ** year + (plan.yearlyUpkeep ?? 0) + due) / (1 + discount) ** year;
  }
  return total - (plan.residualValue ?? 0) / (1 + discount) ** years;
};

describe('a life-cycle cost', () => {
  it('is every payment brought back by itself', () => {
    fc.assert(
      fc.property(plans, fc.double({ min: -0.05, max: 0.15, noNaN: true }), fc.double({ min: -0.05, max: 0.1, noNaN: true }), (plan, d, e) => {
        const found = lifeCycleCost({ plan, discountRate: perYear(d), escalation: perYear(e), years: 20 });
        const scale = byCalendar({ ...plan, residualValue: money(0) }, d, e, 20) + (plan.residualValue ?? 0) * 3;
        expect(Math.abs(found.lifeCycleCost - byCalendar(plan, d, e, 20))).toBeLessThanOrEqual(1e-12 * scale);
      }),
    );
  });

  it('is the sum of its parts, to the last bit', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const {
          firstCost,
          replacementsPresent,
          residualPresent,
          energyPresent,
          upkeepPresent,
          lifeCycleCost: total,
        } = lifeCycleCost({ plan, ...terms });
        expect(total).toBe(firstCost + replacementsPresent - residualPresent + energyPresent + upkeepPresent);
      }),
    );
  });

  it('is linear in the payments', () => {
    fc.assert(
      fc.property(plans, fc.double({ min: 0, max: 10, noNaN: true }), (plan, times) => {
        const scaled: CashPlan = {
          label: plan.label,
          firstCost: money(plan.firstCost * times),
          replacements: (plan.replacements ?? []).map(({ year, replacementCost }) => ({ year, replacementCost: money(replacementCost * times) })),
          residualValue: money((plan.residualValue ?? 0) * times),
          yearlyEnergyCost: money(plan.yearlyEnergyCost * times),
          yearlyUpkeep: money((plan.yearlyUpkeep ?? 0) * times),
        };
        const [one, many] = [lifeCycleCost({ plan, ...terms }), lifeCycleCost({ plan: scaled, ...terms })];
        const scale = one.firstCost + one.replacementsPresent + one.residualPresent + one.energyPresent + one.upkeepPresent;
        expect(Math.abs(many.lifeCycleCost - times * one.lifeCycleCost)).toBeLessThanOrEqual(1e-13 * times * scale + 1e-290);
      }),
    );
  });

  it('takes a forecast in place of a rate, one price for each year', () => {
    const priceIndices = Array.from({ length: 20 }, (_, year) => ratio(1.01 ** (year + 1)));
    const forecast = lifeCycleCost({ plan: oil, ...terms, priceIndices });
    expect(forecast.lifeCycleCost).toBeCloseTo(lifeCycleCost({ plan: oil, ...terms, escalation: percentPerYear(1) }).lifeCycleCost, 8);
    expect(() => lifeCycleCost({ plan: oil, ...terms, priceIndices: [ratio(1)] })).toThrow('priceIndices: 1 (count)');
    expect(() => lifeCycleCost({ plan: oil, ...terms, priceIndices, escalation: percentPerYear(1) })).toThrow('escalation: 0.01');
  });

  it('has no replacement beyond its end', () => {
    const late = { ...oil, replacements: [{ year: 21, replacementCost: money(1) }] };
    expect(() => lifeCycleCost({ plan: late, ...terms })).toThrow('plan.replacements.0.year: 21');
  });
});

describe('a comparison over the years', () => {
  it('saves the difference of two life-cycle costs in every scenario', () => {
    for (const { baselineCost, alternativeCost, netSavings } of compareLifeCycles(input).scenarios) {
      expect(netSavings).toBe(baselineCost.lifeCycleCost - alternativeCost.lifeCycleCost);
    }
    const central = compareLifeCycles(input).scenarios[1];
    expect(central?.baselineCost.lifeCycleCost).toBeCloseTo(byCalendar(oil, 0.03, 0.01, 20), 8);
    expect(central?.alternativeCost.lifeCycleCost).toBeCloseTo(byCalendar(ground, 0.03, 0, 20), 8);
  });

  it('lies between its worst and its best, and turns its sign when turned round', () => {
    fc.assert(
      fc.property(outlined, outlined, (baseline, alternative) => {
        const found = compareLifeCycles({ ...terms, baseline, alternative });
        const turned = compareLifeCycles({ ...terms, baseline: alternative, alternative: baseline });
        const slack = 1e-9 * found.scenarios.reduce((sum, each) => sum + each.baselineCost.energyPresent + each.alternativeCost.energyPresent, 1);
        for (const [index, { netSavings }] of found.scenarios.entries()) {
          expect(netSavings).toBeGreaterThanOrEqual(found.worstNetSavings - slack);
          expect(netSavings).toBeLessThanOrEqual(found.bestNetSavings + slack);
          expect(Math.abs(netSavings + (turned.scenarios[index]?.netSavings ?? NaN))).toBeLessThanOrEqual(slack);
        }
        expect(Math.abs(found.measures.netSavings - (found.scenarios[1]?.netSavings ?? NaN))).toBeLessThan(1e-6);
      }),
    );
  });

  it('pays back in whole years, with what is bought again on the way', () => {
    const plain = { label: 'a', firstCost: money(0), yearlyEnergyCost: money(1000) };
    const better = { label: 'b', firstCost: money(4500), yearlyEnergyCost: money(0) };
    const bare = { discountRate: percentPerYear(0), years: 20 };
    const yearsOf = (alternative: LifeCyclePlan): unknown => compareLifeCycles({ ...bare, baseline: plain, alternative }).measures.discountedPayback;
    expect(yearsOf(better)).toEqual({ outcome: 'paid back', paybackYears: 5 });
    // It has come back after five years, goes again in the seventh and comes back for good after ten.
    expect(yearsOf({ ...better, replacements: [{ year: 7, replacementCost: money(5000) }] })).toEqual({ outcome: 'paid back', paybackYears: 10 });
    expect(yearsOf({ ...better, firstCost: money(20_001) })).toEqual({ outcome: 'never' });
    expect(yearsOf({ ...better, firstCost: money(0) })).toEqual({ outcome: 'nothing to pay back' });
  });

  it('says when what is left decides, and when prices do', () => {
    const codes = (given: Partial<CompareLifeCyclesInput>): readonly string[] =>
      compareLifeCycles({ ...input, ...given }).findings.map(({ code }) => code);
    expect(codes({})).toContain('outcome-depends-on-prices');
    expect(codes({ alternative: { ...ground, firstCost: money(32_000), residualValue: money(26_000) } })).toContain('residual-dominates');
    const cheap = { ...ground, firstCost: money(10_000), yearlyEnergyCost: money(300), outlook: {} };
    expect(codes({ alternative: cheap })).toEqual([]);
  });
});

describe('refusals', () => {
  it('name the number', () => {
    const { outlook: _, ...bare } = ground;
    const example: LifeCycleInput = { plan: bare, ...terms, escalation: percentPerYear(1) };
    const forecast: LifeCycleInput = { plan: bare, ...terms, years: 2, priceIndices: [ratio(1), ratio(1.02)] };
    const early = { ...bare, replacements: [{ year: 1, replacementCost: money(10) }] };
    refuses(lifeCycleCost, lifeCycleInputShape, example, { more: [{ ...forecast, plan: early }] });
    const both: CompareLifeCyclesInput = {
      ...input,
      baseline: { ...oil, residualValue: money(10) },
      alternative: { ...ground, outlook: { escalation: rises(-1, 0, 2), priceLevel } },
      reinvestmentRate: percentPerYear(2),
    };
    refuses(compareLifeCycles, compareLifeCyclesInputShape, both);
  });

  it('come for a band out of order', () => {
    const wrong = { ...ground, outlook: { escalation: rises(3, 1, 4) } };
    expect(() => compareLifeCycles({ ...input, alternative: wrong })).toThrow('alternative.outlook.escalation.low: 0.03');
  });
});
