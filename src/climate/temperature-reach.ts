import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Length, Shape, Temperature } from '../units/index.js';
import { demandDiffusivity } from './limits.js';
import { demandSines, type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';
import { demandThreshold } from './temperature-spells.js';
import { damping } from './wave-at-depth.js';
import { crossing, extremesOf, yearCourse } from './year-course.js';

/** What {@link temperatureReach} needs. */
export interface TemperatureReachInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** A second sine on top of the wave; none when left out. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Whether the cold or the warmth of the year is followed down. */
  readonly side: 'below' | 'above';
  /** The temperature that is followed, such as 0 °C, −100 to 100 [degC]. */
  readonly temperature: Temperature;
}

/** Shape of {@link TemperatureReachInput}. */
export const temperatureReachInputShape: Shape<TemperatureReachInput> = {
  wave: annualWaveShape,
  secondHarmonic: { optional: secondHarmonicShape },
  diffusivity: 'diffusivity',
  side: ['below', 'above'],
  temperature: 'temperature',
};

/** How deep the cold, or the warmth, of the year goes. */
export type TemperatureReach =
  | {
      /** Not even the surface comes to the temperature. */
      readonly reach: 'nowhere';
    }
  | {
      /** The ground is beyond the temperature at some time of the year down to a depth. */
      readonly reach: 'to a depth';
      /** The greatest depth that comes to the temperature [m]. */
      readonly depth: Length;
      /** The day on which it does, within the year [d]. */
      readonly day: DayOfYear;
    }
  | {
      /** The mean of the year lies beyond the temperature, and so does all ground. */
      readonly reach: 'at every depth';
    };

/** Shape of {@link TemperatureReach}. */
export const temperatureReachShape: Shape<TemperatureReach> = {
  by: 'reach',
  oneOf: { nowhere: {}, 'to a depth': { depth: 'length', day: 'day of year' }, 'at every depth': {} },
};

/** Damping depths below which less is left of a wave than a double can hold beside its mean. */
const DEEPEST = 60;

/**
 * The greatest depth that falls below, or rises above, a temperature in a year, and the day on which it does.
 *
 * For 0 °C: how deep the year's cold would bring the ground to freezing if it held no water. Water gives off heat as it freezes and
 * holds the frost nearer to the surface, so this depth is the deep side. Same assumptions as `groundTemperature`.
 *
 * @param input - wave of the ground surface, diffusivity [m2/s], the side and the temperature that is followed [degC]
 * @returns the depth [m] and its day, or that the temperature is reached nowhere or everywhere
 * @throws InputError when a number is out of range or the wave is of the air
 * @remarks
 * Where one sine ends: z = D ln(A / |mean − temperature|). The extremes only draw together with depth, so one depth parts reached from not
 * reached with two harmonics as well. Source: `carslawJaeger1959`. Invariant: the extreme at that depth is the temperature.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, squareMetresPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36), period: days(365),
 * } as const;
 * const frost = temperatureReach({ wave, diffusivity: squareMetresPerDay(0.05), side: 'below', temperature: celsius(0) });
 * expect(frost.reach === 'to a depth' ? [frost.depth.toFixed(2), Math.round(frost.day)] : frost).toEqual(['0.44', 47]);
 * ```
 */
export function temperatureReach({ wave, secondHarmonic, diffusivity, side, temperature }: TemperatureReachInput): TemperatureReach {
  const sines = demandSines(wave, secondHarmonic);
  demandDiffusivity(diffusivity);
  demandThreshold(side, temperature);
  const sign = side === 'above' ? 1 : -1;
  const extreme = (depth: number): { day: number; above: number } => {
    const { coldest, warmest } = extremesOf(yearCourse(sines, diffusivity, depth), wave.period);
    return side === 'above' ? warmest : coldest;
  };
  const excess = (depth: number): number => sign * (wave.mean + extreme(depth).above - temperature);
  if (excess(0) <= 0) return { reach: 'nowhere' };
  const deepest = DEEPEST * damping(diffusivity, wave.period);
  if (excess(deepest) >= 0) return { reach: 'at every depth' };
  const depth = crossing(excess, 0, deepest);
  return { reach: 'to a depth', depth: depth as Length, day: extreme(depth).day as DayOfYear };
}
