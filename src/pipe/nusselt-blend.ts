import { joinedShape } from '../states/index.js';
import type { Fraction, Ratio, Shape } from '../units/index.js';
import { type FilmState, gnielinski, LAMINAR_NUSSELT, type NusseltNumber, nusseltNumber, nusseltNumberShape } from './nusselt.js';
import { TRANSITION, TURBULENCE } from './regime.js';

/** A Nusselt number with what it is mixed of, and how far the truth may lie. */
export interface NusseltBlend extends NusseltNumber {
  /** Share of turbulence in it: 0 when laminar, 1 when turbulent, a straight line between 2300 and 4000 [1]. */
  readonly turbulentShare: Fraction;
  /** Of laminar flow with an even heat flux [1]. */
  readonly laminarNusselt: Ratio;
  /** Of turbulent flow at this Reynolds number; absent where the flow is laminar [1]. */
  readonly turbulentNusselt?: Ratio;
  /** Least that may be: laminar as long as the flow is not turbulent [1]. */
  readonly leastNusselt: Ratio;
  /** Greatest that may be: turbulent as soon as the flow is not laminar [1]. */
  readonly greatestNusselt: Ratio;
}

/** Shape of {@link NusseltBlend}. */
export const nusseltBlendShape: Shape<NusseltBlend> = /* @__PURE__ */ joinedShape(nusseltNumberShape, {
  turbulentShare: 'fraction',
  laminarNusselt: 'ratio',
  turbulentNusselt: { optional: 'ratio' },
  leastNusselt: 'ratio',
  greatestNusselt: 'ratio',
});

/**
 * Nusselt number as of {@link nusseltNumber}, with the blend of laminar and turbulent flow behind it.
 *
 * @param state - Reynolds number, 0 to 5e6; Prandtl number, 0.5 to 2000 once the flow is not laminar
 * @returns Nusselt numbers [1], regime and the share of turbulence [1]
 * @throws InputError when a number is impossible or outside the correlation
 * @remarks
 * Sources as in {@link nusseltNumber}. Below 3000 the turbulent number is Gnielinski's formula beyond its printed range, as a bound.
 *
 * Invariants: the number is that of {@link nusseltNumber} and lies between least and greatest, which meet outside transition.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * const blend = nusseltBlend({ reynolds: ratio(3401.11), prandtl: ratio(29.04255) });
 * expect(blend.turbulentShare).toBeCloseTo(0.648, 3);
 * expect([blend.leastNusselt, blend.nusselt, blend.greatestNusselt]).toEqual([4.364, expect.closeTo(35.053, 3), expect.closeTo(42.652, 3)]);
 * ```
 */
export function nusseltBlend(state: FilmState): NusseltBlend {
  const { nusselt, regime } = nusseltNumber(state);
  const laminarNusselt = LAMINAR_NUSSELT as Ratio;
  if (regime === 'laminar') {
    return { nusselt, regime, turbulentShare: 0 as Fraction, laminarNusselt, leastNusselt: nusselt, greatestNusselt: nusselt };
  }
  const turbulentNusselt = gnielinski(state.reynolds, state.prandtl) as Ratio;
  const turbulentShare = Math.min(1, (state.reynolds - TRANSITION) / (TURBULENCE - TRANSITION)) as Fraction;
  return {
    nusselt,
    regime,
    turbulentShare,
    laminarNusselt,
    turbulentNusselt,
    leastNusselt: regime === 'turbulent' ? nusselt : (Math.min(nusselt, laminarNusselt, turbulentNusselt) as Ratio),
    greatestNusselt: Math.max(nusselt, turbulentNusselt) as Ratio,
  };
}
