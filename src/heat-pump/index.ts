export {
  heatPumpInputShape,
  readHeatPump,
  type CoolingUnit,
  type HeatPump,
  type HeatPumpInput,
  type RatingOrigin,
} from './heat-pump-input.js';
export { ratingPointShape, type RatingPoint } from './rating-point.js';
export { performanceMap, performanceMapInputShape, type EnteringRange, type PerformanceMap, type PerformanceMapInput } from './performance-map.js';
export { RATING_CONDITIONS, type RatingCondition } from './rating-conditions.data.js';
export { RATED_POWER, type PowerPart, type RatedPowerContents } from './rated-power.data.js';
export { ratedPumpInputShape, ratedPumpPower, ratedPumpShape, type PumpConvention, type RatedPump, type RatedPumpInput } from './rated-pump-power.js';
export { ratingAtBoundary, ratingBoundaryInputShape, ratingBoundaryShape, type RatingBoundary, type RatingBoundaryInput } from './rating-boundary.js';
export { fluidDropInputShape, fluidTemperatureDrop, type FluidDropInput } from './fluid-temperature-drop.js';
export { unitStateShape, type UnitState } from './unit-state.js';
export { extrapolationFindings } from './findings.js';
export { groundHeat, groundHeatInputShape, type GroundHeatInput } from './ground-heat.js';
export { carnotCop, carnotInputShape, copFromEer, eerFromCop, ruhnauCop, staffellCop, type CarnotInput } from './cop.js';
export {
  en14825PartLoadFactor,
  partLoadFactor,
  partLoadInputShape,
  standbyPartLoadInputShape,
  type PartLoad,
  type PartLoadInput,
  type StandbyPartLoadInput,
} from './part-load.js';
export {
  en14825Season,
  en14825SeasonShape,
  seasonBinShape,
  seasonTimesShape,
  type En14825Climate,
  type En14825Season,
  type PartLoadPoint,
  type SeasonBin,
  type SeasonTimes,
} from './en14825-season.js';
export { seasonalBinShape, seasonalCopShape, type SeasonalBin, type SeasonalCop } from './seasonal-bins.js';
export { seasonalCop, type FullCapacity, type SeasonalCopInput } from './seasonal-cop.js';
export {
  declaredPointShape,
  declaredSeasonalCop,
  declaredSeasonalCopInputShape,
  type DeclaredPoint,
  type DeclaredSeasonalCopInput,
} from './seasonal-cop-declared.js';
export {
  seasonalEfficiency,
  seasonalEfficiencyInputShape,
  seasonalEfficiencyShape,
  type SeasonalEfficiency,
  type SeasonalEfficiencyInput,
  type SeasonalEfficiencyResult,
} from './seasonal-efficiency.js';
export { FIELD_EVIDENCE, type FieldEvidence } from './seasonal-evidence.data.js';
export {
  seasonalEnergiesShape,
  seasonalPerformance,
  seasonalPerformanceShape,
  type CoolingBoundary,
  type HeatingBoundary,
  type SeasonalBoundary,
  type SeasonalEnergies,
  type SeasonalPerformance,
  type SeasonalPerformanceResult,
} from './seasonal-performance.js';
export {
  stagedUnit,
  type CyclingLoss,
  type StagedUnit,
  type StagedUnitInput,
  type UnitLevel,
  type UnitModel,
} from './staged-unit.js';
export { cyclingFactor, stagedStateShape, type StagedState } from './staged-state.js';
export { speedMixing, speedMixingShape, type SpeedMixing } from './variable-speed.js';
export { unitOverSupply } from './unit-over-supply.js';
export { unitsTogether, type LoadSharing, type UnitsTogetherInput } from './units-together.js';
export { unitsOnLoop, unitsOnLoopShape, type UnitOnLoop, type UnitsOnLoop, type UnitsOnLoopInput } from './units-on-loop.js';
export { desuperheaterInputShape, desuperheaterState, type DesuperheaterInput, type DesuperheaterState } from './desuperheater.js';
export { desuperheaterYearInputShape } from './desuperheater-input.js';
export type { DesuperheaterMonthInput, DesuperheaterYearInput, DutyPoint, HouseDuty } from './desuperheater-input.js';
export { desuperheaterBalanceShape, type DesuperheaterBalance } from './desuperheater-balance.js';
export { desuperheaterYear, type DesuperheaterYear } from './desuperheater-year.js';
export { conditionRatingPointShape, type ConditionRatingPoint, type LoadSideKind } from './condition-point.js';
export { conditionStateShape, unitConditionsShape, type ConditionState, type UnitConditions } from './condition-state.js';
export {
  conditionMap,
  conditionMapInputShape,
  type ConditionMap,
  type ConditionMapInput,
  type FlowRatioRange,
  type LoadSideRange,
} from './condition-map.js';
export { conditionFindings } from './condition-findings.js';
export type { WaterSide } from './water-side.js';
export { supplyControlShape, type CompensatedSupply, type FixedSupply, type SupplyControl } from './weather-compensation-input.js';
export { heatingCurve, supplyStateShape, type HeatingCurve, type SupplyState } from './weather-compensation.js';
export { EMITTER_EXPONENTS, type EmitterKind } from './emitter.data.js';
export {
  emitterOutput,
  emitterOutputInputShape,
  emitterOutputShape,
  emitterRatingShape,
  emitterWaterShape,
  meanExcess,
  type EmitterOutput,
  type EmitterOutputInput,
  type EmitterRating,
  type EmitterWater,
} from './emitter.js';
export { requiredSupply, requiredSupplyInputShape, requiredSupplyShape, type RequiredSupply, type RequiredSupplyInput } from './emitter-supply.js';
export {
  checkEmitters,
  emitterCheckInputShape,
  type EmitterAlternative,
  type EmitterCheck,
  type EmitterCheckInput,
  type EmitterCheckUnit,
} from './emitter-check.js';
export {
  cyclingElectricity,
  cyclingElectricityInputShape,
  cyclingElectricityShape,
  type CyclingElectricity,
  type CyclingElectricityInput,
} from './cycling-electricity.js';
export type { DerivedRatingPoints, PointsDerivedBy } from './derived-points.js';
export { flowRatingPointShape, type FlowRatingPoint } from './fit-points.js';
export { fitQualityShape, fitRowShape, type FitQuality, type FitRow } from './fit-quality.js';
export { fittedStateShape, type FittedState } from './fitted-state.js';
export { fitUnitCurves } from './fit-unit-curves.js';
export { unitFitErrorsShape, unitFitInputShape, unitFitNumbersShape } from './unit-fit.js';
export type { UnitFit, UnitFitErrors, UnitFitInput, UnitFitNumbers } from './unit-fit.js';
export { fitScaledUnit } from './fit-scaled-unit.js';
export { scaledPlaceShape, scaledRatingPointShape, scaledUnitInputShape, scaledUnitNumbersShape } from './scaled-unit.js';
export type { ScaledPlace, ScaledQuantity, ScaledRatingPoint, ScaledUnit, ScaledUnitInput, ScaledUnitNumbers } from './scaled-unit.js';
export { fitCarnotShare } from './fit-carnot-share.js';
export {
  carnotPointsInputShape,
  carnotPredictionShape,
  carnotShareInputShape,
  carnotShareNumbersShape,
  carnotSharePointShape,
  enteringCapacityShape,
} from './carnot-share.js';
export type {
  CarnotPointsInput,
  CarnotPrediction,
  CarnotShare,
  CarnotShareInput,
  CarnotShareNumbers,
  CarnotSharePoint,
  EnteringCapacity,
} from './carnot-share.js';
export { genericCopShape, genericPointsInputShape, genericRatingPoints } from './generic-points.js';
export type { GenericCop, GenericPointsInput, GenericRatingPoints } from './generic-points.js';
export { correctedRatingPoints, correctionShape, correctionsInputShape } from './corrections.js';
export type { CorrectedRatingPoints, Correction, CorrectionCause, CorrectionsInput } from './corrections.js';
export { TYPICAL_CORRECTIONS, type TypicalCorrection } from './corrections.data.js';
export { suggestLimits } from './suggest-limits.js';
export { confirmedLimitsShape, coolingLimitInputShape, suggestLimitsInputShape } from './limits.js';
export type {
  ConfirmedLimits,
  CoolingLimitInput,
  LimitCandidate,
  LimitName,
  LimitReason,
  SuggestedLimit,
  SuggestedLimits,
  SuggestLimitsInput,
} from './limits.js';
export { checkService } from './check-service.js';
export { compressorDrawShape, compressorStartShape, serviceCheckInputShape, serviceCurrentsShape } from './service.js';
export type { CompressorDraw, CompressorStart, ServiceCheck, ServiceCheckInput, ServiceCurrents } from './service.js';
