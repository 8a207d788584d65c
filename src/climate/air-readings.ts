import { demand, demandCount, InputError } from '../errors/index.js';
import type { Temperature, Time } from '../units/index.js';
import { DAY } from './limits.js';

/** Readings of the air at equal steps: hours of a weather file, or daily means. */
export interface AirReadings {
  /** Mean air temperature of each step, 1 to 1e6 of them, each −95 to 65 [degC]. */
  readonly temperatures: Float64Array | readonly Temperature[];
  /** Length of a step: a day, or a whole part of one down to a minute [s]. */
  readonly step: Time;
}

/** More steps than any study has, a year of minutes among them. */
const MOST_STEPS = 1e6;

/** Colder and warmer than any weather on record [degC]. */
const WEATHER = { atLeast: -95, atMost: 65 } as const;

/** Refuses readings that cannot be; returns how many make a day. */
export function demandReadings({ temperatures, step }: AirReadings): number {
  if (!(temperatures instanceof Float64Array)) demandCount('temperatures', temperatures, 1, MOST_STEPS);
  else demand('temperatures', 'count', temperatures.length, { atLeast: 1, atMost: MOST_STEPS });
  for (let index = 0; index < temperatures.length; index += 1) {
    const reading = temperatures[index] as Temperature;
    // Asked before the name of the place is made, which would cost more than the sum of a year.
    if (!(reading >= WEATHER.atLeast && reading <= WEATHER.atMost) || typeof reading !== 'number') {
      demand(`temperatures.${String(index)}`, 'temperature', reading, WEATHER, 'degrees Celsius; a gap must be filled first');
    }
  }
  demand('step', 'time', step, { atLeast: 60, atMost: DAY }, 'seconds; an hour is 3600, a day 86400');
  const perDay = Math.round(DAY / step);
  if (Math.abs(perDay * step - DAY) < 1e-6) return perDay;
  throw new InputError({ code: 'impossible', argument: 'step', value: { kind: 'time', value: step }, allowed: 'a day or a whole part of one' });
}

/** Refuses readings that end within a day. */
export function demandWholeDays({ temperatures }: AirReadings, perDay: number): void {
  if (temperatures.length % perDay === 0) return;
  throw new InputError({
    code: 'impossible',
    argument: 'temperatures',
    value: { kind: 'count', value: temperatures.length },
    allowed: `whole days, a multiple of ${String(perDay)}`,
  });
}

/** One value for each whole day. */
export function eachDay({ temperatures }: AirReadings, perDay: number, of: (day: Float64Array | readonly number[]) => number): readonly number[] {
  return Array.from({ length: temperatures.length / perDay }, (_, day) => of(temperatures.slice(day * perDay, (day + 1) * perDay)));
}

/** Mean of a list that is not empty. */
export function meanOfDay(day: Float64Array | readonly number[]): number {
  let sum = 0;
  for (const reading of day) sum += reading;
  return sum / day.length;
}
