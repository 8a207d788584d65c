import { demand, demandChoice } from '../errors/index.js';
import type { Ratio, RunFraction, Shape, TemperatureDifference } from '../units/index.js';
import { MILD_OVER_YEAR } from './defaults.data.js';
import type { Distribution } from './shortfall.js';

/** How far the hours of real weather may lie from a closed form; shares are of the computed number, negative where the truth may be less. */
export interface ClosedFormErrors {
  /** Least heat or degree days of a year over those computed, less 1; absent where they are known to be less without a bound [1]. */
  readonly yearLow?: Ratio;
  /** Greatest, less 1 [1]. */
  readonly yearHigh: Ratio;
  /** Least unmet heat of a year over that computed, less 1 [1]. */
  readonly unmetEnergyLow: Ratio;
  /** Greatest, less 1 [1]. */
  readonly unmetEnergyHigh: Ratio;
  /** Run fraction of a month that a loop is sized by, either way. */
  readonly runFractionError: RunFraction;
}

/** Shape of {@link ClosedFormErrors}. */
export const closedFormErrorsShape: Shape<ClosedFormErrors> = {
  yearLow: { optional: 'ratio' },
  yearHigh: 'ratio',
  unmetEnergyLow: 'ratio',
  unmetEnergyHigh: 'ratio',
  runFractionError: 'run fraction',
};

/** Computed less than a quarter above or below the hours: the truth over the computed lies between 1/1.25 and 1/0.75. */
const UNMET = { unmetEnergyLow: -0.2 as Ratio, unmetEnergyHigh: 0.3333333333333333 as Ratio } as const;

/**
 * How good the closed forms of months are, as numbers.
 *
 * Use months for the heat of a year, the design month and the size of a loop. Use hours or bins for auxiliary heat, for what it costs, and by a mild sea.
 *
 * @param distribution - `normal` where the hourly spread of each month was given, `logistic` where Erbs' form told it from the means
 * @param overYear - standard deviation of the twelve means, 0 to 50 [K]; with `logistic` a climate below 6 K is mild, and the year then has no lower bound
 * @returns shares of the computed numbers [1]
 * @throws InputError when a number is impossible
 * @remarks
 * Year: normal within 0.5 % of the hours. Logistic 0.5 to 5 % above degree days from daily means, 30 % and more above them by a mild sea (`erbs1983`); hours count 3 to 5 % more than
 * daily means, so that the heat of the hours of four weather years lay between 0.6 % below and 4.8 % above it. Unmet heat within 25 % and run fractions within 0.02 of the hours of two of
 * these years (`loadWeatherChecks`); a single month may be off by more.
 * @example
 * ```ts @import.meta.vitest
 * expect(closedFormErrors('normal')).toMatchObject({ yearLow: -0.005, yearHigh: 0.005, runFractionError: 0.02 });
 * expect(closedFormErrors('logistic', 4).yearLow).toBeUndefined();
 * ```
 */
export function closedFormErrors(distribution: Distribution, overYear?: TemperatureDifference): ClosedFormErrors {
  demandChoice('distribution', distribution, ['normal', 'logistic']);
  if (overYear !== undefined) demand('overYear', 'temperature difference', overYear, { atLeast: 0, atMost: 50 });
  const rest = { ...UNMET, runFractionError: 0.02 as RunFraction };
  if (distribution === 'normal') return { yearLow: -0.005 as Ratio, yearHigh: 0.005 as Ratio, ...rest };
  const mild = overYear !== undefined && overYear < MILD_OVER_YEAR;
  return { ...(mild ? {} : { yearLow: -0.05 as Ratio }), yearHigh: 0.05 as Ratio, ...rest };
}
