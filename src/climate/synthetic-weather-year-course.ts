import { solveSymmetric } from '../numerics/index.js';
import type { Temperature } from '../units/index.js';
import { DAY } from './limits.js';
import { type AnnualWave, MONTH_DAYS } from '../states/index.js';

/** Hours of a year of 365 days. */
export const HOURS = 8760;

/** The hours of one month: the first, counted from 0 on 1 January 00:00, and how many. */
export interface MonthHours {
  readonly start: number;
  readonly hours: number;
}

/** The hours of the twelve months, January first. */
export function monthHours(): readonly MonthHours[] {
  let start = 0;
  return MONTH_DAYS.map((days) => {
    const month = { start, hours: 24 * days };
    start += month.hours;
    return month;
  });
}

/**
 * Share of a cosine's amplitude that is left in the mean over an hour.
 *
 * @param hours - length of the cosine's period [h]
 */
export const hourShare = (hours: number): number => Math.sin(Math.PI / hours) / (Math.PI / hours);

/** Hourly means of a wave of the air [degC]. */
export function courseOfWave({ mean, amplitude, coldestDay }: AnnualWave): Float64Array {
  const coldestHour = (coldestDay - 1) * (DAY / 3600);
  const left = amplitude * hourShare(HOURS);
  const course = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour += 1) course[hour] = mean - left * Math.cos((2 * Math.PI * (hour + 0.5 - coldestHour)) / HOURS);
  return course;
}

/**
 * Hourly means of the smoothest course with the given monthly means [degC].
 *
 * Of all courses that repeat every year and have these means it has the least mean squared slope: a parabola in every month, with neither step
 * nor kink where two meet. An hour's mean of a parabola is known exactly, so the months' means of the hours are those given.
 *
 * @remarks Source: `histospline1971`. In a month of length h with x from 0 to 1, T = a (1 − x) + b x + 6 c x (1 − x), c = mean − (a + b)/2; equal
 * slopes at the borders make 2 a₀/h₀ + 4 a₁ (1/h₀ + 1/h₁) + 2 a₂/h₁ = 6 (mean₀/h₀ + mean₁/h₁).
 */
export function courseThroughMonths(monthlyMeans: readonly Temperature[]): Float64Array {
  const months = monthHours();
  const borders = borderTemperatures(months, monthlyMeans);
  const course = new Float64Array(HOURS);
  for (const [month, { start, hours }] of months.entries()) {
    const [from = 0, to = 0] = [borders[month], borders[(month + 1) % 12]];
    const bulge = (monthlyMeans[month] ?? 0) - (from + to) / 2;
    for (let hour = 0; hour < hours; hour += 1) {
      const x = (hour + 0.5) / hours;
      course[start + hour] = from + (to - from) * x + bulge * (6 * x * (1 - x) - 0.5 / hours ** 2);
    }
  }
  return course;
}

/** Temperatures at the beginning of each month at which the parabolas on both sides have one slope. */
function borderTemperatures(months: readonly MonthHours[], monthlyMeans: readonly Temperature[]): readonly number[] {
  const stiffness = months.map(({ hours }) => 1 / hours);
  const at = (list: readonly number[], month: number): number => list[(month + 12) % 12] ?? 0;
  const matrix = months.map((_, row) =>
    months.map((_month, column) => {
      if (column === row) return 2 * (at(stiffness, row - 1) + at(stiffness, row));
      if (column === (row + 11) % 12) return at(stiffness, column);
      return column === (row + 1) % 12 ? at(stiffness, row) : 0;
    }),
  );
  const right = months.map((_, row) => 3 * (at(monthlyMeans, row - 1) * at(stiffness, row - 1) + at(monthlyMeans, row) * at(stiffness, row)));
  return solveSymmetric(matrix, right);
}
