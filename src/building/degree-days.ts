import { demand } from '../errors/index.js';
import type { DegreeDays, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { demandSpread, MONTHLY_MEAN, OUTDOOR } from './checks.js';
import { ERBS } from './erbs.data.js';
import { excessAbove, LOGISTIC_DEVIATION, type Outdoor, shortfallBelow } from './shortfall.js';

/** A month and the base its degree days are counted from. */
export interface DegreeDayMonth {
  /** Temperature counted from, for a building its balance point [degC]. */
  readonly base: Temperature;
  /** Mean outdoor temperature of the month, −75 to 45 [degC]. */
  readonly meanOutdoor: Temperature;
  /** Days in the month, 1 to 366. */
  readonly days: number;
}

/** What {@link schoenauKehrigDegreeDays} needs. */
export interface NormalMonth extends DegreeDayMonth {
  /** Standard deviation within the month, of daily means for degree days from daily means, of hours for those from hours, 0 to 50 [K]. */
  readonly spread: TemperatureDifference;
}

/** What {@link erbsDegreeDays} needs. */
export interface ErbsMonth extends DegreeDayMonth {
  /** Standard deviation of this month's mean from year to year, 0.01 to 20 [K]. */
  readonly yearToYear: TemperatureDifference;
}

/** Degree days of one month. */
export interface MonthDegreeDays {
  /** Below the base [K.d]. */
  readonly heating: DegreeDays;
  /** Above the base [K.d]. */
  readonly cooling: DegreeDays;
}

/** Shape of {@link NormalMonth}. */
export const normalMonthShape: Shape<NormalMonth> = {
  base: 'temperature',
  meanOutdoor: 'temperature',
  days: 'count',
  spread: 'temperature difference',
};

/** Shape of {@link ErbsMonth}. */
export const erbsMonthShape: Shape<ErbsMonth> = {
  base: 'temperature',
  meanOutdoor: 'temperature',
  days: 'count',
  yearToYear: 'temperature difference',
};

/**
 * Degree days of a month to any base from its mean and spread, temperatures taken to be normally distributed.
 *
 * @param month - base and mean [degC], standard deviation [K], days
 * @returns heating and cooling degree days [K.d]
 * @throws InputError when a number is impossible
 * @remarks
 * N σ [Z Φ(Z) + φ(Z)], Z = (base − mean)/σ. Source: `schoenauKehrig1990`, the same
 * mean as the positive degree days of `calovGreve2005`. With the spread of hours it gives the hourly integral within 0.5 %
 * of a year, with that of daily means the usual degree days within 0.7 % (two weather years, `loadWeatherChecks`); the two differ by 3 to 5 %.
 *
 * Invariants: heating − cooling = N (base − mean); heating rises with the base, by N times the share of time below it.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference } = await import('../units/index.js');
 * const april = { base: celsius(18), meanOutdoor: celsius(15), spread: kelvinDifference(4), days: 30 };
 * expect(schoenauKehrigDegreeDays(april).heating).toBeCloseTo(105.74, 2);
 * expect(schoenauKehrigDegreeDays(april).cooling).toBeCloseTo(15.74, 2);
 * ```
 */
export function schoenauKehrigDegreeDays({ base, meanOutdoor, days, spread }: NormalMonth): MonthDegreeDays {
  demandSpread('spread', spread);
  return degreeDaysOf({ base, meanOutdoor, days }, { distribution: 'normal', mean: meanOutdoor, spread });
}

/**
 * Degree days of a month to any base where only monthly means are known.
 *
 * @param month - base and mean [degC], year-to-year deviation of the mean [K], days
 * @returns heating and cooling degree days [K.d]
 * @throws InputError when a number is impossible
 * @remarks
 * N σ√N [h/2 + ln(e^(−ah) + e^(ah))/(2a)], h = (base − mean)/(σ√N), a = 1.698 d^½; a logistic distribution of scale σ√N/(2a). Source: `erbs1983`.
 * In a continental climate of the middle latitudes a year of heating comes out 0.5 to 5 % high, of cooling within 5 to 10 %; by a mild
 * sea, where the weather swings less, 30 % and more too high: use daily or hourly temperatures where they exist. `closedFormErrors` has this as numbers. A station in Illinois with 5878 °F·d published gets 5905 (`urbanaNormals`).
 *
 * Invariants: as {@link schoenauKehrigDegreeDays}.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference } = await import('../units/index.js');
 * const january = { base: celsius(18.3), meanOutdoor: celsius(-4), yearToYear: kelvinDifference(2.2), days: 31 };
 * expect(erbsDegreeDays(january).heating).toBeCloseTo(691.53, 2);
 * ```
 */
export function erbsDegreeDays({ base, meanOutdoor, days, yearToYear }: ErbsMonth): MonthDegreeDays {
  demand('yearToYear', 'temperature difference', yearToYear, { atLeast: 0.01, atMost: 20 });
  demandMonth({ base, meanOutdoor, days });
  return degreeDaysOf({ base, meanOutdoor, days }, { distribution: 'logistic', mean: meanOutdoor, spread: erbsDeviation(yearToYear, days) });
}

/** Standard deviation within a month that Erbs' form amounts to [K], from the year-to-year deviation of its mean. */
export function erbsDeviation(yearToYear: number, days: number): number {
  return (LOGISTIC_DEVIATION * yearToYear * Math.sqrt(days)) / (2 * ERBS.shape);
}

function demandMonth({ base, meanOutdoor, days }: DegreeDayMonth): void {
  demand('base', 'temperature', base, OUTDOOR);
  demand('meanOutdoor', 'temperature', meanOutdoor, MONTHLY_MEAN);
  demand('days', 'count', days, { atLeast: 1, atMost: 366 });
}

function degreeDaysOf(month: DegreeDayMonth, outdoor: Outdoor): MonthDegreeDays {
  demandMonth(month);
  return {
    heating: (month.days * shortfallBelow(outdoor, month.base).mean) as DegreeDays,
    cooling: (month.days * excessAbove(outdoor, month.base).mean) as DegreeDays,
  };
}
