import type { Temperature } from '../units/index.js';
import { DAY_HOURS, LEAP_DAY, LEAP_HOURS, monthSpans } from './weather-calendar.js';
import type { ColumnHours } from './weather-column-hours.js';
import { refusal } from './weather-file-error.js';
import type { WeatherRows } from './weather-rows.js';

/** A gap of dry bulbs is bridged by a straight line up to this many hours, the interval of the main hours of observation; a longer one is refused. */
const LONGEST_BRIDGE = 6;

/** Means of a month that a place on earth can have [degC]. */
const MONTHS_MEAN = { lowest: -60, highest: 50 } as const;

/** What was bridged: hours in all, and in the longest gap. */
export interface Bridged {
  readonly hours: number;
  readonly longest: number;
}

/** The hours of a year from 1 January 00:00, out of the rows of a file that may begin on another day. */
export interface YearOrder {
  /** Row of the file that each hour of the year is in. */
  readonly rows: Uint16Array;
  readonly hasLeapDay: boolean;
}

/** Orders the rows of a file from 1 January on, with or without its 29 February. */
export function orderOf({ places, count }: WeatherRows, keepLeapDay: boolean): YearOrder {
  const shift = places.indexOf(0);
  const left = count === LEAP_HOURS && !keepLeapDay ? DAY_HOURS : 0;
  const rows = new Uint16Array(count - left);
  for (let hour = 0; hour < rows.length; hour += 1) rows[hour] = (hour + shift + (hour < LEAP_DAY ? 0 : left)) % count;
  return { rows, hasLeapDay: rows.length === LEAP_HOURS };
}

/** Brings the rows of a column into the order of the year. */
export function inOrder<T extends Float64Array | Uint8Array | Int32Array>(from: T, into: T, { rows }: YearOrder): T {
  for (let hour = 0; hour < rows.length; hour += 1) into[hour] = from[rows[hour] ?? 0] ?? 0;
  return into;
}

/** Bridges short gaps of a column by straight lines, around the ends of the rows as well, in place; refuses longer ones. */
export function bridge({ values, missing }: ColumnHours, { count, firstLine }: WeatherRows, column: number): Bridged {
  const hours = missing.reduce((sum, each) => sum + each, 0);
  const at = (row: number): number => (row + count) % count;
  let longest = 0;
  for (let row = 0; row < count; row += 1) {
    if (missing[row] === 0 || (missing[at(row - 1)] === 1 && hours < count)) continue;
    let length = 0;
    while (length < count && missing[at(row + length)] === 1) length += 1;
    if (length > LONGEST_BRIDGE) {
      const allowed = `at most ${LONGEST_BRIDGE} hours in a row without an air temperature`;
      throw refusal({ line: firstLine + row, column }, { code: 'missing', value: { kind: 'count', value: length }, allowed });
    }
    const [before, after] = [values[at(row - 1)] ?? 0, values[at(row + length)] ?? 0];
    for (let step = 1; step <= length; step += 1) values[at(row + step - 1)] = before + ((after - before) * step) / (length + 1);
    longest = Math.max(longest, length);
  }
  return { hours, longest };
}

const meanOf = (values: Float64Array): number => values.reduce((sum, each) => sum + each, 0) / values.length;

/** What the hours of the dry bulb come to. */
export interface TemperatureSummary {
  readonly monthlyMeans: readonly Temperature[];
  readonly mean: Temperature;
  readonly lowest: Temperature;
  readonly lowestHour: number;
  readonly highest: Temperature;
  readonly highestHour: number;
}

/** Means and extremes of a year of hours; refuses months that no place has, which readings in Fahrenheit give. */
export function summaryOf(temperatures: Float64Array, { hasLeapDay, rows }: YearOrder, firstLine: number, column: number): TemperatureSummary {
  const monthlyMeans = monthSpans(hasLeapDay).map(({ from, to }) => {
    const mean = meanOf(temperatures.subarray(from, to));
    if (mean >= MONTHS_MEAN.lowest && mean <= MONTHS_MEAN.highest) return mean as Temperature;
    const allowed = `a mean of the month from ${MONTHS_MEAN.lowest} to ${MONTHS_MEAN.highest}`;
    const hint = 'degrees Celsius; were the temperatures written in Fahrenheit?';
    const place = { line: firstLine + (rows[from] ?? 0), column };
    throw refusal(place, { code: 'impossible', value: { kind: 'temperature', value: mean }, allowed, hint });
  });
  const [lowest, highest] = [temperatures.reduce((a, b) => Math.min(a, b)), temperatures.reduce((a, b) => Math.max(a, b))];
  return {
    monthlyMeans,
    mean: meanOf(temperatures) as Temperature,
    lowest: lowest as Temperature,
    lowestHour: temperatures.indexOf(lowest),
    highest: highest as Temperature,
    highestHour: temperatures.indexOf(highest),
  };
}
