import { demand, InputError } from '../errors/index.js';
import { type FluidCondition, fluidPropertyBands, type OfAnyFluid } from '../fluid/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Flow, Pressure, Shape } from '../units/index.js';
import { fallingRoot } from './falling-root.js';
import { loopDropBand } from './loop-drop-band.js';
import type { PipeRun } from './run-loss.js';

/** A loop whose pressure drop was read. */
export interface DropRead extends OfAnyFluid<FluidCondition> {
  /** One circuit, header to header. */
  readonly circuit: PipeRun;
  /** How many equal circuits share the flow, 1 to 1000. */
  readonly circuits: number;
  /** Run between the two ports that carries the whole flow; none when left out. */
  readonly header?: PipeRun;
  /** Pressure drop between the ports, 10 to 1e6 [Pa]. */
  readonly dropRead: Pressure;
  /** How far the difference of the two readings may be off, 90 % limits; 0 when left out, less than the drop [Pa]. */
  readonly dropError?: Pressure;
}

/** What a pressure drop says of the flow. */
export interface FlowFromDrop {
  /** Flow of the loop [m3/s]. */
  readonly flow: Band<'flow'>;
}

/** Shape of {@link FlowFromDrop}. */
export const flowFromDropShape: Shape<FlowFromDrop> = { flow: /* @__PURE__ */ bandShape('flow') };

/** More than any loop carries [m3/s]. */
const MOST_FLOW = 10;
/** From which on one is sought [m3/s]. */
const LEAST_FLOW = 1e-6;

/**
 * Flow of a loop from the pressure drop read at its ports, with what gauges, viscosity, fittings and regime leave open.
 *
 * The stand-in for a flow meter. Where the regime is open the limits are far apart: read with water, or warm, where it is turbulent.
 *
 * @param of - see {@link DropRead}
 * @returns flow with limits of 90 % [m3/s]
 * @throws InputError for a value out of its range, or a drop that no flow of this loop makes
 * @remarks The inverse of the drop of {@link expectedLoopReadings}. Invariants tested: the drop expected at the flow found is the one read; limits hold
 * the estimate and widen with the error of the gauges.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, diameterMillimetres, kilopascals, litresPerSecond, massPercent, pipeMetres } = await import('../units/index.js');
 * const { flow } = flowFromDrop({
 *   circuit: { pipe: { insideDiameter: diameterMillimetres(27.3) }, length: pipeMetres(180) },
 *   circuits: 4,
 *   dropRead: kilopascals(13),
 *   dropError: kilopascals(1),
 *   fluid: 'water',
 *   massFraction: massPercent(0),
 *   temperature: celsius(12),
 * });
 * expect([flow.low, flow.estimate, flow.high].map((each) => litresPerSecond.of(each).toFixed(2))).toEqual(['0.77', '0.80', '0.84']);
 * ```
 */
export function flowFromDrop(of: DropRead): FlowFromDrop {
  const { circuit, circuits, header, dropRead, dropError = 0 as Pressure, fluid, massFraction, temperature } = of;
  demand('circuits', 'count', circuits, { atLeast: 1, atMost: 1000 });
  demand('dropRead', 'pressure', dropRead, { atLeast: 10, atMost: 1e6 });
  demand('dropError', 'pressure', dropError, { atLeast: 0, atMost: 0.9 * dropRead });
  const { density, viscosity } = fluidPropertyBands({ fluid, massFraction, temperature });
  const loop = { circuit, circuits, ...(header === undefined ? {} : { header }) };
  const dropAt = (flow: number): Band<'pressure'> =>
    loopDropBand({ ...loop, flow: flow as Flow }, { density: density.estimate, viscosity }, 0).pressureDrop;
  const most = greatestFlow(dropAt, (dropRead + dropError) as Pressure);
  const flowOf = (drop: number, limit: 'low' | 'estimate' | 'high'): number =>
    fallingRoot((flow) => drop - (flow === 0 ? 0 : dropAt(flow)[limit]), 0, most);
  const flow = {
    low: flowOf(dropRead - dropError, 'high'),
    estimate: flowOf(dropRead, 'estimate'),
    high: flowOf(dropRead + dropError, 'low'),
    coverage: viscosity.coverage,
  };
  return { flow: flow as Band<'flow'> };
}

/** A flow at which a loop drops more than was read, whatever its fluid is within limits. */
function greatestFlow(dropAt: (flow: number) => Band<'pressure'>, drop: Pressure): number {
  let flow = LEAST_FLOW;
  while (flow < MOST_FLOW && dropAt(flow).low < drop) flow *= 2;
  if (flow < MOST_FLOW) return flow;
  const value = { kind: 'pressure', value: drop } as const;
  throw new InputError({ code: 'impossible', argument: 'dropRead', value, allowed: 'a drop that a flow of this loop makes' });
}
