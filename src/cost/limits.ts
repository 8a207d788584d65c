import { type AllowedRange, demand, InputError } from '../errors/index.js';

/** Money in any currency, far from where sums lose their units. */
export const MONEY: AllowedRange = { atLeast: 0, atMost: 1e13 };
/** Money that may be owed or earned. */
export const EITHER_SIGN: AllowedRange = { atLeast: -1e13, atMost: 1e13 };
/** A price of energy, up to 36 000 a kilowatt hour [cur/J]. */
export const ENERGY_PRICE: AllowedRange = { atLeast: 0, atMost: 0.01 };
/** Energy of a year [J]. */
export const YEARLY_ENERGY: AllowedRange = { atLeast: 0, atMost: 1e16 };
/** A yearly rate: prices halve or double within a year at the ends [1/a]. */
export const RATE: AllowedRange = { atLeast: -0.5, atMost: 1 };
/** Years of a study. */
export const STUDY_YEARS: AllowedRange = { atLeast: 1, atMost: 100 };
/** A year of the calendar. */
export const CALENDAR_YEAR: AllowedRange = { atLeast: 1900, atMost: 2300 };
/** Emissions of an energy [kg/J]; the worst lignite stands at 1e-7. */
export const EMISSION: AllowedRange = { atLeast: 0, atMost: 1e-5 };

/**
 * Refuses a text that is absent or empty.
 *
 * @param argument - the name the caller knows it by
 * @param value - the text
 * @throws InputError when there is nothing to read
 */
export function demandText(argument: string, value: string): void {
  if (typeof value === 'string' && value.trim() !== '') return;
  const given: unknown = value;
  const missing = given === undefined || given === null;
  const code = missing ? 'missing' : 'wrong-type';
  throw new InputError({ code, argument, value: missing ? undefined : JSON.stringify(given), allowed: 'a text that is not empty' });
}

/** Refuses a year that is no year of the calendar. */
export const demandYear = (argument: string, value: number): void => demand(argument, 'count', value, CALENDAR_YEAR);
