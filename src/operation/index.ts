export {
  areaGuidelineShape,
  guidelineAreaExtraction,
  type AreaGuideline,
  type AreaGuidelineInput,
  type AreaGuidelineResult,
} from './area-guideline.js';
export type { GuidelineSoil, RuleLayout } from './guidelines.data.js';
export {
  circuitResistance,
  circuitResistanceInputShape,
  circuitResistanceShape,
  type CircuitResistance,
  type CircuitResistanceInput,
} from './circuit-resistance.js';
export { endOfRun, endOfRunInputShape, endOfRunShape, type EndOfRun, type EndOfRunInput } from './end-of-run.js';
export {
  handbookLengthShape,
  handbookPipeLength,
  type FluidConvention,
  type HandbookLength,
  type HandbookLengthInput,
} from './handbook-pipe-length.js';
export { lengthFiguresShape, type LengthFigures } from './length-figures.js';
export type { LoadMode } from './margin.js';
export type { RiseAfter } from './rise-after.js';
export { superposedRise, type SuperposedRiseInput } from './superposition.js';
export { threePulseLengthShape, threePulsePipeLength, type ThreePulseInput, type ThreePulseLength } from './three-pulse-pipe-length.js';
export {
  plausibleLength,
  plausibleLengthShape,
  type PlausibleLength,
  type PlausibleLengthInput,
  type PlausibleLengthResult,
} from './plausible-length.js';
export { monthlyLengthShape, monthlyPipeLength, type GroundMonth, type MonthlyLength, type MonthlyLengthInput } from './monthly-pipe-length.js';
export { fluidTemperatures, fluidTemperaturesShape, type FluidTemperatures, type FluidTemperaturesInput } from './fluid-temperatures.js';
export { simulate } from './simulate.js';
export type {
  LoopPump,
  Conventions,
  Course,
  Extreme,
  FluidExtremes,
  GroundTerms,
  HotWaterCourse,
  HotWaterDuty,
  SimulatedDuty,
  SimulatedYear,
  Simulation,
  SimulationInput,
} from './simulation.js';
export { type ModeLedger, modeLedgerShape } from './ledger.js';
export { type MonthOfRun, monthOfRunShape } from './month-table.js';
export { sizeLoop, type SizedLoop, type SizeLoopInput } from './size-loop.js';
export { bindingLimit, bindingLimitShape, type BindingLimit, type FluidLimits, fluidLimitsShape, type YearsOfFluid } from './fluid-limits.js';
export {
  sizeOverTopologies,
  type FeasibleRange,
  type SizedTopologies,
  type TopologiesInput,
  type Topology,
} from './size-over-topologies.js';
export {
  hardestHourShape,
  lengthFactors,
  lengthFactorsShape,
  type HardestHour,
  type LengthFactors,
  type LengthFactorsInput,
} from './length-factors.js';
export { extremeShape } from './simulated-year.js';
export { regretRowShape, regretTable, type RegretRow, type RegretTableInput } from './regret-table.js';
export {
  fluidAlongLine,
  fluidBinShape,
  fluidLineInputShape,
  type FluidBin,
  type FluidLineInput,
  type FluidPlace,
} from './bin-year-fluid.js';
export { partLoadFormShape, type PartLoadForm } from './bin-year-cycling.js';
export { binYear, type BinYearInput } from './bin-year.js';
export { binYearShape, yearBinShape, type BinYear, type BinYearResult, type YearBin } from './bin-year-result.js';
export { monthOfSeasonShape, seasonOf, seasonOptionsShape, type MonthOfSeason, type Season, type SeasonOptions } from './season-of.js';
export { simulateWithIce } from './ice-simulate.js';
export { iceAroundShape, iceRoomOf, type IceAround, type IceRoom, type IceSimulation, type IceSimulationInput } from './ice-simulation.js';
export { iceSoilShape, type FreezingCourse, type IceSoil } from './ice-soil.js';
export { monthOfIceShape, yearOfIceShape, type IceCourse, type MonthOfIce, type YearOfIce } from './ice-result.js';
export { lineSinkFreezing, lineSinkFreezingShape, lineSinkInputShape, type LineSinkFreezing, type LineSinkInput } from './freezing-line-sink.js';
export { heaveInputShape, heaveRisk, heaveShape, type Heave, type HeaveClass, type HeaveInput } from './heave-risk.js';
export type { FrostSusceptibility } from './heave.data.js';
export { rootZone, rootZoneShape, type RootZone, type RootZoneInput } from './ice-root-zone.js';
export { simulateSections } from './sections-simulate.js';
export type { EarlierWork, LoopSection, SectionFlows, SectionsInput } from './section-input.js';
export {
  sectionSharesShape,
  sectionYearShape,
  type SectionCourse,
  type SectionedSimulation,
  type SectionShares,
  type SectionYear,
} from './section-result.js';
export { sizeSections, type SizedSections, type SizeSectionsInput } from './sections-size.js';
export { neighbourChange, type NeighbourChange, type NeighbourInput } from './section-neighbour.js';
export { type FluidStore, fluidStoreShape } from './fluid-store.js';
export { followSettling, type Settling, type SettlingInput, type SettlingState } from './follow-settling.js';
