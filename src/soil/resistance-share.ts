import { demand } from '../errors/index.js';
import type { Diameter, Fraction, Length } from '../units/index.js';

/** A pipe in uniform ground and a distance from it. */
export interface DistanceFromPipe {
  /** Depth of the pipe axis, at least one diameter, up to 50 [m]. */
  readonly depth: Length;
  /** Outside diameter of the pipe, 0.005 to 0.5 [m]. */
  readonly outsideDiameter: Diameter;
  /** Distance from its axis, from its wall up to twice its depth [m]. */
  readonly distance: Length;
}

/**
 * Share of the steady resistance of the ground that lies within a distance of a pipe.
 *
 * Why the fill of the trench counts for more than the field: the resistance goes by the logarithm of the distance, not by the depth.
 *
 * @param input - depth, diameter and distance [m]
 * @returns share, 0 at the wall of the pipe, 1 at twice its depth [1]
 * @throws InputError when a number is impossible
 * @remarks
 * ln(d/r) / ln(2z/r), a line and its mirror image (`carslawJaeger1959`). Checked against two worked shares.
 *
 * Invariants: grows with the distance; from 0 to 1.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, metres } = await import('../units/index.js');
 * const pipe = { depth: metres(1.2), outsideDiameter: diameterMillimetres(32) };
 * expect(resistanceShare({ ...pipe, distance: metres(0.3) })).toBeCloseTo(0.58, 2);
 * ```
 */
export function resistanceShare({ depth, outsideDiameter, distance }: DistanceFromPipe): Fraction {
  demand('outsideDiameter', 'diameter', outsideDiameter, { atLeast: 0.005, atMost: 0.5 });
  demand('depth', 'length', depth, { atLeast: outsideDiameter, atMost: 50 });
  const radius = outsideDiameter / 2;
  demand('distance', 'length', distance, { atLeast: radius, atMost: 2 * depth });
  return (Math.log(distance / radius) / Math.log((2 * depth) / radius)) as Fraction;
}
