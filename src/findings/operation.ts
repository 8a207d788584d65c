import type { LengthPerPower, Shape, Time } from '../units/index.js';

/** Values of the findings that the operation room raises, by code. */
export interface OperationFindingValues {
  /** The pipe per ton lies outside what is usual for the layout. */
  'outside-plausible-band': { readonly pipePerCapacity: LengthPerPower; readonly low: LengthPerPower; readonly high: LengthPerPower };
  /** A guideline was read at more or fewer hours a year than it covers. */
  'guideline-hours-outside': { readonly fullLoadHours: Time; readonly read: Time };
  /** Film and fluid temperature feed on each other so strongly that the fluid had more than one possible state, so long in the year. */
  'film-states': { readonly time: Time };
}

/** Shapes of {@link OperationFindingValues}. */
export const operationFindingShapes: { readonly [C in keyof OperationFindingValues]: Shape<OperationFindingValues[C]> } = {
  'outside-plausible-band': { pipePerCapacity: 'length per power', low: 'length per power', high: 'length per power' },
  'guideline-hours-outside': { fullLoadHours: 'time', read: 'time' },
  'film-states': { time: 'time' },
};
