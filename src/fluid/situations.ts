import type { Situation } from '../safety/index.js';
import { type AnyFluid, demandFluid } from './fluids.js';

/**
 * The situations of a fluid that call for safety notices.
 *
 * @param fluid - the fluid, by name or record
 * @returns situations to ask `noticesFor` with; none for water
 * @throws InputError when the fluid is unknown
 * @example
 * ```ts @import.meta.vitest
 * const { noticesFor } = await import('../safety/index.js');
 * const { ETHANOL } = await import('./ethanol.data.js');
 * expect(fluidSituations(ETHANOL)).toEqual(['antifreeze', 'alcohol-antifreeze']);
 * expect(noticesFor(fluidSituations(ETHANOL)).map(({ code }) => code)).toContain('alcohol-drums');
 * ```
 */
export function fluidSituations(fluid: AnyFluid): readonly Situation[] {
  const { name, pureDensity } = demandFluid(fluid);
  if (name === 'water') return [];
  if (name === 'ethanol' || name === 'methanol') return ['antifreeze', 'alcohol-antifreeze'];
  if (name === 'ethylene-glycol') return ['antifreeze', 'ethylene-glycol-antifreeze'];
  return pureDensity > 0 ? ['antifreeze'] : ['antifreeze', 'salt-antifreeze'];
}
