import { demandChoice } from '../errors/index.js';
import { demandBuriedPipes, demandSoil, demandSurface } from './demand-ground.js';
import { groupPairs, type PairGroup, type PipePlaces } from './pairs.js';
import type { GroundResponseInput } from './response.js';
import type { StepTreatment } from './step-kernel.js';

/** A ground response's input, checked, as the plain numbers that the kernels work with. */
export interface GroundPipes extends StepTreatment {
  readonly places: PipePlaces;
  readonly groups: readonly PairGroup[];
}

/**
 * Checks the input of a ground response and groups the distances between its pipes.
 *
 * @param input - pipes, soil, surface and treatment of the pipe's own heat
 * @returns the pipes as plain numbers
 * @throws InputError naming the field
 */
export function groundPipes({ layout, pipe, soil, surface = { type: 'isothermal' }, selfTerm = 'cylinder' }: GroundResponseInput): GroundPipes {
  demandBuriedPipes(layout, pipe);
  demandSoil(soil);
  demandSurface(surface);
  demandChoice('selfTerm', selfTerm, ['cylinder', 'line']);
  const addedDepth = surface.type === 'film' ? soil.conductivity / surface.coefficient : 0;
  const places: PipePlaces = { pipes: layout.pipes, trenches: layout.trenches, trenchSpacing: layout.trenchSpacing, addedDepth };
  return { radius: pipe.outsideDiameter / 2, selfTerm, sealed: surface.type === 'adiabatic', places, groups: groupPairs(places) };
}
