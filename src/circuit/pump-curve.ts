import type { ElectricPower, Flow, Head, Shape } from '../units/index.js';

/** A point of a pump's curve as its data sheet has it. */
export interface PumpPoint {
  /** Flow, 0 to 1 [m3/s]. */
  readonly flow: Flow;
  /** Head there, 0 to 1000 [m]. */
  readonly head: Head;
  /** Electric input there; given at every point or at none [W]. */
  readonly electricPower?: ElectricPower;
}

/** What {@link pumpCurve} needs. */
export interface PumpCurveInput {
  /** Points in any order, 2 to 100; the head falls with the flow. */
  readonly points: readonly PumpPoint[];
  /** Straight lines from point to point, or the parabola that fits best, from three points up; lines when left out. */
  readonly form?: 'lines' | 'parabola';
}

/** Shape of {@link PumpCurveInput}. */
export const pumpCurveInputShape: Shape<PumpCurveInput> = {
  points: { list: { flow: 'flow', head: 'head', electricPower: { optional: 'electric power' } } },
  form: { optional: ['lines', 'parabola'] },
};

/** A pump, or several that work together, at one speed. */
export interface PumpCurve {
  /** Least flow that the curve tells of [m3/s]. */
  readonly leastFlow: Flow;
  /** Greatest flow that it tells of [m3/s]. */
  readonly greatestFlow: Flow;
  /** How far the curve lies off its points at most; 0 for lines [m]. */
  readonly residual: Head;
  /** Head at a flow; falls as the flow rises [m]. */
  readonly headAt: (flow: Flow) => Head;
  /** Electric input at a flow; absent where no point told it [W]. */
  readonly electricPowerAt?: (flow: Flow) => ElectricPower;
}
