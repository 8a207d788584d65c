import type { Temperature } from '../units/index.js';
import { demandFluidChoice, type FluidChoice, type OfAnyFluid } from './fluids.js';
import { freezingPoint } from './freezing.js';

/**
 * Freezing point by the warmest of the sources compared.
 *
 * The fit is one source of several. Where a handbook has the same mixture freeze warmer than the fit does, the difference is added,
 * straight between the mixtures compared. Glycols and alcohols are compared with two or three tables, carbonate and chloride with
 * one; formate and acetate stand on the fit alone, to which the kelvin of its uncertainty is added.
 *
 * @param choice - fluid and mass fraction of antifreeze [kg/kg]
 * @returns freezing point, never below that of the fit [degC]
 * @throws InputError when the fluid is unknown or the mass fraction outside its fits
 * @remarks
 * Source: `melinder2010`, with what `lange1999`, `ashrae2001Coolants` and `vdiCoolants` lie above it. Checked against every freezing
 * point of those tables: none lies more than 0.15 K above.
 *
 * Invariants: falls with the mass fraction; never below {@link freezingPoint}.
 * @example
 * ```ts @import.meta.vitest
 * const { massPercent } = await import('../units/index.js');
 * const { ETHANOL } = await import('./ethanol.data.js');
 * const spirit = { fluid: ETHANOL, massFraction: massPercent(20) };
 * expect(freezingPoint(spirit)).toBeCloseTo(-11.1, 1);
 * expect(warmestFreezingPoint(spirit)).toBeCloseTo(-10.2, 1);
 * ```
 */
export function warmestFreezingPoint(choice: OfAnyFluid<FluidChoice>): Temperature {
  const { warmestSource } = demandFluidChoice(choice);
  return (freezingPoint(choice) + along(warmestSource, choice.massFraction)) as Temperature;
}

/** Height of a broken line, level beyond its ends. */
function along(line: readonly (readonly [x: number, y: number])[], x: number): number {
  let [[left, before] = [0, 0]] = line;
  for (const [right, after] of line) {
    if (x < right) return before + ((after - before) * (x - left)) / (right - left);
    [left, before] = [right, after];
  }
  return before;
}
