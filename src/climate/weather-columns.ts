import type { ColumnHours } from './weather-column-hours.js';
import type { WeatherColumnName } from './weather-columns.data.js';
import type { WeatherColumn, WeatherFile } from './weather-file.js';
import { inOrder, type YearOrder } from './weather-hours.js';
import type { WeatherRows } from './weather-rows.js';

/** The columns of a file in the order of the year, with what is missing or doubtful in each. */
export function columnsOf({ columns }: WeatherRows, order: YearOrder): WeatherFile['columns'] {
  const read: Partial<Record<WeatherColumnName, WeatherColumn>> = {};
  for (const column of columns) read[column.name] = columnOf(column, order);
  return read;
}

function columnOf({ quantity, values, missing }: ColumnHours, order: YearOrder): WeatherColumn {
  const { unit, lowest, highest } = quantity;
  const numbers = inOrder(values, new Float64Array(order.rows.length), order);
  const absent = inOrder(missing, new Uint8Array(order.rows.length), order);
  let missingHours = 0;
  let doubtfulHours = 0;
  for (let hour = 0; hour < numbers.length; hour += 1) {
    const number = numbers[hour] ?? 0;
    if (absent[hour] === 1) missingHours += 1;
    else if (number < lowest || number > highest) doubtfulHours += 1;
  }
  return { unit, numbers, missing: absent, missingHours, doubtfulHours };
}
