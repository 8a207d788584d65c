import type { Finding } from '../findings/index.js';
import type { Pressure } from '../units/index.js';

/** Of the rating of the weakest part, what it may be tested with [1]. */
const CEILING = 1.5;

/** Most that a part may be tested with, by the rule for polyethylene [Pa]. */
export const testCeiling = (rating: Pressure): Pressure => (CEILING * rating) as Pressure;

/** What to say of a test above the rating of the weakest part: a condition up to the ceiling, a stop beyond. */
export function overRating(testPressure: Pressure, rating: Pressure): readonly Finding[] {
  if (testPressure <= rating) return [];
  const ceiling = testCeiling(rating);
  const values = { testPressure, ceiling, rating };
  const source = 'astmF2164';
  if (testPressure <= ceiling) return [{ code: 'test-pressure-within-ceiling', level: 'warning', values, source }];
  return [{ code: 'test-pressure-over-rating', level: 'stop', values, source }];
}
