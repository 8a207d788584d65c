import { InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Ratio, Shape, Temperature } from '../units/index.js';
import type { FluidRecord } from './fluid-record.js';
import { demandFluidChoice, type FluidChoice, fluidChoiceShape, type OfAnyFluid } from './fluids.js';
import { type SurfacePolynomial, surfacePolynomial } from './polynomial.js';
import { demandLiquidAt, type FluidCondition } from './properties.js';
import { densityOf } from './volume-share.js';

/**
 * Thermal expansion of a loop fluid, β = −(1/ρ) dρ/dt, at constant pressure.
 *
 * Water shrinks with warmth below 4 °C; glycols and alcohols expand the more of them there is. In a sealed loop of polyethylene the pipe
 * widens more than the fluid does, so that pressure there rises as the loop cools.
 *
 * @param condition - fluid, mass fraction of antifreeze [kg/kg], temperature [degC]
 * @returns expansion per kelvin, negative where the fluid shrinks with warmth [1/K]
 * @throws InputError as {@link fluidProperties} does, and for calcium chloride, whose density fit has an expansion of the wrong shape
 * @remarks Source: derivative of the density of `melinder2010` or `iapwsWater`. Checked against a table worked out from the same fits.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent } = await import('../units/index.js');
 * const glycol = { fluid: 'propylene-glycol', massFraction: massPercent(25), temperature: celsius(10) } as const;
 * expect(thermalExpansion(glycol)).toBeCloseTo(3.2e-4, 5);
 * ```
 */
export function thermalExpansion(condition: OfAnyFluid<FluidCondition>): Ratio {
  const { massFraction, temperature } = condition;
  const record = demandExpandable(condition);
  demandLiquidAt(record, massFraction, temperature, 'temperature');
  const slope = surfacePolynomial(derivative(record.density), massFraction - record.centreMassFraction, temperature - record.centreTemperature);
  return (-slope / densityOf(record, massFraction, temperature)) as Ratio;
}

/** A mixture that was measured at one temperature and runs at another. */
export interface FluidWarming extends FluidChoice {
  /** Temperature at which the volume is known [degC]. */
  readonly filledAt: Temperature;
  /** Temperature asked for [degC]. */
  readonly temperature: Temperature;
}

/** Shape of {@link FluidWarming}. */
export const fluidWarmingShape: Shape<FluidWarming> = /* @__PURE__ */ joinedShape(fluidChoiceShape, {
  filledAt: 'temperature',
  temperature: 'temperature',
});

/**
 * By what share of itself the volume of a fluid changes between two temperatures, free to expand.
 *
 * @param warming - fluid, mass fraction of antifreeze [kg/kg], temperature of the known volume and the one asked for [degC]
 * @returns volume asked for over volume known, less 1; negative where the fluid shrinks [1]
 * @throws InputError as {@link thermalExpansion} does at either temperature
 * @remarks Invariants: there and back is nothing; the logarithm of volume grows by the integral of {@link thermalExpansion}.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent } = await import('../units/index.js');
 * const glycol = { fluid: 'propylene-glycol', massFraction: massPercent(25) } as const;
 * expect(100 * volumeChange({ ...glycol, filledAt: celsius(15), temperature: celsius(30) })).toBeCloseTo(0.62, 2);
 * ```
 */
export function volumeChange(warming: OfAnyFluid<FluidWarming>): Ratio {
  const { massFraction, filledAt, temperature } = warming;
  const record = demandExpandable(warming);
  demandLiquidAt(record, massFraction, filledAt, 'filledAt');
  demandLiquidAt(record, massFraction, temperature, 'temperature');
  return (densityOf(record, massFraction, filledAt) / densityOf(record, massFraction, temperature) - 1) as Ratio;
}

function demandExpandable(choice: OfAnyFluid<FluidChoice>): FluidRecord {
  const record = demandFluidChoice(choice);
  if (record.name !== 'calcium-chloride') return record;
  const hint = 'the cubic term of its density in temperature gives the expansion a wrong shape';
  throw new InputError({
    code: 'impossible',
    argument: 'fluid',
    value: record.name,
    allowed: 'a fluid whose density fit has a slope to trust',
    hint,
  });
}

/** The polynomial of the slope in the second variable. */
function derivative(surface: SurfacePolynomial): SurfacePolynomial {
  return surface.map((row) => row.slice(1).map((coefficient, power) => coefficient * (power + 1)));
}
