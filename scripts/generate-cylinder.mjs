// Writes src/numerics/cylinder-wall.data.ts: the temperature at the wall of a cylinder with constant heat flux, by quadrature of the integral of
// Carslaw and Jaeger (Conduction of Heat in Solids, 2nd ed., section 13.5), a method that the library itself does not use:
// node scripts/generate-cylinder.mjs
import { writeFileSync } from 'node:fs';
import { interpolate, Precise } from './high-precision.mjs';

/** K0 of a real argument: trapezoidal rule over exp(-x cosh t), converging exponentially. */
function besselK0(x) {
  const step = 0.05;
  let sum = Math.exp(-x) / 2;
  for (let t = step; x * Math.cosh(t) < 745; t += step) sum += Math.exp(-x * Math.cosh(t));
  return sum * step;
}

/** J1(b)^2 + Y1(b)^2 by Nicholson's integral: 8/pi^2 times that of K0(2 b sinh t) cosh 2t over t = 0 ... infinity, with t = exp(v - exp(-v)). */
function modulusSquared(b) {
  const step = 0.04;
  let sum = 0;
  for (let v = -4.2; v < 8; v += step) {
    const t = Math.exp(v - Math.exp(-v));
    const argument = 2 * b * Math.sinh(t);
    if (argument > 700) break;
    sum += besselK0(argument) * Math.cosh(2 * t) * t * (1 + Math.exp(-v));
  }
  return (8 / Math.PI ** 2) * sum * step;
}

// With b = exp(u) the integrand falls off exponentially to both sides and the trapezoidal rule converges exponentially.
const STEP = 0.11;
const nodes = Array.from({ length: 640 }, (_, i) => Math.exp(-26 + i * STEP)).map((b) => ({
  square: b * b,
  weight: 1 / (b * b * modulusSquared(b)),
}));
const wall = (fourier) => (2 / Math.PI ** 3) * STEP * nodes.reduce((sum, { square, weight }) => sum - weight * Math.expm1(-square * fourier), 0);

const DEGREE = 20;
const pieces = [
  ['from1e-4To1e-2', -4],
  ['from1e-2To1', -2],
  ['from1To1e2', 0],
  ['from1e2To1e4', 2],
  ['from1e4To1e6', 4],
].map(([name, from]) => {
  const { powers, tail } = interpolate((log) => new Precise(wall(10 ** Number(log))), new Precise(from), new Precise(from + 2), DEGREE);
  if (tail.some((coefficient) => Math.abs(coefficient) > 1e-15)) throw new Error(`degree ${DEGREE} is too low for ${name}: ${tail}`);
  return { name, powers: powers.reverse() };
});
const text = pieces.map(({ name, powers }) => `  '${name}': [\n${powers.map((c) => `    ${c},`).join('\n')}\n  ],`);
writeFileSync(
  new URL('../src/numerics/cylinder-wall.data.ts', import.meta.url),
  `/**
 * Polynomials for the temperature G(Fo, 1) at the wall of a cylinder, highest power first, on pieces of two decades of Fo, in the variable log10 Fo
 * less its value in the middle of the piece. Interpolated at Chebyshev points by \`scripts/generate-cylinder.mjs\`; each truncated below 1e-15.
 */
export const CYLINDER_WALL: Readonly<Record<${pieces.map(({ name }) => `'${name}'`).join(' | ')}, readonly number[]>> = {\n${text.join('\n')}\n};\n`,
);
