import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  capitalRecoveryFactor,
  escalatedPresentValue,
  escalatedTermsShape,
  indexedPresentValue,
  indexedTermsShape,
  nominalRate,
  nominalRateInputShape,
  realRate,
  realRateInputShape,
  residualValueInputShape,
  singlePresentValue,
  straightLineResidual,
  studyTermsShape,
  uniformPresentValue,
} from '../../src/cost/index.js';
import { money, perYear, percentPerYear, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { divided, ofDecimal, ofDouble, plus, type Rational, times, toDouble } from '../support/exact.js';

const ONE = ofDecimal('1');
/** Σ ((1 + e)/(1 + d))^t over the years, in exact fractions of the two doubles. */
const summed = (discount: number, rise: number, years: number): number => {
  const step = divided(plus(ONE, ofDouble(rise)), plus(ONE, ofDouble(discount)));
  let power: Rational = ONE;
  let total = ofDecimal('0');
  for (let year = 1; year <= years; year += 1) {
    power = times(power, step);
    // Over one denominator the sum stays short.
    total = year === 1 ? power : { over: total.over * step.under + power.over, under: power.under };
  }
  return toDouble(total);
};
const off = (value: number, exact: number): number => Math.abs(value / exact - 1);

const rate = fc.double({ min: -0.2, max: 0.5, noNaN: true });
const years = fc.integer({ min: 1, max: 30 });
/** Beside a rate, from the last digit to one percent, on both sides. */
const beside = fc.tuple(fc.double({ min: -17, max: -2, noNaN: true }), fc.constantFrom(-1, 1)).map(([power, sign]) => sign * 10 ** power);
/** A rate is good to a few roundings, which thirty years of growth raise thirtyfold. */
const ROUNDING = 1e-14;

describe('present values', () => {
  it('are the sum of the years, in exact fractions', () => {
    fc.assert(
      fc.property(rate, rate, years, (d, e, n) => {
        const terms = { discountRate: perYear(d), years: n };
        expect(off(escalatedPresentValue({ ...terms, escalation: perYear(e) }), summed(d, e, n))).toBeLessThan(10 * ROUNDING);
        expect(off(uniformPresentValue(terms), summed(d, 0, n))).toBeLessThan(ROUNDING);
      }),
      { numRuns: 40 },
    );
  });

  it('keep their digits where e comes near d, and d near 0', () => {
    fc.assert(
      fc.property(rate, beside, years, (d, away, n) => {
        const escalated = escalatedPresentValue({ discountRate: perYear(d), escalation: perYear(d + away), years: n });
        expect(off(escalated, summed(d, d + away, n))).toBeLessThan(ROUNDING);
        expect(off(uniformPresentValue({ discountRate: perYear(away), years: n }), summed(away, 0, n))).toBeLessThan(ROUNDING);
      }),
      { numRuns: 40 },
    );
  });

  it('are the number of years at the limits', () => {
    fc.assert(
      fc.property(rate, years, (d, n) => {
        expect(escalatedPresentValue({ discountRate: perYear(d), escalation: perYear(d), years: n })).toBe(n);
        expect(uniformPresentValue({ discountRate: perYear(0), years: n })).toBe(n);
        expect(singlePresentValue({ discountRate: perYear(0), years: n })).toBe(1);
      }),
    );
  });

  it('hang together: SPV = 1 − d · UPV, CRF · UPV = 1, constant escalation as indices', () => {
    fc.assert(
      fc.property(rate, rate, years, (d, e, n) => {
        const terms = { discountRate: perYear(d), years: n };
        const spv = singlePresentValue(terms);
        expect(Math.abs(spv - (1 - d * uniformPresentValue(terms)))).toBeLessThan(1e-13 * (1 + spv));
        expect(off(capitalRecoveryFactor(terms) * uniformPresentValue(terms), 1)).toBeLessThan(1e-15);
        const priceIndices = Array.from({ length: n }, (_, year) => ratio((1 + e) ** (year + 1)));
        fc.pre(priceIndices.every((index) => index <= 100));
        const indexed = indexedPresentValue({ discountRate: perYear(d), priceIndices });
        expect(off(indexed, escalatedPresentValue({ ...terms, escalation: perYear(e) }))).toBeLessThan(1e-12);
      }),
    );
  });

  it('do not depend on whether all is real or all is nominal', () => {
    fc.assert(
      fc.property(rate, rate, rate, years, (d, e, inflation, n) => {
        const nominal = (real: number): ReturnType<typeof nominalRate> => nominalRate({ realRate: perYear(real), inflation: perYear(inflation) });
        fc.pre([d, e].every((each) => nominal(each) >= -0.5 && nominal(each) <= 1));
        const asReal = escalatedPresentValue({ discountRate: perYear(d), escalation: perYear(e), years: n });
        const asNominal = escalatedPresentValue({ discountRate: nominal(d), escalation: nominal(e), years: n });
        expect(off(asNominal, asReal)).toBeLessThan(1e-12);
        expect(realRate({ nominalRate: nominal(d), inflation: perYear(inflation) })).toBeCloseTo(d, 13);
      }),
    );
  });

  it('fall with the discount rate and rise with the years', () => {
    fc.assert(
      fc.property(rate, fc.double({ min: 1e-6, max: 0.1, noNaN: true }), years, (d, more, n) => {
        const at = (discount: number, length: number): number => uniformPresentValue({ discountRate: perYear(discount), years: length });
        expect(at(d + more, n)).toBeLessThan(at(d, n));
        expect(at(d, n + 1)).toBeGreaterThan(at(d, n));
      }),
    );
  });
});

describe('what is left at the end', () => {
  it('falls in a straight line to nothing and stays there', () => {
    const left = (ageYears: number): number => straightLineResidual({ firstCost: money(8000), lifeYears: ratio(50), ageYears: ratio(ageYears) });
    expect([0, 20, 25, 50, 60].map(left)).toEqual([8000, 4800, 4000, 0, 0]);
  });
});

describe('refusals', () => {
  const terms = { discountRate: percentPerYear(3), years: 20 };
  it('name the number', () => {
    refuses(singlePresentValue, studyTermsShape, terms);
    refuses(uniformPresentValue, studyTermsShape, terms);
    refuses(capitalRecoveryFactor, studyTermsShape, terms);
    refuses(escalatedPresentValue, escalatedTermsShape, { ...terms, escalation: percentPerYear(1) });
    refuses(indexedPresentValue, indexedTermsShape, { discountRate: percentPerYear(3), priceIndices: [ratio(1), ratio(1.02)] });
    refuses(nominalRate, nominalRateInputShape, { realRate: percentPerYear(3), inflation: percentPerYear(2) });
    refuses(realRate, realRateInputShape, { nominalRate: percentPerYear(5), inflation: percentPerYear(2) });
    refuses(straightLineResidual, residualValueInputShape, { firstCost: money(8000), lifeYears: ratio(50), ageYears: ratio(20) });
  });

  it('come for a whole loss in a year and for no years', () => {
    expect(() => uniformPresentValue({ discountRate: perYear(-1), years: 20 })).toThrow('discountRate: -1');
    expect(() => uniformPresentValue({ discountRate: percentPerYear(3), years: 0 })).toThrow('years: 0');
    expect(() => uniformPresentValue({ discountRate: perYear(3), years: 20 })).toThrow('discountRate: 3');
  });
});
