import type { Finding } from '../findings/index.js';
import type { Diffusivity, Length, Time } from '../units/index.js';
import type { GroundMoment, GroundProbeFit } from './ground-probe.js';
import { gapFindings, secondHarmonicFindings, vagueDayFindings } from './reading-findings.js';
import { longestGap } from './reading-demands.js';

/** Least distance of the outermost depths that tells a diffusivity in practice [m]. */
const LEAST_APART = 0.6;

/** Half-widths of the limits of the mean from which a loop would be sized on a guess, or not at all [K]. */
const WIDE = 1;
const TOO_WIDE = 3;

/** A depth whose mean strays from the fit by this share of the scatter, and by this much, lies in other ground [K]. */
const STRAY_SHARE = 0.5;
const STRAY = 0.3;

/** Diffusivities of nearly all soils, dry sand and peat to wet sand: 0.01 to 0.15 m2/d. */
const USUAL_LOW = 1.1574074074074074e-7 as Diffusivity;
const USUAL_HIGH = 1.736111111111111e-6 as Diffusivity;

/** That a diffusivity is none that soils have. */
export function diffusivityFindings(diffusivity: Diffusivity): readonly Finding[] {
  if (diffusivity >= USUAL_LOW && diffusivity <= USUAL_HIGH) return [];
  const values = { diffusivity, usualLow: USUAL_LOW, usualHigh: USUAL_HIGH };
  return [{ code: 'diffusivity-unlikely', level: 'warning', values, source: 'common practice' }];
}

/** What to know about a fit through readings in the ground. */
export function probeFindings(fit: GroundProbeFit, readings: readonly GroundMoment[], diffusivityKnown: boolean): readonly Finding[] {
  const { wave, meanBand, byDepth, residualDeviation, degreesOfFreedom } = fit;
  const findings: Finding[] = [];
  const half = (meanBand.high - meanBand.low) / 2;
  if (half > WIDE) {
    const values = { meanLow: meanBand.low, meanHigh: meanBand.high, degreesOfFreedom };
    findings.push({ code: 'probe-fit-vague', level: half > TOO_WIDE ? 'stop' : 'warning', values, source: 'leastSquares' });
  }
  const gap = longestGap(
    readings.map(({ day }) => day),
    wave.period,
  ) as Time;
  findings.push(...gapFindings(gap, wave.period), ...vagueDayFindings(wave, fit.standardErrors.coldestDay));
  findings.push(...secondHarmonicFindings(fit.secondHarmonic, fit.secondHarmonicError));
  const depthsApart = ((byDepth.at(-1)?.depth ?? 0) - (byDepth[0]?.depth ?? 0)) as Length;
  if (!diffusivityKnown && depthsApart < LEAST_APART) {
    findings.push({ code: 'probe-depths-close', level: 'warning', values: { depthsApart }, source: 'larwa2018' });
  }
  const strayed = byDepth.filter(({ meanResidual }) => Math.abs(meanResidual) > Math.max(STRAY, STRAY_SHARE * residualDeviation));
  for (const { depth, meanResidual } of strayed) {
    findings.push({ code: 'probe-depth-disagrees', level: 'warning', values: { depth, meanResidual }, source: 'common practice' });
  }
  return [...findings, ...(diffusivityKnown ? [] : diffusivityFindings(fit.diffusivity))];
}
