import { cylinderWall, exponentialIntegral } from '../numerics/index.js';
import { type DistanceMeasure, measuredRise, measuredSteady } from './distance-measure.js';
import type { FittedMean } from './fitted-mean.js';
import type { RingedGround } from './ringed-pipes.js';

/**
 * The mean rise of all pipe laid in rings. The sum over distances takes the pipe's own heat as leaving a line; what a cylinder does beyond a line in the
 * first hours is added, as for a straight pipe, since it is over before a bend is felt.
 */
export function ringMean(ground: RingedGround, measure: DistanceMeasure = ground.measure(ground.trenches)): FittedMean {
  const { radius, selfTerm, sealed, deepest } = ground;
  const square = radius * radius;
  const beyondLine = (spread: number): number => 4 * Math.PI * cylinderWall(spread / square) - exponentialIntegral(square / (4 * spread));
  return {
    wallCondition: 'equal flux',
    riseAfter: (spread) => measuredRise(measure, spread) + (selfTerm === 'line' ? 0 : beyondLine(spread)),
    steady: sealed ? undefined : measuredSteady(measure),
    settled: sealed ? 0 : deepest * deepest,
  };
}
