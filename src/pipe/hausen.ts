import { demand } from '../errors/index.js';
import type { Ratio } from '../units/index.js';
import type { FilmState } from './nusselt.js';
import { TRANSITION } from './regime.js';

/** Laminar flow that enters a pipe at one temperature. */
export interface EntryState extends FilmState {
  /** Length of the pipe over its bore, 1 to 1e6 [1]. */
  readonly lengthRatio: Ratio;
}

/**
 * Mean Nusselt number of laminar flow over a length of pipe whose temperature profile develops, after Hausen.
 *
 * Wall of one temperature; velocity profile developed, or a Prandtl number of 5 and more, which every cold loop fluid has. In pipes of tens of
 * metres it adds little to the 3.66 of developed flow; in short ones, or where tees and elbows mix the flow afresh, more. The resistances of
 * {@link pipeResistance} leave it out, which is on the safe side.
 *
 * @param state - Reynolds number, 0 to 2300; Prandtl number, 0.5 to 1e5; length over bore, 1 to 1e6
 * @returns mean Nusselt number over the length [1]
 * @throws InputError when a number is outside its range
 * @remarks
 * Nu = 3.66 + 0.0668 Gz/(1 + 0.04 Gz^(2/3)), Gz = Re Pr d/L. Source: `hausen1943`. Some reprints have 0.40 in place of 0.04; with 0.04 it tends to
 * 1.67 Gz^(1/3), near the 1.86 of Sieder and Tate. Checked against values computed independently (1e-10), a printed value of a general library,
 * and the energy equation solved by finite differences (2 % for Gz to 100; it lies 8 % high at 500, in a length of a few dozen bores).
 *
 * Invariants: falls with the length to 3.66.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(hausenNusseltNumber({ reynolds: ratio(1000), prandtl: ratio(10), lengthRatio: ratio(500) })).toBeCloseTo(4.6919, 4);
 * ```
 */
export function hausenNusseltNumber({ reynolds, prandtl, lengthRatio }: EntryState): Ratio {
  demand('reynolds', 'ratio', reynolds, { atLeast: 0, atMost: TRANSITION }, 'faster flow is laminar no longer');
  demand('prandtl', 'ratio', prandtl, { atLeast: 0.5, atMost: 1e5 });
  demand('lengthRatio', 'ratio', lengthRatio, { atLeast: 1, atMost: 1e6 });
  const graetz = (reynolds * prandtl) / lengthRatio;
  return (3.66 + (0.0668 * graetz) / (1 + 0.04 * graetz ** (2 / 3))) as Ratio;
}
