import type { AnnualWave } from '../states/index.js';
import type { DayOfYear, Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { DAY, demandWave } from './limits.js';
import { wrapDay } from './wave-at-depth.js';

/** The constants of one wave in all forms in which it is published. */
export interface PublishedForms {
  /** Mean over the year [degC]. */
  readonly mean: Temperature;
  /** Half of the swing [K]. */
  readonly amplitude: TemperatureDifference;
  /** From the coldest to the warmest day [K]. */
  readonly wholeSwing: TemperatureDifference;
  /** On the coldest day [degC]. */
  readonly lowest: Temperature;
  /** On the warmest day [degC]. */
  readonly highest: Temperature;
  /** Day of the lowest temperature [d]. */
  readonly coldestDay: DayOfYear;
  /** Day on which the wave rises through its mean [d]. */
  readonly risingDay: DayOfYear;
  /** Day of the highest temperature [d]. */
  readonly warmestDay: DayOfYear;
  /** Day on which the wave falls through its mean [d]. */
  readonly fallingDay: DayOfYear;
  /** φ of mean + A sin(ωt − φ), with t the time since 1 January 00:00, 0 to 2π [rad]. */
  readonly sinePhase: Ratio;
  /** φ of mean + A cos(ωt − φ), 0 to 2π [rad]. */
  readonly cosinePhase: Ratio;
}

/** Shape of {@link PublishedForms}. */
export const publishedFormsShape: Shape<PublishedForms> = {
  mean: 'temperature',
  amplitude: 'temperature difference',
  wholeSwing: 'temperature difference',
  lowest: 'temperature',
  highest: 'temperature',
  coldestDay: 'day of year',
  risingDay: 'day of year',
  warmestDay: 'day of year',
  fallingDay: 'day of year',
  sinePhase: 'ratio',
  cosinePhase: 'ratio',
};

/**
 * A wave in the forms that publications and worksheets ask for; the way back is `annualWave`.
 *
 * @param wave - a wave of the air or of the ground surface
 * @returns extremes [degC], swings [K], the four marked days [d] and the phases [rad]
 * @throws InputError when a number of the wave is out of range
 * @remarks
 * Sources: `kusudaAchenbach1965`, `hillel1982`, `carslawJaeger1959`, `patrignani`. Invariant: each form, read by `annualWave`, gives the wave.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference } = await import('../units/index.js');
 * const forms = publishedForms({
 *   of: 'ground surface', mean: celsius(15), amplitude: kelvinDifference(15), coldestDay: dayOfYear(11), period: days(365),
 * });
 * expect([forms.lowest, forms.highest, forms.wholeSwing, forms.warmestDay]).toEqual([0, 30, 30, 193.5]);
 * expect(forms.sinePhase).toBeCloseTo(Math.PI / 2 + (2 * Math.PI * 10) / 365);
 * ```
 */
export function publishedForms(wave: AnnualWave): PublishedForms {
  demandWave('wave', wave);
  const { mean, amplitude, coldestDay, period } = wave;
  const later = (part: number): number => wrapDay(coldestDay + (part * period) / DAY, period);
  const phase = (day: number): number => (2 * Math.PI * (day - 1) * DAY) / period;
  return {
    mean,
    amplitude,
    wholeSwing: 2 * amplitude,
    lowest: mean - amplitude,
    highest: mean + amplitude,
    coldestDay: later(0),
    risingDay: later(1 / 4),
    warmestDay: later(1 / 2),
    fallingDay: later(3 / 4),
    sinePhase: phase(later(1 / 4)),
    cosinePhase: phase(later(1 / 2)),
  } as PublishedForms;
}
