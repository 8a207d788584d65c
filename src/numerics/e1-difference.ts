import { exponentialIntegral } from './exponential-integral.js';

/** Gauss–Legendre on −1 … 1, eight points: the positive half of the abscissas and their weights. */
const GAUSS = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

/**
 * E1(a) − E1(b) without the loss of digits when the two are close, so that what a far pipe and its mirror image do together never turns negative.
 *
 * @param a - the smaller argument, above 0 [1]
 * @param b - the larger argument [1]
 * @returns E1(a) − E1(b), above 0 as far as a double reaches; 0 when a equals b [1]
 * @remarks Arguments less than 1 and a factor of 1.5 apart: ∫ exp(−u)/u du from a to b by Gauss–Legendre quadrature, every term of it positive.
 */
export function e1Difference(a: number, b: number): number {
  if (a > 745) return 0;
  const gap = b - a;
  if (gap >= 1 || gap >= 0.5 * a) return exponentialIntegral(a) - exponentialIntegral(b);
  const half = gap / 2;
  let sum = 0;
  for (const [place, weight] of GAUSS) {
    const near = half * (1 - place);
    const far = half * (1 + place);
    sum += weight * (Math.exp(-near) / (a + near) + Math.exp(-far) / (a + far));
  }
  return Math.exp(-a) * half * sum;
}
