import type { Temperature, TemperatureDifference } from './quantities.js';

/**
 * Difference of two temperatures.
 *
 * Two temperatures are points on a scale; what lies between them is another kind of quantity, and 18 °F of difference
 * is 10 K while a temperature of 18 °F is −7.8 °C.
 *
 * @param warmer - the temperature counted from [degC]
 * @param colder - the temperature subtracted [degC]
 * @returns warmer − colder [K]
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('./units.data.js');
 * expect(temperatureDifference(celsius(7), celsius(-1))).toBe(8);
 * ```
 */
export function temperatureDifference(warmer: Temperature, colder: Temperature): TemperatureDifference {
  return (warmer - colder) as TemperatureDifference;
}
