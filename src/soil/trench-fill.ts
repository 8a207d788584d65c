import { demand, demandObject, InputError } from '../errors/index.js';
import { soilThermalShape, type SoilThermal } from '../states/index.js';
import type { Length, Shape } from '../units/index.js';
import { type BuriedPipe, nearerThan } from './buried-pipes.js';
import type { ConductingLayer } from './layered-rise.js';
import { demandThermal } from './layers.js';

/** What a trench was filled with: a zone of its own in the native ground, from the surface to the bottom of the trench. */
export interface TrenchFill {
  /** Width of the trench about the middle that the pipes are counted from, 0.05 to 20 [m]. */
  readonly width: Length;
  /** Depth of the trench, so that all of its pipes lie in it, up to 50 [m]. */
  readonly depth: Length;
  /** Properties of the fill as it lies: loosened in the first winter, settled later. */
  readonly thermal: SoilThermal;
}

/** Shape of {@link TrenchFill}. */
export const trenchFillShape: Shape<TrenchFill> = { width: 'length', depth: 'length', thermal: soilThermalShape };

/**
 * Sand or sieved soil about the pipes. In a trench whose fill is given it reaches from wall to wall, so far over and under the pipes
 * as it is thick and no deeper than the trench; in ground without one it is a ring about each pipe.
 */
export interface PipeBedding {
  /** Thickness from the wall of the pipe on, 0.01 to 1 and less than the cover of the pipe [m]. */
  readonly thickness: Length;
  /** Its properties in its own state; sand dries sooner than the soil around it. */
  readonly thermal: SoilThermal;
}

/** Shape of {@link PipeBedding}. */
export const pipeBeddingShape: Shape<PipeBedding> = { thickness: 'length', thermal: soilThermalShape };

/** Refuses a fill that is impossible, or whose trench does not hold the pipes. */
export function demandFill(fill: TrenchFill, pipes: readonly BuriedPipe[], radius: number): void {
  demandObject('fill', fill);
  const outermost = Math.max(...pipes.map(({ x }) => Math.abs(x))) + radius;
  const lowest = Math.max(...pipes.map(({ depth }) => depth)) + radius;
  const outside = 'the trench does not hold its pipes';
  demand('fill.width', 'length', fill.width, { atLeast: 0.05, atMost: 20 });
  demand('fill.width', 'length', fill.width, { atLeast: 2 * outermost }, outside);
  demand('fill.depth', 'length', fill.depth, { atMost: 50 });
  demand('fill.depth', 'length', fill.depth, { atLeast: lowest }, outside);
  demandThermal('fill.thermal', fill.thermal);
}

/** Refuses a bedding that is impossible, reaches the surface or, as rings, meets itself. */
export function demandBedding(bedding: PipeBedding, pipes: readonly BuriedPipe[], radius: number, filled: boolean): void {
  demandObject('bedding', bedding);
  const cover = Math.min(...pipes.map(({ depth }) => depth)) - radius;
  demand('bedding.thickness', 'length', bedding.thickness, { atLeast: 0.01, atMost: 1 });
  demand('bedding.thickness', 'length', bedding.thickness, { below: cover }, 'the bedding reaches the surface');
  demandThermal('bedding.thermal', bedding.thermal);
  if (filled || nearerThan(pipes, 2 * (radius + bedding.thickness)) === undefined) return;
  throw new InputError({
    code: 'impossible',
    argument: 'bedding.thickness',
    value: { kind: 'length', value: bedding.thickness },
    allowed: 'rings of bedding that do not meet',
    hint: 'give the trench as fill: its bedding then reaches from wall to wall',
  });
}

/** The fill as layers, with bedding about the pipes. */
export function fillLayers(
  fill: TrenchFill,
  bedding: PipeBedding | undefined,
  pipes: readonly BuriedPipe[],
  radius: number,
): readonly ConductingLayer[] {
  const around = { top: 0, bottom: fill.depth, conductivity: fill.thermal.conductivity };
  if (bedding === undefined) return [around];
  const { thickness, thermal } = bedding;
  const bedded = ({ depth }: BuriedPipe): ConductingLayer => ({
    top: depth - radius - thickness,
    bottom: Math.min(depth + radius + thickness, fill.depth),
    conductivity: thermal.conductivity,
  });
  const layers: ConductingLayer[] = [];
  for (const bed of pipes.map(bedded).sort((one, other) => one.top - other.top)) {
    const above = layers.at(-1);
    const covered = above?.bottom ?? 0;
    if (above !== undefined && bed.top <= covered) layers[layers.length - 1] = { ...above, bottom: Math.max(covered, bed.bottom) };
    else layers.push({ ...around, top: covered, bottom: bed.top }, bed);
  }
  const end = layers.at(-1)?.bottom ?? 0;
  return end < fill.depth ? [...layers, { ...around, top: end }] : layers;
}
