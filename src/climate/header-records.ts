import type { DayOfYear } from '../units/index.js';
import { dayOfPlace, daysOfMonth, placeOf } from './weather-calendar.js';
import { refusal, type WeatherFilePlace } from './weather-file-error.js';
import { headerCells, nextLine, numberBetween, type TextCursor } from './weather-text.js';

/** Longest line of a header that is read; ten times the longest seen. */
const LONGEST_HEADER = 10_000;

/** One record of a header: a line cut into cells. */
export interface HeaderRecord {
  readonly line: number;
  readonly cells: readonly string[];
  readonly written: string;
}

/** Reads the next line of a header; refuses the end of the file and a line too long to be a header. */
export function nextRecord(cursor: TextCursor, allowed: string): HeaderRecord {
  if (!nextLine(cursor)) throw refusal({ line: cursor.line + 1 }, { code: 'missing', value: undefined, allowed });
  const { line, text, from, to } = cursor;
  if (to - from > LONGEST_HEADER) {
    throw refusal(
      { line },
      { code: 'too-many', value: { kind: 'count', value: to - from }, allowed: `${allowed}, in at most ${LONGEST_HEADER} characters` },
    );
  }
  const written = text.slice(from, to);
  return { line, cells: headerCells(written), written };
}

/** A cell as text; empty where there is none. */
export const textAt = ({ cells }: HeaderRecord, cell: number): string => cells[cell] ?? '';

/** Where a cell is. */
export const placeAt = ({ line }: HeaderRecord, cell: number): WeatherFilePlace => ({ line, column: cell + 1 });

/** The number in a cell, refused outside its range. */
export function numberAt(record: HeaderRecord, cell: number, least: number, most: number): number {
  const written = textAt(record, cell);
  const number = numberBetween(written, 0, written.length);
  if (number >= least && number <= most) return number;
  const code = Number.isNaN(number) ? 'wrong-type' : 'out-of-range';
  throw refusal(placeAt(record, cell), { code, value: written, allowed: `a number from ${least} to ${most}` });
}

/** The number in a cell, or nothing where the cell is empty. */
export const optionalAt = (record: HeaderRecord, cell: number, least: number, most: number): number | undefined =>
  textAt(record, cell) === '' ? undefined : numberAt(record, cell, least, most);

/** How many blocks of cells a record says it has; refuses a count that its cells do not bear out. An empty count is none. */
export function blocksAt(record: HeaderRecord, cell: number, from: number, perBlock: number): number {
  const count = optionalAt(record, cell, 0, LONGEST_HEADER) ?? 0;
  const filled = record.cells.findLastIndex((each) => each !== '') + 1;
  const [needed, given] = [count * perBlock, Math.max(0, filled - from)];
  if (Number.isInteger(count) && given <= needed && (needed === 0 || from + needed <= record.cells.length)) return count;
  const allowed = `as many blocks of ${perBlock} cells as follow, ${given} cells being filled`;
  throw refusal(placeAt(record, cell), { code: 'impossible', value: textAt(record, cell), allowed });
}

const MONTHS = 'JanFebMarAprMayJunJulAugSepOctNovDec';

/** The day in a cell: month and day with a slash (and a year behind), day and name of the month in either order, or the number of the day. */
export function dayAt(record: HeaderRecord, cell: number): DayOfYear {
  const written = textAt(record, cell);
  const [, month, day] = /^(\d{1,2})\s*\/\s*(\d{1,2})(?:\s*\/\s*\d{1,4})?$/u.exec(written) ?? namedDay(written);
  if (month !== undefined && day !== undefined && Number(day) >= 1 && Number(day) <= daysOfMonth(Number(month))) {
    return dayOfPlace(placeOf({ month: Number(month), day: Number(day), hour: 1 }));
  }
  if (/^\d{1,3}$/u.test(written) && Number(written) >= 1 && Number(written) <= 366) return Number(written) as DayOfYear;
  throw refusal(placeAt(record, cell), { code: 'wrong-type', value: written, allowed: 'a date as 12/31, 31 Dec, Dec 31 or 365' });
}

function namedDay(written: string): readonly (string | undefined)[] {
  const [, before, name = '', after] = /^(?:(\d{1,2})\s*)?([A-Za-z]{3})[a-z]*(?:\s*(\d{1,2}))?$/u.exec(written) ?? [];
  const at = MONTHS.indexOf(`${name.slice(0, 1).toUpperCase()}${name.slice(1).toLowerCase()}`);
  return name === '' || at % 3 !== 0 ? [] : [written, String(at / 3 + 1), before ?? after];
}
