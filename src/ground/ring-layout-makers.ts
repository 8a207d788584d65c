import { demand, demandChoice, demandObject, locate } from '../errors/index.js';
import { arrange, LEAST_CUT, MOST_DEPTH, MOST_TRENCH_SPACING, MOST_TRENCHES } from './arrange.js';
import type { PipePosition } from './layout.js';
import type { OverlappedCoilSection, RingLayout, RingLayoutInput, RingTrenchSection } from './ring-layout.js';
import type { TrenchCount } from './sections.js';

const MOST_TURNS = 100_000;

/**
 * A coil lying flat on the floor of each trench, its rings drawn apart.
 *
 * @param section - rings, pitch and depth [m], turns, return, trenches and their spacing [m]
 * @returns the layout
 * @throws InputError when a number is out of its range or neighbouring trenches overlap
 * @remarks The trench is as wide as the rings. How much pipe goes in is {@link coilPipe}, how the ground answers {@link ringResponse}.
 * @example
 * ```ts @import.meta.vitest
 * const { inches, feet } = await import('../units/index.js');
 * const coil = { ringDiameter: inches(36), pitch: inches(10), depth: feet(6), turns: 40 };
 * expect(flatOverlappedCoil({ ...coil, trenches: 2, trenchSpacing: feet(12) }).type).toBe('flat-overlapped-coil');
 * ```
 */
export function flatOverlappedCoil(section: OverlappedCoilSection & TrenchCount): RingLayout {
  demandCoil(section, section.ringDiameter);
  demand('depth', 'length', section.depth, { above: 0, atMost: MOST_DEPTH });
  return { ...section, type: 'flat-overlapped-coil' };
}

/**
 * A coil standing upright in each narrow trench, its rings drawn apart.
 *
 * @param section - rings, pitch and depth of the centres [m], turns, return, trenches and their spacing [m]
 * @returns the layout
 * @throws InputError when a number is out of its range, the rings stand out of the ground or neighbouring trenches overlap
 * @example
 * ```ts @import.meta.vitest
 * const { inches, feet } = await import('../units/index.js');
 * const coil = { ringDiameter: inches(36), pitch: inches(17), turns: 40, trenches: 1, trenchSpacing: feet(12) };
 * expect(() => uprightOverlappedCoil({ ...coil, depth: feet(1) })).toThrow('stand out of the ground');
 * expect(uprightOverlappedCoil({ ...coil, depth: feet(4.5) }).type).toBe('upright-overlapped-coil');
 * ```
 */
export function uprightOverlappedCoil(section: OverlappedCoilSection & TrenchCount): RingLayout {
  demandCoil(section, 0);
  const hint = 'depth of the centres: the rings are taller than that and would stand out of the ground';
  demand('depth', 'length', section.depth, { above: section.ringDiameter / 2, atMost: MOST_DEPTH }, hint);
  return { ...section, type: 'upright-overlapped-coil' };
}

/**
 * Pipes round a closed ring of trench.
 *
 * @param section - diameter of the ring and the pipes of its cross-section [m]
 * @returns the layout
 * @throws InputError when a number is out of its range, two pipes lie in one place or a pipe would lie beyond the middle of the ring
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const pipes = [{ x: metres(-0.3), depth: metres(1.5) }, { x: metres(0.3), depth: metres(1.5) }];
 * expect(ringTrench({ ringDiameter: metres(12), pipes }).type).toBe('ring-trench');
 * ```
 */
export function ringTrench(section: RingTrenchSection): RingLayout {
  const { ringDiameter, pipes } = section;
  demand('ringDiameter', 'length', ringDiameter, { atLeast: 1, atMost: 1000 });
  arrange('custom', { trenches: 1, trenchSpacing: ringDiameter }, pipes);
  for (const [index, { x }] of pipes.entries())
    demand(`pipes.${String(index)}.x`, 'length', x, { atLeast: 0.1 - ringDiameter / 2 }, 'the pipe would lie beyond the middle of the ring');
  return { ...section, type: 'ring-trench' };
}

/**
 * The layout of a number of trenches whose coils a document gives.
 *
 * @param input - the coils or the ring
 * @param trenches - how many equal trenches run in parallel, 1 to 500; a closed ring is one
 * @returns the layout
 * @throws InputError when a depth or distance is out of its range, pipes lie on one another or trenches overlap
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const coil = { ringDiameter: metres(0.9), pitch: metres(0.25), depth: metres(1.8), trenchSpacing: metres(4) };
 * expect(ringLayoutFrom({ type: 'flat-overlapped-coil', ...coil }, 3)).toMatchObject({ trenches: 3, pitch: metres(0.25) });
 * ```
 */
export function ringLayoutFrom(input: RingLayoutInput, trenches: number): RingLayout {
  demandObject('input', input);
  demandChoice('type', input.type, ['flat-overlapped-coil', 'upright-overlapped-coil', 'ring-trench']);
  if (input.type === 'ring-trench') {
    demand('trenches', 'count', trenches, { atLeast: 1, atMost: 1 }, 'a closed ring of trench stands alone');
    return ringTrench({ ringDiameter: input.ringDiameter, pipes: input.pipes });
  }
  const { type, ...section } = input;
  return type === 'flat-overlapped-coil' ? flatOverlappedCoil({ ...section, trenches }) : uprightOverlappedCoil({ ...section, trenches });
}

/** Refuses a layout that its maker would refuse. */
export function demandRingLayout(layout: RingLayout): void {
  demandObject('layout', layout);
  locate('layout', () => {
    demandChoice('type', layout.type, ['flat-overlapped-coil', 'upright-overlapped-coil', 'ring-trench']);
    if (layout.type === 'ring-trench') ringTrench(layout);
    else if (layout.type === 'flat-overlapped-coil') flatOverlappedCoil(layout);
    else uprightOverlappedCoil(layout);
  });
}

function demandCoil(
  { ringDiameter, pitch, turns = 1, returnPipe, trenches, trenchSpacing }: OverlappedCoilSection & TrenchCount,
  width: number,
): void {
  demand('ringDiameter', 'length', ringDiameter, { atLeast: 0.1, atMost: 5 });
  demand('pitch', 'length', pitch, { atLeast: 0.01, atMost: 20 });
  demand('turns', 'count', turns, { atLeast: 1, atMost: MOST_TURNS });
  demand('trenches', 'count', trenches, { atLeast: 1, atMost: MOST_TRENCHES });
  if (returnPipe !== undefined) demandReturn(returnPipe);
  const side = returnPipe?.x ?? 0;
  const taken = trenches === 1 ? 0 : Math.max(width / 2, side) - Math.min(-width / 2, side);
  const hint = 'beyond the rings and the return the narrowest cut is 0.15 m: the trenches would run into one another';
  demand('trenchSpacing', 'length', trenchSpacing, { atLeast: taken + LEAST_CUT, atMost: MOST_TRENCH_SPACING }, hint);
}

function demandReturn(returnPipe: PipePosition): void {
  demandObject('returnPipe', returnPipe);
  demand('returnPipe.x', 'length', returnPipe.x, { atLeast: -MOST_DEPTH, atMost: MOST_DEPTH });
  demand('returnPipe.depth', 'length', returnPipe.depth, { above: 0, atMost: MOST_DEPTH });
}
