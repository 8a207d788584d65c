import { demand, demandObject } from '../errors/index.js';
import type { ElectricPower, Flow, Head, Ratio } from '../units/index.js';
import type { PumpCurve } from './pump-curve.js';

/** What {@link pumpAtSpeed} needs. */
export interface PumpSpeed {
  /** The pump at the speed of its points. */
  readonly curve: PumpCurve;
  /** Speed over that speed, 0.2 to 2 [1]. */
  readonly speedRatio: Ratio;
}

/**
 * A pump at another speed, by the affinity laws: flow ∝ speed, head ∝ speed², electric input ∝ speed³.
 *
 * They hold along the pump's own curve; where loop and pump then meet follows only if the loop drops with the flow squared, so ask
 * {@link pumpOperatingPoint}. Motor and electronics lose more than this says at low speed.
 *
 * @param of - see {@link PumpSpeed}
 * @returns the curve at that speed
 * @throws InputError for a value out of its range
 * @remarks Affinity laws, `common practice`. Checked at 80 % speed (H-POINT). Invariants tested: speed 1 changes nothing, two changes are one by their product.
 * @example
 * ```ts @import.meta.vitest
 * const { headMetres, litresPerSecond, ratio } = await import('../units/index.js');
 * const { pumpCurve } = await import('./make-pump-curve.js');
 * const points = [[0, 9], [1, 5]].map(([flow = 0, head = 0]) => ({ flow: litresPerSecond(flow), head: headMetres(head) }));
 * const slower = pumpAtSpeed({ curve: pumpCurve({ points }), speedRatio: ratio(0.8) });
 * expect(slower.headAt(litresPerSecond(0.4))).toBeCloseTo(0.64 * 7, 9);
 * ```
 */
export function pumpAtSpeed({ curve, speedRatio }: PumpSpeed): PumpCurve {
  demandObject('curve', curve);
  demand('speedRatio', 'ratio', speedRatio, { atLeast: 0.2, atMost: 2 });
  const { leastFlow, greatestFlow, residual, headAt, electricPowerAt } = curve;
  // Dividing may round past an end of the curve by the last bit.
  const atFull = (flow: Flow): Flow => {
    demand('flow', 'flow', flow, { atLeast: speedRatio * leastFlow, atMost: speedRatio * greatestFlow });
    return Math.min(Math.max(flow / speedRatio, leastFlow), greatestFlow) as Flow;
  };
  const slower = {
    leastFlow: (speedRatio * leastFlow) as Flow,
    greatestFlow: (speedRatio * greatestFlow) as Flow,
    residual: (speedRatio ** 2 * residual) as Head,
    headAt: (flow: Flow) => (speedRatio ** 2 * headAt(atFull(flow))) as Head,
  };
  if (electricPowerAt === undefined) return slower;
  return { ...slower, electricPowerAt: (flow) => (speedRatio ** 3 * electricPowerAt(atFull(flow))) as ElectricPower };
}
