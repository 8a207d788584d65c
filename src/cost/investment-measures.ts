import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Money, Ratio, Shape, YearlyRate } from '../units/index.js';
import { EITHER_SIGN, RATE } from './limits.js';
import { A_CENT, type Payback, paybackOf, paybackShape, paysBackWithin } from './payback.js';
import { annuity, demandTerms, netRate, type StudyTerms } from './present-value.js';

/** What an alternative costs more at the start and saves every year. */
export interface InvestmentInput extends StudyTerms {
  /** What it costs more than the other at the start, below 0 where less, within ±1e13 [cur]. */
  readonly extraCost: Money;
  /** What it saves each year at today's prices, below 0 where it costs more, within ±1e13 [cur]. */
  readonly yearlySaving: Money;
  /** Yearly change of the price that is saved, −0.5 to 1; none when left out [1/a]. */
  readonly escalation?: YearlyRate;
  /** What savings earn once they are paid out, −0.5 to 1; the discount rate when left out [1/a]. */
  readonly reinvestmentRate?: YearlyRate;
}

/** Shape of {@link InvestmentInput}. */
export const investmentInputShape: Shape<InvestmentInput> = {
  discountRate: 'yearly rate',
  years: 'count',
  extraCost: 'money',
  yearlySaving: 'money',
  escalation: { optional: 'yearly rate' },
  reinvestmentRate: { optional: 'yearly rate' },
};

/** Whether an extra cost is worth it. */
export interface InvestmentMeasures {
  /** Present value of all savings [cur]. */
  readonly savingsPresent: Money;
  /** Net savings, the net present value: savings less extra cost [cur]. */
  readonly netSavings: Money;
  /** Savings to investment, SIR; absent where there is no extra cost [1]. */
  readonly savingsToInvestment?: Ratio;
  /** Adjusted internal rate of return, AIRR; absent where the savings are worth nothing or there is no extra cost [1/a]. */
  readonly adjustedReturn?: YearlyRate;
  /** Without interest and at today's prices. */
  readonly simplePayback: Payback;
  /** With interest and escalation. */
  readonly discountedPayback: Payback;
}

/** Shape of {@link InvestmentMeasures}. */
export const investmentMeasuresShape: Shape<InvestmentMeasures> = {
  savingsPresent: 'money',
  netSavings: 'money',
  savingsToInvestment: { optional: 'ratio' },
  adjustedReturn: { optional: 'yearly rate' },
  simplePayback: paybackShape,
  discountedPayback: paybackShape,
};

/** {@link InvestmentMeasures} with findings. */
export interface InvestmentResult extends InvestmentMeasures {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/**
 * Net savings, savings-to-investment ratio, adjusted return and both paybacks of an extra cost that saves every year.
 *
 * @param input - extra cost and yearly saving [cur], rates [1/a], years
 * @returns the measures; a payback that is never reached says so
 * @throws InputError when a number is out of its range
 * @remarks
 * NPV = S · UPV* − ΔI; SIR = (S · UPV*) over ΔI; AIRR = (1 + r) · SIR^(1/N) − 1; discounted payback from ΔI = S · UPV*(n). Source: `handbook135`.
 *
 * Invariants tested: at the discounted payback the net savings are 0; net savings are positive where SIR is above 1 and AIRR above r.
 * @example
 * ```ts @import.meta.vitest
 * const { money, percentPerYear } = await import('../units/index.js');
 * const terms = { discountRate: percentPerYear(3), years: 20 };
 * const measures = investmentMeasures({ ...terms, extraCost: money(13_000), yearlySaving: money(1278.288) });
 * expect(measures.netSavings).toBeCloseTo(6017.7, 1);
 * expect(measures.savingsToInvestment).toBeCloseTo(1.4629, 4);
 * expect(measures.discountedPayback).toMatchObject({ outcome: 'paid back' });
 * const never = investmentMeasures({ ...terms, extraCost: money(13_000), yearlySaving: money(300) });
 * expect(never.discountedPayback).toEqual({ outcome: 'never' });
 * ```
 */
export function investmentMeasures(input: InvestmentInput): InvestmentResult {
  demandTerms(input);
  const { extraCost, yearlySaving, escalation, reinvestmentRate, discountRate, years } = input;
  demand('extraCost', 'money', extraCost, EITHER_SIGN);
  demand('yearlySaving', 'money', yearlySaving, EITHER_SIGN);
  if (escalation !== undefined) demand('escalation', 'yearly rate', escalation, RATE);
  if (reinvestmentRate !== undefined) demand('reinvestmentRate', 'yearly rate', reinvestmentRate, RATE);
  const savingsPresent = yearlySaving * annuity(netRate(discountRate, escalation ?? 0), years);
  const measures: InvestmentMeasures = {
    ...worthOf(extraCost, savingsPresent, years, reinvestmentRate ?? discountRate),
    simplePayback: paybackOf(extraCost, yearlySaving, 0, 0),
    discountedPayback: paybackOf(extraCost, yearlySaving, discountRate, escalation ?? 0),
  };
  return { ...measures, findings: measureFindings(measures, extraCost, yearlySaving, years) };
}

/** What follows from present values alone. */
export function worthOf(
  extraCost: number,
  savingsPresent: number,
  years: number,
  reinvestmentRate: number,
): Pick<InvestmentMeasures, 'savingsPresent' | 'netSavings' | 'savingsToInvestment' | 'adjustedReturn'> {
  const paid = extraCost >= A_CENT;
  const ratio = paid ? savingsPresent / extraCost : 0;
  return {
    savingsPresent: savingsPresent as Money,
    netSavings: (savingsPresent - extraCost) as Money,
    ...(paid ? { savingsToInvestment: ratio as Ratio } : {}),
    ...(ratio > 0 ? { adjustedReturn: Math.expm1(Math.log1p(reinvestmentRate) + Math.log(ratio) / years) as YearlyRate } : {}),
  };
}

/** What to say of measures. */
export function measureFindings(
  { netSavings, simplePayback, discountedPayback }: Pick<InvestmentMeasures, 'netSavings' | 'simplePayback' | 'discountedPayback'>,
  extraCost: Money,
  yearlySaving: Money,
  years: number,
): readonly Finding[] {
  const source = 'handbook135';
  if (yearlySaving < 0) return [{ code: 'savings-negative', level: 'warning', values: { yearlySaving }, source }];
  const found: Finding[] = [];
  if (!paysBackWithin(discountedPayback, years)) {
    found.push({ code: 'payback-not-reached', level: 'warning', values: { extraCost, yearlySaving, years }, source });
  }
  if (simplePayback.outcome === 'paid back' && simplePayback.paybackYears <= years && netSavings < 0) {
    found.push({ code: 'payback-hides-loss', level: 'warning', values: { paybackYears: simplePayback.paybackYears, netSavings, years }, source });
  }
  return found;
}
