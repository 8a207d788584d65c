import { demand } from '../errors/index.js';
import type { Shape, YearlyRate } from '../units/index.js';
import { RATE } from './limits.js';

/** A real rate and the inflation it is to be seen with. */
export interface NominalRateInput {
  /** Rate over prices that stand still, −0.5 to 1 [1/a]. */
  readonly realRate: YearlyRate;
  /** Yearly rise of all prices, −0.5 to 1 [1/a]. */
  readonly inflation: YearlyRate;
}

/** Shape of {@link NominalRateInput}. */
export const nominalRateInputShape: Shape<NominalRateInput> = { realRate: 'yearly rate', inflation: 'yearly rate' };

/**
 * Nominal rate of a real one, (1 + d)(1 + i) − 1: for discount rates and escalations alike. Real rates go with prices of today, nominal ones
 * with prices as they will be; a study must not mix them.
 *
 * @param of - real rate and inflation [1/a]
 * @returns rate [1/a]
 * @throws InputError when a number is out of its range
 * @remarks Source: `handbook135`. Invariant tested: the present value of a cost is the same either way.
 * @example
 * ```ts @import.meta.vitest
 * const { percentPerYear } = await import('../units/index.js');
 * const rate = nominalRate({ realRate: percentPerYear(3), inflation: percentPerYear(2) });
 * expect(percentPerYear.of(rate)).toBeCloseTo(5.06, 12);
 * ```
 */
export function nominalRate({ realRate: real, inflation }: NominalRateInput): YearlyRate {
  demand('realRate', 'yearly rate', real, RATE);
  demand('inflation', 'yearly rate', inflation, RATE);
  return (real + inflation + real * inflation) as YearlyRate;
}

/** A nominal rate and the inflation in it. */
export interface RealRateInput {
  /** Rate with prices as they will be, −0.5 to 1 [1/a]. */
  readonly nominalRate: YearlyRate;
  /** Yearly rise of all prices, −0.5 to 1 [1/a]. */
  readonly inflation: YearlyRate;
}

/** Shape of {@link RealRateInput}. */
export const realRateInputShape: Shape<RealRateInput> = { nominalRate: 'yearly rate', inflation: 'yearly rate' };

/**
 * Real rate of a nominal one, (1 + d)/(1 + i) − 1.
 *
 * @param of - nominal rate and inflation [1/a]
 * @returns rate [1/a]
 * @throws InputError when a number is out of its range
 * @remarks Source: `handbook135`.
 * @example
 * ```ts @import.meta.vitest
 * const { percentPerYear } = await import('../units/index.js');
 * const rate = realRate({ nominalRate: percentPerYear(5.06), inflation: percentPerYear(2) });
 * expect(percentPerYear.of(rate)).toBeCloseTo(3, 12);
 * ```
 */
export function realRate({ nominalRate: nominal, inflation }: RealRateInput): YearlyRate {
  demand('nominalRate', 'yearly rate', nominal, RATE);
  demand('inflation', 'yearly rate', inflation, RATE);
  return ((nominal - inflation) / (1 + inflation)) as YearlyRate;
}
