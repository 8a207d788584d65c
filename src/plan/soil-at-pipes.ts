import { InputError } from '../errors/index.js';
import type { SampledSoil, SoilPhases, SoilThermalProperties } from '../soil/index.js';
import type { Fraction, Length } from '../units/index.js';
import type { LayerResult } from './loop-plan.js';

/** The layer that the pipes lie in, where it was sampled. */
export interface SampledLayer {
  /** The sample. */
  readonly sample: SampledSoil;
  /** What it tells. */
  readonly properties: SoilThermalProperties;
  /** Solids, water and air. */
  readonly phases: SoilPhases;
  /** Quartz in the solids [1]. */
  readonly quartzFraction: Fraction;
  /** Where it is in the input. */
  readonly place: string;
}

/**
 * The layer at the mean depth of the pipes; the first and the last go on beyond the log.
 *
 * @param layers - the log as it was understood
 * @param depth - mean depth of the pipes [m]
 * @param wanted - part of the input that asks for it
 * @returns its sample with what it tells
 * @throws InputError where that layer is known by a word or a conductivity alone: neither tells how dense or how wet it is
 */
export function sampledLayer(layers: readonly LayerResult[], depth: Length, wanted: string): SampledLayer {
  const below = layers.findIndex(({ bottom }) => depth < bottom);
  const index = below < 0 ? layers.length - 1 : below;
  const layer = layers[index];
  const { sample, properties } = layer ?? {};
  const { phases, quartzFraction } = properties ?? {};
  if (sample?.from === 'sample' && properties !== undefined && phases !== undefined && quartzFraction !== undefined) {
    return { sample, properties, phases, quartzFraction, place: `soil.layers.${String(index)}.sample` };
  }
  throw new InputError({
    code: 'impossible',
    argument: wanted,
    value: 'given',
    allowed: 'a sample of the layer at the pipes, with its moisture, density and texture',
    hint: `layer ${String(index + 1)} of the log is known by a word or a conductivity alone`,
  });
}
