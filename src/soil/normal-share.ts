import { errorFunction } from '../numerics/index.js';

/** Share of a normal distribution below so many standard deviations from its middle [1]. */
export function normalShare(deviations: number): number {
  const within = errorFunction(Math.abs(deviations) / Math.SQRT2);
  return (deviations < 0 ? 1 - within : 1 + within) / 2;
}
