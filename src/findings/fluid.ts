import type { DynamicViscosity, Fraction, MassFraction, Shape, Temperature, TemperatureDifference, VolumeFraction } from '../units/index.js';

/** Values of the findings that the fluid room raises, by code. */
export interface FluidFindingValues {
  /** An antifreeze solution in the cold, where the sources of viscosity differ. */
  'viscosity-uncertain-in-cold': { readonly temperature: Temperature; readonly viscosity: DynamicViscosity; readonly uncertainty: Fraction };
  /** Less antifreeze than its inhibitors need. */
  'antifreeze-below-inhibitor-floor': { readonly volumeFraction: VolumeFraction; readonly floor: VolumeFraction };
  /** By one of the sources of freezing points a mixture freezes above the temperature it is to protect to. */
  'protection-short-by-a-source': {
    readonly protectTo: Temperature;
    readonly warmestFreezingPoint: Temperature;
    readonly above: TemperatureDifference;
  };
  /** An antifreeze that may not go into just any house. */
  'antifreeze-needs-permission': { readonly massFraction: MassFraction; readonly permission: 'check local code' | 'written consent' };
}

/** Shapes of {@link FluidFindingValues}. */
export const fluidFindingShapes: { readonly [C in keyof FluidFindingValues]: Shape<FluidFindingValues[C]> } = {
  'viscosity-uncertain-in-cold': { temperature: 'temperature', viscosity: 'dynamic viscosity', uncertainty: 'fraction' },
  'antifreeze-below-inhibitor-floor': { volumeFraction: 'volume fraction', floor: 'volume fraction' },
  'protection-short-by-a-source': { protectTo: 'temperature', warmestFreezingPoint: 'temperature', above: 'temperature difference' },
  'antifreeze-needs-permission': { massFraction: 'mass fraction', permission: ['check local code', 'written consent'] },
};
