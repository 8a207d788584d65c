import { type CalendarHour, LEAP_HOURS, placeAfter, placeInWords, placeOf, YEAR_HOURS } from './weather-calendar.js';
import { type ColumnHours, emptyColumn, readCell, type RowColumn } from './weather-column-hours.js';
import { refusal, type WeatherFilePlace } from './weather-file-error.js';
import { cellPlace, cellText, findRow, type RowWidth, type WeatherRow } from './weather-row.js';
import { isBlank, nextLine, type TextCursor } from './weather-text.js';

/** How the rows of a kind of file are written. */
export interface RowFormat extends RowWidth {
  readonly columns: readonly RowColumn[];
  readonly timeOf: (row: WeatherRow) => CalendarHour;
  /** Cell of the hour, where rows out of order are told. */
  readonly timeCell: number;
  /** Cells kept as they are written. */
  readonly texts: readonly number[];
}

/** All rows of a file: a whole year, in the order of the file. */
export interface WeatherRows {
  readonly columns: readonly ColumnHours[];
  readonly texts: readonly (readonly string[])[];
  readonly years: Int32Array;
  /** Place of each row in a year with 29 February. */
  readonly places: Uint16Array;
  readonly count: number;
  readonly firstLine: number;
}

/** The rows before a row. */
interface RowOrder {
  readonly previous: number;
  readonly first: number;
  readonly count: number;
}

/** Reads rows until the text ends: one whole year, hour after hour, beginning anywhere. */
export function readRows(cursor: TextCursor, format: RowFormat): WeatherRows {
  const row: WeatherRow = { cursor, starts: new Int32Array(format.mostCells + 2), cells: 0 };
  const columns = format.columns.map(emptyColumn);
  const texts = format.texts.map((cell) => ({ cell, written: new Array<string>() }));
  const years = new Int32Array(LEAP_HOURS);
  const places = new Uint16Array(LEAP_HOURS);
  const firstLine = cursor.line + 1;
  let count = 0;
  let width = 0;
  let previous = -1;
  let first = -1;
  while (nextLine(cursor)) {
    if (isBlank(cursor.text, cursor.from, cursor.to)) {
      demandNothingMore(cursor);
      break;
    }
    width = findRow(row, format, width);
    const time = format.timeOf(row);
    const place = placeOf(time);
    if (count === 0) first = place;
    else demandNext(cellPlace(row, format.timeCell), place, { previous, first, count });
    for (const column of columns) readCell(row, column, count);
    for (const { cell, written } of texts) written.push(cellText(row, cell));
    years[count] = time.year;
    places[count] = place;
    previous = place;
    count += 1;
  }
  if (count === 0 || placeAfter(previous, first) !== first) {
    const next = count === 0 ? undefined : `the file ends before ${placeInWords(placeAfter(previous, first))}`;
    const allowed = `${YEAR_HOURS} hours, or ${LEAP_HOURS} with 29 February`;
    throw refusal({ line: cursor.line }, { code: 'too-few', value: { kind: 'count', value: count }, allowed, hint: next });
  }
  return { columns, texts: texts.map(({ written }) => written), years, places, count, firstLine };
}

/** Refuses a row that is not the hour after the one before. */
function demandNext(at: WeatherFilePlace, place: number, { previous, first, count }: RowOrder): void {
  const expected = placeAfter(previous, place);
  const isComplete = count === LEAP_HOURS || (place === first && place === expected);
  if (place === expected && !isComplete) return;
  const value = placeInWords(place);
  if (isComplete) {
    throw refusal(at, { code: 'too-many', value, allowed: 'the end of the file', hint: 'the year is complete; a file holds one year' });
  }
  const allowed = placeInWords(expected);
  if (place === previous) throw refusal(at, { code: 'surplus', value, allowed, hint: 'the same hour twice' });
  const isAhead = (place - expected + LEAP_HOURS) % LEAP_HOURS < LEAP_HOURS / 2;
  const hint = isAhead ? 'hours before it are missing' : 'the rows are out of order, or hours come twice';
  throw refusal(at, { code: isAhead ? 'missing' : 'impossible', value, allowed, hint });
}

/** Refuses rows that go on after a blank line. */
function demandNothingMore(cursor: TextCursor): void {
  const { line } = cursor;
  while (nextLine(cursor)) {
    if (isBlank(cursor.text, cursor.from, cursor.to)) continue;
    throw refusal({ line }, { code: 'missing', value: 'a blank line', allowed: 'rows one below the other; blank lines at the end alone' });
  }
  cursor.line = line;
}
