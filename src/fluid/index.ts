export {
  FLUID_NAMES,
  FLUID_RECORD_NAMES,
  fluidChoiceShape,
  type AnyFluid,
  type Fluid,
  type FluidChoice,
  type OfAnyFluid,
} from './fluids.js';
export type { FluidName, FluidRecord, FluidUse } from './fluid-record.js';
export type { Polynomial, SurfacePolynomial } from './polynomial.js';
export { WATER } from './water.data.js';
export { PROPYLENE_GLYCOL } from './propylene-glycol.data.js';
export { ETHYLENE_GLYCOL } from './ethylene-glycol.data.js';
export { ETHANOL } from './ethanol.data.js';
export { METHANOL } from './methanol.data.js';
export { GLYCEROL } from './glycerol.data.js';
export { POTASSIUM_CARBONATE } from './potassium-carbonate.data.js';
export { POTASSIUM_FORMATE } from './potassium-formate.data.js';
export { POTASSIUM_ACETATE } from './potassium-acetate.data.js';
export { CALCIUM_CHLORIDE } from './calcium-chloride.data.js';
export { fluidConditionShape, fluidProperties, type FluidCondition } from './properties.js';
export { fluidPropertyBands, type FluidPropertyBands } from './property-bands.js';
export { freezingPoint, massFractionForFreezingPoint, type FreezingTarget } from './freezing.js';
export { warmestFreezingPoint } from './warmest-freezing-point.js';
export { massFromVolumeFraction, volumeFromMassFraction, type FluidByVolume } from './volume-share.js';
export { protectionTemperature, protectionTemperatureShape, type ColdestFluid, type ProtectionTemperature } from './protection-temperature.js';
export { protectionConventions, type ProtectionConvention } from './protection-conventions.js';
export { antifreezeForProtection, antifreezeProposalShape, type AntifreezeProposal, type ProtectionTarget } from './protection.js';
export type { FreezingRule } from './least-mass-fraction.js';
export { concentrateShape, type Concentrate } from './concentrate.js';
export { antifreezeCharge, antifreezeChargeShape, type AntifreezeCharge, type AntifreezeFill } from './charge.js';
export { mixedFluid, mixedFluidShape, type MixedFluid, type PouredParts } from './mixed-fluid.js';
export { correctedFill, fillCorrectionShape, type FillCorrection, type FillToCorrect } from './corrected-fill.js';
export {
  expectedHydrometer,
  fromHydrometer,
  hydrometerReadingShape,
  hydrometerSampleShape,
  type HydrometerMeaning,
  type HydrometerRead,
  type HydrometerReading,
  type HydrometerSample,
} from './hydrometer.js';
export type { ReadConcentration } from './read-concentration.js';
export { refractiveIndex } from './refractive-index.js';
export { fromRefractometer, type RefractometerRead } from './refractometer.js';
export { siteConstant, siteConstantShape, type SiteConstant } from './site-constant.js';
export { fluidWarmingShape, thermalExpansion, volumeChange, type FluidWarming } from './expansion.js';
export { fluidTransport, fluidTransportShape, transportConditionShape, type FluidTransport, type TransportCondition } from './fluid-transport.js';
export {
  antifreezeComparisonShape,
  compareAntifreezes,
  comparedAntifreezeShape,
  type AntifreezeComparison,
  type ComparedAntifreeze,
} from './compare-antifreezes.js';
export {
  fluidHazards,
  fluidHazardsShape,
  mixtureFlashPoint,
  mixtureFlashPointShape,
  type FluidHazards,
  type MixtureFlashPoint,
} from './hazards.js';
export { fluidFacts, fluidFactsShape, type FluidFacts } from './facts.js';
export { fluidFindings } from './findings.js';
export { fluidSituations } from './situations.js';
