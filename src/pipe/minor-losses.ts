import { demand, demandCount, demandObject, locate } from '../errors/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { PipeLength, Pressure, Shape } from '../units/index.js';
import { type Fitting, fittingLoss } from './fitting-loss.js';
import { flowVelocity, reynoldsNumber } from './flow.js';
import { type FrictionFlow, pressureGradient } from './pressure-gradient.js';

/** Fittings of one sort. */
export interface FittingCount {
  /** The fitting. */
  readonly fitting: Fitting;
  /** How many of them, 1 to 1e4. */
  readonly count: number;
}

/** A flow through a pipe with fittings. */
export interface FittedFlow extends FrictionFlow {
  /** The fittings, 1 to 100 sorts. */
  readonly fittingCounts: readonly FittingCount[];
}

/** What the fittings of a pipe lose. */
export interface MinorLosses {
  /** All coefficients added up, in velocity heads [1]. */
  readonly lossCoefficient: Band<'ratio'>;
  /** Pressure lost in the fittings [Pa]. */
  readonly fittingsDrop: Pressure;
  /** Straight pipe that would lose as much [m]. */
  readonly equivalentLength: PipeLength;
}

/** Shape of {@link MinorLosses}. */
export const minorLossesShape: Shape<MinorLosses> = {
  lossCoefficient: /* @__PURE__ */ bandShape('ratio'),
  fittingsDrop: 'pressure',
  equivalentLength: 'pipe length',
};

/**
 * Pressure lost in the fittings of a pipe, and the straight pipe that would lose as much.
 *
 * @param of - bore [m], fluid, flow through the one pipe, above 0 [m3/s], roughness [m], fittings with their counts
 * @returns coefficient [1], pressure [Pa] and equivalent length [m]
 * @throws InputError when a number is impossible or a fitting unknown
 * @remarks
 * Δp = K ρ v²/2, L = Δp over the gradient of straight pipe. Source: `hooper1981`. The errors of one method lie to the same side, so the band of
 * the sum is the sum of the bands.
 *
 * Invariants: proportional to the counts; the order does not matter; equivalent length · gradient = drop.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds } = await import('../units/index.js');
 * const { fittingsDrop, equivalentLength } = minorLosses({
 *   pipe: { insideDiameter: diameterMillimetres(21.844) },
 *   fluid: { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) },
 *   flow: litresPerSecond(0.19),
 *   fittingCounts: [{ fitting: 'elbow 90 welded', count: 4 }, { fitting: 'fusion joint', count: 10 }],
 * });
 * expect(fittingsDrop).toBeCloseTo(560, 0);
 * expect(equivalentLength).toBeCloseTo(2.195, 3);
 * ```
 */
export function minorLosses(of: FittedFlow): MinorLosses {
  const { pipe, fluid, flow, fittingCounts } = of;
  demand('flow', 'flow', flow, { above: 0 }, 'at standstill nothing is lost');
  const gradient = pressureGradient(of);
  const reynolds = reynoldsNumber(of);
  demand('reynolds', 'ratio', reynolds, { atLeast: 1, atMost: 1e8 }, 'flow, bore and viscosity do not go together');
  demandCount('fittingCounts', fittingCounts, 1, 100);
  const lossCoefficient = { low: 0, estimate: 0, high: 0, coverage: 0.9 };
  fittingCounts.forEach((each, index) => {
    const path = `fittingCounts.${String(index)}`;
    demandObject(path, each);
    demand(`${path}.count`, 'count', each.count, { atLeast: 1, atMost: 1e4 });
    const loss = locate(path, () => fittingLoss({ fitting: each.fitting, insideDiameter: pipe.insideDiameter, reynolds }).lossCoefficient);
    lossCoefficient.low += each.count * loss.low;
    lossCoefficient.estimate += each.count * loss.estimate;
    lossCoefficient.high += each.count * loss.high;
  });
  const fittingsDrop = (lossCoefficient.estimate * fluid.density * flowVelocity(of) ** 2) / 2;
  return { lossCoefficient, fittingsDrop, equivalentLength: fittingsDrop / gradient } as MinorLosses;
}
