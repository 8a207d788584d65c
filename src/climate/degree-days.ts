import { demand, demandChoice, demandCount, InputError } from '../errors/index.js';
import { MONTH_DAYS } from '../states/index.js';
import type { DegreeDays, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { type AirReadings, demandReadings, demandWholeDays, eachDay, meanOfDay } from './air-readings.js';
import { errorFunction } from '../numerics/index.js';
import { demandMonthlyMeans } from './fit-annual-wave.js';
import { demandMean } from './limits.js';

/**
 * What stands for the temperature of a day: the mean of all its steps, the middle between its warmest and coldest step, or each step
 * by itself, which counts the nights of mild days too. The three differ by a few per cent.
 */
export type DegreeDayCounting = 'daily means' | 'daily extremes' | 'every step';

/** The ways of counting, for lists and shapes. */
export const DEGREE_DAY_COUNTINGS: readonly DegreeDayCounting[] = ['daily means', 'daily extremes', 'every step'];

/** What {@link degreeDays} needs. */
export interface DegreeDaysInput extends AirReadings {
  /** Temperature counted from, −60 to 60 [degC]. */
  readonly base: Temperature;
  /** What stands for a day; `daily means` when left out, as most tables do. */
  readonly counting?: DegreeDayCounting;
}

/** What {@link monthlyDegreeDays} needs. */
export interface MonthlyDegreeDaysInput {
  /** Twelve monthly mean air temperatures, January first, each −80 to 50 [degC]. */
  readonly monthlyMeans: readonly Temperature[];
  /** Standard deviation of the daily means of each month about its mean, January first, 0 to 30; none when left out [K]. */
  readonly spread?: readonly TemperatureDifference[];
  /** Temperature counted from, −60 to 60 [degC]. */
  readonly base: Temperature;
}

/** Degree days and how they were counted. */
export interface CountedDegreeDays {
  /** Below the base [K.d]. */
  readonly heating: DegreeDays;
  /** Above the base [K.d]. */
  readonly cooling: DegreeDays;
  /** What stood for a day. */
  readonly counting: DegreeDayCounting | 'monthly means' | 'normal days about monthly means';
}

/** Shape of {@link MonthlyDegreeDaysInput}. */
export const monthlyDegreeDaysInputShape: Shape<MonthlyDegreeDaysInput> = {
  monthlyMeans: { list: 'temperature' },
  spread: { optional: { list: 'temperature difference' } },
  base: 'temperature',
};

/** Shape of {@link CountedDegreeDays}. */
export const countedDegreeDaysShape: Shape<CountedDegreeDays> = {
  heating: 'degree days',
  cooling: 'degree days',
  counting: ['daily means', 'daily extremes', 'every step', 'monthly means', 'normal days about monthly means'],
};

/**
 * Heating and cooling degree days to any base, from hourly or daily temperatures.
 *
 * @param input - temperatures [degC], the length of their step [s], base [degC] and what stands for a day
 * @returns degree days of all days given [K.d], and how they were counted
 * @throws InputError when a number is impossible, the last day is cut, or daily means are asked for their extremes
 * @remarks
 * Σ max(0, base − day) and Σ max(0, day − base). Source: `common practice`. Checked against sums of four public weather years computed independently (`loadWeatherChecks`).
 *
 * Invariants: heating − cooling = number of days · (base − mean), but for extremes; every step counts no less than daily means do.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, days, fahrenheit, fahrenheitDays } = await import('../units/index.js');
 * const temperatures = [-2, 3, 12, 20].map((t) => celsius(t));
 * const { heating, cooling } = degreeDays({ temperatures, step: days(1), base: celsius(18) });
 * expect([heating, cooling]).toEqual([41, 2]);
 * expect(fahrenheitDays.of(degreeDays({ temperatures, step: days(1), base: fahrenheit(65) }).heating)).toBeCloseTo(75.6, 9);
 * ```
 */
export function degreeDays({ base, counting = 'daily means', ...readings }: DegreeDaysInput): CountedDegreeDays {
  const perDay = demandReadings(readings);
  demandMean('base', base);
  demandChoice('counting', counting, DEGREE_DAY_COUNTINGS);
  if (counting === 'every step') return counted(readings.temperatures, 1 / perDay, base, counting);
  demandWholeDays(readings, perDay);
  if (counting === 'daily means') return counted(eachDay(readings, perDay, meanOfDay), 1, base, counting);
  if (perDay === 1) {
    const hint = 'a daily mean has no extremes; give hours, or count daily means';
    throw new InputError({ code: 'impossible', argument: 'counting', value: counting, allowed: 'daily means, every step', hint });
  }
  const middles = eachDay(readings, perDay, (day) => (Math.min(...day) + Math.max(...day)) / 2);
  return counted(middles, 1, base, counting);
}

/**
 * Degree days to any base where only monthly means are known.
 *
 * Without a spread every day of a month is taken at its mean: right in a cold winter, and never too many, but near the base a month's warm and cold
 * days are lost. With the spread of daily means the days are taken as normally distributed about the mean of their month. Where no spread is
 * known, `erbsDegreeDays` of the room `building` assumes one.
 *
 * @param input - monthly means [degC], base [degC] and, where known, the spread of daily means [K]
 * @returns degree days of the year [K.d], and how they were counted
 * @throws InputError unless there are twelve possible means, and as many spreads
 * @remarks
 * With a spread Σ N σ [z Φ(z) + φ(z)], z = (base − mean)/σ; source: `schoenauKehrig1990`. Checked against closed sums of two weather years
 * (`loadWeatherChecks`), where it comes within 0.7 % of the days themselves.
 *
 * Invariants: heating − cooling = Σ N (base − mean) either way; a spread never makes fewer.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference } = await import('../units/index.js');
 * const monthlyMeans = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
 * const base = celsius(18.3);
 * expect(monthlyDegreeDays({ monthlyMeans, base }).heating).toBeCloseTo(3406.1, 1);
 * const spread = monthlyMeans.map(() => kelvinDifference(5));
 * expect(monthlyDegreeDays({ monthlyMeans, base, spread }).heating).toBeCloseTo(3555.93, 2);
 * ```
 */
export function monthlyDegreeDays({ monthlyMeans, spread, base }: MonthlyDegreeDaysInput): CountedDegreeDays {
  demandMonthlyMeans(monthlyMeans);
  demandMean('base', base);
  if (spread !== undefined) {
    demandCount('spread', spread, 12, 12);
    spread.forEach((each, month) => {
      demand(`spread.${String(month)}`, 'temperature difference', each, { atLeast: 0, atMost: 30 });
    });
  }
  let [heating, cooling] = [0, 0];
  for (const [month, days] of MONTH_DAYS.entries()) {
    const below = base - (monthlyMeans[month] ?? 0);
    const half = normalExcess(Math.abs(below), spread?.[month] ?? 0);
    heating += days * (Math.max(0, below) + half);
    cooling += days * (Math.max(0, -below) + half);
  }
  return {
    heating: heating as DegreeDays,
    cooling: cooling as DegreeDays,
    counting: spread === undefined ? 'monthly means' : 'normal days about monthly means',
  };
}

/** Standard deviations beyond which no day comes, below the smallest double. */
const UNREACHED = 38;

/** Mean excess over a bound that lies so far from the middle of a normal distribution [K]. */
function normalExcess(distance: number, spread: number): number {
  if (distance >= UNREACHED * spread) return 0;
  const z = distance / spread;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return Math.max(0, spread * (density - (z * (1 - errorFunction(z / Math.SQRT2))) / 2));
}

function counted(temperatures: Float64Array | readonly number[], weight: number, base: number, counting: DegreeDayCounting): CountedDegreeDays {
  let [heating, cooling] = [0, 0];
  for (const temperature of temperatures) {
    heating += Math.max(0, base - temperature);
    cooling += Math.max(0, temperature - base);
  }
  return { heating: (weight * heating) as DegreeDays, cooling: (weight * cooling) as DegreeDays, counting };
}
