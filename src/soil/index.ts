export { dryBasis, dryingShape, moistureFromDrying, wetBasis, type Drying } from './moisture.js';
export {
  weighedMoisture,
  weighedMoistureShape,
  weighedSampleShape,
  type WeighedMoisture,
  type WeighedMoistureResult,
  type WeighedSample,
} from './weighed-moisture.js';
export {
  constantMass,
  constantMassShape,
  dryingCourseShape,
  type ConstantMass,
  type ConstantMassResult,
  type DryingCourse,
  type OvenWeighing,
} from './constant-mass.js';
export { grainySoilShape, leastSampleMass, leastSampleMassShape, type GrainySoil, type LeastSampleMass } from './sample-mass.js';
export { fullestDensity, saturatedMoisture, type PackedSolids, type WetSolids } from './zero-air-voids.js';
export { dugSoilShape, inPlaceDensityShape, type DugSoil, type InPlaceDensity, type InPlaceDensityResult, type InPlaceMethod } from './dug-soil.js';
export { coreDensity, coreSampleShape, type CoreSample } from './core-density.js';
export { sandConeDensity, sandConeTestShape, type SandConeTest } from './sand-cone-density.js';
export { clodDensity, coatedClodShape, type CoatedClod } from './clod-density.js';
export { waterFilledHoleShape, waterReplacementDensity, type WaterFilledHole } from './water-replacement-density.js';
export { fineEarth, stoneCorrectionShape, stonySoilShape, wholeSoil, type StoneCorrection, type StonySoil } from './stones.js';
export { soilPhases, soilPhasesShape, type SoilPhases, type SoilPhasesResult, type SoilState } from './phases.js';
export {
  TEXTURE_CLASSES,
  typicalSoil,
  typicalSoilShape,
  type Grain,
  type KerstenSoil,
  type TextureClass,
  type TypicalSoil,
} from './texture.js';
export { HANDBOOK_MATERIALS, HANDBOOK_STATES, type HandbookMaterial, type HandbookState } from './handbook-words.js';
export {
  handbookConductivity,
  handbookConductivityShape,
  type HandbookConductivity,
  type HandbookQuestion,
  type HandbookValue,
} from './handbook.js';
export { johansenConductivity, johansenConductivityShape, type JohansenConductivity, type JohansenSoil } from './johansen.js';
export { kerstenConductivity, kerstenConductivityShape, type KerstenConductivity, type KerstenSoilState } from './kersten.js';
export { soilDiffusivity, volumetricHeatCapacity, type ConductingSoil, type SoilConstituents } from './heat-capacity.js';
export { latentHeat, type FreezingSoil } from './latent-heat.js';
export {
  soilSampleShape,
  type GivenDensity,
  type HandbookSoil,
  type MeasuredDensity,
  type MeasuredSoil,
  type SampledSoil,
  type SampleDensity,
  type SampleMoisture,
  type SampleTexture,
  type SoilSample,
} from './sample.js';
export {
  soilThermalPropertiesShape,
  type ConductivityErrors,
  type ModelConductivity,
  type SoilThermalProperties,
  type SoilThermalPropertiesResult,
} from './properties.js';
export { soilThermalProperties } from './soil-thermal-properties.js';
export * from './evidence-doors.js';
export {
  effectiveConductivity,
  effectiveGroundShape,
  layeredGroundShape,
  type EffectiveGround,
  type EffectiveGroundResult,
  type LayeredGround,
} from './effective-conductivity.js';
export { layeredResponse, type LayeredResponse } from './layered-response.js';
export { buriedPipeShape, type BuriedPipe } from './buried-pipes.js';
export { pipeBeddingShape, trenchFillShape, type PipeBedding, type TrenchFill } from './trench-fill.js';
export { layersAboutPipesShape, logResistanceConductivity, type LayersAboutPipes, type LogResistance } from './log-resistance.js';
export { layerMeans, layerMeansShape, type LayerMeans } from './layer-means.js';
export { resistanceShare, type DistanceFromPipe } from './resistance-share.js';
export { loosenedFill, type FillState, type LoosenedFill, type RefilledSoil } from './loosened-fill.js';
export { conductivityClass, type ConductivityClass, type ConductivityClassName } from './conductivity-class.js';
export { contactGap, gappedPipeShape, type ContactGap, type GappedPipe } from './contact-gap.js';
export { soilLayerShape, type LoggedGround, type SoilLayer } from './layers.js';
export { airConductivity, iceConductivity, waterConductivity } from './pore-fillings.js';
export { solidsConductivity, type SoilSolids } from './solid-conductivity.js';
export { mixedSolids, type MixedSolids } from './mixed-solids.js';
export type { FreezableSoil, PackedSoil } from './pores.js';
export { interpolatedConductivityShape, type InterpolatedConductivity, type InterpolatedConductivityResult } from './interpolated.js';
export { coteKonradConductivity, type CoteKonradClass, type CoteKonradSoil } from './cote-konrad.js';
export { peatConductivity } from './peat.js';
export { luConductivity, type LuSoil } from './lu-2007.js';
export { lu2014Conductivity, textureConductivityShape } from './lu-2014.js';
export type { Lu2014Soil, TextureConductivity, TextureConductivityResult } from './lu-2014.js';
export { ballandArpConductivity, type BallandArpSoil } from './balland-arp.js';
export { campbellConductivity, campbellConductivityShape } from './campbell.js';
export type { CampbellConductivity, CampbellConductivityResult, CampbellSoil } from './campbell.js';
export { ewenThomasConductivity, type EwenThomasSoil } from './ewen-thomas.js';
export { andersonTiceUnfrozenWater, unfrozenWaterShape, type CoolingSoil, type UnfrozenWater } from './unfrozen-water.js';
export { typicalSpecificSurface } from './specific-surface.js';
export { frozenSoil, frozenSoilShape, type FreezingGround, type FrozenSoil, type FrozenSoilResult } from './frozen-soil.js';
export { applicableModels, modelsOfSoilShape } from './applicable-models.js';
export type { ApplicableModel, InapplicableModel, ModelSource, ModelsOfSoil, ModelsOfSoilResult } from './applicable-models.js';
export type { KnownSoil } from './known-to-models.js';
export { MODEL_REFUSALS, SOIL_MODELS, type ModelRefusal, type SoilModel } from './model-refusals.js';
export { fineEarthShape, textureClass, type FineEarth, type TextureOfFineEarth } from './texture-triangle.js';
export { typicalSoilRange, typicalSoilRangeShape, type TypicalSoilRange } from './typical-range.js';
export { FEEL_ANSWERS, type FeelAnswer, type FeelChoice, type FeelLead, type FeelQuestion, type FeelScore } from './texture-by-feel.data.js';
export { nextFeelQuestion, textureByFeel, type FeelPath, type TextureByFeel } from './texture-by-feel.js';
export {
  FINES_GROUPS,
  UNIFIED_GROUPS,
  unifiedSoilShape,
  type Fines,
  type FinesGroup,
  type Grading,
  type UnifiedGroup,
  type UnifiedSoil,
  type UnifiedSoilGroup,
} from './unified-soil.js';
export { unifiedSoilGroup } from './unified-soil-group.js';
export {
  settlingColumnShape,
  settlingParticleShape,
  settlingTimeShape,
  stokesCutSize,
  stokesSettlingTime,
  type Settling,
  type SettlingColumn,
  type SettlingParticle,
  type SettlingTime,
} from './stokes-settling.js';
export {
  jarReadingTimes,
  jarTestFractions,
  jarTestResultShape,
  jarTestShape,
  type JarReadings,
  type JarTest,
  type JarTestResult,
} from './jar-test.js';
export type { TextureShare } from './textures-within.js';
export {
  DILATANCIES,
  DRY_STRENGTHS,
  MOISTURE_WORDS,
  ORGANIC_SIGNS,
  PLASTICITIES,
  TOUGHNESSES,
  type Dilatancy,
  type DryStrength,
  type MoistureWord,
  type OrganicSign,
  type Plasticity,
  type Toughness,
} from './field-terms.data.js';
export {
  FIELD_CONSEQUENCES,
  fieldObservationShape,
  identifyInField,
  type FieldConsequence,
  type FieldIdentification,
  type FieldObservation,
  type GroupCandidate,
} from './field-identification.js';
export {
  DEPTH_PURPOSES,
  DRYING_RULES,
  PIT_NOTES,
  SAMPLING_RULES,
  SAMPLING_TOOLS,
  type DepthPurpose,
  type DryingRule,
  type PitNote,
  type SamplingRule,
  type SamplingTool,
} from './sampling.data.js';
export {
  fieldToSampleShape,
  samplingPlanShape,
  type DryingPlan,
  type FieldToSample,
  type SamplingDepth,
  type SamplingPit,
  type SamplingPlan,
  type SamplingPlanResult,
} from './sampling-plan-shape.js';
export { samplingPlan } from './sampling-plan.js';
export { moistureWord } from './moisture-word.js';
