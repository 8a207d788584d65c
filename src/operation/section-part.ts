import type { LazyTable } from './lazy-table.js';

/** A section ready to be followed, and its state in a step. A class for the reason of `LazyTable`. */
export class SectionPart {
  /** Wall at the end of the step if nothing happened in it [degC]. */
  rest = 0.5;
  /** Mean fluid at the end of the step [degC]. */
  fluid = 0.5;
  /** The same at the end of the step before, which the store began with [degC]. */
  before = 0.5;
  /** Share that the section has in the conductance of all [1]. */
  weight = 0.5;
  /** Heat to the fluid per kelvin between what its wall rests at and the fluid that enters it [W/K]. */
  conductance = 0.5;
  /** What its wall rests at, with the store in between [degC]. */
  driving = 0.5;
  /** Rise of the wall at the end of a step per heat, with the store in between [K/W]. */
  rise = 0.5;
  /** Part of a lasting heat that the store lets through in a step [1]. */
  damp = 0.5;
  /** Heat that the fluid carries off while the unit runs [W]. */
  heat = 0.5;
  /** Heat from the ground, the mean over the step [W]. */
  groundHeat = 0.5;
  /** Wall at the end of the step [degC]. */
  wall = 0.5;
  readonly pipeLength: number;
  readonly stepRise: number;
  readonly halfRange: number;
  readonly storing: number;
  readonly resistance: LazyTable;

  /**
   * A section.
   *
   * @param pipeLength - [m]
   * @param stepRise - rise of the wall at the end of one step per heat per metre of pipe [m.K/W]
   * @param halfRange - how far its mean fluid is from the one that enters it, per heat [K/W]
   * @param storing - heat that its fluid and pipe wall take for each kelvin within a step [W/K]
   * @param resistance - film and wall over its mean fluid [m.K/W]
   */
  constructor(pipeLength: number, stepRise: number, halfRange: number, storing: number, resistance: LazyTable) {
    this.pipeLength = pipeLength;
    this.stepRise = stepRise;
    this.halfRange = halfRange;
    this.storing = storing;
    this.resistance = resistance;
  }

  /**
   * The linear relation of the section with its film at its mean fluid: fluid = driving − heat · (run fraction · rise + film · damp).
   *
   * @param runFraction - share of the step that the unit runs [1]
   */
  weigh(runFraction: number): void {
    const { pipeLength, stepRise, storing, resistance, rest, before } = this;
    resistance.read(this.fluid);
    const held = (storing * (stepRise + resistance.value)) / pipeLength;
    this.damp = 1 / (1 + held);
    this.driving = (rest + held * before) * this.damp;
    this.rise = (stepRise * this.damp) / pipeLength;
    this.conductance = 1 / (this.halfRange + runFraction * this.rise + (resistance.value * this.damp) / pipeLength);
  }

  /**
   * Finds the mean fluid for the fluid that enters, with the film there. It lies between what the section has to do with: wall at rest, entering fluid and store.
   *
   * @param entering - fluid that enters the section [degC]
   * @param runFraction - share of the step that the unit runs [1]
   */
  settle(entering: number, runFraction: number): void {
    const { pipeLength, stepRise, halfRange, storing, resistance, rest, before } = this;
    const perLength = 1 / pipeLength;
    let low = Math.min(rest, entering, storing > 0 ? before : rest);
    let high = Math.max(rest, entering, storing > 0 ? before : rest);
    let fluid = Math.min(Math.max(this.fluid, low), high);
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      resistance.read(fluid);
      const heat = (fluid - entering) / halfRange;
      const kept = storing * (fluid - before);
      const off = fluid - rest + ((runFraction * heat + kept) * stepRise + (heat + kept) * resistance.value) * perLength;
      const slope =
        1 +
        ((runFraction / halfRange + storing) * stepRise + (1 / halfRange + storing) * resistance.value + (heat + kept) * resistance.slope) *
          perLength;
      if (off > 0) high = fluid;
      else low = fluid;
      const next = fluid - off / slope;
      const inside = slope > 0 && next >= low && next <= high;
      const moved = inside ? next : (low + high) / 2;
      const done = Math.abs(moved - fluid) < CLOSE;
      fluid = moved;
      if (done) break;
    }
    this.fluid = fluid;
  }
}

/** A fluid that moves by less is found [K]. */
const CLOSE = 1e-9;
/** Halving alone takes 40 from all bounds. */
const MOST_ROUNDS = 60;
