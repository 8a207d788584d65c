import { demand } from '../errors/index.js';
import type { Ratio } from '../units/index.js';
import type { FrictionState } from './churchill.js';
import { TRANSITION } from './regime.js';

/**
 * Darcy friction factor of laminar flow, Hagen–Poiseuille.
 *
 * Exact for developed flow in a round pipe, whatever its roughness; flow stays laminar up to a Reynolds number of about 2300.
 *
 * @param state - Reynolds number, 1e-6 to 2300
 * @returns Darcy friction factor [1]
 * @throws InputError when the number is outside its range
 * @remarks f = 64/Re. Checked against a textbook's head loss and by `HY-laminar`.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(laminarFrictionFactor({ reynolds: ratio(800) })).toBe(0.08);
 * ```
 */
export function laminarFrictionFactor({ reynolds }: Pick<FrictionState, 'reynolds'>): Ratio {
  demand('reynolds', 'ratio', reynolds, { atLeast: 1e-6, atMost: TRANSITION }, 'faster flow is laminar no longer');
  return (64 / reynolds) as Ratio;
}

/**
 * Darcy friction factor of turbulent flow, after Haaland.
 *
 * Explicit, from 4000 up within 1.5 % of Colebrook; from 2300 to 4000 it answers, as the turbulent end of what may be.
 *
 * @param state - Reynolds number, 2300 to 1e8; relative roughness, 0 to 0.05
 * @returns Darcy friction factor [1]
 * @throws InputError when a number is outside its range
 * @remarks f = (−1.8 log₁₀[(ε/3.7D)^1.11 + 6.9/Re])⁻². Source: `haaland1983`. Checked against a general fluid-mechanics library.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(haalandFrictionFactor({ reynolds: ratio(10_000), relativeRoughness: ratio(0) })).toBeCloseTo(0.030886, 6);
 * ```
 */
export function haalandFrictionFactor(state: FrictionState): Ratio {
  demandTurbulent(state);
  return haaland(state.reynolds, state.relativeRoughness) as Ratio;
}

/**
 * Darcy friction factor of turbulent flow, after Swamee and Jain.
 *
 * Explicit, within 1.7 % of Colebrook from 4000 up in plastic pipe (3.4 % in very rough pipe); from 2300 to 4000 it answers, as the turbulent end
 * of what may be.
 *
 * @param state - Reynolds number, 2300 to 1e8; relative roughness, 0 to 0.05
 * @returns Darcy friction factor [1]
 * @throws InputError when a number is outside its range
 * @remarks f = 0.25/(log₁₀[ε/3.7D + 5.74/Re^0.9])². Source: `swameeJain1976`. Checked against a general fluid-mechanics library, which
 * writes 5.74 as 6.97^0.9 and so differs by 3e-6.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(swameeJainFrictionFactor({ reynolds: ratio(10_000), relativeRoughness: ratio(0) })).toBeCloseTo(0.030972, 6);
 * ```
 */
export function swameeJainFrictionFactor(state: FrictionState): Ratio {
  demandTurbulent(state);
  return (0.25 / Math.log10(state.relativeRoughness / 3.7 + 5.74 / state.reynolds ** 0.9) ** 2) as Ratio;
}

/** Refuses a state that no turbulent correlation is for. */
export function demandTurbulent({ reynolds, relativeRoughness }: FrictionState): void {
  demand('reynolds', 'ratio', reynolds, { atLeast: TRANSITION, atMost: 1e8 }, 'a turbulent correlation; laminar flow has 64/Re');
  demand('relativeRoughness', 'ratio', relativeRoughness, { atLeast: 0, atMost: 0.05 });
}

/** Haaland's friction factor, also where Colebrook's begins its search. */
export function haaland(reynolds: number, relativeRoughness: number): number {
  return (-1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** -2;
}
