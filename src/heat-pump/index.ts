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
export { unitStateShape, type UnitState } from './unit-state.js';
export { extrapolationFindings } from './findings.js';
export { groundHeat, groundHeatInputShape, type GroundHeatInput } from './ground-heat.js';
export { carnotCop, carnotInputShape, copFromEer, ruhnauCop, staffellCop, type CarnotInput } from './cop.js';
export {
  en14825PartLoadFactor,
  partLoadFactor,
  partLoadInputShape,
  standbyPartLoadInputShape,
  type PartLoad,
  type PartLoadInput,
  type StandbyPartLoadInput,
} from './part-load.js';
