import { demand, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { Money, Ratio, Shape, YearlyRate } from '../units/index.js';
import { type InvestmentMeasures, investmentMeasuresShape, measureFindings, worthOf } from './investment-measures.js';
import { type CashPlan, cashPlanShape, demandPlan, lifeCycle, type LifeCycleCost, lifeCycleCostShape } from './life-cycle-cost.js';
import { RATE } from './limits.js';
import { A_CENT, type Payback, paybackOf } from './payback.js';
import { demandTerms, presentOf, type StudyTerms } from './present-value.js';
import { demandOutlook, type PriceOutlook, priceOutlookShape, type PriceScenario, scenarioWeight } from './price-scenarios.js';

/** One way of heating with what may become of the price of its energy. */
export interface LifeCyclePlan extends CashPlan {
  /** The price of its energy; as today for ever when left out. */
  readonly outlook?: PriceOutlook;
}

/** Shape of {@link LifeCyclePlan}. */
export const lifeCyclePlanShape: Shape<LifeCyclePlan> = /* @__PURE__ */ joinedShape(cashPlanShape, { outlook: { optional: priceOutlookShape } });

/** What {@link compareLifeCycles} needs. */
export interface CompareLifeCyclesInput extends StudyTerms {
  /** What would be done otherwise. */
  readonly baseline: LifeCyclePlan;
  /** What is looked at. */
  readonly alternative: LifeCyclePlan;
  /** What savings earn once they are paid out, −0.5 to 1; the discount rate when left out [1/a]. */
  readonly reinvestmentRate?: YearlyRate;
}

/** Shape of {@link CompareLifeCyclesInput}. */
export const compareLifeCyclesInputShape: Shape<CompareLifeCyclesInput> = {
  discountRate: 'yearly rate',
  years: 'count',
  baseline: lifeCyclePlanShape,
  alternative: lifeCyclePlanShape,
  reinvestmentRate: { optional: 'yearly rate' },
};

/** Both ways of heating under one course of prices. */
export interface ScenarioOfCosts {
  /** Which end of both outlooks. */
  readonly scenario: PriceScenario;
  /** What would be done otherwise. */
  readonly baselineCost: LifeCycleCost;
  /** What is looked at. */
  readonly alternativeCost: LifeCycleCost;
  /** Life-cycle cost saved, the net present value; below 0 where it costs more [cur]. */
  readonly netSavings: Money;
}

/** One way of heating beside another over the years. */
export interface LifeCycleComparison {
  /** With both prices low, central and high. */
  readonly scenarios: readonly ScenarioOfCosts[];
  /** Net savings with the price of the baseline low and that of the alternative high [cur]. */
  readonly worstNetSavings: Money;
  /** And the other way round [cur]. */
  readonly bestNetSavings: Money;
  /** Investment that the alternative asks for beyond the baseline: first cost and replacements less residual, in money of today [cur]. */
  readonly extraCost: Money;
  /** What it saves in the first year at central prices [cur]. */
  readonly yearlySaving: Money;
  /** At central prices; paybacks are those of the extra first cost, the discounted one in whole years with the replacements on the way and no residual. */
  readonly measures: InvestmentMeasures;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of the numbers of a {@link LifeCycleComparison}. */
export const lifeCycleComparisonShape: Shape<Omit<LifeCycleComparison, 'findings'>> = {
  scenarios: {
    list: { scenario: ['low', 'central', 'high'], baselineCost: lifeCycleCostShape, alternativeCost: lifeCycleCostShape, netSavings: 'money' },
  },
  worstNetSavings: 'money',
  bestNetSavings: 'money',
  extraCost: 'money',
  yearlySaving: 'money',
  measures: investmentMeasuresShape,
};

/**
 * One way of heating beside another: life-cycle costs and net savings with low, central and high energy prices, and the measures at central ones.
 *
 * @param input - two plans at today's prices [cur], rates [1/a], years
 * @returns costs, net savings, measures, findings
 * @throws InputError when a number is out of its range or a band is not in order
 * @remarks Source: `handbook135`. Invariants tested: net savings are the difference of two {@link lifeCycleCost}s, and the same with baseline and alternative
 * exchanged but for the sign; worst ≤ every scenario ≤ best.
 * @example
 * ```ts @import.meta.vitest
 * const { fraction, money, percentPerYear } = await import('../units/index.js');
 * const escalation = { low: percentPerYear(-1), estimate: percentPerYear(1), high: percentPerYear(4), coverage: fraction(0.8) };
 * const oil = { label: 'oil', firstCost: money(9000), yearlyEnergyCost: money(2400), outlook: { escalation } };
 * const ground = { label: 'ground source', firstCost: money(22_000), yearlyEnergyCost: money(1050) };
 * const { scenarios } = compareLifeCycles({ baseline: oil, alternative: ground, discountRate: percentPerYear(3), years: 20 });
 * expect(scenarios.map(({ netSavings }) => Math.round(netSavings))).toEqual([3879, 10697, 24586]);
 * ```
 */
export function compareLifeCycles(input: CompareLifeCyclesInput): LifeCycleComparison {
  demandTerms(input);
  const { baseline, alternative, reinvestmentRate, discountRate, years } = input;
  for (const [place, plan] of [
    ['baseline', baseline],
    ['alternative', alternative],
  ] as const) {
    demandObject(place, plan);
    locate(place, () => {
      demandPlan(plan, years);
      const { outlook } = plan;
      if (outlook !== undefined) locate('outlook', () => demandOutlook(outlook));
    });
  }
  if (reinvestmentRate !== undefined) demand('reinvestmentRate', 'yearly rate', reinvestmentRate, RATE);
  const costOf = (plan: LifeCyclePlan, scenario: PriceScenario): LifeCycleCost =>
    lifeCycle(plan, input, scenarioWeight(plan.outlook ?? {}, scenario, input));
  const saved = (ofBase: PriceScenario, ofAlternative: PriceScenario): Money =>
    (costOf(baseline, ofBase).lifeCycleCost - costOf(alternative, ofAlternative).lifeCycleCost) as Money;
  const scenarios = (['low', 'central', 'high'] as const).map((scenario) => ({
    scenario,
    baselineCost: costOf(baseline, scenario),
    alternativeCost: costOf(alternative, scenario),
    netSavings: saved(scenario, scenario),
  }));
  const [was, is] = [costOf(baseline, 'central'), costOf(alternative, 'central')];
  const extraCost = (investmentOf(is) - investmentOf(was)) as Money;
  const savingsPresent = was.energyPresent + was.upkeepPresent - (is.energyPresent + is.upkeepPresent);
  const yearlySaving = savingOf(input, 1) as Money;
  const measures: InvestmentMeasures = {
    ...worthOf(extraCost, savingsPresent, years, reinvestmentRate ?? discountRate),
    simplePayback: paybackOf(alternative.firstCost - baseline.firstCost, savingOf(input, 0), 0, 0),
    discountedPayback: cumulatedPayback(input),
  };
  const comparison = { scenarios, worstNetSavings: saved('low', 'high'), bestNetSavings: saved('high', 'low'), extraCost, yearlySaving, measures };
  const residual = is.residualPresent - was.residualPresent;
  const extraFirst = (alternative.firstCost - baseline.firstCost) as Money;
  return { ...comparison, findings: findingsOf(comparison, { residualPresent: residual as Money, extraFirst }, years) };
}

const investmentOf = ({ firstCost, replacementsPresent, residualPresent }: LifeCycleCost): number =>
  firstCost + replacementsPresent - residualPresent;

/** What a year saves in running cost at its own central prices, not discounted; year 0 is at today's. */
function savingOf({ baseline, alternative }: CompareLifeCyclesInput, year: number): number {
  const running = ({ yearlyEnergyCost, yearlyUpkeep, outlook }: LifeCyclePlan): number =>
    yearlyEnergyCost * (outlook?.priceLevel?.estimate ?? 1) * (1 + (outlook?.escalation?.estimate ?? 0)) ** year + (yearlyUpkeep ?? 0);
  return running(baseline) - running(alternative);
}

/** The year at whose end all that was paid has come back, and does not go again before the study ends. */
function cumulatedPayback(input: CompareLifeCyclesInput): Payback {
  const { baseline, alternative, discountRate, years } = input;
  if (alternative.firstCost - baseline.firstCost < A_CENT) return { outcome: 'nothing to pay back' };
  const replaced = ({ replacements = [] }: LifeCyclePlan, at: number): number =>
    replacements.reduce((sum, { year, replacementCost }) => sum + (year === at ? replacementCost : 0), 0);
  let balance = baseline.firstCost - alternative.firstCost;
  let since: number | undefined;
  for (let year = 1; year <= years; year += 1) {
    balance += (savingOf(input, year) + replaced(baseline, year) - replaced(alternative, year)) * presentOf(discountRate, year);
    since = balance < 0 ? undefined : (since ?? year);
  }
  return since === undefined ? { outcome: 'never' } : { outcome: 'paid back', paybackYears: since as Ratio };
}

function findingsOf(
  { measures, yearlySaving, worstNetSavings, bestNetSavings }: Omit<LifeCycleComparison, 'findings'>,
  { residualPresent, extraFirst }: Readonly<Record<'residualPresent' | 'extraFirst', Money>>,
  years: number,
): readonly Finding[] {
  const { netSavings } = measures;
  const source = 'handbook135';
  const found = [...measureFindings(measures, extraFirst, yearlySaving, years)];
  if (netSavings > 0 && residualPresent > netSavings) {
    found.push({ code: 'residual-dominates', level: 'warning', values: { residualPresent, netSavings }, source });
  }
  if (worstNetSavings < 0 && bestNetSavings > 0) {
    found.push({ code: 'outcome-depends-on-prices', level: 'note', values: { worstNetSavings, bestNetSavings }, source });
  }
  return found;
}
