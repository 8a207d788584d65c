import { SectionFilm } from './section-film.js';
import type { SectionPart } from './section-part.js';
import type { StepSolver } from './step-solver.js';

/** Mean fluid by the sections and by the one loop that stands for them agree to this [K]. */
const CLOSE = 1e-5;
/** Shares and films of the sections follow the fluid weakly: two or three rounds are usual. */
const MOST_ROUNDS = 25;

/**
 * Sections in parallel as one loop. The fluid that leaves the unit enters all of them, and what comes back mixes by flow, so that in one step
 * heat = Σ conductance · (driving wall − entering fluid): a loop with the driving walls weighted by conductance, whose rise and film are those of parallel
 * resistances. Load, unit, levels and film are solved on that loop by the solver of a single one; then films and shares are taken anew at the fluid of each
 * section, until both agree. The heats of the sections add up to that of the loop in every round. A class for the reason of `LazyTable`.
 */
export class SectionStep {
  /** Whether sections and loop did not come together in the step solved last: a film may have had more than one state. */
  apart = false;
  /** Film of the loop that stands for all. */
  readonly film: SectionFilm;
  readonly #parts: readonly SectionPart[];
  readonly #pipeLength: number;
  readonly #halfRange: number;
  #conductance = 0.5;

  /**
   * Sections of one loop.
   *
   * @param parts - the sections
   * @param pipeLength - of all [m]
   * @param halfRange - of the whole flow [K/W]
   */
  constructor(parts: readonly SectionPart[], pipeLength: number, halfRange: number) {
    this.film = new SectionFilm(parts.map(({ resistance }) => resistance));
    this.#parts = parts;
    this.#pipeLength = pipeLength;
    this.#halfRange = halfRange;
  }

  /**
   * Solves a step in which the unit runs; afterwards step and sections hold its state.
   *
   * @param step - with its load
   * @param fresh - whether it follows a pause, of which nothing can be foretold
   */
  solve(step: StepSolver, fresh: boolean): void {
    const parts = this.#parts;
    this.#weigh(step.runFraction);
    if (fresh) step.startFrom(this.#driving);
    this.apart = true;
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      this.#reduce(step);
      const { rest } = step;
      step.solve();
      const { runFraction, runningHeat, meanFluid } = step;
      const entering = meanFluid - runningHeat * this.#halfRange;
      for (const part of parts) part.settle(entering, runFraction);
      // Read where the sections are, not where the last step of Newton's way has left the loop: what is compared are shares and films alone.
      this.film.read(this.#meanFluid);
      const inWay = this.#halfRange + (runFraction * step.stepRise + this.film.value) / this.#pipeLength;
      this.#weigh(runFraction);
      if (Math.abs(this.#driving - rest - runningHeat * (1 / this.#conductance - inWay)) < CLOSE) {
        this.apart = false;
        break;
      }
    }
    this.#share(step);
  }

  /** Solves a step in which the unit rests: only stores and walls have to do with one another. */
  pause(): void {
    for (const part of this.#parts) {
      part.fluid = part.storing > 0 ? part.before : part.rest;
      part.weigh(1);
      part.fluid = part.driving;
      part.heat = 0;
      part.groundHeat = part.storing * (part.fluid - part.before);
      part.wall = part.rest - (part.groundHeat * part.stepRise) / part.pipeLength;
      part.before = part.fluid;
    }
  }

  // The wall that drives the loop that stands for all.
  get #driving(): number {
    let sum = 0;
    for (const { weight, driving } of this.#parts) sum += weight * driving;
    return sum;
  }

  // The mean fluid of the whole flow.
  get #meanFluid(): number {
    let sum = 0;
    for (const { halfRange, fluid } of this.#parts) sum += (this.#halfRange / halfRange) * fluid;
    return sum;
  }

  #weigh(runFraction: number): void {
    let all = 0;
    for (const part of this.#parts) {
      part.weigh(runFraction);
      all += part.conductance;
    }
    for (const part of this.#parts) part.weight = part.conductance / all;
    this.#conductance = all;
  }

  #reduce(step: StepSolver): void {
    const { film } = this;
    const length = this.#pipeLength;
    let rise = 0;
    let range = -this.#halfRange;
    const mean = this.#meanFluid;
    for (const { weight, rise: own, halfRange } of this.#parts) {
      rise += weight * weight * own;
      range += weight * weight * halfRange;
    }
    for (let index = 0; index < this.#parts.length; index += 1) {
      const part = this.#parts[index];
      if (part === undefined) break;
      film.parts[index] = (length * part.weight * part.weight * part.damp) / part.pipeLength;
      film.offsets[index] = part.fluid - mean;
    }
    film.added = length * range;
    step.rest = this.#driving;
    step.stepRise = length * rise;
  }

  // Heats that add up to that of the loop to the last digit: the entering fluid is the one at which they do.
  #share({ runFraction, runningHeat, meanHeat }: StepSolver): void {
    const warmed = runFraction * runningHeat - meanHeat;
    let sum = -runningHeat;
    for (const part of this.#parts) sum += part.conductance * (part.driving + part.weight * warmed * part.rise);
    const entering = sum / this.#conductance;
    for (const part of this.#parts) {
      part.heat = part.conductance * (part.driving + part.weight * warmed * part.rise - entering);
      part.fluid = entering + part.heat * part.halfRange;
      part.groundHeat = runFraction * part.heat - part.weight * warmed + part.storing * (part.fluid - part.before);
      part.wall = part.rest - (part.groundHeat * part.stepRise) / part.pipeLength;
      part.before = part.fluid;
    }
  }
}
