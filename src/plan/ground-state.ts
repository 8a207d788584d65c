import type { Layout } from '../ground/index.js';
import type { SoilThermal } from '../states/index.js';
import { type GroundAtPipes, groundAtPipes, type SurfaceWaves } from './ground-at-pipes.js';

/** One state of the soil for everything: the response of the pipes and the wave that reaches them. */
export interface GroundState {
  readonly soil: SoilThermal;
  readonly ground: GroundAtPipes;
}

/**
 * The ground in one state of its soil. Dry soil answers worse but also keeps the winter out, so both must come from one state.
 *
 * @param surface - waves of the ground surface
 * @param soil - the state
 * @param layout - where the pipes lie
 * @returns soil and undisturbed temperatures that belong together
 */
export function groundState(surface: SurfaceWaves, soil: SoilThermal, layout: Layout): GroundState {
  return { soil, ground: groundAtPipes(surface, soil, layout) };
}
