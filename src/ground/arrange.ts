import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Length } from '../units/index.js';
import type { Layout, LayoutName, PipePosition } from './layout.js';
import type { TrenchCount } from './sections.js';

/** Greatest depth and greatest half-width of a trench accepted [m]; deeper is a borehole. */
export const MOST_DEPTH: number = 50;
const MOST_PIPES = 100;
/** Most trenches of one layout. */
export const MOST_TRENCHES = 500;
/** Greatest distance of trenches accepted [m]. */
export const MOST_TRENCH_SPACING = 1000;
/** The narrowest cut that a chain trencher makes, common practice; nearer trenches are one trench [m]. */
export const LEAST_CUT = 0.15;

/**
 * Puts pipes into equal, parallel trenches and refuses what cannot be dug: pipes above ground or in one place, trenches
 * that run into one another.
 *
 * @param name - which layout it is
 * @param rows - number of trenches and their spacing [m]
 * @param pipes - the pipes of one trench
 * @returns the layout
 * @throws InputError naming the field
 */
export function arrange(name: LayoutName, rows: TrenchCount & { readonly trenchSpacing: Length }, pipes: readonly PipePosition[]): Layout {
  const { trenches, trenchSpacing } = rows;
  demandCount('pipes', pipes, 1, MOST_PIPES);
  for (const [index, pipe] of pipes.entries()) demandPipe(`pipes.${String(index)}`, pipe, pipes.slice(0, index));
  demand('trenches', 'count', trenches, { atLeast: 1, atMost: MOST_TRENCHES });
  const across = pipes.map(({ x }) => x);
  const width = trenches === 1 ? 0 : Math.max(...across) - Math.min(...across);
  const hint = 'the narrowest trencher cuts 0.15 m, and the pipes of a trench lie side by side beyond that: the trenches would run into one another';
  demand('trenchSpacing', 'length', trenchSpacing, { atLeast: width + LEAST_CUT, atMost: MOST_TRENCH_SPACING }, hint);
  return { name, pipes, pipesPerTrench: pipes.length, trenches, trenchSpacing };
}

function demandPipe(argument: string, pipe: PipePosition, earlier: readonly PipePosition[]): void {
  demandObject(argument, pipe);
  const { x, depth } = pipe;
  demand(`${argument}.x`, 'length', x, { atLeast: -MOST_DEPTH, atMost: MOST_DEPTH });
  demand(`${argument}.depth`, 'length', depth, { above: 0, atMost: MOST_DEPTH });
  if (earlier.some((other) => other.x === x && other.depth === depth))
    throw new InputError({
      code: 'impossible',
      argument: `${argument}.depth`,
      value: { kind: 'length', value: depth },
      allowed: 'pipes in different places',
      hint: 'an earlier pipe of the trench lies in the same place',
    });
}
