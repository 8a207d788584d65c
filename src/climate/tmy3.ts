import type { Length, Ratio, Time } from '../units/index.js';
import { demandLeapDay } from './epw-rows.js';
import { type HeaderRecord, nextRecord, numberAt, textAt } from './header-records.js';
import { type CalendarHour, DAY_HOURS, daysOfMonth } from './weather-calendar.js';
import { TMY3_COLUMNS, TMY3_MISSING } from './weather-columns.data.js';
import { refusal } from './weather-file-error.js';
import type { WeatherHeader } from './weather-header.js';
import { cellPlace, cellText, type WeatherRow } from './weather-row.js';
import type { RowFormat } from './weather-rows.js';
import type { TextCursor } from './weather-text.js';

/** The header of a TMY3 file, and how its rows are written. */
export interface Tmy3Header {
  readonly header: WeatherHeader;
  readonly rows: RowFormat;
}

const DATE = 'Date (MM/DD/YYYY)';
const TIME = 'Time (HH:MM)';
const CODES = 'PresWth (METAR code)';

/** Reads the line of the station and the line of headings; the cursor stands before the first. */
export function readTmy3Header(cursor: TextCursor): Tmy3Header {
  const station = nextRecord(cursor, 'a line that begins with LOCATION (EPW), or one of the station (TMY3)');
  // The headings tell the format, so that they are asked before the station, which any text may be.
  const rows = rowsOf(nextRecord(cursor, `a line of headings, ${DATE} among them (TMY3), or LOCATION at the beginning of the text (EPW)`));
  return { header: headerOf(station), rows };
}

function headerOf(station: HeaderRecord): WeatherHeader {
  return {
    place: {
      city: textAt(station, 1),
      region: textAt(station, 2),
      country: '',
      origin: 'TMY3',
      station: textAt(station, 0),
      aheadOfUniversalTime: (3600 * numberAt(station, 3, -12, 14)) as Time,
      latitude: numberAt(station, 4, -90, 90) as Ratio,
      longitude: numberAt(station, 5, -180, 180) as Ratio,
      elevation: numberAt(station, 6, -1000, 9999.9) as Length,
    },
    designConditions: [],
    periods: [],
    leapYearObserved: false,
    daylightSaving: [],
    holidays: [],
    comments: [],
    startWeekday: '',
  };
}

/** Finds the columns by their headings; those of date, time and dry bulb have to be there. */
function rowsOf(headings: HeaderRecord): RowFormat {
  const cellOf = (heading: string): number => headings.cells.findIndex((cell) => cell.toLowerCase() === heading.toLowerCase());
  const needed = [DATE, TIME, TMY3_COLUMNS[0]?.heading ?? ''];
  const absent = needed.find((heading) => cellOf(heading) < 0);
  if (absent !== undefined) {
    const hint = 'a weather file begins with LOCATION (EPW), or with a station and this line below it (TMY3)';
    throw refusal({ line: headings.line, column: 1 }, { code: 'missing', value: textAt(headings, 0), allowed: `a column headed ${absent}`, hint });
  }
  const [date, time, codes] = [cellOf(DATE), cellOf(TIME), cellOf(CODES)];
  return {
    leastCells: headings.cells.length,
    mostCells: headings.cells.length,
    columns: TMY3_COLUMNS.flatMap(({ name, heading, times = 1, per = 1 }) => {
      const cell = cellOf(heading);
      return cell < 0 ? [] : [{ name, cell, missingFrom: Infinity, missingTo: TMY3_MISSING, times, per }];
    }),
    texts: codes < 0 ? [] : [codes],
    timeCell: time,
    timeOf: (row) => timeOf(row, date, time),
  };
}

/** The hour that ends at the time given; 24:00 ends the day of its date. */
function timeOf(row: WeatherRow, date: number, time: number): CalendarHour {
  const [, month, day, year] = /^(\d{2})\/(\d{2})\/(\d{4})$/u.exec(cellText(row, date)) ?? [];
  const [, hour] = /^(\d{2}):00$/u.exec(cellText(row, time)) ?? [];
  const found = { year: Number(year), month: Number(month), day: Number(day), hour: Number(hour) };
  if (!(found.day >= 1 && found.day <= daysOfMonth(found.month))) {
    throw refusal(cellPlace(row, date), { code: 'wrong-type', value: cellText(row, date), allowed: 'a date as 12/31/1988' });
  }
  if (!(found.hour >= 1 && found.hour <= DAY_HOURS)) {
    throw refusal(cellPlace(row, time), { code: 'wrong-type', value: cellText(row, time), allowed: 'the end of an hour, 01:00 to 24:00' });
  }
  demandLeapDay(row, found, date);
  return found;
}
