import { demand, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { Money, Ratio, Shape, YearlyRate } from '../units/index.js';
import { demandText, MONEY, RATE } from './limits.js';
import { annuity, demandTerms, indexedPresentValue, netRate, presentOf, type StudyTerms } from './present-value.js';

/** Something that has to be bought again. */
export interface Replacement {
  /** At the end of which year of the study, 1 to its last. */
  readonly year: number;
  /** At today's prices, 0 to 1e13 [cur]. */
  readonly replacementCost: Money;
}

/** What one way of heating costs through the years, at today's prices. */
export interface CashPlan {
  /** What it is called. */
  readonly label: string;
  /** Paid at the start, grants taken off, 0 to 1e13 [cur]. */
  readonly firstCost: Money;
  /** What is bought again on the way, up to 50; nothing when left out. */
  readonly replacements?: readonly Replacement[];
  /** What is left at the end, not discounted, 0 to 1e13; nothing when left out [cur]. */
  readonly residualValue?: Money;
  /** Energy of a year, 0 to 1e13 [cur]. */
  readonly yearlyEnergyCost: Money;
  /** Upkeep of a year: service, sweep, meter rent, 0 to 1e13; none when left out [cur]. */
  readonly yearlyUpkeep?: Money;
}

/** Shape of {@link CashPlan}. */
export const cashPlanShape: Shape<CashPlan> = {
  label: 'text',
  firstCost: 'money',
  replacements: { optional: { list: { year: 'count', replacementCost: 'money' } } },
  residualValue: { optional: 'money' },
  yearlyEnergyCost: 'money',
  yearlyUpkeep: { optional: 'money' },
};

/** What {@link lifeCycleCost} needs. */
export interface LifeCycleInput extends StudyTerms {
  /** What is paid when. */
  readonly plan: CashPlan;
  /** Yearly change of the energy price, −0.5 to 1; none when left out [1/a]. */
  readonly escalation?: YearlyRate;
  /** Instead of it: the energy price at the end of each year over today's, one for each year of the study, 0 to 100 [1]. */
  readonly priceIndices?: readonly Ratio[];
}

/** Shape of {@link LifeCycleInput}. */
export const lifeCycleInputShape: Shape<LifeCycleInput> = {
  discountRate: 'yearly rate',
  years: 'count',
  plan: cashPlanShape,
  escalation: { optional: 'yearly rate' },
  priceIndices: { optional: { list: 'ratio' } },
};

/** All costs of a study in money of today. */
export interface LifeCycleCost {
  /** What it is called. */
  readonly label: string;
  /** Paid at the start [cur]. */
  readonly firstCost: Money;
  /** Replacements [cur]. */
  readonly replacementsPresent: Money;
  /** What is left at the end; taken off [cur]. */
  readonly residualPresent: Money;
  /** Energy of all years [cur]. */
  readonly energyPresent: Money;
  /** Upkeep of all years [cur]. */
  readonly upkeepPresent: Money;
  /** First cost + replacements − residual + energy + upkeep, in that order [cur]. */
  readonly lifeCycleCost: Money;
  /** The same as an even payment at the end of every year [cur]. */
  readonly yearlyEquivalent: Money;
}

/** Shape of {@link LifeCycleCost}. */
export const lifeCycleCostShape: Shape<LifeCycleCost> = {
  label: 'text',
  firstCost: 'money',
  replacementsPresent: 'money',
  residualPresent: 'money',
  energyPresent: 'money',
  upkeepPresent: 'money',
  lifeCycleCost: 'money',
  yearlyEquivalent: 'money',
};

/**
 * Life-cycle cost, LCC = I + Σ R·SPV − residual·SPV + E·UPV* + OM·UPV, with payments at the ends of the years.
 *
 * @param input - payments at today's prices [cur], rates [1/a], years
 * @returns present values [cur]
 * @throws InputError when a number is out of its range, a replacement lies outside the study, or the price has two courses
 * @remarks Source: `handbook135`. Invariants tested: linear in every payment; the parts add up to the total.
 * @example
 * ```ts @import.meta.vitest
 * const { money, percentPerYear } = await import('../units/index.js');
 * const replacements = [{ year: 12, replacementCost: money(3000) }];
 * const yearly = { yearlyEnergyCost: money(1005), yearlyUpkeep: money(120) };
 * const plan = { label: 'ground source', firstCost: money(22_000), replacements, residualValue: money(2000), ...yearly };
 * const terms = { discountRate: percentPerYear(3), years: 20, escalation: percentPerYear(1) };
 * expect(lifeCycleCost({ plan, ...terms }).lifeCycleCost).toBeCloseTo(41_246.72, 2);
 * ```
 */
export function lifeCycleCost(input: LifeCycleInput): LifeCycleCost {
  demandTerms(input);
  const { plan, escalation, priceIndices, discountRate, years } = input;
  demandObject('plan', plan);
  locate('plan', () => demandPlan(plan, years));
  return lifeCycle(plan, input, energyFactor(discountRate, years, escalation, priceIndices));
}

function energyFactor(discountRate: YearlyRate, years: number, escalation?: YearlyRate, priceIndices?: readonly Ratio[]): number {
  if (escalation !== undefined) demand('escalation', 'yearly rate', escalation, RATE);
  if (priceIndices === undefined) return annuity(netRate(discountRate, escalation ?? 0), years);
  demandCount('priceIndices', priceIndices, years, years);
  if (escalation !== undefined) {
    const value = { kind: 'yearly rate', value: escalation } as const;
    throw new InputError({
      code: 'impossible',
      argument: 'escalation',
      value,
      allowed: 'nothing beside price indices, which are the course already',
    });
  }
  return indexedPresentValue({ discountRate, priceIndices });
}

/** Refuses payments that no study has. */
export function demandPlan({ label, firstCost, replacements, residualValue, yearlyEnergyCost, yearlyUpkeep }: CashPlan, years: number): void {
  demandText('label', label);
  demand('firstCost', 'money', firstCost, MONEY);
  if (replacements !== undefined) demandCount('replacements', replacements, 1, 50);
  replacements?.forEach((each, index) => {
    const place = `replacements.${String(index)}`;
    demandObject(place, each);
    demand(`${place}.year`, 'count', each.year, { atLeast: 1, atMost: years }, 'a replacement falls within the years of the study');
    demand(`${place}.replacementCost`, 'money', each.replacementCost, MONEY);
  });
  if (residualValue !== undefined) demand('residualValue', 'money', residualValue, MONEY);
  demand('yearlyEnergyCost', 'money', yearlyEnergyCost, MONEY);
  if (yearlyUpkeep !== undefined) demand('yearlyUpkeep', 'money', yearlyUpkeep, MONEY);
}

/** The present values of a plan, its energy weighted with a factor. */
export function lifeCycle(plan: CashPlan, { discountRate, years }: StudyTerms, energyWeight: number): LifeCycleCost {
  const { label, firstCost, replacements = [], residualValue = 0, yearlyEnergyCost, yearlyUpkeep = 0 } = plan;
  const replaced = replacements.reduce((sum, { year, replacementCost }) => sum + replacementCost * presentOf(discountRate, year), 0);
  const residual = residualValue * presentOf(discountRate, years);
  const energy = yearlyEnergyCost * energyWeight;
  const upkeep = yearlyUpkeep * annuity(discountRate, years);
  const total = firstCost + replaced - residual + energy + upkeep;
  return {
    label,
    firstCost,
    replacementsPresent: replaced as Money,
    residualPresent: residual as Money,
    energyPresent: energy as Money,
    upkeepPresent: upkeep as Money,
    lifeCycleCost: total as Money,
    yearlyEquivalent: (total / annuity(discountRate, years)) as Money,
  };
}
