import type { Ratio } from '../units/index.js';
import type { FrictionState } from './churchill.js';
import { demandTurbulent, haaland } from './friction-formulas.js';

/**
 * Darcy friction factor of turbulent flow, after Colebrook and White, solved to the last digit.
 *
 * The measure of the others from 4000 up. Between 2300 and 4000 it answers, too: there it is what the friction would be if the flow were
 * turbulent, the upper end of what may be.
 *
 * @param state - Reynolds number, 2300 to 1e8; relative roughness, 0 to 0.05
 * @returns Darcy friction factor [1]
 * @throws InputError when a number is outside its range
 * @remarks
 * x = 1/√f solves x + 2 log₁₀(ε/3.7D + 2.51 x/Re) = 0, which rises and is bent downwards, so that Newton's steps from Haaland's value
 * cannot miss. Source: `colebrook1939`. Checked against a general fluid-mechanics library (to its last printed digit), against the
 * closed form with Lambert's function (1e-13) and White's example 6.18.
 *
 * Invariants: falls as the Reynolds number rises; rises with roughness; the equation is met to 1e-14.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(colebrookFrictionFactor({ reynolds: ratio(10_000), relativeRoughness: ratio(0) })).toBeCloseTo(0.03088295, 8);
 * ```
 */
export function colebrookFrictionFactor(state: FrictionState): Ratio {
  demandTurbulent(state);
  return colebrook(state.reynolds, state.relativeRoughness) as Ratio;
}

/** Colebrook's friction factor of a state that is known to be turbulent. */
export function colebrook(reynolds: number, relativeRoughness: number): number {
  const slope = 2.51 / reynolds;
  let root = haaland(reynolds, relativeRoughness) ** -0.5;
  // Haaland is within a few per cent and each step squares the error: after the third, nothing is left to gain.
  for (let step = 0; step < 3; step += 1) {
    const inside = relativeRoughness / 3.7 + slope * root;
    root -= (root + 2 * Math.log10(inside)) / (1 + (2 * slope) / (Math.LN10 * inside));
  }
  return root ** -2;
}
