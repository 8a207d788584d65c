import { InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Band, SoilThermal } from '../states/index.js';
import { groundResponse, layoutFrom } from '../ground/index.js';
import type { Conductivity, Diffusivity, PipeLength } from '../units/index.js';
import type { SurfaceWaves } from './ground-at-pipes.js';
import { groundState } from './ground-state.js';
import { needsOf } from './needs.js';
import type { Fixed, Trial } from './solve.js';

/** The pipe needed, with what its band says. */
export interface BandOfNeed {
  readonly needed: Band<'pipe length'>;
  /** The end of the soil's band that asks for the most pipe. */
  readonly longestEnd: 'low' | 'high';
  readonly findings: readonly Finding[];
}

/**
 * The pipe that the chosen trenches and circuits ask for, at both ends of the band of the soil's conductivity.
 *
 * Relative to the estimate the ends are those of the closed form; followed by the hour they differ by 1 to 2 %. The state of the soil sets the response and
 * the wave at the pipes together: poor soil answers worse and keeps the winter out better. So either end may ask for more: the poor one as a rule, the good one where the unit's limit is near to the ground's own lowest temperature.
 *
 * @param fixed - what the trials shared
 * @param chosen - the loop chosen
 * @param soil - waves of the surface, estimate and band
 * @returns pipe needed with its band [m], which end of the soil's band asks for the most, and an end that no pipe reaches as a finding
 */
export function neededBand(
  fixed: Fixed,
  chosen: Trial,
  { surface, soil, conductivity }: { readonly surface: SurfaceWaves; readonly soil: SoilThermal; readonly conductivity: Band<'conductivity'> },
): BandOfNeed {
  const at = (k: Conductivity): PipeLength => {
    const state: SoilThermal = { conductivity: k, heatCapacity: soil.heatCapacity, diffusivity: (k / soil.heatCapacity) as Diffusivity };
    const layout = layoutFrom(fixed.layout, chosen.option.trenches);
    const response = groundResponse({ layout, pipe: fixed.pipe, soil: state });
    const needs = needsOf({ ...fixed, ...groundState(surface, state, layout), response, circuitFlow: chosen.option.circuitFlow });
    return ((chosen.asked / chosen.needed) * Math.max(...needs.map(({ needed }) => needed.monthly.pipe))) as PipeLength;
  };
  const ends = (['low', 'high'] as const).map((end) => ({ end, pipe: reachable(() => at(conductivity[end])) }));
  const pipes = ends.flatMap(({ pipe }) => pipe ?? []);
  const needed: Band<'pipe length'> = {
    low: Math.min(...pipes, chosen.asked) as PipeLength,
    estimate: chosen.asked,
    high: Math.max(...pipes, chosen.asked) as PipeLength,
    coverage: conductivity.coverage,
  };
  const findings = ends.flatMap(({ end, pipe }): Finding[] =>
    pipe === undefined
      ? [{ code: 'band-end-unreachable', level: 'warning', values: { end, conductivity: conductivity[end] }, source: 'common practice' }]
      : [],
  );
  return { needed, longestEnd: ends.find(({ pipe }) => pipe === needed.high)?.end ?? 'low', findings };
}

/** An end of the band may be beyond what any pipe reaches; the estimate, which was reached, stands all the same. */
function reachable(run: () => PipeLength): PipeLength | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof InputError && error.code === 'unreachable') return undefined;
    throw error;
  }
}
