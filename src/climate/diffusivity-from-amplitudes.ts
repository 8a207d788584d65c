import { demand, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Diffusivity, Length, Ratio, Shape, TemperatureDifference, Time } from '../units/index.js';
import { methodFindings } from './diffusivity-findings.js';
import { demandDepths, diffusivityOf, line } from './diffusivity-line.js';
import { demandPeriod, YEAR } from './limits.js';

/** The swing at a depth. */
export interface AmplitudeAtDepth {
  /** Depth below the surface, deeper than the one before, 0 to 100 [m]. */
  readonly depth: Length;
  /** Half of the yearly swing there, 1e-3 to 60 [K]. */
  readonly amplitude: TemperatureDifference;
}

/** What {@link diffusivityFromAmplitudes} needs. */
export interface AmplitudesInput {
  /** Swings at two depths or more, from the shallowest down. */
  readonly amplitudes: readonly AmplitudeAtDepth[];
  /** Standard error of each amplitude; 0.3 K when left out [K]. */
  readonly amplitudeError?: TemperatureDifference;
  /** Length of the year; 365 days when left out [s]. */
  readonly period?: Time;
}

/** Shape of {@link AmplitudesInput}. */
export const amplitudesInputShape: Shape<AmplitudesInput> = {
  amplitudes: { list: { depth: 'length', amplitude: 'temperature difference' } },
  amplitudeError: { optional: 'temperature difference' },
  period: { optional: 'time' },
};

/** A diffusivity from what differs between depths. */
export interface DepthDiffusivity {
  /** Diffusivity of the ground between the depths [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Its standard error over itself, from the errors of what was read [1]. */
  readonly relativeError: Ratio;
}

/** A {@link DepthDiffusivity} with its findings. */
export interface DepthDiffusivityResult extends DepthDiffusivity {
  /** What to look at, the weakness of the method first. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link DepthDiffusivity}. */
export const depthDiffusivityShape: Shape<DepthDiffusivity> = { diffusivity: 'diffusivity', relativeError: 'ratio' };

/**
 * Diffusivity from how the yearly swing dies away between depths.
 *
 * Two depths, or a line through the logarithms of more. The lowest and highest readings of a year hold a cold snap besides the wave, more so near
 * the surface, so fit the wave at each depth first (`fitWaveSeries`); layers and snow show as another diffusivity than by the lags.
 *
 * @param input - amplitudes [K] by depth [m], their error [K], length of the year [s]
 * @returns diffusivity α = π/P · (Δz / ln(A₁/A₂))² [m2/s], its relative error, and findings
 * @throws InputError when a number is out of range or the swing does not shrink with depth
 * @remarks
 * Source: `hortonWierengaNielsen1983`. Checked against pairs, end depths and regressions of four measured records computed independently.
 * Invariant: the amplitudes of a wave give its diffusivity back.
 * @example
 * ```ts @import.meta.vitest
 * const { kelvinDifference, metres, squareMetresPerDay } = await import('../units/index.js');
 * const amplitudes = [[0.5, 9.751846], [1.5, 6.44018]].map(([depth = 0, amplitude = 0]) => (
 *   { depth: metres(depth), amplitude: kelvinDifference(amplitude) }
 * ));
 * expect(squareMetresPerDay.of(diffusivityFromAmplitudes({ amplitudes }).diffusivity)).toBeCloseTo(0.05, 6);
 * ```
 */
export function diffusivityFromAmplitudes({
  amplitudes,
  amplitudeError = 0.3 as TemperatureDifference,
  period = YEAR,
}: AmplitudesInput): DepthDiffusivityResult {
  demandDepths('amplitudes', amplitudes);
  for (const [i, { amplitude }] of amplitudes.entries()) {
    demand(`amplitudes.${String(i)}.amplitude`, 'temperature difference', amplitude, { atLeast: 1e-3, atMost: 60 });
  }
  demand('amplitudeError', 'temperature difference', amplitudeError, { atLeast: 0, atMost: 60 });
  demandPeriod('period', period);
  const { slope, slopeError } = line(
    amplitudes.map(({ depth, amplitude }) => ({ depth, value: Math.log(amplitude), error: amplitudeError / amplitude })),
  );
  if (!(slope < 0)) {
    const hint = 'a wave from the surface only shrinks on its way down; are the depths interchanged?';
    throw new InputError({ code: 'impossible', argument: 'amplitudes', value: undefined, allowed: 'smaller amplitudes at greater depths', hint });
  }
  const diffusivity = diffusivityOf(-1 / slope, period);
  const relativeError = ((2 * slopeError) / -slope) as Ratio;
  return { diffusivity, relativeError, findings: methodFindings('amplitudes', diffusivity, relativeError) };
}
