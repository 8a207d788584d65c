import { demand } from '../errors/index.js';
import type { Moisture } from '../states/index.js';
import type { Density, DryBasisMoisture, LatentHeat } from '../units/index.js';
import { dryBasis } from './moisture.js';

/** A soil that freezes. */
export interface FreezingSoil {
  /** Mass of solids per volume of soil, 20 to 2800 [kg/m3]. */
  readonly dryDensity: Density;
  /** Water content before freezing. */
  readonly moisture: Moisture;
  /** Water that stays liquid, at most the moisture; 0 when left out, which is right for sand and too much ice for clay [kg/kg]. */
  readonly unfrozenMoisture?: DryBasisMoisture;
}

/** Heat of fusion of water [J/kg]. */
const FUSION = 334e3;

/**
 * Heat that a soil sets free when its water freezes.
 *
 * @param soil - dry density [kg/m3], moisture, moisture that stays liquid [kg/kg]
 * @returns latent heat per volume of soil [J/m3]
 * @throws InputError when a number is impossible or more water stays liquid than there is
 * @remarks
 * L = ρd (w − wu) · 334 kJ/kg. Source: `soilMechanicsTexts` (definition), heat of fusion recalled; steam tables have 333.6. Checked
 * against values computed independently.
 *
 * Invariants: proportional to density and to the water that freezes.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, kilogramsPerCubicMetre, megajoulesPerCubicMetre } = await import('../units/index.js');
 * const heat = latentHeat({ dryDensity: kilogramsPerCubicMetre(1600), moisture: { basis: 'dry', value: dryBasisPercent(15) } });
 * expect(megajoulesPerCubicMetre.of(heat)).toBeCloseTo(80.16, 2);
 * ```
 */
export function latentHeat({ dryDensity, moisture, unfrozenMoisture = 0 as DryBasisMoisture }: FreezingSoil): LatentHeat {
  demand('dryDensity', 'density', dryDensity, { atLeast: 20, atMost: 2800 });
  const water = dryBasis(moisture);
  demand('unfrozenMoisture', 'moisture on dry basis', unfrozenMoisture, { atLeast: 0, atMost: water }, 'no more than the moisture');
  return (dryDensity * (water - unfrozenMoisture) * FUSION) as LatentHeat;
}
