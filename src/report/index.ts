export {
  besideGuideline,
  besideGuidelineShape,
  type BesideGuideline,
  type BesideGuidelineResult,
  type ComparedGuideline,
  type GuidelineClass,
  type NoGuideline,
} from './beside-guideline.js';
export { describeAssumption } from './describe-assumption.js';
export { describeFeelAnswer, describeFeelQuestion } from './describe-feel.js';
export { describeFieldConsequence } from './describe-field.js';
export { describeSoilGroup } from './describe-group.js';
export { describeFinding } from './describe-finding.js';
export { english } from './english.js';
export { fluidSheet, type HandledFluid } from './fluid-sheet.js';
export { planPage } from './plan-page.js';
export { samplingSheet } from './sampling-sheet.js';
export { show, type UnitSystem } from './show.js';
