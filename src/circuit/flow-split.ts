import type { Finding } from '../findings/index.js';
import type { HydraulicFluid } from '../pipe/index.js';
import { joinedShape } from '../states/index.js';
import type { Flow, Fraction, Length, Pressure, Shape } from '../units/index.js';
import { type RatedDrop, ratedDropShape } from './rated-drop.js';
import { type PipeRun, type RunLoss, runLossShape } from './run-loss.js';

/** How the return header lies: its outlet beside the first circuit, beside the last, or both headers so short that they drop nothing. */
export type HeaderArrangement = 'direct return' | 'reverse return' | 'common manifold';

/** One circuit between two headers. */
export interface SplitCircuit extends PipeRun {
  /** Balancing valve, by the flow of water at a drop: Kv is the flow in m3/h at 1 bar, Cv in gpm at 1 psi; none when left out. */
  readonly valve?: RatedDrop;
  /** Whether a kink, a closed valve or trapped air keeps it from flowing at all; open when left out. */
  readonly blocked?: boolean;
}

/** What {@link solveFlowSplit} needs. */
export interface FlowSplitInput {
  /** Where the return header begins. */
  readonly arrangement: HeaderArrangement;
  /** The circuits in the order of the supply header, 1 to 100 of them, one at least open. */
  readonly circuits: readonly SplitCircuit[];
  /** Sections of the supply header from the first circuit on, one fewer than circuits; none with a common manifold. */
  readonly supply?: readonly PipeRun[];
  /** Sections of the return header beside them, in the same order; like the supply when left out. */
  readonly return?: readonly PipeRun[];
  /** Run to the house and back that carries the whole flow; none when the manifold stands in the house. */
  readonly header?: PipeRun;
  /** Flow of the whole loop, 1e-6 to 1 [m3/s]. */
  readonly flow: Flow;
  /** The fluid at the temperature looked at. */
  readonly fluid: HydraulicFluid;
  /** Absolute roughness of the bores; that of drawn plastic when left out [m]. */
  readonly roughness?: Length;
}

/** A run of the loop with its share of the flow. */
export interface SplitRun extends RunLoss {
  /** Flow through it; negative where it runs backwards [m3/s]. */
  readonly flow: Flow;
}

/** A circuit with its share of the flow. */
export interface SplitCircuitFlow extends SplitRun {
  /** Balancing valve [Pa]. */
  readonly valveDrop: Pressure;
  /** Flow over the mean of the open circuits [1]. */
  readonly flowShare: Fraction;
}

/** How the flow of a loop splits over its circuits. */
export interface FlowSplit {
  /** Each circuit, in the order given. */
  readonly circuits: readonly SplitCircuitFlow[];
  /** Each section of the supply header. */
  readonly supply: readonly SplitRun[];
  /** Each section of the return header. */
  readonly return: readonly SplitRun[];
  /** The run to the house. */
  readonly header?: SplitRun;
  /** From the first take-off to the outlet of the return header: circuits and header sections [Pa]. */
  readonly fieldDrop: Pressure;
  /** With the run to the house [Pa]. */
  readonly pressureDrop: Pressure;
  /** (most − least)/mean flow of the open circuits [1]. */
  readonly flowSpread: Fraction;
}

/** A {@link FlowSplit} with its findings. */
export interface FlowSplitResult extends FlowSplit {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PipeRun}. */
export const pipeRunShape: Shape<PipeRun> = { pipe: { insideDiameter: 'diameter' }, length: 'pipe length', fittings: { optional: 'ratio' } };

/** Shape of {@link FlowSplitInput}. */
export const flowSplitInputShape: Shape<FlowSplitInput> = {
  arrangement: ['direct return', 'reverse return', 'common manifold'],
  circuits: {
    list: /* @__PURE__ */ joinedShape(pipeRunShape, { valve: { optional: ratedDropShape }, blocked: { optional: 'flag' } }),
  },
  supply: { optional: { list: pipeRunShape } },
  return: { optional: { list: pipeRunShape } },
  header: { optional: pipeRunShape },
  flow: 'flow',
  fluid: { density: 'density', viscosity: 'dynamic viscosity' },
  roughness: { optional: 'length' },
};

const splitRunShape: Shape<SplitRun> = /* @__PURE__ */ joinedShape(runLossShape, { flow: 'flow' });

/** Shape of {@link FlowSplit}. */
export const flowSplitShape: Shape<FlowSplit> = {
  circuits: { list: /* @__PURE__ */ joinedShape(splitRunShape, { valveDrop: 'pressure', flowShare: 'fraction' }) },
  supply: { list: splitRunShape },
  return: { list: splitRunShape },
  header: { optional: splitRunShape },
  fieldDrop: 'pressure',
  pressureDrop: 'pressure',
  flowSpread: 'fraction',
};
