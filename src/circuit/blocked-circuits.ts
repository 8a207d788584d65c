import { demand, demandObject, locate } from '../errors/index.js';
import type { HydraulicFluid } from '../pipe/index.js';
import type { Flow, Pressure, Ratio, Shape } from '../units/index.js';
import { fallingRoot } from './falling-root.js';
import { type PipeRun, runLoss } from './run-loss.js';

/** A loop of equal circuits in which some may not run. */
export interface BlockableLoop {
  /** One circuit, header to header. */
  readonly circuit: PipeRun;
  /** How many equal circuits there are, 2 to 1000. */
  readonly circuits: number;
  /** Flow of the whole loop while all run, 1e-6 to 1 [m3/s]. */
  readonly flow: Flow;
  /** The fluid at the temperature of the day. */
  readonly fluid: HydraulicFluid;
  /** Run that carries the whole flow; none when left out. */
  readonly header?: PipeRun;
}

/** A loop in which some circuits are blocked or locked by air. */
export interface BlockedRow {
  /** How many circuits do not run. */
  readonly blocked: number;
  /** Flow of each that runs, at the same flow of the loop [m3/s]. */
  readonly circuitFlow: Flow;
  /** The same over that of a sound loop [1]. */
  readonly circuitFlowRatio: Ratio;
  /** Pressure drop of a circuit, at the same flow of the loop [Pa]. */
  readonly circuitDrop: Pressure;
  /** The same over that of a sound loop [1]. */
  readonly circuitDropRatio: Ratio;
  /** Pressure drop of circuit and header, at the same flow of the loop [Pa]. */
  readonly pressureDrop: Pressure;
  /** The same over that of a sound loop [1]. */
  readonly dropRatio: Ratio;
  /** Flow of the loop at the pressure drop of a sound one, as with a pump that keeps it [m3/s]. */
  readonly flowAtSameDrop: Flow;
}

/** Shape of {@link BlockedRow}. */
export const blockedRowShape: Shape<BlockedRow> = {
  blocked: 'count',
  circuitFlow: 'flow',
  circuitFlowRatio: 'ratio',
  circuitDrop: 'pressure',
  circuitDropRatio: 'ratio',
  pressureDrop: 'pressure',
  dropRatio: 'ratio',
  flowAtSameDrop: 'flow',
};

/**
 * What meters show when one, two or three circuits are blocked or locked by air.
 *
 * At the same flow of the loop the others take N/(N − b) of theirs, and drop about (N/(N − b))^1.75 while turbulent, N/(N − b) while laminar. A real
 * pump lies between the two cases: less flow and more drop. A kink, or a circuit longer than the others, shows less than this.
 *
 * @param of - see {@link BlockableLoop}
 * @returns a row for none blocked, one, two and three, as far as there are circuits left
 * @throws InputError for a value out of its range
 * @remarks Checked against the +33 % of flow and +65 % of drop of one in four (H-BLOCK). Invariants tested: circuits and flow of all are conserved; more blocked,
 * more drop; at the flow given for the same drop the loop has it.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds, pipeMetres } = await import('../units/index.js');
 * const [, one] = blockedCircuits({
 *   circuit: { pipe: { insideDiameter: diameterMillimetres(21.844) }, length: pipeMetres(152.4) },
 *   circuits: 4,
 *   flow: litresPerSecond(0.76),
 *   fluid: { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.306) },
 * });
 * expect(one?.circuitFlowRatio).toBeCloseTo(1.33, 2);
 * expect(one?.circuitDropRatio).toBeCloseTo(1.64, 2);
 * ```
 */
export function blockedCircuits({ circuit, circuits, flow, fluid, header }: BlockableLoop): readonly BlockedRow[] {
  demand('circuits', 'count', circuits, { atLeast: 2, atMost: 1000 });
  demand('flow', 'flow', flow, { atLeast: 1e-6, atMost: 1 });
  demandObject('fluid', fluid);
  demand('fluid.density', 'density', fluid.density, { atLeast: 500, atMost: 2000 });
  demand('fluid.viscosity', 'dynamic viscosity', fluid.viscosity, { atLeast: 1e-5, atMost: 100 });
  demandObject('circuit', circuit);
  demand('circuit.length', 'pipe length', circuit.length, { atLeast: 0.1, atMost: 1e6 });
  if (header !== undefined) demandObject('header', header);
  const circuitDropAt = (each: number): number =>
    locate('circuit', () => runLoss({ run: circuit, fluid, flow: each as Flow, roughness: undefined })).pressureDrop;
  const headerDropAt = (all: number): number =>
    header === undefined ? 0 : locate('header', () => runLoss({ run: header, fluid, flow: all as Flow, roughness: undefined })).pressureDrop;

  const sound = circuitDropAt(flow / circuits);
  const soundDrop = sound + headerDropAt(flow);
  return Array.from({ length: Math.min(4, circuits) }, (_, blocked) => {
    const running = circuits - blocked;
    const circuitDrop = circuitDropAt(flow / running);
    const pressureDrop = circuitDrop + headerDropAt(flow);
    return {
      blocked,
      circuitFlow: flow / running,
      circuitFlowRatio: circuits / running,
      circuitDrop,
      circuitDropRatio: circuitDrop / sound,
      pressureDrop,
      dropRatio: pressureDrop / soundDrop,
      flowAtSameDrop: blocked === 0 ? flow : fallingRoot((all) => soundDrop - circuitDropAt(all / running) - headerDropAt(all), 0, flow),
    } as BlockedRow;
  });
}
