import { type HarmonicModel, modelColumns, type Place } from './harmonic-model.js';
import { type LeastSquares, leastSquares, squaresOf } from './least-squares.js';

/** Widest range of diffusivities that ground may have, 1e-8 to 1e-5, as a natural logarithm [m2/s]. */
const LOWEST = -18.420680743952367;
const HIGHEST = -11.512925464970229;

/** Diffusivities that are tried first; neighbours differ by a sixth, and a valley of the sum of squares is far wider. */
const TRIED = 46;

/** Steps of the golden section, after which the range has shrunk to a billionth. */
const STEPS = 44;
/** (√5 − 1)/2. */
const GOLDEN = 0.6180339887498949;

/** The linear fit at a diffusivity. */
export const fitAt = (model: HarmonicModel, places: readonly Place[], temperatures: Float64Array, diffusivity: number): LeastSquares | undefined =>
  leastSquares(modelColumns(model, places, diffusivity), temperatures);

/**
 * The diffusivity with the least sum of squares, all other parameters fitted at each; nothing when the least lies at an end of the range.
 *
 * With the diffusivity set, mean, amplitudes and phases follow linearly, so that one parameter is left to search (variable projection).
 * The whole range is tried first: no start is to be chosen, and no side valley is taken for the deepest.
 */
export function bestDiffusivity(model: HarmonicModel, places: readonly Place[], temperatures: Float64Array): number | undefined {
  const left = (logarithm: number): number => {
    const fit = fitAt(model, places, temperatures, Math.exp(logarithm));
    return fit === undefined ? Infinity : squaresOf(fit.residuals);
  };
  const step = (HIGHEST - LOWEST) / (TRIED - 1);
  const tried = Array.from({ length: TRIED }, (_, i) => left(LOWEST + i * step));
  const best = tried.indexOf(Math.min(...tried));
  if (best === 0 || best === TRIED - 1) return undefined;
  let [low, high] = [LOWEST + (best - 1) * step, LOWEST + (best + 1) * step];
  let [lower, upper] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLower, atUpper] = [left(lower), left(upper)];
  for (let i = 0; i < STEPS; i += 1) {
    if (atLower < atUpper) {
      [high, upper, atUpper] = [upper, lower, atLower];
      lower = high - GOLDEN * (high - low);
      atLower = left(lower);
    } else {
      [low, lower, atLower] = [lower, upper, atUpper];
      upper = low + GOLDEN * (high - low);
      atUpper = left(upper);
    }
  }
  return Math.exp((low + high) / 2);
}
