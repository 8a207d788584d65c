import type { LoopPlan } from '../../plan/index.js';
import { besideGuideline, type GuidelineClass } from '../beside-guideline.js';
import { REFERENCES } from '../../references/index.js';
import { describeFinding } from '../describe-finding.js';
import { show, type UnitSystem } from '../show.js';
import { entry, paragraph, type Write } from './layout.js';

const WHY_NOT: Readonly<Record<'hardly heats' | 'organic soil', string>> = {
  'hardly heats': 'The loop hardly heats; the guideline is for heat taken from the ground.',
  'organic soil': 'The soil at the pipes is organic; the guideline has no class for it.',
};

/** How far apart the guideline lays pipes [m]. */
const SPACING = 0.8;

function allowedText({ soil, low, typical, high, smallestArea, typicalArea, largestArea, pipe, trench }: GuidelineClass, write: Write): string {
  const range = (kind: 'heat flux' | 'area', from: number, to: number): string =>
    low === high ? '' : ` (${write(kind, from)} to ${write(kind, to)})`;
  return entry(
    `For ${SHORT[soil]}`,
    `${write('heat flux', typical)}${range('heat flux', low, high)}, so ${write('area', typicalArea)}${range('area', smallestArea, largestArea)} with ${write('pipe length', pipe)} of pipe, which ${write('trench length', trench)} of trench like these would hold`,
  );
}

const SHORT: Readonly<Record<GuidelineClass['soil'], string>> = {
  'dry non-cohesive': 'dry sand or gravel',
  'damp cohesive': 'damp cohesive soil',
  'water-saturated sand or gravel': 'saturated sand',
};

/** What the area guideline would have for the same heat, and why that is less than the plan's. */
export function guidelineSection(plan: LoopPlan, system: UnitSystem): string[] {
  const write = show(system);
  const beside = besideGuideline(plan);
  if (beside.comparison !== 'made') return [entry('Not compared', WHY_NOT[beside.comparison])];
  const { classes, fullLoadHours, heatPerLand, findings } = beside;
  const { circuits, land, trench } = plan.loop;
  return [
    entry('Full load', `the year’s heat from the ground would take ${write('time', fullLoadHours)} of it`),
    ...classes.map((each) => allowedText(each, write)),
    ...(classes.length > 1 ? [entry('', 'the soil at the pipes lies between its classes, or in more than one of them')] : []),
    entry(
      'This plan',
      `${write('heat flux', heatPerLand)} of the ${write('area', land)} of land under its trenches, half a spacing around them; ${write('pipe length', circuits.activePipe)} of pipe in ${write('trench length', trench)} of trench`,
    ),
    paragraph(
      `To compare with, never to dig by. The guideline lays pipes ${write('length', SPACING)} apart all over the area, in the climate it was made for, and counts on ice around them. This plan gives ice no credit, and beside a loop without ice the guideline looks 30 to 40 % too small.`,
    ),
    ...findings.map((finding) => paragraph(`Note: ${describeFinding(finding, system)}`)),
    paragraph(`Source: ${REFERENCES.areaGuideline2001.cite}.`),
  ];
}
