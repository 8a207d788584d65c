import { MONTH_DAYS } from '../states/index.js';
import type { DayOfYear } from '../units/index.js';

/** An hour as a row of a weather file names it; hour 1 is from 00:00 to 01:00. */
export interface CalendarHour {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
}

/** Hours of a year with 29 February, which every row is placed in. */
export const LEAP_HOURS = 8784;
/** Hours of a year without it. */
export const YEAR_HOURS = 8760;
/** Hours of a day. */
export const DAY_HOURS = 24;

/** Days of each month of a year with 29 February, January first. */
const LEAP_MONTH_DAYS: readonly number[] = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** Days before each of them. */
const LEAP_MONTH_STARTS: readonly number[] = [0, 31, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335];

/** The hour in which 29 February begins, from 0. */
export const LEAP_DAY = 1416;

/** Days of a month, 1 to 12, in a year with 29 February. */
export const daysOfMonth = (month: number): number => LEAP_MONTH_DAYS[month - 1] ?? 0;

/** Whether a year has a 29 February. */
export const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** The hour in a year with 29 February, from 0. */
export const placeOf = ({ month, day, hour }: Omit<CalendarHour, 'year'>): number =>
  DAY_HOURS * ((LEAP_MONTH_STARTS[month - 1] ?? 0) + day - 1) + hour - 1;

/** The day of a year of 365 days that an hour is in; 29 February is the day after the 28th, as 1 March is. */
export function dayOfPlace(place: number): DayOfYear {
  const day = Math.floor(place / DAY_HOURS);
  return (1 + (place < LEAP_DAY + DAY_HOURS ? day : day - 1)) as DayOfYear;
}

/** The hour after another, the year going round; 29 February is passed over unless it is what comes. */
export function placeAfter(place: number, coming: number): number {
  const next = (place + 1) % LEAP_HOURS;
  return next === LEAP_DAY && coming !== next ? next + DAY_HOURS : next;
}

/** A place in the year in words, for a message. */
export function placeInWords(place: number): string {
  const day = Math.floor(place / DAY_HOURS);
  const month = LEAP_MONTH_STARTS.findLastIndex((start) => start <= day);
  return `month ${month + 1}, day ${day - (LEAP_MONTH_STARTS[month] ?? 0) + 1}, hour ${(place % DAY_HOURS) + 1}`;
}

/** The hours of each month of a year of weather, January first. */
export function monthSpans(leapDay: boolean): readonly { readonly from: number; readonly to: number }[] {
  let end = 0;
  return (leapDay ? LEAP_MONTH_DAYS : MONTH_DAYS).map((days) => {
    const from = end;
    end += DAY_HOURS * days;
    return { from, to: end };
  });
}
