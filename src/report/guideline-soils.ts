import type { GuidelineSoil } from '../operation/index.js';
import type { LayerResult } from '../plan/index.js';
import type { SoilSample } from '../soil/index.js';

/** The classes of the guideline, in the order of what they yield. */
const CLASSES: readonly GuidelineSoil[] = ['dry non-cohesive', 'damp cohesive', 'water-saturated sand or gravel'];

/** Soils whose grains do not hold together, and those that have something of both; all others are cohesive. */
const NON_COHESIVE = /^(loamy |light |heavy )?sand$|gravel/u;
const MIXED = /sandy loam|till/u;

/** Organic matter beyond which a soil is none of the guideline's mineral ones [kg/kg]. */
const ORGANIC = 0.2;

/** Water in the pores below which a soil is dry to the touch, and from which it is nearly full [1]. */
const DRY = 0.2;
const FULL = 0.95;
/** A soil that is neither [1]. */
const DAMP = 0.5;

/** Conductivity of the middle class, heavy damp soil, which decides between its neighbours [W/(m.K)]. */
const MIDDLE = 1.3;

/**
 * Which classes of the area guideline a soil belongs to.
 *
 * Sand and gravel that are dry or full of water, and cohesive soil that is not dry, are classes of their own. What lies between (damp sand, sandy
 * loam, till, dry clay) and soil of which only the conductivity is known have two: the middle one, and the poorer or the better as the
 * conductivity falls short of heavy damp soil's or not. Organic soil has none. Cohesive soil full of water counts as damp: the better class is for
 * sand and gravel alone.
 *
 * @param layer - what is known of the soil, and its properties
 * @returns one class, two neighbours, or none; `common practice`
 */
export function guidelineSoils({
  sample,
  properties: { conductivity, phases },
}: Pick<LayerResult, 'sample' | 'properties'>): readonly GuidelineSoil[] {
  const [word, organic, water] = facts(sample, phases?.saturation ?? DAMP);
  if (organic) return [];
  const cohesive = word !== '' && !NON_COHESIVE.test(word) && !MIXED.test(word);
  if (cohesive && water >= DRY) return CLASSES.slice(1, 2);
  if (NON_COHESIVE.test(word) && (water < DRY || water > FULL)) return water < DRY ? CLASSES.slice(0, 1) : CLASSES.slice(2);
  return conductivity.estimate < MIDDLE ? CLASSES.slice(0, 2) : CLASSES.slice(1);
}

/** A soil's word, empty where none is known, whether it is organic, and how full of water its pores are. */
function facts(sample: SoilSample, saturation: number): readonly [word: string, organic: boolean, saturation: number] {
  if (sample.from === 'sample') return [sample.texture.class, (sample.organicMatter ?? 0) > ORGANIC, saturation];
  if (sample.from === 'laboratory') return ['', false, saturation];
  const { material, state } = sample;
  return [material, material === 'peat', state === 'dry' ? 0 : state.startsWith('saturated') ? 1 : saturation];
}
