export { planLoop } from './plan-loop.js';
export { loopInputShape, type SoilLayerInput, type LoopInput } from './loop-input.js';
export { loopPlanShape } from './loop-plan-shape.js';
export type {
  Assumption,
  AssumptionCode,
  LayerResult,
  LoopPlan,
  ModeResult,
  PlanRemarks,
  TrialResult,
} from './loop-plan.js';
export type { DesignFluid } from './design-fluid.js';
export type { HardSeason, HardSeasonInput } from './design-seasons.js';
export type { GroundAtPipes } from './ground-at-pipes.js';
export type { FluidOfYear, LoopByHours } from './loop-by-hours.js';
export type { HoursOfWeather, SpellOfWeather } from './year-of-hours.js';
export type { EmittersAtDesign } from './emitters.js';
export type { LoopFluid } from './fluid-plan.js';
export type { FollowIce, PlanFill } from './fill-input.js';
export type { PlanIce } from './plan-ice.js';
export type { PlanSettling, SettlingResult } from './plan-settling.js';
export type { PlanSeason, ServiceSeason } from './plan-season.js';
export type { LowerLevels, PlanEmitters, PlanHotWater, PumpInput } from './plant-input.js';
export type { UnitAtDesign } from './mode-design.js';
export type { PipeNeeded } from './pipe-needed.js';
