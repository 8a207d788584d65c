import type { Finding } from '../findings/index.js';
import type { Fraction, Length, Temperature, TemperatureDifference, TrenchLength } from '../units/index.js';
import type { LoopFluid } from './fluid-plan.js';
import type { Trial } from './solve.js';
import type { HeatPump } from '../heat-pump/index.js';
import type { Band } from '../states/index.js';

/** From this depth strict places want trench walls sloped or shored; where the rule of the place is not known, the strictest counts [m]. */
export const PROTECTION_DEPTH = 1.2;

/** Cover below which spades, tillage and frost reach a pipe, and codes ask for more [m]. */
const USUAL_COVER = 0.6 as Length;

/** 10 °F, which is 10/1.8 K, below the coldest fluid that leaves the unit, as antifreeze is mixed for [K]. */
const USUAL_FREEZE_MARGIN = 5.555555555555555 as TemperatureDifference;
/** Mixtures are rounded to whole per cent [K]. */
const ROUNDED = 0.1;

/** What the findings of the whole job are told from. */
export interface PlanFacts {
  readonly chosen: Trial;
  readonly needed: Band<'pipe length'>;
  readonly trench: TrenchLength;
  readonly fluid: LoopFluid;
  readonly unit: HeatPump;
  /** Coldest fluid that leaves the unit at design; absent where it does not heat [degC]. */
  readonly coldestLeaving: Temperature | undefined;
  /** The end of the soil's band that asks for the most pipe. */
  readonly longestEnd: 'low' | 'high';
  /** Whether the fill of the trenches is followed beside. */
  readonly filled: boolean;
}

/**
 * What a master would say of the whole job, beyond what each room says of its part.
 *
 * @param facts - the loop chosen and what it was made from
 * @returns findings
 */
export function planFindings({ chosen, needed, trench, fluid, unit, coldestLeaving, longestEnd, filled }: PlanFacts): readonly Finding[] {
  const { option, layout } = chosen;
  const source = 'common practice';
  const deepest = Math.max(...layout.pipes.map(({ depth }) => depth)) as Length;
  const shallowest = Math.min(...layout.pipes.map(({ depth }) => depth)) as Length;
  const findings: Finding[] = filled ? [] : [{ code: 'trench-fill-not-modelled', level: 'note', values: { trench }, source }];
  if (!chosen.enough) {
    const values = { trenches: option.trenches, laid: option.activePipe, needed: chosen.asked };
    findings.push({ code: 'field-too-small', level: 'stop', values, source });
  }
  if (deepest >= PROTECTION_DEPTH) {
    const values = { trenchDepth: deepest, protectionDepth: PROTECTION_DEPTH as Length };
    findings.push({ code: 'trench-beyond-protection-depth', level: 'warning', values, source });
  }
  if (shallowest < USUAL_COVER) {
    findings.push({ code: 'pipes-shallow', level: 'warning', values: { cover: shallowest, usual: USUAL_COVER }, source });
  }
  // Where the unit does not stop itself, the coldest fluid is what leaves it at the loop's design.
  const coldest = unit.lowestLeaving ?? coldestLeaving;
  if (coldest !== undefined && fluid.freezingPoint > coldest) {
    findings.push({ code: 'freeze-protection-short', level: 'stop', values: { freezingPoint: fluid.freezingPoint, lowestLeaving: coldest }, source });
  }
  if (coldest !== undefined && fluid.freezingPoint <= coldest && coldest - fluid.freezingPoint < USUAL_FREEZE_MARGIN - ROUNDED) {
    const values = { freezingPoint: fluid.freezingPoint, coldest, usual: USUAL_FREEZE_MARGIN };
    // Water turns to hard ice at once and bursts what it is in; a mixture turns to slush first.
    const level = fluid.fluid === 'water' ? 'stop' : 'warning';
    findings.push({ code: 'freeze-margin-small', level, values, source: 'freezeMarginPractice' });
  }
  if (chosen.enough && needed.high > option.activePipe) {
    const shortBy = (1 - option.activePipe / needed.high) as Fraction;
    const values = { end: longestEnd, laid: option.activePipe, neededIfPoor: needed.high, shortBy };
    findings.push({ code: 'short-if-soil-is-poor', level: 'warning', values, source });
  }
  return findings;
}
