import { demand } from '../errors/index.js';
import type { Density, MassFraction, VolumeFraction } from '../units/index.js';
import { DEFAULT_PARTICLE_DENSITY, ORGANIC_DENSITY } from './particle-density.js';

/** Solids of which a share by mass is organic. */
export interface MixedSolids {
  /** Volume of organic matter in the volume of solids [m3/m3]. */
  readonly organicShare: VolumeFraction;
  /** Density of the grains, mineral and organic together [kg/m3]. */
  readonly particleDensity: Density;
}

/**
 * Volume share of the organic matter in the solids, and the density of the mixture, from its share by mass.
 *
 * Organic matter is half as dense as minerals, so that a fifth of the mass is a third of the volume.
 *
 * @param organicMatter - organic matter per dry soil, 0 to 1 [kg/kg]
 * @returns share of the volume of solids [m3/m3] and density of the grains [kg/m3]
 * @throws InputError when the share is impossible
 * @remarks
 * Minerals 2650, organic matter 1300 kg/m³ (`soilMechanicsTexts`). Invariant: from 0 to 1 with the share by mass, never below it.
 * @example
 * ```ts @import.meta.vitest
 * const { massPercent } = await import('../units/index.js');
 * expect(mixedSolids(massPercent(20)).organicShare).toBeCloseTo(0.338, 3);
 * ```
 */
export function mixedSolids(organicMatter: MassFraction): MixedSolids {
  demand('organicMatter', 'mass fraction', organicMatter, { atLeast: 0, atMost: 1 });
  const particleDensity = 1 / (organicMatter / ORGANIC_DENSITY + (1 - organicMatter) / DEFAULT_PARTICLE_DENSITY);
  return { organicShare: Math.min(1, (organicMatter * particleDensity) / ORGANIC_DENSITY), particleDensity } as MixedSolids;
}
