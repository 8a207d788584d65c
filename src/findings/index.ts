export { findingShapes, type Finding, type FindingCode, type FindingLevel, type FindingOf, type FindingValues } from './finding.js';
