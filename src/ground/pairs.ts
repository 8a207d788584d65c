import type { StepKernel } from './step-kernel.js';

/** Where pipes lie, as plain numbers [m]. */
export interface PipePlaces {
  readonly pipes: readonly { readonly x: number; readonly depth: number }[];
  readonly trenches: number;
  readonly trenchSpacing: number;
  /** Soil that stands for a surface film, on top of the ground [m]. */
  readonly addedDepth: number;
}

/** Pairs of pipes with equal distances, and the share they have together in the mean over all pipes. */
export interface PairGroup {
  /** Squared distance between the axes [m2]; 0 for a pipe's own heat. */
  readonly axis: number;
  /** Squared distance from an axis to the other's mirror image [m2]. */
  readonly image: number;
  /** The part of either that is sideways, squared [m2]; the rest of that to the image is the square of the depths' sum. */
  readonly across: number;
  /** Sum of the shares [1]. */
  readonly weight: number;
}

/** Squared distances from a pipe to another one, a number of trenches further on, and to that one's mirror image [m2]. */
export function squaredDistances(
  { addedDepth, trenchSpacing }: PipePlaces,
  from: PipePlaces['pipes'][number],
  to: PipePlaces['pipes'][number],
  trenchesOn: number,
): Omit<PairGroup, 'weight'> {
  const across = (to.x - from.x + trenchesOn * trenchSpacing) ** 2;
  return {
    axis: rounded(across + (to.depth - from.depth) ** 2),
    image: rounded(across + (to.depth + from.depth + 2 * addedDepth) ** 2),
    across: rounded(across),
  };
}

/** To a square micrometre, so that distances that are equal on paper are equal. */
function rounded(square: number): number {
  return Math.round(square * 1e12) / 1e12;
}

/**
 * Groups all pairs of pipes by their distances. Of N equal trenches, N − m pairs lie m trenches apart, so one trench and its offsets suffice.
 *
 * @param places - where the pipes lie
 * @returns the groups; the shares of the pipes' own heat add up to 1, those of the others to the number of other pipes
 */
export function groupPairs(places: PipePlaces): readonly PairGroup[] {
  const { pipes, trenches } = places;
  const pairs: PairGroup[] = [];
  for (let trenchesOn = 0; trenchesOn < trenches; trenchesOn += 1) {
    const weight = ((trenches - trenchesOn) * (trenchesOn === 0 ? 1 : 2)) / (trenches * pipes.length);
    for (const from of pipes) for (const to of pipes) pairs.push({ ...squaredDistances(places, from, to, trenchesOn), weight });
  }
  pairs.sort((a, b) => a.axis - b.axis || a.image - b.image || a.across - b.across);
  const groups: PairGroup[] = [];
  for (const pair of pairs) {
    const last = groups.at(-1);
    if (last?.axis === pair.axis && last.image === pair.image && last.across === pair.across)
      groups[groups.length - 1] = { ...last, weight: last.weight + pair.weight };
    else groups.push(pair);
  }
  return groups;
}

/** Mean over all pipes of rise · 4πk. */
export function meanRise(groups: readonly PairGroup[], kernel: StepKernel): number {
  let sum = 0;
  for (const group of groups) sum += group.weight * riseFrom(kernel, group);
  return sum;
}

/** Rise · 4πk from a source by the squared distances to it; 0 to the axis for a pipe's own heat. */
export function riseFrom(kernel: StepKernel, { axis, image, across }: Omit<PairGroup, 'weight'>): number {
  return axis === 0 ? kernel.own(image) : kernel.other(axis, image, across);
}

/**
 * Rise · 4πk of each pipe, trench by trench. What lies to one side of a trench is summed up once for every number of trenches on that side.
 *
 * @param places - where the pipes lie
 * @param kernel - what a source does at a distance
 * @returns the rises, first by trench, then by pipe
 */
export function pipeRises(places: PipePlaces, kernel: StepKernel): readonly (readonly number[])[] {
  const { pipes, trenches } = places;
  const from = (pipe: PipePlaces['pipes'][number], trenchesOn: number): number =>
    pipes.reduce((sum, to) => sum + riseFrom(kernel, squaredDistances(places, pipe, to, trenchesOn)), 0);
  const sides = pipes.map((pipe) => {
    const sumUp = (side: 1 | -1): readonly number[] => {
      const sums = [0];
      for (let count = 1; count < trenches; count += 1) sums.push((sums[count - 1] ?? 0) + from(pipe, side * count));
      return sums;
    };
    return { inside: from(pipe, 0), left: sumUp(-1), right: sumUp(1) };
  });
  return Array.from({ length: trenches }, (_, trench) =>
    sides.map(({ inside, left, right }) => inside + (left[trench] ?? 0) + (right[trenches - 1 - trench] ?? 0)),
  );
}
