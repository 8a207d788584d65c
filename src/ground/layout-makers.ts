import { demand } from '../errors/index.js';
import type { Length } from '../units/index.js';
import { arrange, MOST_DEPTH } from './arrange.js';
import type { Layout, PipePosition } from './layout.js';
import type {
  CustomSection,
  FourPipeSection,
  OnePipeSection,
  SixPipeSection,
  TrenchCount,
  TwoPipeSideBySideSection,
  TwoPipeStackedSection,
} from './sections.js';

/**
 * One pipe in each trench.
 *
 * @param section - depth of the pipe axis [m], trenches and their spacing [m]
 * @returns the layout
 * @throws InputError when a number is out of its range
 * @example
 * ```ts @import.meta.vitest
 * const { feet } = await import('../units/index.js');
 * expect(onePipe({ depth: feet(6), trenches: 3, trenchSpacing: feet(10) }).pipesPerTrench).toBe(1);
 * ```
 */
export function onePipe(section: OnePipeSection & TrenchCount): Layout {
  demand('depth', 'length', section.depth, { above: 0, atMost: MOST_DEPTH });
  return arrange('one-pipe', section, layer(section.depth, [0]));
}

/**
 * Two pipes over one another in each trench: the lower one laid, part of the soil filled back, then the upper one.
 *
 * @param section - depths of the two axes [m], trenches and their spacing [m]
 * @returns the layout, the upper pipe first
 * @throws InputError when a number is out of its range or the upper pipe is not above the lower one
 * @example
 * ```ts @import.meta.vitest
 * const { feet } = await import('../units/index.js');
 * const { pipes } = twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), trenches: 4, trenchSpacing: feet(10) });
 * expect(pipes.map(({ depth }) => depth)).toEqual([feet(4), feet(6)]);
 * ```
 */
export function twoPipeStacked(section: TwoPipeStackedSection & TrenchCount): Layout {
  demandLayers(section);
  return arrange('two-pipe-stacked', section, [...layer(section.upperDepth, [0]), ...layer(section.lowerDepth, [0])]);
}

/**
 * Two pipes side by side on the floor of each trench.
 *
 * @param section - depth of the axes [m], their distance [m], trenches and their spacing [m]
 * @returns the layout
 * @throws InputError when a number is out of its range or neighbouring trenches overlap
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const { pipes } = twoPipeSideBySide({ depth: metres(1.5), spacing: metres(0.6), trenches: 2, trenchSpacing: metres(3) });
 * expect(pipes.map(({ x }) => x)).toEqual([-0.3, 0.3]);
 * ```
 */
export function twoPipeSideBySide(section: TwoPipeSideBySideSection & TrenchCount): Layout {
  demand('depth', 'length', section.depth, { above: 0, atMost: MOST_DEPTH });
  return arrange('two-pipe-side-by-side', section, layer(section.depth, pairOf(section.spacing)));
}

/**
 * Two layers of two pipes in each trench.
 *
 * @param section - depths of the layers [m], distance of the axes in a layer [m], trenches and their spacing [m]
 * @returns the layout, the upper layer first
 * @throws InputError when a number is out of its range, the layers are not in order or neighbouring trenches overlap
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const section = { upperDepth: metres(1.2), lowerDepth: metres(1.8), spacing: metres(0.6), trenches: 2, trenchSpacing: metres(4) };
 * expect(fourPipe(section).pipesPerTrench).toBe(4);
 * ```
 */
export function fourPipe(section: FourPipeSection & TrenchCount): Layout {
  demandLayers(section);
  const pair = pairOf(section.spacing);
  return arrange('four-pipe', section, [...layer(section.upperDepth, pair), ...layer(section.lowerDepth, pair)]);
}

/**
 * Three layers of two pipes in each trench.
 *
 * @param section - depths of the layers [m], distance of the axes in a layer [m], trenches and their spacing [m]
 * @returns the layout, the upper layer first
 * @throws InputError when a number is out of its range, the layers are not in order or neighbouring trenches overlap
 * @example
 * ```ts @import.meta.vitest
 * const { feet } = await import('../units/index.js');
 * const depths = { upperDepth: feet(3), middleDepth: feet(4), lowerDepth: feet(5) };
 * expect(sixPipe({ ...depths, spacing: feet(2), trenches: 1, trenchSpacing: feet(12) }).pipesPerTrench).toBe(6);
 * ```
 */
export function sixPipe(section: SixPipeSection & TrenchCount): Layout {
  demandLayers(section);
  demand('middleDepth', 'length', section.middleDepth, { above: section.upperDepth, below: section.lowerDepth });
  const pair = pairOf(section.spacing);
  const { upperDepth, middleDepth, lowerDepth } = section;
  return arrange('six-pipe', section, [...layer(upperDepth, pair), ...layer(middleDepth, pair), ...layer(lowerDepth, pair)]);
}

/**
 * Pipes anywhere in each trench.
 *
 * @param section - the pipes of one trench, trenches and their spacing [m]
 * @returns the layout
 * @throws InputError when a number is out of its range, there is no pipe, two pipes lie in one place or neighbouring trenches overlap
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const bench = [{ x: metres(-0.5), depth: metres(1.5) }, { x: metres(0.5), depth: metres(1.2) }];
 * expect(customLayout({ pipes: bench, trenches: 1, trenchSpacing: metres(3) }).pipesPerTrench).toBe(2);
 * ```
 */
export function customLayout(section: CustomSection & TrenchCount): Layout {
  return arrange('custom', section, section.pipes);
}

function demandLayers({ upperDepth, lowerDepth }: TwoPipeStackedSection): void {
  demand('upperDepth', 'length', upperDepth, { above: 0, atMost: MOST_DEPTH });
  demand('lowerDepth', 'length', lowerDepth, { above: upperDepth, atMost: MOST_DEPTH }, 'the lower pipe lies below the upper one');
}

function pairOf(spacing: Length): readonly number[] {
  demand('spacing', 'length', spacing, { above: 0, atMost: MOST_DEPTH });
  return [-spacing / 2, spacing / 2];
}

function layer(depth: Length, places: readonly number[]): readonly PipePosition[] {
  return places.map((x) => ({ x: sideways(x), depth }));
}

function sideways(x: number): Length {
  return x as Length;
}
