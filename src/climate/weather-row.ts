import { refusal, type WeatherFilePlace } from './weather-file-error.js';
import { findCells, numberBetween, type TextCursor } from './weather-text.js';

/** A row of a weather file, its cells found but not yet read. */
export interface WeatherRow {
  readonly cursor: TextCursor;
  readonly starts: Int32Array;
  cells: number;
}

/** Fewest and most cells of a row; all rows of a file have as many as the first. */
export interface RowWidth {
  readonly leastCells: number;
  readonly mostCells: number;
}

/** Where a cell of a row is; cells count from 0. */
export const cellPlace = ({ cursor }: WeatherRow, cell: number): WeatherFilePlace => ({ line: cursor.line, column: cell + 1 });

/** A cell as it is written, without the blanks around it. */
export const cellText = ({ cursor, starts }: WeatherRow, cell: number): string =>
  cursor.text.slice(starts[cell] ?? 0, (starts[cell + 1] ?? 1) - 1).trim();

/** The whole number in a cell, refused outside its range. */
export function wholeCell(row: WeatherRow, cell: number, least: number, most: number): number {
  const { cursor, starts } = row;
  const number = numberBetween(cursor.text, starts[cell] ?? 0, (starts[cell + 1] ?? 1) - 1);
  if (Number.isInteger(number) && number >= least && number <= most) return number;
  const allowed = `a whole number from ${least} to ${most}`;
  throw refusal(cellPlace(row, cell), { code: 'out-of-range', value: cellText(row, cell), allowed });
}

/** Finds the cells of the row the cursor is on; refuses a row whose cells are not as many as those of the first; blank cells behind the last that can be are nothing. */
export function findRow(row: WeatherRow, { leastCells, mostCells }: RowWidth, width: number): number {
  const { cursor, starts } = row;
  const found = findCells(cursor, starts);
  const surplus = found > mostCells && cursor.text.slice(starts[mostCells], cursor.to).replaceAll(',', ' ').trim() !== '';
  row.cells = Math.min(found, mostCells);
  if (!surplus && row.cells >= leastCells && (width === 0 || row.cells === width)) return row.cells;
  const allowed =
    width > 0 ? `${width} cells, as in the first row` : leastCells === mostCells ? `${mostCells} cells` : `${leastCells} to ${mostCells} cells`;
  const place = { line: cursor.line, column: Math.min(found, mostCells) + (surplus ? 1 : 0) };
  throw refusal(place, { code: surplus ? 'too-many' : 'too-few', value: { kind: 'count', value: found }, allowed });
}
