import { demand, demandCount } from '../errors/index.js';
import type { Ratio, Shape, YearlyRate } from '../units/index.js';
import { RATE, STUDY_YEARS } from './limits.js';

/** What money later is worth now: the terms of a study. */
export interface StudyTerms {
  /** What money earns elsewhere, real with constant prices, nominal with prices as they will be; −0.5 to 1 [1/a]. */
  readonly discountRate: YearlyRate;
  /** Length of the study, 1 to 100 whole years. */
  readonly years: number;
}

/** Shape of {@link StudyTerms}. */
export const studyTermsShape: Shape<StudyTerms> = { discountRate: 'yearly rate', years: 'count' };

/** Refuses terms that no study has. */
export function demandTerms({ discountRate, years }: StudyTerms): void {
  demand('discountRate', 'yearly rate', discountRate, RATE);
  demand('years', 'count', years, STUDY_YEARS);
}

/**
 * Present value of one unit of money at the end of a year, SPV = (1 + d)^−N.
 *
 * @param terms - discount rate [1/a], years from now
 * @returns the factor [1]
 * @throws InputError when a number is out of its range
 * @remarks Source: `handbook135`. Invariant tested: SPV = 1 − d · UPV.
 * @example
 * ```ts @import.meta.vitest
 * const { percentPerYear } = await import('../units/index.js');
 * expect(singlePresentValue({ discountRate: percentPerYear(3), years: 20 })).toBeCloseTo(0.553676, 6);
 * ```
 */
export function singlePresentValue(terms: StudyTerms): Ratio {
  demandTerms(terms);
  return presentOf(terms.discountRate, terms.years) as Ratio;
}

/** (1 + d)^−n without loss for a small rate. */
export const presentOf = (discountRate: number, years: number): number => Math.exp(-years * Math.log1p(discountRate));

/**
 * Present value of one unit of money at the end of every year, UPV = (1 − (1 + d)^−N)/d, which is N without interest.
 *
 * @param terms - discount rate [1/a], years
 * @returns the factor [1]
 * @throws InputError when a number is out of its range
 * @remarks Source: `handbook135`; checked against printed tables at 3 % and 0.25 % and against rational arithmetic near d = 0.
 * @example
 * ```ts @import.meta.vitest
 * const { percentPerYear } = await import('../units/index.js');
 * expect(uniformPresentValue({ discountRate: percentPerYear(3), years: 20 })).toBeCloseTo(14.877475, 6);
 * expect(uniformPresentValue({ discountRate: percentPerYear(0), years: 20 })).toBe(20);
 * ```
 */
export function uniformPresentValue(terms: StudyTerms): Ratio {
  demandTerms(terms);
  return annuity(terms.discountRate, terms.years) as Ratio;
}

/** (1 − (1 + k)^−n)/k, smooth through k = 0. */
export const annuity = (rate: number, years: number): number => (rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate);

/** A stream of costs whose price moves by a constant rate. */
export interface EscalatedTerms extends StudyTerms {
  /** Yearly change of the price, real or nominal as the discount rate is; −0.5 to 1 [1/a]. */
  readonly escalation: YearlyRate;
}

/** Shape of {@link EscalatedTerms}. */
export const escalatedTermsShape: Shape<EscalatedTerms> = { discountRate: 'yearly rate', years: 'count', escalation: 'yearly rate' };

/**
 * The rate that alone does to a constant price what discount and escalation do together, (d − e)/(1 + e). The difference of near numbers is
 * exact, so that everything built on it is smooth where e = d.
 */
export const netRate = (discountRate: number, escalation: number): number => (discountRate - escalation) / (1 + escalation);

/**
 * Present value of a yearly cost of one unit at today's price while the price moves, UPV* = (1 + e)/(d − e) · [1 − ((1 + e)/(1 + d))^N],
 * which is N where e = d.
 *
 * @param terms - discount rate and escalation [1/a], years
 * @returns the factor [1]
 * @throws InputError when a number is out of its range
 * @remarks Computed as UPV at the rate (d − e)/(1 + e), which is the same and does not lose digits near e = d. Source: `handbook135`.
 * @example
 * ```ts @import.meta.vitest
 * const { percentPerYear } = await import('../units/index.js');
 * const terms = { discountRate: percentPerYear(3), years: 20 };
 * expect(escalatedPresentValue({ ...terms, escalation: percentPerYear(1) })).toBeCloseTo(16.382723, 6);
 * expect(escalatedPresentValue({ ...terms, escalation: percentPerYear(3) })).toBe(20);
 * ```
 */
export function escalatedPresentValue(terms: EscalatedTerms): Ratio {
  demandTerms(terms);
  demand('escalation', 'yearly rate', terms.escalation, RATE);
  return annuity(netRate(terms.discountRate, terms.escalation), terms.years) as Ratio;
}

/** A stream of costs whose price is forecast year by year. */
export interface IndexedTerms {
  /** What money earns elsewhere; −0.5 to 1 [1/a]. */
  readonly discountRate: YearlyRate;
  /** Price at the end of each year over the price today, 1 to 100 of them, each 0 to 100 [1]. */
  readonly priceIndices: readonly Ratio[];
}

/** Shape of {@link IndexedTerms}. */
export const indexedTermsShape: Shape<IndexedTerms> = { discountRate: 'yearly rate', priceIndices: { list: 'ratio' } };

/**
 * Present value of a yearly cost of one unit at today's price while the price follows a forecast, Σ I(t)/(1 + d)^t.
 *
 * @param terms - discount rate [1/a], indices [1]
 * @returns the factor [1]
 * @throws InputError when a number is out of its range
 * @remarks Source: `handbook135`. Invariant tested: indices (1 + e)^t give the factor of a constant escalation.
 * @example
 * ```ts @import.meta.vitest
 * const { percentPerYear, ratio } = await import('../units/index.js');
 * const priceIndices = [1, 1, 1].map((index) => ratio(index));
 * expect(indexedPresentValue({ discountRate: percentPerYear(3), priceIndices })).toBeCloseTo(2.828611, 6);
 * ```
 */
export function indexedPresentValue({ discountRate, priceIndices }: IndexedTerms): Ratio {
  demand('discountRate', 'yearly rate', discountRate, RATE);
  demandCount('priceIndices', priceIndices, 1, 100);
  priceIndices.forEach((index, place) => demand(`priceIndices.${String(place)}`, 'ratio', index, { atLeast: 0, atMost: 100 }));
  return priceIndices.reduce((sum, index, place) => sum + index * presentOf(discountRate, place + 1), 0) as Ratio;
}

/**
 * Yearly payment that one unit of money today comes to, CRF = 1/UPV.
 *
 * @param terms - discount rate [1/a], years
 * @returns the factor [1]
 * @throws InputError when a number is out of its range
 * @remarks Source: `handbook135`.
 * @example
 * ```ts @import.meta.vitest
 * const { percentPerYear } = await import('../units/index.js');
 * expect(capitalRecoveryFactor({ discountRate: percentPerYear(5), years: 20 })).toBeCloseTo(0.080243, 6);
 * ```
 */
export function capitalRecoveryFactor(terms: StudyTerms): Ratio {
  return (1 / uniformPresentValue(terms)) as Ratio;
}
