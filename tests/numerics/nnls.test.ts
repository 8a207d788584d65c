import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nnls, type NonNegativeSolution, solveSymmetric } from '../../src/numerics/index.js';

type Columns = readonly (readonly number[])[];
const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, x, i) => sum + x * (b[i] ?? Number.NaN), 0);
const norm = (a: readonly number[]): number => Math.sqrt(dot(a, a));
const solve = (columns: Columns, right: readonly number[]): NonNegativeSolution =>
  nnls({ matrix: Float64Array.from(columns.flat()), right: Float64Array.from(right) });
const residualOf = (columns: Columns, right: readonly number[], x: ArrayLike<number>): readonly number[] =>
  right.map((b, i) => columns.reduce((rest, column, j) => rest - (column[i] ?? Number.NaN) * (x[j] ?? 0), b));

/** The conditions of Karush, Kuhn and Tucker, worked out apart from the solver: no column at 0 may want in, no column in use may want to move. */
const missOf = (columns: Columns, right: readonly number[], x: ArrayLike<number>): number => {
  const residual = residualOf(columns, right, x);
  const slopes = columns.map((column, j) => {
    const slope = dot(column, residual) / (norm(column) * norm(right));
    return (x[j] ?? 0) > 0 ? Math.abs(slope) : slope;
  });
  return Math.max(0, ...slopes);
};

/** The least residual that any set of columns reaches with no negative entry, every set tried, by normal equations. */
const bruteForce = (columns: Columns, right: readonly number[]): number => {
  const residuals = Array.from({ length: 2 ** columns.length }, (_, set) => {
    const used = columns.filter((__, j) => (set >> j) % 2 === 1);
    const x = solveSymmetric(
      used.map((a) => used.map((b) => dot(a, b))),
      used.map((a) => dot(a, right)),
    );
    return x.every((entry) => entry >= 0) ? norm(residualOf(used, right, x)) : Infinity;
  });
  return Math.min(...residuals);
};

const entry = fc.double({ min: -1, max: 1, noNaN: true });
const vector = fc.array(entry, { minLength: 8, maxLength: 8 }).filter((column) => norm(column) > 0.1);
/** Decays at 60 places over six factors of ten, for time constants a given number of which lie on one factor of ten. */
const decays = (perDecade: number): Columns => {
  const places = Array.from({ length: 60 }, (_, i) => 10 ** (i / 10));
  return Array.from({ length: 6 * perDecade + 1 }, (_, j) => places.map((place) => -Math.expm1(-place / 10 ** (j / perDecade))));
};

describe('least squares without negative entries', () => {
  it('is the best of all sets of columns', () => {
    fc.assert(
      fc.property(fc.array(vector, { minLength: 1, maxLength: 6 }), vector, (random, right) => {
        // Some independence, so that the normal equations of the comparison can be trusted.
        const columns = random.map((column, j) => column.map((x, i) => (i === j ? x + 3 : x)));
        const { solution, optimality } = solve(columns, right);
        expect(Math.min(...solution)).toBeGreaterThanOrEqual(0);
        expect(optimality).toBeLessThan(1e-10);
        expect(missOf(columns, right, solution)).toBeLessThan(1e-10);
        expect(norm(residualOf(columns, right, solution))).toBeCloseTo(bruteForce(columns, right), 10);
      }),
      { numRuns: 500 },
    );
  });

  it('meets the conditions of an optimum with more columns than rows, with columns twice and with columns nearly the same', () => {
    fc.assert(
      fc.property(fc.array(vector, { minLength: 5, maxLength: 15 }), vector, fc.integer({ min: 0, max: 12 }), (random, right, digits) => {
        const columns = [...random, ...random.map((column, j) => column.map((x, i) => x + (digits === 12 ? 0 : 10 ** -digits) * Math.cos(i * j)))];
        const usable = columns.filter((column) => norm(column) > 0.01);
        const { solution, optimality } = solve(usable, right);
        // Columns nearly the same may be asked for in huge shares that all but cancel; no residual is known better than their rounding.
        const rounding = 1e-14 * usable.reduce((sum, column, j) => sum + ((solution[j] ?? 0) * norm(column)) / norm(right), 0);
        expect(optimality).toBeLessThan(1e-10 + rounding);
        expect(missOf(usable, right, solution)).toBeLessThan(1e-10 + rounding);
      }),
      { numRuns: 500 },
    );
  });

  it('finds a mixture of decays again', () => {
    const columns = decays(1);
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 }), (given) => {
        const shares = given.map((share) => (share < 0.3 ? 0 : share));
        const right = columns[0]?.map((_, i) => columns.reduce((sum, column, j) => sum + (shares[j] ?? 0) * (column[i] ?? 0), 0)) ?? [];
        if (norm(right) === 0) return;
        for (const [j, share] of solve(columns, right).solution.entries()) expect(share).toBeCloseTo(shares[j] ?? Number.NaN, 8);
      }),
    );
  });

  it('meets the conditions of an optimum for decays so near one another that their normal equations have no digits', () => {
    const columns = decays(4);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.9, noNaN: true }), (power) => {
        const right = Array.from({ length: 60 }, (_, i) => 10 ** ((power * i) / 10) / (1 + 10 ** ((power * i) / 10)));
        const { solution, optimality } = solve(columns, right);
        expect(optimality).toBeLessThan(1e-12);
        expect(missOf(columns, right, solution)).toBeLessThan(1e-11);
      }),
    );
  });

  it('is all 0 where every column points away, and goes with the right-hand side', () => {
    expect([
      ...solve(
        [
          [-1, 0],
          [-1, -1],
        ],
        [1, 1],
      ).solution,
    ]).toEqual([0, 0]);
    fc.assert(
      fc.property(fc.array(vector, { minLength: 2, maxLength: 5 }), vector, (columns, right) => {
        const doubled = solve(
          columns,
          right.map((b) => 2 * b),
        ).solution;
        expect([...doubled]).toEqual([...solve(columns, right).solution].map((x) => 2 * x));
      }),
    );
  });
});
