import type { ClimateInput, WaveNumbers } from '../climate/index.js';
import { demand, demandCount, InputError } from '../errors/index.js';
import type { Temperature, Time } from '../units/index.js';
import { MONTH_DAYS } from '../states/index.js';
import { monthEnd } from './months.js';

const YEAR_DAYS = 365;
const DAY = 86_400;

/**
 * Twelve monthly mean air temperatures, which the loads of the house need.
 *
 * @param climate - what is known of the climate at the ground
 * @param given - monthly means given apart, for a climate that tells of the ground alone
 * @returns the means, January first [degC]
 * @throws InputError `missing` when nothing tells of the air; for other than twelve means, one beyond −60 to 60 °C, or a wave that does
 * not take a year
 */
export function airMonths(climate: ClimateInput, given: readonly Temperature[] | undefined): readonly Temperature[] {
  if (climate.from !== 'monthly-air') demandYear(climate);
  if (given !== undefined) {
    demandCount('airMonths', given, 12, 12);
    given.forEach((mean, index) => demand(`airMonths.${String(index)}`, 'temperature', mean, { atLeast: -60, atMost: 60 }));
    return given;
  }
  switch (climate.from) {
    case 'monthly-air':
      return climate.monthlyMeans;
    case 'air-wave':
      return MONTH_DAYS.map((days, index) => monthMean(climate, monthEnd(index), days));
    case 'wave':
      throw new InputError({
        code: 'missing',
        argument: 'airMonths',
        value: undefined,
        allowed: 'twelve monthly mean air temperatures',
        hint: 'a wave of the ground surface does not tell how warm the air is, and the loads of the house depend on it',
      });
  }
}

/** The months of a plan are those of a calendar year; a wave of another length would slip against them. */
function demandYear({ period = (YEAR_DAYS * DAY) as Time }: WaveNumbers): void {
  const hint = 'the plan goes by the months of a calendar year; leave the period out for a year of 365 days';
  demand('climate.period', 'time', period, { atLeast: 365 * DAY, atMost: 366 * DAY }, hint);
}

/** Mean over a month of the wave mean − amplitude · cos: its value at the middle times the sinc of half the month's angle. */
function monthMean({ mean, amplitude, coldestDay }: WaveNumbers, start: number, days: number): Temperature {
  const angle = (2 * Math.PI) / YEAR_DAYS;
  const half = (angle * days) / 2;
  return (mean - amplitude * (Math.sin(half) / half) * Math.cos(angle * (start + days / 2 - coldestDay))) as Temperature;
}
