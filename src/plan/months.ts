import { MONTH_DAYS } from '../states/index.js';
import type { DayOfYear, RunFraction, Time } from '../units/index.js';

const DAY = 86_400;

/** A unit that runs less than this share of a month is taken to stand still in it. */
const STANDING_STILL = 0.01;

/** The end of a month, counted 1 to 12 [d]. */
export function monthEnd(month: number): DayOfYear {
  return (1 + MONTH_DAYS.slice(0, month).reduce((sum, days) => sum + days, 0)) as DayOfYear;
}

/** Length of a month, counted 1 to 12 [s]. */
export function monthTime(month: number): Time {
  return ((MONTH_DAYS[month - 1] ?? 30) * DAY) as Time;
}

/** The running season that leads up to a month: how long it has lasted, and the share of that time the unit ran. */
export interface SeasonBefore {
  readonly time: Time;
  readonly runFraction: RunFraction;
}

/**
 * The season before a month: the unbroken row of months in which the unit ran, back to at most eleven.
 *
 * @param runFractions - share of each of the twelve months that the unit runs
 * @param month - the design month, 1 to 12
 * @returns length of the season and the share of it the unit ran; a month of standing still where there is no season
 */
export function seasonBefore(runFractions: readonly RunFraction[], month: number): SeasonBefore {
  let time = 0;
  let running = 0;
  for (let back = 1; back <= 11; back += 1) {
    const earlier = ((month - 1 - back + 24) % 12) + 1;
    const fraction = runFractions[earlier - 1] ?? 0;
    if (fraction < STANDING_STILL) break;
    time += monthTime(earlier);
    running += fraction * monthTime(earlier);
  }
  const before = ((month + 10) % 12) + 1;
  return time === 0
    ? { time: monthTime(before), runFraction: 0 as RunFraction }
    : { time: time as Time, runFraction: (running / time) as RunFraction };
}

/**
 * The month in which the running season begins: the first that runs after one that does not.
 *
 * @param runFractions - share of each of the twelve months that the unit runs
 * @returns the month, 1 to 12; January for a unit that runs all year
 */
export function firstOfSeason(runFractions: readonly RunFraction[]): number {
  const stands = (index: number): boolean => (runFractions[(index + 12) % 12] ?? 0) < STANDING_STILL;
  const first = runFractions.findIndex((_, index) => !stands(index) && stands(index - 1));
  return first < 0 ? 1 : first + 1;
}

/**
 * The day on which a loop starts to work: the start of the first running season, heating before cooling.
 *
 * @param modes - the modes in which the unit runs
 * @returns the first day of that month [d]
 */
export function startOf(modes: readonly { readonly design: { readonly startMonth: number } }[]): DayOfYear {
  return monthEnd((modes[0]?.design.startMonth ?? 1) - 1);
}
