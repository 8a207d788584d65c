import { demand, demandChoice, demandObject, InputError, locate } from '../errors/index.js';
import { soilThermalShape, type SoilThermal } from '../states/index.js';
import type { DryBasisMoisture, LatentHeat, Ratio, Shape, Temperature, TemperatureDifference, VolumetricWater } from '../units/index.js';

/** How the water of a soil freezes as it cools. */
export type FreezingCourse =
  | {
      /** Evenly, from 0 °C down. */
      readonly type: 'range';
      /** Until all that freezes is ice, 0.1 to 5 [K]. */
      readonly range: TemperatureDifference;
    }
  | {
      /** By what the surfaces of the grains hold. */
      readonly type: 'surfaces';
      /** Water content, liquid and frozen together, 0.001 to 10 [kg/kg]. */
      readonly totalMoisture: DryBasisMoisture;
      /** Surface of the grains by mass as a multiple of 1 m²/g, 0.02 to 800 [1]. */
      readonly specificSurface: Ratio;
      /** Temperature that frozen conductivity and latent heat are for, −40 to −0.5 [degC]. */
      readonly frozenAt: Temperature;
    };

/** A soil that may freeze around the pipes. */
export interface IceSoil {
  /** The soil without ice, that of the ground response. */
  readonly thawed: SoilThermal;
  /** The soil with its ice. */
  readonly frozen: SoilThermal;
  /** Heat set free on the way from the one to the other, 0 to 4e8 [J/m3]. */
  readonly latentHeat: LatentHeat;
  /** Water before freezing, by volume, 0 to 1 [m3/m3]. */
  readonly waterByVolume: VolumetricWater;
  /** How the water freezes. */
  readonly freezing: FreezingCourse;
}

/** Shape of {@link IceSoil}. */
export const iceSoilShape: Shape<IceSoil> = {
  thawed: soilThermalShape,
  frozen: soilThermalShape,
  latentHeat: 'latent heat',
  waterByVolume: 'volumetric water',
  freezing: {
    by: 'type',
    oneOf: {
      range: { range: 'temperature difference' },
      surfaces: { totalMoisture: 'moisture on dry basis', specificSurface: 'ratio', frozenAt: 'temperature' },
    },
  },
};

/** Heat of fusion of a cubic metre of water: 334 kJ/kg of 1000 kg/m3 [J/m3]. */
export const FUSION_OF_WATER = 334e6;

/** Refuses a soil that cannot freeze like this. */
export function demandIceSoil(argument: string, soil: IceSoil): void {
  demandObject(argument, soil);
  locate(argument, () => {
    const { thawed, frozen, latentHeat, waterByVolume, freezing } = soil;
    for (const [name, thermal] of [
      ['thawed', thawed],
      ['frozen', frozen],
    ] as const) {
      demandObject(name, thermal);
      demand(`${name}.conductivity`, 'conductivity', thermal.conductivity, { atLeast: 0.05, atMost: 10 });
      demand(`${name}.heatCapacity`, 'heat capacity', thermal.heatCapacity, { atLeast: 1e5, atMost: 1e7 });
      demand(`${name}.diffusivity`, 'diffusivity', thermal.diffusivity, { above: 0, atMost: 1e-2 });
    }
    demand('latentHeat', 'latent heat', latentHeat, { atLeast: 0, atMost: 4e8 });
    demand('waterByVolume', 'volumetric water', waterByVolume, { atLeast: 0, atMost: 1 });
    demandObject('freezing', freezing);
    demandChoice('freezing.type', freezing.type, ['range', 'surfaces']);
    if (freezing.type === 'range') demand('freezing.range', 'temperature difference', freezing.range, { atLeast: 0.1, atMost: 5 });
    else {
      demand('freezing.totalMoisture', 'moisture on dry basis', freezing.totalMoisture, { atLeast: 1e-3, atMost: 10 });
      demand('freezing.specificSurface', 'ratio', freezing.specificSurface, { atLeast: 0.02, atMost: 800 });
      demand('freezing.frozenAt', 'temperature', freezing.frozenAt, { atLeast: -40, atMost: -0.5 });
    }
    // A thousandth more, since the heat of fusion and the density of water are rounded by whoever gives them.
    if (latentHeat > 1.01 * waterByVolume * FUSION_OF_WATER) {
      throw new InputError({
        code: 'impossible',
        argument: 'latentHeat',
        value: { kind: 'latent heat', value: latentHeat },
        allowed: `at most ${String(waterByVolume * FUSION_OF_WATER)}, that of all the water`,
        hint: 'more water would freeze than there is',
      });
    }
  });
}
