import type { FluidName } from './fluid-record.js';

/**
 * Refractive index of the undiluted liquids in the yellow light of sodium at 20 °C: handbook values, recalled. A name that is not here
 * has no index of which this library knows.
 */
export const REFRACTIVE_INDICES: Readonly<Partial<Record<FluidName, number>>> = {
  water: 1.33299,
  'ethylene-glycol': 1.4318,
  'propylene-glycol': 1.4324,
  methanol: 1.3288,
  ethanol: 1.3611,
  glycerol: 1.4746,
};
