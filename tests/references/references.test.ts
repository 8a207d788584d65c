import { describe, expect, it } from 'vitest';
import { type Reference, REFERENCES } from '../../src/references/index.js';
import { loadSource, sourceFiles } from '../support/sources.js';

const entries = Object.entries<Reference>(REFERENCES);
const tables = await Promise.all(
  sourceFiles('references/')
    .filter(({ path }) => path.endsWith('.data.ts'))
    .map(async ({ path }) => ({ path, records: Object.entries(Object.assign({}, ...Object.values(await loadSource(path)))) })),
);

describe('the bibliography', () => {
  it.each(entries)('%s says what it is and how it was seen', (key, reference) => {
    expect(key).toMatch(/^[a-z][A-Za-z0-9]*$/u);
    expect(reference.cite.trim().length).toBeGreaterThan(10);
    expect(['original', 'quoted', 'from memory']).toContain(reference.seen);
    if (reference.seen !== 'from memory') expect(reference.at.trim().length).toBeGreaterThan(3);
    else expect('at' in reference).toBe(false);
  });

  it('keeps every record of every room under a key of its own', () => {
    const keys = tables.flatMap(({ records }) => records.map(([key]) => key));
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
    expect([...keys].sort()).toEqual(entries.map(([key]) => key).sort());
    expect(keys.length).toBeGreaterThan(10);
  });

  it('holds no work twice', () => {
    const works = entries.map(([, { cite }]) => cite.toLowerCase().replace(/[^a-z0-9]/gu, ''));
    expect(works.filter((work, index) => works.indexOf(work) !== index)).toEqual([]);
  });

  it('holds nothing that no line of the library names', () => {
    const naming = sourceFiles().filter(({ path }) => !path.startsWith('references/'));
    expect(entries.map(([key]) => key).filter((key) => !naming.some(({ text }) => new RegExp(`\\b${key}\\b`, 'u').test(text)))).toEqual([]);
  });

  it('holds whatever a line of the library names as its source', () => {
    // What the trade does has no record; in a shape the word is the form of the field.
    const elsewhere = new Set(['common practice', 'text']);
    const named = sourceFiles().flatMap(({ path, text }) => [...text.matchAll(/\bsource: '([^']+)'/gu)].map(([, key = '']) => ({ path, key })));
    expect(named.filter(({ key }) => !elsewhere.has(key) && !Object.hasOwn(REFERENCES, key))).toEqual([]);
  });

  it('names no place on a machine', () => {
    for (const [, reference] of entries) expect(JSON.stringify(reference)).not.toMatch(/\/(?:work|tmp|home|usr)\/|\.md\b/u);
  });
});
