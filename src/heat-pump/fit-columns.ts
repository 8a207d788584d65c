import { solveSymmetric } from '../numerics/index.js';

/** How much the error of a coefficient may be blown up by columns that resemble each other, squared [1]. */
const MOST_INFLATION = 1e9;

/** A linear fit. */
export interface ColumnFit {
  readonly coefficients: readonly number[];
  /** What was to be fitted less what the fit gives. */
  readonly residuals: readonly number[];
  /** Variance of a quantity with this gradient in the coefficients, for readings of variance one. */
  readonly varianceOf: (gradient: readonly number[]) => number;
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

/**
 * Least squares by the normal equations of columns brought to length one; nothing where a column is made of the others.
 *
 * @param columns - one column for each coefficient, with at least as many rows as there are columns
 * @param right - what the columns are to add up to
 */
export function fitColumns(columns: readonly (readonly number[])[], right: readonly number[]): ColumnFit | undefined {
  const lengths = columns.map((column) => Math.sqrt(dot(column, column)));
  if (!lengths.every((length) => length > 0)) return undefined;
  const even = columns.map((column, i) => column.map((value) => value / (lengths[i] ?? 1)));
  const normal = even.map((a) => even.map((b) => dot(a, b)));
  const inverse = even.map((_, i) =>
    solveSymmetric(
      normal,
      even.map((__, k) => Number(i === k)),
    ),
  );
  // An inverse that is no number, or huge, is that of columns of which one is made of the others.
  if (!inverse.every((row, i) => (row[i] ?? Number.NaN) < MOST_INFLATION && (row[i] ?? 0) > 0)) return undefined;
  const scaled = (gradient: readonly number[]): readonly number[] => gradient.map((value, i) => value / (lengths[i] ?? 1));
  const solve = (target: readonly number[]): readonly number[] =>
    scaled(
      solveSymmetric(
        normal,
        even.map((column) => dot(column, target)),
      ),
    );
  const rest = (coefficients: readonly number[], target: readonly number[]): readonly number[] =>
    target.map((value, row) => columns.reduce((left, column, i) => left - (coefficients[i] ?? 0) * (column[row] ?? 0), value));
  const first = solve(right);
  // One step of refinement takes out what rounding left of the squared columns.
  const again = solve(rest(first, right));
  const coefficients = first.map((value, i) => value + (again[i] ?? 0));
  return {
    coefficients,
    residuals: rest(coefficients, right),
    varianceOf: (gradient) => {
      const even = scaled(gradient);
      return dot(
        even,
        inverse.map((row) => dot(row, even)),
      );
    },
  };
}
