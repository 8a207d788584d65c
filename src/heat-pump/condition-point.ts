import { demand, demandCount, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Ratio, Shape, Temperature } from '../units/index.js';
import { type Rating, type RatingPoint, ratingPointShape, readRating } from './rating-point.js';

/** The unit at one entering fluid and one condition on the load side, as its maker rates it, at one flow on the loop side. */
export interface ConditionRatingPoint extends RatingPoint {
  /** Water leaving the unit for the emitters, as EN 14511 rates it: 35 of B0/W35, not the water that comes back; 1 to 95 [degC]. */
  readonly supplyTemperature?: Temperature;
  /** Air entering the indoor coil of a water-to-air unit, 1 to 50 [degC]. */
  readonly enteringAir?: Temperature;
  /** Flow on the loop side over the rated one, 0.2 to 3; 1 when left out [1]. */
  readonly flowRatio?: Ratio;
}

/** Shape of {@link ConditionRatingPoint}. */
export const conditionRatingPointShape: Shape<ConditionRatingPoint> = /* @__PURE__ */ joinedShape(ratingPointShape, {
  supplyTemperature: { optional: 'temperature' },
  enteringAir: { optional: 'temperature' },
  flowRatio: { optional: 'ratio' },
});

/** What the load-side temperature of rating points is. */
export type LoadSideKind = 'supply water' | 'entering air' | 'not stated';

/** A rating point with its conditions as plain numbers. */
export interface ConditionRating extends Rating {
  readonly side: LoadSideKind;
  /** 0 where none is stated, at every point alike. */
  readonly loadSide: number;
  readonly flowRatio: number;
}

const FLOW_RATIO = { atLeast: 0.2, atMost: 3 } as const;
const WATER = { atLeast: 1, atMost: 95 } as const;
const AIR = { atLeast: 1, atMost: 50 } as const;
const DEGF = 'a temperature in degF may have been given as degC';

/** Refuses rating points that no unit can have, or that do not tell the same things; gives them as plain numbers. */
export function readConditionRatings(list: string, mode: 'heating' | 'cooling', points: readonly ConditionRatingPoint[]): readonly ConditionRating[] {
  demandCount(list, points, 2, 1000);
  const ratings = points.map((point, index) => readOne(`${list}.${String(index)}`, index, mode, point));
  const { side } = ratings[0] ?? { side: 'not stated' };
  const other = ratings.find((rating) => rating.side !== side);
  if (other === undefined) return ratings;
  throw new InputError({
    code: 'impossible',
    argument: `${list}.${String(other.index)}`,
    value: other.side,
    allowed: side === 'not stated' ? 'no load-side temperature, as the first point has none' : `${side} stated, as of the first point`,
    hint: 'one table has one kind of load side, stated at every point or at none',
  });
}

function readOne(argument: string, index: number, mode: 'heating' | 'cooling', point: ConditionRatingPoint): ConditionRating {
  const rating = readRating(argument, mode, point);
  const { supplyTemperature, enteringAir, flowRatio = 1 } = point;
  demand(`${argument}.flowRatio`, 'ratio', flowRatio, FLOW_RATIO, 'a flow over the rated flow, not a flow');
  if (supplyTemperature !== undefined) demand(`${argument}.supplyTemperature`, 'temperature', supplyTemperature, WATER, DEGF);
  if (enteringAir !== undefined) demand(`${argument}.enteringAir`, 'temperature', enteringAir, AIR, DEGF);
  if (supplyTemperature !== undefined && enteringAir !== undefined) {
    throw new InputError({ code: 'impossible', argument, value: 'supply water and entering air', allowed: 'one of the two' });
  }
  const side = supplyTemperature === undefined ? (enteringAir === undefined ? 'not stated' : 'entering air') : 'supply water';
  return { index, ...rating, side, loadSide: supplyTemperature ?? enteringAir ?? 0, flowRatio };
}
