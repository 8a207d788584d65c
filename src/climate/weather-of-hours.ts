import { demand, InputError } from '../errors/index.js';
import type { Temperature, TemperatureDifference, Time } from '../units/index.js';
import { courseThroughMonths, HOURS, hourShare, monthHours } from './synthetic-weather-year-course.js';
import type { DailySwing } from './synthetic-weather-year-input.js';
import { deviationOf, meanOf } from './synthetic-weather-year-spread.js';

/** Of the room that a month leaves to the daily swing, what is taken [1]. */
const ROOM_USED = 0.98;

/** What a year of hours tells for a made or a design year. */
export interface WeatherOfHours {
  /** Mean of each month's hours, January first [degC]. */
  readonly monthlyMeans: readonly Temperature[];
  /** Standard deviation of each month's hours about its mean [K]. */
  readonly spread: readonly TemperatureDifference[];
  /** The mean day of the year as a cosine, smaller where a month's hours spread less than its course with that swing. */
  readonly dailySwing: DailySwing;
}

/**
 * Monthly means, spread and mean day of a year of hours, as {@link designWinter} and {@link syntheticWeatherYear} take them.
 *
 * @param temperatures - mean air temperature of each of 8760 hours from 1 January 00:00 on, such as a weather file's, each −95 to 65 [degC]
 * @returns months, spread and daily swing
 * @throws InputError for another number of hours, or one that no weather has
 * @remarks
 * Source: `common practice`. Checked against the monthly means of four public weather files.
 *
 * Invariants: a made year without spells gives back the months and the spread that it was made with; a shift of the hours shifts the means alone.
 * @example
 * ```ts @import.meta.vitest
 * const year = Float64Array.from({ length: 8760 }, (_, hour) => 10 + 4 * Math.cos((2 * Math.PI * (hour + 0.5 - 15)) / 24));
 * const { monthlyMeans, spread, dailySwing } = weatherOfHours(year);
 * expect(monthlyMeans[6]).toBeCloseTo(10, 9);
 * expect(spread[6]).toBeCloseTo(4 / Math.SQRT2, 9);
 * expect(dailySwing.warmestHour).toBeCloseTo(15 * 3600, 6);
 * ```
 */
export function weatherOfHours(temperatures: Float64Array | readonly number[]): WeatherOfHours {
  const hours = demandHours(temperatures);
  const months = monthHours().map(({ start, hours: length }) => hours.subarray(start, start + length));
  let [cosine, sine] = [0, 0];
  for (const [hour, temperature] of hours.entries()) {
    const angle = (2 * Math.PI * ((hour % 24) + 0.5)) / 24;
    cosine += (2 * temperature * Math.cos(angle)) / HOURS;
    sine += (2 * temperature * Math.sin(angle)) / HOURS;
  }
  const monthlyMeans = months.map((month) => meanOf(month) as Temperature);
  const spread = months.map((month) => deviationOf(month) as TemperatureDifference);
  return {
    monthlyMeans,
    spread,
    dailySwing: {
      amplitude: Math.min(Math.hypot(cosine, sine) / hourShare(24), mostSwing(monthlyMeans, spread)) as TemperatureDifference,
      warmestHour: (3600 * (((Math.atan2(sine, cosine) / (2 * Math.PI)) * 24 + 24) % 24)) as Time,
    },
  };
}

/** The swing that course and day have room for within the spread of every month, less what they may have in common. */
function mostSwing(monthlyMeans: readonly Temperature[], spread: readonly TemperatureDifference[]): number {
  const course = courseThroughMonths(monthlyMeans);
  const rooms = monthHours().map(({ start, hours }, month) => (spread[month] ?? 0) ** 2 - deviationOf(course.subarray(start, start + hours)) ** 2);
  return ROOM_USED * Math.sqrt(2 * Math.max(0, Math.min(...rooms)));
}

function demandHours(temperatures: Float64Array | readonly number[]): Float64Array {
  const given = temperatures instanceof Float64Array || Array.isArray(temperatures) ? temperatures.length : undefined;
  if (given !== HOURS) {
    throw new InputError({
      code: given === undefined ? 'wrong-type' : given < HOURS ? 'too-few' : 'too-many',
      argument: 'temperatures',
      value: given === undefined ? undefined : { kind: 'count', value: given },
      allowed: `a list of ${String(HOURS)} temperatures, one for every hour from 1 January 00:00 on`,
      hint: 'leave 29 February out',
    });
  }
  const hours = Float64Array.from(temperatures);
  hours.forEach((each, hour) => demand(`temperatures.${String(hour)}`, 'temperature', each, { atLeast: -95, atMost: 65 }));
  return hours;
}
