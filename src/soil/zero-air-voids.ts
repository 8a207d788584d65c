import { demand } from '../errors/index.js';
import type { Moisture } from '../states/index.js';
import type { Density, DryBasisMoisture } from '../units/index.js';
import { densityHint } from './likely-cause.js';
import { dryBasis } from './moisture.js';
import { DEFAULT_PARTICLE_DENSITY, WATER_DENSITY } from './particle-density.js';

/** A dry soil of which the pores are to be filled. */
export interface PackedSolids {
  /** Mass of solids per volume of soil, 20 to 2800 and below that of the grains [kg/m3]. */
  readonly dryDensity: Density;
  /** Density of the grains themselves, 1000 to 5000; 2650 when left out [kg/m3]. */
  readonly particleDensity?: Density;
}

/** A wet soil of which the air is to be pressed out. */
export interface WetSolids {
  /** Water content with its basis. */
  readonly moisture: Moisture;
  /** Density of the grains themselves, 1000 to 5000; 2650 when left out [kg/m3]. */
  readonly particleDensity?: Density;
}

/**
 * Most water a soil of this dry density can hold: its pores filled, no air left.
 *
 * @param solids - dry density and density of the grains [kg/m3]
 * @returns moisture on dry basis [kg/kg]
 * @throws InputError when a density is impossible or leaves no pores
 * @remarks
 * w = ρw (1/ρd − 1/ρs), the line of zero air voids. Source: `soilMechanicsTexts`. Invariant: inverse of {@link fullestDensity}.
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerCubicMetre } = await import('../units/index.js');
 * expect(saturatedMoisture({ dryDensity: kilogramsPerCubicMetre(1600) })).toBeCloseTo(0.2476, 4);
 * ```
 */
export function saturatedMoisture({ dryDensity, particleDensity = DEFAULT_PARTICLE_DENSITY as Density }: PackedSolids): DryBasisMoisture {
  demandDensities(dryDensity, particleDensity);
  demand('dryDensity', 'density', dryDensity, { below: particleDensity }, 'the grains are no lighter than the soil; is the volume right?');
  return (WATER_DENSITY * (1 / dryDensity - 1 / particleDensity)) as DryBasisMoisture;
}

/**
 * Highest dry density a soil can have with this much water: no air left.
 *
 * @param solids - moisture, and density of the grains [kg/m3]
 * @returns dry density [kg/m3]; that of the grains without water
 * @throws InputError when the moisture or the density of the grains is impossible
 * @remarks
 * ρd = ρs / (1 + w ρs/ρw), the line of zero air voids. Source: `soilMechanicsTexts`. Invariant: inverse of {@link saturatedMoisture}.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent } = await import('../units/index.js');
 * expect(fullestDensity({ moisture: { basis: 'dry', value: dryBasisPercent(30) } })).toBeCloseTo(1476, 0);
 * ```
 */
export function fullestDensity({ moisture, particleDensity = DEFAULT_PARTICLE_DENSITY as Density }: WetSolids): Density {
  demandParticleDensity(particleDensity);
  return (particleDensity / (1 + (dryBasis(moisture) * particleDensity) / WATER_DENSITY)) as Density;
}

/** Refuses densities of a soil and of its grains that no soil has, each alone. */
export function demandDensities(dryDensity: Density, particleDensity: Density): void {
  demand('dryDensity', 'density', dryDensity, { atLeast: 20, atMost: 2800 }, densityHint(dryDensity));
  demandParticleDensity(particleDensity);
}

/** Refuses a density that no grains have. */
export function demandParticleDensity(particleDensity: Density): void {
  const hint = particleDensity >= 1 && particleDensity <= 5 ? 'it may be the specific gravity; times 1000 it is in kg/m3' : undefined;
  demand('particleDensity', 'density', particleDensity, { atLeast: 1000, atMost: 5000 }, hint);
}
