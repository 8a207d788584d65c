import type { PlanIce } from '../../plan/index.js';
import { monthName } from '../month-day.js';
import { days, entry, paragraph, type Write } from './layout.js';
import { reachedText } from './reached.js';

const HEAVE: Readonly<Record<PlanIce['heave']['heaveClass'], string>> = {
  none: 'no lift of the ground is to be expected',
  slight: 'the ground may lift slightly',
  moderate: 'the ground may lift moderately',
  severe: 'the ground may lift severely',
};

/** Thinner ice is not worth a word [m]. */
const LEAST = 1e-3;

function iceEntries({ iceYear }: PlanIce, write: Write): string[] {
  const { frozenRadius, frozenThickness, frozenWater, mostIceDay, thawDay, months = [] } = iceYear;
  if (mostIceDay === undefined) return [entry('Ice', 'none')];
  const thawed = thawDay === undefined ? 'it does not thaw within the year' : `thawed by ${write('day of year', thawDay)}`;
  // Ice and water are measured as finely as a pipe is, in its unit.
  const fine = (length: number): string => write('diameter', length);
  const frozen = months.filter((month) => month.frozenThickness >= LEAST);
  return [
    entry(
      'Ice',
      `${fine(frozenThickness)} thick on the pipe, to ${fine(frozenRadius)} from its axis, on ${write('day of year', mostIceDay)}; over the land a depth of ${fine(frozenWater)} of water is frozen; ${thawed}`,
    ),
    ...(frozen.length === 0
      ? []
      : [entry('Thickness by month', frozen.map((month) => `${monthName(month.month)} ${fine(month.frozenThickness)}`).join(', '))]),
  ];
}

function rootsText({ largestCooling, largestCoolingDay, springDelay }: NonNullable<PlanIce['roots']>, write: Write): string {
  const cooled = `${write('temperature difference', largestCooling)} colder at most, on ${write('day of year', largestCoolingDay)}`;
  return springDelay === undefined ? cooled : `${cooled}; spring comes ${days(springDelay)} ${springDelay < 0 ? 'earlier' : 'later'}`;
}

/** The loop with the ice around its pipes beside the one without, and what the ice does to ground and roots. */
export function iceSection(ice: PlanIce, write: Write): string[] {
  const { credited, withoutIce, withIce, heave, roots } = ice;
  const { structureClearance } = heave;
  const clearance = structureClearance === undefined ? '' : `; ${write('length', structureClearance)} from frozen soil to the structure`;
  return [
    entry('Coldest fluid', `enters at ${reachedText(withoutIce.coldestEntering, write)} without ice, the reserve`),
    entry('', `${reachedText(withIce.coldestEntering, write)} with ice${credited ? '' : ', which does not count here'}`),
    ...iceEntries(ice, write),
    entry('Heave', `${HEAVE[heave.heaveClass]}${clearance}`),
    ...(roots === undefined ? [] : [entry('Roots over the loop', rootsText(roots, write))]),
    paragraph(
      'The length of the loop takes no credit for ice. Keep pipes away from footings, slabs, walls, drains and water pipes: freezing soil lifts and breaks what it touches.',
    ),
  ];
}
