import { describe, expect, it } from 'vitest';
import { studentBelow, studentQuantile } from '../../src/numerics/index.js';

describe('Student’s distribution', () => {
  it('agrees with its density integrated, and with the printed quantiles of 95 %', () => {
    for (const freedom of [1, 2, 3, 4, 7, 10, 22, 97]) {
      const steps = 20_000;
      const top = 1.3;
      const density = (t: number): number => (1 + t ** 2 / freedom) ** (-(freedom + 1) / 2);
      // By Simpson's rule, over the whole of the line mapped on a half turn for the factor.
      const simpson = (f: (x: number) => number, from: number, to: number): number => {
        const h = (to - from) / steps;
        let sum = f(from) + f(to);
        for (let k = 1; k < steps; k += 1) sum += (k % 2 === 1 ? 4 : 2) * f(from + k * h);
        return (sum * h) / 3;
      };
      const whole = Math.sqrt(freedom) * simpson((angle) => Math.cos(angle) ** (freedom - 1), -Math.PI / 2, Math.PI / 2);
      expect(studentBelow(top, freedom)).toBeCloseTo(0.5 + simpson(density, 0, top) / whole, 9);
    }
    expect([1, 2, 5, 10, 22].map((freedom) => studentQuantile(0.95, freedom))).toEqual(
      [6.314, 2.92, 2.015, 1.812, 1.717].map((printed) => expect.closeTo(printed, 3)),
    );
  });
});
