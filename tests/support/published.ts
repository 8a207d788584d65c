import type { Fixture, FixtureMeta, FixtureRow, Tolerance } from './fixture.js';

/** One value of an outside source beside what the library computes. */
export interface PublishedValue {
  readonly label: string;
  readonly expected: number;
  readonly compute: () => number;
  /** Where this row's tolerance differs from the check's. */
  readonly tolerance?: Tolerance;
}

/** A set of outside values of one quantity. `npm run check:published` prints a row for each, and the tests run the same. */
export interface PublishedCheck {
  /** Stable id, for example `LS-12`. */
  readonly id: string;
  readonly room: string;
  readonly quantity: string;
  readonly unit: string;
  readonly source: string;
  readonly seen: FixtureMeta['seen'];
  readonly tolerance: Tolerance;
  readonly values: readonly PublishedValue[];
}

/** Builds a check from a column of a fixture. */
export function fromFixture(
  fixture: Fixture,
  of: {
    id: string;
    room: string;
    quantity: string;
    column: string;
    label: (row: FixtureRow) => string;
    compute: (row: FixtureRow) => number;
    where?: (row: FixtureRow) => boolean;
  },
): PublishedCheck {
  const column = fixture.meta.columns[of.column];
  if (column?.tolerance === undefined) throw new Error(`fixture ${fixture.name}: column ${of.column} has no tolerance`);
  const rows = fixture.rows.filter((row) => row.has(of.column) && (of.where?.(row) ?? true));
  if (rows.length === 0) throw new Error(`fixture ${fixture.name}: check ${of.id} has no rows`);
  return {
    id: of.id,
    room: of.room,
    quantity: of.quantity,
    unit: column.unit,
    source: `${fixture.meta.source} (${fixture.meta.at})`,
    seen: fixture.meta.seen,
    tolerance: column.tolerance,
    values: rows.map((row) => ({ label: of.label(row), expected: row.number(of.column), compute: () => of.compute(row) })),
  };
}

/** How far a computed value lies from the expected one, as a share of what is tolerated; NaN counts as infinitely far. */
export function deviation(
  { expected, compute }: PublishedValue,
  tolerance: Tolerance,
): { readonly computed: number; readonly off: number; readonly share: number } {
  const computed = compute();
  const off = Math.abs(computed - expected);
  const allowed = Math.max(tolerance.absolute ?? 0, (tolerance.relative ?? 0) * Math.abs(expected));
  const share = off === 0 ? 0 : off / allowed;
  return { computed, off, share: Number.isNaN(share) ? Infinity : share };
}
