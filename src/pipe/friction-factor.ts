import { demand } from '../errors/index.js';
import type { Ratio, Shape } from '../units/index.js';
import { churchillFrictionFactor, type FrictionState } from './churchill.js';
import { colebrook } from './colebrook.js';
import { haaland, swameeJainFrictionFactor } from './friction-formulas.js';
import { type FlowRegime, regimeOf } from './regime.js';

/** A correlation of the friction factor. */
export type FrictionCorrelation = 'laminar' | 'Churchill' | 'Colebrook' | 'Haaland' | 'Swamee-Jain';

/** The friction factor of one correlation. */
export interface CorrelatedFriction {
  /** The correlation. */
  readonly correlation: FrictionCorrelation;
  /** Its Darcy friction factor [1]. */
  readonly frictionFactor: Ratio;
}

/** A friction factor, the correlations that apply, and how far apart the truth may lie. */
export interface FrictionChoice extends CorrelatedFriction {
  /** How the fluid flows. */
  readonly regime: FlowRegime;
  /** The correlations that apply to this flow, the measure of the regime first. */
  readonly applicable: readonly CorrelatedFriction[];
  /** Least factor that applies; in transition that of laminar flow [1]. */
  readonly leastFriction: Ratio;
  /** Greatest factor that applies; in transition that of turbulent flow [1]. */
  readonly greatestFriction: Ratio;
}

const correlatedFrictionShape: Shape<CorrelatedFriction> = {
  correlation: ['laminar', 'Churchill', 'Colebrook', 'Haaland', 'Swamee-Jain'],
  frictionFactor: 'ratio',
};

/** Shape of {@link FrictionChoice}. */
export const frictionChoiceShape: Shape<FrictionChoice> = {
  correlation: ['laminar', 'Churchill', 'Colebrook', 'Haaland', 'Swamee-Jain'],
  frictionFactor: 'ratio',
  regime: ['laminar', 'transitional', 'turbulent'],
  applicable: { list: correlatedFrictionShape },
  leastFriction: 'ratio',
  greatestFriction: 'ratio',
};

/**
 * Darcy friction factor with the correlations that apply to the flow and the range between them.
 *
 * Laminar below 2300: 64/Re. Turbulent from 4000: Colebrook first, then Haaland, Swamee–Jain and Churchill, which differ by 1.8 % in plastic
 * pipe. Between them nature leaves it open, so the range runs from laminar to turbulent. The factor given is Churchill's throughout, which
 * {@link pressureGradient} computes with: the only one without a jump.
 *
 * @param state - Reynolds number, 1e-6 to 1e8; relative roughness, 0 to 0.05
 * @returns the factor, those of the correlations that apply, and their range [1]
 * @throws InputError when a number is outside its range
 * @remarks
 * Sources: `churchill1977`, `colebrook1939`, `haaland1983`, `swameeJain1976`. Each correlation is checked by itself.
 *
 * Invariants: the factor lies in the range; the factor is continuous; in plastic pipe the turbulent range is within 1.8 %.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * const open = frictionFactor({ reynolds: ratio(3000), relativeRoughness: ratio(0) });
 * expect([open.regime, open.leastFriction, open.greatestFriction]).toEqual(['transitional', expect.closeTo(0.0213, 4), expect.closeTo(0.0435, 4)]);
 * expect(frictionFactor({ reynolds: ratio(1000), relativeRoughness: ratio(0) }).applicable[0]).toEqual({ correlation: 'laminar', frictionFactor: 0.064 });
 * ```
 */
export function frictionFactor(state: FrictionState): FrictionChoice {
  demand('reynolds', 'ratio', state.reynolds, { atLeast: 1e-6, atMost: 1e8 });
  demand('relativeRoughness', 'ratio', state.relativeRoughness, { atLeast: 0, atMost: 0.05 });
  const regime = regimeOf(state.reynolds);
  const churchill: CorrelatedFriction = { correlation: 'Churchill', frictionFactor: churchillFrictionFactor(state) };
  const ends = limitsOf(regime, state);
  const factors = [...ends, churchill].map((each) => each.frictionFactor);
  return {
    ...churchill,
    regime,
    applicable: regime === 'transitional' ? [churchill] : [...ends, churchill],
    leastFriction: Math.min(...factors) as Ratio,
    greatestFriction: Math.max(...factors) as Ratio,
  };
}

/** The correlations between which the truth lies: those of the regime, or in transition those of the regimes on either side. */
function limitsOf(regime: FlowRegime, state: FrictionState): readonly CorrelatedFriction[] {
  const { reynolds, relativeRoughness } = state;
  const laminar: CorrelatedFriction = { correlation: 'laminar', frictionFactor: (64 / reynolds) as Ratio };
  if (regime === 'laminar') return [laminar];
  const measure: CorrelatedFriction = { correlation: 'Colebrook', frictionFactor: colebrook(reynolds, relativeRoughness) as Ratio };
  if (regime === 'transitional') return [laminar, measure];
  return [
    measure,
    { correlation: 'Haaland', frictionFactor: haaland(reynolds, relativeRoughness) as Ratio },
    { correlation: 'Swamee-Jain', frictionFactor: swameeJainFrictionFactor(state) },
  ];
}
