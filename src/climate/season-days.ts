import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import type { DailyAir } from './season-means.js';

/** Days from a fixed day to one of the calendar. */
export function dayNumber(year: number, day: number): number {
  const before = year - 1;
  return 365 * before + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) + day;
}

/** Refuses days that cannot be, or are not in order; gives their numbers. */
export function demandDays(days: readonly DailyAir[]): readonly number[] {
  demandCount('days', days, 1);
  let before = -Infinity;
  return days.map((each, index) => {
    const at = `days.${String(index)}`;
    demandObject(at, each);
    demand(`${at}.year`, 'count', each.year, { atLeast: 1600, atMost: 2400 });
    demand(`${at}.day`, 'day of year', each.day, { atLeast: 1, atMost: 366 }, 'a whole day; 1 is 1 January');
    demand(`${at}.mean`, 'temperature', each.mean, { atLeast: -95, atMost: 65 }, 'degrees Celsius; leave a missing day out');
    const number = dayNumber(each.year, each.day);
    if (Number.isInteger(each.day) && number > before) {
      before = number;
      return number;
    }
    const value = { kind: 'day of year', value: each.day } as const;
    throw new InputError({ code: 'impossible', argument: `${at}.day`, value, allowed: 'a whole day after the one before it in the list' });
  });
}
