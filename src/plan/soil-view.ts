import { InputError, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Layout } from '../ground/index.js';
import type { Source } from '../references/index.js';
import { effectiveConductivity, soilThermalProperties, type SoilThermalProperties } from '../soil/index.js';
import type { Band, SoilThermal } from '../states/index.js';
import type { Diameter, Diffusivity, Fraction } from '../units/index.js';
import type { SoilLayerInput } from './loop-input.js';
import type { LayerResult } from './loop-plan.js';

/** The log as it was understood, and the uniform soil that would answer like it, with its band. */
export interface SoilView {
  readonly layers: readonly LayerResult[];
  readonly effective: SoilThermal;
  readonly conductivity: Band<'conductivity'>;
  readonly findings: readonly Finding[];
  readonly sources: readonly Source[];
}

/** Coverage of the bands that the soil room gives [1]. */
const COVERAGE = 0.8 as Fraction;

/**
 * What the pipes see of the logged soil.
 *
 * The band takes every layer at its low or at its high end together: the error of judging a soil is much the same from layer to
 * layer of one field.
 *
 * @param log - layers with their samples, from the top down
 * @param layout - where the pipes lie
 * @param outsideDiameter - of the pipes [m]
 * @returns properties of each layer and of the whole
 */
export function soilView(log: readonly SoilLayerInput[], layout: Layout, outsideDiameter: Diameter): SoilView {
  const known = log.map(({ top, bottom, sample }, index) => {
    const { findings, sources, ...properties } = locate(`soil.layers.${String(index)}.sample`, () => soilThermalProperties(sample));
    return { findings, sources, layer: { top, bottom, sample, properties } };
  });
  const layers = known.map(({ layer }) => layer);
  const { pipes } = layout;
  const seen = (end: 'low' | 'estimate' | 'high'): ReturnType<typeof effectiveConductivity> =>
    atItsPlace(layout.name, () =>
      effectiveConductivity({
        layers: layers.map(({ top, bottom, properties }) => ({ top, bottom, thermal: atEnd(properties, end) })),
        pipes,
        outsideDiameter,
      }),
    );
  const middle = seen('estimate');
  return {
    layers,
    effective: middle.thermal,
    conductivity: {
      low: seen('low').thermal.conductivity,
      estimate: middle.thermal.conductivity,
      high: seen('high').thermal.conductivity,
      coverage: COVERAGE,
    },
    findings: [...known.flatMap(({ findings }) => findings), ...middle.findings],
    sources: [...known.flatMap(({ sources }) => sources), ...middle.sources],
  };
}

/** Layers belong to the soil of the input, pipes to its field, where only a layout of one's own names them one by one. */
function atItsPlace<T>(name: Layout['name'], run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    if (!error.argument.startsWith('pipes')) throw error.within('soil');
    if (name === 'custom') throw error.within('field.layout');
    const { code, value, allowed, hint } = error;
    throw new InputError({ code, argument: 'field.layout', value, allowed, hint });
  }
}

function atEnd({ conductivity, thermal }: SoilThermalProperties, end: 'low' | 'estimate' | 'high'): SoilThermal {
  const { heatCapacity } = thermal;
  return { conductivity: conductivity[end], heatCapacity, diffusivity: (conductivity[end] / heatCapacity) as Diffusivity };
}
