import { demand, demandObject, InputError } from '../errors/index.js';
import type { Layout } from '../ground/index.js';
import type { Diameter, Fraction, Length, Shape } from '../units/index.js';

/** The trenches as they are filled in again with the soil that came out of them. */
export interface PlanFill {
  /** Width of a trench about its middle, so that its pipes lie in it, less than the distance to the next [m]. */
  readonly width: Length;
  /** Share of the native dry density in the first winter, 0.5 to 1.2; 85 % when left out [1]. */
  readonly firstWinterShare?: Fraction;
  /** Share of it once the fill has settled, no less than in the first winter, up to 1.2; 95 % when left out [1]. */
  readonly settledShare?: Fraction;
}

/** Shape of {@link PlanFill}. */
export const planFillShape: Shape<PlanFill> = {
  width: 'length',
  firstWinterShare: { optional: 'fraction' },
  settledShare: { optional: 'fraction' },
};

/** What is asked of the ice around the pipes; all of it may be left out. */
export interface FollowIce {
  /** Depth of the roots of what grows over the loop, 0.01 to 2 and at least 0.05 above all pipes; 0.2 where the pipes leave room when left out [m]. */
  readonly rootDepth?: Length;
  /** From the axis of the nearest pipe to a footing, slab, wall, drain or service, 0 to 1000; none near when left out [m]. */
  readonly structureDistance?: Length;
}

/** Shape of {@link FollowIce}. */
export const followIceShape: Shape<FollowIce> = { rootDepth: { optional: 'length' }, structureDistance: { optional: 'length' } };

/** Roots this far above a pipe have a temperature of their own [m]. */
const CLEAR = 0.05;

/** Refuses a trench that does not hold its pipes, or reaches into the next. */
export function demandPlanFill(fill: PlanFill, { pipes, trenchSpacing }: Layout, outsideDiameter: Diameter): void {
  demandObject('trenchFill', fill);
  const { width, firstWinterShare, settledShare } = fill;
  const outermost = Math.max(...pipes.map(({ x }) => Math.abs(x))) + outsideDiameter / 2;
  demand('trenchFill.width', 'length', width, { atLeast: 0.05, atMost: 20 });
  demand('trenchFill.width', 'length', width, { atLeast: 2 * outermost }, 'the trench does not hold its pipes');
  if (width >= trenchSpacing) {
    throw new InputError({
      code: 'impossible',
      argument: 'trenchFill.width',
      value: { kind: 'length', value: width },
      allowed: `less than ${String(trenchSpacing)} m, the distance from trench to trench`,
      hint: 'land that is dug up as a whole has no trenches: log its soil as it will lie',
    });
  }
  if (firstWinterShare !== undefined) demand('trenchFill.firstWinterShare', 'fraction', firstWinterShare, { atLeast: 0.5, atMost: 1.2 });
  if (settledShare !== undefined) demand('trenchFill.settledShare', 'fraction', settledShare, { atLeast: 0.5, atMost: 1.2 });
}

/** Refuses roots at the pipes and distances that cannot be. */
export function demandFollowIce(ice: FollowIce, { pipes }: Layout): void {
  demandObject('followIce', ice);
  const { rootDepth, structureDistance } = ice;
  if (structureDistance !== undefined) demand('followIce.structureDistance', 'length', structureDistance, { atLeast: 0, atMost: 1000 });
  if (rootDepth === undefined) return;
  demand('followIce.rootDepth', 'length', rootDepth, { atLeast: 0.01, atMost: 2 });
  demand('followIce.rootDepth', 'length', rootDepth, { below: highestRoots(pipes) }, 'roots at the pipes have the temperature of the pipes');
}

/** Roots must end above this depth [m]. */
export function highestRoots(pipes: Layout['pipes']): number {
  return Math.min(...pipes.map(({ depth }) => depth)) - CLEAR;
}
