import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWeatherFile, type WeatherFile, WeatherFileError } from '../../src/climate/index.js';
import { notFinite } from '../support/finite.js';
import { madeLines, wholeYearOf } from './weather-texts.js';

/** What is wrong with how a text is met; nothing when it gives finite numbers or is refused with its place. */
function faultOf(text: string): string | undefined {
  let file: WeatherFile;
  try {
    file = readWeatherFile({ text });
  } catch (error) {
    if (!(error instanceof WeatherFileError)) return `throws ${String(error)}`;
    const { line, column, argument, message } = error;
    const lines = text.split(/\r\n?|\n/u).length;
    if (!(line >= 1 && line <= lines + 1) || (column !== undefined && !(column >= 1))) return `line ${String(line)}, column ${String(column)}`;
    return argument.startsWith('text.line ') && message.length < 500 ? undefined : message;
  }
  const { columns, temperatures, years, presentWeather, sourceFlags, ...rest } = file;
  const read = Object.values(columns);
  const whole = [8760, 8784].includes(temperatures.length) && read.every(({ numbers }) => numbers.length === temperatures.length);
  const finite = [temperatures, ...read.map(({ numbers }) => numbers)].every((numbers) => numbers.every((number) => Number.isFinite(number)));
  if (!whole || !finite || years.length !== temperatures.length) return 'hours that are not whole or not finite';
  if (presentWeather.length !== temperatures.length || ![0, temperatures.length].includes(sourceFlags.length)) return 'texts that are not whole';
  return notFinite(rest);
}

const goods = [wholeYearOf('bologna'), wholeYearOf('greensboro'), `${madeLines(() => 10, { leap: true }).join('\n')}\n`];

/** What may be put into a file: pieces that mean something there, digits, and any characters. */
const piece = fc.oneof(
  fc.constantFrom(
    ',',
    ',,',
    '\n',
    '\r\n',
    '"',
    '""',
    '-',
    '.',
    '1e9',
    '-1e308',
    '1e308',
    '99.9',
    '-9900',
    '24',
    '0',
    'NaN',
    'Infinity',
    '\uFEFF',
    '\u0000',
    'Heating',
    '٣',
  ),
  fc.integer().map(String),
  fc.double({ noNaN: true }).map(String),
  fc.string({ unit: 'binary', maxLength: 20 }),
);
/** A place in a file: as often in its header as anywhere. */
const somewhere = (text: string): fc.Arbitrary<number> => fc.oneof(fc.nat({ max: 3000 }), fc.nat({ max: text.length - 1 }));
const mutated = fc.constantFrom(...goods).chain((text) =>
  fc
    .array(fc.record({ at: somewhere(text), cut: fc.oneof(fc.constant(0), fc.nat({ max: 30 }), fc.nat({ max: 300_000 })), put: piece }), {
      minLength: 1,
      maxLength: 4,
    })
    .map((changes) => changes.reduce((whole, { at, cut, put }) => whole.slice(0, at) + put + whole.slice(at + cut), text)),
);

describe('whatever the text, a file or a refusal with its place', () => {
  it('good files among them', () => {
    expect(goods.map(faultOf)).toEqual(goods.map(() => undefined));
  });

  it('of any characters', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 400 }),
          fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(',')),
        ),
        (text) => {
          expect(faultOf(text)).toBeUndefined();
        },
      ),
      { numRuns: 1500 },
    );
  });

  it('of any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), fc.constantFrom('latin1', 'utf8'), (bytes, encoding) => {
        expect(faultOf(Buffer.from(bytes).toString(encoding))).toBeUndefined();
        expect(faultOf(`LOCATION,${Buffer.from(bytes).toString(encoding)}`)).toBeUndefined();
      }),
      { numRuns: 500 },
    );
  });

  it('of a good file with pieces cut out and put in', () => {
    fc.assert(
      fc.property(mutated, (text) => {
        expect(faultOf(text)).toBeUndefined();
      }),
      { numRuns: 250 },
    );
  });

  it('of a good file with one cell of a row or header changed', () => {
    const lines = goods.map((text) => text.split('\n'));
    fc.assert(
      fc.property(
        fc.constantFrom(...lines),
        fc.oneof(fc.nat({ max: 9 }), fc.nat({ max: 8760 })),
        fc.nat({ max: 70 }),
        piece,
        (whole, line, cell, put) => {
          const cells = (whole[line] ?? '').split(',');
          cells[cell % cells.length] = put;
          expect(faultOf(whole.map((each, at) => (at === line ? cells.join(',') : each)).join('\n'))).toBeUndefined();
        },
      ),
      { numRuns: 100 },
    );
  });

  it.each<[string, string]>([
    ['a million commas', ','.repeat(1e6)],
    ['a million line ends', '\n'.repeat(1e6)],
    ['a million carriage returns', '\r'.repeat(1e6)],
    ['a million quotes', '"'.repeat(1e6)],
    ['quoted cells that never close', `LOCATION,${'"a,'.repeat(3000)}`],
    [
      'a million digits in a row',
      `${madeLines(() => 10)
        .slice(0, 8)
        .join('\n')}\n2021,1,1,1,60,?,${'1'.repeat(1e6)}${',1'.repeat(28)}`,
    ],
    [
      'a row of a million cells',
      `${madeLines(() => 10)
        .slice(0, 8)
        .join('\n')}\n${'1,'.repeat(1e6)}`,
    ],
    [
      'a million rows of nothing',
      `${madeLines(() => 10)
        .slice(0, 8)
        .join('\n')}\n${' \n'.repeat(1e6)}x`,
    ],
    [
      'comments of commas',
      `${madeLines(() => 10)
        .slice(0, 5)
        .join('\n')}\nCOMMENTS 1${','.repeat(9000)}x`,
    ],
  ])('of %s, without hanging', (_, text) => {
    expect(faultOf(text)).toBeUndefined();
  });
});
