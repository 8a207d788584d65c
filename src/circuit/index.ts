export { circuitHead, circuitHeadShape, type CircuitHead, type CircuitHeadInput, type CircuitHeadResult } from './circuit-head.js';
export { circuitInputShape, type CircuitInput } from './circuit-input.js';
export {
  circuitOptionShape,
  circuitPlanShape,
  type CircuitNeed,
  type CircuitOption,
  type CircuitOptionInput,
  type CircuitPlan,
  type CircuitPlanInput,
  type CircuitPlanResult,
} from './circuit-plan.js';
export { circuitSpread, type CircuitSpread } from './circuit-spread.js';
export { loopVolume, type LoopVolume, type LoopVolumeInput, type PipeStock } from './loop-volume.js';
export { circuitOption } from './circuit-option.js';
export { planCircuits } from './plan-circuits.js';
export {
  purgeFlow,
  purgeFlowShape,
  type HeaderSection,
  type PurgedSection,
  type PurgeFlow,
  type PurgeFlowInput,
  type PurgeFlowResult,
} from './purge-flow.js';
export { runLossShape, type PipeRun, type RunLoss } from './run-loss.js';
export { flowNetworkShape, solveFlowNetwork, type FlowNetwork, type FlowNetworkInput, type NetworkLink } from './flow-network.js';
export type { LinkEnds } from './spanning-tree.js';
export {
  flowSplitInputShape,
  flowSplitShape,
  pipeRunShape,
  type FlowSplit,
  type FlowSplitInput,
  type FlowSplitResult,
  type HeaderArrangement,
  type SplitCircuit,
  type SplitCircuitFlow,
  type SplitRun,
} from './flow-split.js';
export { solveFlowSplit } from './solve-flow-split.js';
export { balancingValves, balancingValveShape, type BalancingTarget, type BalancingValve } from './balancing-valves.js';
export {
  equipmentDrop,
  ratedDropShape,
  ratedWaterSideShape,
  valveDrop,
  type EquipmentDropInput,
  type RatedDrop,
  type RatedWaterSide,
  type ValveDropInput,
} from './rated-drop.js';
export { pumpCurveInputShape, type PumpCurve, type PumpCurveInput, type PumpPoint } from './pump-curve.js';
export { pumpCurve } from './make-pump-curve.js';
export { pumpsInParallel, pumpsInSeries } from './combined-pumps.js';
export { pumpAtSpeed, type PumpSpeed } from './pump-speed.js';
export { operatingPointShape, pumpOperatingPoint, type OperatingPoint, type PumpedSystem } from './operating-point.js';
export { pumpSeasons, pumpSeasonsShape, type PumpSeasons, type PumpSeasonsInput } from './pump-seasons.js';
export { flushedLoopShape, flushLoop, type FlushedLoop, type FlushedLoopResult, type FlushedSection, type FlushLoopInput } from './flush-loop.js';
export { blockedCircuits, blockedRowShape, type BlockableLoop, type BlockedRow } from './blocked-circuits.js';
export {
  expectedLoopReadings,
  expectedLoopReadingsShape,
  type ExpectedLoopReadings,
  type LoopReading,
  type LoopToRead,
} from './expected-loop-readings.js';
export { TEST_RULES, type TestPhase, type TestRule, type TestRuleName } from './pressure-test-rules.data.js';
export {
  planPressureTest,
  pressureTestToPlanShape,
  type PlannedPhase,
  type PressureTestPlan,
  type PressureTestPlanResult,
  type PressureTestToPlan,
} from './plan-pressure-test.js';
export {
  evaluatePressureTest,
  pressureTestEvaluationShape,
  type PressureReading,
  type PressureTest,
  type PressureTestEvaluation,
  type PressureTestResult,
  type PressureTestVerdict,
} from './evaluate-pressure-test.js';
export { trappedAir, trappedAirShape, type PressureKick, type TrappedAir, type TrappedAirResult } from './trapped-air.js';
export {
  sealedPressureSwing,
  sealedPressureSwingShape,
  type SealedLoop,
  type SealedPressureSwing,
  type SealedPressureSwingResult,
  type SealedState,
} from './sealed-pressure-swing.js';
export { pipeBuoyancy, pipeBuoyancyShape, type Ballast, type PipeBuoyancy, type PipeBuoyancyResult, type WetPipe } from './pipe-buoyancy.js';
export { wallGiveShape, type PipeRing, type WallGive } from './wall-give.js';
export {
  pumpShare,
  pumpShareInputShape,
  pumpShareShape,
  type PumpGrade,
  type PumpShare,
  type PumpShareInput,
  type PumpShareResult,
} from './pump-share.js';
export { circuitFamilyInputShape, type CircuitFamilyInput, type CircuitFamilyRow, type NamedFluid } from './circuit-family.js';
export { circuitFamily } from './tabulate-family.js';
export { USUAL_CIRCUITS, type UsualCircuit } from './usual-circuits.data.js';
export { flowFromDrop, flowFromDropShape, type DropRead, type FlowFromDrop } from './flow-from-drop.js';
