// Writes src/numerics/complementary-error.data.ts from 60-digit arithmetic: node scripts/generate-erfc.mjs
import { writeFileSync } from 'node:fs';
import { interpolate, Precise } from './high-precision.mjs';

const ROOT_PI = Precise.acos(-1).sqrt();

/** exp(x²) · erfc(x), by the power series of erf; 130 digits outlast what cancels below 6. */
function scaled(x) {
  let term = x;
  let sum = new Precise(0);
  for (let n = 0; term.abs().gt('1e-120'); n += 1) {
    sum = sum.plus(term.div(2 * n + 1));
    term = term
      .times(x)
      .times(x)
      .div(n + 1)
      .neg();
  }
  return new Precise(1).minus(sum.times(2).div(ROOT_PI)).times(x.times(x).exp());
}

const pieces = [
  ['below1', '0', '1', 19],
  ['from1To2', '1', '2', 16],
  ['from2To4', '2', '4', 20],
  ['from4To6', '4', '6', 16],
].map(([name, from, to, degree]) => {
  const { powers, tail } = interpolate(scaled, new Precise(from), new Precise(to), degree);
  if (tail.some((coefficient) => Math.abs(coefficient) > 1e-16)) throw new Error(`degree ${degree} is too low on ${from} ... ${to}: ${tail}`);
  return { name, from, to, powers };
});
const text = pieces.map(
  ({ name, from, to, powers }) =>
    `  /** x from ${from} to ${to}. */\n  ${name}: [\n${powers
      .reverse()
      .map((c) => `    ${c},`)
      .join('\n')}\n  ],`,
);
writeFileSync(
  new URL('../src/numerics/complementary-error.data.ts', import.meta.url),
  `/**
 * Polynomials for exp(x²) · erfc(x) on pieces of x, highest power first, in the variable that runs from −1 to 1 over the piece.
 * Interpolated at Chebyshev points in 60-digit arithmetic by \`scripts/generate-erfc.mjs\`; each truncated below 1e-16.
 */
export const SCALED_ERFC: Readonly<Record<${pieces.map(({ name }) => `'${name}'`).join(' | ')}, readonly number[]>> = {\n${text.join('\n')}\n};\n`,
);
