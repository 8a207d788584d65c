import { demand, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { Length, PipeLength, Shape } from '../units/index.js';
import { arrange, LEAST_CUT, MOST_DEPTH, MOST_TRENCHES } from './arrange.js';
import type { Layout } from './layout.js';
import type { AreaCollectorSection, TrenchCount, UnequalTrench, UnequalTrenchesSection } from './sections.js';

/**
 * Rows of pipe side by side at one depth below a plot that is dug off or filled over as a whole.
 *
 * To the ground it is {@link onePipe} in trenches as near as the rows.
 *
 * @param section - depth [m], rows as `trenches` and their distance [m]
 * @returns the layout, every row a trench of one pipe
 * @throws InputError when a number is out of its range
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * expect(areaCollector({ depth: metres(1.3), trenchSpacing: metres(0.6), trenches: 20 }).pipesPerTrench).toBe(1);
 * ```
 */
export function areaCollector(section: AreaCollectorSection & TrenchCount): Layout {
  demand('depth', 'length', section.depth, { above: 0, atMost: MOST_DEPTH });
  return arrange('one-pipe', section, [{ x: middle(0), depth: section.depth }]);
}

/** A plot that an area collector is laid below. */
export interface CollectorPlot {
  /** Across the rows, from one row distance up to 1e4 [m]. */
  readonly plotWidth: Length;
  /** Along the rows, 1 to 1e4 [m]. */
  readonly plotLength: Length;
  /** Distance between neighbouring rows, 0.15 to 100 [m]. */
  readonly trenchSpacing: Length;
}

/** Shape of {@link CollectorPlot}. */
export const collectorPlotShape: Shape<CollectorPlot> = { plotWidth: 'length', plotLength: 'length', trenchSpacing: 'length' };

/** What an area collector comes to. */
export interface CollectorRows extends TrenchCount {
  /** Pipe of all rows, without their bends [m]. */
  readonly pipeLength: PipeLength;
}

/**
 * The rows that a plot takes when half the distance of the rows stays free along both sides.
 *
 * @param plot - the plot and the distance of the rows [m]
 * @returns rows, as `trenches` of {@link areaCollector}, and their pipe [m]
 * @throws InputError when a number is out of its range or there would be more than 500 rows
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * expect(collectorRows({ plotWidth: metres(12), plotLength: metres(25), trenchSpacing: metres(0.6) })).toEqual({ trenches: 20, pipeLength: 500 });
 * ```
 */
export function collectorRows({ plotWidth, plotLength, trenchSpacing }: CollectorPlot): CollectorRows {
  demand('trenchSpacing', 'length', trenchSpacing, { atLeast: LEAST_CUT, atMost: 100 });
  demand('plotLength', 'length', plotLength, { atLeast: 1, atMost: 1e4 });
  demand('plotWidth', 'length', plotWidth, { atLeast: trenchSpacing, atMost: Math.min(1e4, MOST_TRENCHES * trenchSpacing) }, 'one to 500 rows');
  // A plot of just so many rows is not to lose one by rounding.
  const trenches = Math.floor(plotWidth / trenchSpacing + 1e-9);
  return { trenches, pipeLength: (trenches * plotLength) as PipeLength };
}

/**
 * Parallel trenches unlike in depth, distance or contents, all computed together; an extension beside an old loop is one case.
 *
 * @param section - the trenches, how often the group of them repeats and how far from one group to the next [m]
 * @returns the layout, all pipes of a group listed as those of one trench, sideways from the middle between its outermost trenches
 * @throws InputError when a number is out of its range, pipes lie in one place or trenches run into one another
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const pipe = (depth: number) => [{ x: metres(0), depth: metres(depth) }];
 * const trenchGroup = [{ across: metres(0), pipes: pipe(1.2) }, { across: metres(3), pipes: pipe(1.8) }];
 * const { pipes } = unequalTrenches({ trenchGroup, trenches: 1, trenchSpacing: metres(6) });
 * expect(pipes.map(({ x }) => x)).toEqual([-1.5, 1.5]);
 * ```
 */
export function unequalTrenches({ trenchGroup, trenches, trenchSpacing }: UnequalTrenchesSection & TrenchCount): Layout {
  demandCount('trenchGroup', trenchGroup, 1, 100);
  for (const [index, trench] of trenchGroup.entries())
    locate(`trenchGroup.${String(index)}`, () => {
      demandTrench(trench);
    });
  demandApart(trenchGroup);
  const places = trenchGroup.map(({ across }) => across);
  const centre = (Math.min(...places) + Math.max(...places)) / 2;
  const pipes = trenchGroup.flatMap((trench) => trench.pipes.map(({ x, depth }) => ({ x: middle(trench.across - centre + x), depth })));
  return arrange('custom', { trenches, trenchSpacing }, pipes);
}

function demandTrench(trench: UnequalTrench): void {
  demandObject('trench', trench);
  demand('across', 'length', trench.across, { atLeast: -2 * MOST_DEPTH, atMost: 2 * MOST_DEPTH });
  arrange('custom', { trenches: 1, trenchSpacing: middle(1) }, trench.pipes);
}

function demandApart(group: readonly UnequalTrench[]): void {
  const sides = group.map(({ across, pipes }, index) => {
    const places = pipes.map(({ x }) => across + x);
    return { index, from: Math.min(...places), to: Math.max(...places) };
  });
  sides.sort((a, b) => a.from - b.from);
  let reached = -Infinity;
  for (const { index, from, to } of sides) {
    if (from < reached + LEAST_CUT)
      throw new InputError({
        code: 'impossible',
        argument: `trenchGroup.${String(index)}.across`,
        value: { kind: 'length', value: group[index]?.across ?? 0 },
        allowed: 'trenches at least 0.15 m apart beyond their pipes',
        hint: 'the narrowest trencher cuts 0.15 m: the trenches would run into one another',
      });
    reached = Math.max(reached, to);
  }
}

function middle(x: number): Length {
  return x as Length;
}
