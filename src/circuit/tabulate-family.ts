import { demand, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { boreArea, type HydraulicFluid, type PipeChoice, pipeDimensions } from '../pipe/index.js';
import type { ElectricPower, Flow, Fraction, PipeLength, Power, Velocity } from '../units/index.js';
import type { CircuitFamilyInput, CircuitFamilyRow, NamedFluid } from './circuit-family.js';
import { circuitHead, type CircuitHeadInput, type CircuitHeadResult, USUAL_HEAD } from './circuit-head.js';
import { demandHydraulic, demandWaterSide, equipmentDrop } from './rated-drop.js';
import { USUAL_CIRCUITS, type UsualCircuit } from './usual-circuits.data.js';

/** Velocity that the number of circuits aims at: 3 gpm in 3/4 in DR 11, the trade's circuit to a ton [m/s]. */
const AIM = 0.5;
/** Below it air stays in high points and the film thickens; a judgement [m/s]. */
const SLOW = 0.2 as Velocity;
/** Electric input of a pump per heat that a loop well laid out stays within; a judgement, a tenth of the electricity at a COP of 3.7 [1]. */
const USUAL_PER_HEAT = 0.03 as Fraction;

/**
 * Circuits, head and pump of every capacity with every pipe and every fluid, to see what goes together before a plan is made.
 *
 * As many circuits as bring the flow nearest to 0.5 m/s, about a ton to a circuit of 3/4 in, more where they would be too long for their pipe or take
 * more than 30 ft of head, fewer where too short. Without headers, run to the house and whole coils, which the plan adds.
 *
 * @param input - see {@link CircuitFamilyInput}
 * @returns a row for each, with a finding for what lies outside its class: velocity 0.2 to 1.5 m/s, head up to 30 ft, pump up to 3 % of the
 *   heat, length in the usual range of the pipe
 * @throws InputError for a value out of its range, or a pipe that circuits are not made of
 * @remarks Source: `circuitRules`, `residentialPumpHead`; see `circuitHead`. Invariants tested: circuits times their length is the pipe asked for, and a row is
 * within every bound or says which it leaves.
 * @example
 * ```ts @import.meta.vitest
 * const { gallonsPerMinuteTon, kilogramsPerCubicMetre, kilowatts, millipascalSeconds, metresPerKilowatt, percent } = await import(
 *   '../units/index.js'
 * );
 * const [row] = circuitFamily({
 *   capacities: [kilowatts(10.55)],
 *   pipes: [{ series: 'IPS', size: '3/4', dimensionRatio: '11' }],
 *   fluids: [{ label: 'glycol', fluid: { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) } }],
 *   flowPerPower: gallonsPerMinuteTon(3),
 *   pipePerCapacity: metresPerKilowatt(43),
 *   pumpEfficiency: percent(30),
 * });
 * expect([row?.circuits, row?.circuitLength.toFixed(0), row?.head.toFixed(1)]).toEqual([3, '151', '4.1']);
 * ```
 */
export function circuitFamily(input: CircuitFamilyInput): readonly CircuitFamilyRow[] {
  demandFamily(input);
  const { capacities, pipes, fluids } = input;
  return capacities.flatMap((capacity) => pipes.flatMap((pipe) => fluids.map((fluid) => rowOf(input, capacity, pipe, fluid))));
}

function rowOf(input: CircuitFamilyInput, capacity: Power, choice: PipeChoice, { label, fluid }: NamedFluid): CircuitFamilyRow {
  const pipe = pipeDimensions(choice);
  const usual = usualOf(choice);
  const flow = (capacity * input.flowPerPower) as Flow;
  const length = capacity * input.pipePerCapacity;
  const wanted = Math.min(Math.round(flow / (AIM * boreArea(pipe))), Math.floor(length / usual.shortest));
  const drop = unitDropOf(input, fluid);
  const headOf = (count: number): CircuitHeadResult =>
    circuitHead({ circuit: { pipe, length: (length / count) as PipeLength }, circuits: count, flow, fluid, ...drop });
  let circuits = Math.max(wanted, Math.ceil(length / usual.longest), 1);
  while (headOf(circuits).head > USUAL_HEAD && length / (circuits + 1) >= usual.shortest) circuits += 1;
  const result = headOf(circuits);
  const circuitLength = (length / circuits) as PipeLength;
  const { circuit, circuitFlow, pressureDrop, head, hydraulicPower } = result;
  const electricPower = (hydraulicPower / input.pumpEfficiency) as ElectricPower;
  const perHeat = (electricPower / capacity) as Fraction;
  const findings: Finding[] = [...result.findings];
  if (circuit.velocity < SLOW) {
    findings.push({ code: 'fluid-slow', level: 'note', values: { velocity: circuit.velocity, usual: SLOW }, source: 'common practice' });
  }
  if (circuitLength < usual.shortest || circuitLength > usual.longest) {
    findings.push({ code: 'circuit-length-unusual', level: 'note', values: { circuitLength, ...usual }, source: 'circuitRules' });
  }
  if (perHeat > USUAL_PER_HEAT) {
    findings.push({
      code: 'pump-power-high',
      level: 'warning',
      values: { electricPower, perHeat, usual: USUAL_PER_HEAT },
      source: 'common practice',
    });
  }
  const { velocity, reynolds } = circuit;
  const { series, size } = choice;
  const row = { capacity, series, size, label, circuits, circuitLength, circuitFlow, velocity, reynolds, pressureDrop, head, electricPower, perHeat };
  return { ...row, findings };
}

/** A larger unit has a larger loop side: the flow of the first unit stands for it. */
function unitDropOf({ waterSide, capacities, flowPerPower }: CircuitFamilyInput, fluid: HydraulicFluid): Pick<CircuitHeadInput, 'equipmentDrop'> {
  return waterSide === undefined ? {} : { equipmentDrop: equipmentDrop({ waterSide, fluid, flow: ((capacities[0] ?? 0) * flowPerPower) as Flow }) };
}

function usualOf({ size }: PipeChoice): UsualCircuit {
  const usual = USUAL_CIRCUITS[size];
  if (usual !== undefined) return usual;
  throw new InputError({ code: 'unknown-choice', argument: 'size', value: size, allowed: Object.keys(USUAL_CIRCUITS).join(', ') });
}

function demandFamily(input: CircuitFamilyInput): void {
  const { capacities, pipes, fluids, flowPerPower, pipePerCapacity, waterSide, pumpEfficiency } = input;
  demandCount('capacities', capacities, 1, 50);
  for (const [index, capacity] of capacities.entries()) demand(`capacities.${String(index)}`, 'power', capacity, { atLeast: 500, atMost: 1e6 });
  demandCount('pipes', pipes, 1, 20);
  for (const [index, pipe] of pipes.entries()) {
    demandObject(`pipes.${String(index)}`, pipe);
    locate(`pipes.${String(index)}`, () => (pipeDimensions(pipe), usualOf(pipe)));
  }
  demandCount('fluids', fluids, 1, 20);
  for (const [index, named] of fluids.entries()) {
    demandObject(`fluids.${String(index)}`, named);
    if (typeof named.label !== 'string') {
      throw new InputError({ code: 'wrong-type', argument: `fluids.${String(index)}.label`, value: String(named.label), allowed: 'a text' });
    }
    demandHydraulic(`fluids.${String(index)}.fluid`, named.fluid);
  }
  demand('flowPerPower', 'flow per power', flowPerPower, { atLeast: 1e-8, atMost: 2e-7 });
  demand('pipePerCapacity', 'length per power', pipePerCapacity, { atLeast: 1e-3, atMost: 1 });
  demand('pumpEfficiency', 'fraction', pumpEfficiency, { above: 0, atMost: 0.9 });
  if (waterSide !== undefined) demandWaterSide(waterSide);
}
