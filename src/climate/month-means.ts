import { MONTH_DAYS } from '../states/index.js';

/** Angle that the year turns in a day, 2π/365 [rad/d]. */
export const DAILY_ANGLE = 0.017214206321039965;

/** Means over a month of 1, cos ωt and sin ωt, with t the days since 1 January 00:00. */
export type MonthMeans = readonly [one: number, cosine: number, sine: number];

/**
 * The exact means of the year's cosine and sine over each month, January first. A month shaves 1.1 % off a sine, and months
 * are not equally long; fitting these means instead of points at the months' middles leaves nothing to be corrected.
 */
export function monthMeans(): readonly MonthMeans[] {
  let end = 0;
  return MONTH_DAYS.map((days) => {
    const [from, to] = [end * DAILY_ANGLE, (end + days) * DAILY_ANGLE];
    end += days;
    return [1, (Math.sin(to) - Math.sin(from)) / (to - from), (Math.cos(from) - Math.cos(to)) / (to - from)];
  });
}
