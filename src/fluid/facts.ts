import type { Density, Fraction, MassFraction, Shape, Temperature, TemperatureDifference, VolumeFraction } from '../units/index.js';
import type { FluidName, FluidUse } from './fluid-record.js';
import { type AnyFluid, demandFluid, FLUID_RECORD_NAMES } from './fluids.js';

/** What is known of a fluid whatever its concentration. */
export interface FluidFacts {
  /** The fluid. */
  readonly fluid: FluidName;
  /** Whether it may go into a house's loop without asking. */
  readonly use: FluidUse;
  /** Greatest mass fraction that can be computed [kg/kg]. */
  readonly highestMassFraction: MassFraction;
  /** Highest temperature that can be computed [degC]. */
  readonly highestTemperature: Temperature;
  /** Density of the undiluted antifreeze at 20 °C; 0 for a salt, which is dosed by mass [kg/m3]. */
  readonly pureDensity: Density;
  /** Least volume share at which inhibitors work and nothing grows; 0 where no such floor is known, and weak mixtures may still feed growth [m3/m3]. */
  readonly inhibitorFloor: VolumeFraction;
  /** How far the computed properties may lie from those of the fluid bought. */
  readonly uncertainty: {
    /** Freezing point [K]. */
    readonly freezingPoint: TemperatureDifference;
    /** Density, share of the value [1]. */
    readonly density: Fraction;
    /** Specific heat, share of the value [1]. */
    readonly specificHeat: Fraction;
    /** Conductivity, share of the value [1]. */
    readonly conductivity: Fraction;
    /** Viscosity at 20 °C and above, share of the value; straight from there to the cold [1]. */
    readonly viscosity: Fraction;
    /** Viscosity below 5 °C, share of the value [1]. */
    readonly coldViscosity: Fraction;
  };
}

/** Shape of {@link FluidFacts}. */
export const fluidFactsShape: Shape<FluidFacts> = {
  fluid: FLUID_RECORD_NAMES,
  use: ['house', 'check local code', 'written consent'],
  highestMassFraction: 'mass fraction',
  highestTemperature: 'temperature',
  pureDensity: 'density',
  inhibitorFloor: 'volume fraction',
  uncertainty: {
    freezingPoint: 'temperature difference',
    density: 'fraction',
    specificHeat: 'fraction',
    conductivity: 'fraction',
    viscosity: 'fraction',
    coldViscosity: 'fraction',
  },
};

/**
 * Limits, inhibitor floor, permitted use and uncertainties of a fluid.
 *
 * @param fluid - the fluid, by name or record
 * @returns its facts
 * @throws InputError when the fluid is unknown
 * @remarks
 * Uncertainties are the scatter between `melinder2010`, `ashrae2001Coolants` and `lange1999` up to a mass fraction of 0.30; above it
 * the sources differ more (freezing of 50 % propylene glycol by 1.3 K, of 40 % ethylene glycol by 1.5 K). A handbook freezes ethanol up
 * to 1.1 K warmer than the fit and 0.1 K colder at most; see `warmestFreezingPoint`. Floors: `inhibitedGlycolSheets`.
 * @example
 * ```ts @import.meta.vitest
 * expect(fluidFacts('propylene-glycol').inhibitorFloor).toBe(0.25);
 * expect(fluidFacts('water').highestMassFraction).toBe(0);
 * ```
 */
export function fluidFacts(fluid: AnyFluid): FluidFacts {
  const { name, use, highestMassFraction, highestTemperature, pureDensity, inhibitorFloor, uncertainty } = demandFluid(fluid);
  return { fluid: name, use, highestMassFraction, highestTemperature, pureDensity, inhibitorFloor, uncertainty: { ...uncertainty } } as FluidFacts;
}
