import { demand, InputError } from '../errors/index.js';
import type { Density, Ratio, VolumetricWater } from '../units/index.js';
import { DEFAULT_PARTICLE_DENSITY } from './particle-density.js';

/** How densely a soil lies and how full its pores are, from which the models of its conductivity start. */
export interface PackedSoil {
  /** Mass of solids per volume of soil, 20 to 2800 [kg/m3]. */
  readonly dryDensity: Density;
  /** Volume of water in the volume of pores, 0 to 1 [1]. */
  readonly saturation: Ratio;
  /** Density of the grains, above the dry density, 1000 to 5000; 2650 when left out, 1500 for peat [kg/m3]. */
  readonly particleDensity?: Density;
}

/** A soil whose water may be ice. */
export interface FreezableSoil extends PackedSoil {
  /** Whether the water is ice; no when left out. */
  readonly frozen?: boolean;
  /** Volume of water that stays liquid in frozen soil, no more than there is; 0 when left out [m3/m3]. */
  readonly unfrozenWater?: VolumetricWater;
}

/** Volumes of the pores, of the water in them and of what is liquid where they are full. */
export interface Pores {
  readonly porosity: number;
  readonly water: number;
  /** Liquid water in soil whose pores are all full: as much as the pores hold, or where frozen what does not freeze. */
  readonly liquid: number;
}

/** Room for the rounding of water that was computed as saturation times porosity. */
const ROUNDING = 1.000000001;

/** Pores of a soil; refuses what is impossible about it, alone or together. */
export function poresOf(soil: FreezableSoil, grains: number = DEFAULT_PARTICLE_DENSITY): Pores {
  const { dryDensity, saturation, particleDensity = grains as Density, frozen = false, unfrozenWater = 0 as VolumetricWater } = soil;
  demand('particleDensity', 'density', particleDensity, { atLeast: 1000, atMost: 5000 });
  demand('dryDensity', 'density', dryDensity, { atLeast: 20, atMost: 2800 });
  demand('dryDensity', 'density', dryDensity, { below: particleDensity }, 'no pores are left between the grains');
  demand('saturation', 'ratio', saturation, { atLeast: 0, atMost: 1 });
  demandFlag('frozen', frozen);
  const porosity = 1 - dryDensity / particleDensity;
  const water = saturation * porosity;
  demand('unfrozenWater', 'volumetric water', unfrozenWater, { atLeast: 0, atMost: water * ROUNDING }, 'no more than the water there is');
  return { porosity, water, liquid: frozen ? unfrozenWater : porosity };
}

/** Refuses what is neither true nor false. */
export function demandFlag(argument: string, value: boolean): void {
  if (typeof value !== 'boolean') throw new InputError({ code: 'wrong-type', argument, value: String(value), allowed: 'true or false' });
}
