import { demand, InputError } from '../errors/index.js';
import type { MassFraction, VolumeFraction } from '../units/index.js';
import type { FluidRecord } from './fluid-record.js';
import { type AnyFluid, type Fluid, type FluidChoice, demandFluid, demandFluidChoice, type OfAnyFluid } from './fluids.js';
import { invertIncreasing } from './invert.js';
import { surfacePolynomial } from './polynomial.js';

/** Temperature at which volume shares are counted [degC]. */
const MEASURING_TEMPERATURE = 20;

/**
 * Volume share of antifreeze in a finished solution.
 *
 * Litres of pure antifreeze at 20 °C per litre of finished solution at 20 °C. Glycol and water contract when mixed, so this is a
 * little more than litres of antifreeze over the sum of the litres poured together.
 *
 * @param choice - fluid and mass fraction of antifreeze [kg/kg]
 * @returns volume fraction [m3/m3]
 * @throws InputError when the fluid is unknown, a salt, or the mass fraction outside its fits
 * @remarks
 * φ = x ρ(x, 20 °C) / ρ of the pure antifreeze at 20 °C. Source: `melinder2010` for the solution. Checked against the mass-to-volume
 * column of `ashrae2001Coolants` within 0.4 % by volume.
 * @example
 * ```ts @import.meta.vitest
 * const { massPercent, volumePercent } = await import('../units/index.js');
 * const share = volumeFromMassFraction({ fluid: 'propylene-glycol', massFraction: massPercent(30) });
 * expect(volumePercent.of(share)).toBeCloseTo(29.6, 1);
 * ```
 */
export function volumeFromMassFraction(choice: OfAnyFluid<FluidChoice>): VolumeFraction {
  demandLiquid(choice.fluid);
  return volumeShare(demandFluidChoice(choice), choice.massFraction) as VolumeFraction;
}

/** A fluid and the volume share of antifreeze in it. */
export interface FluidByVolume {
  /** The fluid. */
  readonly fluid: Fluid;
  /** Volume of pure antifreeze per volume of finished solution, both at 20 °C [m3/m3]. */
  readonly volumeFraction: VolumeFraction;
}

/**
 * Mass share of antifreeze in a finished solution whose volume share is known; the inverse of {@link volumeFromMassFraction}.
 *
 * @param mixture - fluid and volume fraction of antifreeze at 20 °C [m3/m3]
 * @returns mass fraction [kg/kg]
 * @throws InputError when the fluid is unknown, a salt, or the volume fraction outside its fits
 * @example
 * ```ts @import.meta.vitest
 * const { massPercent, volumePercent } = await import('../units/index.js');
 * const share = massFromVolumeFraction({ fluid: 'propylene-glycol', volumeFraction: volumePercent(25) });
 * expect(massPercent.of(share)).toBeCloseTo(25.4, 1);
 * ```
 */
export function massFromVolumeFraction({ fluid, volumeFraction }: OfAnyFluid<FluidByVolume>): MassFraction {
  const record = demandLiquid(fluid);
  const { name, highestMassFraction } = record;
  const greatest = volumeShare(record, highestMassFraction);
  demand('volumeFraction', 'volume fraction', volumeFraction, { atLeast: 0, atMost: greatest }, `the fits of ${name} end there`);
  return invertIncreasing((share) => volumeShare(record, share), volumeFraction, 0, highestMassFraction) as MassFraction;
}

/**
 * The record of a fluid whose antifreeze is poured by the litre.
 *
 * @param fluid - its name, or the record itself
 * @returns what the room knows of it
 * @throws InputError when the fluid is unknown or its antifreeze is a salt
 */
export function demandLiquid(fluid: AnyFluid): FluidRecord {
  const record = demandFluid(fluid);
  if (record.pureDensity > 0) return record;
  const hint = 'a salt is dosed by mass; see massFractionForFreezingPoint';
  throw new InputError({ code: 'impossible', argument: 'fluid', value: record.name, allowed: 'an antifreeze that is a liquid', hint });
}

/** Density of a solution, at the temperature at which volumes are counted when no other is given [kg/m3]. */
export function densityOf(record: FluidRecord, massFraction: number, temperature: number = MEASURING_TEMPERATURE): number {
  return surfacePolynomial(record.density, massFraction - record.centreMassFraction, temperature - record.centreTemperature);
}

function volumeShare(record: FluidRecord, massFraction: number): number {
  return (massFraction * densityOf(record, massFraction)) / record.pureDensity;
}
