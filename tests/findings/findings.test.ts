import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formOf } from '../../src/document/form.js';
import { type Finding, type FindingCode, findingShapes } from '../../src/findings/index.js';
import { describeFinding } from '../../src/report/index.js';
import { type Kind, KINDS, type ShapeNode } from '../../src/units/index.js';
import { arbitraryOf } from '../support/arbitrary.js';
import { loadSource, sourceFiles } from '../support/sources.js';

const codes = Object.keys(findingShapes) as FindingCode[];
const shapes: Readonly<Record<string, ShapeNode>> = findingShapes;

/** The tables of shapes and of texts of each room, as their files hold them. */
const tablesOf = async (below: string, named: RegExp): Promise<readonly Readonly<Record<string, unknown>>[]> => {
  const modules = await Promise.all(sourceFiles(below).map(({ path }) => loadSource(path)));
  return modules.flatMap((module) => Object.entries(module).flatMap(([name, value]) => (named.test(name) ? [Object(value)] : [])));
};
const shapeTables = await tablesOf('findings/', /^\w+FindingShapes$/u);
const textTables = await tablesOf('report/text/', /^\w+FindingTexts$/u);

/** A finding of a code with some values; only the values and the code reach its text. */
const findingOf = (code: string, values: unknown): Finding => ({ code, level: 'note', values, source: 'common practice' }) as Finding;
const described = codes.map((code) => ({ code, values: arbitraryOf(shapes[code] ?? {}) }));

describe('codes', () => {
  it.each(codes)('%s is in kebab case', (code) => {
    expect(code).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/u);
  });

  it('belong to one room each, none lost where the rooms are joined', () => {
    const all = shapeTables.flatMap((table) => Object.keys(table));
    expect(all.filter((code, index) => all.indexOf(code) !== index)).toEqual([]);
    expect([...all].sort()).toEqual([...codes].sort());
    expect(codes.length).toBeGreaterThan(5);
  });

  it('have a text each, and there is no text without a code', () => {
    const all = textTables.flatMap((table) => Object.keys(table));
    expect(all.filter((code, index) => all.indexOf(code) !== index)).toEqual([]);
    expect([...all].sort()).toEqual([...codes].sort());
  });

  it('are each raised somewhere', () => {
    const raising = sourceFiles().filter(({ path }) => !path.startsWith('findings/') && !path.startsWith('report/'));
    expect(codes.filter((code) => !raising.some(({ text }) => text.includes(`'${code}'`)))).toEqual([]);
  });
});

describe('shapes', () => {
  it.each(codes)('%s is an object of values, each of a kind that exists', (code) => {
    const form = formOf(shapes[code] ?? {});
    if (form.form !== 'object') throw new Error('values are an object');
    for (const field of Object.values(form.fields)) expect(() => formOf(field)).not.toThrow();
  });
});

describe('texts', () => {
  it.each(described)('$code reads as sentences in both unit systems, whatever its values', ({ code, values }) => {
    fc.assert(
      fc.property(values, (given) => {
        for (const system of ['metric', 'us'] as const) {
          const text = describeFinding(findingOf(code, given), system);
          expect(text).not.toMatch(/NaN|undefined|null|Infinity|\[object|\s\s|\s[.,;]|(?:^|[\s(])-\d/u);
          expect(text).toMatch(/^[\p{Lu}\d−].*[.!?]$/su);
          expect(text.length).toBeLessThan(600);
        }
      }),
      { numRuns: 25 },
    );
  });

  it.each(codes)('%s shows each value as the kind that it is', (code) => {
    const form = formOf(shapes[code] ?? {});
    const fields = form.form === 'object' ? Object.entries(form.fields) : [];
    // Each field gets a number of its own, by which it is known again when it is shown.
    const kindOf = new Map<number, { readonly field: string; readonly kind: string }>();
    const fill = (node: ShapeNode, field: string): unknown => {
      const inner = formOf(node);
      const kind = inner.form === 'quantity' ? inner.kind : inner.form;
      if (inner.form === 'quantity' || kind === 'count') {
        const value = 1000 + kindOf.size;
        kindOf.set(value, { field, kind });
        return value;
      }
      if (inner.form === 'choice') return inner.choices[0];
      if (inner.form === 'optional') return fill(inner.of, field);
      if (inner.form === 'list') return [fill(inner.of, field)];
      if (inner.form === 'object') return Object.fromEntries(Object.entries(inner.fields).map(([key, part]) => [key, fill(part, `${field}.${key}`)]));
      return inner.form === 'flag' ? true : 'text';
    };
    const values = Object.fromEntries(fields.map(([key, node]) => [key, fill(node, key)]));
    const text = textTables.map((table) => table[code]).find((each) => typeof each === 'function');
    const wrong: string[] = [];
    const show = (kind: Kind, value: number): string => {
      const known = kindOf.get(value);
      // A ratio may be read as a share of the whole: both are plain numbers.
      const alike = known?.kind === kind || (known?.kind === 'ratio' && kind === 'fraction');
      if (known !== undefined && !alike) wrong.push(`${known.field} is ${known.kind}, shown as ${kind}`);
      if (!Object.hasOwn(KINDS, kind)) wrong.push(`${kind} is no kind`);
      return 'so much';
    };
    Reflect.apply(text ?? (() => ''), undefined, [values, show]);
    expect(wrong).toEqual([]);
  });

  it.each(codes)('%s names no unit but through its values', (code) => {
    const values = fc.sample(arbitraryOf(shapes[code] ?? {}), { numRuns: 1, seed: 1 })[0];
    const text = textTables.map((table) => table[code]).find((each) => typeof each === 'function');
    const written: unknown = Reflect.apply(text ?? (() => ''), undefined, [values, () => '#']);
    // A measure written into a text is in both systems or in none.
    const metric = /\d\s?(?:m|mm|cm|km|kg|L|kW|W|°C|K|kPa|metres?)\b/u.test(String(written));
    const us = /\d\s?(?:ft|in|lb|gal|Btu|tons?|°F|psi|feet|inch(?:es)?|foot)\b/u.test(String(written));
    expect([metric && !us, us && !metric && !/metre/u.test(String(written))]).toEqual([false, false]);
  });
});
