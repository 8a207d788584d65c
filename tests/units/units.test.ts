import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as units from '../../src/units/index.js';
import { type Factor, factor, type Kind, KINDS, type Quantity, quantity, unit, type Unit } from '../../src/units/index.js';
import { divided, minus, ofDecimal, ofDouble, plus, times, toDouble, ulp } from '../support/exact.js';

interface Row {
  readonly kind: Kind;
  readonly name: string;
  readonly factor: Factor;
}
const kinds = Object.keys(KINDS) as Kind[];
const rows: readonly Row[] = kinds.flatMap((kind) => Object.entries<Factor>(KINDS[kind].units).map(([name, of]) => ({ kind, name, factor: of })));
const titled = rows.map((row) => ({ ...row, title: `${row.kind} in ${row.name}` }));

/** The exported units as the source text declares them; a callable unit does not say at run time which it is. */
const source = readFileSync(new URL('../../src/units/units.data.ts', import.meta.url), 'utf8');
const declared = [...source.matchAll(/^export const (\w+): Unit<'([^']+)'> = \/\* @__PURE__ \*\/ unit\('([^']+)', '([^']+)'\);$/gmu)].map(
  ([, constant = '', typed = '', kind = '', name = '']) => ({ constant, typed, kind, name }),
);
const exported: Readonly<Record<string, unknown>> = units;
/** For each unit; there are more than two hundred. */
const RUNS = { numRuns: 30 };
const isUnit = (value: unknown): value is Unit<Kind> => typeof value === 'function' && 'of' in value;

/** Half a unit in the last place of 1: the most that one rounding moves a number, as a share of it. */
const ROUNDING = 2 ** -53;
/** Any number that quantities have; near the smallest of all doubles digits are lost, and nothing is said. */
const size = fc.double({ min: 1e-30, max: 1e9, noNaN: true });
const finite = fc.oneof(
  fc.constant(0),
  size,
  size.map((x) => -x),
);

describe('the table of kinds', () => {
  it.each(titled)('$title has a factor of exact decimals', ({ factor: [numerator, denominator, added] }) => {
    for (const text of [numerator, denominator, added]) expect(text).toMatch(/^-?(?:0|[1-9]\d*)(?:\.\d*[1-9])?$/u);
    expect(ofDecimal(numerator).over > 0n && ofDecimal(denominator).over > 0n).toBe(true);
  });

  it.each(kinds)('%s has its units, and its fixed one changes nothing', (kind) => {
    const { si, metric, us } = KINDS[kind];
    expect(factor(kind, si)).toEqual(['1', '1', '0']);
    expect(factor(kind, metric)).toBeDefined();
    expect(factor(kind, us)).toBeDefined();
  });

  it('has no two units of a kind of one name after spellings are folded, and none with a space', () => {
    for (const kind of kinds) {
      const names = Object.keys(KINDS[kind].units);
      expect(names.filter((name) => /[\s·*°²³]/u.test(name))).toEqual([]);
    }
  });

  it('adds nothing but to temperatures', () => {
    expect(rows.filter(({ factor: [, , added] }) => added !== '0').map(({ kind, name }) => `${kind} ${name}`)).toEqual([
      'temperature K',
      'temperature degF',
      'temperature degR',
    ]);
  });
});

describe('the exported units', () => {
  it('are one for each unit of each kind', () => {
    const named = declared.map(({ kind, name }) => `${kind} in ${name}`);
    expect([...named].sort()).toEqual(titled.map(({ title }) => title).sort());
    expect(declared.filter(({ typed, kind }) => typed !== kind)).toEqual([]);
  });

  it('are all declared in the one form that this test reads', () => {
    const callable = Object.entries(exported).filter(([, value]) => isUnit(value));
    expect(callable.map(([constant]) => constant).sort()).toEqual(declared.map(({ constant }) => constant).sort());
  });

  it.each(declared)('$constant converts exactly but for its own roundings', ({ constant, kind, name }) => {
    const callable = exported[constant];
    const row = rows.find((each) => each.kind === kind && each.name === name);
    if (!isUnit(callable) || row === undefined) throw new Error(`${constant} is no unit`);
    const [numerator, denominator, added] = row.factor.map(ofDecimal);
    if (numerator === undefined || denominator === undefined || added === undefined) throw new Error('no factor');
    const slope = divided(numerator, denominator);
    const shifts = added.over !== 0n;
    fc.assert(
      fc.property(finite, (x) => {
        const exact = times(plus(ofDouble(x), added), slope);
        const larger = Math.abs(toDouble(exact)) + (shifts ? Math.abs(toDouble(times(added, slope))) : 0);
        const off = Math.abs(toDouble(minus(ofDouble(callable(x)), exact)));
        // Sum (temperatures only), product, quotient, and a factor or addend that is no double itself.
        expect(off).toBeLessThanOrEqual(3 * ROUNDING * larger);
        // The horse-power alone has more digits than a double holds.
        if (!shifts && name !== 'hp') expect(off).toBeLessThanOrEqual(2 * ulp(toDouble(exact)));
      }),
      RUNS,
    );
    fc.assert(
      fc.property(finite, (x) => {
        // The value is in the fixed unit of the kind that was read off the table.
        const back = minus(divided(ofDouble(x), slope), added);
        const larger = Math.abs(toDouble(divided(ofDouble(x), slope))) + Math.abs(toDouble(back)) + Math.abs(toDouble(added));
        expect(Math.abs(toDouble(minus(ofDouble(callable.of(x as Quantity<Kind>)), back)))).toBeLessThanOrEqual(3 * ROUNDING * larger);
      }),
      RUNS,
    );
  });

  it.each(declared)('$constant reads back what it made', ({ constant, kind, name }) => {
    const callable = exported[constant];
    const added = Math.abs(Number(rows.find((each) => each.kind === kind && each.name === name)?.factor[2]));
    if (!isUnit(callable)) throw new Error(`${constant} is no unit`);
    fc.assert(
      fc.property(finite, (x) => {
        expect(Math.abs(callable.of(callable(x)) - x)).toBeLessThanOrEqual(8 * ROUNDING * (Math.abs(x) + added));
      }),
      RUNS,
    );
    expect(callable.of(callable(Infinity))).toBe(Infinity);
    expect(callable(NaN)).toBeNaN();
  });

  it('give round decimals the double that the same text has, where the factor is short', () => {
    const short = rows.filter(({ factor: [numerator, denominator, added] }) => added === '0' && denominator === '1' && numerator.length <= 6);
    expect(short.length).toBeGreaterThan(60);
    for (const {
      kind,
      name,
      factor: [numerator],
    } of short) {
      for (const x of [1, 2, 3, 6, 7, 10, 15, 600, 999]) {
        const { over, under } = times(ofDecimal(String(x)), ofDecimal(numerator));
        expect(quantity(kind, x, name as never)).toBe(Number(over) / Number(under));
      }
    }
  });
});

describe('unit and quantity', () => {
  it('agree with each other and with the exported units', () => {
    for (const { constant, kind, name } of declared) {
      const callable = exported[constant];
      if (!isUnit(callable)) throw new Error(`${constant} is no unit`);
      expect(quantity(kind as Kind, 12.5, name as never)).toBe(callable(12.5));
      expect(unit(kind as Kind, name as never)(12.5)).toBe(callable(12.5));
    }
  });

  it('refuse a unit that the kind has not', () => {
    expect(() => unit('length', 'furlong' as never)).toThrow('"furlong" is no unit of length; known: m, km, cm, mm, ft, in, yd');
    expect(() => quantity('length', 1, 'toString' as never)).toThrow(TypeError);
    expect(() => quantity('length', 1, 'degC' as never)).toThrow('no unit of length');
    expect(factor('length', 'constructor')).toBeUndefined();
  });

  it('tell a temperature from a difference', () => {
    expect(units.fahrenheit(32)).toBe(0);
    expect(units.fahrenheit(212)).toBe(100);
    expect(units.fahrenheit.of(units.celsius(-40))).toBe(-40);
    expect(quantity('temperature', 273.15, 'K')).toBe(0);
    expect(quantity('temperature', 491.67, 'degR')).toBe(0);
    expect(quantity('temperature difference', 18, 'degF')).toBe(10);
    expect(units.temperatureDifference(units.fahrenheit(68), units.fahrenheit(50))).toBe(10);
    expect(units.temperatureDifference(units.celsius(-5), units.celsius(3))).toBe(-8);
  });

  it('are opposite for the two orders of a difference', () => {
    fc.assert(
      fc.property(finite, finite, (a, b) => {
        const [warm, cold] = [units.celsius(a), units.celsius(b)];
        expect(units.temperatureDifference(warm, cold)).toBe(0 - units.temperatureDifference(cold, warm) || 0);
      }),
    );
  });
});

describe('the exact arithmetic of this test', () => {
  it('knows doubles bit by bit', () => {
    expect(ofDouble(0.5)).toEqual({ over: 4503599627370496n, under: 9007199254740992n });
    expect(ofDouble(2 ** 60)).toEqual({ over: 2n ** 60n, under: 1n });
    expect(toDouble(minus(ofDouble(0.1), ofDecimal('0.1')))).toBeCloseTo(5.551115123125783e-18, 30);
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e300, max: 1e300 }), (x) => {
        const { over, under } = ofDouble(x);
        expect(minus(ofDouble(x), ofDouble(x)).over).toBe(0n);
        if (Math.abs(x) > 1e-290) expect(toDouble({ over, under })).toBe(x);
      }),
    );
    expect([ulp(1), ulp(1.5), ulp(2), ulp(0.75), ulp(-8)]).toEqual([2 ** -52, 2 ** -52, 2 ** -51, 2 ** -53, 2 ** -49]);
    expect(() => ofDecimal('1e5')).toThrow('no plain decimal');
    expect(() => ofDouble(NaN)).toThrow('not finite');
  });
});
