import { type Complex, exponential, times } from './complex.js';

/** Terms below exp(−this) of the first are left out. */
const NEGLIGIBLE = 42;

/**
 * Modified Bessel functions of the second kind K0(z) and K1(z), both times exp(z), for a complex argument.
 *
 * Within 1e-13 for a size of 1e-8 to 1e3 and an angle of up to 80° to the positive real axis.
 *
 * @param z - argument, real part above 0 [1]
 * @returns exp(z) · K0(z) and exp(z) · K1(z) [1]
 * @remarks The integral over t of exp(−z cosh t) cosh(νt) from 0 to ∞ along t − i · arg z · tanh t, which turns the integrand from a wave into a plain
 * decay; the trapezoidal rule converges exponentially there.
 */
export function scaledBesselK(z: Complex): { readonly k0: Complex; readonly k1: Complex } {
  const size = Math.hypot(z.re, z.im);
  const angle = Math.atan2(z.im, z.re);
  const step = Math.min(0.1, 0.6 / Math.sqrt(size * (1 + angle * angle)));
  const k0 = { re: 0, im: 0 };
  const k1 = { re: 0, im: 0 };
  for (let index = 0, decay = 0; decay < NEGLIGIBLE; index += 1) {
    const t = index * step;
    const turn = -angle * Math.tanh(t);
    const slope = { re: 1, im: -angle / Math.cosh(t) ** 2 };
    const cosh = { re: Math.cosh(t) * Math.cos(turn), im: Math.sinh(t) * Math.sin(turn) };
    const power = times(z, { re: 1 - cosh.re, im: -cosh.im });
    const term = times(exponential(power), slope);
    decay = -power.re;
    const weight = index === 0 ? step / 2 : step;
    k0.re += weight * term.re;
    k0.im += weight * term.im;
    const bent = times(term, cosh);
    k1.re += weight * bent.re;
    k1.im += weight * bent.im;
  }
  return { k0, k1 };
}

/**
 * Modified Bessel functions of the second kind K0(z) and K1(z) for a complex argument; 0 where they are smaller than the smallest double.
 *
 * @param z - argument as for {@link scaledBesselK} [1]
 * @returns K0(z) and K1(z) [1]
 */
export function besselK(z: Complex): { readonly k0: Complex; readonly k1: Complex } {
  const { k0, k1 } = scaledBesselK(z);
  const decay = exponential({ re: -z.re, im: -z.im });
  return { k0: times(k0, decay), k1: times(k1, decay) };
}
