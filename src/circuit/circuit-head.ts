import { demand, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { HydraulicFluid } from '../pipe/index.js';
import type { Flow, Fraction, Head, Length, Power, Pressure, Shape, Velocity } from '../units/index.js';
import { GRAVITY } from '../numerics/index.js';
import { type PipeRun, runLoss, type RunLoss, runLossShape } from './run-loss.js';

/** What {@link circuitHead} needs. */
export interface CircuitHeadInput {
  /** One circuit, header to header; where circuits differ, the longest. */
  readonly circuit: PipeRun;
  /** How many equal circuits share the flow, 1 to 1000. */
  readonly circuits: number;
  /** Flow of the whole loop, 1e-6 to 1 [m3/s]. */
  readonly flow: Flow;
  /** The fluid at its coldest design temperature, where the pump works hardest. */
  readonly fluid: HydraulicFluid;
  /** Run to the house and back that carries the whole flow; none when the manifold stands in the house. */
  readonly header?: PipeRun;
  /** Pressure drop of the heat pump's water side with this fluid at this flow, 0 to 1e6; 0 when left out [Pa]. */
  readonly equipmentDrop?: Pressure;
  /** Absolute roughness of the bores; that of drawn plastic when left out [m]. */
  readonly roughness?: Length;
}

/** What the pump has to overcome, part by part. */
export interface CircuitHead {
  /** Flow of each circuit [m3/s]. */
  readonly circuitFlow: Flow;
  /** The circuit. */
  readonly circuit: RunLoss;
  /** The run to the house and back. */
  readonly header?: RunLoss;
  /** The heat pump's water side [Pa]. */
  readonly equipmentDrop: Pressure;
  /** All of it [Pa]. */
  readonly pressureDrop: Pressure;
  /** All of it as a column of this fluid, pressure/(density · g) [m]. */
  readonly head: Head;
  /** Power given to the fluid, pressure · flow; the pump's electricity is this over its efficiency [W]. */
  readonly hydraulicPower: Power;
}

/** A {@link CircuitHead} with its findings. */
export interface CircuitHeadResult extends CircuitHead {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link CircuitHead}. */
export const circuitHeadShape: Shape<CircuitHead> = {
  circuitFlow: 'flow',
  circuit: runLossShape,
  header: { optional: runLossShape },
  equipmentDrop: 'pressure',
  pressureDrop: 'pressure',
  head: 'head',
  hydraulicPower: 'power',
};

/** 30 ft of fluid, the upper end of what residential loops usually need [m]. */
export const USUAL_HEAD = 9.144 as Head;
/** Share of the circuit's drop that a header should stay within [1]. */
const USUAL_HEADER_SHARE = 0.3;
/** 5 ft/s [m/s]. */
const USUAL_VELOCITY = 1.524 as Velocity;

/**
 * Pressure drop, head and hydraulic power of a closed loop of equal circuits in parallel: one circuit + header + equipment. A closed loop has no static
 * lift.
 *
 * @param input - see {@link CircuitHeadInput}
 * @returns every part, the sum, and findings
 * @throws InputError for a value out of its range
 * @remarks Checked against 38 circuits computed independently (H-DP). Invariants tested: the drop of a run is proportional to its length, equal
 * circuits at a share of the flow drop the same as one at that flow, pressure = density · g · head, power = pressure · flow.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds, pipeMetres } = await import(
 *   '../units/index.js'
 * );
 * const pipe = { insideDiameter: diameterMillimetres(26) };
 * const { circuit, head } = circuitHead({
 *   circuit: { pipe, length: pipeMetres(150) },
 *   circuits: 4,
 *   flow: litresPerSecond(0.8),
 *   fluid: { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) },
 * });
 * expect(circuit.reynolds).toBeCloseTo(2567, 0);
 * expect(head).toBeCloseTo(1.53, 2);
 * ```
 */
export function circuitHead(input: CircuitHeadInput): CircuitHeadResult {
  const { circuits, flow, fluid, roughness, equipmentDrop = 0 as Pressure } = input;
  demand('circuits', 'count', circuits, { atLeast: 1, atMost: 1000 });
  demand('flow', 'flow', flow, { atLeast: 1e-6, atMost: 1 });
  demand('equipmentDrop', 'pressure', equipmentDrop, { atLeast: 0, atMost: 1e6 });
  demandObject('fluid', fluid);
  demand('fluid.density', 'density', fluid.density, { atLeast: 500, atMost: 2000 });
  demand('fluid.viscosity', 'dynamic viscosity', fluid.viscosity, { atLeast: 1e-5, atMost: 100 });
  if (roughness !== undefined) demand('roughness', 'length', roughness, { atLeast: 0, atMost: 0.001 });
  demandObject('circuit', input.circuit);
  if (input.header !== undefined) demandObject('header', input.header);

  const circuitFlow = (flow / circuits) as Flow;
  const circuit = locate('circuit', () => runLoss({ run: input.circuit, fluid, flow: circuitFlow, roughness }));
  const run = input.header;
  const header = run === undefined ? undefined : locate('header', () => runLoss({ run, fluid, flow, roughness }));
  const pressureDrop = circuit.pressureDrop + (header?.pressureDrop ?? 0) + equipmentDrop;
  const result: CircuitHead = {
    circuitFlow,
    circuit,
    ...(header === undefined ? {} : { header }),
    equipmentDrop,
    pressureDrop: pressureDrop as Pressure,
    head: (pressureDrop / (fluid.density * GRAVITY)) as Head,
    hydraulicPower: (pressureDrop * flow) as Power,
  };
  return { ...result, findings: findingsOf(result) };
}

function findingsOf({ circuit, header, head }: CircuitHead): Finding[] {
  const findings: Finding[] = [];
  const velocity = Math.max(circuit.velocity, header?.velocity ?? 0) as Velocity;
  if (velocity > USUAL_VELOCITY) {
    findings.push({ code: 'fluid-fast', level: 'warning', values: { velocity, usual: USUAL_VELOCITY }, source: 'modelCodeVelocity' });
  }
  if (head > USUAL_HEAD) {
    findings.push({ code: 'pump-head-high', level: 'warning', values: { head, usual: USUAL_HEAD }, source: 'residentialPumpHead' });
  }
  if (header !== undefined && header.pressureDrop > USUAL_HEADER_SHARE * circuit.pressureDrop) {
    const [headerDrop, circuitDrop] = [header.pressureDrop, circuit.pressureDrop];
    const values = { headerDrop, circuitDrop, share: (headerDrop / circuitDrop) as Fraction };
    if (circuitDrop > 0) findings.push({ code: 'header-loss-high', level: 'note', values, source: 'common practice' });
  }
  return findings;
}
