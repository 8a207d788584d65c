import { type Band, bandShape } from '../states/index.js';
import type { Kind, Quantity, Ratio, Shape, TemperatureDifference, Time } from '../units/index.js';
import { demand, demandChoice } from '../errors/index.js';
import { DAY } from './limits.js';
import { COVERAGE, SURFACE_COVERS } from './surface-covers.data.js';

/** What covers the ground over the loop. `lasting snow` means three months or more of a winter, its depth unknown; `pavement` is kept free of it. */
export type SurfaceCover = 'grass' | 'long grass' | 'lasting snow' | 'irrigated or shaded' | 'bare soil' | 'bare and arid' | 'pavement';

/** The covers, for lists and shapes. */
export const SURFACE_COVER_NAMES: readonly SurfaceCover[] = [
  'grass',
  'long grass',
  'lasting snow',
  'irrigated or shaded',
  'bare soil',
  'bare and arid',
  'pavement',
];

/** What is known of the surface; whatever is left out is assumed from the cover. */
export interface SurfaceKnowledge {
  /** Cover of the ground; `grass` when left out. */
  readonly cover?: SurfaceCover;
  /** Mean of the surface over the year minus that of the air, −10 to 15 [K]. */
  readonly meanOffset?: TemperatureDifference;
  /** Amplitude of the surface over that of the air, above 0 to 2 [1]. */
  readonly amplitudeRatio?: Ratio;
  /** How much later than the air the surface is coldest, −30 to 60 d [s]. */
  readonly lag?: Time;
}

/** An offset that is assumed, not given. */
export type AssumedOffset = 'meanOffset' | 'amplitudeRatio' | 'lag';

/** The step from the wave of the air to that of the surface, given or assumed. */
export interface SurfaceOffsets {
  /** Cover of the ground. */
  readonly cover: SurfaceCover;
  /** Mean of the surface minus that of the air [K]. */
  readonly meanOffset: Band<'temperature difference'>;
  /** Amplitude of the surface over that of the air [1]. */
  readonly amplitudeRatio: Band<'ratio'>;
  /** How much later than the air the surface is coldest [s]. */
  readonly lag: Band<'time'>;
  /** Which of the three are assumed from the cover; the others were given and have no width. */
  readonly assumed: readonly AssumedOffset[];
}

/** Shape of {@link SurfaceOffsets}. */
export const surfaceOffsetsShape: Shape<SurfaceOffsets> = {
  cover: SURFACE_COVER_NAMES,
  meanOffset: /* @__PURE__ */ bandShape('temperature difference'),
  amplitudeRatio: /* @__PURE__ */ bandShape('ratio'),
  lag: /* @__PURE__ */ bandShape('time'),
  assumed: { list: ['meanOffset', 'amplitudeRatio', 'lag'] },
};

/** The offsets that are given, and the assumed ones of the cover for the rest; refuses impossible ones. */
export function surfaceOffsets({ cover = 'grass', meanOffset, amplitudeRatio, lag }: SurfaceKnowledge): SurfaceOffsets {
  demandChoice('cover', cover, SURFACE_COVER_NAMES);
  if (meanOffset !== undefined) demand('meanOffset', 'temperature difference', meanOffset, { atLeast: -10, atMost: 15 });
  if (amplitudeRatio !== undefined) demand('amplitudeRatio', 'ratio', amplitudeRatio, { above: 0, atMost: 2 });
  if (lag !== undefined) demand('lag', 'time', lag, { atLeast: -30 * DAY, atMost: 60 * DAY }, 'seconds, not days');
  const usual = SURFACE_COVERS[cover];
  const given = { meanOffset, amplitudeRatio, lag };
  return {
    cover,
    meanOffset: band(meanOffset, usual.meanOffset),
    amplitudeRatio: band(amplitudeRatio, usual.amplitudeRatio),
    lag: band(
      lag,
      usual.lagDays.map((days) => days * DAY),
    ),
    assumed: (['meanOffset', 'amplitudeRatio', 'lag'] as const).filter((name) => given[name] === undefined),
  };
}

function band<K extends Kind>(given: Quantity<K> | undefined, [low = 0, estimate = 0, high = 0]: readonly number[]): Band<K> {
  const limits = given === undefined ? { low, estimate, high, coverage: COVERAGE } : { low: given, estimate: given, high: given, coverage: 1 };
  return limits as Band<K>;
}
