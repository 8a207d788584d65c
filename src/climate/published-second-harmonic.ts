import type { DayOfYear, Shape, TemperatureDifference, Time } from '../units/index.js';
import { demandAmplitude, demandPeriod, YEAR } from './limits.js';
import { lowestDay, type PublishedPhase, publishedPhaseShape } from './published-phase.js';
import type { SecondHarmonic } from './second-harmonic.js';

/** The semi-annual sine of a two-harmonic form as publications print it. */
export interface PublishedSecondHarmonic {
  /** Half of its swing, 0 to 60 [K]. */
  readonly amplitude: TemperatureDifference;
  /** When it is where, within its own half year; a phase is that of sin(2ωt − φ) or cos(2ωt − φ). */
  readonly phase: PublishedPhase;
  /** Length of the year; 365 days when left out [s]. */
  readonly period?: Time;
}

/** Shape of {@link PublishedSecondHarmonic}. */
export const publishedSecondHarmonicShape: Shape<PublishedSecondHarmonic> = {
  amplitude: 'temperature difference',
  phase: publishedPhaseShape,
  period: { optional: 'time' },
};

/**
 * The second harmonic from the forms in which it is published.
 *
 * Two-harmonic forms name the lowest day of each sine (θ₁, θ₂) or print cosines and sines of twice the angle; the first sine is read by
 * `annualWave`. One printed version of the form lacks the lag with depth and puts a day into a cosine in radians; it is a misprint of this one.
 *
 * @param published - amplitude [K], phase within half a year, and length of the year [s]
 * @returns the second harmonic by the first of its lowest days
 * @throws InputError when a number is out of range
 * @remarks Source: `xing2014`. Invariant: every form of one sine gives that sine.
 * @example
 * ```ts @import.meta.vitest
 * const { dayOfYear, kelvinDifference } = await import('../units/index.js');
 * const second = secondHarmonic({ amplitude: kelvinDifference(1.5), phase: { marks: 'warmest', day: dayOfYear(200) } });
 * expect(second.coldestDay).toBeCloseTo(108.75);
 * ```
 */
export function secondHarmonic({ amplitude, phase, period = YEAR }: PublishedSecondHarmonic): SecondHarmonic {
  demandAmplitude('amplitude', amplitude);
  demandPeriod('period', period);
  return { amplitude, coldestDay: lowestDay(phase, (period / 2) as Time) as DayOfYear };
}
