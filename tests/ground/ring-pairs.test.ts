import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DistanceGatherer, measuredRise, measuredSteady } from '../../src/ground/distance-measure.js';
import { lineBeside } from '../../src/ground/line-beside.js';
import { lineInTheEnd } from '../../src/ground/line-ends.js';
import { ringPair } from '../../src/ground/ring-pair.js';
import { complementaryError, errorFunction } from '../../src/numerics/index.js';
import { evenPair, type EvenRing } from '../support/even-rings.js';

const RADIUS = 0.0134;
const RING = 0.4572;
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const pairOf = (apart: number, gap: number): { length: number; steady: number } => {
  let length = 0;
  let steady = 0;
  ringPair({ ringRadius: RING, radius: RADIUS }, apart, gap, (distance, each) => {
    length += each;
    steady += each / distance;
  });
  return { length, steady };
};

describe('distances from ring to ring', () => {
  const cases: readonly (readonly [name: string, apart: number, gap: number])[] = [
    ['crossing', 0.254, 0],
    ['crossing at a narrow angle', 0.88, 0],
    ['touching', 0.9144, 0],
    ['just clear', 0.96, 0],
    ['clear', 1.2, 0],
    ['far', 7, 0],
    ['one beside the other in narrow trenches', 0, 0.16],
    ['the same further along', 0.4, 0.16],
    ['near the surface, to the image', 0.95, 0.02],
    ['below one another', 0, 3.6],
  ];
  const ring = (apart: number, gap: number): EvenRing => ({ centre: [apart, 0, gap], ringRadius: RING, upright: false });

  it.each(cases)('%s: as even points find', (_name, apart, gap) => {
    const even = evenPair(ring(0, 0), ring(apart, gap), RADIUS, false, gap === 0 && apart < 0.95 ? 1000 : 300);
    expect(pairOf(apart, gap).steady / even).toBeCloseTo(1, 5);
  });

  it('count the ring whole, whatever lies between', () => {
    fc.assert(
      fc.property(between(0, 3), between(0, 3), (apart, gap) => {
        fc.pre(apart > 0.02 || gap > 0.02);
        expect(pairOf(apart, gap).length / (2 * Math.PI * RING)).toBeCloseTo(1, 6);
      }),
    );
  });

  it('change smoothly where crowded points give way to even ones', () => {
    // Nearer than 0.4 radii they are crowded.
    for (const [apart, gap] of [
      [2.4 * RING, 0],
      [RING, 0.4 * RING],
    ] as const)
      expect(pairOf(apart + 1e-9, gap + 1e-9).steady / pairOf(apart - 1e-9, gap - 1e-9).steady).toBeCloseTo(1, 5);
  });
});

describe('a measure of distances', () => {
  it('keeps length and steady rise, and later rises to 5e-5', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(between(0.01, 100), between(0.1, 5)), { minLength: 1, maxLength: 8 }), between(-4, 4), (places, log) => {
        const gatherer = new DistanceGatherer();
        for (const [distance, length] of places) gatherer.add(distance, length);
        const measure = gatherer.measure();
        const steady = places.reduce((sum, [distance, length]) => sum + length / distance, 0);
        expect(measure.lengths.reduce((a, b) => a + b, 0)).toBeCloseTo(
          places.reduce((sum, [, length]) => sum + length, 0),
          9,
        );
        expect(measuredSteady(measure) / steady).toBeCloseTo(1, 9);
        const spread = 10 ** log;
        const exact = places.reduce(
          (sum, [distance, length]) => sum + (length * (1 - errorFunction(distance / (2 * Math.sqrt(spread))))) / distance,
          0,
        );
        expect(Math.abs(measuredRise(measure, spread) - exact)).toBeLessThan(1e-4 * steady);
      }),
    );
  });
});

describe('lines beside one another', () => {
  it('sum to the closed form, of any length and distance', () => {
    fc.assert(
      fc.property(between(Math.log(0.01), Math.log(10)), between(0, Math.log(1000)), (beside, length) => {
        const [distance, long] = [Math.exp(beside), Math.exp(length)];
        let sum = 0;
        lineBeside(distance, long, (away, each) => {
          sum += each / away;
        });
        expect(sum / lineInTheEnd(distance * distance, long)).toBeCloseTo(1, 6);
      }),
    );
  });
});

describe('the complementary error function', () => {
  it('is 1 − erf, and in the tail its continued fraction', () => {
    fc.assert(
      fc.property(between(0, 5.999), (x) => {
        expect(Math.abs(complementaryError(x) - (1 - errorFunction(x)))).toBeLessThan(5e-15);
        let tail = x;
        for (let n = 200; n >= 1; n -= 1) tail = x + n / 2 / tail;
        if (x > 2) expect(complementaryError(x) / (Math.exp(-x * x) / Math.sqrt(Math.PI) / tail)).toBeCloseTo(1, 12);
      }),
    );
    expect([complementaryError(0), complementaryError(6), complementaryError(Infinity)]).toEqual([1, 0, 0]);
  });
});
