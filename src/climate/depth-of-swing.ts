import { demand } from '../errors/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Diffusivity, Length, Shape, TemperatureDifference } from '../units/index.js';
import { demandDiffusivity, demandSurfaceWave } from './limits.js';
import { damping } from './wave-at-depth.js';

/** What {@link depthOfSwing} needs. */
export interface DepthOfSwingInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Half of the swing that is left at the depth sought, 1e-9 K to that of the surface [K]. */
  readonly amplitude: TemperatureDifference;
}

/** Shape of {@link DepthOfSwingInput}. */
export const depthOfSwingInputShape: Shape<DepthOfSwingInput> = {
  wave: annualWaveShape,
  diffusivity: 'diffusivity',
  amplitude: 'temperature difference',
};

/**
 * Depth below which the yearly swing of undisturbed ground stays within a limit.
 *
 * Same assumptions as `groundTemperature`, one sine. Loops are laid where a swing of some kelvin is left; ground that tells no season
 * begins several damping depths further down.
 *
 * @param input - wave of the ground surface, diffusivity [m2/s], and the amplitude left [K]
 * @returns depth z = D ln(A / amplitude) [m]
 * @throws InputError when a number is out of range, the wave is of the air, or the surface swings less than asked for
 * @remarks
 * Source: `carslawJaeger1959`, section 2.6. Invariant: `groundTemperatureRange` has the amplitude asked for at that depth.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, squareMetresPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36), period: days(365),
 * } as const;
 * const diffusivity = squareMetresPerDay(0.05);
 * expect(depthOfSwing({ wave, diffusivity, amplitude: kelvinDifference(0.12) })).toBeCloseTo(11.1, 1);
 * ```
 */
export function depthOfSwing({ wave, diffusivity, amplitude }: DepthOfSwingInput): Length {
  demandSurfaceWave(wave);
  demandDiffusivity(diffusivity);
  const hint = 'the swing is largest at the surface and never dies away altogether';
  demand('amplitude', 'temperature difference', amplitude, { atLeast: 1e-9, atMost: wave.amplitude }, hint);
  return (damping(diffusivity, wave.period) * Math.log(wave.amplitude / amplitude)) as Length;
}
