/** Share of a column that must be its own for its coefficient to be told from those of the others. */
const INDEPENDENT = 1e-7;

/** A linear fit and what its errors follow from. */
export interface LeastSquares {
  readonly coefficients: readonly number[];
  readonly residuals: Float64Array;
  /** Inverse of the normal matrix; times the variance of a reading it is the covariance of the coefficients. */
  readonly cofactors: readonly (readonly number[])[];
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (const [i, value] of a.entries()) sum += value * (b[i] ?? 0);
  return sum;
};

/** Takes a multiple of one column from another. */
const take = (from: Float64Array, share: number, column: Float64Array): void => {
  for (const [i, value] of column.entries()) from[i] = (from[i] ?? 0) - share * value;
};

/**
 * Least squares by orthogonal columns (Gram and Schmidt's, modified); nothing when a column is made of the others.
 *
 * @param columns - one column for each coefficient, of at least as many rows as there are columns
 * @param right - what the columns are to add up to
 */
export function leastSquares(columns: readonly Float64Array[], right: Float64Array): LeastSquares | undefined {
  const residuals = Float64Array.from(right);
  const orthogonal: Float64Array[] = [];
  // Rows of the inverse of the triangle that leads from the columns to the orthogonal ones, one for each orthogonal column.
  const inverses: number[][] = [];
  const parts: number[] = [];
  for (const [at, column] of columns.entries()) {
    const rest = Float64Array.from(column);
    const inverse = columns.map((_, i) => Number(i === at));
    for (const [j, unit] of orthogonal.entries()) {
      const share = dot(unit, rest);
      take(rest, share, unit);
      for (const [i, value] of (inverses[j] ?? []).entries()) inverse[i] = (inverse[i] ?? 0) - share * value;
    }
    const length = Math.sqrt(dot(rest, rest));
    if (!(length > INDEPENDENT * Math.sqrt(dot(column, column)))) return undefined;
    const unit = rest.map((value) => value / length);
    orthogonal.push(unit);
    inverses.push(inverse.map((value) => value / length));
    const part = dot(unit, residuals);
    parts.push(part);
    take(residuals, part, unit);
  }
  const sumOver = (of: (inverse: readonly number[], j: number) => number): number => inverses.reduce((sum, inverse, j) => sum + of(inverse, j), 0);
  return {
    coefficients: columns.map((_, i) => sumOver((inverse, j) => (inverse[i] ?? 0) * (parts[j] ?? 0))),
    residuals,
    cofactors: columns.map((_, i) => columns.map((__, k) => sumOver((inverse) => (inverse[i] ?? 0) * (inverse[k] ?? 0)))),
  };
}

/** Sum of squares. */
export const squaresOf = (values: Float64Array): number => dot(values, values);

/** Covariance of two quantities with these gradients in the coefficients, for readings of variance one. */
const covarianceOf = (a: readonly number[], b: readonly number[], cofactors: LeastSquares['cofactors']): number =>
  a.reduce((sum, left, i) => sum + left * b.reduce((inner, right, k) => inner + (cofactors[i]?.[k] ?? 0) * right, 0), 0);

/** Variance of a quantity with this gradient in the coefficients, for readings of variance one. */
export const varianceOf = (gradient: readonly number[], cofactors: LeastSquares['cofactors']): number => covarianceOf(gradient, gradient, cofactors);

/** Correlation of the errors of two quantities with these gradients in the coefficients. */
export const correlation = (a: readonly number[], b: readonly number[], cofactors: LeastSquares['cofactors']): number =>
  covarianceOf(a, b, cofactors) / Math.sqrt(varianceOf(a, cofactors) * varianceOf(b, cofactors));
