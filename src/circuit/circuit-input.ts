import type { Length, PipeLength, Shape } from '../units/index.js';

/** What a document says about circuits and the way to the house. */
export interface CircuitInput {
  /** Lengths of coil that the supplier delivers, each 1 to 1e4 [m]. */
  readonly coilLengths: readonly PipeLength[];
  /** From the headers at the trenches to the heat pump, one way, 0 to 1000 [m]. */
  readonly distanceToHouse?: Length;
  /** Pipe of each circuit between its trench and the header, out and back together [m]. */
  readonly leadLength?: PipeLength;
  /** Longest circuit wanted [m]. */
  readonly longestCircuit?: PipeLength;
  /** How many circuits lie in one trench. */
  readonly circuitsPerTrench?: number;
  /** How many trenches one circuit runs through. */
  readonly trenchesPerCircuit?: number;
}

/** Shape of {@link CircuitInput}. */
export const circuitInputShape: Shape<CircuitInput> = {
  coilLengths: { list: 'pipe length' },
  distanceToHouse: { optional: 'length' },
  leadLength: { optional: 'pipe length' },
  longestCircuit: { optional: 'pipe length' },
  circuitsPerTrench: { optional: 'count' },
  trenchesPerCircuit: { optional: 'count' },
};
