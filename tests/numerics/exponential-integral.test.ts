import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { e1Difference, exponentialIntegral } from '../../src/numerics/index.js';
import { loadFixture } from '../support/fixture.js';
import { e1 as e1ByFraction } from '../support/line-source.js';

const arguments_ = fc.double({ min: Math.log(1e-15), max: Math.log(700), noNaN: true }).map(Math.exp);

describe('exponential integral', () => {
  it('keeps to 4 units in the last place from 1e-15 to 700, joints of the pieces included', () => {
    const { rows } = loadFixture('e1-high-precision');
    const worst = Math.max(...rows.map((row) => Math.abs(exponentialIntegral(row.number('x')) / row.number('E1') - 1)));
    expect(rows.length).toBeGreaterThan(300);
    expect(worst).toBeLessThanOrEqual(4 * 2 ** -52);
  });

  it('agrees with series and continued fraction summed in doubles', () => {
    fc.assert(
      fc.property(arguments_, (x) => {
        expect(Math.abs(exponentialIntegral(x) / e1ByFraction(x) - 1)).toBeLessThan(1e-14);
      }),
    );
  });

  it('falls with its argument and lies between the bounds exp(−x) ln(1 + 2/x) / 2 and exp(−x) ln(1 + 1/x)', () => {
    fc.assert(
      fc.property(arguments_, (x) => {
        const value = exponentialIntegral(x);
        const scale = Math.exp(-x);
        expect(exponentialIntegral(x * (1 + 1e-12))).toBeLessThanOrEqual(value);
        expect(value).toBeGreaterThan((scale / 2) * Math.log1p(2 / x) * (1 - 1e-14));
        expect(value).toBeLessThan(scale * Math.log1p(1 / x) * (1 + 1e-14));
      }),
    );
  });

  it('is 0 where the true value is smaller than any double', () => {
    expect([740, 1e4, Infinity].map(exponentialIntegral)).toEqual([0, 0, 0]);
  });

  it('prints 0.000360082 for E1(6), where the quoted table has a misprint of ten times as much', () => {
    const row = loadFixture('e1-huisman').rows.find((each) => each.number('x') === 6);
    expect(row?.text('reproduces')).toBe('no');
    expect(exponentialIntegral(6)).toBeCloseTo(0.000360082, 9);
    expect((row?.number('E1') ?? 0) / exponentialIntegral(6)).toBeCloseTo(10, 2);
  });
});

describe('difference of exponential integrals', () => {
  it('is positive, however near the arguments', () => {
    fc.assert(
      fc.property(arguments_, fc.double({ min: 1e-14, max: 10, noNaN: true }), (a, apart) => {
        expect(e1Difference(a, a * (1 + apart))).toBeGreaterThan(0);
      }),
    );
  });

  it('is the logarithm of the ratio for small arguments', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 5, noNaN: true }), (apart) => {
        const a = 1e-17;
        const b = a * (1 + apart);
        expect(Math.abs(e1Difference(a, b) / Math.log1p((b - a) / a) - 1)).toBeLessThan(2e-14);
      }),
    );
  });

  it('adds up over any point between', () => {
    fc.assert(
      fc.property(arguments_, fc.double({ min: 1e-6, max: 3, noNaN: true }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (a, apart, part) => {
        const b = a * (1 + apart);
        const between = a + part * (b - a);
        const whole = e1Difference(a, b);
        expect(Math.abs(e1Difference(a, between) + e1Difference(between, b) - whole)).toBeLessThan(1e-13 * whole + 1e-307);
      }),
    );
  });

  it('joins the plain difference where the quadrature ends', () => {
    for (const a of [1e-9, 0.01, 0.5, 1, 1.9, 2.1, 30, 300]) {
      const gap = Math.min(1, 0.5 * a);
      const plain = exponentialIntegral(a) - exponentialIntegral(a + gap);
      const below = e1Difference(a, a + gap * (1 - 1e-12));
      expect(Math.abs(below / plain - 1)).toBeLessThan(1e-11);
    }
  });
});
