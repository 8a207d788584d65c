import { demand, InputError } from '../errors/index.js';
import type { Ratio, Shape, Time } from '../units/index.js';
import type { DepthDiffusivityResult } from './diffusivity-from-amplitudes.js';
import { methodFindings } from './diffusivity-findings.js';
import { demandDepths, diffusivityOf, line } from './diffusivity-line.js';
import type { GroundMoment } from './ground-probe.js';
import { DAY, demandDay, demandPeriod, YEAR } from './limits.js';

/** What {@link diffusivityFromLags} needs. */
export interface LagsInput {
  /** When the same extreme, or the same passage of the mean, came by at two depths or more, from the shallowest down. */
  readonly arrivals: readonly GroundMoment[];
  /** Standard error of each day; 3 days when left out [s]. */
  readonly arrivalError?: Time;
  /** Length of the year; 365 days when left out [s]. */
  readonly period?: Time;
}

/** Shape of {@link LagsInput}. */
export const lagsInputShape: Shape<LagsInput> = {
  arrivals: { list: { depth: 'length', day: 'day of year' } },
  arrivalError: { optional: 'time' },
  period: { optional: 'time' },
};

/** The share of a period by which a deeper day may come before the shallower one and still be meant as earlier, not as a year later. */
const EARLIER = 0.25;

/**
 * Diffusivity from how late the yearly wave comes at depth.
 *
 * Two depths, or a line through the days of more. An extreme is flat and its day hard to read: a wave of 8 K is within 0.1 K of its lowest for
 * eighteen days. Passages of the mean are read better, and a wave fitted at each depth (`fitWaveSeries`) is better still.
 *
 * @param input - days of arrival [d] by depth [m], their error [s], length of the year [s]
 * @returns diffusivity α = P/(4π) · (Δz / Δt)² [m2/s], its relative error, and findings
 * @throws InputError when a number is out of range or the wave does not come later with depth
 * @remarks
 * Source: `hortonWierengaNielsen1983`. Checked against pairs, end depths and regressions of four measured records computed independently.
 * A day may lie in the next year and be counted from its start. Invariant: the lags of a wave give its diffusivity back.
 * @example
 * ```ts @import.meta.vitest
 * const { dayOfYear, metres, squareMetresPerDay } = await import('../units/index.js');
 * const arrivals = [[0.5, 48.0511], [1.5, 72.1533]].map(([depth = 0, day = 0]) => ({ depth: metres(depth), day: dayOfYear(day) }));
 * expect(squareMetresPerDay.of(diffusivityFromLags({ arrivals }).diffusivity)).toBeCloseTo(0.05, 5);
 * ```
 */
export function diffusivityFromLags({ arrivals, arrivalError = (3 * DAY) as Time, period = YEAR }: LagsInput): DepthDiffusivityResult {
  demandDepths('arrivals', arrivals);
  for (const [i, { day }] of arrivals.entries()) demandDay(`arrivals.${String(i)}.day`, day);
  demandPeriod('period', period);
  demand('arrivalError', 'time', arrivalError, { atLeast: 0, atMost: period }, 'seconds');
  const year = period / DAY;
  const error = arrivalError / DAY;
  let before = arrivals[0]?.day ?? 0;
  const points = arrivals.map(({ depth, day }) => {
    const later = day - before + EARLIER * year;
    before += later - Math.floor(later / year) * year - EARLIER * year;
    return { depth, value: before, error };
  });
  const { slope, slopeError } = line(points);
  if (!(slope > 0)) {
    const hint = 'a wave from the surface comes later the deeper; are the depths interchanged?';
    throw new InputError({ code: 'impossible', argument: 'arrivals', value: undefined, allowed: 'later days at greater depths', hint });
  }
  // A damping depth is passed in a radian of the year.
  const diffusivity = diffusivityOf(year / (2 * Math.PI * slope), period);
  const relativeError = ((2 * slopeError) / slope) as Ratio;
  return { diffusivity, relativeError, findings: methodFindings('lags', diffusivity, relativeError) };
}
