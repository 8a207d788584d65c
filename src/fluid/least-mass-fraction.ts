import { demand, demandChoice } from '../errors/index.js';
import type { MassFraction, Temperature } from '../units/index.js';
import type { FluidRecord } from './fluid-record.js';
import { freezingPoint } from './freezing.js';
import { invertIncreasing } from './invert.js';
import { warmestFreezingPoint } from './warmest-freezing-point.js';

/** Whose freezing point must reach the protection temperature: that of the fit, or of the warmest of the sources compared. */
export type FreezingRule = 'fit' | 'warmest source';

/**
 * Least mass fraction that is free of ice down to a temperature; 0 where water would do, whatever a fit says of its freezing point.
 *
 * @param record - the fluid
 * @param protectTo - freezing point to reach [degC]
 * @param freezingRule - whose freezing point that is
 * @returns mass fraction [kg/kg]
 * @throws InputError when the rule is unknown or the temperature is not one the fluid can protect to
 */
export function leastMassFraction(record: FluidRecord, protectTo: Temperature, freezingRule: FreezingRule): MassFraction {
  demandChoice('freezingRule', freezingRule, ['fit', 'warmest source']);
  const { name, highestMassFraction, highestTemperature } = record;
  const freezingBy = freezingRule === 'fit' ? freezingPoint : warmestFreezingPoint;
  const freezing = (share: number): number => freezingBy({ fluid: record, massFraction: share as MassFraction });
  const coldest = freezing(highestMassFraction);
  const hint = `${name} cannot protect below ${coldest.toFixed(1)} degC`;
  demand('protectTo', 'temperature', protectTo, { atLeast: coldest, atMost: highestTemperature }, hint);
  if (protectTo >= Math.min(0, freezing(0))) return 0 as MassFraction;
  return invertIncreasing((share) => -freezing(share), -protectTo, 0, highestMassFraction) as MassFraction;
}
