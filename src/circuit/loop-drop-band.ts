import { demand, demandObject, locate } from '../errors/index.js';
import { type FlowRegime, flowVelocity, pressureDropBand, type UncertainFluid } from '../pipe/index.js';
import type { Band } from '../states/index.js';
import type { Flow, Pressure } from '../units/index.js';
import type { PipeRun } from './run-loss.js';

/** How far loss coefficients of fittings may be off, as a share of them. */
const FITTINGS_ERROR = 0.5;

/** Equal circuits and the run to the house. */
interface DroppingLoop {
  readonly circuit: PipeRun;
  readonly circuits: number;
  readonly header?: PipeRun;
  readonly flow: Flow;
}

/** Pressure drop of a loop whose flow, viscosity and fittings are known within limits, with the regime in its circuits. */
export function loopDropBand(
  { circuit, circuits, header, flow }: DroppingLoop,
  fluid: UncertainFluid,
  flowError: number,
): { readonly pressureDrop: Band<'pressure'>; readonly reynolds: Band<'ratio'>; readonly regimes: readonly FlowRegime[] } {
  const at = (factor: number): RunBand => {
    const inCircuit = locate('circuit', () => runBand(circuit, fluid, ((flow * factor) / circuits) as Flow));
    if (header === undefined) return inCircuit;
    const inHeader = locate('header', () => runBand(header, fluid, (flow * factor) as Flow));
    return {
      ...inCircuit,
      low: inCircuit.low + inHeader.low,
      estimate: inCircuit.estimate + inHeader.estimate,
      high: inCircuit.high + inHeader.high,
    };
  };
  const [slow, middle, fast] = [at(1 - flowError), at(1), at(1 + flowError)];
  const { coverage } = fluid.viscosity;
  const pressureDrop = {
    low: Math.min(slow.low, middle.low) as Pressure,
    estimate: middle.estimate as Pressure,
    high: Math.max(middle.high, fast.high) as Pressure,
    coverage,
  };
  return { pressureDrop, reynolds: middle.reynolds, regimes: middle.regimes };
}

interface RunBand {
  readonly low: number;
  readonly estimate: number;
  readonly high: number;
  readonly reynolds: Band<'ratio'>;
  readonly regimes: readonly FlowRegime[];
}

/** Pressure drop of a run with its fittings. */
function runBand(run: PipeRun, fluid: UncertainFluid, flow: Flow): RunBand {
  demandObject('', run);
  const { pipe, length, fittings = 0 } = run;
  demand('fittings', 'ratio', fittings, { atLeast: 0, atMost: 1e4 });
  const { pressureDrop, reynolds, regimes } = pressureDropBand({ pipe, fluid, flow, length });
  const fitted = (fittings * fluid.density * flowVelocity({ pipe, flow }) ** 2) / 2;
  return {
    low: pressureDrop.low + (1 - FITTINGS_ERROR) * fitted,
    estimate: pressureDrop.estimate + fitted,
    high: pressureDrop.high + (1 + FITTINGS_ERROR) * fitted,
    reynolds,
    regimes,
  };
}
