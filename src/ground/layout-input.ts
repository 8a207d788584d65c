import { demandChoice } from '../errors/index.js';
import type { Shape } from '../units/index.js';
import { areaCollector, unequalTrenches } from './field-makers.js';
import { customLayout, fourPipe, onePipe, sixPipe, twoPipeSideBySide, twoPipeStacked } from './layout-makers.js';
import { type Layout, pipePositionShape } from './layout.js';
import type {
  AreaCollectorSection,
  CustomSection,
  FourPipeSection,
  OnePipeSection,
  SixPipeSection,
  TwoPipeSideBySideSection,
  TwoPipeStackedSection,
  UnequalTrenchesSection,
} from './sections.js';

/** The cross-section of the trenches as a document gives it; how many trenches there are is for the sizing to find. */
export type LayoutInput =
  | ({ readonly type: 'one-pipe' } & OnePipeSection)
  | ({ readonly type: 'two-pipe-stacked' } & TwoPipeStackedSection)
  | ({ readonly type: 'two-pipe-side-by-side' } & TwoPipeSideBySideSection)
  | ({ readonly type: 'four-pipe' } & FourPipeSection)
  | ({ readonly type: 'six-pipe' } & SixPipeSection)
  | ({ readonly type: 'custom' } & CustomSection)
  | ({ readonly type: 'area-collector' } & AreaCollectorSection)
  | ({ readonly type: 'unequal-trenches' } & UnequalTrenchesSection);

/** Shape of {@link LayoutInput}. */
export const layoutInputShape: Shape<LayoutInput> = {
  by: 'type',
  oneOf: {
    'one-pipe': { depth: 'length', trenchSpacing: 'length' },
    'two-pipe-stacked': { upperDepth: 'length', lowerDepth: 'length', trenchSpacing: 'length' },
    'two-pipe-side-by-side': { depth: 'length', spacing: 'length', trenchSpacing: 'length' },
    'four-pipe': { upperDepth: 'length', lowerDepth: 'length', spacing: 'length', trenchSpacing: 'length' },
    'six-pipe': { upperDepth: 'length', middleDepth: 'length', lowerDepth: 'length', spacing: 'length', trenchSpacing: 'length' },
    custom: { pipes: { list: pipePositionShape }, trenchSpacing: 'length' },
    'area-collector': { depth: 'length', trenchSpacing: 'length' },
    'unequal-trenches': { trenchGroup: { list: { across: 'length', pipes: { list: pipePositionShape } } }, trenchSpacing: 'length' },
  },
};

/**
 * The layout of a number of trenches whose cross-section a document gives.
 *
 * @param input - the cross-section
 * @param trenches - how many equal trenches, rows of a collector or groups of unequal trenches run in parallel, 1 to 500
 * @returns the layout
 * @throws InputError when a depth or distance is out of its range, pipes lie on one another or trenches overlap
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const layout = layoutFrom({ type: 'two-pipe-stacked', upperDepth: metres(1.2), lowerDepth: metres(1.8), trenchSpacing: metres(3) }, 4);
 * expect(layout.pipesPerTrench * layout.trenches).toBe(8);
 * ```
 */
export function layoutFrom(input: LayoutInput, trenches: number): Layout {
  demandChoice('type', input.type, Object.keys(layoutInputShape.oneOf));
  switch (input.type) {
    case 'one-pipe':
      return onePipe({ ...input, trenches });
    case 'two-pipe-stacked':
      return twoPipeStacked({ ...input, trenches });
    case 'two-pipe-side-by-side':
      return twoPipeSideBySide({ ...input, trenches });
    case 'four-pipe':
      return fourPipe({ ...input, trenches });
    case 'six-pipe':
      return sixPipe({ ...input, trenches });
    case 'custom':
      return customLayout({ ...input, trenches });
    case 'area-collector':
      return areaCollector({ ...input, trenches });
    case 'unequal-trenches':
      return unequalTrenches({ ...input, trenches });
  }
}
