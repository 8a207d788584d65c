import { InputError } from '../errors/index.js';
import { riseBeyondMean } from './end-of-run.js';
import { GroundMemory } from './ground-memory.js';
import type { IceFollower } from './ice-follower.js';
import type { Plant } from './plant.js';
import { type Run, runYear } from './run-year.js';
import type { Course, SimulationInput } from './simulation.js';

const DAY = 86_400;
/** A year repeats when the ground at its start is this near to the ground it would settle at [K]. */
const REPEATING = 5e-4;
/** The correction settles in two or three years; more than this means that something else does not. */
const MOST_YEARS = 30;
/** A feedback beyond this is no feedback, but chance [1]. */
const MOST_FEEDBACK = 0.5;

/** What a like loop left behind: the ground's memory at the start of its repeating year, with the length it is for. */
export interface WarmStart {
  readonly changes: Float64Array;
  readonly pipeLength: number;
  /** How far the heat of the year answers to the ground: what a correction calls for in the next one [1]. */
  readonly feedback: number;
}

/** A loop that is followed year by year. A class for the reason of `LazyTable`: one loop is one object, whose ground each year changes. */
export class LoopYears {
  /** Every step of the year followed last; the next one overwrites it. */
  course: Course;
  /** How many were followed. */
  years = 0;
  /** In how many steps of the last the fluid may have had other states. */
  manyStates = 0;
  #feedback = 0;
  #before: Float64Array;
  readonly #run: Run;
  readonly #year: number;

  /**
   * A loop that has not worked yet.
   *
   * @param input - checked
   * @param plant - tables that other lengths share
   * @param course - room for the steps of a year
   * @param ice - what follows the ice around the pipes; none when left out
   */
  constructor(input: SimulationInput, plant: Plant, course: Course, ice?: IceFollower) {
    this.course = course;
    this.#run = runOf(input, plant, ice);
    this.#before = this.#run.memory.changes.slice();
    this.#year = input.step * input.duty.loads.length;
  }

  /** Follows one more year. */
  run(): void {
    this.#before = this.#run.memory.changes.slice();
    this.manyStates = runYear(this.#run, this.course);
    this.years += 1;
  }

  /**
   * Follows the years that it takes until one repeats. Each part of the ground's memory is corrected with its own decay, as if the heat of the year
   * stayed; the heat answers to the ground a little, and from two corrections it is known how much, which spares a year.
   *
   * @param like - a like loop that repeats, to start from; else the year followed last
   * @returns whether the last year repeats
   */
  settle(like?: WarmStart): boolean {
    const { memory, pipeLength } = this.#run;
    if (like !== undefined) {
      // The same heat over another length.
      memory.changes.set(like.changes.map((change) => (change * like.pipeLength) / pipeLength));
      this.#feedback = like.feedback;
      this.run();
    }
    let last: Float64Array | undefined;
    for (;;) {
      memory.correctToRepeating(this.#before, this.#year);
      const moved = memory.changes.map((change, term) => change - (this.#before[term] ?? 0));
      if (moved.reduce((sum, each) => sum + Math.abs(each), 0) <= REPEATING) return true;
      if (this.years >= MOST_YEARS) return false;
      if (last !== undefined) this.#feedback = share(moved, last);
      last = moved;
      const more = this.#feedback / (1 - this.#feedback);
      moved.forEach((each, term) => {
        memory.changes[term] = (memory.changes[term] ?? 0) + more * each;
      });
      this.run();
    }
  }

  /**
   * What the last year began with, for loops like this one.
   *
   * @returns memory, length and feedback
   */
  get warm(): WarmStart {
    return { changes: this.#before, pipeLength: this.#run.pipeLength, feedback: this.#feedback };
  }

  /**
   * Change of the mean wall over the last year, beyond what the seasons do.
   *
   * @returns [K]
   */
  get drift(): number {
    return this.#run.memory.changes.reduce((sum, change, term) => sum + (this.#before[term] ?? 0) - change, 0);
  }
}

/** How much of one correction the next one is [1]. */
function share(moved: Float64Array, last: Float64Array): number {
  const [along, whole] = last.reduce<readonly [number, number]>(
    ([inner, square], each, term) => [inner + each * (moved[term] ?? 0), square + each * each],
    [0, 0],
  );
  return Math.abs(along) < MOST_FEEDBACK * whole ? along / whole : 0;
}

function runOf({ duty, step, pipeLength, ground, response, start, cyclesPerHour }: SimulationInput, plant: Plant, ice: IceFollower | undefined): Run {
  const { loads } = duty;
  return {
    plant,
    memory: new GroundMemory(response.terms, step),
    pipeLength,
    loads,
    direct: duty.from === 'ground',
    ground,
    supplies: duty.from === 'building' ? duty.supplyTemperatures : undefined,
    hotLoads: duty.from === 'building' ? duty.hotWater?.loads : undefined,
    first: Math.round((((start ?? 1) - 1) * DAY) / step) % loads.length,
    endOfRun: cyclesPerHour === undefined ? undefined : (fraction) => riseBeyondMean(response.terms, 3600 / cyclesPerHour, fraction),
    ice,
  };
}

/** What a run gives, and nothing for a loop so short that the fluid leaves all bounds. */
export function withinBounds<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof InputError && error.code === 'unreachable' && error.argument === 'pipeLength') return undefined;
    throw error;
  }
}
