// Numbers of 60 digits for the generators beside this file, independent of the library's double-precision kernels.
import { Decimal } from 'decimal.js';

export const Precise = Decimal.clone({ precision: 130, toExpNeg: -9e15, toExpPos: 9e15 });
const DIGITS = new Precise('1e-60');

/** The exact value of a double, which its shortest text is not. */
export function exactly(double) {
  let scale = 0;
  let whole = double;
  while (!Number.isInteger(whole)) {
    whole *= 2;
    scale += 1;
  }
  return new Precise(BigInt(whole).toString()).div(new Precise(2).pow(scale));
}

/** Euler's constant by the Bessel-function quotient of Brent and McMillan: sum of (n^k/k!)^2 (H_k - ln n) over sum of (n^k/k!)^2. */
function eulerConstant() {
  const n = new Precise(40);
  let term = new Precise(1);
  let harmonic = new Precise(0);
  let above = new Precise(0);
  let below = new Precise(0);
  for (let k = 0; k < 400; k += 1) {
    above = above.plus(term.times(harmonic));
    below = below.plus(term);
    term = term.times(n.div(k + 1).pow(2));
    harmonic = harmonic.plus(new Precise(1).div(k + 1));
  }
  return above.div(below).minus(n.ln());
}
export const EULER = eulerConstant();

/** E1 by its power series below 40 and by its continued fraction above. */
export function e1(x) {
  return x.lt(40) ? e1Series(x) : e1Fraction(x);
}

export function e1Series(x) {
  let sum = EULER.neg().minus(x.ln());
  let power = new Precise(1);
  for (let n = 1; n === 1 || power.abs().gt('1e-125'); n += 1) {
    power = power.times(x).div(n).neg();
    sum = sum.minus(power.div(n));
  }
  return sum;
}

/** exp(-x) / (x + 1 - 1/(x + 3 - 4/(x + 5 - 9/(...)))), from the inside out, doubling the depth until 60 digits stand. */
export function e1Fraction(x) {
  let last = new Precise(0);
  for (let depth = 50; ; depth *= 2) {
    let tail = new Precise(0);
    for (let n = depth; n >= 1; n -= 1) tail = new Precise(n * n).div(x.plus(2 * n + 1).minus(tail));
    const value = new Precise(1).div(x.plus(1).minus(tail));
    if (value.minus(last).abs().lt(value.times(DIGITS))) return value.times(x.neg().exp());
    last = value;
  }
}

const PI = Precise.acos(-1);

/** Coefficients, lowest power first, of the polynomial in t = -1 ... 1 that interpolates f(from ... to) at the Chebyshev points. */
export function interpolate(f, from, to, degree) {
  const count = degree + 1;
  const middle = from.plus(to).div(2);
  const half = to.minus(from).div(2);
  const points = Array.from({ length: count }, (_, i) => PI.times(2 * i + 1).div(2 * count));
  const values = points.map((angle) => f(middle.plus(half.times(angle.cos()))));
  const chebyshev = Array.from({ length: count }, (_, n) => {
    const sum = points.reduce((total, angle, i) => total.plus(angle.times(n).cos().times(values[i])), new Precise(0));
    return sum.times(n === 0 ? 1 : 2).div(count);
  });
  let before = [new Precise(1)];
  let current = [new Precise(0), new Precise(1)];
  const powers = Array.from({ length: count }, () => new Precise(0));
  chebyshev.forEach((coefficient, n) => {
    const polynomial = n === 0 ? before : current;
    polynomial.forEach((c, power) => {
      powers[power] = powers[power].plus(c.times(coefficient));
    });
    if (n > 0) {
      const next = [new Precise(0), ...current.map((c) => c.times(2))];
      before.forEach((c, power) => {
        next[power] = next[power].minus(c);
      });
      before = current;
      current = next;
    }
  });
  return { powers: powers.map(Number), tail: chebyshev.slice(-2).map(Number) };
}
