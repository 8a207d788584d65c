import type { AnnualWave } from '../states/index.js';
import type { DayOfYear, Shape, TemperatureDifference } from '../units/index.js';
import { demandAmplitude, demandColdestDay, demandPart, demandSurfaceWave } from './limits.js';
import type { Sine } from './wave-at-depth.js';

/** A second sine with half the period, which flattens or sharpens the winter; lasting snow makes it worth its while. */
export interface SecondHarmonic {
  /** Half of its swing, 0 to 60 [K]. */
  readonly amplitude: TemperatureDifference;
  /** One of the two days of the year on which it is lowest; 1.0 is 1 January 00:00 [d]. */
  readonly coldestDay: DayOfYear;
}

/** Shape of {@link SecondHarmonic}. */
export const secondHarmonicShape: Shape<SecondHarmonic> = { amplitude: 'temperature difference', coldestDay: 'day of year' };

/** The sines that a surface follows about its mean; refuses an impossible wave, one of the air, and an impossible second harmonic. */
export function demandSines(wave: AnnualWave, secondHarmonic: SecondHarmonic | undefined): readonly Sine[] {
  demandSurfaceWave(wave);
  if (secondHarmonic === undefined) return [wave];
  demandPart('secondHarmonic', secondHarmonic);
  demandAmplitude('secondHarmonic.amplitude', secondHarmonic.amplitude);
  demandColdestDay('secondHarmonic.coldestDay', secondHarmonic.coldestDay);
  return [wave, { ...secondHarmonic, period: wave.period / 2 }];
}
