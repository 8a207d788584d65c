import { demand, demandCount, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { HydraulicFluid } from '../pipe/index.js';
import { joinedShape } from '../states/index.js';
import type { Diameter, Flow, Head, Pressure, Ratio, Shape, Time, Velocity } from '../units/index.js';
import { GRAVITY } from '../numerics/index.js';
import type { HeaderSection } from './purge-flow.js';
import { type PipeRun, runLoss, type RunLoss, runLossShape } from './run-loss.js';

/** What {@link flushLoop} needs. */
export interface FlushLoopInput {
  /** One circuit, header to header; where circuits differ, the longest. */
  readonly circuit: PipeRun;
  /** How many equal circuits are flushed together, 1 to 1000; 1 where each has a valve. */
  readonly circuits: number;
  /** Header pieces from the cart to the far end, 1 to 100 of them; none when left out. */
  readonly headers?: readonly HeaderSection[];
  /** Flow of the cart, 1e-5 to 1 [m3/s]. */
  readonly flow: Flow;
  /** The fluid that is flushed with: water as a rule. */
  readonly fluid: HydraulicFluid;
  /** Pressure that filter, hoses and valves of the cart lose at this flow, 0 to 1e6; 0 when left out [Pa]. */
  readonly cartDrop?: Pressure;
  /** Velocity that carries air along, 0.3 to 3; 2 ft/s when left out. Upright coils, with a high point in every turn, want more [m/s]. */
  readonly velocity?: Velocity;
  /** How many times the contents pass the filter before what comes back is looked at, 1 to 100; 3 when left out [1]. */
  readonly turnovers?: Ratio;
}

/** A piece of the loop while it is flushed. */
export interface FlushedSection extends RunLoss {
  /** Flow through it [m3/s]. */
  readonly sectionFlow: Flow;
  /** Flow of the cart at which it reaches the purging velocity [m3/s]. */
  readonly leastFlow: Flow;
  /** Widest bore that still purges in its place at the cart's flow [m]. */
  readonly widestBore: Diameter;
}

/** A loop while it is flushed. */
export interface FlushedLoop {
  /** Velocity asked for [m/s]. */
  readonly velocity: Velocity;
  /** The circuit. */
  readonly circuit: FlushedSection;
  /** The header pieces, in the order given. */
  readonly headers: readonly FlushedSection[];
  /** Least flow of the cart that purges every piece [m3/s]. */
  readonly leastFlow: Flow;
  /** Pipe and cart together [Pa]. */
  readonly pressureDrop: Pressure;
  /** The same as a column of the fluid: what the cart's pump has to make at this flow [m]. */
  readonly head: Head;
  /** The contents pass once [s]. */
  readonly turnoverTime: Time;
  /** Flushing until the return is looked at: the turnovers asked for [s]. */
  readonly flushTime: Time;
  /** Purging on after the last bubble [s]. */
  readonly purgeTime: Time;
}

/** A {@link FlushedLoop} with its findings. */
export interface FlushedLoopResult extends FlushedLoop {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

const flushedSectionShape: Shape<FlushedSection> = /* @__PURE__ */ joinedShape(runLossShape, {
  sectionFlow: 'flow',
  leastFlow: 'flow',
  widestBore: 'diameter',
});

/** Shape of {@link FlushedLoop}. */
export const flushedLoopShape: Shape<FlushedLoop> = {
  velocity: 'velocity',
  circuit: flushedSectionShape,
  headers: { list: flushedSectionShape },
  leastFlow: 'flow',
  pressureDrop: 'pressure',
  head: 'head',
  turnoverTime: 'time',
  flushTime: 'time',
  purgeTime: 'time',
};

/** 2 ft/s [m/s]. */
const PURGE_VELOCITY = 0.6096 as Velocity;
/** 15 minutes [s]. */
const PURGE_TIME = 900 as Time;

/**
 * What a given cart does in a loop: velocity in every piece of pipe, the flow that it would take to purge each, the widest bore that the flow at
 * hand purges there, head, and minutes.
 *
 * {@link purgeFlow} answers the reverse: the flow that a loop needs. Equal circuits: where they differ, the longest is the slowest. Plain pipe; in
 * upright coils ask for more velocity and test for air with {@link trappedAir}. A filter loads up while it works: give its loss as it is when
 * dirty. Dirt goes first, with the heat pump shut off; then the heat pump is let in and purged too.
 *
 * @param input - see {@link FlushLoopInput}
 * @returns velocities, flows, bores, head and times, and a finding for each piece too slow to be purged
 * @throws InputError for a value out of its range
 * @remarks Sources: `purgeVelocity` for 2 ft/s and 15 minutes past the last bubble, `purgeVelocityHomes` for 15 minutes in each piece; three turnovers
 * before the return is looked at are common practice. Checked against 33 pipes computed independently (H-FLUSH). Invariants tested: each piece at its
 * least flow, or with its widest bore, runs at just the velocity; at the flow of {@link purgeFlow} the circuit does, and the drop is the same;
 * volume = flow · turnover time.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterInches, gallonsPerMinute, kilogramsPerCubicMetre, millipascalSeconds, minutes, pipeFeet } = await import('../units/index.js');
 * const { circuit, headers, leastFlow, turnoverTime } = flushLoop({
 *   circuit: { pipe: { insideDiameter: diameterInches(0.86) }, length: pipeFeet(500) },
 *   circuits: 4,
 *   headers: [{ pipe: { insideDiameter: diameterInches(1.943) }, length: pipeFeet(100), circuits: 4 }],
 *   flow: gallonsPerMinute(16),
 *   fluid: { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.306) },
 * });
 * expect([circuit.velocity > 0.6096, (headers[0]?.velocity ?? 0) > 0.6096]).toEqual([true, false]);
 * expect(gallonsPerMinute.of(leastFlow)).toBeCloseTo(18.5, 1);
 * expect(minutes.of(turnoverTime)).toBeCloseTo(4.7, 1);
 * ```
 */
export function flushLoop(input: FlushLoopInput): FlushedLoopResult {
  const { circuits, flow, fluid, headers = [], cartDrop = 0, velocity = PURGE_VELOCITY, turnovers = 3 } = input;
  demand('circuits', 'count', circuits, { atLeast: 1, atMost: 1000 });
  if (input.headers !== undefined) demandCount('headers', input.headers, 1, 100);
  demand('flow', 'flow', flow, { atLeast: 1e-5, atMost: 1 });
  demand('cartDrop', 'pressure', cartDrop, { atLeast: 0, atMost: 1e6 });
  demand('velocity', 'velocity', velocity, { atLeast: 0.3, atMost: 3 });
  demand('turnovers', 'ratio', turnovers, { atLeast: 1, atMost: 100 });
  demandObject('fluid', fluid);
  demand('fluid.density', 'density', fluid.density, { atLeast: 500, atMost: 2000 });
  demand('fluid.viscosity', 'dynamic viscosity', fluid.viscosity, { atLeast: 1e-5, atMost: 100 });

  const flushed = (path: string, run: PipeRun, beyond: number): FlushedSection => {
    demandObject(path, run);
    demandObject(`${path}.pipe`, run.pipe);
    demand(`${path}.pipe.insideDiameter`, 'diameter', run.pipe.insideDiameter, { atLeast: 0.001, atMost: 2 });
    const sectionFlow = ((flow * beyond) / circuits) as Flow;
    const loss = locate(path, () => runLoss({ run, fluid, flow: sectionFlow, roughness: undefined }));
    return {
      ...loss,
      sectionFlow,
      leastFlow: ((flow * velocity) / loss.velocity) as Flow,
      widestBore: (run.pipe.insideDiameter * Math.sqrt(loss.velocity / velocity)) as Diameter,
    };
  };
  const circuit = flushed('circuit', input.circuit, 1);
  const sections = headers.map((header, index) => {
    const path = `headers.${String(index)}`;
    demandObject(path, header);
    demand(`${path}.circuits`, 'count', header.circuits, { atLeast: 1, atMost: circuits });
    return flushed(path, header, header.circuits);
  });
  const all = [circuit, ...sections];
  const runs = [input.circuit, ...headers];
  const pressureDrop = all.reduce((sum, section) => sum + section.pressureDrop, cartDrop);
  const volume = runs.reduce((sum, run, at) => sum + (at === 0 ? circuits : 1) * (Math.PI / 4) * run.pipe.insideDiameter ** 2 * run.length, 0);
  const findings = all.flatMap((section, index): Finding[] => {
    if (section.velocity >= velocity * (1 - 1e-9)) return [];
    const values = { section: index, velocity: section.velocity, wanted: velocity, leastFlow: section.leastFlow, widest: section.widestBore };
    return [{ code: 'section-not-purged', level: 'warning', values, source: 'purgeVelocity' }];
  });
  return {
    velocity,
    circuit,
    headers: sections,
    leastFlow: Math.max(...all.map((section) => section.leastFlow)) as Flow,
    pressureDrop: pressureDrop as Pressure,
    head: (pressureDrop / (fluid.density * GRAVITY)) as Head,
    turnoverTime: (volume / flow) as Time,
    flushTime: ((turnovers * volume) / flow) as Time,
    purgeTime: PURGE_TIME,
    findings,
  };
}
