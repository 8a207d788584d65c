import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Length, Shape, Temperature } from '../units/index.js';
import { demandDay, demandDepth, demandDiffusivity } from './limits.js';
import { demandSines, type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';
import { allBelow } from './wave-at-depth.js';

/** What {@link groundTemperature} needs. */
export interface GroundTemperatureInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** A second sine on top of the wave; none when left out. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Depth below the surface, 0 to 1e4 [m]. */
  readonly depth: Length;
  /** When; 1.0 is 1 January 00:00, later years count on, within 1e6 days either way [d]. */
  readonly day: DayOfYear;
}

/** Shape of {@link GroundTemperatureInput}. */
export const groundTemperatureInputShape: Shape<GroundTemperatureInput> = {
  wave: annualWaveShape,
  secondHarmonic: { optional: secondHarmonicShape },
  diffusivity: 'diffusivity',
  depth: 'length',
  day: 'day of year',
};

/**
 * Temperature of undisturbed ground at a depth and a day.
 *
 * Even, half-infinite ground of constant properties under a surface that follows a sine: the swing dies away with depth and
 * comes later, the mean stays. No freezing, no snow that comes and goes, no groundwater; a forecast from climate data alone
 * is off by 1.4 to 2.4 K (root mean square, within the top metre; `xingSpitler2017`).
 *
 * @param input - wave of the ground surface, diffusivity [m2/s], depth [m] and day [d]
 * @returns ground temperature [degC]
 * @throws InputError when a number is out of range or the wave is of the air
 * @remarks
 * T = mean − amplitude · e^(−z/D) · cos(2π(t − coldest)/P − z/D), D = √(αP/π); the second harmonic likewise with P/2.
 * Sources: `carslawJaeger1959`, `kusudaAchenbach1965`; two harmonics: `xing2014`. Checked against 136 values computed
 * independently and against a finite-difference run of the heat equation.
 *
 * Invariants: the surface follows the wave exactly; the swing only shrinks with depth; half a year's shift of the coldest day
 * mirrors the wave at its mean; a period later everything repeats; the mean over a period is the mean of the wave.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36), period: days(365),
 * } as const;
 * const diffusivity = squareMetresPerDay(0.05);
 * expect(groundTemperature({ wave, diffusivity, depth: metres(0), day: dayOfYear(36) })).toBe(-2);
 * expect(groundTemperature({ wave, diffusivity, depth: metres(1.5), day: dayOfYear(36) })).toBeCloseTo(4.77, 2);
 * ```
 */
export function groundTemperature({ wave, secondHarmonic, diffusivity, depth, day }: GroundTemperatureInput): Temperature {
  const sines = demandSines(wave, secondHarmonic);
  demandDiffusivity(diffusivity);
  demandDepth('depth', depth);
  demandDay('day', day);
  return (wave.mean - allBelow(sines, diffusivity, depth, day)) as Temperature;
}
