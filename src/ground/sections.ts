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

/** How many trenches a layout has. */
export interface TrenchCount {
  /** How many equal trenches run in parallel, 1 to 500. */
  readonly trenches: number;
}
