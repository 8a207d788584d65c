import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { publishedChecks } from '../published/all.js';
import { type FixtureMeta, parseFixture } from './fixture.js';
import { deviation, fromFixture } from './published.js';

const value = (expected: number, computed: number): { label: string; expected: number; compute: () => number } => ({
  label: 'x',
  expected,
  compute: () => computed,
});
const reason = 'printed digits';

describe('deviation', () => {
  it('is a share of what is tolerated, the wider of the two', () => {
    expect(deviation(value(200, 201), { relative: 0.01, reason }).share).toBe(0.5);
    expect(deviation(value(200, 201), { absolute: 4, reason }).share).toBe(0.25);
    expect(deviation(value(200, 201), { relative: 0.01, absolute: 4, reason }).share).toBe(0.25);
    expect(deviation(value(-200, -203), { relative: 0.01, reason }).share).toBe(1.5);
    expect(deviation(value(200, 201), { relative: 0.01, reason })).toMatchObject({ computed: 201, off: 1 });
  });

  it('lets an equal value pass a tolerance of nothing, and no other', () => {
    expect(deviation(value(3, 3), { absolute: 0, reason }).share).toBe(0);
    expect(deviation(value(3, 3 + 1e-15), { absolute: 0, reason }).share).toBe(Infinity);
    expect(deviation(value(0, 1e-300), { relative: 0.5, reason }).share).toBe(Infinity);
    expect(deviation(value(3, 4), { reason }).share).toBe(Infinity);
  });

  it('never lets a number pass that is not one', () => {
    for (const [expected, computed] of [
      [1, NaN],
      [NaN, 1],
      [NaN, NaN],
      [1, Infinity],
      [1, -Infinity],
      [Infinity, Infinity],
    ] as const) {
      expect(deviation(value(expected, computed), { relative: 0.5, absolute: 1e300, reason }).share).toBe(Infinity);
    }
    expect(deviation(value(1, 2), { relative: NaN, reason }).share).toBe(Infinity);
  });

  it('grows with the distance', () => {
    const finite = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(finite, fc.double({ min: 0, max: 1e3, noNaN: true }), fc.double({ min: 0, max: 1e3, noNaN: true }), (expected, near, more) => {
        const tolerance = { absolute: 0.5, reason };
        const share = (off: number): number => deviation(value(expected, expected + off), tolerance).share;
        expect(share(near + more)).toBeGreaterThanOrEqual(share(near));
      }),
    );
  });
});

describe('a check from a table', () => {
  const meta: FixtureMeta = {
    source: 'A handbook, 1999',
    seen: 'quoted',
    at: 'table 3',
    rows: 2,
    columns: { depth: { unit: 'm' }, k: { unit: 'W/(m.K)', tolerance: { relative: 0.01, reason } } },
  };
  const fixture = parseFixture('x', meta, 'depth,k\n1.5,1.2\n2,\n');
  const of = { id: 'X-1', room: 'soil', quantity: 'conductivity', label: (): string => 'row', compute: (): number => 1.2 };

  it('holds the rows that have a value, with unit, source and tolerance', () => {
    const check = fromFixture(fixture, { ...of, column: 'k' });
    expect(check).toMatchObject({ unit: 'W/(m.K)', source: 'A handbook, 1999 (table 3)', seen: 'quoted', tolerance: { relative: 0.01 } });
    expect(check.values.map(({ expected, compute }) => [expected, compute()])).toEqual([[1.2, 1.2]]);
  });

  it('is refused without rows or on a column without tolerance', () => {
    expect(() => fromFixture(fixture, { ...of, column: 'k', where: () => false })).toThrow('check X-1 has no rows');
    expect(() => fromFixture(fixture, { ...of, column: 'depth' })).toThrow('column depth has no tolerance');
    expect(() => fromFixture(fixture, { ...of, column: 'q' })).toThrow('column q has no tolerance');
  });
});

describe('all outside checks', () => {
  it('have an id and quantity of their own, values, source, unit, and tolerances that can be missed', () => {
    const ids = publishedChecks.map(({ id, quantity }) => `${id} ${quantity}`);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    for (const { id, values, source, unit, quantity, tolerance } of publishedChecks) {
      expect([id, values.length > 0, source !== '', unit !== '', quantity !== '']).toEqual([id, true, true, true, true]);
      for (const { reason: why, relative = 0, absolute = 0 } of [tolerance, ...values.flatMap((each) => each.tolerance ?? [])]) {
        expect([id, why !== '', relative >= 0 && relative < 1, absolute >= 0 && absolute < Infinity]).toEqual([id, true, true, true]);
      }
    }
  });

  it('fail for a value that is off by more than their tolerance', () => {
    for (const check of publishedChecks) {
      for (const { expected, tolerance = check.tolerance, label } of check.values) {
        const allowed = Math.max(tolerance.absolute ?? 0, (tolerance.relative ?? 0) * Math.abs(expected));
        const off = allowed * 1.01 + Math.abs(expected) * 1e-12 + Number.MIN_VALUE;
        expect([check.id, label, deviation(value(expected, expected + off), tolerance).share > 1]).toEqual([check.id, label, true]);
      }
    }
  });
});
