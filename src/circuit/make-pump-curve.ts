import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import type { ElectricPower, Flow, Head } from '../units/index.js';
import { fallingParabola, linesThrough } from './curve-through.js';
import type { PumpCurve, PumpCurveInput, PumpPoint } from './pump-curve.js';

/** Points closer than this are one [m3/s]. */
const LEAST_APART = 1e-6;

/**
 * A pump's head and electric input over its flow, from points of its data sheet.
 *
 * Between the outer points and nowhere else. Heads must fall as the flow rises, or a loop could have two operating points; the parabola is the best
 * of those that fall throughout. A pump's curve bows above lines between its points, so that lines promise a little less than there is. Electric input
 * goes by lines in either form. Heads count in metres of the fluid pumped; thick fluid takes some of them away, which no method here accounts for: ask
 * the maker.
 *
 * @param input - see {@link PumpCurveInput}
 * @returns head [m] and electric input [W] over the flow [m3/s]
 * @throws InputError for a value out of its range; `impossible` when two points have one flow, the head does not fall, or only some
 *   points tell the electric input
 * @remarks Lines and least squares, `common practice`. Invariants tested: lines pass through the points, points from a parabola give it back, the head
 * falls everywhere.
 * @example
 * ```ts @import.meta.vitest
 * const { headMetres, litresPerSecond } = await import('../units/index.js');
 * const points = [[0, 9], [0.5, 8], [1, 5]].map(([flow = 0, head = 0]) => ({ flow: litresPerSecond(flow), head: headMetres(head) }));
 * expect(pumpCurve({ points }).headAt(litresPerSecond(0.75))).toBeCloseTo(6.5, 9);
 * expect(pumpCurve({ points, form: 'parabola' }).headAt(litresPerSecond(0.75))).toBeCloseTo(6.75, 9);
 * ```
 */
export function pumpCurve({ points: given, form = 'lines' }: PumpCurveInput): PumpCurve {
  demandChoice('form', form, ['lines', 'parabola']);
  demandCount('points', given, form === 'parabola' ? 3 : 2, 100);
  const points = demandPoints(given);
  const flows = points.map(({ flow }) => flow);
  const heads = points.map(({ head }) => head);
  const powers = points.flatMap(({ electricPower }) => (electricPower === undefined ? [] : [electricPower]));
  const lines = form === 'lines';
  const head = lines ? linesThrough(flows, heads) : fallingParabola(flows, heads);
  const [leastFlow = 0 as Flow, greatestFlow = 0 as Flow] = [flows[0], flows[flows.length - 1]];
  const inside = (curve: (flow: number) => number, flow: Flow): number => {
    demand('flow', 'flow', flow, { atLeast: leastFlow, atMost: greatestFlow }, 'the curve tells nothing beyond its outer points');
    return curve(flow);
  };
  const residual = lines ? 0 : Math.max(...points.map((point) => Math.abs(head(point.flow) - point.head)));
  const curve = { leastFlow, greatestFlow, residual: residual as Head, headAt: (flow: Flow) => inside(head, flow) as Head };
  if (powers.length === 0) return curve;
  const power = linesThrough(flows, powers);
  return { ...curve, electricPowerAt: (flow) => inside(power, flow) as ElectricPower };
}

/** The points by rising flow. */
function demandPoints(given: readonly PumpPoint[]): readonly PumpPoint[] {
  for (const [index, point] of given.entries()) {
    const path = `points.${String(index)}`;
    demandObject(path, point);
    demand(`${path}.flow`, 'flow', point.flow, { atLeast: 0, atMost: 1 });
    demand(`${path}.head`, 'head', point.head, { atLeast: 0, atMost: 1000 });
    if (point.electricPower !== undefined) demand(`${path}.electricPower`, 'electric power', point.electricPower, { above: 0, atMost: 1e6 });
  }
  const told = given.filter(({ electricPower }) => electricPower !== undefined).length;
  if (told > 0 && told < given.length) throw refusal('points', { kind: 'count', value: told }, 'the electric input at every point or at none');
  const points = [...given].sort((a, b) => a.flow - b.flow);
  points.forEach((point, index) => {
    const next = points[index + 1];
    if (next === undefined || (next.flow - point.flow >= LEAST_APART && next.head < point.head)) return;
    if (next.flow - point.flow < LEAST_APART) throw refusal('points', { kind: 'flow', value: next.flow }, 'one point at each flow');
    const hint = 'some curves droop towards no flow: leave out the points before the summit, or give the summit’s head at no flow';
    throw refusal('points', { kind: 'head', value: next.head }, 'heads that fall as the flow rises', hint);
  });
  return points;
}

const refusal = (argument: string, value: InputError['value'], allowed: string, hint?: string): InputError =>
  new InputError({ code: 'impossible', argument, value, allowed, hint });
