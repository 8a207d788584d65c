// Writes tests/fixtures/e1-high-precision.csv and src/numerics/exponential-integral.data.ts from 60-digit arithmetic:
// node scripts/generate-e1.mjs
import { writeFileSync } from 'node:fs';
import { e1, e1Fraction, e1Series, exactly, interpolate, Precise } from './high-precision.mjs';

const HERE = new URL('..', import.meta.url);

// Both methods must agree where both hold, or neither may be used.
for (const x of [30, 36, 40, 45]) {
  const apart = e1Series(new Precise(x))
    .div(e1Fraction(new Precise(x)))
    .minus(1)
    .abs();
  if (apart.gt('1e-40')) throw new Error(`series and continued fraction differ by ${apart.toExponential(2)} at ${x}`);
}

// Arguments: 12 per decade over 1e-15 ... 0.1, then 1.08 apart up to 700, and both sides of every joint of the pieces.
const arguments_ = [];
for (let i = 0; i < 14 * 12; i += 1) arguments_.push(10 ** (-15 + i / 12));
for (let x = 0.1; x < 700; x *= 1.08) arguments_.push(x);
for (const joint of [0.5, 1, 2, 4, 8]) arguments_.push(joint, joint * (1 - 2 ** -52), joint * (1 + 2 ** -52));
arguments_.push(100, 500, 700);
const rows = arguments_.map((x) => `${x},${e1(exactly(x)).toSignificantDigits(40).toString()}`);
writeFileSync(new URL('tests/fixtures/e1-high-precision.csv', HERE), `x,E1\n${rows.join('\n')}\n`);
console.log(`${rows.length} rows`);

const scaled = (u) => {
  const x = new Precise(1).div(u);
  return e1(x).times(x.exp()).times(x);
};
const pieces = [
  ['above8', '0', '0.125', 20],
  ['from4To8', '0.125', '0.25', 16],
  ['from2To4', '0.25', '0.5', 17],
  ['from1To2', '0.5', '1', 18],
  ['fromHalfTo1', '1', '2', 20],
].map(([name, from, to, degree]) => {
  const { powers, tail } = interpolate(scaled, new Precise(from), new Precise(to), degree);
  if (tail.some((coefficient) => Math.abs(coefficient) > 4e-17)) throw new Error(`degree ${degree} is too low on ${from} ... ${to}: ${tail}`);
  return { name, from, to, powers };
});
const text = pieces.map(
  ({ name, from, to, powers }) =>
    `  /** u from ${from} to ${to}. */\n  ${name}: [\n${powers
      .reverse()
      .map((c) => `    ${c},`)
      .join('\n')}\n  ],`,
);
writeFileSync(
  new URL('src/numerics/exponential-integral.data.ts', HERE),
  `/**
 * Polynomials for x · exp(x) · E1(x) on pieces of u = 1/x, highest power first, in the variable that runs from −1 to 1 over the piece.
 * Interpolated at Chebyshev points in 60-digit arithmetic by \`scripts/generate-e1.mjs\`; each truncated below 4e-17.
 */
export const SCALED_E1: Readonly<Record<${pieces.map(({ name }) => `'${name}'`).join(' | ')}, readonly number[]>> = {\n${text.join('\n')}\n};\n`,
);
