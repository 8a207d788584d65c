import { demand, InputError } from '../errors/index.js';
import type { SoilThermal } from '../states/index.js';
import type { PipeResistance, Ratio, Time } from '../units/index.js';
import { type ExponentialFit, fitExponentials } from './exponential-fit.js';
import { equalFluxMean, type FittedMean } from './fitted-mean.js';
import { type GroundPipes, groundPipes } from './ground-pipes.js';
import type { GroundResponseInput, WallCondition } from './response.js';

/** One part of a ground response: rise · (1 − exp(−t/time constant)). */
export interface ExponentialTerm {
  /** Time constant τ of the decay, above 0 [s]. */
  readonly timeConstant: Time;
  /** What the part rises to per heat per metre of each pipe, or of the mean pipe, above 0 [m.K/W]. */
  readonly rise: PipeResistance;
}

/**
 * A ground response as a sum of exponentials, which a simulation steps with one number to remember for each term. Like
 * {@link GroundResponse}, it is for all pipes together and says nothing of one pipe upon another.
 */
export interface ExponentialResponse {
  /** Whether all pipes give off the same heat and the rise is that of their mean wall, or all walls rise alike and the heat is that of the mean pipe. */
  readonly wallCondition: WallCondition;
  /** The parts, fastest first. Their rises add up to the steady rise where there is one. */
  readonly terms: readonly ExponentialTerm[];
  /** The rise after endless time, exact [m.K/W]; absent below a sealed surface, where the terms hold for the fitted times alone. */
  readonly steadyRise: PipeResistance | undefined;
  /**
   * Wall temperature rise per heat per metre of pipe, by the terms [m.K/W].
   *
   * @param time - since the heat began, 0 to 1e12 [s]
   */
  readonly riseAfter: (time: Time) => PipeResistance;
  /** How well the terms stand for the response that they were fitted to. */
  readonly fit: {
    /** Shortest time fitted; before it the terms rise too slowly [s]. */
    readonly from: Time;
    /** Longest time fitted [s]. */
    readonly to: Time;
    /** Greatest relative error, at the ends and at three times as many times between as were fitted [1]. */
    readonly largestError: Ratio;
    /** When the terms are off by that [s]. */
    readonly largestErrorAt: Time;
    /** How far the conditions of the best fit are missed; 0 but for rounding [1]. */
    readonly optimality: Ratio;
  };
}

/** The shortest time fitted, a minute [s]. */
export const SHORTEST = 60;
/** The longest time fitted, 20 years of 365.25 days [s]. */
export const LONGEST = 631_152_000;

/**
 * A ground response as a sum of decaying exponentials, from one minute to 20 years.
 *
 * It keeps to {@link groundResponse} within 1.5e-4 of the value for the usual layouts and 2e-4 for any pipes 0.3 m apart; `fit.largestError` says how
 * near it came. Before a minute it rises too slowly. After 20 years it tends to the exact steady rise; below a sealed surface, where the ground warms
 * for ever with the logarithm of time, it soon stops rising instead and must not be used.
 *
 * @param input - pipes, soil and surface as for {@link groundResponse}; the pipe's own heat leaves a cylinder, since a line is no pipe in the first hour
 * @returns the terms, the response that they give, and how good it is
 * @throws InputError as {@link groundResponse} does, and for a line as the pipe's own heat
 * @remarks Least squares without negative weights (Lawson & Hanson, Solving Least Squares Problems) with some 25 time constants evenly spaced on a
 * logarithmic scale. 4000 layouts of 1 to 24 pipes drawn at random: half within 3e-5, 99 of 100 within 1e-4, the worst at 1.9e-4. Invariants tested:
 * every part positive; their sum the steady rise to 1e-9; `fit` true at times that were neither fitted nor judged; scaling as in {@link groundResponse}.
 * For many soils around the same pipes see {@link exponentialGeometry}, for walls of one temperature {@link equalTemperatureResponse}.
 * @example
 * ```ts @import.meta.vitest
 * const { feet, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const response = exponentialResponse({
 *   layout: twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), trenches: 4, trenchSpacing: feet(10) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 * });
 * expect(response.riseAfter(days(365.25))).toBeCloseTo(0.8131, 3);
 * expect(response.terms.every(({ rise }) => rise > 0)).toBe(true);
 * ```
 */
export function exponentialResponse(input: GroundResponseInput): ExponentialResponse {
  return fitInSoil(equalFluxMean(cylindricalPipes(input)), input.soil);
}

/** The pipes of an input, checked, each giving off its heat as a cylinder. */
export function cylindricalPipes(input: GroundResponseInput): GroundPipes {
  const pipes = groundPipes(input);
  cylinderOnly(pipes.selfTerm);
  return pipes;
}

/** Refuses pipes whose own heat would leave a line. */
export function cylinderOnly(selfTerm: GroundPipes['selfTerm']): void {
  if (selfTerm === 'cylinder') return;
  throw new InputError({
    code: 'impossible',
    argument: 'selfTerm',
    value: 'line',
    allowed: 'cylinder',
    hint: 'a line gives the wall no rise in the first minutes, which no sum of decays can follow',
  });
}

/** Fits exponentials for one soil from a minute to 20 years. */
export function fitInSoil(mean: FittedMean, soil: SoilThermal): ExponentialResponse {
  const { diffusivity } = soil;
  return responseOfFit(fitExponentials(mean, { from: diffusivity * SHORTEST, to: diffusivity * LONGEST }), soil);
}

/** A fit as the response of a soil, both checked. */
export function responseOfFit(fitted: ExponentialFit, { conductivity, diffusivity }: SoilThermal): ExponentialResponse {
  const scale = 1 / (4 * Math.PI * conductivity);
  const time = (spread: number): Time => (spread / diffusivity) as Time;
  const terms = fitted.terms.map(({ spread, weight }) => ({ timeConstant: time(spread), rise: (scale * weight) as PipeResistance }));
  return {
    wallCondition: fitted.wallCondition,
    terms,
    steadyRise: fitted.steady === undefined ? undefined : ((scale * fitted.steady) as PipeResistance),
    riseAfter: (since) => {
      demand('time', 'time', since, { atLeast: 0, atMost: 1e12 });
      let sum = 0;
      for (const { timeConstant, rise } of terms) sum -= rise * Math.expm1(-since / timeConstant);
      return sum as PipeResistance;
    },
    fit: {
      from: time(fitted.from),
      to: time(fitted.to),
      largestError: fitted.largestError as Ratio,
      largestErrorAt: time(fitted.largestErrorAt),
      optimality: fitted.optimality as Ratio,
    },
  };
}
