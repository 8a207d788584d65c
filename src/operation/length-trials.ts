import type { PipeLength } from '../units/index.js';
import { judgedLoads } from './books.js';
import { bindingLimit, type BindingLimit, type FluidLimits, type YearsOfFluid } from './fluid-limits.js';
import { LoopYears, type WarmStart, withinBounds } from './loop-years.js';
import type { Plant } from './plant.js';
import { emptyCourse } from './run-year.js';
import { extremesOf } from './simulated-year.js';
import type { Course, FluidExtremes, SimulationInput } from './simulation.js';

/** What one length came to. */
export interface LengthTrial {
  /** The limit that binds; absent where the unit never runs in a mode that has one. */
  readonly binding: BindingLimit | undefined;
  /** The ground that the loop settled at. */
  readonly warm: WarmStart;
}

/** A first year with so much more margin than the last does not bind at other lengths either [K]. */
const CLEAR = 0.25;

/** One topology at many lengths, each starting from the ground that the one before settled at. A class for the reason of `LoopYears`. */
export class LengthTrials {
  /** How many lengths were followed. */
  tried = 0;
  /**
   * Whether the first year is followed, too. In ground not drawn on yet it hardly ever binds; where it is clear of that at the first length tried, the
   * others are followed without it.
   */
  firstToo: boolean;
  /** The last year of the length followed last. */
  readonly course: Course;
  #like: WarmStart | undefined;
  readonly #input: Omit<SimulationInput, 'pipeLength'>;
  readonly #limits: FluidLimits;
  readonly #plant: Plant;

  /**
   * A topology of which no length is known yet.
   *
   * @param input - checked
   * @param limits - what the fluid must keep
   * @param plant - its tables
   */
  constructor(input: Omit<SimulationInput, 'pipeLength'>, limits: FluidLimits, plant: Plant) {
    this.course = emptyCourse(input.duty.loads.length, plant);
    this.firstToo = input.years !== undefined;
    this.#input = input;
    this.#limits = limits;
    this.#plant = plant;
  }

  /**
   * Follows a length.
   *
   * @param pipeLength - [m]
   * @returns what it came to; nothing for one so short that the fluid leaves all bounds
   */
  follow(pipeLength: PipeLength): LengthTrial | undefined {
    const { years } = this.#input;
    const like = this.#like;
    this.tried += 1;
    const loop = new LoopYears({ ...this.#input, pipeLength }, this.#plant, this.course);
    const fluid = withinBounds((): YearsOfFluid => {
      if (like === undefined || this.firstToo) loop.run();
      const yearOne = loop.years === 0 ? undefined : this.#extremes();
      if (years === undefined && loop.settle(like)) this.#like = loop.warm;
      while (years !== undefined && loop.years < years) loop.run();
      return { ...(yearOne && { yearOne }), lastYear: this.#extremes() };
    });
    if (fluid === undefined) return undefined;
    const { yearOne, lastYear } = fluid;
    const first = yearOne && bindingLimit({ lastYear: yearOne }, this.#limits);
    const last = bindingLimit({ lastYear }, this.#limits);
    if (first !== undefined && last !== undefined) this.firstToo ||= first.limitMargin < last.limitMargin + CLEAR;
    return { binding: bindingLimit(fluid, this.#limits), warm: loop.warm };
  }

  #extremes(): FluidExtremes {
    const { duty, step } = this.#input;
    return extremesOf(judgedLoads(duty), this.course, step);
  }
}
