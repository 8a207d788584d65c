import { demand, demandCount, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Length, Shape, TemperatureDifference, Time } from '../units/index.js';
import { DAY, demandColdestDay, demandPart } from './limits.js';
import { demandProbeDepth } from './probe-depths.js';
import {
  demandExpected,
  type ExpectedGround,
  expectedErrors,
  expectedGroundShape,
  placesOf,
  type ProbeErrors,
  probeErrorsShape,
} from './probe-errors.js';

/** Standard errors that are good enough; one at least. */
export interface WantedErrors {
  /** Of the mean, 1e-3 to 20 [K]. */
  readonly meanError?: TemperatureDifference;
  /** Of the amplitude, 1e-3 to 20 [K]. */
  readonly amplitudeError?: TemperatureDifference;
  /** Of the coldest day, 1 h to 100 d [s]. */
  readonly coldestDayError?: Time;
  /** Of the diffusivity, 1e-10 to 1e-5 [m2/s]. */
  readonly diffusivityError?: Diffusivity;
}

/** What {@link planGroundProbe} needs. */
export interface GroundProbePlanInput extends ExpectedGround {
  /** Depths that can be reached, from which those of the probe are chosen, 1 to 8 of them [m]. */
  readonly probeDepths: readonly Length[];
  /** First day of reading, 1 to 367 [d]. */
  readonly start: DayOfYear;
  /** Time from one reading to the next, 1 to 120 days [s]. */
  readonly interval: Time;
  /** Longest time that may be read, from one interval to ten years [s]. */
  readonly longestTime: Time;
  /** Standard errors that are good enough. */
  readonly wanted: WantedErrors;
}

/** Shape of {@link GroundProbePlanInput}. */
export const groundProbePlanInputShape: Shape<GroundProbePlanInput> = /* @__PURE__ */ joinedShape(expectedGroundShape, {
  probeDepths: { list: 'length' },
  start: 'day of year',
  interval: 'time',
  longestTime: 'time',
  wanted: {
    meanError: { optional: 'temperature difference' },
    amplitudeError: { optional: 'temperature difference' },
    coldestDayError: { optional: 'time' },
    diffusivityError: { optional: 'diffusivity' },
  },
});

/** A probe that is good enough. */
export interface GroundProbeOption extends ProbeErrors {
  /** Where its sensors lie [m]. */
  readonly probeDepths: readonly Length[];
  /** How many times it is read. */
  readonly count: number;
  /** From the first to the last reading [s]. */
  readonly duration: Time;
}

/** Probes that tell what is wanted. */
export interface GroundProbePlan {
  /** The soonest done for each number of sensors that does it, fewest sensors first; none where no choice is good enough in time. */
  readonly options: readonly GroundProbeOption[];
}

/** A {@link GroundProbePlan} with its findings. */
export interface GroundProbePlanResult extends GroundProbePlan {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link GroundProbePlan}. */
export const groundProbePlanShape: Shape<GroundProbePlan> = {
  options: { list: /* @__PURE__ */ joinedShape(probeErrorsShape, { probeDepths: { list: 'length' }, count: 'count', duration: 'time' }) },
};

const LIMITS = {
  meanError: ['temperature difference', { atLeast: 1e-3, atMost: 20 }],
  amplitudeError: ['temperature difference', { atLeast: 1e-3, atMost: 20 }],
  coldestDayError: ['time', { atLeast: 3600, atMost: 8_640_000 }],
  diffusivityError: ['diffusivity', { atLeast: 1e-10, atMost: 1e-5 }],
} as const;

const WANTED = ['meanError', 'amplitudeError', 'coldestDayError', 'diffusivityError'] as const;

/**
 * Which depths to read how many times for a wanted certainty of the ground's mean, amplitude, coldest day and diffusivity.
 *
 * All choices of the depths that can be reached are tried with readings at a fixed interval; for each number of sensors the soonest done is
 * kept, and of equals the surest. Errors as `probeErrors` expects them, so plan with what a reading strays from a mean year, not with the
 * sensor's own error, and with an interval of a fortnight or more.
 *
 * @param input - expected ground, depths that can be reached [m], first day [d], interval and longest time of reading [s], wanted errors
 * @returns the soonest probe for each number of sensors, with its depths [m], readings, time [s] and errors
 * @throws InputError when a number is out of range or nothing is wanted
 * @remarks
 * Source: `leastSquares`. Invariants: every option meets all that is wanted, and one reading fewer at its depths does not; more sensors never
 * take longer; Monte Carlo of the fits agrees with the errors.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(11), amplitude: kelvinDifference(10.5), coldestDay: dayOfYear(33), period: days(365),
 * } as const;
 * const { options } = planGroundProbe({
 *   wave, diffusivity: squareMetresPerDay(0.055), readingDeviation: kelvinDifference(1), probeDepths: [metres(0.5), metres(1), metres(1.5)],
 *   start: dayOfYear(91), interval: days(30), longestTime: days(730), wanted: { meanError: kelvinDifference(0.4), amplitudeError: kelvinDifference(1.5) },
 * });
 * expect(options.map(({ probeDepths, count }) => [probeDepths.length, count])).toEqual([[2, 8], [3, 7]]);
 * ```
 */
export function planGroundProbe({ probeDepths, start, interval, longestTime, wanted, ...ground }: GroundProbePlanInput): GroundProbePlanResult {
  demandExpected(ground);
  demandCount('probeDepths', probeDepths, 1, 8);
  for (const [i, depth] of probeDepths.entries()) demandProbeDepth(`probeDepths.${String(i)}`, depth);
  demandColdestDay('start', start);
  demand('interval', 'time', interval, { atLeast: DAY, atMost: 120 * DAY }, 'seconds');
  demand('longestTime', 'time', longestTime, { atLeast: interval, atMost: 3653 * DAY }, 'seconds');
  demandWanted(wanted);
  const most = Math.floor(longestTime / interval + 1e-9) + 1;
  const daysOf = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => start + (i * interval) / DAY);
  /** The greatest error over what is wanted of it, and the errors; 1 and less is good enough. */
  const worth = (chosen: readonly Length[], count: number): { excess: number; errors: ProbeErrors } | undefined => {
    const errors = expectedErrors(ground, placesOf(chosen, daysOf(count)));
    if (errors === undefined) return undefined;
    const { standardErrors: of, diffusivityError } = errors;
    const found = { meanError: of.mean, amplitudeError: of.amplitude, coldestDayError: of.coldestDay, diffusivityError };
    return { excess: Math.max(...WANTED.map((name) => found[name] / (wanted[name] ?? Infinity))), errors };
  };
  /** Fewest readings that are good enough; errors only shrink with readings. */
  const fewest = (chosen: readonly Length[]): number | undefined => {
    const enough = (count: number): boolean => (worth(chosen, count)?.excess ?? Infinity) <= 1;
    if (!enough(most)) return undefined;
    let [low, high] = [0, most];
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (enough(middle)) high = middle;
      else low = middle;
    }
    return high;
  };
  const options = new Map<number, { option: GroundProbeOption; excess: number }>();
  for (const chosen of subsets(probeDepths)) {
    const count = fewest(chosen);
    const found = count === undefined ? undefined : worth(chosen, count);
    if (count === undefined || found === undefined) continue;
    const best = options.get(chosen.length);
    if (best !== undefined && (best.option.count < count || (best.option.count === count && best.excess <= found.excess))) continue;
    const option = { probeDepths: chosen, count, duration: ((count - 1) * interval) as Time, ...found.errors };
    options.set(chosen.length, { option, excess: found.excess });
  }
  const found = [...options].sort(([a], [b]) => a - b).map(([, { option }]) => option);
  const findings: readonly Finding[] =
    found.length > 0 ? [] : [{ code: 'probe-plan-out-of-reach', level: 'warning', values: { longestTime }, source: 'leastSquares' }];
  return { options: found, findings };
}

/** All choices of one and more of a list. */
function subsets(depths: readonly Length[]): readonly (readonly Length[])[] {
  return Array.from({ length: 2 ** depths.length - 1 }, (_, i) => depths.filter((__, at) => (((i + 1) >> at) & 1) === 1));
}

function demandWanted(wanted: WantedErrors): void {
  demandPart('wanted', wanted);
  const given = WANTED.filter((name) => wanted[name] !== undefined);
  if (given.length === 0)
    throw new InputError({ code: 'missing', argument: 'wanted', value: undefined, allowed: `one at least of ${WANTED.join(', ')}` });
  for (const name of given) {
    const [kind, range] = LIMITS[name];
    demand(`wanted.${name}`, kind, wanted[name] ?? Number.NaN, range);
  }
}
