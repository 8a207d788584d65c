import type { OperationFindingValues } from '../../findings/operation.js';
import type { FindingTexts } from './finding-texts.js';

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
};
