import { demandChoice } from '../errors/index.js';
import type { ReferenceKey } from '../references/index.js';
import type { HeatingValueByVolume, Ratio, Shape } from '../units/index.js';
import { FUEL_RECORDS, type FuelName } from './fuels.data.js';

/** What a fuel holds. Its price and its emissions are no facts of nature and are given by the caller. */
export interface FuelFacts {
  /** Which fuel. */
  readonly fuel: FuelName;
  /** Higher heating value; of gas at 15.6 °C (60 °F) and 101.325 kPa [J/m3]. */
  readonly volumetricHeatingValue: HeatingValueByVolume;
  /** What the heating value counts. */
  readonly basis: 'higher';
  /** Lower over higher heating value, recalled and good to 0.01 [1]. */
  readonly lowerOverHigher: Ratio;
  /** Where the figures come from. */
  readonly sources: readonly ReferenceKey[];
}

const FUELS: readonly FuelName[] = ['fuel oil no. 1', 'fuel oil no. 2', 'kerosene', 'propane', 'liquefied petroleum gas', 'butane', 'natural gas'];

/** Shape of the numbers of {@link FuelFacts}. */
export const fuelFactsShape: Shape<Omit<FuelFacts, 'sources'>> = {
  fuel: FUELS,
  volumetricHeatingValue: 'heating value by volume',
  basis: ['higher'],
  lowerOverHigher: 'ratio',
};

/** A million Btu [J]. */
const MMBTU = 1_055_055_852.62;
/** A US gallon, and a cubic foot [m3]. */
const VOLUMES = { gallon: 0.003785411784, 'cubic foot': 0.028316846592 } as const;

/**
 * Heating value of a common fuel, a US default; the supplier's own figure is better.
 *
 * @param fuel - which fuel
 * @returns heating values [J/m3, 1]
 * @throws InputError for a fuel that is not in the table
 * @remarks Source: `cfr98TableC1`; lower over higher recalled, `ipcc2006`.
 * @example
 * ```ts @import.meta.vitest
 * const { kilowattHoursPerLitre } = await import('../units/index.js');
 * expect(kilowattHoursPerLitre.of(fuelFacts('fuel oil no. 2').volumetricHeatingValue)).toBeCloseTo(10.684, 3);
 * ```
 */
export function fuelFacts(fuel: FuelName): FuelFacts {
  demandChoice('fuel', fuel, FUELS);
  const { higher, per, lowerOverHigher } = FUEL_RECORDS[fuel];
  return {
    fuel,
    volumetricHeatingValue: ((higher * MMBTU) / VOLUMES[per]) as HeatingValueByVolume,
    basis: 'higher',
    lowerOverHigher: lowerOverHigher as Ratio,
    sources: ['cfr98TableC1', 'ipcc2006'],
  };
}
