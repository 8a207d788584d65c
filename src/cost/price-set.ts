import type { Finding } from '../findings/index.js';
import type { Shape } from '../units/index.js';
import { demandText, demandYear } from './limits.js';

/** What every set of prices says of itself. */
export interface PriceSet {
  /** Currency of all its money, as the caller writes it: `EUR`, `USD`. Sets of different currencies must not be added. */
  readonly currency: string;
  /** Year of the prices, 1900 to 2300. */
  readonly priceYear: number;
}

/** Shape of {@link PriceSet}. */
export const priceSetShape: Shape<PriceSet> = { currency: 'text', priceYear: 'count' };

/** Prices older than this many years are a finding. */
const OLD = 2;

/** Refuses a set of prices that does not say what it is. */
export function demandPriceSet({ currency, priceYear }: PriceSet): void {
  demandText('currency', currency);
  demandYear('priceYear', priceYear);
}

/** A finding where prices are more than two years older than the day they are used on; the day is an input, there is no clock here. */
export function priceAge({ priceYear }: PriceSet, dateYear: number | undefined): readonly Finding[] {
  if (dateYear === undefined) return [];
  demandYear('dateYear', dateYear);
  return dateYear - priceYear > OLD ? [{ code: 'prices-old', level: 'warning', values: { priceYear, dateYear }, source: 'common practice' }] : [];
}
