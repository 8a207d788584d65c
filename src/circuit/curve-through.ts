import { solveSymmetric } from '../numerics/index.js';

/** A value over a place. */
export type Curve = (x: number) => number;

/** Straight lines from point to point; the end lines are led on, which only rounding ever asks for. */
export function linesThrough(xs: readonly number[], ys: readonly number[]): Curve {
  return (x) => {
    let k = 0;
    while (k < xs.length - 2 && x > (xs[k + 1] ?? 0)) k += 1;
    const [left = 0, right = 1] = xs.slice(k, k + 2);
    const [from = 0, to = 0] = ys.slice(k, k + 2);
    return from + ((to - from) * (x - left)) / (right - left);
  };
}

/**
 * The parabola of least squares among those that fall from the first place to the last.
 *
 * Its slope is a line, and so falls throughout if it does at both ends; where the best of all would rise at an end, the best has its summit or its
 * trough just there. For falling points these two fall.
 */
export function fallingParabola(xs: readonly number[], ys: readonly number[]): Curve {
  const free = fitted([0, 1, 2], xs, ys);
  const [first = 0, last = 1] = [xs[0], xs[xs.length - 1]];
  const [begin, middle, end] = [free(first), free((first + last) / 2), free(last)];
  if (4 * middle - 3 * begin - end > 0) return fitted([0, 2], xs, ys);
  if (3 * end + begin - 4 * middle <= 0) return free;
  return fitted([0, 2], [...xs].reverse(), [...ys].reverse());
}

/** Least squares with these powers of the place, counted from the first in units of the range, so that the sums are of one size. */
function fitted(powers: readonly number[], xs: readonly number[], ys: readonly number[]): Curve {
  const first = xs[0] ?? 0;
  const range = Math.max(...xs.map((x) => Math.abs(x - first)));
  const terms = (x: number): readonly number[] => powers.map((power) => ((x - first) / range) ** power);
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const rows = xs.map(terms);
  const matrix = powers.map((_, i) => powers.map((__, j) => sum(rows.map((row) => (row[i] ?? 0) * (row[j] ?? 0)))));
  const right = powers.map((_, i) => sum(rows.map((row, k) => (row[i] ?? 0) * (ys[k] ?? 0))));
  const factors = solveSymmetric(matrix, right);
  return (x) => sum(terms(x).map((term, i) => term * (factors[i] ?? 0)));
}
