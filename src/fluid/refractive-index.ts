import { InputError } from '../errors/index.js';
import type { Ratio } from '../units/index.js';
import type { FluidRecord } from './fluid-record.js';
import { demandFluidChoice, type OfAnyFluid } from './fluids.js';
import { demandLiquidAt, type FluidCondition } from './properties.js';
import { REFRACTIVE_INDICES } from './refractive-indices.data.js';
import { densityOf } from './volume-share.js';
import { WATER } from './water.data.js';

/**
 * Refractive index of a mixture, as a refractometer without temperature compensation reads it; at 20 °C as one with it does.
 *
 * The Lorentz–Lorenz rule: the refractions of antifreeze and water add up by mass. An estimate from recalled indices of the pure
 * liquids, good to about 0.001, which is one per cent of glycol by mass. Scales in degrees Brix or in per cent of one product are
 * not converted: the tables for that are not at hand.
 *
 * @param condition - fluid, mass fraction of antifreeze [kg/kg], temperature [degC]
 * @returns refractive index [1]
 * @throws InputError as `fluidProperties` does, and for a fluid whose pure index is not known
 * @remarks
 * (n² − 1) / (n² + 2) = ρ Σ wᵢ rᵢ. Source: `lorentzLorenz`; density from `melinder2010`. Checked against a table worked out by the
 * same rule.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent } = await import('../units/index.js');
 * const glycol = { fluid: 'propylene-glycol', massFraction: massPercent(25), temperature: celsius(20) } as const;
 * expect(refractiveIndex(glycol)).toBeCloseTo(1.3612, 4);
 * ```
 */
export function refractiveIndex(condition: OfAnyFluid<FluidCondition>): Ratio {
  const record = demandFluidChoice(condition);
  demandLiquidAt(record, condition.massFraction, condition.temperature, 'temperature');
  return indexOf(demandRefractive(record), condition.massFraction, condition.temperature) as Ratio;
}

/** A fluid with the specific refractions of its parts [m3/kg]. */
export interface RefractiveFluid {
  readonly record: FluidRecord;
  readonly antifreeze: number;
  readonly water: number;
}

/**
 * The refractions of a fluid's parts.
 *
 * @param record - the fluid
 * @returns it, with the specific refraction of antifreeze and water
 * @throws InputError when its pure index is not known
 */
export function demandRefractive(record: FluidRecord): RefractiveFluid {
  const { name, pureDensity } = record;
  const [pure, water] = [REFRACTIVE_INDICES[name], REFRACTIVE_INDICES.water];
  if (pure !== undefined && water !== undefined)
    return { record, antifreeze: refraction(pure) / pureDensity, water: refraction(water) / WATER.pureDensity };
  throw new InputError({ code: 'impossible', argument: 'fluid', value: name, allowed: Object.keys(REFRACTIVE_INDICES).join(', ') });
}

/**
 * Refractive index of a mixture.
 *
 * @param fluid - with the refractions of its parts
 * @param massFraction - of antifreeze [kg/kg]
 * @param temperature - [degC]
 * @returns refractive index [1]
 */
export function indexOf({ record, antifreeze, water }: RefractiveFluid, massFraction: number, temperature: number): number {
  const sum = densityOf(record, massFraction, temperature) * (massFraction * antifreeze + (1 - massFraction) * water);
  return Math.sqrt((1 + 2 * sum) / (1 - sum));
}

const refraction = (index: number): number => (index ** 2 - 1) / (index ** 2 + 2);
