import type { DayOfYear, Temperature, TemperatureDifference, Time } from '../units/index.js';
import type { AnnualWaveErrors } from './annual-wave-fit.js';
import type { WaveNumbers } from './climate-input.js';
import { type HarmonicModel, sineOf } from './harmonic-model.js';
import { DAY } from './limits.js';
import type { SecondHarmonic } from './second-harmonic.js';

/** The sines that coefficients stand for, with standard errors. */
export interface FittedWave {
  readonly wave: Required<WaveNumbers>;
  readonly standardErrors: AnnualWaveErrors;
  readonly secondHarmonic?: SecondHarmonic;
  readonly secondHarmonicError?: TemperatureDifference;
}

/**
 * Turns coefficients of cosines and sines into amplitudes and coldest days.
 *
 * @param model - what was fitted
 * @param coefficients - of the mean and the terms
 * @param errorOf - standard error of a quantity with a gradient in the coefficients
 */
export function fittedWave(model: HarmonicModel, coefficients: readonly number[], errorOf: (gradient: readonly number[]) => number): FittedWave {
  const { amplitude, coldestDay, amplitudeGradient, dayGradient } = sineOf(model, coefficients, 1);
  const dayError = errorOf(dayGradient);
  const unknownDay = model.period / DAY / Math.sqrt(12);
  const first: FittedWave = {
    wave: {
      mean: (coefficients[0] ?? 0) as Temperature,
      amplitude: amplitude as TemperatureDifference,
      coldestDay: coldestDay as DayOfYear,
      period: model.period as Time,
    },
    standardErrors: {
      mean: errorOf(coefficients.map((_, i) => (i === 0 ? 1 : 0))) as TemperatureDifference,
      amplitude: errorOf(amplitudeGradient) as TemperatureDifference,
      // Asked this way round, the day of a wave without amplitude, whose error is no number, is unknown.
      coldestDay: ((dayError < unknownDay ? dayError : unknownDay) * DAY) as Time,
    },
  };
  if (model.harmonics === 1) return first;
  const second = sineOf(model, coefficients, 2);
  return {
    ...first,
    secondHarmonic: { amplitude: second.amplitude as TemperatureDifference, coldestDay: second.coldestDay as DayOfYear },
    secondHarmonicError: errorOf(second.amplitudeGradient) as TemperatureDifference,
  };
}
