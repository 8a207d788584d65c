import type { OperationFindingValues } from '../../findings/operation.js';
import type { FindingTexts } from './finding-texts.js';
import { LIMIT_WORDS } from './limit-words.js';

/** Texts of the findings of the operation room. */
export const operationFindingTexts: FindingTexts<OperationFindingValues> = {
  'outside-plausible-band': ({ pipePerCapacity, low, high }, show) =>
    `The loop has ${show('length per power', pipePerCapacity)} of pipe for the unit's nominal capacity; ${show('length per power', low)} to ` +
    `${show('length per power', high)} is usual for pipes laid like this. Soil, climate and run time can explain it; check each before digging.`,
  'guideline-hours-outside': ({ fullLoadHours, read }, show) =>
    `The area guideline does not reach ${show('time', fullLoadHours)} of full load a year; it was read at ${show('time', read)}. ` +
    (fullLoadHours > read ? 'More hours allow less heat per area than shown.' : 'Fewer hours allow more heat per area than shown.'),
  'film-states': ({ time }, show) =>
    `For ${show('time', time)} of the year the flow is near the end of laminar flow and the heat so strong that the fluid may settle at more than one ` +
    `temperature; the one next to the hour before was taken. Other flow or pipe would avoid the doubt.`,
  'ice-not-credited': ({ waterByVolume, low }, show) =>
    `The soil at the pipes freezes, but holds only ${show('volumetric water', waterByVolume)} of water, less than ${show('volumetric water', low)}; ` +
    `its ice is not counted, and both results are the one without ice.`,
  'ice-merged': ({ day, frozenRadius }, show) =>
    `By day ${show('day of year', day)} the frozen soil around the pipes, ${show('length', frozenRadius)} in radius, has met that of its neighbours or the surface. ` +
    `No ice beyond is counted. Thaw water must be able to drain, and the ground over the loop may heave as one; more pipe or wider spacing avoids it.`,
  'ice-remains': ({ frozenRadius }, show) =>
    `The ice around the pipes, ${show('length', frozenRadius)} in radius, does not thaw within the year. It grows from year to year, and the ground does not ` +
    `recover: the loop is too short for its load.`,
  'frost-at-pipes': ({ undisturbed }, show) =>
    `The undisturbed ground at the pipes falls to ${show('temperature', undisturbed)}: frost from above reaches them without any loop, ` +
    `and has frozen water that the loop then finds as ice. No ice is counted, and both results are the one without ice; lay the pipes deeper.`,
  'ice-near-structure': ({ structureClearance }, show) =>
    structureClearance > 0
      ? `Frozen soil comes within ${show('length', structureClearance)} of a structure or service. Freezing soil can lift and push what it touches; ask whoever ` +
        `answers for the foundations, or lay the pipes further off.`
      : `Frozen soil reaches a structure or service. Do not build it like this: freezing soil can lift a footing, break a wall or a pipe. Lay the pipes ` +
        `further off, and have it judged by whoever answers for the foundations.`,
  'section-lags': ({ section, heatingPart, pipeShare }, show) =>
    `Section ${String(section)} of the loop has ${show('fraction', pipeShare)} of the pipe and gives ${show('ratio', heatingPart)} of all heat. ` +
    `Its ground is colder or drier, it is older, or it gets too little flow; more pipe there is of little use.`,
  'section-neighbour': ({ change, day }, show) =>
    `The section beside it changes the wall of this one by ${show('temperature difference', change)} about day ${show('day of year', day)}, which sections in ` +
    `parallel leave out. Lay them further apart, compute both as one layout, or move the limit of the fluid by as much.`,
  'first-winter-beyond-limit': ({ limit, reached, day, limitMargin }, show) =>
    `In the first year, while the fill is loose, the fluid reaches ${show('temperature', reached)} about day ${show('day of year', day)}, ` +
    `${show('temperature difference', -limitMargin)} beyond the ${LIMIT_WORDS[limit]}; once the fill has settled it keeps it. Work the fill in by lifts and wet it, ` +
    `expect more auxiliary heat in the first year, or lay the pipe that the first winter asks for.`,
};
