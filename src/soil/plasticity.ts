import { demand, demandChoice, demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { DryBasisMoisture } from '../units/index.js';
import { type Fines, FINES_GROUPS, type FinesGroup } from './unified-soil.js';

/** What the behaviour of fines makes of them. */
export interface JudgedFines {
  readonly group: FinesGroup;
  /** Letter that they give a coarse soil: silty, or clayey. */
  readonly letter: 'M' | 'C';
  /** Whether their liquid limit is 50 % or more. */
  readonly liquid: boolean;
  readonly organic: boolean;
  readonly aLine?: DryBasisMoisture;
  readonly findings: readonly Finding[];
}

/** Below this share of itself after drying in the oven a liquid limit is that of organic soil. */
const ORGANIC = 0.75;

/** Limits stand on a line to a part per billion, however they were computed. */
const SAME = 1e-9;

/** Judges fines by their limits, or takes them as they were named. */
export function judgeFines(fines: Fines): JudgedFines {
  demandObject('plasticity', fines);
  demandChoice('plasticity.from', fines.from, ['limits', 'nonplastic', 'group']);
  if (fines.from === 'limits') return byLimits(fines);
  if (fines.from === 'group') demandChoice('plasticity.group', fines.group, FINES_GROUPS);
  const group = fines.from === 'group' ? fines.group : 'ML';
  return { group, letter: letterOf(group), liquid: group.endsWith('H'), organic: false, findings: [] };
}

function byLimits({ liquidLimit, plasticityIndex, ovenDriedLiquidLimit }: Extract<Fines, { readonly from: 'limits' }>): JudgedFines {
  demand('plasticity.liquidLimit', 'moisture on dry basis', liquidLimit, { above: 0, atMost: 10 }, 'per cent given as a share?');
  const least = { atLeast: 0, atMost: liquidLimit };
  demand('plasticity.plasticityIndex', 'moisture on dry basis', plasticityIndex, least, 'it is the liquid limit less the plastic limit');
  if (ovenDriedLiquidLimit !== undefined) {
    demand('plasticity.ovenDriedLiquidLimit', 'moisture on dry basis', ovenDriedLiquidLimit, { above: 0, atMost: 10 });
  }
  const aLine = Math.max(0.73 * (liquidLimit - 0.2), 0.04) as DryBasisMoisture;
  const liquid = liquidLimit >= 0.5 - SAME;
  const group = groupOf(plasticityIndex, aLine, liquid);
  return {
    group,
    letter: letterOf(group),
    liquid,
    organic: ovenDriedLiquidLimit !== undefined && ovenDriedLiquidLimit / liquidLimit < ORGANIC - SAME,
    aLine,
    findings: beyondULine(liquidLimit, plasticityIndex),
  };
}

function groupOf(plasticityIndex: number, aLine: number, liquid: boolean): FinesGroup {
  const above = plasticityIndex >= aLine - SAME;
  if (liquid) return above ? 'CH' : 'MH';
  if (!above) return 'ML';
  return plasticityIndex > 0.07 + SAME ? 'CL' : 'CL-ML';
}

/** Clays and silty clays give the C; a coarse soil with silty clay is told apart by its own symbol. */
function letterOf(group: FinesGroup): 'M' | 'C' {
  return group.startsWith('C') ? 'C' : 'M';
}

/** The upper limit of soils: PI = 0.9 (LL − 8 %), upright at LL 16 % up to where the two meet. */
function beyondULine(liquidLimit: DryBasisMoisture, plasticityIndex: DryBasisMoisture): readonly Finding[] {
  const uLine = (liquidLimit < 0.16 - SAME ? 0 : Math.max(0.9 * (liquidLimit - 0.08), 0.07)) as DryBasisMoisture;
  if (plasticityIndex <= uLine + SAME) return [];
  return [{ code: 'plasticity-beyond-soils', level: 'warning', values: { liquidLimit, plasticityIndex, uLine }, source: 'astmD2487' }];
}
