import { demandCount } from '../errors/index.js';
import { solveSymmetric } from '../numerics/index.js';
import { groupPairs, type PipePlaces, riseFrom, squaredDistances } from './pairs.js';
import type { StepKernel } from './step-kernel.js';

/** What walls that share one temperature do when the pipes give off one watt per metre in the mean. */
export interface TiedRise {
  /** Rise · 4πk of the walls [1]. */
  readonly rise: number;
  /** How far the mean of the walls would be above it if all pipes gave off the same heat [1]. */
  readonly excess: number;
  /** Heat of each pipe over the mean, trench by trench [1]. */
  readonly heatShares: readonly (readonly number[])[];
}

interface BuriedPipe {
  readonly x: number;
  readonly depth: number;
  readonly trench: number;
  /** Among all pipes, trench by trench. */
  readonly index: number;
}

/** A pipe, and the one opposite that symmetry makes its like. */
type Alike = readonly [pipe: BuriedPipe] | readonly [pipe: BuriedPipe, twin: BuriedPipe];

/** Most pipes for which the system of equations is solved. */
const MOST_PIPES = 400;

/**
 * Pipes whose walls share one temperature, ready to be asked with any kernel that is positive definite: of a steady state, of a transfer function. Their heats solve
 * one system of equations, in which pipes opposite to one another are one unknown where the whole is symmetric.
 *
 * @param places - where the pipes lie, 400 at most
 * @returns what a kernel makes of them
 * @throws InputError for more pipes
 */
export function tiedPipes(places: PipePlaces): (kernel: StepKernel) => TiedRise {
  const perTrench = places.pipes.length;
  const pipes = Array.from({ length: places.trenches }, (_, trench) =>
    places.pipes.map((pipe, index) => ({ ...pipe, trench, index: trench * perTrench + index })),
  ).flat();
  demandCount('layout.pipes', pipes, 1, MOST_PIPES);
  const groups = groupPairs(places);
  const alike = alikePipes(pipes, places.trenchSpacing);
  const counts = alike.map((members) => members.length);
  const placeOf = (from: BuriedPipe, to: BuriedPipe): number => {
    const { axis, image, across } = squaredDistances(places, from, to, to.trench - from.trench);
    return groups.findIndex((group) => group.axis === axis && group.image === image && group.across === across);
  };
  // The lower triangle of the system: the groups from which one of these pipes sees all of those.
  const triangle = alike.map(([from], i) => alike.slice(0, i + 1).map((members) => members.map((to) => placeOf(from, to))));

  return (kernel) => {
    const rises = groups.map((group) => riseFrom(kernel, group));
    const matrix = triangle.map((row, i) => row.map((from) => (counts[i] ?? 0) * from.reduce((sum, place) => sum + (rises[place] ?? 0), 0)));
    const heats = solveSymmetric(matrix, counts);
    const conductance = heats.reduce((sum, heat, i) => sum + heat * (counts[i] ?? 0), 0) / pipes.length;
    const mean = groups.reduce((sum, { weight }, place) => sum + weight * (rises[place] ?? 0), 0);
    const shares: number[] = [];
    for (const [i, members] of alike.entries()) for (const { index } of members) shares[index] = (heats[i] ?? 0) / conductance;
    const heatShares = Array.from({ length: places.trenches }, (_, trench) => shares.slice(trench * perTrench, (trench + 1) * perTrench));
    // Where all are alike the heats are equal, and the difference is nothing, not what is left by rounding.
    return { rise: 1 / conductance, excess: alike.length === 1 ? 0 : mean - 1 / conductance, heatShares };
  };
}

/** Pairs pipes with those opposite, where every pipe has one; otherwise each is alone. */
function alikePipes(pipes: readonly BuriedPipe[], trenchSpacing: number): readonly Alike[] {
  const across = ({ x, trench }: BuriedPipe): number => x + trench * trenchSpacing;
  const ends = pipes.map(across);
  const middle = (Math.min(...ends) + Math.max(...ends)) / 2;
  // To a micrometre, as distances are.
  const key = (side: number, depth: number): string => `${String(Math.round(side * 1e6))} ${String(Math.round(depth * 1e6))}`;
  const byPlace = new Map(pipes.map((pipe) => [key(across(pipe) - middle, pipe.depth), pipe]));
  const twins = pipes.map((pipe) => byPlace.get(key(middle - across(pipe), pipe.depth)));
  if (twins.includes(undefined)) return pipes.map((pipe) => [pipe]);
  return pipes.flatMap((pipe, i): Alike[] => {
    const twin = twins[i];
    if (twin === undefined || twin === pipe) return [[pipe]];
    return pipes.indexOf(twin) > i ? [[pipe, twin]] : [];
  });
}
