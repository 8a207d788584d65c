import type { Finding } from '../findings/index.js';
import type { Conductivity, DryBasisMoisture, Fraction, MassFraction, Ratio } from '../units/index.js';
import { KERSTEN_MOISTURE } from './kersten.js';
import { estimate, saturationOf, type ModelSoil } from './models.js';
import type { ModelConductivity } from './properties.js';
import type { SampledSoil } from './sample.js';
import type { TextureClass } from './texture.js';

/** Saturation from which the soil is nearly full of water, and below which it is dry to the touch [1]. */
const NEARLY_FULL = 0.95;
const DRY = 0.2;

/** Clean sand below this moisture may dry out around a warm pipe [kg/kg]. */
const SAND_KEEPS_MOIST = 0.06;

/** Organic matter that models of mineral soil still take [kg/kg]. */
const ORGANIC_LIMIT = 0.2;

/** The step of the other minerals in the solids, and how near counts as near [1]. */
const QUARTZ_STEP = 0.2;
const NEAR_STEP = 0.03;

/** What is doubtful about a sample as a soil to lay pipes in. */
export function sampleFindings(sample: SampledSoil, soil: ModelSoil, models: readonly ModelConductivity[]): readonly Finding[] {
  const water = { moisture: soil.moisture as DryBasisMoisture, saturation: saturationOf(soil) as Ratio };
  return [...waterFindings(sample.texture.class, water), ...solidsFindings(sample, soil), ...modelFindings(soil, models)];
}

/** What is doubtful about the water of a mineral soil. */
export function waterFindings(
  texture: TextureClass,
  { moisture, saturation }: { readonly moisture: DryBasisMoisture; readonly saturation: Ratio },
): readonly Finding[] {
  const clean = texture === 'sand' || texture === 'loamy sand';
  const least = SAND_KEEPS_MOIST as DryBasisMoisture;
  return [
    ...when(saturation > NEARLY_FULL, { code: 'soil-near-saturation', level: 'note', values: { saturation }, source: 'common practice' }),
    ...when(saturation < DRY, { code: 'soil-very-dry', level: 'warning', values: { saturation, moisture }, source: 'kansasCores2022' }),
    ...when(clean && moisture < least, {
      code: 'sand-may-dry-out-in-cooling',
      level: 'note',
      values: { moisture, least },
      source: 'common practice',
    }),
  ];
}

function solidsFindings({ quartzFraction, organicMatter = 0 as MassFraction }: SampledSoil, soil: ModelSoil): readonly Finding[] {
  const limit = ORGANIC_LIMIT as MassFraction;
  const organic: Finding = { code: 'organic-outside-models', level: 'warning', values: { organicMatter, limit }, source: 'common practice' };
  const near = quartzFraction !== undefined && Math.abs(quartzFraction - QUARTZ_STEP) < NEAR_STEP;
  return [
    ...when(organicMatter > ORGANIC_LIMIT, organic),
    ...when(near, {
      code: 'quartz-near-step',
      level: 'warning',
      values: {
        quartzFraction: soil.quartzFraction as Fraction,
        poorer: estimate({ ...soil, quartzFraction: QUARTZ_STEP }) as Conductivity,
        richer: estimate({ ...soil, quartzFraction: QUARTZ_STEP + 1e-9 }) as Conductivity,
      },
      source: 'johansen1975',
    }),
  ];
}

function modelFindings(soil: ModelSoil, models: readonly ModelConductivity[]): readonly Finding[] {
  const values = { moisture: soil.moisture as DryBasisMoisture, least: KERSTEN_MOISTURE[soil.typical.kerstenSoil].own as DryBasisMoisture };
  const outside = !models.some(({ model, inRange }) => model === 'kersten' && inRange) && values.moisture < values.least;
  return when(outside, { code: 'kersten-outside-range', level: 'note', values, source: 'kersten1949' });
}

function when(holds: boolean, finding: Finding): readonly Finding[] {
  return holds ? [finding] : [];
}
