import type { Fraction, PipeLength } from '../units/index.js';
import type { FluidStore } from './fluid-store.js';
import type { SimulationInput } from './simulation.js';

/** Work that a section did before the years that are followed. */
export interface EarlierWork {
  /** How many years, 1 to 100. */
  readonly years: number;
  /** Heat taken from the ground in each step of each of them, given to it below 0, as many as loads, within ±1e9, plain numbers from 1 January [W]. */
  readonly groundHeats: ArrayLike<number>;
}

/** Part of a loop with ground, depth, fill or age of its own: all pipe that lies and works alike. */
export interface LoopSection extends Pick<SimulationInput, 'ground' | 'response' | 'resistanceAt'> {
  /** Its active pipe, 0.001 to 1e9 [m]. */
  readonly pipeLength: PipeLength;
  /** Its work in earlier years, for an old loop that is extended; new when left out. */
  readonly earlierWork?: EarlierWork;
  /** What its fluid and pipe wall store; nothing when left out. */
  readonly fluidStore?: FluidStore;
}

/**
 * How the flow splits over the sections: shares of the whole, or anything in proportion to them, above 0 to 1e9; or what gives them for lengths of the sections,
 * as a network of pipes does.
 */
export type SectionFlows = readonly number[] | ((pipeLengths: readonly PipeLength[]) => readonly number[]);

/** What {@link simulateSections} needs: a simulation whose ground, pipe and film are those of each section. */
export interface SectionsInput extends Omit<SimulationInput, 'ground' | 'response' | 'resistanceAt' | 'pipeLength'> {
  /** 1 to 50 of them, in parallel on one entering fluid. */
  readonly sections: readonly LoopSection[];
  /** How the flow splits over them; by length of pipe, as over equal circuits, when left out. */
  readonly sectionFlows?: SectionFlows;
}

/** A section beside its share of the flow, checked. */
export interface FlowedSection extends LoopSection {
  /** Share of the whole flow [1]. */
  readonly flowFraction: Fraction;
}
