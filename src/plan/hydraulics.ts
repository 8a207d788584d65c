import { type CircuitInput, circuitHead, loopVolume, planCircuits } from '../circuit/index.js';
import type { Finding } from '../findings/index.js';
import { antifreezeCharge, type AntifreezeCharge, fluidFindings } from '../fluid/index.js';
import type { PipeDimensions } from '../pipe/index.js';
import type { Flow, PipeLength, Ratio, Temperature } from '../units/index.js';
import { type LoopFluid, stateAt } from './fluid-plan.js';
import type { LoopPlan } from './loop-plan.js';
import type { Mode } from './modes.js';
import type { Trial } from './solve.js';

/** What flows where. */
export interface HydraulicsInput {
  readonly chosen: Trial;
  readonly circuits: CircuitInput;
  readonly pipe: PipeDimensions;
  readonly header: PipeDimensions;
  readonly fluid: LoopFluid;
  readonly modes: readonly Mode[];
  readonly flow: Flow;
}

/** Head, volume and filling of the chosen loop. */
export interface Hydraulics {
  readonly result: LoopPlan['hydraulics'];
  readonly charge: AntifreezeCharge;
  readonly findings: readonly Finding[];
}

/**
 * Head at the coldest design fluid, where the pump works hardest, and what the loop holds.
 *
 * @param input - loop, pipes, fluid and flow
 * @returns head with its parts, volume, what to pour, and findings
 */
export function hydraulicsOf({ chosen, circuits, pipe, header, fluid, modes, flow }: HydraulicsInput): Hydraulics {
  const { option, layout } = chosen;
  const fluidTemperature = Math.min(...modes.map(({ design }) => design.unit.fluid.mean)) as Temperature;
  const run = { pipe: header, length: (2 * (circuits.distanceToHouse ?? 0)) as PipeLength };
  const { findings: headFindings, ...head } = circuitHead({
    circuit: { pipe, length: option.circuitLength },
    circuits: option.circuits,
    flow,
    fluid: stateAt(fluid, fluidTemperature),
    ...(run.length > 0 ? { header: run } : {}),
  });
  const { total } = loopVolume({ pipes: [{ pipe, length: option.circuitLength, count: option.circuits }, run] });
  const { findings: coilFindings } = planCircuits({
    ...circuits,
    coilLengths: [option.coilLength],
    pipeLength: Math.min(chosen.asked, option.activePipe) as PipeLength,
    flow,
    pipePerTrench: layout.pipesPerTrench as Ratio,
    trenches: option.trenches,
  });
  return {
    result: { ...head, loopVolume: total, fluidTemperature },
    charge: antifreezeCharge({ ...fluid, loopVolume: total }),
    findings: [...headFindings, ...coilFindings, ...fluidFindings({ ...fluid, temperature: fluidTemperature })],
  };
}
