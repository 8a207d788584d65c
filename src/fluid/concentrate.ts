import { demand, demandObject, InputError } from '../errors/index.js';
import type { Density, Shape, VolumeFraction } from '../units/index.js';
import type { FluidRecord } from './fluid-record.js';

/** The antifreeze as it comes in the drum. */
export interface Concentrate {
  /** Litres of pure antifreeze in a litre of concentrate, at 20 °C; some drums hold 65 % [m3/m3]. */
  readonly strength: VolumeFraction;
  /** Density at 20 °C, from its data sheet [kg/m3]. */
  readonly density: Density;
}

/** Shape of {@link Concentrate}. */
export const concentrateShape: Shape<Concentrate> = { strength: 'volume fraction', density: 'density' };

/**
 * What the drum holds.
 *
 * @param record - the antifreeze
 * @param given - its strength and density; undiluted when left out
 * @returns the same, with the mass of antifreeze in a cubic metre of it [kg/m3]
 * @throws InputError when a number is impossible, or the drum is lighter than the antifreeze in it
 */
export function demandConcentrate(record: FluidRecord, given?: Concentrate): Concentrate & { readonly antifreeze: number } {
  const { pureDensity } = record;
  if (given === undefined) return { strength: 1 as VolumeFraction, density: pureDensity as Density, antifreeze: pureDensity };
  demandObject('concentrate', given);
  const { strength, density } = given;
  demand('concentrate.strength', 'volume fraction', strength, { atLeast: 0.01, atMost: 1 });
  demand('concentrate.density', 'density', density, { above: 0, atMost: 2000 });
  const antifreeze = strength * pureDensity;
  if (density < antifreeze) throw refusedConcentrate('density', density, `at least ${antifreeze.toFixed(1)} kg/m3, the antifreeze in it alone`);
  return { strength, density, antifreeze };
}

/**
 * The refusal of a drum.
 *
 * @param field - what is wrong with it
 * @param value - the number given
 * @param allowed - what would have been accepted
 * @returns the error to throw
 */
export function refusedConcentrate(field: keyof Concentrate, value: number, allowed: string): InputError {
  const kind = field === 'strength' ? 'volume fraction' : 'density';
  return new InputError({ code: 'impossible', argument: `concentrate.${field}`, value: { kind, value }, allowed });
}
