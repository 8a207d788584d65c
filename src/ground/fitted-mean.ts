import type { GroundPipes } from './ground-pipes.js';
import { meanRise } from './pairs.js';
import type { WallCondition } from './response.js';
import { steadyKernel, stepKernel } from './step-kernel.js';

/** A rise that decays can be fitted to: that of walls taken with the same shares as the heat, or of walls that share one temperature. */
export interface FittedMean {
  readonly wallCondition: WallCondition;
  /** Rise · 4πk [1] after a diffusivity · time [m2]. */
  readonly riseAfter: (spread: number) => number;
  /** What it rises to [1]; absent where it never ends. */
  readonly steady: number | undefined;
  /** Diffusivity · time at which it has about come to rest [m2]; 0 where it never does. */
  readonly settled: number;
}

/** What the mean of all pipes rises to at equal heat [1]; absent below a sealed surface. */
function steadyMean({ groups, radius, sealed }: GroundPipes): number | undefined {
  return sealed ? undefined : meanRise(groups, steadyKernel(radius));
}

/** The mean of pipes that all give off the same heat; what it rises to, where that is not for the pipes to say [1]. */
export function equalFluxMean(pipes: GroundPipes, steady: number | undefined = steadyMean(pipes)): FittedMean {
  const { groups } = pipes;
  return {
    wallCondition: 'equal flux',
    riseAfter: (spread) => meanRise(groups, stepKernel(spread, pipes)),
    steady,
    // A rise comes to rest at about depth², a quarter of the square to the own image.
    settled: steady === undefined ? 0 : Math.max(...groups.filter(({ axis }) => axis === 0).map(({ image }) => image / 4)),
  };
}
