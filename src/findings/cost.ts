import type { Money, PipeLength, Ratio, Shape, TemperatureDifference } from '../units/index.js';

/** Values of the findings that the cost room raises, by code. */
export interface CostFindingValues {
  /** An extra cost does not come back within the study. */
  'payback-not-reached': { readonly extraCost: Money; readonly yearlySaving: Money; readonly years: number };
  /** The alternative costs more to run in its first year. */
  'savings-negative': { readonly yearlySaving: Money };
  /** The simple payback lies within the study, and yet money is lost. */
  'payback-hides-loss': { readonly paybackYears: Ratio; readonly netSavings: Money; readonly years: number };
  /** Without what is left at the end nothing would be saved. */
  'residual-dominates': { readonly residualPresent: Money; readonly netSavings: Money };
  /** Whether anything is saved hangs on the course of prices. */
  'outcome-depends-on-prices': { readonly worstNetSavings: Money; readonly bestNetSavings: Money };
  /** An efficiency was given on another heating value than the price. */
  'efficiency-basis-converted': {
    readonly label: string;
    readonly givenBasis: 'higher' | 'lower';
    readonly efficiency: Ratio;
    readonly usedEfficiency: Ratio;
    readonly lowerOverHigher: Ratio;
  };
  /** An appliance would give more heat than its fuel holds. */
  'efficiency-above-fuel': { readonly label: string; readonly efficiency: Ratio };
  /** Prices are older than wanted. */
  'prices-old': { readonly priceYear: number; readonly dateYear: number };
  /** The charge for the highest hours is a large part of the bill. */
  'demand-charge-large': { readonly demandCost: Money; readonly totalCost: Money };
  /** A loop cut short leaves what the heat pump must keep. */
  'shorter-loop-beyond-limit': { readonly pipe: PipeLength; readonly limitMargin: TemperatureDifference };
}

/** Shapes of {@link CostFindingValues}. */
export const costFindingShapes: { readonly [C in keyof CostFindingValues]: Shape<CostFindingValues[C]> } = {
  'payback-not-reached': { extraCost: 'money', yearlySaving: 'money', years: 'count' },
  'savings-negative': { yearlySaving: 'money' },
  'payback-hides-loss': { paybackYears: 'ratio', netSavings: 'money', years: 'count' },
  'residual-dominates': { residualPresent: 'money', netSavings: 'money' },
  'outcome-depends-on-prices': { worstNetSavings: 'money', bestNetSavings: 'money' },
  'efficiency-basis-converted': {
    label: 'text',
    givenBasis: ['higher', 'lower'],
    efficiency: 'ratio',
    usedEfficiency: 'ratio',
    lowerOverHigher: 'ratio',
  },
  'efficiency-above-fuel': { label: 'text', efficiency: 'ratio' },
  'prices-old': { priceYear: 'count', dateYear: 'count' },
  'demand-charge-large': { demandCost: 'money', totalCost: 'money' },
  'shorter-loop-beyond-limit': { pipe: 'pipe length', limitMargin: 'temperature difference' },
};
