import { joinedShape } from '../states/index.js';
import type { Length, Shape } from '../units/index.js';
import { type PipePosition, pipePositionShape } from './layout.js';
import type { TrenchCount } from './sections.js';

/** A coil whose rings are drawn apart along a trench so that they overlap, or lie clear of one another where the pitch is wide. */
export interface OverlappedCoilSection {
  /** Diameter of the rings, from centre to centre of the pipe, 0.1 to 5 [m]. */
  readonly ringDiameter: Length;
  /** How far one ring is from the next along the trench, 0.01 to 20 [m]. */
  readonly pitch: Length;
  /** Depth of the centres of the rings [m]. */
  readonly depth: Length;
  /** Rings in each trench, 1 to 100 000; a coil without end, which every coil tends to from below, when left out. */
  readonly turns?: number;
  /** A straight return laid back through each trench, by its place in the cross-section; none when left out. */
  readonly returnPipe?: PipePosition;
  /** Distance between the middles of neighbouring trenches [m]. */
  readonly trenchSpacing: Length;
}

/** Pipes laid side by side or over one another round a closed ring of trench. */
export interface RingTrenchSection {
  /** Diameter of the middle of the trench, 1 to 1000 [m]. */
  readonly ringDiameter: Length;
  /** The pipes in the cross-section of the trench, `x` counted away from the middle of the ring; 1 to 24. */
  readonly pipes: readonly PipePosition[];
}

/** Pipe laid in rings: coils lying flat, coils standing upright, or pipes round a closed trench. */
export type RingLayout =
  | ({ readonly type: 'flat-overlapped-coil' } & OverlappedCoilSection & TrenchCount)
  | ({ readonly type: 'upright-overlapped-coil' } & OverlappedCoilSection & TrenchCount)
  | ({ readonly type: 'ring-trench' } & RingTrenchSection);

/** Pipe laid in rings as a document gives it; how many trenches there are is for the sizing to find. */
export type RingLayoutInput =
  | ({ readonly type: 'flat-overlapped-coil' } & OverlappedCoilSection)
  | ({ readonly type: 'upright-overlapped-coil' } & OverlappedCoilSection)
  | ({ readonly type: 'ring-trench' } & RingTrenchSection);

/** Shape of {@link OverlappedCoilSection}. */
export const overlappedCoilSectionShape: Shape<OverlappedCoilSection> = {
  ringDiameter: 'length',
  pitch: 'length',
  depth: 'length',
  turns: { optional: 'count' },
  returnPipe: { optional: pipePositionShape },
  trenchSpacing: 'length',
};

/** Shape of {@link RingTrenchSection}. */
export const ringTrenchSectionShape: Shape<RingTrenchSection> = { ringDiameter: 'length', pipes: { list: pipePositionShape } };

const coilInTrenchesShape: Shape<OverlappedCoilSection & TrenchCount> = /* @__PURE__ */ joinedShape(overlappedCoilSectionShape, {
  trenches: 'count',
});

/** Shape of {@link RingLayout}. */
export const ringLayoutShape: Shape<RingLayout> = {
  by: 'type',
  oneOf: { 'flat-overlapped-coil': coilInTrenchesShape, 'upright-overlapped-coil': coilInTrenchesShape, 'ring-trench': ringTrenchSectionShape },
};

/** Shape of {@link RingLayoutInput}. */
export const ringLayoutInputShape: Shape<RingLayoutInput> = {
  by: 'type',
  oneOf: {
    'flat-overlapped-coil': overlappedCoilSectionShape,
    'upright-overlapped-coil': overlappedCoilSectionShape,
    'ring-trench': ringTrenchSectionShape,
  },
};
