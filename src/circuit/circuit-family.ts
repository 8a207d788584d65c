import type { Finding } from '../findings/index.js';
import { type HydraulicFluid, type PipeChoice, type PipeSeries, type PipeSize, pipeChoiceShape } from '../pipe/index.js';
import type {
  ElectricPower,
  Flow,
  FlowPerPower,
  Fraction,
  Head,
  LengthPerPower,
  PipeLength,
  Power,
  Pressure,
  Ratio,
  Shape,
  Velocity,
} from '../units/index.js';
import { type RatedWaterSide, ratedWaterSideShape } from './rated-drop.js';

/** A fluid with what it is called in a table. */
export interface NamedFluid {
  /** What the row shows. */
  readonly label: string;
  /** The fluid at its coldest design temperature. */
  readonly fluid: HydraulicFluid;
}

/** What {@link circuitFamily} needs. */
export interface CircuitFamilyInput {
  /** Heat that the units give, one table row for each with each pipe and fluid, 1 to 50 of them, each 500 to 1e6 [W]. */
  readonly capacities: readonly Power[];
  /** Pipes in sizes that circuits are made of, 1 to 20. */
  readonly pipes: readonly PipeChoice[];
  /** Fluids, 1 to 20. */
  readonly fluids: readonly NamedFluid[];
  /** Flow per capacity, 1e-8 to 2e-7 [m3/(s.W)]. */
  readonly flowPerPower: FlowPerPower;
  /** Pipe in the ground per capacity, 0.001 to 1 [m/W]. */
  readonly pipePerCapacity: LengthPerPower;
  /** Loop side of the unit of the first capacity; a unit of another is taken to have the same drop at its own flow. None when left out. */
  readonly waterSide?: RatedWaterSide;
  /** Power given to the fluid over electric input, above 0 to 0.9 [1]. */
  readonly pumpEfficiency: Fraction;
}

/** Circuits, head and pump of one plan of a family. */
export interface CircuitFamilyRow {
  /** Heat that the unit gives [W]. */
  readonly capacity: Power;
  /** Series of the pipe. */
  readonly series: PipeSeries;
  /** Size of the pipe. */
  readonly size: PipeSize;
  /** The fluid. */
  readonly label: string;
  /** How many circuits in parallel. */
  readonly circuits: number;
  /** Length of each, before whole coils are counted [m]. */
  readonly circuitLength: PipeLength;
  /** Flow of each [m3/s]. */
  readonly circuitFlow: Flow;
  /** Velocity in them [m/s]. */
  readonly velocity: Velocity;
  /** Reynolds number in them [1]. */
  readonly reynolds: Ratio;
  /** Circuits and equipment; headers and the run to the house come on top [Pa]. */
  readonly pressureDrop: Pressure;
  /** The same as a column of the fluid [m]. */
  readonly head: Head;
  /** Electric input of the pump [W]. */
  readonly electricPower: ElectricPower;
  /** The same per heat that the unit gives [1]. */
  readonly perHeat: Fraction;
  /** What lies outside its class. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link CircuitFamilyInput}. */
export const circuitFamilyInputShape: Shape<CircuitFamilyInput> = {
  capacities: { list: 'power' },
  pipes: { list: pipeChoiceShape },
  fluids: { list: { label: 'text', fluid: { density: 'density', viscosity: 'dynamic viscosity' } } },
  flowPerPower: 'flow per power',
  pipePerCapacity: 'length per power',
  waterSide: { optional: ratedWaterSideShape },
  pumpEfficiency: 'fraction',
};
