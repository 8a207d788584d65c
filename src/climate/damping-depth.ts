import type { Diffusivity, Length, Shape, Time } from '../units/index.js';
import { demandDiffusivity, demandPeriod } from './limits.js';
import { damping } from './wave-at-depth.js';

/** What {@link dampingDepth} needs. */
export interface DampingDepthInput {
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Period of the wave, 1 h to 1e10 s [s]. */
  readonly period: Time;
}

/** Shape of {@link DampingDepthInput}. */
export const dampingDepthInputShape: Shape<DampingDepthInput> = { diffusivity: 'diffusivity', period: 'time' };

/**
 * Depth at which a temperature wave from the surface has fallen to 1/e, 37 %.
 *
 * Even ground, conduction only. The lag there is one radian, 58 days of a year.
 *
 * @param input - diffusivity [m2/s] and period [s]
 * @returns damping depth D = √(αP/π) [m]
 * @throws InputError when diffusivity or period are out of range
 * @remarks Source: `carslawJaeger1959`, section 2.6. Checked against values computed independently for nine diffusivities.
 * Invariants: four times the diffusivity or the period doubles it.
 * @example
 * ```ts @import.meta.vitest
 * const { days, squareMetresPerDay } = await import('../units/index.js');
 * expect(dampingDepth({ diffusivity: squareMetresPerDay(0.05), period: days(365) })).toBeCloseTo(2.41, 2);
 * expect(dampingDepth({ diffusivity: squareMetresPerDay(0.05), period: days(1) })).toBeCloseTo(0.126, 3);
 * ```
 */
export function dampingDepth({ diffusivity, period }: DampingDepthInput): Length {
  demandDiffusivity(diffusivity);
  demandPeriod('period', period);
  return damping(diffusivity, period) as Length;
}
