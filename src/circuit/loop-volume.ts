import { demand, demandCount, demandObject } from '../errors/index.js';
import type { PipeSection } from '../states/index.js';
import type { PipeLength, Volume } from '../units/index.js';

/** Equal lengths of one pipe. */
export interface PipeStock {
  /** The pipe; only its bore matters here. */
  readonly pipe: Pick<PipeSection, 'insideDiameter'>;
  /** Length of each piece, 0 to 1e6 [m]. */
  readonly length: PipeLength;
  /** How many pieces, 1 to 1e4; 1 when left out. */
  readonly count?: number;
}

/** What {@link loopVolume} needs. */
export interface LoopVolumeInput {
  /** Circuits, headers and runs, 1 to 100 kinds. */
  readonly pipes: readonly PipeStock[];
  /** Water side of the heat pump, hoses and tank, 0 to 100 m³; 0 when left out [m3]. */
  readonly equipment?: Volume;
}

/** Fluid that a loop holds. */
export interface LoopVolume {
  /** All of it [m3]. */
  readonly total: Volume;
  /** Each kind of pipe, in the order given [m3]. */
  readonly pipes: readonly Volume[];
}

/**
 * Fluid in the loop: Σ π/4 · bore² · length, plus what the equipment holds.
 *
 * From the bore of the pipe itself; tables of volume per length in circulation do not always fit the pipe they name.
 *
 * @param input - see {@link LoopVolumeInput}
 * @returns the volume, whole and by pipe [m3]
 * @throws InputError for a value out of its range
 * @remarks Checked against the volume per metre of 45 pipes (H-VOL). Invariants tested: additive in pieces, proportional to length.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterInches, gallons, pipeFeet } = await import('../units/index.js');
 * const pipe = { insideDiameter: diameterInches(0.86) };
 * const { total } = loopVolume({ pipes: [{ pipe, length: pipeFeet(500), count: 3 }] });
 * expect(gallons.of(total)).toBeCloseTo(45.3, 1);
 * ```
 */
export function loopVolume({ pipes, equipment = 0 as Volume }: LoopVolumeInput): LoopVolume {
  demandCount('pipes', pipes, 1, 100);
  demand('equipment', 'volume', equipment, { atLeast: 0, atMost: 100 });
  const volumes = pipes.map((stock, index) => {
    const path = `pipes.${String(index)}`;
    demandObject(path, stock);
    const { pipe, length, count = 1 } = stock;
    demandObject(`${path}.pipe`, pipe);
    demand(`${path}.pipe.insideDiameter`, 'diameter', pipe.insideDiameter, { atLeast: 0.001, atMost: 2 });
    demand(`${path}.length`, 'pipe length', length, { atLeast: 0, atMost: 1e6 });
    demand(`${path}.count`, 'count', count, { atLeast: 1, atMost: 1e4 });
    return ((Math.PI / 4) * pipe.insideDiameter ** 2 * length * count) as Volume;
  });
  return { total: (equipment + volumes.reduce((sum, volume) => sum + volume, 0)) as Volume, pipes: volumes };
}
