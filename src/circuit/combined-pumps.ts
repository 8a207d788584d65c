import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import type { ElectricPower, Flow, Head } from '../units/index.js';
import { fallingRoot } from './falling-root.js';
import type { PumpCurve } from './pump-curve.js';

/**
 * Pumps one behind the other: one flow through all, heads added up.
 *
 * @param curves - the pumps, 1 to 10
 * @returns them as one, over the flows that all their curves tell of
 * @throws InputError when there is none or too many; `impossible` when no flow is on all their curves
 * @remarks Common practice. Invariant tested: two alike have twice the head and the electric input at every flow.
 * @example
 * ```ts @import.meta.vitest
 * const { headMetres, litresPerSecond } = await import('../units/index.js');
 * const { pumpCurve } = await import('./make-pump-curve.js');
 * const points = [[0, 9], [1, 5]].map(([flow = 0, head = 0]) => ({ flow: litresPerSecond(flow), head: headMetres(head) }));
 * const curve = pumpCurve({ points });
 * expect(pumpsInSeries([curve, curve]).headAt(litresPerSecond(0.5))).toBeCloseTo(14, 9);
 * ```
 */
export function pumpsInSeries(curves: readonly PumpCurve[]): PumpCurve {
  demandCurves(curves);
  const leastFlow = Math.max(...curves.map((curve) => curve.leastFlow)) as Flow;
  const greatestFlow = Math.min(...curves.map((curve) => curve.greatestFlow)) as Flow;
  if (leastFlow >= greatestFlow) throw refusal(leastFlow, 'pumps whose curves share some flows');
  const powers = powersOf(curves);
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const together = {
    leastFlow,
    greatestFlow,
    residual: sum(curves.map(({ residual }) => residual)) as Head,
    headAt: (flow: Flow) => sum(curves.map(({ headAt }) => headAt(flow))) as Head,
  };
  if (powers === undefined) return together;
  return { ...together, electricPowerAt: (flow) => sum(powers.map((powerAt) => powerAt(flow))) as ElectricPower };
}

/**
 * Pumps side by side, each with a check valve: one head across all, flows added up. A pump that cannot lift that much stands still behind its valve and
 * still draws its electricity.
 *
 * @param curves - the pumps, 1 to 10, each with a curve from no flow on
 * @returns them as one, as far as none runs off the end of its curve
 * @throws InputError when there is none or too many; `impossible` when a curve does not begin at no flow or they share no head
 * @remarks Common practice. Invariants tested: two alike give twice the flow at every head; at shut-off the stronger alone sets the head.
 * @example
 * ```ts @import.meta.vitest
 * const { headMetres, litresPerSecond } = await import('../units/index.js');
 * const { pumpCurve } = await import('./make-pump-curve.js');
 * const points = [[0, 9], [1, 5]].map(([flow = 0, head = 0]) => ({ flow: litresPerSecond(flow), head: headMetres(head) }));
 * const curve = pumpCurve({ points });
 * expect(pumpsInParallel([curve, curve]).headAt(litresPerSecond(1))).toBeCloseTo(7, 9);
 * ```
 */
export function pumpsInParallel(curves: readonly PumpCurve[]): PumpCurve {
  demandCurves(curves);
  for (const { leastFlow } of curves) if (leastFlow > 0) throw refusal(leastFlow, 'curves that begin at no flow');
  const least = Math.max(...curves.map(({ headAt, greatestFlow }) => headAt(greatestFlow)));
  const most = Math.max(...curves.map(({ headAt, leastFlow }) => headAt(leastFlow)));
  const flowOf = ({ headAt, leastFlow, greatestFlow }: PumpCurve, head: number): number => {
    if (headAt(leastFlow) <= head) return 0;
    return fallingRoot((flow) => headAt(flow as Flow) - head, leastFlow, greatestFlow);
  };
  const flowsAt = (head: number): number[] => curves.map((curve) => flowOf(curve, head));
  const totalAt = (head: number): number => flowsAt(head).reduce((total, flow) => total + flow, 0);
  const greatestFlow = totalAt(least) as Flow;
  const headAt = (flow: Flow): Head => {
    demand('flow', 'flow', flow, { atLeast: 0, atMost: greatestFlow });
    return (flow >= greatestFlow ? least : fallingRoot((head) => totalAt(head) - flow, least, most)) as Head;
  };
  const powers = powersOf(curves);
  const residual = Math.max(...curves.map((curve) => curve.residual)) as Head;
  const together = { leastFlow: 0 as Flow, greatestFlow, residual, headAt };
  if (powers === undefined) return together;
  return {
    ...together,
    electricPowerAt: (flow) => {
      const flows = flowsAt(headAt(flow));
      return powers.reduce((total, powerAt, index) => total + powerAt((flows[index] ?? 0) as Flow), 0) as ElectricPower;
    },
  };
}

function demandCurves(curves: readonly PumpCurve[]): void {
  demandCount('curves', curves, 1, 10);
  for (const [index, curve] of curves.entries()) demandObject(`curves.${String(index)}`, curve);
}

/** The electric inputs, if every pump tells its own. */
function powersOf(curves: readonly PumpCurve[]): readonly ((flow: Flow) => ElectricPower)[] | undefined {
  const powers = curves.flatMap(({ electricPowerAt }) => (electricPowerAt === undefined ? [] : [electricPowerAt]));
  return powers.length === curves.length ? powers : undefined;
}

const refusal = (value: Flow, allowed: string): InputError =>
  new InputError({ code: 'impossible', argument: 'curves', value: { kind: 'flow', value }, allowed });
