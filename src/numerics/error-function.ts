/** From here on the error function is 1 to the last digit. */
const SATURATED = 6;

/**
 * The error function erf(x), within two units of the last digit.
 *
 * @param x - 0 or more
 * @remarks 2/√π e^(−x²) Σ 2ⁿ x^(2n+1)/(1·3·…·(2n+1)): all terms are positive, so nothing cancels.
 */
export function errorFunction(x: number): number {
  if (x >= SATURATED) return 1;
  let term = x;
  let sum = 0;
  for (let odd = 3; sum + term !== sum; odd += 2) {
    sum += term;
    term *= (2 * x * x) / odd;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}
