import type { Finding } from '../findings/index.js';
import type { Flow, Fraction, Pressure } from '../units/index.js';
import { demandSplit } from './demand-split.js';
import { type NetworkLink, solveFlowNetwork } from './flow-network.js';
import type { FlowSplit, FlowSplitInput, FlowSplitResult, SplitCircuit, SplitRun } from './flow-split.js';
import { valveDrop } from './rated-drop.js';
import { type PipeRun, runLoss } from './run-loss.js';

/** Spread of the flows up to which a heat exchanger hardly notices [1]. */
const EVEN = 0.1;

/**
 * How the flow splits over the circuits of a loop between its headers, and what the whole drops.
 *
 * Direct return, reverse return or a common manifold; sections of the headers may be stepped, circuits unlike, throttled by a valve or blocked.
 * Reverse return evens the flow only as far as the headers drop little: with equal sections the end circuits get the most. Tees are not counted
 * unless they stand in the `fittings` of a section or circuit.
 *
 * @param input - see {@link FlowSplitInput}
 * @returns flow and loss of every circuit and section [m3/s, Pa], the spread, and findings where it is uneven or a circuit runs backwards
 * @throws InputError for a value out of its range; `impossible` when every circuit is blocked or the headers do not fit the circuits
 * @remarks Method: {@link solveFlowNetwork}. Checked against eight networks solved by two other methods (H-NET) and a textbook's three parallel
 * pipes. Invariants tested: flows add up to 1e-12, all paths drop the same to 1e-9, equal circuits on a manifold share equally, laminar shares go
 * with bore⁴/length, one of four blocked leaves the others a third more.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds, pipeMetres } = await import('../units/index.js');
 * const pipe = { insideDiameter: diameterMillimetres(21.844) };
 * const { circuits, flowSpread } = solveFlowSplit({
 *   arrangement: 'common manifold',
 *   circuits: [120, 150, 180].map((length) => ({ pipe, length: pipeMetres(length) })),
 *   flow: litresPerSecond(0.57),
 *   fluid: { density: kilogramsPerCubicMetre(1000), viscosity: millipascalSeconds(1.52) },
 * });
 * expect(circuits.map(({ flow }) => Number(litresPerSecond.of(flow).toFixed(3)))).toEqual([0.214, 0.188, 0.169]);
 * expect(flowSpread).toBeCloseTo(0.237, 3);
 * ```
 */
export function solveFlowSplit(input: FlowSplitInput): FlowSplitResult {
  const { arrangement, circuits, flow, fluid, roughness } = input;
  const { supply, back } = demandSplit(input);
  const lossOf = (run: PipeRun, through: Flow): SplitRun => ({
    ...runLoss({ run, fluid, flow: Math.abs(through) as Flow, roughness }),
    flow: through,
  });
  const valveOf = ({ valve }: SplitCircuit, through: Flow): number =>
    valve === undefined ? 0 : valveDrop({ valve, density: fluid.density, flow: Math.abs(through) as Flow });
  const pipe = (from: number, to: number, run: PipeRun): NetworkLink => ({ from, to, dropAt: (through) => lossOf(run, through).pressureDrop });

  // Nodes: the take-offs of the supply header, then those of the return header.
  const count = arrangement === 'common manifold' ? 1 : circuits.length;
  const reverse = arrangement === 'reverse return';
  const open = [...circuits.entries()].filter(([, { blocked = false }]) => !blocked);
  const links = [
    ...supply.map((run, k) => pipe(k, k + 1, run)),
    ...back.map((run, k) => (reverse ? pipe(count + k, count + k + 1, run) : pipe(count + k + 1, count + k, run))),
    ...open.map(([k, circuit]): NetworkLink => {
      const from = Math.min(k, count - 1);
      const dropAt = (through: Flow): Pressure => (lossOf(circuit, through).pressureDrop + valveOf(circuit, through)) as Pressure;
      return { from, to: count + from, dropAt };
    }),
  ];
  const outlet = reverse ? 2 * count - 1 : count;
  const inflows = Array.from({ length: 2 * count }, (_, node) => (node === 0 ? flow : node === outlet ? -flow : 0) as Flow);
  const { flows, nodeDrops } = solveFlowNetwork({ inflows, links });

  const headers = supply.length + back.length;
  const through = new Map(open.map(([k], index) => [k, flows[headers + index] ?? (0 as Flow)]));
  const mean = flow / open.length;
  const fieldDrop = nodeDrops[outlet] ?? (0 as Pressure);
  const header = input.header === undefined ? undefined : lossOf(input.header, flow);
  const split: FlowSplit = {
    circuits: circuits.map((circuit, k) => {
      const own = through.get(k) ?? (0 as Flow);
      return { ...lossOf(circuit, own), valveDrop: valveOf(circuit, own) as Pressure, flowShare: (own / mean) as Fraction };
    }),
    supply: supply.map((run, k) => lossOf(run, flows[k] ?? (0 as Flow))),
    return: back.map((run, k) => lossOf(run, flows[supply.length + k] ?? (0 as Flow))),
    ...(header === undefined ? {} : { header }),
    fieldDrop,
    pressureDrop: (fieldDrop + (header?.pressureDrop ?? 0)) as Pressure,
    flowSpread: ((Math.max(...through.values()) - Math.min(...through.values())) / mean) as Fraction,
  };
  return { ...split, findings: findingsOf(through, split.flowSpread) };
}

function findingsOf(through: ReadonlyMap<number, Flow>, spread: Fraction): Finding[] {
  const findings: Finding[] = [];
  const [least, most] = [Math.min(...through.values()) as Flow, Math.max(...through.values()) as Flow];
  if (spread > EVEN) findings.push({ code: 'flow-split-uneven', level: 'warning', values: { least, most, spread }, source: 'common practice' });
  for (const [index, flow] of through) {
    if (flow < 0)
      findings.push({ code: 'circuit-runs-backwards', level: 'warning', values: { circuit: index + 1, flow }, source: 'common practice' });
  }
  return findings;
}
