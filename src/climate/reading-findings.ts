import type { Finding } from '../findings/index.js';
import type { DayOfYear, TemperatureDifference, Time } from '../units/index.js';

/** From this standard error on, the coldest day is poorly known: ten days [s]. */
const VAGUE_DAY = 864_000;

/** Readings that leave out more than half of the year tell mean and amplitude apart poorly. */
export function gapFindings(longestGap: Time, period: number): readonly Finding[] {
  if (longestGap <= period / 2) return [];
  return [{ code: 'readings-leave-seasons-out', level: 'warning', values: { longestGap }, source: 'common practice' }];
}

/** A coldest day that the readings hardly tell. */
export function vagueDayFindings(
  { amplitude, coldestDay }: { readonly amplitude: TemperatureDifference; readonly coldestDay: DayOfYear },
  standardError: Time,
): readonly Finding[] {
  if (standardError <= VAGUE_DAY) return [];
  return [{ code: 'coldest-day-vague', level: 'note', values: { coldestDay, standardError, amplitude }, source: 'leastSquares' }];
}

/** A second harmonic that could be chance. */
export function secondHarmonicFindings(
  secondHarmonic: { readonly amplitude: TemperatureDifference } | undefined,
  secondHarmonicError: TemperatureDifference | undefined,
): readonly Finding[] {
  if (secondHarmonic === undefined || secondHarmonicError === undefined || secondHarmonic.amplitude > 2 * secondHarmonicError) return [];
  const values = { amplitude: secondHarmonic.amplitude, secondHarmonicError };
  return [{ code: 'second-harmonic-vague', level: 'note', values, source: 'leastSquares' }];
}
