import { demand, InputError } from '../errors/index.js';
import type { MassFraction, Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import type { FluidName, FluidUse } from './fluid-record.js';
import { type AnyFluid, demandFluid, demandFluidChoice, FLUID_RECORD_NAMES, type FluidChoice, type OfAnyFluid } from './fluids.js';
import { HAZARDS } from './hazards.data.js';

/** What an antifreeze can do to people, water and ground. */
export interface FluidHazards {
  /** The fluid. */
  readonly fluid: FluidName;
  /** Whether it may go into a house's loop without asking. */
  readonly use: FluidUse;
  /** Flash point of the concentrate, closed cup, the lowest stated; absent where it does not burn [degC]. */
  readonly concentrateFlashPoint?: Temperature;
  /** Least mass fraction of which `mixtureFlashPoint` has a flash point; absent where no mixture is known to burn [kg/kg]. */
  readonly flashPointsFrom?: MassFraction;
  /** Greatest such mass fraction [kg/kg]. */
  readonly flashPointsTo?: MassFraction;
  /** Grams per kilogram of body that kill half of the rats by mouth; people die of far less methanol and ethylene glycol [g/kg]. */
  readonly ratOralDose: Ratio;
  /** Hazard statements of the concentrate, by their codes in the globally harmonised system; empty where it is not classified. */
  readonly hazardStatements: readonly string[];
  /** Oxygen that its decay takes out of ground water, mass per mass of antifreeze [kg/kg]. */
  readonly oxygenDemand: Ratio;
  /** German class of danger to water: 1 slight, 2 clear, 3 severe. */
  readonly waterHazardClass: number;
}

/** Shape of {@link FluidHazards}. */
export const fluidHazardsShape: Shape<FluidHazards> = {
  fluid: FLUID_RECORD_NAMES,
  use: ['house', 'check local code', 'written consent'],
  concentrateFlashPoint: { optional: 'temperature' },
  flashPointsFrom: { optional: 'mass fraction' },
  flashPointsTo: { optional: 'mass fraction' },
  ratOralDose: 'ratio',
  hazardStatements: { list: 'text' },
  oxygenDemand: 'ratio',
  waterHazardClass: 'count',
};

/**
 * Dangers of an antifreeze, by its concentrate.
 *
 * For comparing, not for work: before work stands the safety data sheet of the product, with its inhibitors and denaturants, and the
 * local code. Doses and statements are recalled from tables.
 *
 * @param fluid - the antifreeze, by name or record
 * @returns its dangers
 * @throws InputError when the fluid is unknown or plain water
 * @remarks Source: `fluidHazardTables`, `solutionFlashPoints`, `waterHazardSheet`. Checked: oxygen demand against the formulas.
 * @example
 * ```ts @import.meta.vitest
 * const { METHANOL } = await import('./methanol.data.js');
 * expect(fluidHazards(METHANOL).hazardStatements).toContain('H301');
 * expect(fluidHazards('propylene-glycol').hazardStatements).toEqual([]);
 * ```
 */
export function fluidHazards(fluid: AnyFluid): FluidHazards {
  const { name, use } = demandFluid(fluid);
  if (name === 'water') throw new InputError({ code: 'impossible', argument: 'fluid', value: name, allowed: 'an antifreeze' });
  const { pureFlashPoint, flashPoints = [], ratOralDose, statements, oxygenDemand, waterHazardClass } = HAZARDS[name];
  const [first, last] = [flashPoints[0], flashPoints.at(-1)];
  return {
    fluid: name,
    use,
    ...(pureFlashPoint !== undefined && { concentrateFlashPoint: pureFlashPoint as Temperature }),
    ...(first !== undefined && last !== undefined && { flashPointsFrom: first[0] as MassFraction, flashPointsTo: last[0] as MassFraction }),
    ratOralDose: ratOralDose as Ratio,
    hazardStatements: [...statements],
    oxygenDemand: oxygenDemand as Ratio,
    waterHazardClass,
  };
}

/** The flash point of a mixture, and what class of liquid it makes. */
export interface MixtureFlashPoint {
  /** Closed-cup flash point [degC]. */
  readonly flashPoint: Temperature;
  /** How far it may be off, either way [K]. */
  readonly flashPointError: TemperatureDifference;
  /** Class of ignitable liquid by NFPA 30, at the lowest flash point within the error. */
  readonly liquidClass: 'IB' | 'IC' | 'II' | 'IIIA' | 'IIIB';
}

/** Shape of {@link MixtureFlashPoint}. */
export const mixtureFlashPointShape: Shape<MixtureFlashPoint> = {
  flashPoint: 'temperature',
  flashPointError: 'temperature difference',
  liquidClass: ['IB', 'IC', 'II', 'IIIA', 'IIIB'],
};

/**
 * Flash point of a mixture of alcohol and water.
 *
 * A loop of 15 to 20 % of alcohol has one near 40 °C: a flammable or combustible liquid by definition, though hard to light at the
 * temperatures of a loop. The concentrate is the hazard.
 *
 * @param choice - ethanol or methanol, and its mass fraction within the table [kg/kg]
 * @returns flash point, its error, and the class of NFPA 30 for the coldest it may be
 * @throws InputError for another fluid or a mass fraction outside the table
 * @remarks
 * Straight lines between the rows of `solutionFlashPoints` (ethanol, ± 4 K) and of a computation for methanol, which nobody measured
 * for this table (± 5 K). Classes: `nfpa30Classes`.
 *
 * Invariant: never rises with the share of alcohol.
 * @example
 * ```ts @import.meta.vitest
 * const { massPercent } = await import('../units/index.js');
 * const { ETHANOL } = await import('./ethanol.data.js');
 * expect(mixtureFlashPoint({ fluid: ETHANOL, massFraction: massPercent(20) })).toEqual({ flashPoint: 36, flashPointError: 4, liquidClass: 'IC' });
 * ```
 */
export function mixtureFlashPoint(choice: OfAnyFluid<FluidChoice>): MixtureFlashPoint {
  const { name } = demandFluidChoice(choice);
  const { flashPoints = [], flashPointError = 0 } = name === 'water' ? {} : HAZARDS[name];
  const [first, last] = [flashPoints[0], flashPoints.at(-1)];
  if (first === undefined || last === undefined) {
    throw new InputError({ code: 'impossible', argument: 'fluid', value: name, allowed: 'ethanol or methanol, whose mixtures have a table' });
  }
  const { massFraction } = choice;
  demand('massFraction', 'mass fraction', massFraction, { atLeast: first[0], atMost: last[0] }, 'the table of flash points ends there');
  let flashPoint: number = first[1];
  for (const [index, [x, t]] of flashPoints.entries()) {
    const [before, warmer] = flashPoints[index - 1] ?? [x, t];
    if (massFraction >= before && before < x) flashPoint = warmer + ((t - warmer) * (Math.min(massFraction, x) - before)) / (x - before);
  }
  return { flashPoint, flashPointError, liquidClass: liquidClass(flashPoint - flashPointError) } as MixtureFlashPoint;
}

/** Class of a liquid that boils at 37.8 °C or above. */
function liquidClass(flashPoint: number): MixtureFlashPoint['liquidClass'] {
  if (flashPoint < 22.8) return 'IB';
  if (flashPoint < 37.8) return 'IC';
  if (flashPoint < 60) return 'II';
  return flashPoint < 93 ? 'IIIA' : 'IIIB';
}
