export type { DimensionRatio, PipeSeries, PipeSize } from './series.data.js';
export {
  pipeChoiceShape,
  pipeDimensions,
  pipeDimensionsShape,
  type BoreConvention,
  type PipeChoice,
  type PipeDimensions,
} from './dimensions.js';
export { POLYETHYLENE_CONDUCTIVITY } from './conductivity.data.js';
export { DELIVERED_COILS } from './coils.data.js';
export { type PipeMaterial } from './pressure-rating.data.js';
export {
  pipePressureRating,
  pressureRatingShape,
  ratedPipeShape,
  type DeratingSource,
  type ListedFactors,
  type PressureRating,
  type PressureRatingResult,
  type RatedPipe,
} from './pressure-rating.js';
export { bendRadiusShape, minimumBendRadius, pipeBendShape, type BendRadius, type BendRadiusResult, type PipeBend } from './bend-radius.js';
export type { HydraulicFluid, ThermalFluid } from './checks.js';
export {
  boreArea,
  flowAtReynolds,
  flowAtVelocity,
  flowVelocity,
  reynoldsNumber,
  type BoreFlow,
  type PipeFlow,
  type ReynoldsWanted,
  type VelocityWanted,
} from './flow.js';
export { churchillFrictionFactor, type FrictionState } from './churchill.js';
export { colebrookFrictionFactor } from './colebrook.js';
export { haalandFrictionFactor, laminarFrictionFactor, swameeJainFrictionFactor } from './friction-formulas.js';
export { frictionChoiceShape, frictionFactor, type CorrelatedFriction, type FrictionChoice, type FrictionCorrelation } from './friction-factor.js';
export { pressureGradient, type FrictionFlow } from './pressure-gradient.js';
export {
  hazenWilliamsComparison,
  hazenWilliamsShape,
  type HazenWilliams,
  type HazenWilliamsFlow,
  type HazenWilliamsResult,
} from './hazen-williams.js';
export {
  pressureDropBand,
  pressureDropBandShape,
  type PressureDropBand,
  type PressureDropBandResult,
  type UncertainFlow,
  type UncertainFluid,
} from './drop-band.js';
export { FITTING_NAMES, fittingLoss, fittingLossShape, type Fitting, type FittingLoss, type FittingState } from './fitting-loss.js';
export { minorLosses, minorLossesShape, type FittedFlow, type FittingCount, type MinorLosses } from './minor-losses.js';
export { coilHydraulics, coilHydraulicsShape, type CoilFlow, type CoilHydraulics } from './coil-hydraulics.js';
export { coilCriticalReynolds, deanNumber, type CurvedState } from './coil-curvature.js';
export { coiledFrictionFactor, coiledFrictionShape, type CoiledFriction, type CoiledState } from './coil-friction.js';
export {
  coiledGradientShape,
  coiledPressureGradient,
  type CoiledFlow,
  type CoiledGradient,
  type CoiledGradientResult,
} from './coiled-gradient.js';
export type { FlowRegime } from './regime.js';
export { nusseltNumber, nusseltNumberShape, prandtlNumber, type FilmState, type NusseltNumber } from './nusselt.js';
export { nusseltBlend, nusseltBlendShape, type NusseltBlend } from './nusselt-blend.js';
export { hausenNusseltNumber, type EntryState } from './hausen.js';
export { pipeResistance, pipeResistancePartsShape, type PipeResistanceParts, type RunningPipe } from './resistance.js';
export { filmFindings } from './findings.js';
