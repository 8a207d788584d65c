import { stepFromTransfer } from '../numerics/index.js';
import { equalFluxMean, type FittedMean } from './fitted-mean.js';
import type { GroundPipes } from './ground-pipes.js';
import { steadyKernel } from './step-kernel.js';
import { tiedPipes, type TiedRise } from './tied-pipes.js';
import { transferKernel } from './transfer-kernel.js';

/** Places per factor of ten at which the difference between the wall conditions is computed; between them it is put by cubics. */
const PLACES_PER_DECADE = 8;
/** Before this share of the square to what is nearest, another pipe or the own image, all pipes are as if alone. */
const FELT = 0.025;

/** A {@link FittedMean} with what each pipe gives off in the end. */
export interface EqualTemperatureMean extends FittedMean {
  /** Heat of each pipe over the mean, trench by trench [1]; absent below a sealed surface. */
  readonly heatShares: TiedRise['heatShares'] | undefined;
}

/**
 * The rise of walls that share one temperature: that at equal heat less the difference, which is inverted from its transfer function. There the pipes' heats
 * solve one small system of equations for every rate, and nothing has to be stepped through time.
 */
export function equalTemperatureMean(pipes: GroundPipes): EqualTemperatureMean {
  const equalFlux = equalFluxMean(pipes);
  const tied = tiedPipes(pipes.places);
  const felt = FELT * Math.min(...pipes.groups.map(({ axis, image }) => (axis === 0 ? image : axis)));
  const difference = interpolated((spread) => (spread < felt ? 0 : stepFromTransfer((rate) => tied(transferKernel(rate, pipes)).excess, spread)));
  const inTheEnd = pipes.sealed ? undefined : tied(steadyKernel(pipes.radius));
  return {
    ...equalFlux,
    wallCondition: 'equal temperature',
    riseAfter: (spread) => equalFlux.riseAfter(spread) - difference(spread),
    steady: inTheEnd && equalFlux.steady !== undefined ? equalFlux.steady - inTheEnd.excess : undefined,
    heatShares: inTheEnd?.heatShares,
  };
}

/** A function that is smooth in the logarithm of its argument, computed once at each of evenly spaced places and put between by the cubic through four. */
function interpolated(of: (argument: number) => number): (argument: number) => number {
  const known = new Map<number, number>();
  const at = (place: number): number => {
    const value = known.get(place) ?? of(10 ** (place / PLACES_PER_DECADE));
    known.set(place, value);
    return value;
  };
  return (argument) => {
    const place = PLACES_PER_DECADE * Math.log10(argument);
    const left = Math.floor(place);
    const t = place - left;
    const outer = (at(left + 2) * (t + 1) - at(left - 1) * (t - 2)) * t * (t - 1);
    const inner = (at(left) * (t - 1) - at(left + 1) * t) * (t + 1) * (t - 2);
    return outer / 6 + inner / 2;
  };
}
