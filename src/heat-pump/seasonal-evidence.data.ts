import type { ReferenceKey } from '../references/index.js';
import type { Ratio } from '../units/index.js';
import type { HeatingBoundary } from './seasonal-performance.js';

/** Seasonal performance that ground-source units were found to have in use. */
export interface FieldEvidence {
  /** Where and what. */
  readonly where: string;
  /** What was counted, where the source says; else unknown. */
  readonly boundary?: HeatingBoundary;
  /** Performance factor, the typical or the median one [1]. */
  readonly performanceFactor: Ratio;
  /** Standard deviation or error given with it [1]. */
  readonly factorDeviation?: Ratio;
  /** Where it is from. */
  readonly source: ReferenceKey;
}

/** Where, boundary, factor, deviation, source; installations of unlike boundaries, not for averaging. */
const ROWS = [
  ['Germany, new houses, heating and hot water, first period', undefined, 3.7, undefined, 'fieldGermanyTwoTests'],
  ['Germany, existing buildings, the earlier project', undefined, 3.3, undefined, 'fieldGermanyExisting'],
  ['Germany, existing buildings, the project ten years later', undefined, 4.1, undefined, 'fieldGermanyExisting'],
  ['Sweden, early units', undefined, 2.5, undefined, 'fieldSweden'],
  ['Sweden, about 2008', undefined, 3.5, undefined, 'fieldSweden'],
  ['Stockholm, student centre', 'H2', 3.7, 0.2, 'spitlerGehlin2019'],
  ['Stockholm, student centre', 'H3', 2.7, 0.13, 'spitlerGehlin2019'],
  ['United Kingdom, about 700 houses, ground source, median', 'H2', 2.8, undefined, 'fieldUnitedKingdom'],
  ['United Kingdom, about 700 houses, ground source, median', 'H4', 2.7, undefined, 'fieldUnitedKingdom'],
] as const;

/** Measured seasonal performance of ground-source installations, to hold a computed one against. */
export const FIELD_EVIDENCE: readonly FieldEvidence[] = /* @__PURE__ */ ROWS.map(([where, boundary, factor, deviation, source]) => ({
  where,
  ...(boundary === undefined ? {} : { boundary }),
  performanceFactor: factor as Ratio,
  ...(deviation === undefined ? {} : { factorDeviation: deviation as Ratio }),
  source,
}));
