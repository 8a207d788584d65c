import { demand } from '../errors/index.js';
import type { PipeLength } from '../units/index.js';
import { demandSimulation } from './demand-simulation.js';
import { bindingLimit, type BindingLimit, demandLimits, type FluidLimits } from './fluid-limits.js';
import { groundBeyond, neverRuns, tooShort, type Tried } from './sizing-refusals.js';
import { type Plant, plantOf } from './plant.js';
import { LengthTrials } from './length-trials.js';
import { follow } from './simulate.js';
import type { Simulation, SimulationInput } from './simulation.js';

/** What {@link sizeLoop} needs: all of a simulation but the length. */
export interface SizeLoopInput extends Omit<SimulationInput, 'pipeLength' | 'withCourse'> {
  /** What the fluid must keep. */
  readonly limits: FluidLimits;
  /** Shortest length for which trenches, circuits and so the film are as given, 1 to 1e6; 1 m when left out [m]. */
  readonly shortest?: PipeLength;
  /** Longest such length, above the shortest, at most 1e6; 1e6 m when left out [m]. */
  readonly longest?: PipeLength;
  /** Where to begin, from a closed formula; anything when left out [m]. */
  readonly guess?: PipeLength;
}

/** The shortest loop of one topology that keeps its limits. */
export interface SizedLoop {
  /** Pipe, the end of the last bracket that keeps the limits [m]. */
  readonly exactLength: PipeLength;
  /** The limit that binds, with its hour. */
  readonly binding: BindingLimit;
  /** That loop through its years. */
  readonly simulation: Simulation;
  /** How many lengths were simulated. */
  readonly lengthsTried: number;
}

/** A length is found when the fluid is this near to its limit [K] … */
const CLOSE = 1e-3;
/** … and the bracket this narrow [1]. */
const NARROW = 4e-4;
const MOST_LENGTHS = 40;
/** A first length whose margin is within this [K] is near; with the usual margin between ground and limit [K] the other side is near, too. */
const NEAR = 1;
const USUAL_MARGIN = 9;
/** As good as no heat at all: what no length can better [m]. */
const ENDLESS = 1e9 as PipeLength;

/** A length that keeps the limits. */
interface Kept<Warm> extends Tried<Warm> {
  readonly outcome: NonNullable<Tried<Warm>['outcome']>;
}

/** A margin for lengths so short that the fluid leaves all bounds [K]. */
const OUT_OF_BOUNDS = -100;

const keeps = <Warm>(tried: Tried<Warm>): tried is Kept<Warm> => tried.margin >= 0 && tried.outcome !== undefined;

/**
 * The shortest pipe with which the fluid keeps its limits, for trenches and circuits that stay as they are.
 *
 * More pipe brings the fluid nearer to the ground in every hour, so the margin to the limits rises with the length and one bracketed search finds where
 * it begins; what is returned is the end of the bracket that keeps them. Numbers of trenches and circuits change response and film in steps and belong outside:
 * give each its own range of lengths, and see {@link sizeOverTopologies}.
 *
 * @param input - see {@link SizeLoopInput}
 * @returns the length, the limit that binds, and the simulation of just that length
 * @throws InputError for a value out of its range; `unreachable` when not even endless pipe keeps a limit, saying how far the ground itself is from it,
 * or when the longest length allowed does not
 * @remarks Illinois' variant of false position on 1/length, in which the margin is nearly straight. Invariants tested: the length found keeps the limits, 0.1 %
 * less does not; more load or drier soil never shorten it.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, pipeMetreKelvinPerWatt, wattsPerKelvin } = await import('../units/index.js');
 * const wave = Array.from({ length: 8760 }, (_, step) => Math.cos((2 * Math.PI * (step / 24 - 20)) / 365));
 * const { exactLength, binding } = sizeLoop({
 *   step: hours(1),
 *   duty: { from: 'ground', loads: wave.map((each) => 5000 * Math.max(0, each)) },
 *   ground: wave.map((each) => 10 - 5 * each),
 *   response: { terms: [{ timeConstant: hours(2000), rise: pipeMetreKelvinPerWatt(0.6) }], steadyRise: pipeMetreKelvinPerWatt(0.6) },
 *   resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
 *   heatCapacityRate: wattsPerKelvin(2000),
 *   limits: { lowestEntering: celsius(-1) },
 * });
 * expect(binding.limit).toBe('lowestEntering');
 * expect(binding.limitMargin).toBeGreaterThanOrEqual(0);
 * expect(exactLength).toBeLessThan(700);
 * ```
 */
export function sizeLoop(input: SizeLoopInput): SizedLoop {
  const { limits, shortest = 1 as PipeLength, longest = 1e6 as PipeLength, guess } = input;
  demandLimits(limits);
  demand('shortest', 'pipe length', shortest, { atLeast: 1, atMost: 1e6 });
  demand('longest', 'pipe length', longest, { atLeast: shortest, atMost: 1e6 });
  if (guess !== undefined) demand('guess', 'pipe length', guess, { atLeast: 1, atMost: 1e6 });
  demandSimulation({ ...input, pipeLength: longest });
  return sizeWith(input, plantOf(input));
}

/** {@link sizeLoop} with input that was checked and tables that others share. */
export function sizeWith(input: SizeLoopInput, plant: Plant): SizedLoop {
  const { limits, shortest = 1, longest = 1e6, guess = 500 } = input;
  const trials = new LengthTrials(input, limits, plant);
  const attempt = (wanted: number): Tried => {
    const length = wanted as PipeLength;
    const trial = trials.follow(length);
    if (trial === undefined) return { length, margin: OUT_OF_BOUNDS };
    const { binding, warm } = trial;
    if (binding === undefined) throw neverRuns();
    return { length, margin: binding.limitMargin, outcome: { binding, warm } };
  };
  const search = (): SizedLoop => {
    const { kept, missed } = bracketLengths(attempt, shortest, longest, Math.min(Math.max(guess, shortest), longest));
    const { length, outcome } = missed === undefined ? kept : narrowLengths(kept, missed, attempt);
    const simulation = follow({ ...input, pipeLength: length }, plant, outcome.warm);
    return { exactLength: length, binding: bindingLimit(simulation, limits) ?? outcome.binding, simulation, lengthsTried: trials.tried };
  };
  const found = search();
  if (found.binding.limitMargin >= 0) return found;
  trials.firstToo = true;
  return search();
}

type Attempt<Warm> = (length: number) => Tried<Warm>;

/** A length that keeps the limits and a shorter one that does not; none that does not where the shortest keeps them. */
export function bracketLengths<Warm>(
  attempt: Attempt<Warm>,
  shortest: number,
  longest: number,
  guess: number,
): { readonly kept: Kept<Warm>; readonly missed?: Tried<Warm> } {
  let here = attempt(guess);
  // Near the root a length in proportion to the margin lies on its other side.
  if (Math.abs(here.margin) < NEAR) {
    const there = attempt(Math.min(Math.max(here.length * (1 - (1.3 * here.margin) / USUAL_MARGIN), shortest), longest));
    if (keeps(there) && !keeps(here)) return { kept: there, missed: here };
    if (keeps(here) && !keeps(there)) return { kept: here, missed: there };
  }
  const endless = here.length === (here.margin < 0 ? longest : shortest) ? here : attempt(ENDLESS);
  if (here !== endless && !keeps(endless)) throw groundBeyond(endless);
  for (;;) {
    if (keeps(here) && here.length <= shortest) return { kept: here };
    if (!keeps(here) && here.length >= longest) throw tooShort(here);
    // The margin is nearly that of endless pipe − slope/length; a little beyond its root, so that the two lie on both sides.
    const root = ((endless.margin - here.margin) * here.length) / endless.margin;
    const beyond = here.margin < 0 ? Math.max(1.01 * root, 1.02 * here.length) : Math.min(0.99 * root, 0.98 * here.length);
    const next = attempt(Math.min(Math.max(beyond, shortest), longest));
    if (keeps(next) && !keeps(here)) return { kept: next, missed: here };
    if (keeps(here) && !keeps(next)) return { kept: here, missed: next };
    here = next;
  }
}

/** Closes in on the limit between a length that keeps it and one that does not. */
export function narrowLengths<Warm>(upper: Kept<Warm>, lower: Tried<Warm>, attempt: Attempt<Warm>): Kept<Warm> {
  let kept = upper;
  let missed = lower;
  // Illinois: the end that stays put twice has its weight halved.
  let weights = { kept: kept.margin, missed: missed.margin };
  let last: Tried<Warm> | undefined;
  for (let round = 0; round < MOST_LENGTHS && kept.length > missed.length * (1 + NARROW); round += 1) {
    const straight = (weights.missed - weights.kept) / (weights.missed / kept.length - weights.kept / missed.length);
    // Once an end is at the limit, the other is brought to its side.
    const aimed = kept.margin <= CLOSE ? kept.length / (1 + 0.9 * NARROW) : missed.margin >= -CLOSE ? missed.length * (1 + 0.9 * NARROW) : straight;
    const tried = attempt(aimed);
    if (keeps(tried)) {
      weights = { kept: tried.margin, missed: last === kept ? weights.missed / 2 : weights.missed };
      kept = tried;
    } else {
      weights = { kept: last === missed ? weights.kept / 2 : weights.kept, missed: tried.margin };
      missed = tried;
    }
    last = tried;
  }
  return kept;
}
