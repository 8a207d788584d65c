import type { Ratio } from '../units/index.js';
import { together } from './band-around.js';
import { estimate, heatCapacityOf, saturationOf, type ModelSoil } from './models.js';
import type { ConductivityErrors, ModelConductivity } from './properties.js';

/** How well the inputs are known: standard errors, of the density as a share, of the moisture in kg/kg. */
export interface InputErrors {
  readonly density: number;
  readonly quartz: number;
}

/** Moisture differs by so much between the sample and the ground a few steps aside (`common practice`) [kg/kg]. */
const MOISTURE = 0.02;

/** Two cores of one place and state scatter by 9 % each, a survey by needle probe by 10 to 15 % (`kansasCores2022`, `needleSurvey2012`). */
const PLACE = 0.1;

/**
 * Error of the model against the cores (`kansasCores2022`): 12 % from a saturation of 0.3 up; below, where the water no longer
 * bridges the grains, it grows to 90 % in dry soil.
 */
const MODEL = 0.12;
const WET_ENOUGH = 0.3;
const GROWS_BY = 2.6;

/** Heat capacities of the cores scatter by 15 % about the sum of the constituents (`kansasCores2022`). */
const HEAT_CAPACITY_MODEL = 0.15;

/** What the error of the conductivity is made of. */
export function conductivityErrors(soil: ModelSoil, models: readonly ModelConductivity[], inputs: InputErrors): ConductivityErrors {
  const parts = {
    model: Math.max(modelError(soil), halfSpread(models)),
    quartz: inputs.quartz,
    density: Math.abs(perDensity(estimate, soil, inputs.density)),
    moisture: Math.abs(perMoisture(estimate, soil)),
    place: PLACE,
  };
  return { ...parts, total: together(...Object.values(parts)) as Ratio } as ConductivityErrors;
}

/** Standard error of the logarithm of the heat capacity. */
export function heatCapacityError(soil: ModelSoil, inputs: InputErrors): number {
  return together(HEAT_CAPACITY_MODEL, perDensity(heatCapacityOf, soil, inputs.density), perMoisture(heatCapacityOf, soil));
}

/** Standard error of the logarithm of the diffusivity: density and moisture move both of its parts the same way and partly cancel. */
export function diffusivityError(soil: ModelSoil, errors: ConductivityErrors, inputs: InputErrors): number {
  const diffusivity = (each: ModelSoil): number => estimate(each) / heatCapacityOf(each);
  const moved = [perDensity(diffusivity, soil, inputs.density), perMoisture(diffusivity, soil)];
  return together(errors.model, errors.quartz, errors.place, HEAT_CAPACITY_MODEL, ...moved);
}

function modelError(soil: ModelSoil): number {
  return MODEL + GROWS_BY * Math.max(0, WET_ENOUGH - saturationOf(soil));
}

/** Half of the distance between the models in range, as logarithms. */
function halfSpread(models: readonly ModelConductivity[]): number {
  const logs = models.filter(({ inRange }) => inRange).map(({ conductivity }) => Math.log(conductivity));
  return logs.length < 2 ? 0 : (Math.max(...logs) - Math.min(...logs)) / 2;
}

/** How far the logarithm of a property moves with the dry density by its standard error. */
function perDensity(of: (soil: ModelSoil) => number, soil: ModelSoil, error: number): number {
  const lighter = { ...soil, dryDensity: soil.dryDensity * (1 - error) };
  return Math.log(of(soil)) - Math.log(of(lighter));
}

/** How far the logarithm of a property moves with the moisture by its standard error, on the drier side. */
function perMoisture(of: (soil: ModelSoil) => number, soil: ModelSoil): number {
  const drier = { ...soil, moisture: Math.max(0, soil.moisture - MOISTURE) };
  return Math.log(of(soil)) - Math.log(of(drier));
}
