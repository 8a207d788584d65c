import { demand } from '../errors/index.js';
import type { MassFraction, Temperature } from '../units/index.js';
import { type Fluid, type FluidChoice, demandFluid, demandFluidChoice, type OfAnyFluid } from './fluids.js';
import { invertIncreasing } from './invert.js';
import { polynomial } from './polynomial.js';

/**
 * Temperature at which the first ice forms in a loop fluid.
 *
 * Not the burst temperature: below the freezing point the fluid turns to slush, which stops a running loop at the evaporator long
 * before it breaks a pipe. At a mass fraction of 0 the fits miss the 0 °C of water: by
 * −0.047 K for ethanol to +0.014 K for methanol.
 *
 * @param choice - fluid and mass fraction of antifreeze [kg/kg]
 * @returns freezing point [degC]; trust it to the uncertainty in {@link fluidFacts}
 * @throws InputError when the fluid is unknown or the mass fraction outside its fits
 * @remarks
 * Source: `melinder2010`. Checked against `ashrae2001Coolants` and `lange1999` within their scatter.
 *
 * Invariants: falls with the mass fraction; {@link massFractionForFreezingPoint} inverts it.
 * @example
 * ```ts @import.meta.vitest
 * const { massPercent } = await import('../units/index.js');
 * expect(freezingPoint({ fluid: 'propylene-glycol', massFraction: massPercent(25) })).toBeCloseTo(-9.785, 3);
 * expect(freezingPoint({ fluid: 'water', massFraction: massPercent(0) })).toBe(0);
 * ```
 */
export function freezingPoint(choice: OfAnyFluid<FluidChoice>): Temperature {
  const record = demandFluidChoice(choice);
  return polynomial(record.freezingPoint, choice.massFraction - record.centreMassFraction) as Temperature;
}

/** A fluid and the freezing point wanted of it. */
export interface FreezingTarget {
  /** The fluid. */
  readonly fluid: Fluid;
  /** The freezing point wanted [degC]. */
  readonly freezingPoint: Temperature;
}

/**
 * Least mass fraction of antifreeze that brings the freezing point down to a temperature.
 *
 * A number to reason with, not one to order by: {@link antifreezeForProtection} proposes a mixture that can be bought.
 *
 * @param target - fluid and freezing point [degC]
 * @returns mass fraction of antifreeze in the finished solution [kg/kg]
 * @throws InputError when the fluid is unknown or no mass fraction of its fits freezes there
 * @remarks Inverts {@link freezingPoint} to the last digits; the result never freezes above the temperature asked for.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent } = await import('../units/index.js');
 * const share = massFractionForFreezingPoint({ fluid: 'propylene-glycol', freezingPoint: celsius(-9.6) });
 * expect(massPercent.of(share)).toBeCloseTo(24.7, 1);
 * ```
 */
export function massFractionForFreezingPoint({ fluid, freezingPoint }: OfAnyFluid<FreezingTarget>): MassFraction {
  const record = demandFluid(fluid);
  const freezing = (massFraction: number): number => polynomial(record.freezingPoint, massFraction - record.centreMassFraction);
  const { name, highestMassFraction } = record;
  const hint = `${name} freezes between these two`;
  demand('freezingPoint', 'temperature', freezingPoint, { atLeast: freezing(highestMassFraction), atMost: freezing(0) }, hint);
  return invertIncreasing((share) => -freezing(share), -freezingPoint, 0, highestMassFraction) as MassFraction;
}
