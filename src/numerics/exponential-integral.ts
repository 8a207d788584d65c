import { SCALED_E1 } from './exponential-integral.data.js';
import { polynomial } from './polynomial.js';

const EULER = 0.5772156649015329;

/** (−1)^(n+1) / (n · n!) for n = 15 … 1: the entire part of E1. */
const ENTIRE = /* @__PURE__ */ [
  19615115520000, -1220496076800, 80951270400, -5748019200, 439084800, -36288000, 3265920, -322560, 35280, -4320, 600, -96, 18, -4, 1,
].map((divisor) => 1 / divisor);

/**
 * Exponential integral E1(x) = ∫ from x to ∞ of exp(−u)/u du.
 *
 * Within 4 units in the last place for x from 1e-15 to 700; above 738 the true value is smaller than the smallest double and 0 comes back.
 *
 * @param x - argument, above 0 [1]
 * @returns E1(x) [1]
 * @remarks Power series up to 0.5, above it polynomials for x · exp(x) · E1(x) in 1/x. Checked against 40-digit values.
 */
export function exponentialIntegral(x: number): number {
  if (x <= 0.5) return x * polynomial(ENTIRE, x) - EULER - Math.log(x);
  const u = 1 / x;
  return Math.exp(-x) * u * scaledE1(u);
}

/** x · exp(x) · E1(x) for u = 1/x up to 2. */
function scaledE1(u: number): number {
  if (u <= 0.125) return polynomial(SCALED_E1.above8, 16 * u - 1);
  if (u <= 0.25) return polynomial(SCALED_E1.from4To8, 16 * u - 3);
  if (u <= 0.5) return polynomial(SCALED_E1.from2To4, 8 * u - 3);
  if (u <= 1) return polynomial(SCALED_E1.from1To2, 4 * u - 3);
  return polynomial(SCALED_E1.fromHalfTo1, 2 * u - 3);
}
