import type { Temperature } from '../units/index.js';
import type { SeasonMeans } from './season-means.js';

const YEAR_DAYS = 365;

/** A row of days of a year, and where it lies. */
export interface HardestDays {
  /** Mean of the row [degC]. */
  readonly mean: number;
  /** First day of the row, 0 to 364. */
  readonly first: number;
}

/** Means of the days of a year of hours. */
export function dailyMeans(temperatures: Float64Array): Float64Array {
  const days = new Float64Array(temperatures.length / 24);
  for (const [hour, temperature] of temperatures.entries()) {
    const day = Math.floor(hour / 24);
    days[day] = (days[day] ?? 0) + temperature / 24;
  }
  return days;
}

/** The coldest, or with a sign of 1 the hottest, days in a row; of a whole year also around its end, where it meets itself. */
export function hardestDays(days: Float64Array, length: number, sign: -1 | 1): HardestDays {
  const at = (day: number): number => days[day % days.length] ?? 0;
  let sum = 0;
  for (let day = 0; day < length; day += 1) sum += at(day);
  let hardest = { mean: sum / length, first: 0 };
  const last = days.length === YEAR_DAYS ? days.length - 1 : days.length - length;
  for (let first = 1; first <= last; first += 1) {
    sum += at(first + length - 1) - at(first - 1);
    if (sign * sum > sign * hardest.mean * length) hardest = { mean: sum / length, first };
  }
  return hardest;
}

/** The hardest five, thirty and ninety days of a year of hours. */
export function seasonOfHours(temperatures: Float64Array, sign: -1 | 1): SeasonMeans {
  const days = dailyMeans(temperatures);
  const hardest = (length: number): Temperature => hardestDays(days, length, sign).mean as Temperature;
  return { fiveDays: hardest(5), thirtyDays: hardest(30), ninetyDays: hardest(90) };
}
