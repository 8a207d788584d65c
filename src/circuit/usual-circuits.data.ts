import type { PipeSize } from '../pipe/index.js';
import type { PipeLength } from '../units/index.js';

/** Lengths between which circuits of a size of pipe usually stay. */
export interface UsualCircuit {
  /** Shorter ones take more joints and more header than they are worth [m]. */
  readonly shortest: PipeLength;
  /** Longer ones drop too much at a usual flow [m]. */
  readonly longest: PipeLength;
}

/**
 * Usual circuits by size of pipe [m]. The longest: 600 ft of 3/4 in, 800 ft of 1 in, and of 1-1/4 in what three tons take at 500 ft each, all
 * recalled rules of the trade (`circuitRules`), the metric size of like bore beside each. The shortest are a judgement.
 */
export const USUAL_CIRCUITS: Readonly<Partial<Record<PipeSize, UsualCircuit>>> = {
  '3/4': { shortest: 90, longest: 182.88 },
  '1': { shortest: 100, longest: 243.84 },
  '1-1/4': { shortest: 150, longest: 457.2 },
  '25': { shortest: 90, longest: 182.88 },
  '32': { shortest: 100, longest: 243.84 },
  '40': { shortest: 150, longest: 457.2 },
} as Readonly<Partial<Record<PipeSize, Record<keyof UsualCircuit, number>>>> as Readonly<Partial<Record<PipeSize, UsualCircuit>>>;
