import { CYLINDER_WALL } from './cylinder-wall.data.js';
import { type Complex, exponential, over, root, times } from './complex.js';
import { scaledBesselK } from './modified-bessel.js';
import { polynomial } from './polynomial.js';

const EULER = 0.5772156649015329;

/**
 * Temperature at the wall of an infinitely long cylinder in unbounded ground that gives off constant heat from time zero on:
 * rise = heat per length / conductivity · G(Fo, 1).
 *
 * Within 1e-12 of the value for every positive Fourier number.
 *
 * @param fourier - diffusivity · time / radius² [1]
 * @returns G(Fo, 1) [1]
 * @remarks Series in √Fo below 1e-4, polynomials in log Fo up to 1e6, the long-time expansion above. Checked against an inversion of the Laplace
 * transform and against the integral of Carslaw and Jaeger.
 */
export function cylinderWall(fourier: number): number {
  if (fourier < 1e-4) return shortTime(fourier);
  if (fourier > 1e6) return longTime(fourier);
  const log = Math.log10(fourier);
  if (fourier < 1e-2) return polynomial(CYLINDER_WALL['from1e-4To1e-2'], log + 3);
  if (fourier < 1) return polynomial(CYLINDER_WALL['from1e-2To1'], log + 1);
  if (fourier < 1e2) return polynomial(CYLINDER_WALL.from1To1e2, log - 1);
  if (fourier < 1e4) return polynomial(CYLINDER_WALL.from1e2To1e4, log - 3);
  return polynomial(CYLINDER_WALL.from1e4To1e6, log - 5);
}

/** Term by term from K0(q)/K1(q) = 1 − 1/2q + 3/8q² − 3/8q³ + 63/128q⁴ − 27/32q⁵ …, whose powers become powers of √Fo. */
function shortTime(fourier: number): number {
  const x = Math.sqrt(fourier);
  const rootPi = Math.sqrt(Math.PI);
  return (x / (2 * Math.PI)) * polynomial([-9 / 64, 21 / (80 * rootPi), -3 / 16, 1 / (2 * rootPi), -1 / 2, 2 / rootPi], x);
}

/** The line source and what a cylinder of finite radius adds to it, to the second order in 1/Fo. */
function longTime(fourier: number): number {
  const z = Math.log(4 * fourier) - EULER;
  return z / (4 * Math.PI) + (8 * fourier * (z + 1) - z - 3 * z * z + (Math.PI ** 2 + 3) / 2) / (64 * Math.PI * fourier * fourier);
}

/** Half the nodes of the contour; 12 pairs reach the last digits of a double. */
const PAIRS = 12;

/**
 * Temperature at a distance from the axis of a cylinder that gives off constant heat from time zero on: rise = heat per length / conductivity · G(Fo, p).
 *
 * Within 1e-12 + 1e-11 · G.
 *
 * @param fourier - diffusivity · time / radius², above 0 [1]
 * @param radii - distance from the axis over the radius of the cylinder, 1 or more [1]
 * @returns G(Fo, p) [1]
 * @remarks Inverts the Laplace transform K0(p √s) / (2π s^1.5 K1(√s)) on the cotangent contour of Trefethen, Weideman and Schmelzer.
 */
export function cylinderSource(fourier: number, radii: number): number {
  let sum = 0;
  for (let index = 0; index < PAIRS; index += 1) {
    const angle = ((2 * index + 1) * Math.PI) / (2 * PAIRS);
    const turned = 0.6407 * angle;
    const place = { re: 2 * PAIRS * ((0.5017 * angle) / Math.tan(turned) - 0.6122), im: 2 * PAIRS * 0.2645 * angle };
    const slope = { re: 0.5017 / Math.tan(turned) - (0.5017 * turned) / Math.sin(turned) ** 2, im: 0.2645 };
    const s = { re: place.re / fourier, im: place.im / fourier };
    sum += times(times(exponential(place), transform(s, radii)), slope).im;
  }
  return (2 * sum) / fourier;
}

function transform(s: Complex, radii: number): Complex {
  const q = root(s);
  const above = times(scaledBesselK({ re: radii * q.re, im: radii * q.im }).k0, exponential({ re: (1 - radii) * q.re, im: (1 - radii) * q.im }));
  const cubed = times(s, q);
  return over(above, times({ re: 2 * Math.PI * cubed.re, im: 2 * Math.PI * cubed.im }, scaledBesselK(q).k1));
}
