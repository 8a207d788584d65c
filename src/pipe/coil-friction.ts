import { demand } from '../errors/index.js';
import type { Ratio, Shape } from '../units/index.js';
import { churchillFrictionFactor, type FrictionState } from './churchill.js';
import { criticalReynolds, type CurvedState, deanNumber, demandCurved } from './coil-curvature.js';
import type { FlowRegime } from './regime.js';

/** Flow in a pipe laid in rings, with its roughness. */
export interface CoiledState extends CurvedState, FrictionState {}

/** The friction factor of a pipe laid in rings beside that of the pipe laid straight. */
export interface CoiledFriction {
  /** Darcy friction factor [1]. */
  readonly frictionFactor: Ratio;
  /** The factor over that of the same pipe laid straight, as of `churchillFrictionFactor` [1]. */
  readonly frictionRatio: Ratio;
  /** Dean number [1]. */
  readonly deanNumber: Ratio;
  /** Reynolds number up to which the flow stays laminar in these rings [1]. */
  readonly criticalReynolds: Ratio;
  /** How the fluid flows in the rings. */
  readonly regime: FlowRegime;
}

/** Shape of {@link CoiledFriction}. */
export const coiledFrictionShape: Shape<CoiledFriction> = {
  frictionFactor: 'ratio',
  frictionRatio: 'ratio',
  deanNumber: 'ratio',
  criticalReynolds: 'ratio',
  regime: ['laminar', 'transitional', 'turbulent'],
};

/** As in a straight pipe, where the line from laminar to turbulent runs from 2300 to 4000 [1]. */
const WIDTH_OF_TRANSITION = 1.7391304347826086;

/**
 * Darcy friction factor of a pipe laid in rings.
 *
 * Laminar after White, turbulent after Ito, never below the straight pipe's when turbulent; between the critical Reynolds number and 1.74
 * times it a straight line, as in a straight pipe from 2300 to 4000. Developed flow; the correlations agree with one another to about 10 %.
 * Roughness counts as in a straight pipe and hardly matters in plastic.
 *
 * @param state - Reynolds number, 1e-6 to 1e8; bore over ring diameter, 0 to 0.067; relative roughness, 0 to 0.05
 * @returns friction factor, its ratio to the straight pipe's, Dean number, critical Reynolds number [1] and regime
 * @throws InputError when a number is outside its range
 * @remarks
 * Laminar f = 64/Re / (1 − [1 − (11.6/De)^0.45]^(1/0.45)) for De above 11.6 (`white1929`); turbulent f = 0.304 Re^−0.25 + 0.029 √(d/D)
 * (`ito1959`); critical Reynolds number of `schmidt1967`. Checked against printed values of a general library for the laminar one and the
 * critical number, and a second turbulent correlation (10 %).
 *
 * Invariants: continuous; f·Re² rises with Re; laminar friction rises with curvature; straight pipe in the limit.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * const rings = coiledFrictionFactor({ reynolds: ratio(2000), curvatureRatio: ratio(0.024), relativeRoughness: ratio(0) });
 * expect([rings.regime, rings.frictionRatio]).toEqual(['laminar', expect.closeTo(2.28, 2)]);
 * ```
 */
export function coiledFrictionFactor(state: CoiledState): CoiledFriction {
  demandCurved(state);
  demand('relativeRoughness', 'ratio', state.relativeRoughness, { atLeast: 0, atMost: 0.05 });
  const { reynolds, curvatureRatio, relativeRoughness } = state;
  const critical = criticalReynolds(curvatureRatio);
  const turbulent = WIDTH_OF_TRANSITION * critical;
  const straight = (re: number): number => churchillFrictionFactor({ reynolds: re as Ratio, relativeRoughness });
  const ito = (re: number): number => Math.max(0.304 * re ** -0.25 + 0.029 * Math.sqrt(curvatureRatio), straight(re));
  const regimes = (): readonly [FlowRegime, number] => {
    if (reynolds < critical) return ['laminar', whiteFriction(reynolds, curvatureRatio)];
    if (reynolds >= turbulent) return ['turbulent', ito(reynolds)];
    const share = (reynolds - critical) / (turbulent - critical);
    return ['transitional', (1 - share) * whiteFriction(critical, curvatureRatio) + share * ito(turbulent)];
  };
  const [regime, friction] = regimes();
  return {
    frictionFactor: friction,
    frictionRatio: friction / straight(reynolds),
    deanNumber: deanNumber(state),
    criticalReynolds: critical,
    regime,
  } as CoiledFriction;
}

/** White's laminar friction factor of a bent pipe. */
export function whiteFriction(reynolds: number, curvatureRatio: number): number {
  const dean = reynolds * Math.sqrt(curvatureRatio);
  const bent = dean > 11.6 ? 1 - (1 - (11.6 / dean) ** 0.45) ** (1 / 0.45) : 1;
  return 64 / reynolds / bent;
}
