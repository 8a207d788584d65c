/**
 * Complete elliptic integral of the second kind, E(m) = ∫ √(1 − m sin²θ) dθ from 0 to π/2, for a parameter m from 0 to 1.
 *
 * By the arithmetic-geometric mean, which doubles its digits in every round: E = (π/2M) (1 − Σ 2^(n−1) c²), with c² = m in the beginning.
 *
 * @param m - parameter, the square of the modulus [1]
 * @returns E, from π/2 down to 1
 */
export function ellipticE(m: number): number {
  if (m === 1) return 1;
  let a = 1;
  let g = Math.sqrt(1 - m);
  let power = 0.5;
  let sum = power * m;
  while (Math.abs(a - g) > 1e-15 * a) {
    const c = (a - g) / 2;
    [a, g] = [(a + g) / 2, Math.sqrt(a * g)];
    power *= 2;
    sum += power * c * c;
  }
  return (Math.PI / (2 * a)) * (1 - sum);
}
