import { LEAP_HOURS } from './weather-calendar.js';
import { WEATHER_QUANTITIES, type WeatherColumnName, type WeatherQuantity } from './weather-columns.data.js';
import { refusal } from './weather-file-error.js';
import { cellPlace, cellText, type WeatherRow } from './weather-row.js';
import { isBlank, numberBetween } from './weather-text.js';

/** One column to be read from the rows of a file: which cell, how it is scaled, and which numbers mean that the value is missing. */
export interface RowColumn {
  readonly name: WeatherColumnName;
  readonly cell: number;
  readonly missingFrom: number;
  readonly missingTo: number;
  readonly times: number;
  readonly per: number;
}

/** The hours of one column as the file has them, in the order of its rows. */
export interface ColumnHours {
  readonly name: WeatherColumnName;
  readonly column: RowColumn;
  readonly quantity: WeatherQuantity;
  readonly values: Float64Array;
  readonly missing: Uint8Array;
}

/** A column before its first hour. */
export const emptyColumn = (column: RowColumn): ColumnHours => ({
  name: column.name,
  column,
  quantity: WEATHER_QUANTITIES[column.name],
  values: new Float64Array(LEAP_HOURS),
  missing: new Uint8Array(LEAP_HOURS),
});

/** Reads the cell of one column in one row into an hour of that column. */
export function readCell(row: WeatherRow, into: ColumnHours, at: number): void {
  const { cursor, starts } = row;
  const { column, quantity } = into;
  const { cell } = column;
  const from = starts[cell] ?? 0;
  const to = (starts[cell + 1] ?? 1) - 1;
  const number = cell < row.cells ? numberBetween(cursor.text, from, to) : Number.NaN;
  if (number < column.missingFrom && number > column.missingTo) {
    const value = (number * column.times) / column.per;
    // A number near the end of the doubles passes it when scaled.
    if (!Number.isFinite(value)) refuseCell(row, cell, column.name);
    if (column.name === 'dryBulb' && !(value >= quantity.lowest && value <= quantity.highest)) refuseDryBulb(row, cell, value);
    into.values[at] = value;
    return;
  }
  if (Number.isNaN(number) && cell < row.cells && !isBlank(cursor.text, from, to)) refuseCell(row, cell, column.name);
  into.missing[at] = 1;
}

function refuseCell(row: WeatherRow, cell: number, name: WeatherColumnName): never {
  throw refusal(cellPlace(row, cell), { code: 'wrong-type', value: cellText(row, cell), allowed: `a number (${name})` });
}

function refuseDryBulb(row: WeatherRow, cell: number, value: number): never {
  const { lowest, highest } = WEATHER_QUANTITIES.dryBulb;
  const hint = 'degrees Celsius; was it written in Fahrenheit?';
  const allowed = `an air temperature from ${lowest} to ${highest}`;
  throw refusal(cellPlace(row, cell), { code: 'out-of-range', value: { kind: 'temperature', value }, allowed, hint });
}
