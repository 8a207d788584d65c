import { demand, demandChoice, demandObject, InputError } from '../errors/index.js';
import type { AnnualWave } from '../states/index.js';
import type { DayOfYear, Temperature, TemperatureDifference } from '../units/index.js';
import type { ColdWater } from './cold-water.js';
import { COLD } from './hot-water.data.js';

/** Above the air on the mean: 6 degF, 10/3 K [K]. */
const OFFSET = 3.3333333333333335;

/** Where the two lines of the form are told from: 44 degF, 20/3 degC [degC]. */
const CENTRE = 6.666666666666667;

/**
 * Cold water from the yearly wave of the air, after Burch and Christensen: a stand-in where nobody has held a thermometer under the tap.
 *
 * Fitted to a few mains of the United States; the authors name the few data, heat taken up in the house and the spread within one town as
 * its weak points. A year of readings, or the ground at the depth of the main, is better. Wells are not meant.
 *
 * @param air - wave of the air with a mean of 0 to 26 degC and a period of a year [degC, K, d, s]
 * @returns the wave of the cold water, 3.3 K warmer on the mean, of 0.28 to 0.75 of the swing of the air and behind it by up to 47 days
 * @throws InputError when the wave is of the ground, beyond the range, or makes water that freezes
 * @remarks
 * With t the mean of the air in °F: mean + 6 °F, amplitude · (0.4 + 0.01 (t − 44)), coldest day 35 − (t − 44) days later than the air's, which the form
 * sets at 15 January and here is that of the wave given. Source: `burchChristensen2007`: offset and 0.4 seen in its abstract, both slopes and the lag
 * recalled.
 *
 * Invariants: the wave stays above freezing and below 34 degC; a wider air wave makes a wider water wave in proportion.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference } = await import('../units/index.js');
 * const air = { of: 'air', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(15), period: days(365) } as const;
 * const water = burchChristensenColdWater(air);
 * expect(water.mean).toBeCloseTo(13.33, 2);
 * expect(water.amplitude).toBeCloseTo(5.52, 2);
 * expect(water.coldestDay).toBeCloseTo(44, 9);
 * ```
 */
export function burchChristensenColdWater(air: AnnualWave): Extract<ColdWater, { readonly from: 'wave' }> {
  demandObject('air', air);
  demandChoice('air.of', air.of, ['air']);
  demand('air.mean', 'temperature', air.mean, { atLeast: 0, atMost: 26 }, 'the form is told for such climates only');
  demand('air.amplitude', 'temperature difference', air.amplitude, { atLeast: 0, atMost: 40 });
  demand('air.coldestDay', 'day of year', air.coldestDay, { atLeast: 1, atMost: 366 });
  demand('air.period', 'time', air.period, { atLeast: 31_536_000, atMost: 31_622_400 }, 'a year of 365 to 366 days');
  const beyond = 1.8 * (air.mean - CENTRE);
  const coldest = air.coldestDay + 35 - beyond;
  const mean = air.mean + OFFSET;
  const amplitude = air.amplitude * (0.4 + 0.01 * beyond);
  if (mean - amplitude < COLD.atLeast || mean + amplitude > COLD.atMost)
    throw new InputError({
      code: 'impossible',
      argument: 'air.amplitude',
      value: { kind: 'temperature difference', value: air.amplitude },
      allowed: `a wave of water within ${String(COLD.atLeast)} and ${String(COLD.atMost)} degC`,
      hint: 'the amplitude is half of the swing',
    });
  return {
    from: 'wave',
    mean: mean as Temperature,
    amplitude: amplitude as TemperatureDifference,
    coldestDay: (coldest >= 366 ? coldest - 365 : coldest) as DayOfYear,
  };
}
