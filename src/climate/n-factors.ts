import { demandChoice } from '../errors/index.js';
import type { Ratio } from '../units/index.js';
import { N_FACTORS } from './n-factors.data.js';

/** What covers the ground that freezes; `snow` is the surface of the snow, whose resistance counts beside it. */
export type FrostSurface = keyof typeof N_FACTORS;

/** The surfaces, for lists and shapes. */
export const FROST_SURFACES: readonly FrostSurface[] = ['snow', 'concrete', 'asphalt', 'bare soil', 'shaded', 'turf', 'trees'];

/** Degree days of a surface over those of the air. */
export interface NFactors {
  /** Below freezing [1]. */
  readonly freezingFactor: Ratio;
  /** Above freezing, lower limit; absent for snow, which is gone by then [1]. */
  readonly thawingFactorLow: Ratio | undefined;
  /** Above freezing, upper limit [1]. */
  readonly thawingFactorHigh: Ratio | undefined;
}

/**
 * Degree days of a surface over those of the air above it.
 *
 * @param surface - what covers the ground
 * @returns the factor for freezing and the range for thawing [1]
 * @throws InputError for an unknown surface
 * @remarks Source: `ufc313004`. Invariant: no surface freezes harder than the air over it, and none by more than one that is shaded.
 * @example
 * ```ts @import.meta.vitest
 * expect(nFactors('turf')).toEqual({ freezingFactor: 0.5, thawingFactorLow: 0.8, thawingFactorHigh: 0.8 });
 * ```
 */
export function nFactors(surface: FrostSurface): NFactors {
  demandChoice('surface', surface, FROST_SURFACES);
  const { freezing, thawing } = N_FACTORS[surface];
  return {
    freezingFactor: freezing as Ratio,
    thawingFactorLow: thawing?.[0] as Ratio | undefined,
    thawingFactorHigh: thawing?.[1] as Ratio | undefined,
  };
}
