/** Widest quantile sought; with one degree of freedom it covers all but six in a million. */
const WIDEST = 1e5;
/** Halvings that bring it below 1e-12. */
const HALVINGS = 80;

/**
 * Probability that a number with Student's distribution lies below a value.
 *
 * By the finite series for a whole number of degrees of freedom (Abramowitz and Stegun 26.7.3 and 26.7.4, from memory).
 */
export function studentBelow(value: number, freedom: number): number {
  const angle = Math.atan(value / Math.sqrt(freedom));
  const [sine, square] = [Math.sin(angle), Math.cos(angle) ** 2];
  const odd = freedom % 2 === 1;
  let term = odd ? Math.cos(angle) : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k < freedom; k += 2) {
    term *= square * ((k - 1) / k);
    sum += term;
  }
  const within = odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
  return 0.5 + within / 2;
}

/** The value below which a number with Student's distribution lies with a probability. */
export function studentQuantile(probability: number, freedom: number): number {
  let [low, high] = [-WIDEST, WIDEST];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (studentBelow(middle, freedom) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
