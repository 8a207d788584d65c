import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { besselK, cylinderSource, cylinderWall, exponentialIntegral } from '../../src/numerics/index.js';

const fouriers = fc.double({ min: Math.log(1e-9), max: Math.log(1e12), noNaN: true }).map(Math.exp);

describe('cylinder source', () => {
  it('has one value at the wall by table and series as by inversion of the Laplace transform', () => {
    fc.assert(
      fc.property(fouriers, (fourier) => {
        expect(Math.abs(cylinderWall(fourier) / cylinderSource(fourier, 1) - 1)).toBeLessThan(1e-12);
      }),
      { numRuns: 300 },
    );
  });

  it('does not jump where table and series meet', () => {
    for (const joint of [1e-4, 1e-2, 1, 1e2, 1e4, 1e6]) {
      const below = cylinderWall(joint * (1 - 1e-13));
      const above = cylinderWall(joint * (1 + 1e-13));
      expect(Math.abs(above / below - 1)).toBeLessThan(5e-13);
    }
  });

  it('grows with time at the wall and starts at 0', () => {
    fc.assert(
      fc.property(fouriers, fc.double({ min: 1e-9, max: 1, noNaN: true }), (fourier, more) => {
        expect(cylinderWall(fourier * (1 + more))).toBeGreaterThan(cylinderWall(fourier));
      }),
    );
    expect(cylinderWall(0)).toBe(0);
  });

  it('falls with distance, and lies above the line source at the wall', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), fc.double({ min: 1.01, max: 3, noNaN: true }), (fourier, radii) => {
        expect(cylinderSource(fourier, radii)).toBeLessThan(cylinderWall(fourier));
        expect(cylinderWall(fourier)).toBeGreaterThan(exponentialIntegral(1 / (4 * fourier)) / (4 * Math.PI));
      }),
    );
  });

  it('carries the heat flux: −2π · slope at the wall is 1 at every time', () => {
    const step = 1e-4;
    for (const fourier of [0.05, 1, 30, 1e4]) {
      const [a, b, c] = [1, 1 + step, 1 + 2 * step].map((radii) => cylinderSource(fourier, radii));
      const slope = (-3 * (a ?? 0) + 4 * (b ?? 0) - (c ?? 0)) / (2 * step);
      expect(-2 * Math.PI * slope).toBeCloseTo(1, 5);
    }
  });
});

describe('modified Bessel functions', () => {
  const places = fc.record({
    size: fc.double({ min: Math.log(1e-3), max: Math.log(20), noNaN: true }).map(Math.exp),
    angle: fc.double({ min: -1.3, max: 1.3, noNaN: true }),
  });
  const at = (size: number, angle: number) => ({ re: size * Math.cos(angle), im: size * Math.sin(angle) });

  it('mirror at the real axis', () => {
    fc.assert(
      fc.property(places, ({ size, angle }) => {
        const above = besselK(at(size, angle)).k1;
        const below = besselK(at(size, -angle)).k1;
        expect(Math.hypot(above.re - below.re, above.im + below.im)).toBeLessThan(1e-13 * Math.hypot(above.re, above.im));
      }),
    );
  });

  it('satisfy K0′ = −K1', () => {
    fc.assert(
      fc.property(places, ({ size, angle }) => {
        const step = 1e-4;
        const [out, middle, inside] = [size * (1 + step), size, size * (1 - step)].map((s) => besselK(at(s, angle)));
        const dz = at(2 * size * step, angle);
        const square = dz.re ** 2 + dz.im ** 2;
        const rise = { re: (out?.k0.re ?? 0) - (inside?.k0.re ?? 0), im: (out?.k0.im ?? 0) - (inside?.k0.im ?? 0) };
        const slope = { re: (rise.re * dz.re + rise.im * dz.im) / square, im: (rise.im * dz.re - rise.re * dz.im) / square };
        const { re = Number.NaN, im = Number.NaN } = middle?.k1 ?? {};
        expect(Math.hypot(slope.re + re, slope.im + im)).toBeLessThan(1e-5 * Math.hypot(re, im));
      }),
    );
  });

  it('have the elementary limit √(π/2z) exp(−z) far out', () => {
    for (const angle of [0, 0.7, 1.3]) {
      const { re, im } = besselK(at(300, angle)).k0;
      const expected = Math.sqrt(Math.PI / 600) * Math.exp(-300 * Math.cos(angle));
      expect(Math.hypot(re, im) / expected).toBeCloseTo(1, 3);
    }
  });
});
