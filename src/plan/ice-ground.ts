import type { IceSoil } from '../operation/index.js';
import { frozenSoil, johansenConductivity, mixedSolids, typicalSoil, typicalSpecificSurface } from '../soil/index.js';
import type { SoilThermal } from '../states/index.js';
import type { Conductivity, Diffusivity, DryBasisMoisture, HeatCapacity, MassFraction, Ratio, Temperature, VolumetricWater } from '../units/index.js';
import type { SampledLayer } from './soil-at-pipes.js';

/** Frozen soil is reckoned at this temperature, about the mean of those that were measured [degC]. */
const FROZEN_AT = -4 as Temperature;
/** What is drier has no ice to count [kg/kg]. */
const LEAST_WATER = 1e-3;

/**
 * The ground around the pipes as it may freeze: that of the response, changed by ice as the soil of the layer at the pipes is.
 *
 * @param effective - the uniform soil of the response
 * @param layer - the layer that the pipes lie in
 * @returns the soil without ice and with it, the heat set free and how the water freezes, by its texture
 */
export function iceGround(effective: SoilThermal, { sample, properties, phases, quartzFraction }: SampledLayer): IceSoil {
  const { dryDensity, particleDensity, porosity } = phases;
  const { organicShare } = mixedSolids(sample.organicMatter ?? (0 as MassFraction));
  const specificSurface = typicalSpecificSurface(sample.texture.class);
  const moisture = { basis: 'dry', value: phases.moisture } as const;
  const { unfrozenWater, latentHeat, heatCapacity } = frozenSoil({
    ...{ temperature: FROZEN_AT, moisture, specificSurface, dryDensity, particleDensity, organicShare },
  });
  const saturation = Math.min(1, phases.saturation) as Ratio;
  const { conductivity } = johansenConductivity({
    ...{ dryDensity, saturation, quartzFraction, particleDensity, organicShare },
    grain: typicalSoil(sample.texture.class).grain,
    frozen: true,
    unfrozenWater: Math.min(unfrozenWater, saturation * porosity) as VolumetricWater,
  });
  // The layers around the pipes are not quite that layer; ice changes them as it changes that.
  const frozenConductivity = (effective.conductivity * conductivity) / properties.thermal.conductivity;
  const frozenCapacity = (effective.heatCapacity * heatCapacity) / properties.thermal.heatCapacity;
  return {
    thawed: effective,
    frozen: {
      conductivity: frozenConductivity as Conductivity,
      heatCapacity: frozenCapacity as HeatCapacity,
      diffusivity: (frozenConductivity / frozenCapacity) as Diffusivity,
    },
    latentHeat,
    waterByVolume: phases.volumetricWater,
    freezing: {
      type: 'surfaces',
      totalMoisture: Math.max(LEAST_WATER, phases.moisture) as DryBasisMoisture,
      specificSurface,
      frozenAt: FROZEN_AT,
    },
  };
}
