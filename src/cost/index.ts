export type { PriceSet } from './price-set.js';
export {
  tariffShape,
  type EnergyPricing,
  type PriceBlock,
  type PriceWindow,
  type Tariff,
} from './tariff.js';
export {
  electricityUseShape,
  type ElectricityByPart,
  type ElectricityOfMonth,
  type ElectricityUse,
  type ElectricPart,
} from './electricity-use.js';
export {
  electricityCost,
  electricityCostInputShape,
  electricityCostShape,
  type CostOfMonth,
  type CostOfPart,
  type ElectricityCost,
  type ElectricityCostInput,
  type ElectricityCostResult,
} from './electricity-cost.js';
export { fuelFacts, fuelFactsShape, type FuelFacts } from './fuel-facts.js';
export type { FuelName } from './fuels.data.js';
export { efficiencyOnBasis, efficiencyOnBasisInputShape, type EfficiencyOnBasisInput, type HeatingBasis } from './heating-basis.js';
export { heatSourceShape, type EnergySupply, type HeatSource } from './heat-source.js';
export { costOfHeat, fuelUse, fuelUseInputShape, fuelUseShape, type FuelUse, type FuelUseInput, type FuelUseResult } from './fuel-use.js';
export {
  compareHeatSources,
  compareHeatSourcesInputShape,
  heatSourceComparisonShape,
  type ComparedSource,
  type CompareHeatSourcesInput,
  type HeatSourceComparison,
  type HeatSourceComparisonResult,
} from './compare-heat-sources.js';
export {
  breakEvenInputShape,
  breakEvenPerformance,
  emissionsOverYears,
  emissionsOverYearsInputShape,
  emissionsOverYearsShape,
  type BreakEvenInput,
  type EmissionsOfYear,
  type EmissionsOverYears,
  type EmissionsOverYearsInput,
  type GridYear,
} from './emissions.js';
export {
  capitalRecoveryFactor,
  escalatedPresentValue,
  escalatedTermsShape,
  indexedPresentValue,
  indexedTermsShape,
  singlePresentValue,
  studyTermsShape,
  uniformPresentValue,
  type EscalatedTerms,
  type IndexedTerms,
  type StudyTerms,
} from './present-value.js';
export { nominalRate, nominalRateInputShape, realRate, realRateInputShape, type NominalRateInput, type RealRateInput } from './rates.js';
export { residualValueInputShape, straightLineResidual, type ResidualValueInput } from './residual-value.js';
export {
  cashPlanShape,
  lifeCycleCost,
  lifeCycleCostShape,
  lifeCycleInputShape,
  type CashPlan,
  type LifeCycleCost,
  type LifeCycleInput,
  type Replacement,
} from './life-cycle-cost.js';
export { paybackShape, type Payback } from './payback.js';
export {
  investmentInputShape,
  investmentMeasures,
  investmentMeasuresShape,
  type InvestmentInput,
  type InvestmentMeasures,
  type InvestmentResult,
} from './investment-measures.js';
export type { PriceOutlook, PriceScenario } from './price-scenarios.js';
export {
  compareLifeCycles,
  compareLifeCyclesInputShape,
  lifeCycleComparisonShape,
  type CompareLifeCyclesInput,
  type LifeCycleComparison,
  type LifeCyclePlan,
  type ScenarioOfCosts,
} from './compare-life-cycles.js';
export {
  lengthCostShape,
  shorterLoopCosts,
  shorterLoopInputShape,
  type LengthCost,
  type LoopOfLength,
  type ShorterLoopCosts,
  type ShorterLoopInput,
} from './shorter-loop.js';
