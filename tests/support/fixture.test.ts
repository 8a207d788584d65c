import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FixtureMeta, loadFixture, parseCsv, parseFixture } from './fixture.js';

const meta: FixtureMeta = {
  source: 'A handbook, 1999',
  seen: 'original',
  at: 'table 3',
  rows: 2,
  columns: { depth: { unit: 'm' }, k: { unit: 'W/(m.K)', tolerance: { relative: 0.01, reason: 'two printed digits' } } },
};
const csv = 'soil,depth,k\nloam,1.5,1.2\n"clay, wet",2,1.6\n';
const parse = (change: Partial<Record<keyof FixtureMeta, unknown>> = {}, text = csv): ReturnType<typeof parseFixture> =>
  // What a file says is not checked by the compiler, so the test may say anything.
  parseFixture('x', { ...meta, ...change } as FixtureMeta, text);
const tolerance = (of: unknown): Partial<Record<keyof FixtureMeta, unknown>> => ({ columns: { k: { unit: 'W/(m.K)', tolerance: of } } });

describe('a table of outside values', () => {
  it('is read with its lines and numbers', () => {
    const { rows } = parse();
    expect(rows.map((row) => [row.line, row.text('soil'), row.number('depth'), row.number('k')])).toEqual([
      [2, 'loam', 1.5, 1.2],
      [3, 'clay, wet', 2, 1.6],
    ]);
  });

  it.each<[string, Partial<Record<keyof FixtureMeta, unknown>>, string]>([
    ['without a source', { source: '' }, 'no source'],
    ['without how it was seen', { seen: undefined }, 'no source'],
    ['seen in an unknown way', { seen: 'somewhere' }, 'no source'],
    ['without where it was seen', { at: '' }, 'no source'],
    ['without columns', { columns: undefined }, 'no column with a tolerance'],
    ['without any tolerance', { columns: { k: { unit: 'W/(m.K)' } } }, 'no column with a tolerance'],
    ['with a column without unit', { columns: { ...meta.columns, depth: {} } }, 'a column without a unit'],
    ['with a column with an empty unit', { columns: { ...meta.columns, depth: { unit: '' } } }, 'a column without a unit'],
    ['with a tolerance without size', tolerance({ reason: 'none' }), 'without size or reason'],
    ['with a tolerance without reason', tolerance({ relative: 0.01 }), 'without size or reason'],
    ['with an empty reason', tolerance({ relative: 0.01, reason: '' }), 'without size or reason'],
    ['with a negative tolerance', tolerance({ relative: -0.01, reason: 'odd' }), 'nothing can miss'],
    ['with a tolerance that is no number', tolerance({ absolute: NaN, reason: 'odd' }), 'nothing can miss'],
    ['with a second size that is no number', tolerance({ relative: 0.01, absolute: NaN, reason: 'odd' }), 'nothing can miss'],
    ['with an infinite tolerance', tolerance({ absolute: Infinity, reason: 'odd' }), 'nothing can miss'],
    ['with a tolerance as large as the value', tolerance({ relative: 1, reason: 'odd' }), 'nothing can miss'],
    ['that names a column it has not', { columns: { ...meta.columns, moisture: { unit: '%' } } }, 'no column moisture'],
    ['with fewer rows than said', { rows: 3 }, '2 rows, 3 expected'],
    ['with more rows than said', { rows: 1 }, '2 rows, 1 expected'],
    ['without a row count', { rows: undefined }, '2 rows, undefined expected'],
  ])('is refused %s', (_, change, why) => {
    expect(() => parse(change)).toThrow(/^fixture x: /u);
    expect(() => parse(change)).toThrow(why);
  });

  it.each([
    ['no row at all', 'soil,depth,k\n', 'no rows'],
    ['comments only', '# soil\n\n', 'no column depth'],
    ['nothing', '', 'no column depth'],
    ['a row with a cell too few', 'soil,depth,k\nloam,1.5\nclay,2,1.6\n', 'row 1 has not as many cells'],
    ['a row with a cell too many', 'soil,depth,k\nloam,1.5,1.2\nclay,2,1.6,7\n', 'row 2 has not as many cells'],
    ['two columns of one name', 'k,depth,k\n1,1.5,1.2\n2,2,1.6\n', 'two columns of one name'],
  ])('is refused with %s', (_, text, why) => {
    expect(() => parse({}, text)).toThrow(why);
  });

  it('gives numbers of columns with a unit only, and of cells that are numbers', () => {
    const [row] = parse({}, 'soil,depth,k\n12,,1.2\nclay,two,Infinity\n').rows;
    expect(() => row?.number('soil')).toThrow('column soil is read as a number but has no unit');
    expect(() => row?.number('depth')).toThrow('line 2, column depth: "" is no number');
    expect(row?.has('depth')).toBe(false);
    expect(row?.has('k')).toBe(true);
    expect(() => row?.text('colour')).toThrow('no column colour');
    expect(() => row?.has('colour')).toThrow('no column colour');
    const [, second] = parse({}, 'soil,depth,k\n12,1,1.2\nclay,two,Infinity\n').rows;
    expect(() => second?.number('depth')).toThrow('"two" is no number');
    expect(() => second?.number('k')).toThrow('"Infinity" is no number');
  });
});

describe('comma-separated text', () => {
  it('keeps quoted commas, doubled quotes, empty cells and leaves out comments', () => {
    expect(parseCsv('# note\r\na,"b,c","say ""yes""",\r\n\r\n,x,,""\n')).toEqual([
      ['a', 'b,c', 'say "yes"', ''],
      ['', 'x', '', ''],
    ]);
    expect(parseCsv('\uFEFFa,b')).toEqual([['a', 'b']]);
  });

  it('refuses a quote that does not belong', () => {
    expect(() => parseCsv('a,"b')).toThrow('stray quote');
    expect(() => parseCsv('a,b"c')).toThrow('stray quote');
    expect(() => parseCsv('a,"b"c')).toThrow('stray quote');
  });

  it('brings back any table', () => {
    const cell = fc.string().map((text) => text.replace(/[\r\n\uFEFF]/gu, ' '));
    const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(table, (rows) => {
        const text = rows.map((row) => row.map((each) => `"${each.replaceAll('"', '""')}"`).join(',')).join('\n');
        expect(parseCsv(text)).toEqual(rows);
      }),
    );
  });
});

describe('the committed tables', () => {
  const folder = new URL('../fixtures/', import.meta.url);
  const files = readdirSync(folder);
  const described = files.filter((file) => file.endsWith('.meta.json')).map((file) => file.replace('.meta.json', ''));

  it('are all described', () => {
    const tables = files.filter((file) => file.endsWith('.csv')).map((file) => file.replace('.csv', ''));
    expect(tables.filter((name) => !described.includes(name))).toEqual([]);
  });

  it.each(described.filter((name) => files.includes(`${name}.csv`)))('%s is whole', (name) => {
    expect(loadFixture(name).rows.length).toBeGreaterThan(0);
  });

  it('say nothing of the machine they came from', () => {
    for (const name of described) {
      expect(readFileSync(new URL(`${name}.meta.json`, folder), 'utf8')).not.toMatch(/\/(?:work|tmp|home|usr)\/|\.\.\//u);
    }
  });
});
