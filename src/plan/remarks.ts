import type { Finding } from '../findings/index.js';
import type { LoadMode } from '../operation/index.js';
import type { Source } from '../references/index.js';
import { type Notice, noticesFor, type Situation } from '../safety/index.js';
import type { Length, PipeLength, TaggedQuantity, Time } from '../units/index.js';
import type { LoopFluid } from './fluid-plan.js';
import type { Assumption, AssumptionCode } from './loop-plan.js';
import { PROTECTION_DEPTH } from './plan-findings.js';

/** What the assumptions are told from. */
export interface AssumptionFacts {
  readonly peakTimes: Readonly<Record<LoadMode, Time>>;
  readonly cools: boolean;
  readonly leadLength: PipeLength;
  readonly fluid: LoopFluid;
  /** What was taken for the distance to the house where none is given; absent where one is [m]. */
  readonly distanceTaken?: Length;
  /** Whether a circulator was given. */
  readonly circulates: boolean;
  /** Whether the fill of the trenches is followed beside. */
  readonly filled?: boolean;
}

/** What the plan assumed. */
export function assumptionsOf({
  peakTimes,
  cools,
  leadLength,
  fluid,
  distanceTaken,
  circulates,
  filled = false,
}: AssumptionFacts): readonly Assumption[] {
  const assume = (code: AssumptionCode, kind: TaggedQuantity['kind'], value: number, source: Source = 'common practice'): Assumption => ({
    code,
    assumed: { kind, value },
    source,
  });
  return [
    assume('cold-spell', 'time', peakTimes.heating),
    ...(cools ? [assume('hot-day', 'time', peakTimes.cooling)] : []),
    ...(filled ? [] : [assume('fill-density-share', 'fraction', 1)]),
    assume('ice-credit', 'fraction', 0),
    assume('other-season-credit', 'fraction', 0),
    assume('lead-length', 'pipe length', leadLength),
    ...(circulates ? [] : [assume('circulator-power', 'electric power', 0)]),
    ...(distanceTaken === undefined ? [] : [assume('distance-to-house', 'length', distanceTaken)]),
    ...(fluid.margin === undefined ? [] : [assume('freeze-margin', 'temperature difference', fluid.margin, 'freezeMarginPractice')]),
  ];
}

/** Safety notices that digging, filling and wiring this loop call for. */
export function noticesOf(trenchDepth: number, fluid: LoopFluid, makesHotWater = false): readonly Notice[] {
  const situations: Situation[] = ['digging', 'test-pit', 'oven-drying', 'pipe-fusion', 'pressure-test', 'electrical', 'refrigerant'];
  if (trenchDepth >= PROTECTION_DEPTH) situations.push('trench-deeper-than-protection-depth');
  if (fluid.fluid !== 'water') situations.push('antifreeze');
  if (makesHotWater) situations.push('hot-water');
  return noticesFor(situations);
}

/** Each finding once: layers of one log and modes of one unit tend to say the same. */
export function onlyOnce(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return findings.filter((finding) => {
    const key = JSON.stringify(finding);
    return !seen.has(key) && seen.add(key);
  });
}

/**
 * Sources without repetition, in the order in which they first appear.
 *
 * @param findings - what they name comes after what was used
 * @param assumptions - what they name comes last
 * @param used - the sources of each room the plan went through
 * @returns keys of the bibliography
 */
export function sourcesOf(
  findings: readonly Finding[],
  assumptions: readonly Assumption[],
  ...used: readonly (readonly Source[])[]
): readonly Source[] {
  return [...new Set([...used.flat(), ...findings.map(({ source }) => source), ...assumptions.map(({ source }) => source)])];
}
