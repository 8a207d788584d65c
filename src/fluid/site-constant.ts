import type { HeatCapacity, Ratio, Shape } from '../units/index.js';
import type { OfAnyFluid } from './fluids.js';
import { fluidProperties, type FluidCondition } from './properties.js';

/** What to multiply a flow and a temperature difference by, in the units of the meter at hand. */
export interface SiteConstant {
  /** Heat per flow and kelvin: density times specific heat [J/(m3.K)]. */
  readonly heatCapacity: HeatCapacity;
  /** Kilowatts per litre per second and kelvin [kW.s/(L.K)]. */
  readonly kilowattsPerLitrePerSecond: Ratio;
  /** Watts per litre per minute and kelvin [W.min/(L.K)]. */
  readonly wattsPerLitrePerMinute: Ratio;
  /** Btu per hour per US gallon per minute and degree Fahrenheit [Btu/(h.gpm.degF)]. */
  readonly btuPerGallonPerMinute: Ratio;
}

/** Shape of {@link SiteConstant}. */
export const siteConstantShape: Shape<SiteConstant> = {
  heatCapacity: 'heat capacity',
  kilowattsPerLitrePerSecond: 'ratio',
  wattsPerLitrePerMinute: 'ratio',
  btuPerGallonPerMinute: 'ratio',
};

/** One Btu per hour, gallon per minute and degree Fahrenheit [J/(m3.K)]: 1055.05585262 · 1.8 / 3600 over 0.003785411784 / 60. */
const BTU_PER_GALLON_PER_MINUTE = 8_361.488098173048;

/**
 * The constant of the site check: heat = constant × flow × temperature difference.
 *
 * On site the trade takes 500 for water and 485 for antifreeze, in Btu/h per gallon per minute and degree Fahrenheit, whatever was
 * filled. The number is the density times the specific heat of the fluid really in the loop, at the temperature where the flow is
 * metered. Glycol brings it down by its lower specific heat, not by its density, which is greater than that of water.
 *
 * @param condition - fluid, mass fraction of antifreeze [kg/kg], temperature at the flow meter [degC]
 * @returns the constant, in the units of meters
 * @throws InputError as {@link fluidProperties} does
 * @remarks
 * Checked against the 500 (water) and 485 (antifreeze) of the trade within what they round. Good to the 2 % of the specific heat.
 *
 * Invariant: the four numbers are one quantity.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent } = await import('../units/index.js');
 * const { btuPerGallonPerMinute } = siteConstant({ fluid: 'propylene-glycol', massFraction: massPercent(25), temperature: celsius(0) });
 * expect(btuPerGallonPerMinute).toBeCloseTo(475, 0);
 * ```
 */
export function siteConstant(condition: OfAnyFluid<FluidCondition>): SiteConstant {
  const { density, specificHeat } = fluidProperties(condition);
  const heatCapacity = density * specificHeat;
  return {
    heatCapacity,
    kilowattsPerLitrePerSecond: heatCapacity / 1e6,
    wattsPerLitrePerMinute: heatCapacity / 60_000,
    btuPerGallonPerMinute: heatCapacity / BTU_PER_GALLON_PER_MINUTE,
  } as SiteConstant;
}
