import { InputError } from '../errors/index.js';
import { solveSymmetric } from '../numerics/index.js';
import type { TreeStep } from './spanning-tree.js';

/** Drop along a link at a flow, both with a sign. */
export type DropOf = (link: number, flow: number) => number;

/** What {@link balanceLoops} needs. */
export interface LoopsToBalance {
  /** A flow of each link that conserves mass at every node. */
  readonly start: readonly number[];
  /** Independent loops. */
  readonly loops: readonly (readonly TreeStep[])[];
  readonly drop: DropOf;
  /** A flow of the size of those looked for. */
  readonly scale: number;
}

/** Share of the drops around a loop that may be left over; far below what any reading could tell. */
const CLOSED = 1e-12;
/** Newton's steps take about six; more means that some drop does not rise with its flow. */
const STEPS = 100;

/** Flows that conserve mass as the start does and whose drops add up to nothing around every loop. */
export function balanceLoops({ start, loops, drop, scale }: LoopsToBalance): readonly number[] {
  const around = (values: readonly number[]): number[] =>
    loops.map((loop) => loop.reduce((sum, { link, sign }) => sum + sign * (values[link] ?? 0), 0));
  const moved = (flows: readonly number[], by: readonly number[]): number[] => {
    const next = [...flows];
    for (const [index, loop] of loops.entries()) {
      for (const { link, sign } of loop) next[link] = (next[link] ?? 0) + sign * (by[index] ?? 0);
    }
    return next;
  };
  const dropsOf = (flows: readonly number[]): number[] => flows.map((flow, link) => drop(link, flow));

  // First as if every drop were proportional to its flow, which already shares the flow out.
  const resistances = start.map((_, link) => drop(link, scale) / scale);
  const proportional = start.map((flow, link) => (resistances[link] ?? 0) * flow);
  let flows = moved(start, step(loops, resistances, around(proportional)));
  let drops = dropsOf(flows);
  for (let count = 0; count < STEPS; count += 1) {
    const open = around(drops);
    const sizes = loops.map((loop) => loop.reduce((sum, { link }) => sum + Math.abs(drops[link] ?? 0), 0));
    if (open.every((rest, index) => Math.abs(rest) <= CLOSED * (sizes[index] ?? 0))) return flows;
    const by = step(loops, slopesOf(drop, flows, drops, scale), open);
    const along = (rest: readonly number[]): number => Math.abs(rest.reduce((sum, each, index) => sum + each * (by[index] ?? 0), 0));
    // A full step may overshoot where a regime changes: the drops along it tell, and half of it then does.
    let next = moved(flows, by);
    let then = dropsOf(next);
    for (let share = 0.5; share > 1e-6 && along(around(then)) > along(open); share /= 2) {
      next = moved(
        flows,
        by.map((each) => share * each),
      );
      then = dropsOf(next);
    }
    // Below the last bit of the flows nothing can move any more.
    if (next.every((flow, link) => Math.abs(flow - (flows[link] ?? 0)) <= 1e-14 * scale)) return next;
    [flows, drops] = [next, then];
  }
  throw new InputError({
    code: 'unreachable',
    argument: 'links',
    value: undefined,
    allowed: 'links whose drop rises steadily with their flow',
  });
}

/** Newton's step of the flows around the loops. */
function step(loops: readonly (readonly TreeStep[])[], slopes: readonly number[], open: readonly number[]): readonly number[] {
  const signs = loops.map((loop) => new Map(loop.map(({ link, sign }) => [link, sign])));
  const matrix = loops.map((loop, row) =>
    signs.slice(0, row + 1).map((other) => loop.reduce((sum, { link, sign }) => sum + sign * (other.get(link) ?? 0) * (slopes[link] ?? 0), 0)),
  );
  const by = solveSymmetric(
    matrix,
    open.map((rest) => -rest),
  );
  if (by.every(Number.isFinite)) return by;
  throw new InputError({
    code: 'impossible',
    argument: 'links',
    value: undefined,
    allowed: 'some loss in every loop',
    hint: 'links without loss side by side leave it open how the flow splits over them',
  });
}

/** Rise of each drop with its flow, over a reach that rounding leaves alone. */
function slopesOf(drop: DropOf, flows: readonly number[], drops: readonly number[], scale: number): readonly number[] {
  return flows.map((flow, link) => {
    const reach = 1e-6 * Math.max(Math.abs(flow), 1e-3 * scale);
    return (drop(link, flow + reach) - (drops[link] ?? 0)) / reach;
  });
}
