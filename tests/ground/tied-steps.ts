import { cylinderWall } from '../../src/numerics/index.js';
import { e1, type Point } from '../support/line-source.js';

/** Pipes for which the shares of heat are stepped through time; lengths in m, diffusivity 1. */
export interface SteppedPipes {
  readonly pipes: readonly Point[];
  readonly radius: number;
  readonly sealed: boolean;
}

const at = (list: ArrayLike<number>, index: number): number => list[index] ?? Number.NaN;

/** Solves a system of equations by elimination; no pivots, since all but the last row are those of a positive definite one. */
function solve(rows: readonly number[][]): number[] {
  const size = rows.length;
  for (const [k, pivot] of rows.entries())
    for (const row of rows.slice(k + 1)) {
      const factor = at(row, k) / at(pivot, k);
      for (let j = k; j <= size; j += 1) row[j] = at(row, j) - factor * at(pivot, j);
    }
  const solution: number[] = [];
  for (const [k, row] of [...rows.entries()].reverse()) {
    const rest = solution.reduce((sum, found, j) => sum + found * at(row, k + 1 + j), 0);
    solution.unshift((at(row, size) - rest) / at(row, k));
  }
  return solution;
}

/**
 * Rise · 4πk of walls that share one temperature, per heat of the mean pipe, at the ends of the steps: the heat of each pipe is constant within a step and such that the
 * walls are equal at its end. Off by the first order of the step.
 */
function stepped({ pipes, radius, sealed }: SteppedPipes, ends: readonly number[]): number[] {
  const size = pipes.length;
  const rises = (spread: number): number[][] =>
    pipes.map(([x, z], i) =>
      pipes.map(([u, w], j) => {
        if (spread <= 0) return 0;
        const line = (square: number): number => e1(square / (4 * spread));
        const own = 4 * Math.PI * cylinderWall(spread / radius ** 2);
        const image = line((x - u) ** 2 + (z + w) ** 2);
        return (i === j ? own : line((x - u) ** 2 + (z - w) ** 2)) + (sealed ? image : -image);
      }),
    );
  const heats: number[][] = [];
  return ends.map((end, m) => {
    const before: number[] = pipes.map(() => 0);
    for (const [l, heat] of heats.entries()) {
      const [since, until] = [rises(end - (ends[l - 1] ?? 0)), rises(end - at(ends, l))];
      for (let i = 0; i < size; i += 1)
        for (let j = 0; j < size; j += 1) before[i] = at(before, i) + (at(since[i] ?? [], j) - at(until[i] ?? [], j)) * at(heat, j);
    }
    const now = rises(end - (ends[m - 1] ?? 0));
    const solution = solve([...now.map((row, i) => [...row, -1, -at(before, i)]), [...pipes.map(() => 1), 0, size]]);
    heats.push(solution.slice(0, size));
    return at(solution, size);
  });
}

/**
 * The same at decades of diffusivity · time [m2], in steps that grow evenly and are halved once, so that what the first order is off drops out. Written apart from the
 * library, which does not step, as a second way to the response.
 */
export function tiedRises(pipes: SteppedPipes, first: number, decades: number, perDecade: number): number[] {
  const [coarse, fine] = [perDecade, 2 * perDecade].map((steps) => {
    const ends = Array.from({ length: decades * steps + 1 }, (_, m) => first * 10 ** (m / steps));
    return stepped(pipes, ends).filter((_, m) => m % steps === 0);
  });
  return Array.from({ length: decades + 1 }, (_, decade) => 2 * at(fine ?? [], decade) - at(coarse ?? [], decade));
}
