import type { Fraction, Temperature, TemperatureDifference } from '../units/index.js';
import type { ExceededTemperature } from './design-temperatures.js';
import { type HeaderRecord, optionalAt, textAt } from './header-records.js';
import type { WeatherDesignConditions } from './weather-header.js';
import { numberBetween } from './weather-text.js';

/** Shares of the year that heating and cooling temperatures are exceeded in, and how far behind the word each stands. */
const HEATING = [
  [0.996, 2],
  [0.99, 3],
] as const;
const COOLING = [
  [0.004, 3],
  [0.01, 5],
  [0.02, 7],
] as const;

/** The design conditions of a header, and how many sets of them it says it has. */
export interface DesignRecord {
  readonly sets: readonly WeatherDesignConditions[];
  readonly said: number;
}

/**
 * Each set begins with its handbook and an empty cell before the word Heating; what follows Heating and Cooling begins alike in every edition seen.
 * Nothing here rests on them, and writers differ, so that what is not understood is left as written instead of refused.
 */
export function designConditionsOf(record: HeaderRecord): DesignRecord {
  const starts = record.cells.flatMap((cell, at) => (cell.toLowerCase() === 'heating' ? [at] : []));
  const sets = starts.map((start, set) => setOf(record, start, (starts[set + 1] ?? record.cells.length + 2) - 2));
  return { sets, said: Math.ceil(optionalAt(record, 1, 0, 100) ?? 0) };
}

function setOf(record: HeaderRecord, start: number, end: number): WeatherDesignConditions {
  const found = record.cells.findIndex((cell, at) => at > start && at < end && cell.toLowerCase() === 'cooling');
  // Where there is no cooling, its cells are looked for behind the last.
  const cooling = found < 0 ? record.cells.length : found;
  const written = (cell: number, least: number, most: number): number | undefined => {
    const text = textAt(record, cell);
    const number = numberBetween(text, 0, text.length);
    return number >= least && number <= most ? number : undefined;
  };
  const month = (cell: number): number | undefined => [written(cell, 1, 12)].find((number) => Number.isInteger(number));
  const exceeded = (from: number, shares: readonly (readonly [share: number, behind: number])[]): readonly ExceededTemperature[] =>
    shares.flatMap(([share, behind]) => {
      const temperature = written(from + behind, -70, 65);
      return temperature === undefined ? [] : [{ exceeded: share as Fraction, temperature: temperature as Temperature }];
    });
  const [coldestMonth, hottestMonth, dailyRange] = [month(start + 1), month(cooling + 1), written(cooling + 2, 0, 60)];
  return {
    handbook: textAt(record, start - 2),
    ...(coldestMonth === undefined ? {} : { coldestMonth }),
    heating: exceeded(start, HEATING),
    ...(hottestMonth === undefined ? {} : { hottestMonth }),
    ...(dailyRange === undefined ? {} : { dailyRange: dailyRange as TemperatureDifference }),
    cooling: exceeded(cooling, COOLING),
    written: record.cells.slice(Math.max(0, start - 2), end),
  };
}
