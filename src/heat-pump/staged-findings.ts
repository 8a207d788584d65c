import type { Finding } from '../findings/index.js';
import type { Temperature } from '../units/index.js';
import type { EnteringRange } from './performance-map.js';
import type { UnitModel } from './staged-unit.js';

/** Ranges of levels that differ by less are those of one table [K]. */
const SAME = 0.5;
/** A COP higher by less than this at a higher level is a matter of rounding [1]. */
const ROUNDING = 0.01;
/** Where levels over the load side are compared [degC]. */
const COMPARED = 35 as Temperature;

/** What to look at in levels: more output at a better COP, and rating points that end elsewhere. */
export function levelFindings(models: readonly UnitModel[], { lowest, highest }: EnteringRange): readonly Finding[] {
  return models.flatMap(({ mode, rated, continuedAt }, levelInUse): readonly Finding[] => {
    const differs = rated.lowest < lowest - SAME || rated.highest > highest + SAME;
    const range: readonly Finding[] = differs
      ? [{ code: 'level-ranges-differ', level: 'note', values: { mode, levelInUse, lowest, highest }, source: 'common practice' }]
      : [];
    const below = models[levelInUse - 1];
    if (below === undefined) return range;
    const enteringFluid = [lowest, ((lowest + highest) / 2) as Temperature, highest].find(
      (place) => continuedAt(place, COMPARED).cop > below.continuedAt(place, COMPARED).cop + ROUNDING,
    );
    if (enteringFluid === undefined) return range;
    const { cop } = continuedAt(enteringFluid, COMPARED);
    const lowerCop = below.continuedAt(enteringFluid, COMPARED).cop;
    const values = { mode, levelInUse, enteringFluid, cop, lowerCop };
    return [...range, { code: 'level-cop-odd', level: 'note', values, source: 'common practice' }];
  });
}
