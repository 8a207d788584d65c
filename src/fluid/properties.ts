import { demand, InputError } from '../errors/index.js';
import { type FluidState, joinedShape } from '../states/index.js';
import type { Shape, Temperature } from '../units/index.js';
import type { FluidRecord } from './fluid-record.js';
import { demandFluidChoice, fluidChoiceShape, type FluidChoice, type OfAnyFluid } from './fluids.js';
import { polynomial, surfacePolynomial } from './polynomial.js';

/** A fluid at a concentration and a temperature. */
export interface FluidCondition extends FluidChoice {
  /** Temperature of the fluid [degC]. */
  readonly temperature: Temperature;
}

/** Shape of {@link FluidCondition}. */
export const fluidConditionShape: Shape<FluidCondition> = /* @__PURE__ */ joinedShape(fluidChoiceShape, { temperature: 'temperature' });

/**
 * Density, viscosity, specific heat, conductivity and freezing point of a loop fluid.
 *
 * Liquid near atmospheric pressure, from its freezing point up to 60 °C (water), 100 °C (glycols, 0 to 60 % by mass) or 40 °C (others,
 * to the mass fraction in {@link fluidFacts}). Water and propylene glycol go by name; any fluid by its record, such as `ETHANOL`.
 * Pressure is ignored: 4 bar make water 0.015 % denser. Solutions are of pure antifreeze; inhibitors shift them by a few per cent.
 *
 * @param condition - fluid, mass fraction of antifreeze [kg/kg], temperature [degC]
 * @returns the state of the fluid
 * @throws InputError when the fluid is unknown, water is said to hold antifreeze, the mass fraction lies outside the fits, or the
 *   temperature below the freezing point (which the message names) or above the fits
 * @remarks
 * Source: `melinder2010` for solutions, P = Σ cₘₙ (x − x₀)ᵐ (t − t₀)ⁿ of density, specific heat, conductivity and the logarithm of
 * viscosity; `iapwsWater` for water. Checked against the library that carries the coefficients (1e-9), against handbook tables within
 * their scatter, and against IAPWS values. What the fits leave uncertain is in {@link fluidFacts}; it matters most for viscosity in
 * the cold.
 *
 * Invariants: viscosity falls with temperature; every property is positive and finite from the freezing point up.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent, millipascalSeconds } = await import('../units/index.js');
 * const brine = fluidProperties({ fluid: 'propylene-glycol', massFraction: massPercent(25), temperature: celsius(0) });
 * expect(millipascalSeconds.of(brine.viscosity)).toBeCloseTo(5.515, 3);
 * expect(() => fluidProperties({ fluid: 'propylene-glycol', massFraction: massPercent(25), temperature: celsius(-12) })).toThrow(
 *   'freezes at -9.8 degC',
 * );
 * ```
 */
export function fluidProperties(condition: OfAnyFluid<FluidCondition>): FluidState {
  const { massFraction, temperature } = condition;
  const record = demandFluidChoice(condition);
  const freezingPoint = demandLiquidAt(record, massFraction, temperature, 'temperature');
  const x = massFraction - record.centreMassFraction;
  const t = temperature - record.centreTemperature;
  return {
    temperature,
    massFraction,
    density: surfacePolynomial(record.density, x, t),
    viscosity: Math.exp(surfacePolynomial(record.logViscosity, x, t)) * 1e-3,
    specificHeat: surfacePolynomial(record.specificHeat, x, t),
    conductivity: surfacePolynomial(record.conductivity, x, t),
    freezingPoint,
  } as FluidState;
}

/**
 * Refuses a temperature at which a mixture is frozen or its fits have ended.
 *
 * @param record - the fluid
 * @param massFraction - a mass fraction that its fits cover [kg/kg]
 * @param temperature - the temperature [degC]
 * @param argument - the name the caller knows the temperature by
 * @returns freezing point of the mixture [degC]
 * @throws InputError that names the freezing point
 */
export function demandLiquidAt(record: FluidRecord, massFraction: number, temperature: number, argument: string): number {
  const freezingPoint = polynomial(record.freezingPoint, massFraction - record.centreMassFraction);
  demand(argument, 'temperature', temperature, { atMost: record.highestTemperature });
  if (temperature >= freezingPoint) return freezingPoint;
  const advice = record.name === 'water' ? '; choose an antifreeze' : '';
  throw new InputError({
    code: 'out-of-range',
    argument,
    value: { kind: 'temperature', value: temperature },
    allowed: `at least ${String(freezingPoint)} degC`,
    hint: `${record.name} with a mass fraction of ${massFraction.toFixed(3)} freezes at ${freezingPoint.toFixed(1)} degC${advice}`,
  });
}
