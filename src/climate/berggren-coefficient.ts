import { demand } from '../errors/index.js';
import type { Ratio, Shape } from '../units/index.js';
import { errorFunction } from '../numerics/index.js';

/** What {@link berggrenCoefficient} needs. */
export interface BerggrenCoefficientInput {
  /** How far the ground's yearly mean lies above freezing, over how far the surface lies below it on average in the freezing season, 0 to 1e6 [1]. */
  readonly thermalRatio: Ratio;
  /** Heat capacity times the mean frost of the surface, over the latent heat, 0 to 1e4 [1]. */
  readonly fusionParameter: Ratio;
}

/** Shape of {@link BerggrenCoefficientInput}. */
export const berggrenCoefficientInputShape: Shape<BerggrenCoefficientInput> = { thermalRatio: 'ratio', fusionParameter: 'ratio' };

/** Where the freezing front is looked for at most, as a multiple of 2√(αt); with the largest fusion parameter it comes to 2.8. */
const FARTHEST = 3;

/** Halvings of the bracket, to the last digit of a double. */
const HALVINGS = 52;

/**
 * What is left of Stefan's frost depth when the heat is counted that cools the ground, frozen and unfrozen.
 *
 * @param input - thermal ratio and fusion parameter [1]
 * @returns modified Berggren depth over Stefan depth, 0 to 1 [1]
 * @throws InputError when a number is out of range
 * @remarks
 * Exact, in place of the chart that the method is published with: g from e^(−g²)/erf g − a e^(−g²)/erfc g = √π g/μ with thermal ratio a and fusion
 * parameter μ, Neumann's solution for equal properties either side; λ = g √(2/μ). Source: `aldrichPaynter1953`, `carslawJaeger1959`. Checked against values computed
 * independently, and a chart reading of 0.89 for 0.8956 (`ufc313006`).
 *
 * Invariants: 1 for no sensible heat; smaller for a warmer ground and for more sensible heat.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(berggrenCoefficient({ thermalRatio: ratio(1), fusionParameter: ratio(0.2) })).toBeCloseTo(0.7762, 4);
 * ```
 */
export function berggrenCoefficient({ thermalRatio, fusionParameter }: BerggrenCoefficientInput): Ratio {
  demand('thermalRatio', 'ratio', thermalRatio, { atLeast: 0, atMost: 1e6 });
  demand('fusionParameter', 'ratio', fusionParameter, { atLeast: 0, atMost: 1e4 });
  return coefficient(thermalRatio, fusionParameter) as Ratio;
}

/** Kernel of {@link berggrenCoefficient}, in plain numbers. */
export function coefficient(a: number, mu: number): number {
  if (mu === 0) return 1;
  // Looked for by itself and not by g = λ √(μ/2), so that it does not drown where there is next to no sensible heat.
  const scale = Math.sqrt(mu) / Math.SQRT2;
  let [low, high] = [0, Math.min(1, FARTHEST / scale)];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const lambda = (low + high) / 2;
    const g = lambda * scale;
    const erf = errorFunction(g);
    const excess = Math.exp(-g * g) * (1 / erf - a / (1 - erf)) - (lambda * Math.sqrt(Math.PI)) / (2 * scale);
    if (excess > 0) low = lambda;
    else high = lambda;
  }
  return (low + high) / 2;
}
