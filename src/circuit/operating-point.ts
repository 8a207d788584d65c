import { demand, demandObject, InputError } from '../errors/index.js';
import type { Density, ElectricPower, Flow, Fraction, Head, Power, Pressure, Shape } from '../units/index.js';
import { fallingRoot } from './falling-root.js';
import { GRAVITY } from '../numerics/index.js';
import type { PumpCurve } from './pump-curve.js';

/** What {@link pumpOperatingPoint} needs. */
export interface PumpedSystem {
  /** The pump, or the pumps together. */
  readonly curve: PumpCurve;
  /** Density of the fluid, 500 to 2000 [kg/m3]. */
  readonly density: Density;
  /** What the whole loop with heat pump and indoor pipe drops at a flow; it rises with the flow [Pa]. */
  readonly dropAt: (flow: Flow) => Pressure;
  /** Power given to the fluid over electric input, above 0 to 0.9; from the curve's own electric input when left out [1]. */
  readonly pumpEfficiency?: Fraction;
}

/** Where the pump's head is just what the loop takes. */
export interface OperatingPoint {
  /** Flow of the whole loop [m3/s]. */
  readonly flow: Flow;
  /** Head of the pump, in metres of the fluid [m]. */
  readonly head: Head;
  /** What the loop drops [Pa]. */
  readonly pressureDrop: Pressure;
  /** Power given to the fluid, pressure · flow [W]. */
  readonly hydraulicPower: Power;
  /** Electric input; absent where neither the curve nor an efficiency tells it [W]. */
  readonly electricPower?: ElectricPower;
  /** Power given to the fluid over electric input [1]. */
  readonly pumpEfficiency?: Fraction;
}

/** Shape of {@link OperatingPoint}. */
export const operatingPointShape: Shape<OperatingPoint> = {
  flow: 'flow',
  head: 'head',
  pressureDrop: 'pressure',
  hydraulicPower: 'power',
  electricPower: { optional: 'electric power' },
  pumpEfficiency: { optional: 'fraction' },
};

/** The least flow that the loop is asked about: at none at all it drops nothing [m3/s]. */
const TRICKLE = 1e-6;
/** More of its electricity no pump gives to the fluid [1]. */
const BEST_EFFICIENCY = 0.9;

/**
 * Flow at which a pump's head is what the loop drops. There is one: heads fall and drops rise with the flow.
 *
 * A closed loop has no static lift. Small wet-rotor circulators give the fluid 15 to 30 % of their electricity, electronically commutated ones 30 to
 * 45 % (recalled); what a given pump needs stands on its data sheet.
 *
 * @param system - see {@link PumpedSystem}
 * @returns flow [m3/s], head [m], drop [Pa], power [W]
 * @throws InputError for a value out of its range, or a curve with less electric input than its fluid takes; `unreachable` when the loop drops more than the pump can lift at its least flow, or so little
 *   that the pump runs off the end of its curve
 * @remarks Checked against two operating points solved independently, at full and at 80 % speed (H-POINT). Invariants tested: head · density · g = drop to
 * 1e-9, no other crossing, more drop or less speed less flow.
 * @example
 * ```ts @import.meta.vitest
 * const { headMetres, kilogramsPerCubicMetre, litresPerSecond, pascals } = await import('../units/index.js');
 * const { pumpCurve } = await import('./make-pump-curve.js');
 * const points = [[0, 9], [1, 5]].map(([flow = 0, head = 0]) => ({ flow: litresPerSecond(flow), head: headMetres(head) }));
 * const { flow, head } = pumpOperatingPoint({
 *   curve: pumpCurve({ points }),
 *   density: kilogramsPerCubicMetre(1000),
 *   dropAt: (through) => pascals(1.2e8 * through),
 * });
 * expect(litresPerSecond.of(flow)).toBeCloseTo(0.5543, 4);
 * expect(head).toBeCloseTo(6.783, 3);
 * ```
 */
export function pumpOperatingPoint(system: PumpedSystem): OperatingPoint {
  const { curve, density, dropAt, pumpEfficiency } = system;
  demandObject('curve', curve);
  demand('density', 'density', density, { atLeast: 500, atMost: 2000 });
  if (pumpEfficiency !== undefined) demand('pumpEfficiency', 'fraction', pumpEfficiency, { above: 0, atMost: BEST_EFFICIENCY });
  demandFunction(dropAt);
  const { greatestFlow } = curve;
  const leastFlow = Math.max(curve.leastFlow, TRICKLE) as Flow;
  const surplusAt = (flow: number): number => {
    const drop = dropAt(flow as Flow);
    demand('dropAt', 'pressure', drop, { atLeast: 0 });
    return curve.headAt(flow as Flow) * density * GRAVITY - drop;
  };
  if (surplusAt(leastFlow) <= 0) throw refusal(leastFlow, 'a stronger pump, or a loop that drops less');
  if (surplusAt(greatestFlow) > 0) throw refusal(greatestFlow, 'a curve that goes on to greater flows, or a valve that throttles the loop');
  const flow = fallingRoot(surplusAt, leastFlow, greatestFlow) as Flow;
  const head = curve.headAt(flow);
  const pressureDrop = (head * density * GRAVITY) as Pressure;
  const hydraulicPower = (pressureDrop * flow) as Power;
  const point: OperatingPoint = { flow, head, pressureDrop, hydraulicPower };
  const electricPower = pumpEfficiency === undefined ? curve.electricPowerAt?.(flow) : ((hydraulicPower / pumpEfficiency) as ElectricPower);
  if (electricPower === undefined) return point;
  const hint = `the fluid takes ${String(Math.round(hydraulicPower))} W of it; kilowatts read as watts?`;
  demand('curve.points.*.electricPower', 'electric power', electricPower, { atLeast: hydraulicPower / BEST_EFFICIENCY }, hint);
  return { ...point, electricPower, pumpEfficiency: (hydraulicPower / electricPower) as Fraction };
}

function demandFunction(dropAt: unknown): void {
  if (typeof dropAt === 'function') return;
  throw new InputError({ code: 'wrong-type', argument: 'dropAt', value: typeof dropAt, allowed: 'a function of the flow that gives the drop' });
}

const refusal = (flow: Flow, allowed: string): InputError =>
  new InputError({
    code: 'unreachable',
    argument: 'curve',
    value: { kind: 'flow', value: flow },
    allowed,
    hint: 'the loop and the pump do not meet',
  });
