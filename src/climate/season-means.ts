import { demandChoice, InputError } from '../errors/index.js';
import type { DayOfYear, Shape, Temperature } from '../units/index.js';
import { dayNumber, demandDays } from './season-days.js';

/** The part of the year that a loop is designed for. */
export type Season = 'winter' | 'summer';

/** The seasons, for lists and shapes. */
export const SEASONS: readonly Season[] = ['winter', 'summer'];

/** Mean air temperature of one day. */
export interface DailyAir {
  /** Year of the calendar, 1600 to 2400. */
  readonly year: number;
  /** Day of that year, a whole number from 1 to 366; 1 is 1 January [d]. */
  readonly day: DayOfYear;
  /** Mean of the day, −95 to 65 [degC]. */
  readonly mean: Temperature;
}

/** What {@link seasonMeans} needs. */
export interface SeasonMeansInput {
  /** Whether cold winters or hot summers are looked for. */
  readonly season: Season;
  /** Daily means of several years in the order of time; days that were not recorded are left out. */
  readonly days: readonly DailyAir[];
}

/** Shape of {@link SeasonMeansInput}. */
export const seasonMeansInputShape: Shape<SeasonMeansInput> = {
  season: SEASONS,
  days: { list: { year: 'count', day: 'day of year', mean: 'temperature' } },
};

/** Means over the coldest days of a winter, or over the hottest of a summer; each row of days on its own. */
export interface SeasonMeans {
  /** Over the five days in a row that are coldest, or hottest [degC]. */
  readonly fiveDays: Temperature;
  /** Over the thirty days in a row [degC]. */
  readonly thirtyDays: Temperature;
  /** Over the ninety days in a row [degC]. */
  readonly ninetyDays: Temperature;
}

/** Shape of {@link SeasonMeans}. */
export const seasonMeansShape: Shape<SeasonMeans> = { fiveDays: 'temperature', thirtyDays: 'temperature', ninetyDays: 'temperature' };

/** A season of a record. */
export interface RecordedSeason extends SeasonMeans {
  /** Year in which the middle of the season lies. */
  readonly year: number;
  /** How many of the days around its middle are missing. */
  readonly missingDays: number;
}

/** Days to either side of the middle of a season that belong to it: seven months [d]. */
const HALF_SEASON = 106;

/** Share of a season, and of a row of days, that may be missing [1]. */
const MISSING = 0.1;

/**
 * The coldest five, thirty and ninety days of every winter of a record, or the hottest of every summer.
 *
 * A season reaches three and a half months to either side of the middle of the month that is coldest, or warmest, in the whole record, so that
 * winters are not cut in two by the turn of the year, on either half of the earth. A season with more than a tenth of its days missing is left
 * out, and so is a row of days that lacks more than that.
 *
 * @param input - season, and daily means of several years
 * @returns the seasons in the order of time
 * @throws InputError when a day cannot be, comes twice or out of order; `too-few` when no season is complete
 * @remarks
 * Source: `common practice`. Checked against the winters of a station reckoned by another program.
 *
 * Invariants: the order five, thirty, ninety days is one of rising, or falling, means up to missing days; warmer days make no season colder;
 * winters of a record are summers of its mirror image.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear } = await import('../units/index.js');
 * const mean = (day: number) => celsius(10 - 12 * Math.cos((2 * Math.PI * (day - 20)) / 365) - (day === 30 ? 8 : 0));
 * const days = [2001, 2002, 2003].flatMap((year) =>
 *   Array.from({ length: 365 }, (_, index) => ({ year, day: dayOfYear(index + 1), mean: mean(index + 1) })),
 * );
 * const [first, second] = seasonMeans({ season: 'winter', days });
 * expect([first?.year, second?.year]).toEqual([2002, 2003]);
 * expect(first?.fiveDays).toBeCloseTo(-3.5, 1);
 * ```
 */
export function seasonMeans({ season, days }: SeasonMeansInput): readonly RecordedSeason[] {
  demandChoice('season', season, SEASONS);
  const numbers = demandDays(days);
  const sign = season === 'winter' ? 1 : -1;
  const start = numbers[0] ?? 0;
  const row = new Float64Array((numbers.at(-1) ?? 0) - start + 1).fill(Number.NaN);
  numbers.forEach((number, index) => (row[number - start] = sign * (days[index]?.mean ?? 0)));
  const middle = coldestMiddle(days, sign);
  const seasons: RecordedSeason[] = [];
  for (let year = days[0]?.year ?? 0; year <= (days.at(-1)?.year ?? 0); year += 1) {
    const from = dayNumber(year, middle) - HALF_SEASON - start;
    if (from < 0 || from + 2 * HALF_SEASON + 1 > row.length) continue;
    const part = row.subarray(from, from + 2 * HALF_SEASON + 1);
    const missingDays = part.filter((each) => Number.isNaN(each)).length;
    if (missingDays > MISSING * part.length) continue;
    const coldest = (length: number): Temperature => (sign * coldestOf(part, length)) as Temperature;
    seasons.push({ year, missingDays, fiveDays: coldest(5), thirtyDays: coldest(30), ninetyDays: coldest(90) });
  }
  if (seasons.length > 0) return seasons;
  throw new InputError({
    code: 'too-few',
    argument: 'days',
    value: { kind: 'count', value: days.length },
    allowed: 'days of a whole season, three and a half months to either side of its middle, nine tenths of them or more',
  });
}

/** Middle of the thirty days that are coldest, or warmest, over all years [d]. */
function coldestMiddle(days: readonly DailyAir[], sign: number): number {
  const byMonth = Array.from({ length: 12 }, () => ({ sum: 0, count: 0 }));
  for (const { day, mean } of days) {
    const month = byMonth[Math.min(11, Math.floor((day - 1) / (365 / 12)))];
    if (month !== undefined) [month.sum, month.count] = [month.sum + sign * mean, month.count + 1];
  }
  const means = byMonth.map(({ sum, count }) => (count === 0 ? Infinity : sum / count));
  return Math.round((means.indexOf(Math.min(...means)) + 0.5) * (365 / 12));
}

/** Lowest mean over a row of so many days. */
function coldestOf(part: Float64Array, length: number): number {
  let [sum, present, lowest] = [0, 0, Infinity];
  for (const [index, each] of part.entries()) {
    const leaving = part[index - length] ?? Number.NaN;
    if (!Number.isNaN(leaving)) [sum, present] = [sum - leaving, present - 1];
    if (!Number.isNaN(each)) [sum, present] = [sum + each, present + 1];
    if (index >= length - 1 && present >= (1 - MISSING) * length) lowest = Math.min(lowest, sum / present);
  }
  return lowest;
}
