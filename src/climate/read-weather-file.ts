import { demandChoice, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Time } from '../units/index.js';
import { readEpwHeader } from './epw-header.js';
import { epwRows } from './epw-rows.js';
import { fitAnnualWave } from './fit-annual-wave.js';
import { readTmy3Header } from './tmy3.js';
import { DAY_HOURS, dayOfPlace, LEAP_DAY, LEAP_HOURS, monthSpans } from './weather-calendar.js';
import { columnsOf } from './weather-columns.js';
import type { WeatherFile, WeatherFileInput } from './weather-file.js';
import { refusal } from './weather-file-error.js';
import { demandReadableText } from './unreadable-text.js';
import { bridgedFinding, columnFindings, designFindings, groundHeaderFindings, leapDayFinding } from './weather-findings.js';
import { groundHeader, type WeatherGroundHeader } from './weather-ground-header.js';
import type { PrintedGround, WeatherHeader } from './weather-header.js';
import { bridge, inOrder, orderOf, summaryOf, type TemperatureSummary, type YearOrder } from './weather-hours.js';
import { readRows, type RowFormat, type WeatherRows } from './weather-rows.js';
import { openText, type TextCursor } from './weather-text.js';

/**
 * Reads the text of an EPW or TMY3 weather file: a year of hours with its header. No file is opened; give the text, decoded in any way that keeps
 * its digits.
 *
 * Strict where a slip would change the climate: every row is the hour after the one before, the year is whole, every cell is a number or empty, and
 * what is not is refused with line and column. Tolerant of writers: line ends, a byte-order mark, blanks, quotes, blank lines at the end, a year
 * that begins on another day, a header without entries, columns an older writer left out. Hour 1 is from 00:00 to 01:00 standard time. By its
 * format a file gives temperatures at the end of the hour and sums of radiation over it; both stand for the hour here, a shift of half an hour or
 * 0.02 days in temperature.
 *
 * A value that the file marks as missing is marked in its column. Up to six missing hours of the dry bulb in a row are bridged by a straight line,
 * with a finding; more are refused. The ground temperatures of the header are shown with what they are, and are not for use.
 *
 * @param input - text of the file, and what becomes of a 29 February
 * @returns hours by column, temperatures [degC] with means and extremes, header, and findings
 * @throws WeatherFileError with line and column where the text is no such file, an hour is missing, doubled or out of order, a cell is no number, or
 * an air temperature is impossible; InputError for an input that is no text
 * @remarks
 * Sources: `epwDataDictionary`, `epwMissingCodes`, `tmy3Greensboro`, `epwGroundHeader`. Checked against statistics of four public files computed independently.
 *
 * Invariants: a file written from a year gives that year back; line ends, a byte-order mark and the day it begins on change nothing; no number is
 * NaN whatever the text; the time taken grows with the length of the text.
 * @example
 * ```ts @import.meta.vitest
 * const two = (number) => String(number).padStart(2, '0');
 * const rows = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].flatMap((length, month) =>
 *   Array.from({ length: 24 * length }, (_, hour) => {
 *     const time = `${two(month + 1)}/${two(1 + Math.floor(hour / 24))}/1988,${two(1 + (hour % 24))}:00`;
 *     return `${time},${10 - 12 * Math.cos((month * Math.PI) / 6)}`;
 *   }),
 * );
 * const lines = ['723170,"SOMEWHERE",NC,-5.0,36.1,-79.95,273', 'Date (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C)', ...rows];
 * const { format, temperatures, monthlyMeans } = readWeatherFile({ text: lines.join('\n') });
 * expect([format, temperatures.length, Math.round(monthlyMeans[6])]).toEqual(['TMY3', 8760, 22]);
 * expect(() => readWeatherFile({ text: lines.slice(0, 5000).join('\n') })).toThrow('text.line 5000: 4998 (count) is not allowed');
 * ```
 */
export function readWeatherFile({ text, leapDay = 'left out' }: WeatherFileInput): WeatherFile {
  if (typeof text !== 'string') {
    const code = text === undefined || text === null ? 'missing' : 'wrong-type';
    throw new InputError({
      code,
      argument: 'text',
      value: text === undefined || text === null ? undefined : typeof text,
      allowed: 'the text of a file',
    });
  }
  demandChoice('leapDay', leapDay, ['left out', 'kept']);
  demandReadableText(text);
  const cursor = openText(text);
  const { rowFormat, firstDay, ...header } = headerOf(cursor);
  const rows = readRows(cursor, rowFormat);
  if (firstDay !== undefined && firstDay !== dayOfPlace(rows.places[0] ?? 0)) {
    const allowed = `rows from day ${firstDay} of the year on, as the line DATA PERIODS says`;
    throw refusal({ line: rows.firstLine }, { code: 'impossible', value: `day ${dayOfPlace(rows.places[0] ?? 0)}`, allowed });
  }
  return yearOf(rows, { ...header, column: dryBulbColumn(rowFormat), keepLeapDay: leapDay === 'kept' });
}

interface FileHeader {
  readonly format: WeatherFile['format'];
  readonly header: WeatherHeader;
  readonly ground: readonly PrintedGround[];
  readonly rowFormat: RowFormat;
  readonly firstDay: number | undefined;
  readonly designSets: number;
}

/** An EPW file begins with the word LOCATION; what does not is read as TMY3. */
function headerOf(cursor: TextCursor): FileHeader {
  if (/^\s*"?LOCATION"?\s*,/iu.test(cursor.text.slice(0, 100))) {
    return { format: 'EPW', rowFormat: epwRows(), ...readEpwHeader(cursor) };
  }
  const { header, rows } = readTmy3Header(cursor);
  return { format: 'TMY3', header, ground: [], rowFormat: rows, firstDay: undefined, designSets: 0 };
}

const dryBulbColumn = ({ columns }: RowFormat): number => 1 + (columns.find(({ name }) => name === 'dryBulb')?.cell ?? 0);

interface YearParts extends Omit<FileHeader, 'rowFormat' | 'firstDay'> {
  /** Where the dry bulb stands in a row, from 1. */
  readonly column: number;
  readonly keepLeapDay: boolean;
}

function yearOf(rows: WeatherRows, { format, header, ground, designSets, column, keepLeapDay }: YearParts): WeatherFile {
  const order = orderOf(rows, keepLeapDay);
  const [dryBulb] = rows.columns;
  const bridged = dryBulb === undefined ? { hours: 0, longest: 0 } : bridge(dryBulb, rows, column);
  const { length } = order.rows;
  const temperatures = dryBulb === undefined ? new Float64Array(length) : inOrder(dryBulb.values, new Float64Array(length), order);
  const summary = summaryOf(temperatures, order, rows.firstLine, column);
  const columns = columnsOf(rows, order);
  const groundHeaders = groundHeadersOf(ground, summary, order);
  const [flags = [], codes = flags] = rows.texts;
  const [sourceFlags, presentWeather] = format === 'EPW' ? [flags, codes] : [[], flags];
  const textsOf = (texts: readonly string[]): readonly string[] => (texts.length === 0 ? [] : Array.from(order.rows, (row) => texts[row] ?? ''));
  return {
    format,
    header,
    groundHeaders,
    temperatures,
    step: 3600 as Time,
    ...summary,
    hasLeapDay: order.hasLeapDay,
    years: inOrder(rows.years, new Int32Array(length), order),
    columns,
    presentWeather: textsOf(presentWeather),
    sourceFlags: textsOf(sourceFlags),
    findings: [
      ...bridgedFinding(bridged),
      ...columnFindings(columns),
      ...leapDayFindings(rows, keepLeapDay),
      ...designFindings(header, designSets),
      ...groundHeaderFindings(groundHeaders, groundHeaders.length === 0 ? undefined : fitAnnualWave({ of: 'air', ...summary }).wave),
    ],
  };
}

function groundHeadersOf(
  ground: readonly PrintedGround[],
  { monthlyMeans, lowestHour }: TemperatureSummary,
  { hasLeapDay }: YearOrder,
): readonly WeatherGroundHeader[] {
  const coldest = monthSpans(hasLeapDay).find(({ to }) => lowestHour < to);
  const coldestMonthStart = Math.floor((coldest?.from ?? 0) / DAY_HOURS) - (hasLeapDay && lowestHour >= LEAP_DAY + DAY_HOURS ? 1 : 0);
  return ground.map((each) => groundHeader(each, { monthlyMeans, coldestMonthStart }));
}

function leapDayFindings({ columns, places, count }: WeatherRows, keepLeapDay: boolean): readonly Finding[] {
  if (count < LEAP_HOURS || keepLeapDay) return [];
  const from = places.indexOf(LEAP_DAY);
  let sum = 0;
  for (let hour = 0; hour < DAY_HOURS; hour += 1) sum += columns[0]?.values[(from + hour) % count] ?? 0;
  return [leapDayFinding(sum / DAY_HOURS)];
}
