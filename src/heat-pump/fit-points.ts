import { demand, demandCount, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Ratio, Shape } from '../units/index.js';
import { type Rating, type RatingPoint, ratingPointShape, readRating } from './rating-point.js';

/** A rating point at a flow of its own. */
export interface FlowRatingPoint extends RatingPoint {
  /** Flow on the loop side over the rated one, 0.2 to 3; 1 when left out [1]. */
  readonly flowRatio?: Ratio;
}

/** Shape of {@link FlowRatingPoint}. */
export const flowRatingPointShape: Shape<FlowRatingPoint> = /* @__PURE__ */ joinedShape(ratingPointShape, { flowRatio: { optional: 'ratio' } });

/** A rating point with its flow as plain numbers. */
export type FlowRating = Omit<Rating, 'index'> & { readonly flowRatio: number };

/** Values closer than this are the same setting of the table [K] and [1]. */
const SAME = { enteringFluid: 0.1, flowRatio: 0.01 } as const;

/** Refuses rating points that no unit can have. */
export function readFlowRatings(mode: 'heating' | 'cooling', points: readonly FlowRatingPoint[]): readonly FlowRating[] {
  demandCount('points', points, 2, 1000);
  return points.map((point, index) => {
    const argument = `points.${String(index)}`;
    const rating = readRating(argument, mode, point);
    const { flowRatio = 1 } = point;
    demand(`${argument}.flowRatio`, 'ratio', flowRatio, { atLeast: 0.2, atMost: 3 }, 'a flow over the rated flow, not a flow');
    return { ...rating, flowRatio };
  });
}

/** How many settings of a quantity the points have. */
export function settings(points: readonly FlowRating[], of: keyof typeof SAME): number {
  const rising = points.map((point) => point[of]).sort((a, b) => a - b);
  return rising.filter((value, k) => k === 0 || value - (rising[k - 1] ?? value) >= SAME[of]).length;
}

/** Refuses a form that the points cannot tell. */
export function refuseFew(found: number, allowed: string, hint: string): never {
  throw new InputError({ code: 'too-few', argument: 'points', value: { kind: 'count', value: found }, allowed, hint });
}
