import type { Length, Shape } from '../units/index.js';

/** Where one pipe lies in the cross-section of its trench. */
export interface PipePosition {
  /** Distance sideways from the middle of the trench, to either side [m]. */
  readonly x: Length;
  /** Depth of the pipe axis below the ground surface [m]. */
  readonly depth: Length;
}

/** The name of a way to lay pipes in a trench. */
export type LayoutName = 'one-pipe' | 'two-pipe-stacked' | 'two-pipe-side-by-side' | 'four-pipe' | 'six-pipe' | 'custom';

/**
 * Pipes in equal, parallel trenches: the cross-section that a ground response is computed for. A row of an area collector counts as a trench of one
 * pipe; unequal trenches are listed together and count as one, which may repeat.
 */
export interface Layout {
  /** Which maker it came from. */
  readonly name: LayoutName;
  /** The pipes of one trench, the same in every trench. */
  readonly pipes: readonly PipePosition[];
  /** How many pipes lie side by side or over one another in one trench. */
  readonly pipesPerTrench: number;
  /** How many equal trenches run in parallel. */
  readonly trenches: number;
  /** Distance between the middles of neighbouring trenches [m]. */
  readonly trenchSpacing: Length;
}

/** Shape of {@link PipePosition}. */
export const pipePositionShape: Shape<PipePosition> = { x: 'length', depth: 'length' };

/** Shape of {@link Layout}. */
export const layoutShape: Shape<Layout> = {
  name: ['one-pipe', 'two-pipe-stacked', 'two-pipe-side-by-side', 'four-pipe', 'six-pipe', 'custom'],
  pipes: { list: pipePositionShape },
  pipesPerTrench: 'count',
  trenches: 'count',
  trenchSpacing: 'length',
};
