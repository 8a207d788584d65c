import type { CostFindingValues } from '../../findings/cost.js';
import type { FindingTexts } from './finding-texts.js';

const yearsText = (years: number): string => (years === 1 ? 'one year' : `${String(years)} years`);

/** Texts of the findings of the cost room. */
export const costFindingTexts: FindingTexts<CostFindingValues> = {
  'payback-not-reached': ({ extraCost, yearlySaving, years }, show) =>
    `An extra ${show('money', extraCost)} at the start against ${show('money', yearlySaving)} saved a year does not come back within ` +
    `${yearsText(years)} with interest counted. Comfort, noise or emissions may still speak for it; the money does not.`,
  'savings-negative': ({ yearlySaving }, show) =>
    `It costs more to run: ${show('money', -yearlySaving)} more in the first year. An extra cost at the start does not come back from that.`,
  'payback-hides-loss': ({ paybackYears, netSavings, years }, show) =>
    `The simple payback of ${show('ratio', paybackYears)} years looks good, and yet ${show('money', -netSavings)} is lost over ${yearsText(years)} once ` +
    `interest is counted. Go by the net savings.`,
  'residual-dominates': ({ residualPresent, netSavings }, show) =>
    `Of the net savings of ${show('money', netSavings)}, all and more is what is left at the end, worth ${show('money', residualPresent)} today. ` +
    `Nobody pays for that before the house is sold; look at a longer study, too.`,
  'outcome-depends-on-prices': ({ worstNetSavings, bestNetSavings }, show) =>
    `Depending on what energy will cost, net savings lie between ${show('money', worstNetSavings)} and ${show('money', bestNetSavings)}: ` +
    `whether money is saved is open.`,
  'efficiency-basis-converted': ({ label, givenBasis, efficiency, usedEfficiency, lowerOverHigher }, show) =>
    `The efficiency of “${label}”, ${show('ratio', efficiency)}, counts on the ${givenBasis} heating value, the price on the other. With a ratio of lower to higher of ` +
    `${show('ratio', lowerOverHigher)} it is ${show('ratio', usedEfficiency)} on the basis of the price, and was taken so.`,
  'efficiency-above-fuel': ({ label, efficiency }, show) =>
    `The efficiency of “${label}”, ${show('ratio', efficiency)} on the higher heating value, is more heat than the fuel holds. Boilers do not do that, only a heat pump does; see whether ` +
    `the figure belongs to the lower heating value.`,
  'prices-old': ({ priceYear, dateYear }) =>
    `Prices are of ${String(priceYear)}, the reckoning of ${String(dateYear)}. Take those of the last bill before deciding.`,
  'demand-charge-large': ({ demandCost, totalCost }, show) =>
    `The charge for the highest hours makes ${show('money', demandCost)} of the yearly ${show('money', totalCost)}. Auxiliary heat in a cold hour sets it: ` +
    `see what a limit on that heater would save.`,
  'shorter-loop-beyond-limit': ({ pipe, limitMargin }, show) =>
    `With ${show('pipe length', pipe)} of pipe the fluid goes ${show('temperature difference', -limitMargin)} beyond what the unit must keep: it stops on its ` +
    `protection, and the cost here, with the unit running on, is too low.`,
};
