// What the room opens of soil known by whatever evidence there is.
export {
  sampleEvidenceShape,
  soilEvidenceShape,
  type FeelObserver,
  type MoistureEvidence,
  type NamedTexture,
  type ProbeEvidence,
  type SampleEvidence,
  type SoilEvidence,
  type TextureEvidence,
} from './evidence.js';
export {
  evidencePropertiesShape,
  type ConductivityError,
  type EvidenceProperties,
  type EvidencePropertiesResult,
  type FrozenProperties,
  type SampleProperties,
} from './evidence-properties.js';
export { ERROR_CAUSES, type ErrorCause } from './error-causes.js';
export { soilFromEvidence } from './soil-from-evidence.js';
export {
  datedSampleShape,
  soilThroughTheYear,
  soilThroughTheYearShape,
  type DatedSample,
  type SoilThroughTheYear,
  type SoilThroughTheYearResult,
} from './soil-through-the-year.js';
export { HEMISPHERES, type Hemisphere } from './season-course.js';
