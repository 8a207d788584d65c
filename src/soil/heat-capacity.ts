import { demand } from '../errors/index.js';
import type { SoilThermal } from '../states/index.js';
import type { Conductivity, Diffusivity, HeatCapacity, VolumeFraction, VolumetricWater } from '../units/index.js';

/** Volumes of the constituents of a soil; the rest is air, which carries no heat to speak of. */
export interface SoilConstituents {
  /** Volume of mineral solids, 0 to 1 [m3/m3]. */
  readonly mineral: VolumeFraction;
  /** Volume of organic solids, 0 to 1; 0 when left out [m3/m3]. */
  readonly organic?: VolumeFraction;
  /** Volume of liquid water, 0 to 1 [m3/m3]. */
  readonly water: VolumetricWater;
  /** Volume of ice as the water in it, 0 to 1; 0 when left out [m3/m3]. */
  readonly ice?: VolumetricWater;
}

/** Heat capacities of the constituents; ice per volume of the water it was [J/(m3.K)]. */
const MINERAL = 1.92e6;
const ORGANIC = 2.51e6;
const WATER = 4.18e6;
const ICE = 1.88e6;

/** Volumes may add up to this, since saturated soils measure a little over 1 [1]. */
const FULL = 1.05;

/**
 * Volumetric heat capacity of a soil from its constituents, after de Vries.
 *
 * @param constituents - volumes of solids, water and ice in the volume of soil [m3/m3]
 * @returns heat capacity [J/(m3.K)]
 * @throws InputError when a volume is impossible, or together they overfill the soil
 * @remarks
 * C = 1.92 mineral + 2.51 organic + 4.18 water + 1.88 ice, MJ/(m³·K). Source: `deVries1963`. Measured soils scatter by 15 % about it
 * (`kansasCores2022`).
 *
 * Invariants: linear in each constituent; freezing lowers it.
 * @example
 * ```ts @import.meta.vitest
 * const { volumeFraction, volumetricFraction } = await import('../units/index.js');
 * expect(volumetricHeatCapacity({ mineral: volumeFraction(0.55), water: volumetricFraction(0.25) })).toBeCloseTo(2.101e6, -1);
 * ```
 */
export function volumetricHeatCapacity({
  mineral,
  organic = 0 as VolumeFraction,
  water,
  ice = 0 as VolumetricWater,
}: SoilConstituents): HeatCapacity {
  demand('mineral', 'volume fraction', mineral, { atLeast: 0, atMost: 1 });
  demand('organic', 'volume fraction', organic, { atLeast: 0, atMost: 1 });
  demand('water', 'volumetric water', water, { atLeast: 0, atMost: FULL });
  demand('ice', 'volumetric water', ice, { atLeast: 0, atMost: FULL });
  demand('mineral', 'volume fraction', mineral, { atMost: FULL - organic - water - ice }, 'the constituents overfill the volume');
  return (MINERAL * mineral + ORGANIC * organic + WATER * water + ICE * ice) as HeatCapacity;
}

/** How a soil conducts and stores heat. */
export interface ConductingSoil {
  /** Thermal conductivity, 1e-6 to 1e4 [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Volumetric heat capacity, 1 to 1e9 [J/(m3.K)]. */
  readonly heatCapacity: HeatCapacity;
}

/**
 * Thermal diffusivity: how fast a change of temperature spreads.
 *
 * @param soil - conductivity [W/(m.K)] and volumetric heat capacity [J/(m3.K)]
 * @returns diffusivity [m2/s]
 * @throws InputError when a number is impossible
 * @remarks α = k / C, by definition (`carslawJaeger1959`).
 * @example
 * ```ts @import.meta.vitest
 * const { megajoulesPerCubicMetreKelvin, squareFeetPerDay, wattsPerMetreKelvin } = await import('../units/index.js');
 * const alpha = soilDiffusivity({ conductivity: wattsPerMetreKelvin(1.5), heatCapacity: megajoulesPerCubicMetreKelvin(2.5) });
 * expect(squareFeetPerDay.of(alpha)).toBeCloseTo(0.558, 3);
 * ```
 */
export function soilDiffusivity({ conductivity, heatCapacity }: ConductingSoil): Diffusivity {
  demand('conductivity', 'conductivity', conductivity, { atLeast: 1e-6, atMost: 1e4 });
  demand('heatCapacity', 'heat capacity', heatCapacity, { atLeast: 1, atMost: 1e9 });
  return (conductivity / heatCapacity) as Diffusivity;
}

/** Conductivity, heat capacity and the diffusivity that follows from them. */
export function thermalOf(conductivity: Conductivity, heatCapacity: HeatCapacity): SoilThermal {
  return { conductivity, heatCapacity, diffusivity: soilDiffusivity({ conductivity, heatCapacity }) };
}
