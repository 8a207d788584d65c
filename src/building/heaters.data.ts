/** What heats a building whose useful heat is not known better. */
export type HeaterName = 'old oil boiler' | 'oil boiler' | 'condensing boiler' | 'non-condensing boiler' | 'electric resistance';

/** The heaters, for lists and shapes. */
export const HEATER_NAMES: readonly HeaterName[] = [
  'old oil boiler',
  'oil boiler',
  'condensing boiler',
  'non-condensing boiler',
  'electric resistance',
];

/**
 * Least and greatest useful heat of a season over the fuel on its higher heating value [1], common practice from memory. What lies between is taken
 * as equally likely. All of a resistance heater's electricity ends as heat indoors.
 */
export const SEASONAL_RATIOS: Readonly<Record<HeaterName, readonly [least: number, most: number]>> = {
  'old oil boiler': [0.65, 0.75],
  'oil boiler': [0.83, 0.87],
  'condensing boiler': [0.9, 0.97],
  'non-condensing boiler': [0.78, 0.83],
  'electric resistance': [1, 1],
};
