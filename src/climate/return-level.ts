import { demand, demandChoice, demandCount } from '../errors/index.js';
import type { Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { normalWidth } from './normal-width.js';
import { type Season, SEASONS } from './season-means.js';
import { studentT } from './student-t.js';

/** What {@link returnLevel} needs. */
export interface ReturnLevelInput {
  /** Whether the cold side of winters or the hot side of summers is asked for. */
  readonly season: Season;
  /** One mean for every season, three or more, each −95 to 65 [degC]. */
  readonly seasonValues: readonly Temperature[];
  /** In so many seasons one is expected to be beyond the level, 2 to 100; 10 when left out. */
  readonly returnPeriod?: number;
}

/** Shape of {@link ReturnLevelInput}. */
export const returnLevelInputShape: Shape<ReturnLevelInput> = {
  season: SEASONS,
  seasonValues: { list: 'temperature' },
  returnPeriod: { optional: 'count' },
};

/** A level that the next season passes with a stated chance. */
export interface ReturnLevel {
  /** The level, with the few seasons it is known from allowed for [degC]. */
  readonly seasonLevel: Temperature;
  /** The level if mean and deviation of the seasons were known for certain [degC]. */
  readonly certainLevel: Temperature;
  /** Mean of the seasons [degC]. */
  readonly mean: Temperature;
  /** Their standard deviation [K]. */
  readonly deviation: TemperatureDifference;
  /** How many deviations the level lies from the mean [1]. */
  readonly factor: Ratio;
  /** The coldest, or hottest, of the seasons [degC]. */
  readonly farthest: Temperature;
  /** In so many seasons one like the farthest is expected: one more than there are. */
  readonly farthestReturnPeriod: number;
  /** The level by rank among the seasons alone, where there are enough of them: no assumption of a distribution [degC]. */
  readonly rankedLevel?: Temperature;
}

/** Shape of {@link ReturnLevel}. */
export const returnLevelShape: Shape<ReturnLevel> = {
  seasonLevel: 'temperature',
  certainLevel: 'temperature',
  mean: 'temperature',
  deviation: 'temperature difference',
  factor: 'ratio',
  farthest: 'temperature',
  farthestReturnPeriod: 'count',
  rankedLevel: { optional: 'temperature' },
};

/** The return period that a design goes by where none is asked for, common practice [seasons]. */
export const RETURN_PERIOD = 10;

/** Refuses a return period that no design goes by. */
export function demandReturnPeriod(returnPeriod: number): void {
  demand('returnPeriod', 'count', returnPeriod, { atLeast: 2, atMost: 100 }, 'whole seasons; 10 is one in ten');
}

/**
 * The mean that one season in so many passes, from a few seasons.
 *
 * The seasons are taken to be normally distributed and independent. Few of them tell neither mean nor spread well; the level is that which the
 * _next_ season passes with the stated chance, all told: Student's quantile times √(1 + 1/n). From six winters it lies 1.59 deviations below the
 * mean for one winter in ten, where a thousand would have it at 1.28. Seasons grow warmer over the decades; old ones make the level colder
 * than it is by now.
 *
 * @param input - season, a mean of each season [degC], and the return period [seasons]
 * @returns level, what it rests on, and the seasons' own farthest
 * @throws InputError when there are fewer than three seasons, or a number is out of range
 * @remarks
 * Source: `studentDistribution`. Checked on 51 winters of one place: of the other winters 7 to 8 % lie below the level from five to ten in a row,
 * against 11 to 13 % with the factor of certain knowledge. The rank (n + 1)/T counts as `weibull1939` has it.
 *
 * Invariants: the level shifts and scales with the seasons; longer return periods lie farther; the hot side mirrors the cold.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const winters = [-2.1, 1.4, 0, -3.3, -0.6, 1.7].map((mean) => celsius(mean));
 * const { seasonLevel, factor, farthest, farthestReturnPeriod } = returnLevel({ season: 'winter', seasonValues: winters });
 * expect(factor).toBeCloseTo(1.594, 3);
 * expect(seasonLevel).toBeCloseTo(-3.6, 2);
 * expect([farthest, farthestReturnPeriod]).toEqual([-3.3, 7]);
 * ```
 */
export function returnLevel({ season, seasonValues, returnPeriod = RETURN_PERIOD }: ReturnLevelInput): ReturnLevel {
  demandChoice('season', season, SEASONS);
  demandCount('seasonValues', seasonValues, 3, 1000);
  seasonValues.forEach((each, index) => demand(`seasonValues.${String(index)}`, 'temperature', each, { atLeast: -95, atMost: 65 }));
  demandReturnPeriod(returnPeriod);
  const sign = season === 'winter' ? -1 : 1;
  const count = seasonValues.length;
  const mean = seasonValues.reduce((sum, each) => sum + each, 0) / count;
  const deviation = Math.sqrt(seasonValues.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (count - 1));
  // Beyond the level on one side is as rare as outside a width to both sides with twice that chance.
  const within = 1 - 2 / returnPeriod;
  const factor = studentT(within, count - 1) * Math.sqrt(1 + 1 / count);
  const fromFarthest = [...seasonValues].sort((a, b) => sign * (b - a));
  const rank = (count + 1) / returnPeriod - 1;
  const at = (index: number): number => fromFarthest[index] ?? 0;
  return {
    seasonLevel: (mean + sign * factor * deviation) as Temperature,
    certainLevel: (mean + sign * normalWidth(within) * deviation) as Temperature,
    mean: mean as Temperature,
    deviation: deviation as TemperatureDifference,
    factor: factor as Ratio,
    farthest: at(0) as Temperature,
    farthestReturnPeriod: count + 1,
    ...(rank >= 0 && { rankedLevel: (at(Math.floor(rank)) + (rank % 1) * (at(Math.ceil(rank)) - at(Math.floor(rank)))) as Temperature }),
  };
}
