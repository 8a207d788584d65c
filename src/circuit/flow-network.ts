import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Flow, Pressure, Shape } from '../units/index.js';
import { balanceLoops, type DropOf } from './balance-loops.js';
import { type LinkEnds, loopOf, spanningTree } from './spanning-tree.js';

/** A pipe of a network, or whatever else drops pressure between two nodes. */
export interface NetworkLink extends LinkEnds {
  /** Pressure drop of a flow of 0 or more along it, 0 at none and rising with it; the same backwards [Pa]. */
  readonly dropAt: (flow: Flow) => Pressure;
}

/** What {@link solveFlowNetwork} needs. */
export interface FlowNetworkInput {
  /** What flows in at each node from outside, out where negative, −1000 to 1000; 2 to 1000 nodes, adding up to 0, all of them 0 or not all below 1e-12 [m3/s]. */
  readonly inflows: readonly Flow[];
  /** What joins the nodes, 1 to 3000 links. */
  readonly links: readonly NetworkLink[];
}

/** A network in balance. */
export interface FlowNetwork {
  /** Flow of each link, negative where it runs from `to` to `from` [m3/s]. */
  readonly flows: readonly Flow[];
  /** Pressure drop along each link, with the sign of its flow [Pa]. */
  readonly drops: readonly Pressure[];
  /** How far each node lies below the first in pressure [Pa]. */
  readonly nodeDrops: readonly Pressure[];
}

/** Shape of {@link FlowNetwork}. */
export const flowNetworkShape: Shape<FlowNetwork> = { flows: { list: 'flow' }, drops: { list: 'pressure' }, nodeDrops: { list: 'pressure' } };

/** Less than this is a slip, not a flow, and its square is lost in rounding [m3/s]. */
const LEAST_FLOW = 1e-12;

/**
 * How flow splits over a network of pipes, with loops and diagonals.
 *
 * What flows into a node flows out of it, and around every loop the drops add up to nothing. A link's flow comes with its sign: in a
 * diagonal it may run against the guess.
 *
 * @param input - see {@link FlowNetworkInput}
 * @returns flow and drop of each link, drop from the first node to each [m3/s, Pa]
 * @throws InputError for a value out of its range; `impossible` when the inflows do not add up to 0 within 1e-9 of what flows in, a node is cut off, or
 *   a loop of links without loss leaves the flow open; `unreachable` for a link whose drop does not rise with its flow
 * @remarks
 * Newton's method on the flows around the loops of a spanning tree: mass is conserved by construction, and where drops rise with flows the
 * balance is the one minimum of a convex function. Checked against a network with a diagonal solved by two other methods (H-NET), and a bridge
 * turned over. Invariants tested: mass at every node to 1e-12, loops to 1e-9 of their drops, all inflows turned round turn all flows round.
 * @example
 * ```ts @import.meta.vitest
 * const { litresPerSecond, pascals } = await import('../units/index.js');
 * const square = (factor: number) => (flow: number) => pascals(factor * (flow * 1000) ** 2);
 * const { flows } = solveFlowNetwork({
 *   inflows: [litresPerSecond(0.9), litresPerSecond(-0.9)],
 *   links: [
 *     { from: 0, to: 1, dropAt: square(1000) },
 *     { from: 0, to: 1, dropAt: square(4000) },
 *   ],
 * });
 * expect(flows.map((flow) => Number(litresPerSecond.of(flow).toFixed(9)))).toEqual([0.6, 0.3]);
 * ```
 */
export function solveFlowNetwork({ inflows, links }: FlowNetworkInput): FlowNetwork {
  demandNetwork({ inflows, links });
  const scale = inflows.reduce((sum, inflow) => sum + Math.max(inflow, 0), 0);
  const tree = spanningTree(inflows.length, links);
  const start = links.map(() => 0);
  for (const [node, path] of tree.paths.entries()) {
    for (const { link, sign } of path) start[link] = (start[link] ?? 0) - sign * (inflows[node] ?? 0);
  }
  const drop: DropOf = (link, flow) => {
    const size = links[link]?.dropAt(Math.abs(flow) as Flow) ?? 0;
    demand(`links.${String(link)}.dropAt`, 'pressure', size, { atLeast: 0 });
    return flow < 0 ? -size : size;
  };
  const loops = tree.chords.map((chord) => loopOf(tree, links, chord));
  const flows = scale === 0 ? start : balanceLoops({ start, loops, drop, scale });
  const drops = flows.map((flow, link) => drop(link, flow));
  const nodeDrops = tree.paths.map((path) => path.reduce((sum, { link, sign }) => sum + sign * (drops[link] ?? 0), 0));
  return { flows: flows as Flow[], drops: drops as Pressure[], nodeDrops: nodeDrops as Pressure[] };
}

function demandNetwork({ inflows, links }: FlowNetworkInput): void {
  demandCount('inflows', inflows, 2, 1000);
  demandCount('links', links, 1, 3000);
  for (const [index, inflow] of inflows.entries()) demand(`inflows.${String(index)}`, 'flow', inflow, { atLeast: -1e3, atMost: 1e3 });
  for (const [index, link] of links.entries()) {
    demandObject(`links.${String(index)}`, link);
    demand(`links.${String(index)}.from`, 'count', link.from, { atLeast: 0, atMost: inflows.length - 1 });
    demand(`links.${String(index)}.to`, 'count', link.to, { atLeast: 0, atMost: inflows.length - 1 });
    if (link.from === link.to) throw refusal(`links.${String(index)}.to`, link.to, 'another node than the one where the link begins');
  }
  const through = inflows.reduce((sum, inflow) => sum + Math.abs(inflow), 0);
  if (through > 0) demand('inflows', 'flow', through, { atLeast: LEAST_FLOW }, 'this is all that flows in or out, added up');
  const left = inflows.reduce((sum, inflow) => sum + inflow, 0);
  if (Math.abs(left) <= 1e-9 * through) return;
  throw new InputError({
    code: 'impossible',
    argument: 'inflows',
    value: { kind: 'flow', value: left },
    allowed: 'inflows that add up to 0, with what flows out as negative',
  });
}

const refusal = (argument: string, value: number, allowed: string): InputError =>
  new InputError({ code: 'impossible', argument, value: { kind: 'count', value }, allowed });
