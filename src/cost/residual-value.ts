import { demand } from '../errors/index.js';
import type { Money, Ratio, Shape } from '../units/index.js';
import { MONEY } from './limits.js';

/** Something that outlives the study, or is put in late in it. */
export interface ResidualValueInput {
  /** What it cost when new, 0 to 1e13 [cur]. */
  readonly firstCost: Money;
  /** How long it lasts, 0.1 to 200 years: a loop about 50, a unit 15 to 25 [1]. */
  readonly lifeYears: Ratio;
  /** How old it is at the end of the study, 0 to 200 years [1]. */
  readonly ageYears: Ratio;
}

/** Shape of {@link ResidualValueInput}. */
export const residualValueInputShape: Shape<ResidualValueInput> = { firstCost: 'money', lifeYears: 'ratio', ageYears: 'ratio' };

/**
 * What a thing is still worth at the end of a study, by the share of its life that is left; nothing once its life is over.
 *
 * A straight line is a convention, not a market: nobody buys a used loop without the house.
 *
 * @param of - cost when new [cur], life and age in years [1]
 * @returns money at the end of the study, not discounted [cur]
 * @throws InputError when a number is out of its range
 * @remarks Source: `handbook135`.
 * @example
 * ```ts @import.meta.vitest
 * const { money, ratio } = await import('../units/index.js');
 * expect(straightLineResidual({ firstCost: money(10_000), lifeYears: ratio(50), ageYears: ratio(20) })).toBe(6000);
 * expect(straightLineResidual({ firstCost: money(10_000), lifeYears: ratio(15), ageYears: ratio(20) })).toBe(0);
 * ```
 */
export function straightLineResidual({ firstCost, lifeYears, ageYears }: ResidualValueInput): Money {
  demand('firstCost', 'money', firstCost, MONEY);
  demand('lifeYears', 'ratio', lifeYears, { atLeast: 0.1, atMost: 200 });
  demand('ageYears', 'ratio', ageYears, { atLeast: 0, atMost: 200 });
  // Written as a difference of years so that a whole share of a life comes out whole; a life that is over leaves nothing.
  return (ageYears >= lifeYears ? 0 : (firstCost * (lifeYears - ageYears)) / lifeYears) as Money;
}
