import { demand } from '../errors/index.js';
import type { Ratio } from '../units/index.js';

/** Flow in a pipe that is laid in rings. */
export interface CurvedState {
  /** Reynolds number in the bore [1]. */
  readonly reynolds: Ratio;
  /** Bore over the diameter of the rings, axis to axis; 0 for a straight pipe, at most 0.067 [1]. */
  readonly curvatureRatio: Ratio;
}

/**
 * Dean number of flow in a bent pipe, De = Re √(bore / ring diameter).
 *
 * From about 12 up the bend drives a flow across the pipe that raises friction and heat transfer.
 *
 * @param state - Reynolds number, 1e-6 to 1e8; bore over ring diameter, 0 to 0.067
 * @returns Dean number [1]
 * @throws InputError when a number is outside its range
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(deanNumber({ reynolds: ratio(2000), curvatureRatio: ratio(0.0225) })).toBeCloseTo(300, 9);
 * ```
 */
export function deanNumber(state: CurvedState): Ratio {
  demandCurved(state);
  return (state.reynolds * Math.sqrt(state.curvatureRatio)) as Ratio;
}

/**
 * Reynolds number up to which flow in a bent pipe stays laminar, after Schmidt.
 *
 * Bending steadies the flow: in rings of 0.9 m a 22 mm bore stays laminar to about 6000, far beyond the 2300 of a straight pipe. Other
 * authors lie up to a fifth apart.
 *
 * @param curvatureRatio - bore over ring diameter, 0 to 0.067 [1]
 * @returns critical Reynolds number [1]
 * @throws InputError when the ratio is outside its range
 * @remarks Re = 2300 (1 + 8.6 (d/D)^0.45). Source: `schmidt1967`. Invariants: 2300 when straight; rises with curvature.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(coilCriticalReynolds(ratio(0.024))).toBeCloseTo(5992.5, 1);
 * ```
 */
export function coilCriticalReynolds(curvatureRatio: Ratio): Ratio {
  demandCurvature(curvatureRatio);
  return criticalReynolds(curvatureRatio) as Ratio;
}

/** Schmidt's critical Reynolds number. */
export function criticalReynolds(curvatureRatio: number): number {
  return 2300 * (1 + 8.6 * curvatureRatio ** 0.45);
}

/** Refuses an impossible flow in a bent pipe. */
export function demandCurved({ reynolds, curvatureRatio }: CurvedState): void {
  demand('reynolds', 'ratio', reynolds, { atLeast: 1e-6, atMost: 1e8 });
  demandCurvature(curvatureRatio);
}

function demandCurvature(curvatureRatio: Ratio): void {
  demand('curvatureRatio', 'ratio', curvatureRatio, { atLeast: 0, atMost: 0.067 }, 'rings narrower than 15 bores are beyond the correlations');
}
