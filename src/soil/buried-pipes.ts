import { demand, demandCount, InputError } from '../errors/index.js';
import type { Diameter, Length, Shape } from '../units/index.js';

/** Where a pipe lies in the cross-section of its trench. */
export interface BuriedPipe {
  /** Sideways from the middle of the trench, to either side, up to 10 [m]. */
  readonly x: Length;
  /** Depth of the pipe axis, at least one diameter, up to 50 [m]. */
  readonly depth: Length;
}

/** Shape of {@link BuriedPipe}. */
export const buriedPipeShape: Shape<BuriedPipe> = { x: 'length', depth: 'length' };

/** Diameter of a pipe that is not said, on which little depends [m]. */
export const USUAL_DIAMETER = 0.032 as Diameter;

const MOST_PIPES = 20;

/** Refuses pipes that are impossible or lie in one another. */
export function demandPipes(pipes: readonly BuriedPipe[], outsideDiameter: Diameter): void {
  demand('outsideDiameter', 'diameter', outsideDiameter, { atLeast: 0.005, atMost: 0.5 });
  demandCount('pipes', pipes ?? [], 1, MOST_PIPES);
  pipes.forEach((pipe, index) => {
    demand(`pipes.${String(index)}.x`, 'length', pipe?.x, { atLeast: -10, atMost: 10 });
    demand(`pipes.${String(index)}.depth`, 'length', pipe.depth, { atLeast: outsideDiameter, atMost: 50 });
  });
  const touching = nearerThan(pipes, outsideDiameter);
  if (touching === undefined) return;
  throw new InputError({
    code: 'impossible',
    argument: `pipes.${String(touching)}.depth`,
    value: { kind: 'length', value: pipes[touching]?.depth ?? NaN },
    allowed: 'pipes that do not lie in one another',
  });
}

/** The first pipe whose axis lies nearer than a distance to that of one before it. */
export function nearerThan(pipes: readonly BuriedPipe[], distance: number): number | undefined {
  const found = pipes.findIndex((pipe, index) => pipes.slice(0, index).some(({ x, depth }) => Math.hypot(x - pipe.x, depth - pipe.depth) < distance));
  return found < 0 ? undefined : found;
}
