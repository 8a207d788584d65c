import { nnls } from '../numerics/index.js';
import type { FittedMean } from './fitted-mean.js';

/** A sum of exponentials c · (1 − exp(−s/σ)) for a rise · 4πk, in s = diffusivity · time [m2]. */
export interface ExponentialFit extends Pick<FittedMean, 'wallCondition' | 'steady'> {
  /** Fastest first; σ [m2] and c [1], both above 0. */
  readonly terms: readonly { readonly spread: number; readonly weight: number }[];
  /** The range fitted [m2]. */
  readonly from: number;
  readonly to: number;
  /** Greatest relative error, at the ends and at three times as many places between as fitted, none of them fitted itself [1]. */
  readonly largestError: number;
  /** Where that is [m2]. */
  readonly largestErrorAt: number;
  /** How far the conditions of an optimum are missed [1]. */
  readonly optimality: number;
}

/** Places per factor of ten at which the fit is asked to hold, and by how much finer it is judged. */
const SAMPLES_PER_DECADE = 12;
const JUDGED_FINER = 3;
/**
 * The ladder of time constants: steps per factor of ten, and how far it reaches beyond the range at either end, since what lies there already or still
 * moves within. Its ends matter as much as its steps: begun at 0.3 of the shortest time or ended at 0.5 of the longest it is off by more than 7e-4.
 */
const STEPS_PER_DECADE = 3;
const LADDER_BEGINS = 0.15;
const LADDER_ENDS = 1.5;
/** Against one sample: the terms must add up to the steady rise, which no sample reaches. */
const STEADY_WEIGHT = 1e3;

/**
 * Fits exponentials without negative weights, in relative terms. Heat put into pipes in equal shares answers at their mean wall, with the same shares,
 * as a mixture of decays alone, whatever the surface, and so does all their heat at one wall temperature; so no negative weight is wanted, and none could stand for anything.
 *
 * @param mean - what is fitted
 * @param range - least and greatest diffusivity · time [m2]
 * @returns the terms and how good they are
 */
export function fitExponentials(mean: FittedMean, { from, to }: Pick<ExponentialFit, 'from' | 'to'>): ExponentialFit {
  const { riseAfter, steady, settled, wallCondition } = mean;
  const samples = Math.ceil(SAMPLES_PER_DECADE * Math.log10(to / from));
  const between = (share: number): number => from * (to / from) ** share;
  const places = Array.from({ length: samples + 1 }, (_, i) => between(i / samples));
  // Where a rise comes to rest beyond the range, the rest of it needs rungs too.
  const [first, last] = [LADDER_BEGINS * from, LADDER_ENDS * Math.max(to, settled)];
  const steps = Math.ceil(STEPS_PER_DECADE * Math.log10(last / first));
  const ladder = Array.from({ length: steps + 1 }, (_, j) => first * (last / first) ** (j / steps));

  const scales = places.map((place) => 1 / riseAfter(place));
  const rows = places.length + (steady === undefined ? 0 : 1);
  const matrix = new Float64Array(rows * ladder.length);
  const right = new Float64Array(rows).fill(1);
  for (const [j, spread] of ladder.entries()) {
    for (const [i, place] of places.entries()) matrix[j * rows + i] = -Math.expm1(-place / spread) * (scales[i] ?? 0);
    if (steady !== undefined) matrix[(j + 1) * rows - 1] = STEADY_WEIGHT / steady;
  }
  if (steady !== undefined) right[rows - 1] = STEADY_WEIGHT;
  const { solution, optimality } = nnls({ matrix, right });
  const terms = ladder.flatMap((spread, j) => ((solution[j] ?? 0) > 0 ? [{ spread, weight: solution[j] ?? 0 }] : []));

  let [largestError, largestErrorAt] = [0, from];
  const judged = JUDGED_FINER * samples;
  for (let i = -1; i <= judged; i += 1) {
    const place = between(Math.min(1, Math.max(0, (i + 0.5) / judged)));
    const error = Math.abs(terms.reduce((sum, { spread, weight }) => sum - weight * Math.expm1(-place / spread), 0) / riseAfter(place) - 1);
    if (error > largestError) [largestError, largestErrorAt] = [error, place];
  }
  return { wallCondition, terms, steady, from, to, largestError, largestErrorAt, optimality };
}
