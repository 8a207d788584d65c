import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { monotoneCubic } from '../../src/heat-pump/monotone-cubic.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
interface Curve {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
}
/** Two to nine points at uneven distances, values up and down. */
const points: fc.Arbitrary<Curve> = fc
  .array(fc.record({ step: between(0.1, 15), y: between(-100, 100) }), { minLength: 2, maxLength: 9 })
  .map((all) => ({ xs: all.map((_, k) => all.slice(0, k + 1).reduce((sum, { step }) => sum + step, -20)), ys: all.map(({ y }) => y) }));
const rising = points.map(({ xs, ys }) => ({ xs, ys: [...ys].sort((a, b) => a - b) }));

const placesOf = ({ xs }: Curve): readonly number[] => {
  const first = xs[0] ?? 0;
  const last = xs.at(-1) ?? 0;
  return Array.from({ length: 81 }, (_, k) => first - 3 + ((last - first + 6) * k) / 80);
};

describe('monotoneCubic', () => {
  it('passes through its points', () => {
    fc.assert(
      fc.property(points, ({ xs, ys }) => {
        const curve = monotoneCubic(xs, ys);
        xs.forEach((x, k) => expect(Math.abs(curve.at(x).value - (ys[k] ?? Number.NaN))).toBeLessThan(1e-11));
      }),
    );
  });

  it('rises where its points rise, everywhere', () => {
    fc.assert(
      fc.property(rising, (given) => {
        const curve = monotoneCubic(given.xs, given.ys);
        const places = placesOf(given);
        places.forEach((place, k) => {
          expect(curve.at(place).slope).toBeGreaterThanOrEqual(-1e-9);
          expect(curve.at(place).value).toBeGreaterThanOrEqual(curve.at(places[k - 1] ?? place).value - 1e-9);
        });
      }),
    );
  });

  it('stays between two neighbouring points, whatever the others do', () => {
    fc.assert(
      fc.property(points, between(0, 1), ({ xs, ys }, share) => {
        const curve = monotoneCubic(xs, ys);
        for (let k = 1; k < xs.length; k += 1) {
          const [a = 0, b = 0, from = 0, to = 0] = [xs[k - 1], xs[k], ys[k - 1], ys[k]];
          const { value } = curve.at(a + share * (b - a));
          expect(value).toBeGreaterThanOrEqual(Math.min(from, to) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(from, to) + 1e-9);
        }
      }),
    );
  });

  it('has the slope it says, and one slope where two pieces meet', () => {
    fc.assert(
      fc.property(points, ({ xs, ys }) => {
        const curve = monotoneCubic(xs, ys);
        const secants = xs.slice(1).map((x, k) => ((ys[k + 1] ?? 0) - (ys[k] ?? 0)) / (x - (xs[k] ?? 0)));
        const steepest = Math.max(...secants.map(Math.abs), ...xs.map((x) => Math.abs(curve.at(x).slope)));
        for (const x of [...xs, ...placesOf({ xs, ys })]) {
          const h = 1e-6;
          const left = (curve.at(x).value - curve.at(x - h).value) / h;
          const right = (curve.at(x + h).value - curve.at(x).value) / h;
          // The second derivative is at most 18 slopes over the narrowest interval, 0.1; half of it times h is the error.
          const bend = 100 * steepest * h + 1e-7;
          expect(Math.abs(left - curve.at(x).slope)).toBeLessThan(bend);
          expect(Math.abs(right - curve.at(x).slope)).toBeLessThan(bend);
        }
      }),
    );
  });

  it('gives a monotone parabola back from uneven points', () => {
    fc.assert(
      fc.property(points, between(-2, 2), between(0, 0.04), ({ xs }, offset, square) => {
        fc.pre(xs.length > 2);
        const parabola = (x: number): number => offset + (x + 21) * (0.5 + square * (x + 21));
        const curve = monotoneCubic(xs, xs.map(parabola));
        // Where intervals differ much in width a parabola's own slopes may exceed what is monotone for sure, and are cut.
        const uncut = xs.every(
          (x, k) =>
            k === 0 ||
            Math.hypot(0.5 + 2 * square * (x + 21), 0.5 + 2 * square * ((xs[k - 1] ?? 0) + 21)) <= 3 * (0.5 + square * (x + (xs[k - 1] ?? 0) + 42)),
        );
        if (!uncut) return;
        for (const place of placesOf({ xs, ys: xs }).filter((x) => x >= (xs[0] ?? 0) && x <= (xs.at(-1) ?? 0))) {
          expect(Math.abs(curve.at(place).value - parabola(place))).toBeLessThan(1e-10 * (1 + Math.abs(parabola(place))));
        }
      }),
    );
  });

  it('is a straight line through two points and beyond every end', () => {
    const line = monotoneCubic([0, 10], [8, 10.3]);
    for (const x of [-5, 0, 3, 10, 20]) expect(line.at(x).value).toBeCloseTo(8 + 0.23 * x, 12);
    const curve = monotoneCubic([0, 5, 10], [0, 1, 4]);
    const end = curve.at(10);
    expect(curve.at(14).value).toBeCloseTo(end.value + 4 * end.slope, 12);
    expect(curve.at(14).slope).toBe(end.slope);
  });

  it('lies flat where two neighbours are equal, and at a peak', () => {
    const step = monotoneCubic([0, 1, 2, 3], [0, 1, 1, 3]);
    expect(step.at(1.5)).toEqual({ value: 1, slope: 0 });
    expect(monotoneCubic([0, 1, 2], [0, 1, 0]).at(1)).toEqual({ value: 1, slope: 0 });
  });
});
