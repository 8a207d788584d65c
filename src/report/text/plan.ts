import type { PlanFindingValues } from '../../findings/plan.js';
import { count, days } from '../page/layout.js';
import type { FindingTexts } from './finding-texts.js';

/** Texts of the findings of the plan room. */
export const planFindingTexts: FindingTexts<PlanFindingValues> = {
  'field-too-small': ({ trenches, laid, needed }, show) =>
    `The field holds ${count(trenches, 'trench')} with ${show('pipe length', laid)} of pipe; ${show('pipe length', needed)} would be needed. ` +
    'Find more land, lay more pipes in a trench, or take a smaller unit and more auxiliary heat.',
  'trench-beyond-protection-depth': ({ trenchDepth, protectionDepth }, show) =>
    `The trench is ${show('length', trenchDepth)} deep, beyond the ${show('length', protectionDepth)} from which strict rules want the walls sloped or shored. ` +
    'Nobody enters it unprotected; lay the pipe from above, and ask for the rule of your place.',
  'pipes-shallow': ({ cover, usual }, show) =>
    `The upper pipes lie below ${show('length', cover)} of cover; ${show('length', usual)} and more is usual. Spades, posts and deep tillage reach them, frost goes ` +
    'below them, and codes may ask for more. Lay them deeper, or mark them and keep the land above untouched.',
  'ground-freezes-at-pipes': ({ lowest, meanDepth, snow }, show) =>
    `Around the pipes, ${show('length', meanDepth)} deep on the mean, the ground cools to ${show('temperature', lowest)} by itself and would freeze without any loop. ` +
    'The heat of that ice is not counted, and little stands between ground and fluid. Lay deeper' +
    (snow === 'counted' ? '.' : '; snow is left out: where it lies all winter, climate.cover is lasting snow.'),
  'freeze-protection-short': ({ freezingPoint, lowestLeaving }, show) =>
    `The fluid freezes at ${show('temperature', freezingPoint)}, the unit lets it leave at ${show('temperature', lowestLeaving)}. Fill antifreeze or raise the unit’s stop.`,
  'freeze-margin-small': ({ freezingPoint, coldest, usual }, show) =>
    `The fluid freezes at ${show('temperature', freezingPoint)} and leaves the unit at ${show('temperature', coldest)}; ` +
    `${show('temperature difference', usual)} between them is usual. Where the flow is weak it may freeze in the unit, which bursts it. ` +
    'Fill antifreeze that reaches further down, or raise the unit’s stop.',
  'band-end-unreachable': ({ end, conductivity }, show) =>
    `If the soil conducts ${show('conductivity', conductivity)}, the ${end === 'low' ? 'lower' : 'upper'} end of its band, no length of pipe keeps the unit’s limit: ` +
    'the ground itself comes too near to it. Lay deeper, or take a unit with wider limits.',
  'mode-hardly-runs': ({ mode, runFraction, least }, show) =>
    `The unit runs ${show('run fraction', runFraction)} of its hardest month of ${mode}, less than ${show('run fraction', least)}; the loop is not sized for ${mode}.`,
  'unit-oversized': ({ mode, shareAtDesign, usual }, show) =>
    `At design conditions ${mode} takes ${show('run fraction', shareAtDesign)} of the unit’s capacity; ${show('run fraction', usual)} and more is usual. ` +
    'A smaller unit starts less often and asks for less pipe.',
  'short-if-soil-is-poor': ({ end, laid, neededIfPoor, shortBy }, show) =>
    `If the soil is at the ${end === 'low' ? 'lower' : 'upper'} end of its band, ${show('pipe length', neededIfPoor)} would be needed and ${show('pipe length', laid)} is laid: ${show('fraction', shortBy)} short. ` +
    'A core sample or a needle-probe reading at pipe depth narrows the band.',
  'surface-mean-off-air': ({ meanOffset, usual }, show) =>
    `The ground surface is ${show('temperature difference', Math.abs(meanOffset))} ${meanOffset < 0 ? 'colder' : 'warmer'} on the mean of the year than the air that the loads of the house come from. ` +
    `Even lasting snow or a dark cover makes less than ${show('temperature difference', usual)}: check that both belong to one place.${Math.abs(meanOffset) > 2 * usual ? ' Beyond twice that one of both is wrong, and the length means nothing.' : ''}`,
  'surface-season-off-air': ({ lag, most }) =>
    `The ground surface is coldest ${days(lag)} ${lag < 0 ? 'before' : 'after'} the air that the loads of the house come from. It follows within days; ` +
    `beyond ${days(most)} one of both is wrong, and the length means nothing: check the coldest day, and that both belong to one place and hemisphere.`,
  'short-in-fill': ({ laid, needed, neededIfLoose }, show) =>
    `${show('pipe length', laid)} of pipe keeps the unit’s limits in native soil, but not in this fill: settled, it takes ${show('pipe length', needed)}, ` +
    `loose, in the first winter, ${show('pipe length', neededIfLoose)}. Lay that, work the fill in by lifts, or expect the auxiliary heater in the coldest weeks.`,
  'trench-fill-not-modelled': ({ trench }, show) =>
    `${show('trench length', trench)} of trench is filled with loosened soil, which conducts worse than native soil for one to three winters; this computation takes native soil. ` +
    'Put the fill back in layers, break the clods, tamp or wet it.',
};
