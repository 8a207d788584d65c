import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { Density, HeatCapacity, LatentHeat, Shape, VolumeFraction, VolumetricWater } from '../units/index.js';
import { volumetricHeatCapacity } from './heat-capacity.js';
import { latentHeat } from './latent-heat.js';
import { dryBasis } from './moisture.js';
import { DEFAULT_PARTICLE_DENSITY, WATER_DENSITY } from './particle-density.js';
import { soilPhases } from './phases.js';
import { andersonTiceUnfrozenWater, type CoolingSoil, type UnfrozenWater, unfrozenWaterShape } from './unfrozen-water.js';

/** A soil of known density that may freeze, and how cold it is. */
export interface FreezingGround extends CoolingSoil {
  /** Mass of solids per volume of soil, 20 to 2800 [kg/m3]. */
  readonly dryDensity: Density;
  /** Density of the grains, 1000 to 5000; 2650 when left out [kg/m3]. */
  readonly particleDensity?: Density;
  /** Volume of organic matter in the volume of solids, 0 to 1; 0 when left out [m3/m3]. */
  readonly organicShare?: VolumeFraction;
}

/** Water, ice and heat of a soil at a temperature. */
export interface FrozenSoil extends UnfrozenWater {
  /** Whether any of the water is ice. */
  readonly frozen: boolean;
  /** Volume of liquid water in the volume of soil, which the models of frozen soil ask for [m3/m3]. */
  readonly unfrozenWater: VolumetricWater;
  /** Heat set free by what has frozen so far [J/m3]. */
  readonly latentHeat: LatentHeat;
  /** Volumetric heat capacity with this ice, its thawing apart [J/(m3.K)]. */
  readonly heatCapacity: HeatCapacity;
}

/** {@link FrozenSoil} with findings. */
export interface FrozenSoilResult extends FrozenSoil {
  /** What is possible but doubtful about the density and moisture. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link FrozenSoil}. */
export const frozenSoilShape: Shape<FrozenSoil> = /* @__PURE__ */ joinedShape(unfrozenWaterShape, {
  frozen: 'flag',
  unfrozenWater: 'volumetric water',
  latentHeat: 'latent heat',
  heatCapacity: 'heat capacity',
});

/**
 * How far a soil is frozen at a temperature: liquid water, ice, the heat they have set free and store.
 *
 * Feeds the models of conductivity: `frozen` and `unfrozenWater` are theirs. The heat of fusion and a frozen zone about a pipe are one
 * reserve, not two.
 *
 * @param ground - temperature [degC], density [kg/m3], moisture, specific surface as a multiple of 1 m²/g
 * @returns liquid and frozen water, latent heat [J/m3] and heat capacity [J/(m3.K)]
 * @throws InputError when a number is impossible, alone or together
 * @remarks
 * Sources: `andersonTice1972` (liquid water), `deVries1963` (heat capacity; ice for water). Made of kernels with checks of their own.
 *
 * Invariants: liquid and frozen water add up to the moisture; where nothing has frozen no heat was set free, and the heat capacity is that of
 * the unfrozen soil; cooling never thaws.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dryBasisPercent, kilogramsPerCubicMetre, megajoulesPerCubicMetre, ratio } = await import('../units/index.js');
 * const silt = { dryDensity: kilogramsPerCubicMetre(1500), specificSurface: ratio(20) } as const;
 * const cold = frozenSoil({ ...silt, moisture: { basis: 'dry', value: dryBasisPercent(20) }, temperature: celsius(-1) });
 * expect(dryBasisPercent.of(cold.unfrozenMoisture)).toBeCloseTo(6.79, 2);
 * expect(megajoulesPerCubicMetre.of(cold.latentHeat)).toBeCloseTo(66.2, 1);
 * ```
 */
export function frozenSoil(ground: FreezingGround): FrozenSoilResult {
  const { dryDensity, particleDensity = DEFAULT_PARTICLE_DENSITY as Density, moisture, organicShare = 0 as VolumeFraction } = ground;
  demand('organicShare', 'volume fraction', organicShare, { atLeast: 0, atMost: 1 });
  const { solids, findings } = soilPhases({ dryDensity, moisture, particleDensity });
  const water = andersonTiceUnfrozenWater(ground);
  const volume = (moist: number): VolumetricWater => ((moist * dryDensity) / WATER_DENSITY) as VolumetricWater;
  const liquid = volume(water.unfrozenMoisture);
  const heatCapacity = volumetricHeatCapacity({
    mineral: (solids * (1 - organicShare)) as VolumeFraction,
    organic: (solids * organicShare) as VolumeFraction,
    water: liquid,
    ice: volume(water.frozenMoisture),
  });
  const frozen = water.frozenMoisture > 0;
  const freed = latentHeat({ dryDensity, moisture: { basis: 'dry', value: dryBasis(moisture) }, unfrozenMoisture: water.unfrozenMoisture });
  return { ...water, frozen, unfrozenWater: liquid, latentHeat: freed, heatCapacity, findings };
}
