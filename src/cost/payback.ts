import type { Ratio, Shape } from '../units/index.js';
import { netRate } from './present-value.js';

/** How long an extra cost takes to come back. A payback says nothing about what comes after it: show it beside the net savings only. */
export type Payback =
  | {
      /** The alternative costs no more to begin with. */
      readonly outcome: 'nothing to pay back';
    }
  | {
      /** It comes back. */
      readonly outcome: 'paid back';
      /** After so many years, up to 1000, also beyond the end of the study; of two plans compared year by year whole ones within it [1]. */
      readonly paybackYears: Ratio;
    }
  | {
      /** It never comes back, or not within a thousand years; of two plans compared year by year, not within the study. */
      readonly outcome: 'never';
    };

/** Shape of {@link Payback}. */
export const paybackShape: Shape<Payback> = {
  by: 'outcome',
  oneOf: { 'nothing to pay back': {}, 'paid back': { paybackYears: 'ratio' }, never: {} },
};

/** Below this an extra cost is none [cur]. */
export const A_CENT = 0.01;
/** No study looks further. */
const LONGEST = 1000;

/**
 * Years after which savings have made up for an extra cost: n with extra = saving · UPV(k, n), n = −ln(1 − k · extra/saving)/ln(1 + k).
 * With k = (d − e)/(1 + e) that is the discounted payback under escalation, with k = 0 the simple one.
 *
 * @param extraCost - what is paid at the start [cur]
 * @param yearlySaving - what each year saves at today's prices [cur]
 * @param discountRate - of the study [1/a]
 * @param escalation - of the price that is saved [1/a]
 * @returns the payback
 */
export function paybackOf(extraCost: number, yearlySaving: number, discountRate: number, escalation: number): Payback {
  if (extraCost < A_CENT) return { outcome: 'nothing to pay back' };
  if (yearlySaving <= 0) return { outcome: 'never' };
  const simple = extraCost / yearlySaving;
  const rate = netRate(discountRate, escalation);
  const paybackYears = rate === 0 ? simple : -Math.log1p(-rate * simple) / Math.log1p(rate);
  // Beyond what all savings for ever are worth the logarithm has no value.
  return paybackYears <= LONGEST ? { outcome: 'paid back', paybackYears: paybackYears as Ratio } : { outcome: 'never' };
}

/** Whether a payback lies within so many years. */
export const paysBackWithin = (payback: Payback, years: number): boolean =>
  payback.outcome === 'nothing to pay back' || (payback.outcome === 'paid back' && payback.paybackYears <= years);
