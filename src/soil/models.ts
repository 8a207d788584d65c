import type { Density, DryBasisMoisture, Fraction, Ratio, VolumeFraction, VolumetricWater } from '../units/index.js';
import { volumetricHeatCapacity } from './heat-capacity.js';
import { johansenConductivity } from './johansen.js';
import { KERSTEN_DENSITY, KERSTEN_MOISTURE, kerstenConductivity } from './kersten.js';
import { WATER_DENSITY } from './particle-density.js';
import type { ModelConductivity } from './properties.js';
import type { TypicalSoil } from './texture.js';

/** All that the models take, with no check left to make. */
export interface ModelSoil {
  readonly dryDensity: number;
  readonly moisture: number;
  readonly particleDensity: number;
  readonly quartzFraction: number;
  /** Volume of organic matter in the volume of the solids. */
  readonly organicShare: number;
  readonly typical: TypicalSoil;
}

/** Conductivity by the model that the estimate rests on. */
export function estimate(soil: ModelSoil, frozen = false): number {
  return johansenConductivity({
    dryDensity: soil.dryDensity as Density,
    saturation: saturationOf(soil) as Ratio,
    quartzFraction: soil.quartzFraction as Fraction,
    grain: soil.typical.grain,
    frozen,
    particleDensity: soil.particleDensity as Density,
    organicShare: soil.organicShare as VolumeFraction,
  }).conductivity;
}

/** Every model that can be computed for the soil, side by side. */
export function sideBySide(soil: ModelSoil): readonly ModelConductivity[] {
  const { dryDensity, typical } = soil;
  const johansen = {
    model: 'johansen',
    conductivity: estimate(soil),
    frozenConductivity: estimate(soil, true),
    inRange: saturationOf(soil) > 0.1,
    source: 'johansen1975',
  } as ModelConductivity;
  // More water than the pores hold is an error of measurement; the equation would go on rising with it.
  const moisture = Math.min(soil.moisture, saturatedMoisture(soil));
  const { atLeast, atMost } = KERSTEN_DENSITY;
  if (dryDensity < atLeast || dryDensity > atMost || moisture < KERSTEN_MOISTURE[typical.kerstenSoil].computed) return [johansen];
  const of = {
    dryDensity: dryDensity as Density,
    moisture: { basis: 'dry', value: moisture as DryBasisMoisture },
    soil: typical.kerstenSoil,
  } as const;
  const { conductivity, inRange } = kerstenConductivity(of);
  const frozenConductivity = kerstenConductivity({ ...of, frozen: true }).conductivity;
  return [johansen, { model: 'kersten', conductivity, frozenConductivity, inRange, source: 'kersten1949' }];
}

/** Volumetric heat capacity of the soil, its water liquid or frozen. */
export function heatCapacityOf(soil: ModelSoil, frozen = false): number {
  const solids = soil.dryDensity / soil.particleDensity;
  const water = (Math.min(soil.moisture, saturatedMoisture(soil)) * soil.dryDensity) / WATER_DENSITY;
  return volumetricHeatCapacity({
    mineral: (solids * (1 - soil.organicShare)) as VolumeFraction,
    organic: (solids * soil.organicShare) as VolumeFraction,
    water: (frozen ? 0 : water) as VolumetricWater,
    ice: (frozen ? water : 0) as VolumetricWater,
  });
}

/** Share of the pores that the water fills, taken as full where the measurements give more. */
export function saturationOf(soil: ModelSoil): number {
  return Math.min(1, soil.moisture / saturatedMoisture(soil));
}

function saturatedMoisture({ dryDensity, particleDensity }: ModelSoil): number {
  return WATER_DENSITY / dryDensity - WATER_DENSITY / particleDensity;
}
