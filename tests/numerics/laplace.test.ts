import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { besselK, realBesselK, stepFromTransfer } from '../../src/numerics/index.js';
import { e1 } from '../support/line-source.js';

/** Modified Bessel functions of the first kind, of order 0 and 1, by their power series. */
const seriesI = (x: number): { readonly i0: number; readonly i1: number } => {
  let [term, i0, i1] = [1, 0, 0];
  for (let n = 0; n < 60; n += 1) {
    i0 += term;
    i1 += (term * x) / 2 / (n + 1);
    term *= (x / 2 / (n + 1)) ** 2;
  }
  return { i0, i1 };
};

describe('modified Bessel functions of a real argument', () => {
  it('are those of a complex one', () => {
    fc.assert(
      fc.property(fc.double({ min: Math.log(1e-8), max: Math.log(300), noNaN: true }), (log) => {
        const x = Math.exp(log);
        const [real, complex] = [realBesselK(x), besselK({ re: x, im: 0 })];
        expect(real.k0 / complex.k0.re).toBeCloseTo(1, 12);
        expect(real.k1 / complex.k1.re).toBeCloseTo(1, 12);
      }),
    );
  });

  it('satisfy the Wronskian with power series, I0 K1 + I1 K0 = 1/x', () => {
    for (const x of [1e-6, 0.01, 0.3, 1, 2, 5, 9, 15]) {
      const { i0, i1 } = seriesI(x);
      const { k0, k1 } = realBesselK(x);
      expect(x * (i0 * k1 + i1 * k0)).toBeCloseTo(1, 12);
    }
  });

  it('vanish quietly where they are below the smallest double', () => {
    expect(realBesselK(800)).toEqual({ k0: 0, k1: 0 });
  });
});

describe('a step response from its transfer function', () => {
  it('is the whole of what needs no time', () => {
    expect(stepFromTransfer(() => 3, 42)).toBeCloseTo(3, 9);
  });

  it('is that of a line source within 3e-4 of the greatest, and closer for a difference of two', () => {
    const rise = (square: number) => (p: number) => 2 * realBesselK(Math.sqrt(square * p)).k0;
    for (let place = -2; place <= 3; place += 0.1) {
      const time = 10 ** place;
      expect(Math.abs(stepFromTransfer(rise(1), time) - e1(1 / (4 * time)))).toBeLessThan(3e-4);
      const both = (p: number): number => rise(1)(p) - rise(9)(p);
      expect(Math.abs(stepFromTransfer(both, time) - e1(1 / (4 * time)) + e1(9 / (4 * time))) / Math.log(9)).toBeLessThan(3e-4);
    }
  });

  it('is that of a diffusive plate, whose rise goes with the root of time', () => {
    for (const time of [0.01, 1, 100]) expect(stepFromTransfer((p) => 1 / Math.sqrt(p), time) / Math.sqrt((4 * time) / Math.PI)).toBeCloseTo(1, 3);
  });
});
