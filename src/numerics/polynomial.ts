/**
 * Value of a polynomial by Horner's rule.
 *
 * Counts through the list by hand: in this innermost loop an iterator takes two to three times as long.
 *
 * @param coefficients - highest power first
 * @param x - the variable
 * @returns the value
 */
export function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (let index = 0; index < coefficients.length; index += 1) value = value * x + (coefficients[index] ?? 0);
  return value;
}
