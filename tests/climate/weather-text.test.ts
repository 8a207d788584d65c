import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { headerCells, nextLine, numberBetween, openText } from '../../src/climate/weather-text.js';
import { dayOfPlace, monthSpans, placeAfter, placeInWords, placeOf } from '../../src/climate/weather-calendar.js';
import { hoursOfYear } from './weather-texts.js';

const numberIn = (text: string): number => numberBetween(text, 0, text.length);

describe('a number', () => {
  it('is what the language itself reads, to the last bit', () => {
    const written = fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
      fc.double({ min: -1e5, max: 1e5, noNaN: true }).map((number) => number.toFixed(4)),
      fc.tuple(fc.constantFrom('', '-', '+'), fc.nat(), fc.constantFrom('', '.', '.5', '.000', '.123456789012345678')).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(written, fc.constantFrom('', ' ', '\t '), (text, blank) => {
        expect(numberIn(`${blank}${text}${blank}`)).toBe(Number(text) + 0);
        expect(numberBetween(`9${text}9`, 1, 1 + text.length)).toBe(Number(text) + 0);
      }),
      { numRuns: 2000 },
    );
  });

  it.each(['', ' ', '-', '.', '-.', '1.2.3', '1-2', '--1', '1e', 'e5', '0x10', '1,5', '1 2', 'NaN', 'Infinity', '1e999', '−5', '١', '1_000'])(
    'is not %j',
    (text) => {
      expect(numberIn(text)).toBeNaN();
    },
  );
});

describe('lines and cells', () => {
  it('come back as they were joined', () => {
    const line = fc.string({ unit: fc.constantFrom('a', ',', ' ', '"', '1') });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1 }), fc.constantFrom('\n', '\r\n', '\r'), (lines, end) => {
        const cursor = openText(lines.join(end));
        const read: string[] = [];
        while (nextLine(cursor)) read.push(cursor.text.slice(cursor.from, cursor.to));
        expect(read).toEqual(lines);
        expect(cursor.line).toBe(lines.length);
      }),
    );
  });

  it('of a header come back from quotes', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', ',', '"', 'b c', 'é') }).map((text) => text.trim());
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1 }), (cells) => {
        const quoted = cells.map((each) => (/[",]/u.test(each) ? `"${each.replaceAll('"', '""')}"` : each));
        expect(headerCells(quoted.join(','))).toEqual(cells);
        expect(headerCells(quoted.map((each) => ` ${each} `).join(','))).toEqual(cells);
      }),
    );
  });
});

describe('the calendar', () => {
  it.each([false, true])('goes round, with 29 February %s', (leap) => {
    const places = hoursOfYear(leap).map(placeOf);
    expect(places.every((place, at) => placeAfter(place, places[(at + 1) % places.length] ?? -1) === places[(at + 1) % places.length])).toBe(true);
    expect(new Set(places).size).toBe(leap ? 8784 : 8760);
    const spans = monthSpans(leap);
    expect(spans.map(({ from, to }) => (to - from) / 24).slice(0, 3)).toEqual([31, leap ? 29 : 28, 31]);
    expect(spans[11]?.to).toBe(places.length);
  });

  it('names days and hours', () => {
    expect(placeInWords(placeOf({ month: 12, day: 31, hour: 24 }))).toBe('month 12, day 31, hour 24');
    expect(placeInWords(placeOf({ month: 2, day: 29, hour: 1 }))).toBe('month 2, day 29, hour 1');
    const dates = [
      [1, 1, 1],
      [2, 28, 59],
      [2, 29, 60],
      [3, 1, 60],
      [12, 31, 365],
    ] as const;
    expect(dates.map(([month, day]) => dayOfPlace(placeOf({ month, day, hour: 24 })))).toEqual(dates.map(([, , of]) => of));
  });
});
