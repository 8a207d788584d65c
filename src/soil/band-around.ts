import type { Band } from '../states/index.js';
import type { Kind } from '../units/index.js';

/** Probability that a band of this room is meant to hold [1]. */
export const COVERAGE = 0.8;

/** Standard deviations to either side that hold 80 % of a normal distribution. */
export const SIGMAS = 1.2815515655446004;

/** The band of a positive quantity whose logarithm is normal about its estimate. */
export function bandAround<K extends Kind>(estimate: number, sigma: number): Band<K> {
  const factor = Math.exp(SIGMAS * sigma);
  return { low: estimate / factor, estimate, high: estimate * factor, coverage: COVERAGE } as Band<K>;
}

/** Errors that do not depend on one another, added as squares. */
export function together(...sigmas: readonly number[]): number {
  return Math.hypot(...sigmas);
}
