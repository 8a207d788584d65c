import { demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { PipeLength } from '../units/index.js';
import type { SimulationInput } from './simulation.js';
import { sizeLoop, type SizedLoop, type SizeLoopInput } from './size-loop.js';

/** Trenches and circuits that hold for a range of lengths, with what they change. */
export interface Topology extends Pick<SizeLoopInput, 'guess'>, Pick<SimulationInput, 'resistanceAt'>, Partial<Pick<SimulationInput, 'response'>> {
  /** Shortest length that is laid so, 1 to 1e6 [m]. */
  readonly shortest: PipeLength;
  /** Longest length that is laid so, at most 1e6 [m]. */
  readonly longest: PipeLength;
}

/** What {@link sizeOverTopologies} needs. */
export interface TopologiesInput extends Omit<SizeLoopInput, 'shortest' | 'longest' | 'guess' | 'resistanceAt'> {
  /** 1 to 100 of them, each with its own film and, where the trenches differ, its own response. */
  readonly topologies: readonly Topology[];
}

/** Lengths of one topology that keep the limits. */
export interface FeasibleRange {
  /** Which of the topologies, from 0. */
  readonly topology: number;
  /** Shortest that keeps them [m]. */
  readonly shortest: PipeLength;
  /** Longest that is laid so [m]. */
  readonly longest: PipeLength;
}

/** The lengths that keep the limits, of all topologies. */
export interface SizedTopologies {
  /** In the order of the topologies; those that reach no limit are left out. */
  readonly ranges: readonly FeasibleRange[];
  /** The shortest of all. */
  readonly best: SizedLoop;
}

/**
 * The lengths that keep the limits where the number of circuits or trenches changes with the length.
 *
 * With the flow shared by more circuits the film may fall from turbulent to laminar, and a longer loop then misses what a shorter one kept: the lengths
 * that do have holes, which a search over the length alone steps over. Within each topology the margin only rises with the length, so each gives one range.
 *
 * @param input - see {@link TopologiesInput}
 * @returns the ranges and the shortest loop of all
 * @throws InputError for a value out of its range; that of the last topology when none keeps the limits
 * @remarks Invariant tested: a set with a hole comes out with both its parts.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } = await import('../units/index.js');
 * const wave = Array.from({ length: 8760 }, (_, step) => Math.cos((2 * Math.PI * (step / 24 - 20)) / 365));
 * const { ranges } = sizeOverTopologies({
 *   step: hours(1),
 *   duty: { from: 'ground', loads: wave.map((each) => 5000 * Math.max(0, each)) },
 *   ground: wave.map((each) => 10 - 5 * each),
 *   response: { terms: [{ timeConstant: hours(2000), rise: pipeMetreKelvinPerWatt(0.6) }], steadyRise: pipeMetreKelvinPerWatt(0.6) },
 *   heatCapacityRate: wattsPerKelvin(2000),
 *   limits: { lowestEntering: celsius(-1) },
 *   topologies: [
 *     { resistanceAt: () => pipeMetreKelvinPerWatt(0.1), shortest: pipeMetres(400), longest: pipeMetres(600) },
 *     { resistanceAt: () => pipeMetreKelvinPerWatt(1), shortest: pipeMetres(600), longest: pipeMetres(1900) },
 *   ],
 * });
 * expect(ranges.map(({ topology, longest }) => [topology, longest])).toEqual([[0, 600], [1, 1900]]);
 * expect(ranges[1]?.shortest).toBeGreaterThan(600);
 * ```
 */
export function sizeOverTopologies({ topologies, ...common }: TopologiesInput): SizedTopologies {
  demandCount('topologies', topologies, 1, 100);
  const ranges: FeasibleRange[] = [];
  let best: SizedLoop | undefined;
  let refusal: InputError | undefined;
  topologies.forEach((topology, index) => {
    const path = `topologies.${String(index)}`;
    demandObject(path, topology);
    try {
      const sized = locate(path, () => sizeLoop({ ...common, ...topology }));
      ranges.push({ topology: index, shortest: sized.exactLength, longest: topology.longest });
      if (best === undefined || sized.exactLength < best.exactLength) best = sized;
    } catch (error) {
      if (!(error instanceof InputError) || error.code !== 'unreachable') throw error;
      refusal = error;
    }
  });
  if (best === undefined) throw refusal ?? new Error('no topology was tried');
  return { ranges, best };
}
