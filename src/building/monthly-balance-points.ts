import { demand, demandCount } from '../errors/index.js';
import type { Conductance, Fraction, Power, Shape, Temperature } from '../units/index.js';
import { demandOwnSlope } from './checks.js';
import { type EnergySignature, energySignatureShape } from './signature.js';

/** What {@link monthlyBalancePoints} needs. */
export interface MonthlyGainsInput {
  /** The building in heating, with gains as offset. Its slope and indoor temperature are used; its own balance point is not. */
  readonly signature: EnergySignature;
  /** Heat of people and appliances on the mean, 0 to 1e9 [W]. */
  readonly internalGains: Power;
  /** Sun through the windows on the mean of each month, January first, each 0 to 1e9 [W]. */
  readonly solarGains: readonly Power[];
  /** Share of the gains that replaces heating: what comes when or where it is not wanted is let out. 1 of an even trickle, 0.7 to 0.95 common, 0 to 1 [1]. */
  readonly useFraction: Fraction;
}

/** Gains and balance point of one month. */
export interface MonthBalance {
  /** The month, 1 to 12. */
  readonly month: number;
  /** Gains that replace heating, on the mean of the month [W]. */
  readonly usedGains: Power;
  /** Outdoor temperature at which heating begins [degC]. */
  readonly balancePoint: Temperature;
  /** Load per kelvin below it [W/K]. */
  readonly slope: Conductance;
}

/** Shape of {@link MonthlyGainsInput}. */
export const monthlyGainsInputShape: Shape<MonthlyGainsInput> = {
  signature: energySignatureShape,
  internalGains: 'power',
  solarGains: { list: 'power' },
  useFraction: 'fraction',
};

/** Shape of {@link MonthBalance}. */
export const monthBalanceShape: Shape<MonthBalance> = { month: 'count', usedGains: 'power', balancePoint: 'temperature', slope: 'conductance' };

/**
 * Balance point of each month from the gains of that month.
 *
 * One balance point for the year is a mean: in March and October the sun lowers it, in December it lies higher. Degree days of each month on its own base, times the slope, are the heat of the
 * month.
 *
 * @param input - line of the building, gains [W], and the share of them that is of use
 * @returns gains used [W] and balance point [degC] of each month, January first
 * @throws InputError when a number is impossible, or the line is not one of heating with gains as offset
 * @remarks
 * θbal = θi − used gains/K. Gains are not clipped at the load of the month: hours above the balance point need no heat, and degree days leave them out. Source: `ashraeEnergyEstimating`.
 *
 * Invariants: no gains put the balance point at the indoor temperature; more gains lower it in proportion.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, fraction, kilowatts, watts } = await import('../units/index.js');
 * const { energySignature } = await import('./signature.js');
 * const house = { designLoad: kilowatts(8), designOutdoor: celsius(-20), indoor: celsius(20), balancePoint: celsius(16) };
 * const signature = energySignature({ mode: 'heating', form: 'gains as offset', ...house });
 * const solarGains = [300, 500, 700, 800, 900, 1000, 1000, 900, 800, 600, 300, 200].map((gain) => watts(gain));
 * const [january] = monthlyBalancePoints({ signature, internalGains: watts(400), solarGains, useFraction: fraction(0.9) });
 * expect(january?.balancePoint).toBeCloseTo(20 - (0.9 * 700) / 200, 9);
 * ```
 */
export function monthlyBalancePoints({ signature, internalGains, solarGains, useFraction }: MonthlyGainsInput): readonly MonthBalance[] {
  demandOwnSlope(signature);
  demand('internalGains', 'power', internalGains, { atLeast: 0, atMost: 1e9 });
  demandCount('solarGains', solarGains, 12, 12);
  demand('useFraction', 'fraction', useFraction, { atLeast: 0, atMost: 1 });
  const { slope, balancePoint, gainsTakenOff } = signature;
  const indoor = balancePoint + gainsTakenOff / slope;
  return solarGains.map((solar, index) => {
    demand(`solarGains.${String(index)}`, 'power', solar, { atLeast: 0, atMost: 1e9 });
    const usedGains = useFraction * (internalGains + solar);
    return { month: index + 1, usedGains: usedGains as Power, balancePoint: (indoor - usedGains / slope) as Temperature, slope };
  });
}
