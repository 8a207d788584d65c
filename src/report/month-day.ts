const MONTHS: readonly (readonly [name: string, days: number])[] = [
  ['January', 31],
  ['February', 28],
  ['March', 31],
  ['April', 30],
  ['May', 31],
  ['June', 30],
  ['July', 31],
  ['August', 31],
  ['September', 30],
  ['October', 31],
  ['November', 30],
  ['December', 31],
];

/**
 * The date of a day of a year of 365 days.
 *
 * @param day - day of year [d], 1.0 is 1 January 00:00; days outside the year are taken around it
 * @returns day and month
 * @example
 * ```ts @import.meta.vitest
 * expect(monthDay(1)).toBe('1 January');
 * expect(monthDay(59.9)).toBe('28 February');
 * expect(monthDay(366)).toBe('1 January');
 * ```
 */
export function monthDay(day: number): string {
  let left = ((((Math.floor(day) - 1) % 365) + 365) % 365) + 1;
  for (const [name, days] of MONTHS) {
    if (left <= days) return `${String(left)} ${name}`;
    left -= days;
  }
  return '31 December';
}

/**
 * The name of a month.
 *
 * @param month - 1 to 12
 * @returns its name
 * @example
 * ```ts @import.meta.vitest
 * expect(monthName(2)).toBe('February');
 * ```
 */
export function monthName(month: number): string {
  return MONTHS[month - 1]?.[0] ?? '';
}
