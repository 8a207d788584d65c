import { type AllowedRange, demand, demandObject, InputError } from '../errors/index.js';
import { type Band, type BandShape, bandShape } from '../states/index.js';
import type { Shape } from '../units/index.js';
import { RATE } from './limits.js';
import { annuity, netRate, type StudyTerms } from './present-value.js';

/** Which end of what may become of prices. */
export type PriceScenario = 'low' | 'central' | 'high';

/** What may become of the price of one energy. */
export interface PriceOutlook {
  /** Price over the one that the yearly cost was reckoned with, each 0 to 10; 1 when left out [1]. */
  readonly priceLevel?: Band<'ratio'>;
  /** Yearly change from then on, each −0.5 to 1; none when left out [1/a]. */
  readonly escalation?: Band<'yearly rate'>;
}

const levelShape: BandShape<'ratio'> = /* @__PURE__ */ bandShape('ratio');
const escalationShape: BandShape<'yearly rate'> = /* @__PURE__ */ bandShape('yearly rate');

/** Shape of {@link PriceOutlook}. */
export const priceOutlookShape: Shape<PriceOutlook> = { priceLevel: { optional: levelShape }, escalation: { optional: escalationShape } };

/** Refuses an outlook that is no outlook. */
export function demandOutlook(outlook: PriceOutlook): void {
  demandObject('', outlook);
  const { priceLevel, escalation } = outlook;
  if (priceLevel !== undefined) demandBand('priceLevel', 'ratio', priceLevel, { atLeast: 0, atMost: 10 });
  if (escalation !== undefined) demandBand('escalation', 'yearly rate', escalation, RATE);
}

function demandBand<K extends 'ratio' | 'yearly rate'>(argument: string, kind: K, band: Band<K>, allowed: AllowedRange): void {
  demandObject(argument, band);
  const { low, estimate, high, coverage } = band;
  for (const [end, value] of [
    ['low', low],
    ['estimate', estimate],
    ['high', high],
  ] as const)
    demand(`${argument}.${end}`, kind, value, allowed);
  demand(`${argument}.coverage`, 'fraction', coverage, { atLeast: 0, atMost: 1 });
  const wrong = low > estimate ? 'low' : estimate > high ? 'high' : undefined;
  if (wrong === undefined) return;
  throw new InputError({
    code: 'impossible',
    argument: `${argument}.${wrong}`,
    value: { kind, value: band[wrong] },
    allowed: 'low, estimate and high in this order',
  });
}

/** Weight of a yearly energy cost in a scenario: price level times UPV*. */
export function scenarioWeight({ priceLevel, escalation }: PriceOutlook, scenario: PriceScenario, { discountRate, years }: StudyTerms): number {
  const end = scenario === 'central' ? 'estimate' : scenario;
  return (priceLevel?.[end] ?? 1) * annuity(netRate(discountRate, escalation?.[end] ?? 0), years);
}
