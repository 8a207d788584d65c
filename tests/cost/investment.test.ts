import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escalatedPresentValue, type InvestmentInput, investmentInputShape, investmentMeasures, type Payback } from '../../src/cost/index.js';
import { money, perYear, percentPerYear } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { notFinite } from '../support/finite.js';

const input = (extraCost: number, yearlySaving: number, more: Partial<InvestmentInput> = {}): InvestmentInput => ({
  extraCost: money(extraCost),
  yearlySaving: money(yearlySaving),
  discountRate: percentPerYear(3),
  years: 20,
  ...more,
});
const codes = (of: InvestmentInput): readonly string[] => investmentMeasures(of).findings.map(({ code }) => code);
const yearsOf = (payback: Payback): number | undefined => (payback.outcome === 'paid back' ? payback.paybackYears : undefined);

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const cases = fc
  .record({
    extra: between(-1e5, 1e5),
    saving: between(-1e4, 1e4),
    discount: between(-0.1, 0.3),
    rise: between(-0.1, 0.3),
    years: fc.integer({ min: 1, max: 60 }),
  })
  .map(({ extra, saving, discount, rise, years }) => input(extra, saving, { discountRate: perYear(discount), escalation: perYear(rise), years }));

describe('an investment', () => {
  it('never tells a number that is none', () => {
    fc.assert(
      fc.property(cases, (given) => {
        expect(notFinite(investmentMeasures(given))).toBeUndefined();
      }),
    );
  });

  it('has come back at its discounted payback, whole years or not', () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: 1, max: 60 }), (given, years) => {
        const { discountRate, escalation = perYear(0), yearlySaving } = given;
        fc.pre(yearlySaving > 1);
        // An extra cost that so many years of savings pay for exactly.
        const extraCost = money(yearlySaving * escalatedPresentValue({ discountRate, escalation, years }));
        const found = investmentMeasures({ ...given, extraCost, years });
        expect(Math.abs(found.netSavings)).toBeLessThan(1e-9 * extraCost);
        // Far out in a study each year hardly counts, and its place is known the less.
        const last = yearlySaving * ((1 + escalation) / (1 + discountRate)) ** years;
        expect(Math.abs((yearsOf(found.discountedPayback) ?? 0) - years)).toBeLessThan(1e-9 + (1e-12 * extraCost) / last);
      }),
    );
  });

  it('is worth it by all measures or by none', () => {
    fc.assert(
      fc.property(cases, (given) => {
        const { netSavings, savingsToInvestment, adjustedReturn, discountedPayback } = investmentMeasures(given);
        fc.pre(given.extraCost > 1 && Math.abs(netSavings) > 1e-6 * given.extraCost);
        const worth = netSavings > 0;
        expect((savingsToInvestment ?? 0) > 1).toBe(worth);
        expect((adjustedReturn ?? -1) > given.discountRate).toBe(worth);
        expect((yearsOf(discountedPayback) ?? Infinity) < given.years).toBe(worth);
      }),
    );
  });

  it('without interest and escalation pays back as simply as with them', () => {
    const { simplePayback, discountedPayback } = investmentMeasures(input(9000, 750, { discountRate: perYear(0) }));
    expect(simplePayback).toEqual({ outcome: 'paid back', paybackYears: 12 });
    expect(discountedPayback).toEqual(simplePayback);
  });

  it('is smooth where savings rise as fast as money earns', () => {
    const at = (rise: number): number => yearsOf(investmentMeasures(input(9000, 750, { escalation: perYear(rise) })).discountedPayback) ?? 0;
    expect(at(0.03)).toBe(12);
    for (const away of [1e-15, 1e-12, 1e-9, 1e-6]) {
      // To first order a payback of n years moves by n(n+1)/2 · away/(1 + e); the second order is some n³ · away².
      const slack = 1e-12 + 2000 * away ** 2;
      expect(Math.abs(at(0.03 + away) - 12 + (78 * away) / 1.03)).toBeLessThan(slack);
      expect(Math.abs(at(0.03 - away) - 12 - (78 * away) / 1.03)).toBeLessThan(slack);
    }
  });
});

describe('a payback that never comes', () => {
  it('is said, and no number stands for it', () => {
    const found = investmentMeasures(input(13_000, 300));
    expect(found.discountedPayback).toEqual({ outcome: 'never' });
    expect(found.simplePayback).toMatchObject({ outcome: 'paid back' });
    expect(codes(input(13_000, 300))).toEqual(['payback-not-reached']);
  });

  it('is told from one after the study', () => {
    const late = input(13_000, 800);
    expect(yearsOf(investmentMeasures(late).discountedPayback)).toBeGreaterThan(20);
    expect(codes(late)).toEqual(['payback-not-reached', 'payback-hides-loss']);
  });

  it('at just the interest takes for ever, and at a hair more a long time', () => {
    expect(investmentMeasures(input(10_000, 300)).discountedPayback).toEqual({ outcome: 'never' });
    expect(yearsOf(investmentMeasures(input(10_000, 300.001)).discountedPayback)).toBeGreaterThan(300);
  });

  it('follows from savings of nothing or less', () => {
    expect(investmentMeasures(input(13_000, 0)).simplePayback).toEqual({ outcome: 'never' });
    const loss = investmentMeasures(input(13_000, -50));
    expect(loss.simplePayback).toEqual({ outcome: 'never' });
    expect(loss).not.toHaveProperty('adjustedReturn');
    expect(loss.findings.map(({ code }) => code)).toEqual(['savings-negative']);
  });

  it('is no matter where nothing is paid extra', () => {
    const found = investmentMeasures(input(-500, 100));
    expect(found.simplePayback).toEqual({ outcome: 'nothing to pay back' });
    expect(found.discountedPayback).toEqual({ outcome: 'nothing to pay back' });
    expect(found).not.toHaveProperty('savingsToInvestment');
    expect(found.netSavings).toBeGreaterThan(1900);
    expect(found.findings).toEqual([]);
  });
});

it('refuses impossible numbers by name', () => {
  refuses(investmentMeasures, investmentInputShape, input(13_000, 1278, { escalation: percentPerYear(1), reinvestmentRate: percentPerYear(2) }));
});
