import { demand, demandCount } from '../errors/index.js';
import type { DegreeDays, Shape, Temperature } from '../units/index.js';
import { INDOOR, OUTDOOR } from './checks.js';

/** What {@link heatingDayDegreeDays} needs. */
export interface HeatingDayInput {
  /** Mean temperature of each day, 1 to 1e5 of them, each −95 to 65 [degC]. */
  readonly dailyMeans: readonly Temperature[];
  /** Indoor temperature counted from, 0 to 50; 20 in most tables [degC]. */
  readonly indoor: Temperature;
  /** Daily mean below which a day is a heating day, at most the indoor temperature; 10, 12 or 15 in most tables [degC]. */
  readonly heatingLimit: Temperature;
}

/** Degree days of heating days. */
export interface HeatingDayDegreeDays {
  /** Indoor temperature less daily mean, summed over the heating days [K.d]. */
  readonly degreeDays: DegreeDays;
  /** Days with a mean below the limit. */
  readonly heatingDays: number;
}

/** Shape of {@link HeatingDayInput}. */
export const heatingDayInputShape: Shape<HeatingDayInput> = {
  dailyMeans: { list: 'temperature' },
  indoor: 'temperature',
  heatingLimit: 'temperature',
};

/** Shape of {@link HeatingDayDegreeDays}. */
export const heatingDayDegreeDaysShape: Shape<HeatingDayDegreeDays> = { degreeDays: 'degree days', heatingDays: 'count' };

/**
 * Degree days of heating days, as continental tables have them (20/12): only days colder than a limit count, and each counts up to the indoor temperature.
 *
 * They hold the heat that gains make good, so that energy by them wants a factor; for energy count from the balance point instead.
 *
 * @param input - daily means, indoor temperature and heating limit [degC]
 * @returns degree days [K.d] and the number of heating days
 * @throws InputError when a number is impossible, or the limit lies above the indoor temperature
 * @remarks
 * Σ (indoor − mean) over days with mean < limit = degree days below the limit + number of such days · (indoor − limit). Source: `gradtage2006`.
 *
 * Invariants: with a limit at the indoor temperature they are plain degree days; they rise with either temperature.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const dailyMeans = [5, 11, 12, 15].map((mean) => celsius(mean));
 * expect(heatingDayDegreeDays({ dailyMeans, indoor: celsius(20), heatingLimit: celsius(12) })).toEqual({ degreeDays: 24, heatingDays: 2 });
 * ```
 */
export function heatingDayDegreeDays({ dailyMeans, indoor, heatingLimit }: HeatingDayInput): HeatingDayDegreeDays {
  demandCount('dailyMeans', dailyMeans, 1, 1e5);
  dailyMeans.forEach((mean, index) => demand(`dailyMeans.${String(index)}`, 'temperature', mean, OUTDOOR));
  demand('indoor', 'temperature', indoor, INDOOR);
  demand('heatingLimit', 'temperature', heatingLimit, { atLeast: OUTDOOR.atLeast, atMost: indoor });
  const heated = dailyMeans.filter((mean) => mean < heatingLimit);
  return { degreeDays: heated.reduce((sum, mean) => sum + indoor - mean, 0) as DegreeDays, heatingDays: heated.length };
}
