import { demand } from '../errors/index.js';
import type { Ratio } from '../units/index.js';

/** What the friction factor of a pipe depends on. */
export interface FrictionState {
  /** Reynolds number [1]. */
  readonly reynolds: Ratio;
  /** Roughness over inside diameter; 0 for a smooth pipe [1]. */
  readonly relativeRoughness: Ratio;
}

/**
 * Darcy friction factor in every regime, after Churchill.
 *
 * One continuous formula from laminar to turbulent flow. It equals 64/Re up to 1500, lies within 1.4 % of Colebrook (`colebrook1939`) for plastic
 * pipe from 5000 up (1.7 % at a relative roughness of 0.001), and
 * between 2300 and 4000 draws a line through what nature leaves undecided. Darcy, not Fanning: four times that one.
 *
 * @param state - Reynolds number, 1e-6 to 1e12; relative roughness, 0 to 0.1
 * @returns Darcy friction factor [1]
 * @throws InputError when a number is outside its range
 * @remarks
 * f = 8 [(8/Re)¹² + (A + B)^−1.5]^(1/12), A = (2.457 ln 1/[(7/Re)^0.9 + 0.27 ε/D])¹⁶, B = (37530/Re)¹⁶. Source: `churchill1977`.
 * Checked against a general fluid-mechanics library (1e-4), 64/Re and Colebrook solved by iteration.
 *
 * Invariants: continuous; f·Re² rises strictly with Re, so a root in the pressure drop is unique; f rises with roughness when turbulent.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(churchillFrictionFactor({ reynolds: ratio(10_000), relativeRoughness: ratio(0) })).toBeCloseTo(0.031002, 6);
 * expect(churchillFrictionFactor({ reynolds: ratio(1000), relativeRoughness: ratio(0) })).toBeCloseTo(0.064, 8);
 * ```
 */
export function churchillFrictionFactor({ reynolds, relativeRoughness }: FrictionState): Ratio {
  demand('reynolds', 'ratio', reynolds, { atLeast: 1e-6, atMost: 1e12 });
  demand('relativeRoughness', 'ratio', relativeRoughness, { atLeast: 0, atMost: 0.1 });
  return (frictionTimesReynolds(reynolds, relativeRoughness) / reynolds) as Ratio;
}

/**
 * Churchill's friction factor times the Reynolds number: 64 while the flow is laminar, and so finite down to standstill.
 *
 * @param reynolds - Reynolds number, 0 or more [1]
 * @param relativeRoughness - roughness over inside diameter [1]
 * @returns f·Re [1]
 */
export function frictionTimesReynolds(reynolds: number, relativeRoughness: number): number {
  const turbulent = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness))) ** 16;
  const laminar = (37_530 / reynolds) ** 16;
  return 64 * (1 + (reynolds / 8) ** 12 / (turbulent + laminar) ** 1.5) ** (1 / 12);
}
