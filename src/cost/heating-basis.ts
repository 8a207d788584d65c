import { demand, demandChoice } from '../errors/index.js';
import type { Ratio, Shape } from '../units/index.js';

/**
 * Which heating value a number counts on: the higher one with the heat of the water vapour in the flue gas, the lower one without. US efficiencies and
 * prices count on the higher, European boiler efficiencies often on the lower, where a condensing boiler passes 1.
 */
export type HeatingBasis = 'higher' | 'lower';

/** Names of the bases. */
export const BASES: readonly HeatingBasis[] = ['higher', 'lower'];
/** Lower over higher heating value: coke lies near 1, hydrogen at 0.85, wet wood below. */
export const LOWER_OVER_HIGHER = { atLeast: 0.5, atMost: 1 };
/** Heat over energy bought: from an open fire to the best heat pump. */
export const EFFICIENCY = { atLeast: 0.05, atMost: 15 };

/** An efficiency and the basis it is wanted on. */
export interface EfficiencyOnBasisInput {
  /** Heat over energy, 0.05 to 15 [1]. */
  readonly efficiency: Ratio;
  /** The heating value it counts on. */
  readonly givenBasis: HeatingBasis;
  /** The one it is wanted on. */
  readonly wantedBasis: HeatingBasis;
  /** Lower over higher heating value of the fuel, 0.5 to 1 [1]. */
  readonly lowerOverHigher: Ratio;
}

/** Shape of {@link EfficiencyOnBasisInput}. */
export const efficiencyOnBasisInputShape: Shape<EfficiencyOnBasisInput> = {
  efficiency: 'ratio',
  givenBasis: BASES,
  wantedBasis: BASES,
  lowerOverHigher: 'ratio',
};

/**
 * The same efficiency on the other heating value: η(higher) = η(lower) · lower/higher.
 *
 * @param of - efficiency, bases and the ratio of the heating values [1]
 * @returns efficiency on the basis wanted [1]
 * @throws InputError when a number is out of its range or a basis is unknown
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * const gas = { efficiency: ratio(1.05), lowerOverHigher: ratio(0.9), givenBasis: 'lower', wantedBasis: 'higher' } as const;
 * expect(efficiencyOnBasis(gas)).toBeCloseTo(0.945, 12);
 * ```
 */
export function efficiencyOnBasis({ efficiency, givenBasis, wantedBasis, lowerOverHigher }: EfficiencyOnBasisInput): Ratio {
  demand('efficiency', 'ratio', efficiency, EFFICIENCY);
  demandChoice('givenBasis', givenBasis, BASES);
  demandChoice('wantedBasis', wantedBasis, BASES);
  demand('lowerOverHigher', 'ratio', lowerOverHigher, LOWER_OVER_HIGHER);
  return (efficiency * energyRatio(givenBasis, wantedBasis, lowerOverHigher)) as Ratio;
}

/** Factor of anything that counts per energy, from one basis to another. */
export const energyRatio = (given: HeatingBasis, wanted: HeatingBasis, lowerOverHigher: number): number => {
  if (given === wanted) return 1;
  return given === 'lower' ? lowerOverHigher : 1 / lowerOverHigher;
};
