import { readFileSync } from 'node:fs';

/** How far a computed value may lie from the expected one, and why it is that far. */
export interface Tolerance {
  readonly relative?: number;
  readonly absolute?: number;
  readonly reason: string;
}

/** What a column of a fixture means. */
export interface Column {
  readonly unit: string;
  /** Present on columns that hold expected values. */
  readonly tolerance?: Tolerance;
}

/** The description beside a table of outside values: `name.meta.json` beside `name.csv`. */
export interface FixtureMeta {
  readonly source: string;
  readonly seen: 'original' | 'quoted' | 'from memory' | 'computed independently';
  readonly at: string;
  readonly rows: number;
  readonly columns: Readonly<Record<string, Column>>;
}

/** One row of a fixture; a number may only be read from a column whose unit is stated. */
export interface FixtureRow {
  readonly line: number;
  text(column: string): string;
  number(column: string): number;
  has(column: string): boolean;
}

/** A table of outside values with its provenance. */
export interface Fixture {
  readonly name: string;
  readonly meta: FixtureMeta;
  readonly rows: readonly FixtureRow[];
}

const SEEN: readonly string[] = ['original', 'quoted', 'from memory', 'computed independently'];

const FOLDER = new URL('../fixtures/', import.meta.url);

/** Reads a table of outside values; refuses one without source, units, tolerance, or rows. */
export function loadFixture(name: string, folder: URL = FOLDER): Fixture {
  const meta: FixtureMeta = JSON.parse(readFileSync(new URL(`${name}.meta.json`, folder), 'utf8'));
  return parseFixture(name, meta, readFileSync(new URL(`${name}.csv`, folder), 'utf8'));
}

/** Parses and checks a table of outside values. */
export function parseFixture(name: string, meta: FixtureMeta, csv: string): Fixture {
  const refuse = (why: string): never => {
    throw new Error(`fixture ${name}: ${why}`);
  };
  if (!meta.source || !SEEN.includes(meta.seen) || !meta.at) refuse('no source, or not said how and where it was seen');
  const columns = Object.entries(meta.columns ?? {});
  if (columns.some(([, { unit }]) => !unit)) refuse('a column without a unit');
  const expected = columns.filter(([, { tolerance }]) => tolerance !== undefined);
  if (expected.length === 0) refuse('no column with a tolerance');
  for (const [column, { tolerance }] of expected) {
    const { relative, absolute, reason } = tolerance ?? {};
    if (!reason || (relative === undefined && absolute === undefined)) refuse(`column ${column}: a tolerance without size or reason`);
    // A relative tolerance of one lets a computed zero pass for anything.
    if (![relative, absolute].every((size = 0) => size >= 0 && size < Infinity) || (relative ?? 0) >= 1) {
      refuse(`column ${column}: a tolerance that nothing can miss`);
    }
  }
  const [header = [], ...cells] = parseCsv(csv);
  for (const [column] of columns) if (!header.includes(column)) refuse(`no column ${column}`);
  if (new Set(header).size < header.length) refuse('two columns of one name');
  if (cells.length === 0) refuse('no rows');
  if (cells.length !== meta.rows) refuse(`${String(cells.length)} rows, ${String(meta.rows)} expected`);
  const ragged = cells.findIndex((row) => row.length !== header.length);
  if (ragged >= 0) refuse(`row ${String(ragged + 1)} has not as many cells as the header`);
  return { name, meta, rows: cells.map((row, index) => fixtureRow(header, row, index + 2, meta, refuse)) };
}

function fixtureRow(header: readonly string[], row: readonly string[], line: number, meta: FixtureMeta, refuse: (why: string) => never): FixtureRow {
  const text = (column: string): string => {
    const at = header.indexOf(column);
    return at < 0 ? refuse(`no column ${column}`) : (row[at] ?? '').trim();
  };
  const number = (column: string): number => {
    if (meta.columns[column] === undefined) refuse(`column ${column} is read as a number but has no unit`);
    const cell = text(column);
    const value = Number(cell);
    return cell === '' || !Number.isFinite(value) ? refuse(`line ${String(line)}, column ${column}: ${JSON.stringify(cell)} is no number`) : value;
  };
  return { line, text, number, has: (column) => text(column) !== '' };
}

/** Splits comma-separated text into cells; quoted cells may hold commas and doubled quotes, but no line break. */
export function parseCsv(csv: string): string[][] {
  const lines = csv
    .replace(/^\uFEFF/u, '')
    .replace(/\r\n/gu, '\n')
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'));
  return lines.map((line) => {
    // With a comma before the first cell too, every cell begins alike, an empty first one as well.
    const cells = [...`,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"(?=,|$)|([^,"]*)(?=,|$))/gu)];
    if (cells.reduce((length, [whole]) => length + whole.length, 0) !== line.length + 1) throw new Error(`a stray quote in ${line}`);
    return cells.map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '');
  });
}
