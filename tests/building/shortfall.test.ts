import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Distribution, excessAbove, LOGISTIC_DEVIATION, type Outdoor, shortfallBelow } from '../../src/building/shortfall.js';

/** Density of a distribution, written from its definition. */
const density = ({ distribution, mean, spread }: Outdoor, temperature: number): number => {
  if (distribution === 'normal') return Math.exp(-((temperature - mean) ** 2) / (2 * spread * spread)) / (spread * Math.sqrt(2 * Math.PI));
  const scale = (spread * Math.sqrt(3)) / Math.PI;
  return 1 / (4 * scale * Math.cosh((temperature - mean) / (2 * scale)) ** 2);
};

/** The integral of (base − T) or 1 times the density up to the base, by Simpson's rule over forty deviations. */
const integrated = (outdoor: Outdoor, base: number, power: 0 | 1): number => {
  const from = base - 40 * outdoor.spread;
  const steps = 100_000;
  const step = (base - from) / steps;
  let sum = 0;
  for (let index = 0; index <= steps; index += 1) {
    const temperature = from + index * step;
    const weight = index === 0 || index === steps ? 1 : index % 2 === 1 ? 4 : 2;
    sum += weight * (base - temperature) ** power * density(outdoor, temperature);
  }
  return (sum * step) / 3;
};

const distributions = ['normal', 'logistic'] as const satisfies readonly Distribution[];
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const months = fc.record({ distribution: fc.constantFrom(...distributions), mean: between(-60, 45), spread: between(0, 20) });

describe.each(distributions)('%s shortfall', (distribution) => {
  // Near the middle, on both sides of the change from series to continued fraction, and far out.
  it.each([-9, -6, -4, -2.001, -2, -1.999, -1, -0.3, 0, 0.3, 1, 1.999, 2, 2.001, 4])(
    'is the integral of the density, %d deviations from the mean',
    (z) => {
      const outdoor = { distribution, mean: 3, spread: 5 };
      const { mean, share } = shortfallBelow(outdoor, 3 + 5 * z);
      expect(Math.abs(mean / integrated(outdoor, 3 + 5 * z, 1) - 1)).toBeLessThan(1e-10);
      expect(Math.abs(share / integrated(outdoor, 3 + 5 * z, 0) - 1)).toBeLessThan(1e-10);
    },
  );
});

describe('shortfall', () => {
  it('of a logistic month has the spread asked for', () => {
    expect(LOGISTIC_DEVIATION).toBeCloseTo(1.8137993642342178, 14);
  });

  it('at the mean is 0.398942 of the deviation, normally', () => {
    expect(shortfallBelow({ distribution: 'normal', mean: 18, spread: 4 }, 18).mean).toBeCloseTo(4 / Math.sqrt(2 * Math.PI), 14);
  });

  it('differs from the excess by base − mean', () => {
    fc.assert(
      fc.property(months, between(-90, 60), (outdoor, base) => {
        const difference = shortfallBelow(outdoor, base).mean - excessAbove(outdoor, base).mean;
        expect(Math.abs(difference - (base - outdoor.mean))).toBeLessThan(1e-12 * (1 + Math.abs(base - outdoor.mean)));
      }),
    );
  });

  it('rises with the base, convexly and by the share of time below it', () => {
    fc.assert(
      fc.property(months, between(-90, 60), between(0.001, 5), (outdoor, base, more) => {
        const low = shortfallBelow(outdoor, base);
        const high = shortfallBelow(outdoor, base + more);
        const slope = (high.mean - low.mean) / more;
        expect(low.share).toBeGreaterThanOrEqual(0);
        expect(high.share).toBeLessThanOrEqual(1);
        expect(slope).toBeGreaterThanOrEqual(low.share - 1e-9);
        expect(slope).toBeLessThanOrEqual(high.share + 1e-9);
      }),
    );
  });

  it('is never below that of the mean itself, and never negative', () => {
    fc.assert(
      fc.property(months, between(-90, 60), (outdoor, base) => {
        const { mean } = shortfallBelow(outdoor, base);
        expect(mean).toBeGreaterThanOrEqual(Math.max(0, base - outdoor.mean) - 1e-12);
        expect(Number.isFinite(mean)).toBe(true);
      }),
    );
  });

  it('goes over into that of the mean as the spread vanishes', () => {
    for (const spread of [0, 1e-300, 1e-9]) {
      expect(shortfallBelow({ distribution: 'normal', mean: 5, spread }, 16).mean).toBe(11);
      expect(shortfallBelow({ distribution: 'logistic', mean: 16, spread }, 5).mean).toBe(0);
    }
  });
});
