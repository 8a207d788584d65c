import type { Length, PipeLength, Ratio, Shape } from '../units/index.js';

/** Values of the findings that the ground room raises, by code. */
export interface GroundFindingValues {
  /** Pipes, or a pipe and the surface, are so close that a neighbour is no longer small against its distance. */
  'pipes-near-for-line-sources': {
    /** Least distance between two pipe axes, or from an axis to its mirror image above ground [m]. */
    readonly distance: Length;
    /** Distance from which the line source holds to about half a percent [m]. */
    readonly holdsFrom: Length;
  };
  /** The trenches raise the steady resistance of one another noticeably. */
  'trenches-warm-each-other': {
    /** Distance between the middles of neighbouring trenches [m]. */
    readonly trenchSpacing: Length;
    /** How many trenches run in parallel. */
    readonly trenches: number;
    /** Steady rise of all trenches over that of one trench alone [1]. */
    readonly risesBy: Ratio;
  };
  /** A film insulates so well that soil of its resistance is no longer thin against the depth of the pipes, and understates it. */
  'film-as-added-depth': {
    /** Soil that the film was taken for, conductivity over coefficient [m]. */
    readonly addedDepth: Length;
    /** Depth of the shallowest pipe [m]. */
    readonly depth: Length;
  };
  /** The pipe that leads from one ring of a coil to the next is a noticeable share of it, and the response counts circles alone. */
  'pipe-between-rings-left-out': {
    /** How far one ring is from the next [m]. */
    readonly pitch: Length;
    /** Pipe of one turn [m]. */
    readonly pipePerTurn: PipeLength;
    /** What the response counts of it [m]. */
    readonly countedPerTurn: PipeLength;
  };
}

/** Shapes of {@link GroundFindingValues}. */
export const groundFindingShapes: { readonly [C in keyof GroundFindingValues]: Shape<GroundFindingValues[C]> } = {
  'pipes-near-for-line-sources': { distance: 'length', holdsFrom: 'length' },
  'trenches-warm-each-other': { trenchSpacing: 'length', trenches: 'count', risesBy: 'ratio' },
  'film-as-added-depth': { addedDepth: 'length', depth: 'length' },
  'pipe-between-rings-left-out': { pitch: 'length', pipePerTurn: 'pipe length', countedPerTurn: 'pipe length' },
};
