import { demand, demandCount } from '../errors/index.js';
import type { Source } from '../references/index.js';
import type { Diameter, Fraction, Length, Mass, Ratio, Temperature, Time } from '../units/index.js';
import { leastSampleMass } from './sample-mass.js';
import { type DepthPurpose, DRYING_RULES, PIT_NOTES, SAMPLING_RULES } from './sampling.data.js';
import type { DryingPlan, FieldToSample, SamplingDepth, SamplingPit, SamplingPlanResult } from './sampling-plan-shape.js';

/** Samples are taken from here on, down to this far below the lowest pipe, and no further apart than this (`common practice`) [m]. */
const FROM = 0.3;
const BELOW = 0.5;
const APART = 0.5;

/** Pipes no further apart than this share a sample [m]. */
const SAME = 0.15;

/** A hand auger reaches so deep without extensions (`common practice`) [m]. */
const AUGER = 2;

/** At least three places, at least twelve samples: 12 to 16 readings gave a mean that more of them did not move (`needleSurvey2012`). */
const PITS = 3;
const SAMPLES = 12;

/** Three pits do for 720 m², the land of a house; four times the land asks for twice the pits (`common practice`) [m2]. */
const LAND = 80;

/** Wet soil that holds 200 g of dry soil, from which on a kitchen balance that reads to a gram tells the water to a per cent [kg]. */
const KITCHEN = 0.3;

/** Error of the mean of such a survey (`needleSurvey2012`) [1]. */
const SURVEY_ERROR = 0.15 as Fraction;

const DRYING: DryingPlan = {
  ovenTemperature: 110 as Temperature,
  gentleTemperature: 60 as Temperature,
  shortestDrying: 43_200 as Time,
  reweighAfter: 3600 as Time,
  lostLimit: 0.001 as Ratio,
  rules: DRYING_RULES,
};

const SOURCES: readonly Source[] = ['needleSurvey2012', 'astmD2216Masses', 'astmD2216', 'common practice'];

/**
 * Where to dig, which depths to sample and what to weigh before a loop is sized.
 *
 * The samples reach from the soil that will be the trench fill to below the lowest pipe: for a shallow loop the long way of the heat leads up to the
 * surface. Pits lie between the trench lines, so that no pipe is laid over loosened soil, and nobody goes into them: `situations` name the notices
 * to show with the plan. Where pits differ, another between them tells most.
 *
 * @param field - depths of the pipes [m], number, length [m] and distance of the trenches [m], largest particle [m]
 * @returns pits, depths, masses [kg], what to note and how to dry
 * @throws InputError when a number is out of range
 * @remarks
 * Sources: `needleSurvey2012` (three pits and twelve samples at least), `astmD2216Masses` and `astmD2216` (masses and drying, recalled), `common practice`.
 *
 * Invariants: every pipe is sampled to 0.15 m; no two depths lie more than half a metre apart; never fewer pits for more land.
 * @example
 * ```ts @import.meta.vitest
 * const { feet, trenchFeet } = await import('../units/index.js');
 * const plan = samplingPlan({ pipeDepths: [feet(4), feet(6)], trenches: 3, trenchLength: trenchFeet(200) });
 * expect(plan.pits).toHaveLength(3);
 * expect(plan.sampleCount).toBeGreaterThanOrEqual(12);
 * expect(plan.situations).toContain('test-pit');
 * ```
 */
export function samplingPlan(field: FieldToSample): SamplingPlanResult {
  const { pipeDepths, trenches, trenchLength, trenchSpacing = 3 as Length, largestParticle = 0.002 as Diameter } = field;
  demandCount('pipeDepths', pipeDepths, 1, 100);
  pipeDepths.forEach((depth, index) => {
    demand(`pipeDepths.${String(index)}`, 'length', depth, { atLeast: 0.4, atMost: 5 }, 'deeper ground is bored, not dug');
  });
  demand('trenches', 'count', trenches, { atLeast: 1, atMost: 100 });
  demand('trenchLength', 'trench length', trenchLength, { atLeast: 1, atMost: 500 });
  demand('trenchSpacing', 'length', trenchSpacing, { atLeast: 0.3, atMost: 20 });
  const depths = depthsFor(pipeDepths);
  const byLand = Math.round(Math.sqrt((trenchLength * trenches * trenchSpacing) / LAND));
  const pits = pitsIn(Math.max(PITS, Math.ceil(SAMPLES / depths.length), byLand), { trenches, trenchLength, trenchSpacing });
  const { leastMass } = leastSampleMass({ largestParticle });
  return {
    pitDepth: Math.max(...depths.map(({ depth }) => depth)) as Length,
    pits,
    depths,
    sampleCount: pits.length * depths.length,
    sampleMass: Math.max(leastMass, KITCHEN) as Mass,
    surveyError: SURVEY_ERROR,
    notes: PIT_NOTES,
    rules: SAMPLING_RULES,
    drying: DRYING,
    situations: ['digging', 'test-pit', 'oven-drying'],
    sources: SOURCES,
  };
}

/** Depths from the later fill to below the lowest pipe; those between are set in evenly. */
function depthsFor(pipeDepths: readonly number[]): readonly SamplingDepth[] {
  const pipes = [...pipeDepths]
    .sort((a, b) => a - b)
    .reduce<readonly number[]>((kept, depth) => (depth - (kept.at(-1) ?? -Infinity) > SAME ? [...kept, depth] : kept), []);
  const lowest = Math.max(...pipeDepths);
  const marks: readonly (readonly [depth: number, purpose: DepthPurpose])[] = [
    ...(pipes.some((depth) => depth - FROM <= SAME) ? [] : [[FROM, 'later fill'] as const]),
    ...pipes.map((depth) => [depth, 'pipe'] as const),
    [lowest + BELOW, 'below the pipes'],
  ];
  return marks.flatMap(([depth, purpose], index) => [...between(marks[index - 1]?.[0] ?? depth, depth), sampleAt(depth, purpose)]);
}

/** Depths set in between two others, so that none lie further apart than they may. */
function between(upper: number, lower: number): readonly SamplingDepth[] {
  const gaps = Math.ceil((lower - upper) / APART - 1e-9);
  return Array.from({ length: Math.max(gaps - 1, 0) }, (_, index) => sampleAt(upper + ((index + 1) * (lower - upper)) / gaps, 'heat path'));
}

function sampleAt(depth: number, purpose: DepthPurpose): SamplingDepth {
  return { depth: depth as Length, purpose, tool: depth > AUGER ? 'bucket' : 'bucket or hand auger' };
}

/** The golden section (√5 − 1)/2, whose multiples spread evenly however many are taken. */
const GOLDEN = 0.6180339887498949;

/** Pits at even distances along the trenches, each in another gap between two of them; beside a single trench at half a spacing. */
function pitsIn(
  count: number,
  { trenches, trenchLength, trenchSpacing }: Required<Omit<FieldToSample, 'pipeDepths' | 'largestParticle'>>,
): readonly SamplingPit[] {
  const gaps = Math.max(trenches - 1, 1);
  return Array.from({ length: count }, (_, index) => {
    const gap = Math.floor(((0.5 + index * GOLDEN) % 1) * gaps);
    return { alongTrench: ((index + 0.5) / count) * trenchLength, acrossField: (gap + 0.5) * trenchSpacing } as SamplingPit;
  });
}
