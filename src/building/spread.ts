import type { Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { demandMeans } from './checks.js';
import { erbsDeviation } from './degree-days.js';
import { ERBS } from './erbs.data.js';
import { MONTH_DAYS } from '../states/index.js';

/** The spread of outdoor temperatures within each month, told from the monthly means alone. */
export interface ErbsSpread {
  /** Standard deviation of the twelve means over the year [K]. */
  readonly overYear: TemperatureDifference;
  /** Standard deviation of each month's mean from year to year, January first [K]. */
  readonly yearToYear: readonly TemperatureDifference[];
  /** Standard deviation within each month, January first [K]. */
  readonly withinMonth: readonly TemperatureDifference[];
}

/** Shape of {@link ErbsSpread}. */
export const erbsSpreadShape: Shape<ErbsSpread> = {
  overYear: 'temperature difference',
  yearToYear: { list: 'temperature difference' },
  withinMonth: { list: 'temperature difference' },
};

/**
 * How far outdoor temperatures spread within each month where only monthly means are known.
 *
 * @param meanOutdoor - twelve monthly means, January first, each −75 to 45 [degC]
 * @returns deviations over the year, from year to year and within the month [K]
 * @throws InputError unless there are twelve possible means
 * @remarks
 * σm = 1.45 − 0.029 mean + 0.0664 σyr; within the month the logistic distribution behind Erbs' form. Source: `erbs1983`; its limits are
 * those of {@link erbsDegreeDays}.
 * @example
 * ```ts @import.meta.vitest
 * const { fahrenheit } = await import('../units/index.js');
 * const urbana = [24.8, 29, 40, 51.9, 62.5, 72.2, 74.9, 73.4, 66.2, 53.9, 41.3, 28.9].map((t) => fahrenheit(t));
 * expect(1.8 * erbsSpread(urbana).overYear).toBeCloseTo(17.7125, 4);
 * ```
 */
export function erbsSpread(meanOutdoor: readonly Temperature[]): ErbsSpread {
  demandMeans(meanOutdoor);
  const year = meanOutdoor.reduce((sum, mean) => sum + mean, 0) / 12;
  const overYear = Math.sqrt(meanOutdoor.reduce((sum, mean) => sum + (mean - year) ** 2, 0) / 12);
  const yearToYear = meanOutdoor.map((mean) => (ERBS.constant + ERBS.perMean * mean + ERBS.perYear * overYear) as TemperatureDifference);
  return {
    overYear: overYear as TemperatureDifference,
    yearToYear,
    withinMonth: yearToYear.map((deviation, index) => erbsDeviation(deviation, MONTH_DAYS[index] ?? 30) as TemperatureDifference),
  };
}
