import { demand, demandCount, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { HydraulicFluid } from '../pipe/index.js';
import { joinedShape } from '../states/index.js';
import type { Diameter, Flow, Head, Pressure, Shape, Velocity } from '../units/index.js';
import { GRAVITY } from '../numerics/index.js';
import { type PipeRun, runLoss, type RunLoss, runLossShape } from './run-loss.js';

/** A stretch of header, supply and return together, with the circuits that lie beyond it. */
export interface HeaderSection extends PipeRun {
  /** How many circuits its flow feeds, 1 to all of them. */
  readonly circuits: number;
}

/** What {@link purgeFlow} needs. */
export interface PurgeFlowInput {
  /** One circuit, header to header; where circuits differ, the longest. */
  readonly circuit: PipeRun;
  /** How many equal circuits are purged together, 1 to 1000; 1 where each has a valve. */
  readonly circuits: number;
  /** Header sections from the cart to the far end, 1 to 100 of them; none when left out. */
  readonly headers?: readonly HeaderSection[];
  /** The fluid that is purged with: water as a rule, the mixture where the loop is filled with it. */
  readonly fluid: HydraulicFluid;
}

/** How a header section fares when the loop is purged. */
export interface PurgedSection extends RunLoss {
  /** Widest bore that the air is still carried through [m]. */
  readonly widestBore: Diameter;
}

/** What the purge cart has to deliver. */
export interface PurgeFlow {
  /** Velocity that carries air along, 2 ft/s [m/s]. */
  readonly velocity: Velocity;
  /** Flow of each circuit [m3/s]. */
  readonly circuitFlow: Flow;
  /** Flow of the cart [m3/s]. */
  readonly flow: Flow;
  /** The circuit while it is purged. */
  readonly circuit: RunLoss;
  /** The header sections, in the order given. */
  readonly headers: readonly PurgedSection[];
  /** Circuit and all header sections [Pa]. */
  readonly pressureDrop: Pressure;
  /** The same as a column of this fluid; hoses and cart come on top [m]. */
  readonly head: Head;
}

/** A {@link PurgeFlow} with its findings. */
export interface PurgeFlowResult extends PurgeFlow {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PurgeFlow}. */
export const purgeFlowShape: Shape<PurgeFlow> = {
  velocity: 'velocity',
  circuitFlow: 'flow',
  flow: 'flow',
  circuit: runLossShape,
  headers: { list: /* @__PURE__ */ joinedShape(runLossShape, { widestBore: 'diameter' }) },
  pressureDrop: 'pressure',
  head: 'head',
};

/** 2 ft/s [m/s]. */
const PURGE_VELOCITY = 0.6096;

/**
 * Flow and head of the cart that purges a loop: 2 ft/s in every circuit at once, and so the bore that each header section may have,
 * at most the circuit's bore · √(circuits beyond the section).
 *
 * For plain pipe; upright coils have a high point in every turn and need more. Circulators of the loop cannot purge it.
 *
 * @param input - see {@link PurgeFlowInput}
 * @returns flow, losses part by part, the widest bore of each section, and a finding for each section that stays full of air
 * @throws InputError for a value out of its range
 * @remarks Source: `purgeVelocity`. Checked against 33 pipes computed independently (H-PURGE). Invariants tested: a section at its widest bore runs at just the
 * purging velocity, the flow is proportional to the number of circuits.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterInches, diameterMillimetres, gallonsPerMinute, kilogramsPerCubicMetre, millipascalSeconds, pipeFeet } = await import('../units/index.js');
 * const { flow, findings, headers } = purgeFlow({
 *   circuit: { pipe: { insideDiameter: diameterInches(0.86) }, length: pipeFeet(500) },
 *   circuits: 3,
 *   headers: [{ pipe: { insideDiameter: diameterInches(1.943) }, length: pipeFeet(100), circuits: 3 }],
 *   fluid: { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.306) },
 * });
 * expect(gallonsPerMinute.of(flow)).toBeCloseTo(10.9, 1);
 * expect(diameterMillimetres.of(headers[0]?.widestBore ?? diameterMillimetres(0))).toBeCloseTo(37.8, 1);
 * expect(findings[0]?.code).toBe('header-not-purged');
 * ```
 */
export function purgeFlow({ circuit: run, circuits, headers: listed, fluid }: PurgeFlowInput): PurgeFlowResult {
  demandObject('circuit', run);
  demandObject('circuit.pipe', run.pipe);
  const { insideDiameter } = run.pipe;
  demand('circuit.pipe.insideDiameter', 'diameter', insideDiameter, { atLeast: 0.001, atMost: 2 });
  demand('circuits', 'count', circuits, { atLeast: 1, atMost: 1000 });
  if (listed !== undefined) demandCount('headers', listed, 1, 100);
  const headers = listed ?? [];
  demandObject('fluid', fluid);
  demand('fluid.density', 'density', fluid.density, { atLeast: 500, atMost: 2000 });
  demand('fluid.viscosity', 'dynamic viscosity', fluid.viscosity, { atLeast: 1e-5, atMost: 100 });

  const circuitFlow = PURGE_VELOCITY * (Math.PI / 4) * insideDiameter ** 2;
  const circuit = locate('circuit', () => runLoss({ run, fluid, flow: circuitFlow as Flow, roughness: undefined }));
  const sections = headers.map((section, index) => {
    const path = `headers.${String(index)}`;
    demandObject(path, section);
    demand(`${path}.circuits`, 'count', section.circuits, { atLeast: 1, atMost: circuits });
    const flow = (section.circuits * circuitFlow) as Flow;
    const loss = locate(path, () => runLoss({ run: section, fluid, flow, roughness: undefined }));
    return { ...loss, widestBore: (insideDiameter * Math.sqrt(section.circuits)) as Diameter };
  });
  const pressureDrop = circuit.pressureDrop + sections.reduce((sum, section) => sum + section.pressureDrop, 0);
  const findings = headers.flatMap(({ pipe, circuits: beyond }): Finding[] => {
    const widest = (insideDiameter * Math.sqrt(beyond)) as Diameter;
    if (pipe.insideDiameter <= widest) return [];
    const values = { bore: pipe.insideDiameter, widest, circuits: beyond };
    return [{ code: 'header-not-purged', level: 'warning', values, source: 'purgeVelocity' }];
  });
  return {
    velocity: PURGE_VELOCITY as Velocity,
    circuitFlow: circuitFlow as Flow,
    flow: (circuits * circuitFlow) as Flow,
    circuit,
    headers: sections,
    pressureDrop: pressureDrop as Pressure,
    head: (pressureDrop / (fluid.density * GRAVITY)) as Head,
    findings,
  };
}
