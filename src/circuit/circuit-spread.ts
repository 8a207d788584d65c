import { demand, demandCount } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Fraction, PipeLength } from '../units/index.js';

/** Spread of lengths up to which circuits in parallel still share the flow evenly enough [1]. */
const EVEN = 0.1;

/** How far circuits in parallel differ in length. */
export interface CircuitSpread {
  /** The shortest [m]. */
  readonly shortest: PipeLength;
  /** The longest [m]. */
  readonly longest: PipeLength;
  /** (longest − shortest)/mean [1]. */
  readonly spread: Fraction;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/**
 * How far circuits between the same headers differ in length; beyond a tenth of their mean the longest gets clearly less flow.
 *
 * @param lengths - length of each circuit, header to header, 1 to 1000 of them, each 1 to 1e6 [m]
 * @returns shortest, longest, spread and a finding where they differ too much
 * @throws InputError for a length out of its range
 * @remarks The tenth is common practice, recalled.
 * @example
 * ```ts @import.meta.vitest
 * const { pipeMetres } = await import('../units/index.js');
 * expect(circuitSpread([pipeMetres(150), pipeMetres(150)]).findings).toEqual([]);
 * expect(circuitSpread([pipeMetres(120), pipeMetres(180)]).spread).toBe(0.4);
 * ```
 */
export function circuitSpread(lengths: readonly PipeLength[]): CircuitSpread {
  demandCount('lengths', lengths, 1, 1000);
  lengths.forEach((length, index) => {
    demand(`lengths.${String(index)}`, 'pipe length', length, { atLeast: 1, atMost: 1e6 });
  });
  const shortest = Math.min(...lengths) as PipeLength;
  const longest = Math.max(...lengths) as PipeLength;
  const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
  const spread = ((longest - shortest) / mean) as Fraction;
  const unequal: Finding = { code: 'circuits-unequal', level: 'warning', values: { shortest, longest, spread }, source: 'common practice' };
  return { shortest, longest, spread, findings: spread > EVEN ? [unequal] : [] };
}
