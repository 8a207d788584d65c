import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Length, Ratio, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { DAY, demandDepth, demandDiffusivity } from './limits.js';
import { demandSines, type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';
import { damping, wrapDay } from './wave-at-depth.js';
import { extremesOf, yearCourse } from './year-course.js';

/** What {@link groundTemperatureRange} needs. */
export interface GroundTemperatureRangeInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** A second sine on top of the wave; none when left out. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Depth below the surface, 0 to 1e4 [m]. */
  readonly depth: Length;
}

/** Shape of {@link GroundTemperatureRangeInput}. */
export const groundTemperatureRangeInputShape: Shape<GroundTemperatureRangeInput> = {
  wave: annualWaveShape,
  secondHarmonic: { optional: secondHarmonicShape },
  diffusivity: 'diffusivity',
  depth: 'length',
};

/** What is left of the yearly wave at a depth. */
export interface GroundTemperatureRange {
  /** Lowest temperature of the year [degC]. */
  readonly lowest: Temperature;
  /** Highest temperature of the year [degC]. */
  readonly highest: Temperature;
  /** Day of the lowest temperature, within the year [d]. */
  readonly coldestDay: DayOfYear;
  /** Day of the highest temperature, within the year [d]. */
  readonly warmestDay: DayOfYear;
  /** Half of the swing from lowest to highest at this depth [K]. */
  readonly amplitude: TemperatureDifference;
  /** Amplitude of the yearly sine at this depth over that at the surface, e^(−z/D) [1]. */
  readonly amplitudeRatio: Ratio;
  /** How much later than at the surface the yearly sine arrives; beyond a year where the depth is great [s]. */
  readonly lag: Time;
  /** Depth at which the yearly sine has fallen to 1/e [m]. */
  readonly dampingDepth: Length;
}

/** Shape of {@link GroundTemperatureRange}. */
export const groundTemperatureRangeShape: Shape<GroundTemperatureRange> = {
  lowest: 'temperature',
  highest: 'temperature',
  coldestDay: 'day of year',
  warmestDay: 'day of year',
  amplitude: 'temperature difference',
  amplitudeRatio: 'ratio',
  lag: 'time',
  dampingDepth: 'length',
};

/**
 * Lowest and highest temperature of undisturbed ground at a depth, and when they come.
 *
 * Same assumptions as {@link groundTemperature}. With a second harmonic the extremes are found where the slope passes zero; the yearly sine
 * alone gives ratio, lag and damping depth.
 *
 * @param input - wave of the ground surface, diffusivity [m2/s] and depth [m]
 * @returns extremes with their days, amplitude, lag and damping depth
 * @throws InputError when a number is out of range or the wave is of the air
 * @remarks
 * Amplitude = A e^(−z/D); lag = (P/2π)(z/D). Source: `carslawJaeger1959`. Checked against extremes and swings computed
 * independently for a teaching exercise (`nofzigerWu`) and nine diffusivities.
 *
 * Invariants: no day of the year leaves the range; the extremes of one sine lie half a period apart; deeper is never wider.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, feet, fahrenheit, fahrenheitDifference, squareFeetPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: fahrenheit(55), amplitude: fahrenheitDifference(23), coldestDay: dayOfYear(34), period: days(365),
 * } as const;
 * const range = groundTemperatureRange({ wave, diffusivity: squareFeetPerDay(0.62), depth: feet(6) });
 * expect(fahrenheit.of(range.lowest)).toBeCloseTo(43.7, 1);
 * expect(days.of(range.lag)).toBeCloseTo(41.1, 1);
 * ```
 */
export function groundTemperatureRange({ wave, secondHarmonic, diffusivity, depth }: GroundTemperatureRangeInput): GroundTemperatureRange {
  const sines = demandSines(wave, secondHarmonic);
  demandDiffusivity(diffusivity);
  demandDepth('depth', depth);
  const { mean, amplitude, coldestDay, period } = wave;
  const dampingDepth = damping(diffusivity, period);
  const amplitudeRatio = Math.exp(-depth / dampingDepth);
  const lag = (period * depth) / (2 * Math.PI * dampingDepth);
  const yearly = { amplitudeRatio, lag, dampingDepth };
  if (secondHarmonic !== undefined) {
    const { coldest, warmest } = extremesOf(yearCourse(sines, diffusivity, depth), period);
    return {
      lowest: mean + coldest.above,
      highest: mean + warmest.above,
      coldestDay: coldest.day,
      warmestDay: warmest.day,
      amplitude: (warmest.above - coldest.above) / 2,
      ...yearly,
    } as GroundTemperatureRange;
  }
  const coldestThere = coldestDay + lag / DAY;
  return {
    lowest: mean - amplitude * amplitudeRatio,
    highest: mean + amplitude * amplitudeRatio,
    coldestDay: wrapDay(coldestThere, period),
    warmestDay: wrapDay(coldestThere + period / DAY / 2, period),
    amplitude: amplitude * amplitudeRatio,
    ...yearly,
  } as GroundTemperatureRange;
}
