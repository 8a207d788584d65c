import { complementaryError, gaussLegendre } from '../numerics/index.js';

/** Past this many lengths over its diffusion distance a line's ends act alone, in closed form. */
const ALONE = 6;
/** Widest part of the integral taken by sixteen points, in the logarithm. */
const PART = 1.5;

/**
 * How much less a wall rises beside a line of a length than beside one without end, on average over a wall of that length; rise · 4πk, 0 or more.
 *
 * ∫ 2 exp(−r²s²)/s · [erfc(Ls) + (1 − exp(−L²s²))/(√π L s)] ds from 1/√(4αt) to ∞: what the single integral of Claesson and Javed lacks of E1.
 *
 * @param square - squared distance of wall and line [m2]
 * @param spread - diffusivity · time [m2]
 * @param length - of either [m]
 */
export function lineEnds(square: number, spread: number, length: number): number {
  if (spread === 0) return 0;
  const from = 0.5 / Math.sqrt(spread);
  const to = Math.max(from, ALONE / length);
  const beside = Math.sqrt(square) * to;
  const alone = (Math.exp(-beside * beside) - beside * Math.sqrt(Math.PI) * complementaryError(beside)) / to;
  let sum = (2 * alone) / (Math.sqrt(Math.PI) * length);
  if (to === from) return sum;
  const wide = Math.log(to / from);
  const parts = Math.ceil(wide / PART);
  for (let part = 0; part < parts; part += 1)
    gaussLegendre((wide * part) / parts, (wide * (part + 1)) / parts, (logarithm, width) => {
      const s = from * Math.exp(logarithm);
      const ends = complementaryError(length * s) - Math.expm1(-((length * s) ** 2)) / (Math.sqrt(Math.PI) * length * s);
      sum += 2 * Math.exp(-square * s * s) * ends * width;
    });
  return sum;
}

/**
 * What a wall rises to beside a line of a length, on average over a wall of that length, without a surface; rise · 4πk.
 *
 * @param square - squared distance of wall and line [m2]
 * @param length - of either [m]
 */
export function lineInTheEnd(square: number, length: number): number {
  const beside = Math.sqrt(square) / length;
  return 2 * (Math.asinh(1 / beside) - 1 / (Math.hypot(1, beside) + beside));
}
