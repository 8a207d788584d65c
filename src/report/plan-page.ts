import type { LoopPlan } from '../plan/index.js';
import { describeAssumption } from './describe-assumption.js';
import { describeFinding } from './describe-finding.js';
import { fillSection } from './page/fill-section.js';
import { groundSection } from './page/ground-section.js';
import { guidelineSection } from './page/guideline-section.js';
import { hoursSection } from './page/hours-section.js';
import { iceSection } from './page/ice-section.js';
import { isEnough, loopSection } from './page/loop-section.js';
import { paragraph, section, wrap } from './page/layout.js';
import { lengthSection } from './page/length-section.js';
import { soilSection } from './page/soil-section.js';
import { seasonSection } from './page/season-section.js';
import { sourcesSection } from './page/sources-section.js';
import { unitSection } from './page/unit-section.js';
import { waterSection } from './page/water-section.js';
import { show, type UnitSystem } from './show.js';

const LEVELS = { stop: 'STOP', warning: 'Warning', note: 'Note' } as const;
const LOOKED_AT = ['warning', 'note'] as const;

/**
 * The plan as a page of text that a homeowner can read: what forbids building it, what to build, why, what to look at, what to be careful with, and
 * the sources.
 *
 * @param plan - a plan of any house
 * @param system - metric or US units; numbers are rounded for people
 * @returns lines of at most 96 characters
 * @example
 * ```ts
 * console.log(planPage(planLoop(input), 'us'));
 * ```
 */
export function planPage(plan: LoopPlan, system: UnitSystem): string {
  const write = show(system);
  const said = (level: keyof typeof LEVELS): string[] =>
    plan.findings.filter((finding) => finding.level === level).map((finding) => paragraph(`${LEVELS[level]}: ${describeFinding(finding, system)}`));
  const stops = said('stop');
  return [
    wrap(plan.name.toUpperCase(), ''),
    ...(stops.length === 0 ? [] : [section('Do not build this as it stands', stops)]),
    section(isEnough(plan) ? 'What to build' : 'The most that fits, which is not enough', loopSection(plan, write)),
    section('The soil', soilSection(plan, write)),
    section('The ground through the year', groundSection(plan, write)),
    section('The heat pump at design', unitSection(plan, write)),
    section('Through the year, hour by hour', hoursSection(plan, write)),
    ...(plan.settling === undefined ? [] : [section('While the trench fill settles', fillSection(plan.settling, write))]),
    ...(plan.iceAround === undefined ? [] : [section('Ice around the pipes', iceSection(plan.iceAround, write))]),
    section('What the year takes', seasonSection(plan, write)),
    section('Why this much pipe, in closed form', lengthSection(plan, system)),
    section('Beside the area guideline', guidelineSection(plan, system)),
    section('Antifreeze, flow and pump', waterSection(plan, write)),
    section('What to look at', LOOKED_AT.flatMap(said)),
    section(
      'What was assumed',
      plan.assumptions.map((assumption) => paragraph(describeAssumption(assumption, system))),
    ),
    section(
      'Safety',
      plan.notices.map(({ text }) => paragraph(text)),
    ),
    section('Sources', sourcesSection(plan)),
    wrap(
      'This is a computation, not a permit or an approval. Local codes, the utilities, the makers of pipe and unit, and licensed trades come first.',
      '',
    ),
  ].join('\n\n');
}
