import { loadFixture } from './fixture.js';
import type { PublishedCheck } from './published.js';

/** The inputs of a worked case by the names the table gives them. */
export type CaseInputs = Readonly<Record<string, unknown>>;

/** What reproduces a worked case: one number, or several where the case prints several. */
export type Case = readonly [id: string, quantity: string, compute: (inputs: CaseInputs) => number | readonly number[]];

const table = loadFixture('load-check-cases');

/** The ids of all worked cases of the table. */
export const loadCases: readonly string[] = table.rows.map((row) => row.text('id'));

/** Checks of worked cases, each with the tolerance of its row; a case that prints several numbers has a value for each. */
export function caseChecks(room: string, cases: readonly Case[]): readonly PublishedCheck[] {
  return cases.map(([id, quantity, compute]) => {
    const row = table.rows.find((each) => each.text('id') === id);
    if (row === undefined) throw new Error(`no worked case ${id}`);
    const inputs: CaseInputs = JSON.parse(row.text('inputs_json'));
    const outputs = row.text('output').split(',');
    const expected = row.text('expected').split(';').map(Number);
    const computed = (index: number): number => {
      const all = [compute(inputs)].flat();
      return all.length === expected.length ? (all[index] ?? Number.NaN) : Number.NaN;
    };
    return {
      id: `LD-${id}`,
      room,
      quantity,
      unit: row.text('unit'),
      source: `${table.meta.source}: ${row.text('provenance')}`,
      seen: table.meta.seen,
      tolerance: { relative: row.number('rel_tol'), reason: 'double rounding in two programs, or the printed digits' },
      values: expected.map((value, index) => ({ label: outputs[index] ?? id, expected: value, compute: () => computed(index) })),
    };
  });
}
