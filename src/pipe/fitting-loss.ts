import { demand, demandChoice } from '../errors/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Diameter, Ratio, Shape } from '../units/index.js';
import { CONSTANT_FITTINGS, type ConstantFitting, FITTINGS, type VariableFitting } from './fittings.data.js';

/** A fitting whose loss is known. */
export type Fitting = VariableFitting | ConstantFitting;

/** The fittings, for lists and shapes. */
export const FITTING_NAMES: readonly Fitting[] = [
  'elbow 90 screwed',
  'elbow 90 welded',
  'elbow 90 long radius',
  'elbow 90 mitred',
  'elbow 45',
  'return bend 180 welded',
  'tee branch welded',
  'tee branch screwed',
  'tee run screwed',
  'full-bore valve',
  'reduced-port ball valve',
  'swing check valve',
  'sharp entrance',
  'inward entrance',
  'exit',
  'fusion joint',
  'fused return bend',
];

/** A fitting in a flow. */
export interface FittingState {
  /** The fitting. */
  readonly fitting: Fitting;
  /** Bore of its pipe, 0.005 to 1 [m]. */
  readonly insideDiameter: Diameter;
  /** Reynolds number in that bore, 1 to 1e8 [1]. */
  readonly reynolds: Ratio;
}

/** The loss of one fitting. */
export interface FittingLoss {
  /** Loss in velocity heads; half of it to half more, as far as any such method is right [1]. */
  readonly lossCoefficient: Band<'ratio'>;
  /** The handbook's, for fully rough steel pipe; too low for the slow flow of a loop; absent where it has none [1]. */
  readonly steelLossCoefficient?: Ratio;
}

/** Shape of {@link FittingLoss}. */
export const fittingLossShape: Shape<FittingLoss> = {
  lossCoefficient: /* @__PURE__ */ bandShape('ratio'),
  steelLossCoefficient: { optional: 'ratio' },
};

/** Roughness of the steel pipe that the handbook's factors are for, 0.0018 in [m]. */
const STEEL_ROUGHNESS = 4.572e-5;

/** How far a coefficient may be off; two printed methods differ by as much. A judgement [1]. */
const SPREAD = 0.5;

/**
 * Loss of one fitting in velocity heads, with its rise in slow flow.
 *
 * Handbook coefficients are for fast flow in steel; at the Reynolds numbers of a loop they say too little. No method is better than half
 * or one and a half times the value; in a circuit of a hundred metres the fittings are a few per cent.
 *
 * @param state - fitting, bore, 0.005 to 1 [m], Reynolds number, 1 to 1e8
 * @returns loss coefficients [1]
 * @throws InputError when the fitting is unknown or a number out of range
 * @remarks
 * K = K₁/Re + K∞ (1 + 1/d), d in inches (`hooper1981`); the handbook's K = (L/D) f_T with f_T by Colebrook's rough end at 0.0018 in
 * (`technicalPaper410`). Checked against coefficients computed by a general library and the handbook's f_T of seven sizes.
 *
 * Invariants: never rises with the Reynolds number or the bore.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterInches, ratio } = await import('../units/index.js');
 * const loss = fittingLoss({ fitting: 'elbow 90 welded', insideDiameter: diameterInches(1.075), reynolds: ratio(2500) });
 * expect(loss.lossCoefficient.estimate).toBeCloseTo(0.8026, 4);
 * expect(loss.steelLossCoefficient).toBeCloseTo(0.45, 2);
 * ```
 */
export function fittingLoss({ fitting, insideDiameter, reynolds }: FittingState): FittingLoss {
  demandChoice('fitting', fitting, FITTING_NAMES);
  demand('insideDiameter', 'diameter', insideDiameter, { atLeast: 0.005, atMost: 1 });
  demand('reynolds', 'ratio', reynolds, { atLeast: 1, atMost: 1e8 });
  if (isConstant(fitting)) return { lossCoefficient: spreadAround(CONSTANT_FITTINGS[fitting]) };
  const { slow, fast, diameters } = FITTINGS[fitting];
  const lossCoefficient = spreadAround(slow / reynolds + fast * (1 + 0.0254 / insideDiameter));
  if (diameters === undefined) return { lossCoefficient };
  const rough = 0.25 / Math.log10(STEEL_ROUGHNESS / insideDiameter / 3.7) ** 2;
  return { lossCoefficient, steelLossCoefficient: (diameters * rough) as Ratio };
}

function isConstant(fitting: Fitting): fitting is ConstantFitting {
  return Object.hasOwn(CONSTANT_FITTINGS, fitting);
}

function spreadAround(estimate: number): Band<'ratio'> {
  return { low: (1 - SPREAD) * estimate, estimate, high: (1 + SPREAD) * estimate, coverage: 0.9 } as Band<'ratio'>;
}
