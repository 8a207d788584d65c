import type { Length } from '../units/index.js';
import type { PipePosition } from './layout.js';

/** One pipe in each trench. */
export interface OnePipeSection {
  /** Depth of the pipe axis [m]. */
  readonly depth: Length;
  /** Distance between the middles of neighbouring trenches [m]. */
  readonly trenchSpacing: Length;
}

/** Two pipes over one another in each trench. */
export interface TwoPipeStackedSection {
  /** Depth of the axis of the upper pipe [m]. */
  readonly upperDepth: Length;
  /** Depth of the axis of the lower pipe [m]. */
  readonly lowerDepth: Length;
  /** Distance between the middles of neighbouring trenches [m]. */
  readonly trenchSpacing: Length;
}

/** Two pipes side by side on the floor of each trench. */
export interface TwoPipeSideBySideSection {
  /** Depth of the pipe axes [m]. */
  readonly depth: Length;
  /** Distance between the two axes [m]. */
  readonly spacing: Length;
  /** Distance between the middles of neighbouring trenches [m]. */
  readonly trenchSpacing: Length;
}

/** Two layers of two pipes in each trench. */
export interface FourPipeSection extends TwoPipeStackedSection {
  /** Distance between the two axes of a layer [m]. */
  readonly spacing: Length;
}

/** Three layers of two pipes in each trench. */
export interface SixPipeSection extends FourPipeSection {
  /** Depth of the axes of the middle layer [m]. */
  readonly middleDepth: Length;
}

/** Pipes anywhere in each trench. */
export interface CustomSection {
  /** The pipes of one trench. */
  readonly pipes: readonly PipePosition[];
  /** Distance between the middles of neighbouring trenches [m]. */
  readonly trenchSpacing: Length;
}

/** Rows of pipe side by side at one depth below a plot that is dug off or filled over as a whole. */
export interface AreaCollectorSection {
  /** Depth of the pipe axes [m]. */
  readonly depth: Length;
  /** Distance between neighbouring rows, at least 0.15 [m]. */
  readonly trenchSpacing: Length;
}

/** One of several trenches that are unlike one another. */
export interface UnequalTrench {
  /** How far its middle lies across the field, from wherever that is counted [m]. */
  readonly across: Length;
  /** Its pipes. */
  readonly pipes: readonly PipePosition[];
}

/** Parallel trenches unlike in depth, distance or contents. */
export interface UnequalTrenchesSection {
  /** The trenches, at least one. */
  readonly trenchGroup: readonly UnequalTrench[];
  /** Distance from one group of them to the next, where they repeat [m]. */
  readonly trenchSpacing: Length;
}

/** How many trenches a layout has. */
export interface TrenchCount {
  /** How many equal trenches run in parallel, 1 to 500. */
  readonly trenches: number;
}
