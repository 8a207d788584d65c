import { InputError } from '../errors/index.js';
import { StepState } from './step-state.js';

const COLDEST = -60;
const WARMEST = 100;
/** A Newton step shorter than this is the last [K]; it still moves the temperatures, whose error is then about its square. */
const CLOSE = 1e-3;
/** A bracket this narrow holds a root that Newton's way does not find [K]. */
const NARROW = 1e-9;
const MOST_ROUNDS = 80;
/** Further than this nothing is foretold [K]. */
const FAR = 10;
/** How finely a root next to the step before is looked for where there may be three [K]. */
const STRIDE = 0.05;

/**
 * The step in which load, unit, film and wall agree. The unknown is the entering fluid, found by Newton's way with the slopes of the unit, kept inside a
 * bracket. Where film and temperature feed on each other so strongly that a step may have three states of the fluid, the state next to the step before
 * is taken. It remembers nothing but the step solved last.
 */
export class StepSolver extends StepState {
  /** Whether there may be more than one state of the fluid, of which the one next to the step before was taken. */
  manyStates = false;
  /** The mean fluid that the film was read at last [degC]. */
  #filmAt = Number.NaN;
  /** Wall at rest and load of the step solved last; nothing is foretold without one. */
  #solvedRest = 0.5;
  #solvedLoad = Number.NaN;

  /**
   * After a pause the fluid has the temperature of the wall, and the step solved last tells nothing.
   *
   * @param wall - at rest [degC]
   */
  startFrom(wall: number): void {
    this.entering = wall;
    this.meanFluid = wall;
    this.#solvedLoad = Number.NaN;
  }

  /** Solves the step for `rest` and `load`, from the fluid of the step before. */
  solve(): void {
    const { meanFluid: before, entering: start } = this;
    const { resistance } = this.plant;
    if (before !== this.#filmAt) {
      resistance.read(before);
      this.film = resistance.value;
    }
    const filmBefore = this.film;
    this.#foretell();
    if (!this.#search(COLDEST, WARMEST)) throw noState(this);
    this.#solvedRest = this.rest;
    this.#solvedLoad = this.load;
    this.manyStates = this.runningHeat > 0 && this.#steepSince(before, filmBefore);
    if (this.manyStates && !this.#walk(start)) throw noState(this);
    this.#filmAt = this.meanFluid;
  }

  // Where the step before leads: with the wall at rest, and with the share of the step that the unit runs.
  #foretell(): void {
    const { rest, load, runFraction } = this;
    const share = load / this.#solvedLoad;
    const more = Math.min(1, share * runFraction) - runFraction;
    const by = (rest - this.#solvedRest - this.runningHeat * more * this.stepRise * this.perLength) / this.slope;
    if (share > 0 && Math.abs(by) < FAR) this.entering += by;
  }

  // Newton inside a bracket, from the entering fluid of the step; false when the residual has one sign at both ends.
  #search(lower: number, upper: number): boolean {
    let low = lower;
    let high = upper;
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      this.evaluate();
      const { entering } = this;
      if (this.residual > 0) high = entering;
      else low = entering;
      const next = entering - this.residual / this.slope;
      if (this.slope > 0 && Math.abs(next - entering) < CLOSE) {
        this.#move(next - entering);
        return true;
      }
      if (high - low < NARROW) return high < upper && low > lower;
      this.entering = this.slope > 0 && next > low && next < high ? next : (low + high) / 2;
    }
    return false;
  }

  // Moves the temperatures of a state by the last correction; its heats are those before it.
  #move(by: number): void {
    this.entering += by;
    this.leaving += by;
    this.meanFluid += by;
  }

  // Walks from the state before, in the direction in which its residual points, to the first change of sign.
  #walk(from: number): boolean {
    this.entering = from;
    this.evaluate();
    const down = this.residual > 0;
    for (let here = from; here > COLDEST && here < WARMEST; ) {
      const next = here + (down ? -STRIDE : STRIDE);
      this.entering = next;
      this.evaluate();
      if (this.residual > 0 !== down) return this.#search(Math.min(here, next) - NARROW, Math.max(here, next) + NARROW);
      here = next;
    }
    return false;
  }

  // Whether on the way from one mean fluid to the one found the film outweighs everything else, so that there may be other roots.
  #steepSince(before: number, filmBefore: number): boolean {
    const { resistance } = this.plant;
    const heat = this.runningHeat * this.perLength;
    // A film that changes by less than this over all of the way cannot be steep anywhere on it, since it only falls as the fluid warms.
    if (heat * Math.abs(this.film - filmBefore) < STRIDE) return false;
    const end = Math.max(before, this.meanFluid) + STRIDE;
    for (let here = Math.min(before, this.meanFluid); here < end; here += STRIDE) {
      resistance.read(here);
      if (1 + heat * resistance.slope <= 0) return true;
    }
    return false;
  }
}

function noState({ rest, load }: StepSolver): InputError {
  return new InputError({
    code: 'unreachable',
    argument: 'pipeLength',
    value: { kind: 'power', value: load },
    allowed: `a load that leaves the fluid between ${String(COLDEST)} and ${String(WARMEST)} degC with the ground at ${String(rest)} degC`,
    hint: 'the loop is far too short for the load, or the film or unit far from real',
  });
}
