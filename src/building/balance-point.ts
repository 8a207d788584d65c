import { demand, InputError } from '../errors/index.js';
import type { Power, Shape, Temperature } from '../units/index.js';
import { INDOOR, LOAD, OUTDOOR } from './checks.js';
import type { EnergySignature } from './signature.js';

/** What {@link heatingBalancePoint} needs. */
export interface HeatingBalanceInput {
  /** Design heat loss without gains, 0.001 to 1e9 [W]. */
  readonly designLoad: Power;
  /** Outdoor temperature it is for [degC]. */
  readonly designOutdoor: Temperature;
  /** Indoor temperature it is for, at least 1 K above, 0 to 50 [degC]. */
  readonly indoor: Temperature;
  /** Heat of people, appliances and sun on the mean of the heating season, 0 up to the design load [W]. */
  readonly gains: Power;
}

/** Shape of {@link HeatingBalanceInput}. */
export const heatingBalanceInputShape: Shape<HeatingBalanceInput> = {
  designLoad: 'power',
  designOutdoor: 'temperature',
  indoor: 'temperature',
  gains: 'power',
};

/**
 * Outdoor temperature at which gains alone keep a building warm.
 *
 * @param input - design heat loss [W], temperatures [degC], mean gains [W]
 * @returns balance point [degC]
 * @throws InputError when a number is impossible, or gains would heat the building at design already
 * @remarks θbal = θi − gains/K, K = Φ/(θi − θe). Source: `ashraeEnergyEstimating`.
 * @example
 * ```ts @import.meta.vitest
 * const { btuPerHour, fahrenheit } = await import('../units/index.js');
 * const residence = { designLoad: btuPerHour(40_000), designOutdoor: fahrenheit(17), indoor: fahrenheit(70), gains: btuPerHour(4280) };
 * expect(fahrenheit.of(heatingBalancePoint(residence))).toBeCloseTo(64.329, 3);
 * ```
 */
export function heatingBalancePoint({ designLoad, designOutdoor, indoor, gains }: HeatingBalanceInput): Temperature {
  demand('designLoad', 'power', designLoad, LOAD);
  demand('designOutdoor', 'temperature', designOutdoor, { atLeast: OUTDOOR.atLeast, atMost: INDOOR.atMost - 1 });
  const range = { atLeast: Math.max(INDOOR.atLeast, designOutdoor + 1), atMost: INDOOR.atMost };
  demand('indoor', 'temperature', indoor, range, 'indoor and outdoor may be interchanged, or degF given as degC');
  demand('gains', 'power', gains, { atLeast: 0 });
  if (gains >= designLoad) {
    throw new InputError({
      code: 'impossible',
      argument: 'gains',
      value: { kind: 'power', value: gains },
      allowed: `below the design load, ${String(designLoad)} W`,
    });
  }
  return (indoor - (gains / designLoad) * (indoor - designOutdoor)) as Temperature;
}

/** Outdoor temperature at which the load of a building equals the capacity of its unit [degC]. */
export function capacityBalancePoint({ mode, slope, balancePoint }: EnergySignature, capacity: Power): Temperature {
  return (mode === 'heating' ? balancePoint - capacity / slope : balancePoint + capacity / slope) as Temperature;
}
