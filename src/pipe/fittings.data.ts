/** How the loss of a fitting is written down. */
export interface FittingRecord {
  /** First constant of Hooper, which carries the rise of the loss in slow flow [1]. */
  readonly slow: number;
  /** Second constant of Hooper, the loss in fast flow through a wide pipe [1]. */
  readonly fast: number;
  /** Equivalent length over bore of the handbook for steel pipe, where it has one [1]. */
  readonly diameters?: number;
}

/** A fitting whose loss changes with flow and bore. */
export type VariableFitting =
  | 'elbow 90 screwed'
  | 'elbow 90 welded'
  | 'elbow 90 long radius'
  | 'elbow 90 mitred'
  | 'elbow 45'
  | 'return bend 180 welded'
  | 'tee branch welded'
  | 'tee branch screwed'
  | 'tee run screwed'
  | 'full-bore valve'
  | 'reduced-port ball valve'
  | 'swing check valve';

/** A fitting whose loss does not change. */
export type ConstantFitting = 'sharp entrance' | 'inward entrance' | 'exit' | 'fusion joint' | 'fused return bend';

/**
 * Fittings by Hooper's two constants (`hooper1981`) and the handbook's equivalent lengths (`technicalPaper410`).
 *
 * Fusion joints, the bend of a return and the ends of a pipe have a constant loss: entrances and exit as of the handbook, the fused ones by
 * `common practice`, no measurements of them were found.
 */
export const FITTINGS: Readonly<Record<VariableFitting, FittingRecord>> = {
  'elbow 90 screwed': { slow: 800, fast: 0.4, diameters: 30 },
  'elbow 90 welded': { slow: 800, fast: 0.25, diameters: 20 },
  'elbow 90 long radius': { slow: 800, fast: 0.2, diameters: 14 },
  'elbow 90 mitred': { slow: 1000, fast: 1.15, diameters: 60 },
  'elbow 45': { slow: 500, fast: 0.2, diameters: 16 },
  'return bend 180 welded': { slow: 1000, fast: 0.35, diameters: 50 },
  'tee branch welded': { slow: 800, fast: 0.8, diameters: 60 },
  'tee branch screwed': { slow: 500, fast: 0.7, diameters: 60 },
  'tee run screwed': { slow: 200, fast: 0.1, diameters: 20 },
  'full-bore valve': { slow: 300, fast: 0.1, diameters: 3 },
  'reduced-port ball valve': { slow: 500, fast: 0.15 },
  'swing check valve': { slow: 1500, fast: 1.5, diameters: 100 },
};

/** Fittings whose loss does not change with flow and bore [1]. */
export const CONSTANT_FITTINGS: Readonly<Record<ConstantFitting, number>> = {
  'sharp entrance': 0.5,
  'inward entrance': 0.78,
  exit: 1,
  'fusion joint': 0.1,
  'fused return bend': 1.5,
};
