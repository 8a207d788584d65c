/** Coefficients of a polynomial, lowest power first. */
export type Polynomial = readonly number[];

/** A polynomial in two variables: for each power of the first, a polynomial in the second. */
export type SurfacePolynomial = readonly Polynomial[];

/**
 * Value of a polynomial by Horner's scheme.
 *
 * @param coefficients - lowest power first
 * @param x - the variable
 * @returns c₀ + c₁ x + c₂ x² + …
 */
export function polynomial(coefficients: Polynomial, x: number): number {
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power -= 1) sum = sum * x + (coefficients[power] ?? 0);
  return sum;
}

/**
 * Value of a polynomial in two variables.
 *
 * @param rows - for each power of `x`, a polynomial in `y`
 * @param x - the variable whose powers number the rows
 * @param y - the variable within a row
 * @returns Σ cᵢⱼ xⁱ yʲ
 */
export function surfacePolynomial(rows: SurfacePolynomial, x: number, y: number): number {
  let sum = 0;
  for (let power = rows.length - 1; power >= 0; power -= 1) sum = sum * x + polynomial(rows[power] ?? [], y);
  return sum;
}
