import { SCALED_ERFC } from './complementary-error.data.js';
import { polynomial } from './polynomial.js';

/** From here on it is less than 2.2e-17, which nothing near 1 feels. */
const VANISHED = 6;

/**
 * The complementary error function erfc(x) = 1 − erf(x), within a few units of the last digit.
 *
 * @param x - 0 or more; from 6 up, where the true value is below 2.2e-17, 0 comes back
 * @remarks Polynomials for exp(x²) · erfc(x). Checked against 1 − erf and the tail's continued fraction.
 */
export function complementaryError(x: number): number {
  if (x >= VANISHED) return 0;
  return Math.exp(-x * x) * scaled(x);
}

/** exp(x²) · erfc(x) for x below 6. */
function scaled(x: number): number {
  if (x <= 1) return polynomial(SCALED_ERFC.below1, 2 * x - 1);
  if (x <= 2) return polynomial(SCALED_ERFC.from1To2, 2 * x - 3);
  if (x <= 4) return polynomial(SCALED_ERFC.from2To4, x - 3);
  return polynomial(SCALED_ERFC.from4To6, x - 5);
}
