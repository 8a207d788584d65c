import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { Flow, Fraction, PipeLength, Ratio, Shape, TrenchLength } from '../units/index.js';

/** What a loop needs of its circuits. */
export interface CircuitNeed {
  /** Pipe that must exchange heat, 1 to 1e6 [m]. */
  readonly pipeLength: PipeLength;
  /** Flow of the whole loop, 1e-6 to 1 [m3/s]. */
  readonly flow: Flow;
  /** Metres of pipe in a metre of trench, 0.1 to 100 [1]. */
  readonly pipePerTrench: Ratio;
  /** How many circuits lie in one trench, 1 to 20; 1 when left out. */
  readonly circuitsPerTrench?: number;
  /** How many trenches one circuit runs through, 1 to 20; 1 when left out. One of the two is 1. */
  readonly trenchesPerCircuit?: number;
  /** Pipe of a circuit outside its trench, out and back together; 0 when left out [m]. */
  readonly leadLength?: PipeLength;
}

/** What {@link circuitOption} needs. */
export interface CircuitOptionInput extends CircuitNeed {
  /** The coil delivered, 1 to 1e4; longer, with those joined to it, than the leads [m]. */
  readonly coilLength: PipeLength;
  /** How many circuits, 1 to 20 000; they fill whole trenches. */
  readonly circuits: number;
  /** How many coils are joined to one circuit, 1 to 1000; 1 when left out. */
  readonly coilsPerCircuit?: number;
}

/** What {@link planCircuits} needs. */
export interface CircuitPlanInput extends CircuitNeed {
  /** Lengths of coil that can be had, 1 to 50 of them, each 1 to 1e4 [m]. */
  readonly coilLengths: readonly PipeLength[];
  /** How many trenches there are to be, 1 to 1000; as many as needed when left out. */
  readonly trenches?: number;
  /** Longest trench the land has room for; no limit when left out [m]. */
  readonly longestTrench?: TrenchLength;
  /** Longest circuit wanted; no limit when left out [m]. */
  readonly longestCircuit?: PipeLength;
}

/** One way to build the loop from whole coils: equal circuits in parallel, each without a joint in the ground. */
export interface CircuitOption {
  /** How many circuits run in parallel. */
  readonly circuits: number;
  /** How many coils are joined to one circuit; 1 as long as a delivered coil is long enough. */
  readonly coilsPerCircuit: number;
  /** The coil delivered [m]. */
  readonly coilLength: PipeLength;
  /** Pipe of a circuit, header to header [m]. */
  readonly circuitLength: PipeLength;
  /** Pipe of a circuit that lies in its trench and exchanges heat [m]. */
  readonly activeLength: PipeLength;
  /** How many trenches. */
  readonly trenches: number;
  /** Length of each trench [m]. */
  readonly trenchLength: TrenchLength;
  /** Flow of each circuit [m3/s]. */
  readonly circuitFlow: Flow;
  /** Pipe bought: all coils [m]. */
  readonly boughtPipe: PipeLength;
  /** Pipe that exchanges heat: all circuits [m]. */
  readonly activePipe: PipeLength;
  /** Active pipe beyond what was needed [m]. */
  readonly spare: PipeLength;
  /** Spare over what was needed [1]. */
  readonly spareShare: Fraction;
}

/** The circuits of a loop, the other ways to build it, and what would not have been enough. */
export interface CircuitPlan extends CircuitOption {
  /** One circuit alone, or equal circuits between two headers. */
  readonly arrangement: 'single' | 'parallel';
  /** The best way with each other coil length, best first. */
  readonly others: readonly CircuitOption[];
  /** The largest loop from the coils on offer that falls short; absent where a smaller one would have no circuit left. */
  readonly nextSmaller?: {
    /** How many circuits. */
    readonly circuits: number;
    /** How many coils are joined to one circuit. */
    readonly coilsPerCircuit: number;
    /** The coil delivered [m]. */
    readonly coilLength: PipeLength;
    /** Active pipe that it lacks [m]. */
    readonly shortBy: PipeLength;
  };
}

/** A {@link CircuitPlan} with its findings. */
export interface CircuitPlanResult extends CircuitPlan {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link CircuitOption}. */
export const circuitOptionShape: Shape<CircuitOption> = {
  circuits: 'count',
  coilsPerCircuit: 'count',
  coilLength: 'pipe length',
  circuitLength: 'pipe length',
  activeLength: 'pipe length',
  trenches: 'count',
  trenchLength: 'trench length',
  circuitFlow: 'flow',
  boughtPipe: 'pipe length',
  activePipe: 'pipe length',
  spare: 'pipe length',
  spareShare: 'fraction',
};

/** Shape of {@link CircuitPlan}. */
export const circuitPlanShape: Shape<CircuitPlan> = /* @__PURE__ */ joinedShape(circuitOptionShape, {
  arrangement: ['single', 'parallel'],
  others: { list: circuitOptionShape },
  nextSmaller: { optional: { circuits: 'count', coilsPerCircuit: 'count', coilLength: 'pipe length', shortBy: 'pipe length' } },
});
