import { FreezingTable } from './freezing-table.js';
import { RingConduction } from './frozen-conduction.js';
import { frozenNodes } from './frozen-nodes.js';
import { FrozenRing } from './frozen-ring.js';
import type { IceSoil } from './ice-soil.js';
import type { StepSolver } from './step-solver.js';

/** Heats that leave the wall this much apart are the same [K]. */
const CLOSE = 1e-4;
/** The heat of a step answers to the wall by some per cent for each kelvin, so that a few rounds are plenty. */
const MOST_ROUNDS = 12;

/** What a loop with ice is made of. */
export interface IceGround {
  /** The soil, checked. */
  readonly soil: IceSoil;
  /** Whether its ice counts. */
  readonly credited: boolean;
  /** Outside radius of the pipe [m]. */
  readonly radius: number;
  /** As far from its axis as ice counts [m]. */
  readonly reach: number;
}

/** Follows the ice around the pipes from step to step beside the plant. A class for the reason of `LazyTable`. */
export class IceFollower {
  /** Wall at the end of the step [degC]. */
  wall = 0.5;
  /** Frozen section around each pipe at the end of every step, from 1 January [m2]. */
  readonly frozenAreas: Float64Array;
  /** Heat set free by ice in every step, taken up by thawing below 0 [W/m]. */
  readonly iceHeats: Float64Array;
  readonly #ring: FrozenRing;
  readonly #table: FreezingTable;
  readonly #credited: boolean;
  readonly #pipeLength: number;
  readonly #stepRise: number;
  /** How much warmer the wall was in the step before than by the response, with ice [K]. */
  #shift = 0;
  #iced = false;

  /**
   * Ground without ice.
   *
   * @param ground - soil and pipe
   * @param count - steps of a year
   * @param step - [s]
   * @param pipeLength - [m]
   * @param stepRise - of the response [m.K/W]
   */
  constructor({ soil, credited, radius, reach }: IceGround, count: number, step: number, pipeLength: number, stepRise: number) {
    this.#table = new FreezingTable(soil, credited);
    const nodes = frozenNodes(radius, reach);
    this.#ring = new FrozenRing(this.#table, nodes, new RingConduction(nodes, soil.thawed, step), step, stepRise);
    this.#credited = credited;
    this.#pipeLength = pipeLength;
    this.#stepRise = stepRise;
    this.frozenAreas = new Float64Array(count);
    this.iceHeats = new Float64Array(count);
  }

  /**
   * Heat that all ice around a metre of pipe set free so far.
   *
   * @returns [J/m]
   */
  get freed(): number {
    return this.#ring.freed;
  }

  /**
   * Solves a step in which the unit runs; afterwards the step holds its state with ice.
   *
   * @param step - with its load, started
   * @param rest - wall at its end by the response, if no heat were taken in it [degC]
   * @param ground - undisturbed [degC]
   */
  solve(step: StepSolver, rest: number, ground: number): void {
    const ring = this.#ring;
    ring.begin(rest, ground);
    step.rest = rest + (this.#iced ? this.#shift : this.#ahead);
    step.solve();
    let heat = step.meanHeat / this.#pipeLength;
    if (this.#credited && (this.#iced || !ring.thawedWith(heat))) {
      for (let round = 0; round < MOST_ROUNDS; round += 1) {
        const before = heat;
        step.rest = this.#table.temperatureAt(ring.freeze(before)) + before * this.#stepRise;
        step.solve();
        heat = step.meanHeat / this.#pipeLength;
        if (Math.abs(heat - before) * this.#stepRise < CLOSE) break;
      }
      this.#shift = step.rest - rest;
      this.#iced = true;
    }
    this.wall = step.rest - heat * this.#stepRise;
    if (!this.#credited) this.#look(heat);
  }

  /**
   * Solves a step in which the unit rests.
   *
   * @param rest - wall at its end by the response [degC]
   * @param ground - undisturbed [degC]
   */
  pause(rest: number, ground: number): void {
    this.#ring.begin(rest, ground);
    this.wall = rest + this.#ahead;
    if (!this.#credited) {
      this.#look(0);
      return;
    }
    this.#iced ||= !this.#ring.thawedWith(0);
    if (this.#iced) this.wall = this.#table.temperatureAt(this.#ring.freeze(0));
    this.#shift = this.wall - rest;
  }

  /**
   * Ends the step.
   *
   * @param heat - taken from the ground per metre of pipe [W/m]
   * @param index - of the step in the year
   * @returns the part of it that came from afar, which the response takes up [W/m]
   */
  keep(heat: number, index: number): number {
    const ring = this.#ring;
    ring.keep(heat, this.#iced);
    this.iceHeats[index] = heat - ring.net;
    this.frozenAreas[index] = this.#iced ? ring.frozenArea : 0;
    this.#iced = ring.icy;
    return ring.net;
  }

  get #ahead(): number {
    return this.#credited ? this.#ring.ahead : 0;
  }

  // How far soil is below 0 °C whose ice does not count.
  #look(heat: number): void {
    this.#iced = !this.#ring.thawedWith(heat);
    if (this.#iced) this.#ring.freeze(heat);
  }
}
