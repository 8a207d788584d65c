import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Diameter, Length, Ratio, Shape } from '../units/index.js';
import { BEND_RATIO_AT_FITTING, BEND_RATIOS } from './pressure-rating.data.js';
import type { DimensionRatio } from './series.data.js';

/** A bend of polyethylene pipe. */
export interface PipeBend {
  /** Outside diameter, 0.005 to 1 [m]. */
  readonly outsideDiameter: Diameter;
  /** Dimension ratio. */
  readonly dimensionRatio: DimensionRatio;
  /** Whether a fitting, joint or flange lies in the bend; not so when left out. */
  readonly fittingInBend?: boolean;
  /** Radius that it is laid with, to the axis, at least half a diameter, up to 1000; looked at when given [m]. */
  readonly bendRadius?: Length;
}

/** Shape of {@link PipeBend}. */
export const pipeBendShape: Shape<PipeBend> = {
  outsideDiameter: 'diameter',
  dimensionRatio: ['9', '11', '13.5', '13.6', '15.5', '17'],
  fittingInBend: { optional: 'flag' },
  bendRadius: { optional: 'length' },
};

/** How tightly a pipe may be bent. */
export interface BendRadius {
  /** Least radius over outside diameter [1]. */
  readonly bendRatio: Ratio;
  /** Least radius of a cold bend in an open trench [m]. */
  readonly leastBendRadius: Length;
}

/** A {@link BendRadius} with its findings. */
export interface BendRadiusResult extends BendRadius {
  /** Whether the bend laid is tighter. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link BendRadius}. */
export const bendRadiusShape: Shape<BendRadius> = { bendRatio: 'ratio', leastBendRadius: 'length' };

/**
 * Least radius of a cold bend of polyethylene pipe in an open trench.
 *
 * For pipe bent from straight. Pipe keeps the set of the coil it came on, and rings tighter than this are usual in coiled loops: a warning then,
 * not a refusal. Colder pipe is stiffer and kinks sooner; the maker's limit goes first.
 *
 * @param bend - outside diameter [m], dimension ratio, whether a fitting lies in it, the radius laid [m]
 * @returns least radius [m], over outside diameter [1], and findings
 * @throws InputError when a choice is unknown or a number impossible
 * @remarks
 * 20 to 27 outside diameters by dimension ratio, 100 at a fitting. Source: `ppiBendRadius`. Rings of 36 in are 17 diameters of 3/4 in pipe.
 *
 * Invariants: proportional to the diameter; thinner pipe never bends tighter.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterInches, inches } = await import('../units/index.js');
 * const bend = { outsideDiameter: diameterInches(1.05), dimensionRatio: '11' as const, bendRadius: inches(18) };
 * const { leastBendRadius, findings } = minimumBendRadius(bend);
 * expect(inches.of(leastBendRadius)).toBeCloseTo(26.25, 9);
 * expect(findings[0]?.code).toBe('bend-tight');
 * ```
 */
export function minimumBendRadius({ outsideDiameter, dimensionRatio, fittingInBend = false, bendRadius }: PipeBend): BendRadiusResult {
  demand('outsideDiameter', 'diameter', outsideDiameter, { atLeast: 0.005, atMost: 1 });
  demandChoice('dimensionRatio', dimensionRatio, Object.keys(BEND_RATIOS));
  if (typeof fittingInBend !== 'boolean') {
    throw new InputError({ code: 'wrong-type', argument: 'fittingInBend', value: String(fittingInBend), allowed: 'true or false' });
  }
  const bendRatio = fittingInBend ? BEND_RATIO_AT_FITTING : BEND_RATIOS[dimensionRatio];
  const leastBendRadius = (bendRatio * outsideDiameter) as Length;
  const result: BendRadius = { bendRatio: bendRatio as Ratio, leastBendRadius };
  if (bendRadius === undefined) return { ...result, findings: [] };
  demand('bendRadius', 'length', bendRadius, { atLeast: outsideDiameter / 2, atMost: 1e3 });
  const finding: Finding = { code: 'bend-tight', level: 'warning', values: { bendRadius, leastBendRadius }, source: 'ppiBendRadius' };
  return { ...result, findings: bendRadius < leastBendRadius ? [finding] : [] };
}
