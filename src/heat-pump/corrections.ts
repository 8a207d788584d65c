import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ElectricPower, Power, Ratio, Shape } from '../units/index.js';
import type { DerivedRatingPoints } from './derived-points.js';
import type { RatingOrigin } from './heat-pump-input.js';
import { type RatingPoint, ratingPointShape, readRatings } from './rating-point.js';

/** What differs from the conditions that the rating points hold for. */
export type CorrectionCause = 'antifreeze' | 'source flow' | 'air flow';

/** What one difference does to a unit. */
export interface Correction {
  /** What differs. */
  readonly cause: CorrectionCause;
  /** From the unit's own table, or a usual size such as `TYPICAL_CORRECTIONS` has. */
  readonly taken: 'from the maker' | 'as typical';
  /** Factor on the capacity, 0.8 to 1.2 [1]. */
  readonly capacityFactor: Ratio;
  /** Factor on the electric input, 0.8 to 1.2; 1 when left out [1]. */
  readonly inputFactor?: Ratio;
}

/** Rating points with what is to be corrected in them. */
export interface CorrectionsInput {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Where the points come from. */
  readonly ratingOrigin: RatingOrigin;
  /** Rating points, 2 to 100. */
  readonly points: readonly RatingPoint[];
  /** One for each cause at most, 1 to 3. */
  readonly corrections: readonly Correction[];
}

/** Rating points as corrected. */
export interface CorrectedRatingPoints extends DerivedRatingPoints {
  /** Product of the factors on the capacity [1]. */
  readonly capacityFactor: Ratio;
  /** Product of the factors on the electric input [1]. */
  readonly inputFactor: Ratio;
}

/** Shape of {@link Correction}. */
export const correctionShape: Shape<Correction> = {
  cause: ['antifreeze', 'source flow', 'air flow'],
  taken: ['from the maker', 'as typical'],
  capacityFactor: 'ratio',
  inputFactor: { optional: 'ratio' },
};

/** Shape of {@link CorrectionsInput}. */
export const correctionsInputShape: Shape<CorrectionsInput> = {
  mode: ['heating', 'cooling'],
  ratingOrigin: ['maker', 'measured', 'estimated', 'invented'],
  points: { list: ratingPointShape },
  corrections: { list: correctionShape },
};

/** No correction of antifreeze or flow moves a unit further; outside, a slip or a unit outside its envelope [1]. */
const BELIEVABLE = { atLeast: 0.8, atMost: 1.2 } as const;

/**
 * Rating points of a unit run with another fluid, loop flow or air flow than its table is for.
 *
 * Factors multiply capacity and electric input of every point; COP and ground heat follow. They come from the unit's own table; usual sizes are marked as such in
 * the result. Do not correct for what the table already holds. A factor outside 0.8 to 1.2 is refused, not brought to the limit.
 *
 * @param input - rating points and factors; see {@link CorrectionsInput}
 * @returns corrected points for `performanceMap`, the products of the factors, and findings
 * @throws InputError for impossible points, a cause that comes twice, or a factor outside its range
 * @remarks
 * Common practice of catalogues. Invariants: factors of 1 change nothing; the order of the corrections does not matter; factors and their reciprocals, where both are
 * in range, give the points back.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, ratio } = await import('../units/index.js');
 * const { points, capacityFactor } = correctedRatingPoints({
 *   mode: 'heating',
 *   ratingOrigin: 'invented',
 *   points: [
 *     { enteringFluid: celsius(0), capacity: kilowatts(8), cop: ratio(3.4) },
 *     { enteringFluid: celsius(5), capacity: kilowatts(9.1), cop: ratio(3.8) },
 *   ],
 *   corrections: [
 *     { cause: 'antifreeze', taken: 'from the maker', capacityFactor: ratio(0.97), inputFactor: ratio(0.995) },
 *     { cause: 'air flow', taken: 'from the maker', capacityFactor: ratio(0.98), inputFactor: ratio(1.04) },
 *   ],
 * });
 * expect(capacityFactor).toBeCloseTo(0.9506, 9);
 * expect(kilowatts.of(points[0]!.capacity)).toBeCloseTo(7.6048, 9);
 * ```
 */
export function correctedRatingPoints({ mode, ratingOrigin, points, corrections }: CorrectionsInput): CorrectedRatingPoints {
  demandChoice('mode', mode, ['heating', 'cooling']);
  demandChoice('ratingOrigin', ratingOrigin, ['maker', 'measured', 'estimated', 'invented']);
  const ratings = readRatings('points', mode, points);
  demandCount('corrections', corrections, 1, 3);
  corrections.forEach((correction, index) => {
    demandCorrection(`corrections.${String(index)}`, correction, corrections.slice(0, index));
  });
  const product = (of: (correction: Correction) => number): number => corrections.reduce((whole, each) => whole * of(each), 1);
  const capacityFactor = product((each) => each.capacityFactor);
  const inputFactor = product((each) => each.inputFactor ?? 1);
  const derived: Finding = { code: 'rating-points-derived', level: 'note', values: { mode, derivedBy: 'corrections' }, source: 'common practice' };
  const corrected = ratings.map(({ enteringFluid, capacity, power }) => ({
    enteringFluid: enteringFluid as RatingPoint['enteringFluid'],
    capacity: (capacity * capacityFactor) as Power,
    power: (power * inputFactor) as ElectricPower,
  }));
  readRatings('points', mode, corrected);
  return {
    derivedBy: 'corrections',
    ratingOrigin,
    points: corrected,
    capacityFactor: capacityFactor as Ratio,
    inputFactor: inputFactor as Ratio,
    findings: [derived, ...corrections.flatMap(typical)],
  };
}

function demandCorrection(argument: string, correction: Correction, before: readonly Correction[]): void {
  demandObject(argument, correction);
  const { cause, taken, capacityFactor, inputFactor } = correction;
  demandChoice(`${argument}.cause`, cause, ['antifreeze', 'source flow', 'air flow']);
  demandChoice(`${argument}.taken`, taken, ['from the maker', 'as typical']);
  const hint = 'a factor, not a percentage; one so far from 1 belongs to a unit outside its envelope';
  demand(`${argument}.capacityFactor`, 'ratio', capacityFactor, BELIEVABLE, hint);
  if (inputFactor !== undefined) demand(`${argument}.inputFactor`, 'ratio', inputFactor, BELIEVABLE, hint);
  if (!before.some((each) => each.cause === cause)) return;
  throw new InputError({
    code: 'impossible',
    argument: `${argument}.cause`,
    value: cause,
    allowed: 'each cause once',
    hint: 'a second correction for the same cause would count it twice',
  });
}

function typical({ cause, taken, capacityFactor, inputFactor = 1 as Ratio }: Correction): readonly Finding[] {
  if (taken === 'from the maker') return [];
  return [{ code: 'correction-typical', level: 'warning', values: { cause, capacityFactor, inputFactor }, source: 'common practice' }];
}
