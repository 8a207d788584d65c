import { type CalendarHour, DAY_HOURS, daysOfMonth, isLeapYear } from './weather-calendar.js';
import { EPW_COLUMNS } from './weather-columns.data.js';
import { refusal } from './weather-file-error.js';
import { cellPlace, wholeCell, type WeatherRow } from './weather-row.js';
import type { RowFormat } from './weather-rows.js';

/** Rows of 35 cells; older writers end with the days since snow. The minute is left unread: it is 0 or 60 for the same hour. */
export const epwRows = (): RowFormat => ({
  leastCells: 32,
  mostCells: 35,
  columns: EPW_COLUMNS.map((column) => ({ ...column, missingTo: -Infinity, times: 1, per: 1 })),
  texts: [5, 27],
  timeCell: 3,
  timeOf: (row) => {
    const [year, month] = [wholeCell(row, 0, 1, 9999), wholeCell(row, 1, 1, 12)];
    const time = { year, month, day: wholeCell(row, 2, 1, daysOfMonth(month)), hour: wholeCell(row, 3, 1, DAY_HOURS) };
    demandLeapDay(row, time, 2);
    return time;
  },
});

/** Refuses 29 February in a year that has none. */
export function demandLeapDay(row: WeatherRow, { year, month, day }: CalendarHour, cell: number): void {
  if (month !== 2 || day !== 29 || isLeapYear(year)) return;
  throw refusal(cellPlace(row, cell), { code: 'impossible', value: `29 February ${year}`, allowed: `28 days, ${year} being no leap year` });
}
