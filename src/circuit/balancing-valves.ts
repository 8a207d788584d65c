import { demand, demandChoice } from '../errors/index.js';
import type { Flow, Pressure, Ratio, Shape } from '../units/index.js';
import { demandSplit } from './demand-split.js';
import type { FlowSplitInput } from './flow-split.js';
import { VALVE_WATER } from './rated-drop.js';
import { type PipeRun, runLoss } from './run-loss.js';

/** What balancing valves are to bring about. */
export type BalancingTarget = 'equal flow' | 'flow by length';

/** A circuit's balancing valve. */
export interface BalancingValve {
  /** Flow that the circuit is to get [m3/s]. */
  readonly flow: Flow;
  /** What the valve has to drop at that flow; 0 at the circuit that needs none [Pa]. */
  readonly valveDrop: Pressure;
  /** The same in velocity heads of the circuit's bore [1]. */
  readonly valveCoefficient: Ratio;
  /** Flow of water at 1 bar, in m3/h the Kv to set; absent where the valve stays fully open [m3/s]. */
  readonly flowAtOneBar?: Flow;
}

/** Shape of {@link BalancingValve}. */
export const balancingValveShape: Shape<BalancingValve> = {
  flow: 'flow',
  valveDrop: 'pressure',
  valveCoefficient: 'ratio',
  flowAtOneBar: { optional: 'flow' },
};

/** Share of the whole drop that two paths may differ by and still be the same [1]. */
const ROUNDING = 1e-12;
/** A bar [Pa]. */
const BAR = 1e5;

/**
 * Settings of balancing valves that give the circuits of a loop the flows wanted, with no more throttling than that takes.
 *
 * Valves named in the input are taken off first, blocked circuits count as missing. The circuit that drops the most keeps its valve open; a real valve
 * drops something there too, which adds to the pump's head but not to the settings. The balance holds for this fluid at this flow: near the transition
 * to turbulence it shifts with the season.
 *
 * @param input - the loop, see {@link FlowSplitInput}
 * @param target - equal flow to each circuit, or flow in proportion to its length, for equal temperatures at their ends; equal flow when left out
 * @returns a valve for each circuit, in the order given; none for a blocked one
 * @throws InputError as `solveFlowSplit` does
 * @remarks Headers carry known flows once those of the circuits are set, so nothing is solved. Invariants tested: with these valves `solveFlowSplit` gives the
 * flows wanted to 1e-9; one valve at least stays open.
 * @example
 * ```ts @import.meta.vitest
 * const { cubicMetresPerHour, diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds, pipeMetres } = await import(
 *   '../units/index.js'
 * );
 * const pipe = { insideDiameter: diameterMillimetres(21.844) };
 * const [short, long] = balancingValves({
 *   arrangement: 'common manifold',
 *   circuits: [120, 180].map((length) => ({ pipe, length: pipeMetres(length) })),
 *   flow: litresPerSecond(0.38),
 *   fluid: { density: kilogramsPerCubicMetre(1000), viscosity: millipascalSeconds(1.52) },
 * });
 * expect(cubicMetresPerHour.of(short?.flowAtOneBar ?? cubicMetresPerHour(0))).toBeCloseTo(1.975, 3);
 * expect(long?.valveDrop).toBe(0);
 * ```
 */
export function balancingValves(input: FlowSplitInput, target: BalancingTarget = 'equal flow'): readonly (BalancingValve | undefined)[] {
  const { circuits, arrangement, fluid, roughness } = input;
  const { supply, back } = demandSplit(input);
  demandChoice('target', target, ['equal flow', 'flow by length']);
  if (target === 'flow by length') {
    for (const [k, { length }] of circuits.entries()) demand(`circuits.${String(k)}.length`, 'pipe length', length, { above: 0, atMost: 1e6 });
  }
  const weights = circuits.map(({ blocked = false, length }) => (blocked ? 0 : target === 'equal flow' ? 1 : length));
  const flows = weights.map((weight) => (input.flow * weight) / sum(weights));
  const dropOf = (run: PipeRun, flow: number): number => runLoss({ run, fluid, flow: flow as Flow, roughness }).pressureDrop;
  const reverse = arrangement === 'reverse return';
  const out = supply.map((run, k) => dropOf(run, sum(flows.slice(k + 1))));
  const home = back.map((run, k) => dropOf(run, sum(reverse ? flows.slice(0, k + 1) : flows.slice(k + 1))));
  const paths = circuits.map((circuit, k) =>
    weights[k] === 0 ? 0 : sum(out.slice(0, k)) + dropOf(circuit, flows[k] ?? 0) + sum(reverse ? home.slice(k) : home.slice(0, k)),
  );
  const most = Math.max(...paths);
  return circuits.map((circuit, k) => {
    const flow = flows[k] ?? 0;
    if (flow === 0) return undefined;
    const lacking = most - (paths[k] ?? 0);
    const valveDrop = lacking > ROUNDING * most ? lacking : 0;
    const { velocity } = runLoss({ run: circuit, fluid, flow: flow as Flow, roughness });
    const setting = { flow, valveDrop, valveCoefficient: valveDrop / ((fluid.density * velocity ** 2) / 2) };
    if (valveDrop === 0) return setting as BalancingValve;
    return { ...setting, flowAtOneBar: flow * Math.sqrt((BAR * fluid.density) / (VALVE_WATER * valveDrop)) } as BalancingValve;
  });
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
