import type { Finding } from '../findings/index.js';
import type { AnnualWave } from '../states/index.js';
import type { TemperatureDifference, Time } from '../units/index.js';
import type { AnnualWaveFit } from './annual-wave-fit.js';
import { SURFACE_COVERS } from './surface-covers.data.js';
import type { SurfaceOffsets } from './surface-offsets.js';

/** A fit whose residuals exceed this share of its amplitude is weak, if they exceed a kelvin as well. */
const WEAK_SHARE = 0.25;

/** From this standard error on, the coldest day is poorly known: ten days [s]. */
const VAGUE_DAY = 864_000;

/** Largest amplitude of a ground surface that is met outside the interiors of Siberia and Canada [K]. */
const USUAL_AMPLITUDE = 22 as TemperatureDifference;

/** Below this amplitude, as near the equator, rain and cloud set the coldest day and any day may be right [K]. */
const EQUATORIAL_AMPLITUDE = 4;

/** Surfaces are coldest from mid-December to mid-March, or in the south half a year later [d]. */
const COLD_SEASONS = [
  [1, 76],
  [167, 258],
  [349, 367],
] as const;

/** Standard deviation of the mean of December to February from one year to the next, six winters of one continental station [K]. */
const WINTER_SPREAD = 2 as TemperatureDifference;

/** What to know about a fit through monthly means. */
export function fitFindings({ wave, residualDeviation, standardErrors }: AnnualWaveFit): readonly Finding[] {
  const findings: Finding[] = [];
  const { amplitude, coldestDay } = wave;
  if (residualDeviation > Math.max(1, WEAK_SHARE * amplitude)) {
    findings.push({ code: 'climate-fit-weak', level: 'warning', values: { residualDeviation, amplitude }, source: 'leastSquares' });
  }
  if (standardErrors.coldestDay > VAGUE_DAY) {
    const values = { coldestDay, standardError: standardErrors.coldestDay, amplitude };
    findings.push({ code: 'coldest-day-vague', level: 'note', values, source: 'leastSquares' });
  }
  return findings;
}

/** What to know about a wave of the ground surface. */
export function surfaceFindings({ mean, amplitude, coldestDay }: AnnualWave): readonly Finding[] {
  const findings: Finding[] = [];
  const usual = USUAL_AMPLITUDE;
  if (mean <= 0) findings.push({ code: 'ground-frozen-all-year', level: 'stop', values: { mean }, source: 'common practice' });
  if (amplitude > usual) findings.push({ code: 'amplitude-large', level: 'warning', values: { amplitude, usual }, source: 'common practice' });
  const inSeason = COLD_SEASONS.some(([from, to]) => coldestDay >= from && coldestDay <= to);
  if (amplitude >= EQUATORIAL_AMPLITUDE && !inSeason) {
    findings.push({ code: 'coldest-day-odd', level: 'warning', values: { coldestDay, amplitude }, source: 'common practice' });
  }
  return findings;
}

/** What to know about assumed offsets between air and surface. */
export function offsetFindings({ cover, meanOffset, amplitudeRatio, lag, assumed }: SurfaceOffsets): readonly Finding[] {
  if (assumed.length === 0) return [];
  const values = {
    meanOffset: meanOffset.estimate,
    meanOffsetLow: meanOffset.low,
    meanOffsetHigh: meanOffset.high,
    amplitudeRatio: amplitudeRatio.estimate,
    lag: lag.estimate as Time,
  };
  return [{ code: 'surface-offsets-assumed', level: 'note', values, source: SURFACE_COVERS[cover].source }];
}

/** That a usual year is not a cold one. */
export function coldWinterFinding(): Finding {
  return { code: 'no-cold-winter-used', level: 'warning', values: { winterSpread: WINTER_SPREAD }, source: 'climateReferenceNetwork' };
}
