import { applicableModels } from './applicable-models.js';
import { FINE_EARTH, MINERAL } from './model-refusals.js';
import { estimateOf, type Laid } from './soil-case.js';
import type { TextureClass } from './texture.js';
import { even, type Sides, sidesOfInterval, widest } from './two-sided.js';

/**
 * Errors of the estimate against measured soil: 10 % for `lu-2007` on the moist cores (`kansasCores2022`); where no core was measured the 25 %
 * that Kersten and Johansen claim for themselves, read as four chances in five, ln 1.25 over 1.2816 deviations; peat up to 25 % (`kujala2008`).
 */
const SCORE = { cored: 0.1, unmeasured: 0.17411983825979258, organic: 0.25 };

/** Saturation down to which the score of the cores holds, and below which the models speak alone (`kansasCores2022`) [1]. */
const MOIST = 0.3;
const DRY = 0.1;

/** Textures of the cores, and the two beside them that are finer still. */
const CORED: readonly TextureClass[] = ['sandy loam', 'loam', 'silt loam', 'silt', 'clay loam', 'silty clay loam', 'silty clay', 'clay'];

/**
 * The error of the models: against measured soil where there were cores, and elsewhere, if that is more, how far the models part from the
 * estimate. One out of its range does not count. Between moist and dry the one passes into the other.
 */
export function modelError({ soil }: Pick<Laid, 'soil'>): Sides {
  const { conductivity } = estimateOf({ soil });
  const counting = applicableModels(soil).applicable.filter(({ inRange }) => inRange);
  const parted = sidesOfInterval(counting.map((each) => Math.log(each.conductivity / conductivity)));
  const mineral = soil.organicMatter <= MINERAL;
  const cored = mineral && soil.gravel < FINE_EARTH.gravelBelow && !soil.frozen && CORED.includes(soil.texture);
  if (!cored) return widest([even(mineral ? SCORE.unmeasured : SCORE.organic), parted]);
  const score = even(SCORE.cored);
  const beyond = Math.min(1, Math.max(0, (MOIST - soil.saturation) / (MOIST - DRY)));
  const passing = (side: keyof Sides): number => SCORE.cored + beyond * (widest([score, parted])[side] - SCORE.cored);
  return { downward: passing('downward'), upward: passing('upward') };
}
