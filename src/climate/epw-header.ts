import type { Conductivity, DayOfYear, Density, Length, Ratio, SpecificHeat, Temperature, Time } from '../units/index.js';
import { designConditionsOf } from './epw-design-conditions.js';
import { blocksAt, dayAt, type HeaderRecord, nextRecord, numberAt, optionalAt, placeAt, textAt } from './header-records.js';
import { refusal } from './weather-file-error.js';
import type { PrintedGround, WeatherHeader, WeatherPlace } from './weather-header.js';
import type { TextCursor } from './weather-text.js';

/** The header of an EPW file, and its printed ground temperatures. */
export interface EpwHeader {
  readonly header: WeatherHeader;
  readonly ground: readonly PrintedGround[];
  /** Day that the rows are said to begin with, in a year of 365 days. */
  readonly firstDay: DayOfYear;
  /** How many sets of design conditions it says it has. */
  readonly designSets: number;
}

/** Reads the eight records of an EPW header; the cursor stands before the first. */
export function readEpwHeader(cursor: TextCursor): EpwHeader {
  const place = placeOf(recordNamed(cursor, ['LOCATION']));
  const { sets: designConditions, said: designSets } = designConditionsOf(recordNamed(cursor, ['DESIGN CONDITIONS']));
  const typical = recordNamed(cursor, ['TYPICAL/EXTREME PERIODS']);
  const periods = blocksOf(typical, 1, 2, 4, (cell) => ({
    title: textAt(typical, cell),
    sort: textAt(typical, cell + 1),
    firstDay: dayAt(typical, cell + 2),
    lastDay: dayAt(typical, cell + 3),
  }));
  const grounds = recordNamed(cursor, ['GROUND TEMPERATURES']);
  const ground = blocksOf(grounds, 1, 2, 16, (cell) => groundAt(grounds, cell));
  const days = recordNamed(cursor, ['HOLIDAYS/DAYLIGHT SAVINGS', 'HOLIDAYS/DAYLIGHT SAVING']);
  const holidays = blocksOf(days, 4, 5, 2, (cell) => ({ title: textAt(days, cell), date: textAt(days, cell + 1) }));
  const comments = ['COMMENTS 1', 'COMMENTS 2'].map((name) => commentOf(recordNamed(cursor, [name])));
  const period = recordNamed(cursor, ['DATA PERIODS']);
  demandOneYear(period);
  return {
    header: {
      place,
      designConditions,
      periods,
      leapYearObserved: textAt(days, 1).toLowerCase() === 'yes',
      daylightSaving: [textAt(days, 2), textAt(days, 3)].filter((day) => day !== '' && day !== '0'),
      holidays,
      comments,
      startWeekday: textAt(period, 4),
    },
    ground,
    firstDay: dayAt(period, 5),
    designSets,
  };
}

function recordNamed(cursor: TextCursor, names: readonly string[]): HeaderRecord {
  const allowed = `a line that begins with ${names.join(' or ')}`;
  const record = nextRecord(cursor, allowed);
  if (names.includes(textAt(record, 0).toUpperCase())) return record;
  throw refusal(placeAt(record, 0), { code: 'unknown-choice', value: textAt(record, 0), allowed });
}

function blocksOf<T>(record: HeaderRecord, countAt: number, from: number, perBlock: number, read: (cell: number) => T): readonly T[] {
  return Array.from({ length: blocksAt(record, countAt, from, perBlock) }, (_, block) => read(from + perBlock * block));
}

function placeOf(record: HeaderRecord): WeatherPlace {
  return {
    city: textAt(record, 1),
    region: textAt(record, 2),
    country: textAt(record, 3),
    origin: textAt(record, 4),
    station: textAt(record, 5),
    latitude: numberAt(record, 6, -90, 90) as Ratio,
    longitude: numberAt(record, 7, -180, 180) as Ratio,
    aheadOfUniversalTime: (3600 * numberAt(record, 8, -12, 14)) as Time,
    elevation: numberAt(record, 9, -1000, 9999.9) as Length,
  };
}

function groundAt(record: HeaderRecord, cell: number): PrintedGround {
  const [conductivity, density, specificHeat] = [1, 2, 3].map((at) => optionalAt(record, cell + at, 0, 1e5));
  return {
    depth: numberAt(record, cell, 0.01, 100) as Length,
    ...(conductivity === undefined ? {} : { conductivity: conductivity as Conductivity }),
    ...(density === undefined ? {} : { density: density as Density }),
    ...(specificHeat === undefined ? {} : { specificHeat: specificHeat as SpecificHeat }),
    monthlyMeans: Array.from({ length: 12 }, (_, month) => numberAt(record, cell + 4 + month, -70, 65) as Temperature),
  };
}

/** Everything behind the first comma; empty cells at the end and quotes around the whole go. */
function commentOf({ written }: HeaderRecord): string {
  let comment = written.slice(written.indexOf(',') + 1 || written.length).trim();
  while (comment.endsWith(',')) comment = comment.slice(0, -1).trimEnd();
  return comment.length > 1 && comment.startsWith('"') && comment.endsWith('"') ? comment.slice(1, -1).trim() : comment;
}

/** Refuses files that hold more than one period with one record an hour. */
function demandOneYear(record: HeaderRecord): void {
  const [periods, perHour] = [numberAt(record, 1, 0, 1e6), numberAt(record, 2, 0, 1e6)];
  if (periods !== 1) throw refusal(placeAt(record, 1), { code: 'too-many', value: textAt(record, 1), allowed: 'one period, a year' });
  if (perHour !== 1) throw refusal(placeAt(record, 2), { code: 'too-many', value: textAt(record, 2), allowed: 'one record an hour' });
  dayAt(record, 6);
}
