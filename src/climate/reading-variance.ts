import { squaresOf } from './least-squares.js';

/** Length of the spans over which readings of every day are taken together, a twelfth of 365 days [d]. */
const BLOCK = 30.416666666666668;

/** Readings at least this far apart count as independent of one another [d]; the weather has changed a few times in between. */
const APART = 15;

/** Where whole blocks say this much more than half ones, residuals outlast the block, as at a metre and below, and it is doubled. */
const LASTING = 1.5;

/** Degrees of freedom that a doubling must leave; one year has none to spare. */
const LEAST_LEFT = 6;

/** What the scatter of readings says of their variance. */
export interface ReadingVariance {
  /** Variance of a reading that makes the errors of a fit right [K²]. */
  readonly variance: number;
  /** Independent pieces of information less the parameters fitted; below one the errors cannot be told. */
  readonly degreesOfFreedom: number;
  /** Whether residuals were taken together over months, since readings of neighbouring days err alike. */
  readonly byMonth: boolean;
}

/** Variance of a reading by the sums of the residuals over blocks of days, with the blocks there are. */
function blockVariance(residuals: Float64Array, days: readonly number[], length: number, parameters: number): { variance: number; blocks: number } {
  const first = Math.min(...new Set(days));
  const sums = new Map<number, number>();
  for (const [i, residual] of residuals.entries()) {
    const block = Math.floor(((days[i] ?? first) - first) / length);
    sums.set(block, (sums.get(block) ?? 0) + residual);
  }
  const blocks = sums.size;
  const squares = [...sums.values()].reduce((sum, value) => sum + value ** 2, 0);
  return { variance: (squares / residuals.length) * (blocks / (blocks - parameters)), blocks };
}

/**
 * Variance of readings from the residuals of a fit.
 *
 * Readings of neighbouring days, and of several depths on one day, err alike: the weather of a week is in all of them. When they come closer than
 * a fortnight their residuals are summed over months, which leaves twelve pieces of information a year, and over more where they last longer.
 * What reaches over the end of a block is still missed; what half blocks miss beyond whole ones tells by how much, and is added.
 */
export function readingVariance(residuals: Float64Array, days: readonly number[], parameters: number): ReadingVariance {
  const moments = [...new Set(days)].sort((a, b) => a - b);
  const gaps = moments.slice(1).map((day, i) => day - (moments[i] ?? day));
  const close = gaps.filter((gap) => gap < APART).length;
  if (2 * close <= gaps.length) {
    const degreesOfFreedom = residuals.length - parameters;
    return { variance: squaresOf(residuals) / degreesOfFreedom, degreesOfFreedom, byMonth: false };
  }
  const over = (length: number): ReturnType<typeof blockVariance> => blockVariance(residuals, days, length, parameters);
  let [length, half, whole] = [BLOCK, over(BLOCK / 2), over(BLOCK)];
  while (whole.variance > LASTING * half.variance && whole.blocks >= 2 * (parameters + LEAST_LEFT)) {
    length *= 2;
    [half, whole] = [whole, over(length)];
  }
  const { variance, blocks } = whole;
  return { variance: Math.max(variance, 2 * variance - half.variance), degreesOfFreedom: blocks - parameters, byMonth: true };
}
