import type { Finding } from '../findings/index.js';
import type { RatingOrigin } from './heat-pump-input.js';
import type { RatingPoint } from './rating-point.js';

/** What rating points were made by, where nobody rated the unit at them. */
export type PointsDerivedBy = 'polynomial fit' | 'scaled linear fit' | 'Carnot share' | 'regressions' | 'corrections';

/** Rating points that were computed, for `performanceMap` and for a document, with what tells them from a maker's. */
export interface DerivedRatingPoints {
  /** What they were made by. */
  readonly derivedBy: PointsDerivedBy;
  /** What to say in a document of where they come from. */
  readonly ratingOrigin: RatingOrigin;
  /** The rating points, coldest first. */
  readonly points: readonly RatingPoint[];
  /** What to look at; always says what they were made by. */
  readonly findings: readonly Finding[];
}
