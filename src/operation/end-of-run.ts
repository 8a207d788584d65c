import { demand, demandCount, demandObject } from '../errors/index.js';
import type { ExponentialTerm } from '../ground/index.js';
import type { HeatPerPipeLength, PipeResistance, Ratio, RunFraction, Shape, TemperatureDifference, Time } from '../units/index.js';

/** What {@link endOfRun} needs. */
export interface EndOfRunInput {
  /** Step response of the ground as a sum of exponentials, 1 to 1000 of them, good from a minute on. */
  readonly terms: readonly ExponentialTerm[];
  /** Share of each cycle that the unit runs, 0 to 1 [h/h]. */
  readonly runFraction: RunFraction;
  /** Starts of the unit in an hour, 0.01 to 60 [1]. */
  readonly cyclesPerHour: Ratio;
  /** Heat given to the ground while the unit runs, negative where heat is taken, within ±1e4 [W/m]. */
  readonly heatPerPipeLength: HeatPerPipeLength;
}

/** Shape of {@link EndOfRunInput}. */
export const endOfRunInputShape: Shape<EndOfRunInput> = {
  terms: { list: { timeConstant: 'time', rise: 'pipe resistance' } },
  runFraction: 'run fraction',
  cyclesPerHour: 'ratio',
  heatPerPipeLength: 'heat per pipe length',
};

/** The pipe wall at the end of a run beside its mean over the cycle. */
export interface EndOfRun {
  /** Length of a run [s]. */
  readonly runTime: Time;
  /** From one start to the next [s]. */
  readonly cycleTime: Time;
  /** Wall beyond its mean per heat per metre of each pipe while running [m.K/W]. */
  readonly riseBeyondMean: PipeResistance;
  /** Wall beyond its mean, negative where heat is taken [K]. */
  readonly changeBeyondMean: TemperatureDifference;
}

/** Shape of {@link EndOfRun}. */
export const endOfRunShape: Shape<EndOfRun> = {
  runTime: 'time',
  cycleTime: 'time',
  riseBeyondMean: 'pipe resistance',
  changeBeyondMean: 'temperature difference',
};

/**
 * How much further the pipe wall is from the ground at the end of a run than on the mean over the cycle, for a unit that starts and stops evenly:
 * heat · Σ rise · ((1 − e^(−f·P/τ))/(1 − e^(−P/τ)) − f), with run fraction f and cycle P.
 *
 * Add it to a wall that was computed with the mean heat of the hour. Liquid and pipe wall, whose own heat capacity smooths short cycles, are left out;
 * so it is an upper bound, the more so the shorter the cycle.
 *
 * @param input - see {@link EndOfRunInput}
 * @returns the wall beyond its mean [m.K/W] and [K]
 * @throws InputError for a value out of its range or no terms
 * @remarks The periodic state of each exponential in closed form; checked against stepping through runs and pauses and against superposed steps of the
 * cylinder source. Invariants tested: 0 for a unit that never stops or never runs; proportional to the heat; falls with more starts; towards
 * few starts, one run's own rise less the mean.
 * @example
 * ```ts @import.meta.vitest
 * const { pipeMetreKelvinPerWatt, ratio, runFraction, seconds, wattsPerPipeMetre } = await import('../units/index.js');
 * const { changeBeyondMean } = endOfRun({
 *   terms: [{ timeConstant: seconds(1800), rise: pipeMetreKelvinPerWatt(0.1) }],
 *   runFraction: runFraction(0.5),
 *   cyclesPerHour: ratio(2),
 *   heatPerPipeLength: wattsPerPipeMetre(-20),
 * });
 * expect(changeBeyondMean).toBeCloseTo(-2 * (1 / (1 + Math.exp(-0.5)) - 0.5), 12);
 * ```
 */
export function endOfRun({ terms, runFraction, cyclesPerHour, heatPerPipeLength }: EndOfRunInput): EndOfRun {
  demandCount('terms', terms, 1, 1000);
  terms.forEach((term, index) => {
    const at = `terms.${String(index)}`;
    demandObject(at, term);
    demand(`${at}.timeConstant`, 'time', term.timeConstant, { atLeast: 1e-3, atMost: 1e12 });
    demand(`${at}.rise`, 'pipe resistance', term.rise, { atLeast: 0, atMost: 1000 });
  });
  demand('runFraction', 'run fraction', runFraction, { atLeast: 0, atMost: 1 });
  demand('cyclesPerHour', 'ratio', cyclesPerHour, { atLeast: 0.01, atMost: 60 });
  demand('heatPerPipeLength', 'heat per pipe length', heatPerPipeLength, { atLeast: -1e4, atMost: 1e4 });
  const cycleTime = 3600 / cyclesPerHour;
  const rise = riseBeyondMean(terms, cycleTime, runFraction);
  return {
    runTime: (runFraction * cycleTime) as Time,
    cycleTime: cycleTime as Time,
    riseBeyondMean: rise as PipeResistance,
    changeBeyondMean: (heatPerPipeLength * rise) as TemperatureDifference,
  };
}

/** Wall beyond its mean at the end of a run, per heat while running [m.K/W]; the input checked. */
export function riseBeyondMean(terms: readonly ExponentialTerm[], cycleTime: number, runFraction: number): number {
  let sum = 0;
  for (const { timeConstant, rise } of terms) {
    const cycle = cycleTime / timeConstant;
    sum += rise * (Math.expm1(-runFraction * cycle) / Math.expm1(-cycle) - runFraction);
  }
  return sum;
}
