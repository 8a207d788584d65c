import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  customLayout,
  fourPipe,
  layoutFrom,
  type LayoutInput,
  layoutInputShape,
  onePipe,
  sixPipe,
  twoPipeSideBySide,
  twoPipeStacked,
} from '../../src/ground/index.js';
import { type Length, metres } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const trenchSpacing = metres(3);
const layers = { upperDepth: metres(1.2), lowerDepth: metres(1.8), trenchSpacing };
const INPUTS: readonly LayoutInput[] = [
  { type: 'one-pipe', depth: metres(1.5), trenchSpacing },
  { type: 'two-pipe-stacked', ...layers },
  { type: 'two-pipe-side-by-side', depth: metres(1.5), spacing: metres(0.6), trenchSpacing },
  { type: 'four-pipe', ...layers, spacing: metres(0.6) },
  { type: 'six-pipe', ...layers, middleDepth: metres(1.5), spacing: metres(0.6) },
  {
    type: 'custom',
    pipes: [
      { x: metres(-0.2), depth: metres(1.4) },
      { x: metres(0.4), depth: metres(1.7) },
    ],
    trenchSpacing,
  },
  { type: 'area-collector', depth: metres(1.3), trenchSpacing: metres(0.6) },
  {
    type: 'unequal-trenches',
    trenchGroup: [
      { across: metres(0), pipes: [{ x: metres(0.1), depth: metres(1.2) }] },
      { across: metres(1.5), pipes: [-0.2, 0.2].map((x) => ({ x: metres(x), depth: metres(1.8) })) },
    ],
    trenchSpacing,
  },
];

/** What counts as something simpler once laid. */
const NAMES: Readonly<Partial<Record<LayoutInput['type'], string>>> = { 'area-collector': 'one-pipe', 'unequal-trenches': 'custom' };

describe('layouts', () => {
  it('refuse every impossible field by its name', () => {
    const [first = INPUTS[0], ...more] = INPUTS;
    if (first === undefined) throw new Error('no example');
    refuses((input) => layoutFrom(input, 3), layoutInputShape, first, { more });
  });

  it.each([0, -1, 1.5, Number.NaN, Infinity, 501])('refuse %s trenches', (trenches) => {
    expect(() => layoutFrom({ type: 'one-pipe', depth: metres(1.5), trenchSpacing }, trenches)).toThrow(/trenches/u);
  });

  it('refuse it where a caller makes them without a document, too', () => {
    const shape = { depth: 'length', trenchSpacing: 'length', trenches: 'count' } as const;
    refuses(onePipe, shape, { depth: metres(1.5), trenchSpacing, trenches: 3 });
  });

  it('carry their name, their trenches and as many pipes as they say', () => {
    expect(INPUTS.map((input) => layoutFrom(input, 4).pipesPerTrench)).toEqual([1, 2, 2, 4, 6, 2, 1, 3]);
    for (const input of INPUTS) {
      const layout = layoutFrom(input, 4);
      expect([layout.name, layout.trenches, layout.trenchSpacing]).toEqual([NAMES[input.type] ?? input.type, 4, input.trenchSpacing]);
      expect(layout.pipes.length).toBe(layout.pipesPerTrench);
    }
  });

  it('put two layers of one pair over one another', () => {
    const place = (x: number, depth: number): { x: Length; depth: Length } => ({ x: metres(x), depth: metres(depth) });
    expect(fourPipe({ ...layers, spacing: metres(0.6), trenches: 1 }).pipes).toEqual([
      place(-0.3, 1.2),
      place(0.3, 1.2),
      place(-0.3, 1.8),
      place(0.3, 1.8),
    ]);
  });

  it('refuse layers out of order, pipes in one place and trenches that run into one another', () => {
    expect(() => twoPipeStacked({ ...layers, lowerDepth: metres(1.2), trenches: 1 })).toThrow(/lowerDepth.*the lower pipe lies below/u);
    expect(() => sixPipe({ ...layers, middleDepth: metres(1.8), spacing: metres(0.5), trenches: 1 })).toThrow(/middleDepth/u);
    const twice = { x: metres(0), depth: metres(1) };
    expect(() => customLayout({ pipes: [twice, twice], trenches: 1, trenchSpacing })).toThrow(/pipes\.1\.depth.*same place/u);
    const wide = { depth: metres(1.5), spacing: metres(3), trenchSpacing };
    expect(() => twoPipeSideBySide({ ...wide, trenches: 2 })).toThrow(/trenchSpacing.*run into one another/u);
    expect(twoPipeSideBySide({ ...wide, trenches: 1 }).pipesPerTrench).toBe(2);
  });

  it('lie symmetric to the middle of the trench', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 2, noNaN: true }), (spacing) => {
        const { pipes } = twoPipeSideBySide({ depth: metres(1.5), spacing: metres(spacing), trenches: 2, trenchSpacing });
        expect(pipes.reduce((sum, { x }) => sum + x, 0)).toBe(0);
      }),
    );
  });
});

describe('spacing of trenches', () => {
  it.each(INPUTS)('of $type is at least the narrowest cut beyond the pipes', (input) => {
    const across = layoutFrom(input, 2).pipes.map(({ x }) => x);
    const least = Math.max(...across) - Math.min(...across) + 0.15;
    expect(() => layoutFrom({ ...input, trenchSpacing: metres(least - 0.01) }, 2)).toThrow(/^trenchSpacing: .*run into one another/u);
    expect(layoutFrom({ ...input, trenchSpacing: metres(least + 1e-9) }, 2).trenches).toBe(2);
    expect(() => layoutFrom({ ...input, trenchSpacing: metres(0.1) }, 1)).toThrow(/^trenchSpacing/u);
  });
});
