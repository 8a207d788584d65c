import { demandChoice } from '../errors/index.js';
import { MONTH_DAYS } from '../states/index.js';
import type { DayOfYear, DegreeDays, Shape, Temperature, Time } from '../units/index.js';
import { type AirReadings, demandReadings, demandWholeDays, eachDay, meanOfDay } from './air-readings.js';
import { demandMonthlyMeans } from './fit-annual-wave.js';
import { largestRun } from './largest-run.js';
import { DAY } from './limits.js';

/** What {@link freezingIndex} needs. */
export interface FreezingIndexInput extends AirReadings {
  /**
   * What follows on the last day: the first one, as in a typical year whose winter is cut at New Year, or nothing, as in a record from
   * one summer to the next.
   */
  readonly afterLast: 'first day' | 'nothing';
}

/** Degree days below, or above, freezing. */
export interface FreezingSeason {
  /** Of the season, between the turning points of the cumulative curve; what thaws in between is taken off [K.d]. */
  readonly seasonIndex: DegreeDays;
  /** Of every day on this side of freezing, whenever it comes [K.d]. */
  readonly totalIndex: DegreeDays;
  /** When the season begins, counted from the first reading as 1.0 [d]. */
  readonly start: DayOfYear;
  /** How long the season lasts; 0 where there is none [s]. */
  readonly duration: Time;
}

/** Freezing and thawing index of the air. */
export interface FreezingIndex {
  /** Below freezing. */
  readonly freezing: FreezingSeason;
  /** Above freezing. */
  readonly thawing: FreezingSeason;
}

const seasonShape = { seasonIndex: 'degree days', totalIndex: 'degree days', start: 'day of year', duration: 'time' } as const;

/** Shape of {@link FreezingIndex}. */
export const freezingIndexShape: Shape<FreezingIndex> = { freezing: seasonShape, thawing: seasonShape };

/**
 * Freezing and thawing index of the air from hourly or daily temperatures.
 *
 * Definitions differ: the seasonal index, the one that frost depth is computed from, runs from the highest to the lowest point of the cumulative curve
 * of daily means; the total adds up every day below freezing and is larger where winters thaw. A typical year is not the winter a depth is
 * designed for; see `designFreezingIndex`.
 *
 * @param input - temperatures [degC], the length of their step [s], and what follows on the last day
 * @returns seasonal and total index either way [K.d], with beginning [d] and length [s] of the seasons
 * @throws InputError when a number is impossible or the last day is cut
 * @remarks
 * Source: `freezingIndexTerms`. Checked against four public weather years computed independently.
 *
 * Invariants: seasonal at most total; total thawing − total freezing = number of days · mean; turned round, freezing is thawing; with the first day
 * after the last, where the year is cut does not matter.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, days } = await import('../units/index.js');
 * const temperatures = [-3, 1, -4, 6, 9, -2].map((t) => celsius(t));
 * const { freezing } = freezingIndex({ temperatures, step: days(1), afterLast: 'first day' });
 * expect([freezing.seasonIndex, freezing.totalIndex]).toEqual([8, 9]);
 * expect([freezing.start, days.of(freezing.duration)]).toEqual([6, 4]);
 * ```
 */
export function freezingIndex({ afterLast, ...readings }: FreezingIndexInput): FreezingIndex {
  const perDay = demandReadings(readings);
  demandWholeDays(readings, perDay);
  demandChoice('afterLast', afterLast, ['first day', 'nothing']);
  const means = eachDay(readings, perDay, meanOfDay);
  const lengths = means.map(() => 1);
  return bothSeasons(means, lengths, afterLast === 'first day');
}

/**
 * Freezing and thawing index of a year of which only monthly means are known; the year is taken to repeat.
 *
 * Thaws and frosts within a month cancel: by a tenth or more too small in a cold winter, nothing at all in a mild one.
 *
 * @param monthlyMeans - twelve monthly mean air temperatures, January first, each −80 to 50 [degC]
 * @returns seasonal and total index either way [K.d], with beginning [d] and length [s] of the seasons
 * @throws InputError unless there are twelve possible means
 * @remarks Σ N · mean over the months. Source: `freezingIndexTerms`. Checked against four public weather years computed independently.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, days } = await import('../units/index.js');
 * const chicago = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
 * const { freezing } = monthlyFreezingIndex(chicago);
 * expect(freezing.seasonIndex).toBeCloseTo(327.3, 1);
 * expect([freezing.start, days.of(freezing.duration)]).toEqual([335, 90]);
 * ```
 */
export function monthlyFreezingIndex(monthlyMeans: readonly Temperature[]): FreezingIndex {
  demandMonthlyMeans(monthlyMeans);
  return bothSeasons(monthlyMeans, MONTH_DAYS, true);
}

function bothSeasons(means: readonly number[], lengths: readonly number[], joined: boolean): FreezingIndex {
  const warmth = means.map((mean, place) => mean * (lengths[place] ?? 0));
  const season = (sign: 1 | -1): FreezingSeason => {
    const values = warmth.map((each) => sign * each);
    const { sum, from, count } = largestRun(values, joined);
    const daysOf = (first: number, many: number): number =>
      Array.from({ length: many }, (_, place) => lengths[(first + place) % lengths.length] ?? 0).reduce((days, each) => days + each, 0);
    return {
      seasonIndex: sum as DegreeDays,
      totalIndex: values.reduce((all, each) => all + Math.max(0, each), 0) as DegreeDays,
      start: (1 + daysOf(0, from)) as DayOfYear,
      duration: (daysOf(from, count) * DAY) as Time,
    };
  };
  return { freezing: season(-1), thawing: season(1) };
}
