import { demand, InputError } from '../errors/index.js';
import type { Temperature, TemperatureDifference } from '../units/index.js';

/** Whether the ground gives heat to the house or takes heat from it. */
export type LoadMode = 'heating' | 'cooling';

/** Least distance between ground and fluid that a length is computed for [K]; below it no thermometer tells them apart. */
const LEAST_MARGIN = 0.01;

/**
 * What the ground has in hand over the fluid: ground − fluid in heating, fluid − ground in cooling.
 *
 * @param mode - heating or cooling
 * @param ground - undisturbed ground at pipe depth, −50 to 60 [degC]
 * @param fluid - the fluid the loop is designed for, −60 to 100 [degC]
 * @param path - how the caller knows the ground temperature
 * @returns the margin, at least 0.01 [K]
 * @throws InputError `unreachable` when the fluid is to be as warm as the ground or warmer (as cold or colder in cooling)
 */
export function temperatureMargin(mode: LoadMode, ground: Temperature, fluid: Temperature, path: string): TemperatureDifference {
  demand(path, 'temperature', ground, { atLeast: -50, atMost: 60 });
  demand('fluidTemperature', 'temperature', fluid, { atLeast: -60, atMost: 100 });
  const margin = mode === 'heating' ? ground - fluid : fluid - ground;
  if (margin >= LEAST_MARGIN) return margin as TemperatureDifference;
  const [side, end, cover] = mode === 'heating' ? ['below', 'cold', 'lasting snow'] : ['above', 'warm', 'shade'];
  throw new InputError({
    code: 'unreachable',
    argument: 'fluidTemperature',
    value: { kind: 'temperature', value: fluid },
    allowed: `${side} the undisturbed ground (${String(Number(ground.toPrecision(6)))} degC) by at least ${String(LEAST_MARGIN)} K`,
    hint: `heat flows only from warm to cold, and the ground itself is too ${end} for this fluid at any length and load; bury deeper, count the cover that the surface has (${cover}), or move the fluid limit`,
  });
}
