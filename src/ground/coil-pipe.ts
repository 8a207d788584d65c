import { demand } from '../errors/index.js';
import { ellipticE } from '../numerics/index.js';
import type { Length, PipeLength, Ratio, Shape } from '../units/index.js';

/** What {@link coilPipe} needs. */
export interface CoilPipeInput {
  /** Diameter of the rings, from centre to centre of the pipe, 0.1 to 5 [m]. */
  readonly ringDiameter: Length;
  /** How far one ring is from the next along the trench, 0.01 to 20 [m]. */
  readonly pitch: Length;
}

/** Shape of {@link CoilPipeInput}. */
export const coilPipeInputShape: Shape<CoilPipeInput> = { ringDiameter: 'length', pitch: 'length' };

/** The pipe that an overlapped coil lays into a trench. */
export interface CoilPipe {
  /** Pipe of one turn [m]. */
  readonly pipePerTurn: PipeLength;
  /** Metres of pipe in a metre of trench, rings alone [1]. */
  readonly ringPipePerTrench: Ratio;
  /** The same with a straight return laid back through the trench [1]. */
  readonly pipePerTrench: Ratio;
  /** First guess of the rings alone, circles without their advance, π · diameter/pitch [1]. */
  readonly circlesPerTrench: Ratio;
}

/** Shape of {@link CoilPipe}. */
export const coilPipeShape: Shape<CoilPipe> = {
  pipePerTurn: 'pipe length',
  ringPipePerTrench: 'ratio',
  pipePerTrench: 'ratio',
  circlesPerTrench: 'ratio',
};

/**
 * Pipe of a coil whose rings are drawn apart along a trench, flat or upright: the arc of a trochoid, 4 (a + b) E(m) in a turn, with
 * a = diameter/2, b = pitch/2π and m = 4ab/(a + b)².
 *
 * Geometry alone; how such a coil answers to heat is another matter.
 *
 * @param input - diameter and pitch of the rings
 * @returns pipe of a turn [m] and per metre of trench, with and without a straight return [1]
 * @throws InputError for a value out of its range
 * @remarks Exact. Checked against an independent computation (1e-14) and the trade's "12 ft of pipe per foot" for 36 in rings 10 in apart (LS-30); its
 * "4 ft per foot" at 56 in does not reproduce (LS-31). Invariants tested: at least the circles and at least the pitch; the same when both are scaled.
 * @example
 * ```ts @import.meta.vitest
 * const { inches } = await import('../units/index.js');
 * expect(coilPipe({ ringDiameter: inches(36), pitch: inches(10) }).pipePerTrench).toBeCloseTo(12.33, 2);
 * ```
 */
export function coilPipe({ ringDiameter, pitch }: CoilPipeInput): CoilPipe {
  demand('ringDiameter', 'length', ringDiameter, { atLeast: 0.1, atMost: 5 });
  demand('pitch', 'length', pitch, { atLeast: 0.01, atMost: 20 });
  const a = ringDiameter / 2;
  const b = pitch / (2 * Math.PI);
  const turn = 4 * (a + b) * ellipticE((4 * a * b) / (a + b) ** 2);
  return {
    pipePerTurn: turn as PipeLength,
    ringPipePerTrench: (turn / pitch) as Ratio,
    pipePerTrench: (turn / pitch + 1) as Ratio,
    circlesPerTrench: ((Math.PI * ringDiameter) / pitch) as Ratio,
  };
}
