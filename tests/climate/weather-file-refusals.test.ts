import { describe, expect, it } from 'vitest';
import { readWeatherFile, WeatherFileError } from '../../src/climate/index.js';
import { InputError, locate } from '../../src/errors/index.js';
import { bareHeader, excerptOf, hoursOfYear, madeLines, madeRow, wholeYearOf } from './weather-texts.js';

const good: readonly string[] = madeLines(() => 10);
const leap: readonly string[] = madeLines(() => 10, { leap: true });
const tmy3: readonly string[] = wholeYearOf('greensboro').trimEnd().split('\n');
const shortTmy3: readonly string[] = excerptOf('greensboro').trimEnd().split('\n');

/** The refusal of lines, or a failure where they are read. */
function refusalOf(lines: readonly string[]): WeatherFileError {
  try {
    readWeatherFile({ text: lines.join('\n') });
  } catch (error) {
    if (error instanceof WeatherFileError) return error;
    throw error;
  }
  throw new Error('it was read');
}

/** Lines with a cell replaced; lines and columns count from 1. */
const put = (lines: readonly string[], line: number, column: number, cell: string): readonly string[] =>
  lines.map((each, at) =>
    at === line - 1
      ? each
          .split(',')
          .map((old, index) => (index === column - 1 ? cell : old))
          .join(',')
      : each,
  );
const replace = (lines: readonly string[], line: number, whole: string): readonly string[] =>
  lines.map((each, at) => (at === line - 1 ? whole : each));
const without = (from: number, count: number): readonly string[] => good.filter((_, at) => at < from - 1 || at >= from - 1 + count);
/** Two years that begin at 5:00 on 29 February and have none after that. */
const fromLeapDay: readonly string[] = [...bareHeader('2/29', '12/31'), ...leap.slice(8 + 1421), ...good.slice(8), ...good.slice(8)];
const ground = (cells: string): readonly string[] => replace(good, 4, `GROUND TEMPERATURES,${cells}`);
const twelve = Array.from({ length: 12 }, () => '10').join(',');

describe('an hour', () => {
  it.each<[string, readonly string[], InputError['code'], number, string]>([
    ['missing', without(100, 1), 'missing', 100, 'hours before it are missing'],
    ['missing with its day', without(33, 24), 'missing', 33, 'hours before it are missing'],
    ['doubled', [...good.slice(0, 100), ...good.slice(99)], 'surplus', 101, 'the same hour twice'],
    ['out of order', [...good.slice(0, 100), good[102] ?? '', ...good.slice(100)], 'missing', 101, 'hours before it are missing'],
    ['from before', [...good.slice(0, 100), good[50] ?? '', ...good.slice(100)], 'impossible', 101, 'out of order, or hours come twice'],
    ['behind the last', [...good, good[8] ?? ''], 'too-many', 8769, 'the year is complete'],
    ['before a blank line among the rows', [...good.slice(0, 100), '', ...good.slice(100)], 'missing', 101, 'a blank line'],
    ['that ends the file too soon', good.slice(0, 8000), 'too-few', 8000, 'month 11, day 30, hour 1'],
    ['after 8784, begun within a 29 February that does not come again', fromLeapDay, 'too-many', 9 + 8784, 'the year is complete'],
    ['that is the only one', good.slice(0, 9), 'too-few', 9, '8760 hours, or 8784 with 29 February'],
    ['that is not there', good.slice(0, 8), 'too-few', 8, '8760 hours'],
    ['at the end of a leap year cut to 8760', leap.slice(0, 8768), 'too-few', 8768, 'month 12, day 31, hour 1'],
  ])('%s', (_, lines, code, line, why) => {
    const error = refusalOf(lines);
    expect([error.code, error.line]).toEqual([code, line]);
    expect(error.message).toContain(why);
    // Rows out of order are told at the hour; a file that ends, or a blank line, as a line.
    const isLine = code === 'too-few' || why === 'a blank line';
    expect(error.column).toBe(isLine ? undefined : 4);
    expect(error.argument).toBe(`text.line ${String(line)}${isLine ? '' : '.column 4'}`);
  });

  it('of 29 February in a year that has none', () => {
    const error = refusalOf([...good.slice(0, 8), ...hoursOfYear(true).map((hour) => madeRow(hour, 10, 2100))]);
    expect([error.code, error.line, error.column]).toEqual(['impossible', 9 + 1416, 3]);
    expect(error.message).toContain('2100');
  });
});

describe('a cell', () => {
  it.each<[string, readonly string[], InputError['code'], number, number | undefined, string]>([
    ['no number', put(good, 20, 7, 'warm'), 'wrong-type', 20, 7, 'a number (dryBulb)'],
    ['a number with a comma for a point', put(good, 20, 7, '10;5'), 'wrong-type', 20, 7, '10;5'],
    ['NaN', put(good, 20, 9, 'NaN'), 'wrong-type', 20, 9, 'relativeHumidity'],
    ['beyond all numbers', put(good, 20, 10, '1e999'), 'wrong-type', 20, 10, 'pressure'],
    ['a dry bulb in Fahrenheit', put(good, 4000, 7, '86'), 'out-of-range', 4000, 7, 'Fahrenheit'],
    ['a dry bulb colder than any', put(good, 9, 7, '-71'), 'out-of-range', 9, 7, '-70 to 65'],
    ['month 13', put(good, 9, 2, '13'), 'out-of-range', 9, 2, '1 to 12'],
    ['31 April', put(good, 9 + 24 * 90, 3, '31'), 'out-of-range', 9 + 24 * 90, 3, '1 to 30'],
    ['hour 0', put(good, 9, 4, '0'), 'out-of-range', 9, 4, '1 to 24'],
    ['an hour and a half', put(good, 9, 4, '1.5'), 'out-of-range', 9, 4, '1 to 24'],
    ['no year', put(good, 9, 1, ''), 'out-of-range', 9, 1, 'an empty cell'],
    ['one cell too few', replace(good, 20, (good[19] ?? '').replace(/,[^,]*$/u, '')), 'too-few', 20, 34, '35 cells, as in the first row'],
    ['far too few', replace(good, 9, '2021,1,1,1,60'), 'too-few', 9, 5, '32 to 35 cells'],
    ['one too many', replace(good, 20, `${good[19] ?? ''},7`), 'too-many', 20, 36, '35 cells'],
    ['a TMY3 date in another order', put(tmy3, 3, 1, '1988-01-01'), 'wrong-type', 3, 1, '12/31/1988'],
    ['a TMY3 day that is none', put(tmy3, 3, 1, '02/30/1988'), 'wrong-type', 3, 1, 'a date'],
    ['a TMY3 half hour', put(tmy3, 3, 2, '00:30'), 'wrong-type', 3, 2, '01:00 to 24:00'],
    ['a TMY3 midnight at the beginning', put(tmy3, 3, 2, '00:00'), 'wrong-type', 3, 2, '01:00 to 24:00'],
    ['a TMY3 29 February in 1985', put(tmy3, 3, 1, '02/29/1985'), 'impossible', 3, 1, 'no leap year'],
    ['a TMY3 row of other width', replace(tmy3, 4, `${tmy3[3] ?? ''},5`), 'too-many', 4, 72, '71 cells'],
    ['a TMY3 zone of time', put(tmy3, 1, 4, 'EST'), 'wrong-type', 1, 4, '-12 to 14'],
    ['a TMY3 file without dry bulbs', replace(tmy3, 2, (tmy3[1] ?? '').replace('Dry-bulb (C)', 'Dry-bulb (F)')), 'missing', 2, 1, 'Dry-bulb (C)'],
    ['a TMY3 file without its headings', shortTmy3.filter((_, at) => at !== 1), 'missing', 2, 1, 'begins with LOCATION'],
  ])('%s', (_, lines, code, line, column, why) => {
    const error = refusalOf(lines);
    expect([error.code, error.line, error.column]).toEqual([code, line, column]);
    expect(error.message).toContain(why);
  });
});

describe('a header', () => {
  it.each<[string, readonly string[], InputError['code'], number, number | undefined, string]>([
    ['that is none', ['no weather'], 'missing', 2, undefined, 'LOCATION at the beginning of the text'],
    ['of something else', ['no', 'weather', 'at all'], 'missing', 2, 1, 'a weather file begins with LOCATION'],
    ['that ends', good.slice(0, 3), 'missing', 4, undefined, 'GROUND TEMPERATURES'],
    ['without a record', good.filter((_, at) => at !== 4), 'unknown-choice', 5, 1, 'HOLIDAYS/DAYLIGHT SAVINGS'],
    ['with a latitude that is none', put(good, 1, 7, '91'), 'out-of-range', 1, 7, '-90 to 90'],
    ['without a longitude', put(good, 1, 8, ''), 'wrong-type', 1, 8, 'an empty cell'],
    ['with design conditions that are not counted', put(good, 2, 2, 'some'), 'wrong-type', 2, 2, '0 to 100'],
    ['with fewer periods than it says', put(good, 3, 2, '1'), 'impossible', 3, 2, 'blocks of 4'],
    ['with a period on no day', replace(good, 3, 'TYPICAL/EXTREME PERIODS,1,Week,Typical,2/30,3/6'), 'wrong-type', 3, 5, 'a date'],
    ['with a period in no month', replace(good, 3, 'TYPICAL/EXTREME PERIODS,1,Week,Typical,3 Mai,3/6'), 'wrong-type', 3, 5, 'a date'],
    ['with more ground than it says', ground(`1,0.5,,,,${twelve},9`), 'impossible', 4, 2, '17 cells being filled'],
    ['with half a depth', ground('0.5,0.5'), 'impossible', 4, 2, 'blocks of 16'],
    ['with ground at no depth', ground(`1,0,,,,${twelve}`), 'out-of-range', 4, 3, '0.01 to 100'],
    ['with ground without a month', ground(`1,0.5,,,,${twelve.replace('10', '')}`), 'wrong-type', 4, 7, 'an empty cell'],
    ['of two periods', put(good, 8, 2, '2'), 'too-many', 8, 2, 'one period'],
    ['of quarters of an hour', put(good, 8, 3, '4'), 'too-many', 8, 3, 'one record an hour'],
    ['that begins on another day than its rows', put(good, 8, 6, '7/1'), 'impossible', 9, undefined, 'day 182'],
    ['without end', replace(good, 6, `COMMENTS 1,${'x'.repeat(20_000)}`), 'too-many', 6, undefined, '10000 characters'],
  ])('%s', (_, lines, code, line, column, why) => {
    const error = refusalOf(lines);
    expect([error.code, error.line, error.column]).toEqual([code, line, column]);
    expect(error.message).toContain(why);
  });
});

describe('the air', () => {
  it('may be missing for six hours, not for seven', () => {
    const seven = madeLines((hour) => (hour >= 8757 || hour < 4 ? 99.9 : 10));
    expect([refusalOf(seven).code, refusalOf(seven).line, refusalOf(seven).column]).toEqual(['missing', 9 + 8757, 7]);
    expect(refusalOf(seven).value).toEqual({ kind: 'count', value: 7 });
  });

  it('may not be missing altogether', () => {
    expect(refusalOf(madeLines(() => '')).value).toEqual({ kind: 'count', value: 8760 });
  });

  it('is refused in Fahrenheit by the means of its months where no hour gives it away', () => {
    const error = refusalOf(madeLines((hour) => (hour < 4344 ? 30 : 61)));
    expect([error.code, error.line, error.column]).toEqual(['impossible', 9 + 4344, 7]);
    expect(error.message).toContain('Fahrenheit');
  });
});

describe('the error', () => {
  const error = refusalOf(put(good, 20, 7, 'warm'.repeat(50)));

  it('is an InputError that names line and column in its argument, and shows no more of a cell than is needed', () => {
    expect(error).toBeInstanceOf(InputError);
    expect(error.name).toBe('InputError');
    expect(error.argument).toBe('text.line 20.column 7');
    expect(error.message.length).toBeLessThan(150);
  });

  it('keeps line and column within a larger input', () => {
    const place = (): never =>
      locate('climate', () => {
        throw error;
      });
    expect(place).toThrow('climate.text.line 20.column 7: warm');
    const placed = error.within('climate').within('input');
    expect([placed.argument, placed.line, placed.column]).toEqual(['input.climate.text.line 20.column 7', 20, 7]);
  });
});

describe('what is the text of no file', () => {
  const inUtf16 = good.join('\n').slice(0, 200).replaceAll(/[^]/gu, '$&\u0000');
  it.each<[string, string, string]>([
    ['empty', '', 'the file is empty'],
    ['blank', ' \r\n\n', 'the file is empty'],
    ['a packed archive', 'PK\u0003\u0004\u0014\u0000', 'unpack the archive first'],
    ['a packed stream, read as UTF-8', '\u001F\uFFFD\b', 'unpack the archive first'],
    ['UTF-16 read byte by byte', `\u00FF\u00FE${inUtf16}`, 'decode it as UTF-16'],
    ['UTF-16 read as UTF-8', `\uFFFD\uFFFD${inUtf16}`, 'decode it as UTF-16'],
    ['UTF-16 without its mark', inUtf16, 'decode it as UTF-16'],
  ])('is refused with its likely cause: %s', (_, text, hint) => {
    const error = refusalOf([text]);
    expect([error.code, error.line]).toEqual(['impossible', 1]);
    expect(error.hint).toContain(hint);
  });
});
