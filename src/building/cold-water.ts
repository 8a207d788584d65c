import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import { MONTH_DAYS } from '../states/index.js';
import type { DayOfYear, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { COLD } from './hot-water.data.js';

/** Temperature of the cold water that comes into the house, through the year. */
export type ColdWater =
  | {
      /** A sine over 365 days. */
      readonly from: 'wave';
      /** Mean over the year, 0 to 34 [degC]. */
      readonly mean: Temperature;
      /** Half of the swing between the warmest and the coldest day; the wave stays within 0 and 34 degC [K]. */
      readonly amplitude: TemperatureDifference;
      /** Day on which the water is coldest, 1 to 366; 1.0 is 1 January 00:00 [d]. */
      readonly coldestDay: DayOfYear;
    }
  | {
      /** Twelve measured or computed means. */
      readonly from: 'months';
      /** Mean of each month, January first, each 0 to 34 [degC]. */
      readonly monthlyMeans: readonly Temperature[];
    };

/** Shape of {@link ColdWater}. */
export const coldWaterShape: Shape<ColdWater> = {
  by: 'from',
  oneOf: {
    wave: { mean: 'temperature', amplitude: 'temperature difference', coldestDay: 'day of year' },
    months: { monthlyMeans: { list: 'temperature' } },
  },
};

const YEAR = 365;

/** The mean of a sine over a day is this much of its value at noon: sin(π/365)/(π/365). */
const DAY_OF_SINE = 0.9999876530082654;

/** Refuses cold water that no main brings. */
export function demandColdWater(coldWater: ColdWater): void {
  demandObject('coldWater', coldWater);
  demandChoice('coldWater.from', coldWater.from, ['wave', 'months']);
  if (coldWater.from === 'months') {
    demandCount('coldWater.monthlyMeans', coldWater.monthlyMeans, 12, 12);
    coldWater.monthlyMeans.forEach((mean, index) => demand(`coldWater.monthlyMeans.${String(index)}`, 'temperature', mean, COLD));
    return;
  }
  const { mean, amplitude, coldestDay } = coldWater;
  demand('coldWater.mean', 'temperature', mean, COLD);
  demand('coldWater.amplitude', 'temperature difference', amplitude, { atLeast: 0, atMost: COLD.atMost });
  demand('coldWater.coldestDay', 'day of year', coldestDay, { atLeast: 1, atMost: 366 });
  if (mean - amplitude >= COLD.atLeast && mean + amplitude <= COLD.atMost) return;
  throw new InputError({
    code: 'impossible',
    argument: 'coldWater.amplitude',
    value: { kind: 'temperature difference', value: amplitude },
    allowed: `at most ${String(Math.min(mean - COLD.atLeast, COLD.atMost - mean))} K about a mean of ${String(mean)} degC`,
    hint: 'water in a main neither freezes nor gets hot; the amplitude is half of the swing',
  });
}

/** Mean temperature of each of the 365 days [degC]; of a wave the exact mean over the day, of months the month's. */
export function coldWaterDays(coldWater: ColdWater): readonly number[] {
  if (coldWater.from === 'months')
    return MONTH_DAYS.flatMap((days, month) => Array.from({ length: days }, () => Number(coldWater.monthlyMeans[month])));
  const { mean, amplitude, coldestDay } = coldWater;
  return Array.from({ length: YEAR }, (_, day) => mean - amplitude * DAY_OF_SINE * Math.cos((2 * Math.PI * (day + 1.5 - coldestDay)) / YEAR));
}

/**
 * Monthly cold water from any course of temperature over the year, as a rule that of the ground at the depth of the main.
 *
 * Water that has come a long way through a main is nearly as warm as the ground around it; near the house it takes on the temperature of the cellar,
 * and water from a deep well keeps that of the well.
 *
 * @param temperatureAt - temperature at a day of the year, 1 to 366, each 0 to 34 [d to degC]
 * @returns cold water by months, each the mean of the middles of its days
 * @throws InputError when a temperature is one that no main has
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const { monthlyMeans } = coldWaterMonths((day) => celsius(4 + day / 73));
 * expect(monthlyMeans[0]).toBeCloseTo(4 + 16.5 / 73, 12);
 * ```
 */
export function coldWaterMonths(temperatureAt: (day: DayOfYear) => Temperature): Extract<ColdWater, { readonly from: 'months' }> {
  if (typeof temperatureAt !== 'function')
    throw new InputError({ code: 'missing', argument: 'temperatureAt', value: undefined, allowed: 'a function from a day to a temperature' });
  let day = 1;
  const monthlyMeans = MONTH_DAYS.map((days) => {
    let sum = 0;
    for (let count = 0; count < days; count += 1, day += 1) {
      const temperature = temperatureAt((day + 0.5) as DayOfYear);
      demand('temperatureAt', 'temperature', temperature, COLD, 'give the depth at which the main lies; frozen ground holds no main');
      sum += temperature;
    }
    return (sum / days) as Temperature;
  });
  return { from: 'months', monthlyMeans };
}
