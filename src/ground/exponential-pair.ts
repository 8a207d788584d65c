import { InputError } from '../errors/index.js';
import { cylindricalPipes, type ExponentialResponse, fitInSoil } from './exponential-response.js';
import { equalFluxMean } from './fitted-mean.js';
import { groupPairs, meanRise } from './pairs.js';
import type { GroundResponseInput } from './response.js';
import { steadyKernel, type StepKernel } from './step-kernel.js';

/** How the two pipes of a trench answer when their heats differ, as it is with the supply and the return of a circuit. */
export interface ExponentialPair {
  /** Both walls on average, per heat per metre that the two give off on average [m.K/W]; what {@link exponentialResponse} gives. */
  readonly together: ExponentialResponse;
  /** Half the difference of the two walls, per half the difference of their heats per metre [m.K/W]; steady below any surface, since no heat is left over. */
  readonly apart: ExponentialResponse;
}

/**
 * A pair of pipes at equal depth in every trench, by the two ways in which it answers. With heats a and b per metre, the walls rise by
 * (a + b)/2 · together ± (a − b)/2 · apart.
 *
 * Each way is a mixture of decays alone; what one pipe does to the other is not, and comes out as half the difference of the two. Trenches are all alike,
 * the first pipe on the same side in each; walls are means over the trenches.
 *
 * @param input - two pipes at equal depth in each trench, soil and surface as for {@link exponentialResponse}
 * @returns both ways of answering, from a minute to 20 years
 * @throws InputError as {@link exponentialResponse} does, and for other than two pipes at equal depth
 * @remarks Invariants tested: sums over all pairs of pipes with their signs; pipes far apart answer both ways like one alone.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond } = await import('../units/index.js');
 * const { twoPipeSideBySide } = await import('./layout-makers.js');
 * const { together, apart } = exponentialPair({
 *   layout: twoPipeSideBySide({ depth: metres(1.5), spacing: metres(0.6), trenches: 1, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMillimetres(32) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 * });
 * expect(apart.steadyRise).toBeLessThan(together.steadyRise ?? 0);
 * ```
 */
export function exponentialPair(input: GroundResponseInput): ExponentialPair {
  const pipes = cylindricalPipes(input);
  const [one, other, ...more] = input.layout.pipes;
  if (one === undefined || other?.depth !== one.depth || more.length > 0)
    throw new InputError({
      code: 'impossible',
      argument: 'layout.pipes',
      value: undefined,
      allowed: 'two pipes at equal depth',
      hint: 'at unequal depth the mean of two heats sets their walls apart as well',
    });
  // Each sees its like alone, less what it sees of the other kind: twice its like less both kinds.
  const like = groupPairs({ ...pipes.places, pipes: [one] }).map((group) => ({ ...group, weight: 2 * group.weight }));
  const groups = [...like, ...pipes.groups.map((group) => ({ ...group, weight: -group.weight }))];
  const kernel = pipes.sealed ? sealedKernel(pipes.radius) : steadyKernel(pipes.radius);
  return {
    together: fitInSoil(equalFluxMean(pipes), input.soil),
    apart: fitInSoil(equalFluxMean({ ...pipes, groups }, meanRise(groups, kernel)), input.soil),
  };
}

/** What is left of a kernel below a sealed surface in the end when the heats add up to nothing: what all distances have in common, which grows, drops out. */
function sealedKernel(radius: number): StepKernel {
  const other = (axis: number, image: number): number => -Math.log(axis * image);
  return { own: (image) => other(radius * radius, image), other };
}
