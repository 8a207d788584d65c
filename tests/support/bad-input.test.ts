import { describe, expect, it } from 'vitest';
import { demand, demandChoice, InputError } from '../../src/errors/index.js';
import { celsius, type Length, metres, type Shape, type Temperature } from '../../src/units/index.js';
import { corruptions, faultsOf, refuses } from './bad-input.js';
import { everyNumberFinite, notFinite } from './finite.js';

interface Hole {
  readonly depth: Length;
  readonly use: 'test' | 'drain';
  readonly water?: Temperature;
}
const holeShape: Shape<Hole> = { depth: 'length', use: ['test', 'drain'], water: { optional: 'temperature' } };
const hole: Hole = { depth: metres(2), use: 'test', water: celsius(9) };

/** Refuses all it should. */
function careful({ depth, use, water = celsius(10) }: Hole): { readonly wet: number } {
  demand('depth', 'length', depth, { above: 0, atMost: 100 });
  demandChoice('use', use, ['test', 'drain']);
  demand('water', 'temperature', water, { atLeast: 0, atMost: 100 });
  return { wet: depth * water };
}

describe('corruptions', () => {
  it('has every fault of every place, and nothing else changed', () => {
    const all = corruptions({ ...holeShape }, hole);
    expect(all.map(({ path, fault }) => `${path} ${fault}`)).toEqual([
      ...['absent', 'null', 'NaN', 'Infinity', '-Infinity', '1e308', '-1e308', 'a text'].map((fault) => `depth ${fault}`),
      ...['absent', 'null', 'an unknown choice', 'a number'].map((fault) => `use ${fault}`),
      ...['null', 'NaN', 'Infinity', '-Infinity', '1e308', '-1e308', 'a text'].map((fault) => `water ${fault}`),
    ]);
    expect(all[0]?.input).toEqual({ use: 'test', water: 9 });
    expect(all[2]?.input).toEqual({ depth: NaN, use: 'test', water: 9 });
    expect(all.filter(({ kind }) => kind === 'absurd').map(({ fault }) => fault)).toEqual(['1e308', '-1e308', '1e308', '-1e308']);
  });

  it('walks lists, unions, objects, counts and flags', () => {
    const node = {
      by: 'from',
      oneOf: { log: { layers: { list: { top: 'length' } }, pits: 'count', dug: 'flag', note: 'text' }, book: { soil: { k: 'conductivity' } } },
    } as const;
    const log = corruptions(node, { from: 'log', layers: [{ top: 0 }, { top: 1 }], pits: 2, dug: true, note: 'x' });
    const places = [...new Set(log.map(({ path }) => path))];
    expect(places).toEqual(['from', 'layers', 'layers.0', 'layers.0.top', 'layers.1', 'layers.1.top', 'pits', 'dug', 'note']);
    expect(log.find(({ path, fault }) => path === 'layers.1.top' && fault === 'NaN')?.input).toEqual({
      from: 'log',
      layers: [{ top: 0 }, { top: NaN }],
      pits: 2,
      dug: true,
      note: 'x',
    });
    expect(log.find(({ path, fault }) => path === 'layers' && fault === 'empty')?.input).toMatchObject({ layers: [] });
    expect(log.find(({ path, fault }) => path === 'pits' && fault === 'a broken number')?.input).toMatchObject({ pits: 2.5 });
    expect(corruptions(node, { from: 'book', soil: { k: 1 } }).filter(({ path }) => path === 'soil')).toHaveLength(3);
  });

  it('wants an example that holds what it corrupts', () => {
    expect(() => corruptions({ depth: 'length' }, {})).toThrow('the example lacks depth');
    expect(() => corruptions({ layers: { list: 'length' } }, { layers: [] })).toThrow('nothing in the list layers');
  });
});

describe('refuses', () => {
  it('is content with a careful function', () => {
    refuses(careful, holeShape, hole);
  });

  it.each<[string, (input: Hole) => unknown, string]>([
    ['a function that lets NaN through', ({ depth }) => ({ depth }), 'depth NaN: gives NaN in the result.depth'],
    ['a function that answers without looking', () => ({ depth: 1 }), 'depth NaN: accepted'],
    ['a text taken for a number', (input) => careful({ ...input, depth: metres(Number(input.depth)) }), 'depth a text: accepted'],
    ['an unknown choice', (input) => careful({ ...input, use: 'test' }), 'use an unknown choice: accepted'],
    ['an error of another sort', () => [].reduce((a) => a), 'throws TypeError'],
    [
      'a refusal in another name',
      (input) => {
        demand('width', 'length', input.depth, { above: 0, atMost: 9 });
        return careful(input);
      },
      'depth NaN: refused in the name of "width"',
    ],
    ['an overflow', ({ depth, use }) => careful({ depth: metres(Math.min(depth * 10, 50)), use }).wet * depth * depth, 'depth 1e308: gives Infinity'],
  ])('sees %s', (_, run, fault) => {
    const caught = ((): string => {
      try {
        return faultsOf(run, holeShape, hole).join('\n');
      } catch (error) {
        return `throws ${String(error)}`;
      }
    })();
    expect(caught).toContain(fault);
  });

  it('wants every optional field and union member in an example', () => {
    expect(faultsOf(careful, holeShape, { depth: metres(2), use: 'test' })).toEqual(['no example has water']);
    type Either = { readonly from: 'a'; readonly depth: Length } | { readonly from: 'b'; readonly depth: Length };
    const either: Shape<Either> = {
      by: 'from',
      oneOf: { a: { depth: 'length' }, b: { depth: 'length' } },
    };
    const run = (input: Either): Length => {
      demandChoice('from', input.from, ['a', 'b']);
      return careful({ depth: input.depth, use: 'test' }) && input.depth;
    };
    expect(faultsOf(run, either, { from: 'a', depth: metres(1) })).toEqual(['no example has from=b']);
    expect(faultsOf(run, either, { from: 'a', depth: metres(1) }, { more: [{ from: 'b', depth: metres(1) }] })).toEqual([]);
  });

  it('passes over a field said to be unused, and says when it is used after all', () => {
    const blind = ({ depth }: Hole): unknown => careful({ depth, use: 'test' });
    expect(faultsOf(blind, holeShape, hole, { unused: { use: 'same for both', water: 'not here' } })).toEqual([]);
    expect(faultsOf(careful, holeShape, hole, { unused: { use: 'same for both' } })).toEqual([
      'use is said to be unused, but every fault in it is refused',
    ]);
  });

  it('takes an absurd refusal under any name, but no other error', () => {
    const other = (input: Hole): unknown => {
      if (Math.abs(input.depth) === 1e308) throw new InputError({ code: 'impossible', argument: 'use', value: undefined, allowed: 'less' });
      return careful(input);
    };
    expect(faultsOf(other, holeShape, hole)).toEqual([]);
  });
});

describe('finite numbers', () => {
  it('looks into lists, maps, typed arrays and objects', () => {
    expect(everyNumberFinite({ a: [1, { b: 2 }], c: 'NaN', d: null, e: undefined, f: new Float64Array(3), g: new Map([['x', 1]]) })).toBe(true);
    expect(notFinite({ a: [1, { b: NaN }] })).toBe('NaN in the result.a.1.b');
    expect(everyNumberFinite(new Float64Array([1, Infinity]))).toBe(false);
    expect(everyNumberFinite(new Map([['x', -Infinity]]))).toBe(false);
    expect(everyNumberFinite(NaN)).toBe(false);
  });
});
