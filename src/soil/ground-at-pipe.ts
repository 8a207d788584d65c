import type { ConductingLayer } from './layered-rise.js';
import type { SoilLayer } from './layers.js';

/** A layer as it conducts and stores heat, continued to the surface if it is the first. */
export interface GroundLayer extends ConductingLayer {
  readonly heatCapacity: number;
}

/** The layers, the first begun at the surface and the last without end. */
export function groundLayers(layers: readonly SoilLayer[]): readonly GroundLayer[] {
  return layers.map(({ thermal, bottom }, index) => ({
    top: layers[index - 1]?.bottom ?? 0,
    bottom: index === layers.length - 1 ? Infinity : bottom,
    conductivity: thermal.conductivity,
    heatCapacity: thermal.heatCapacity,
  }));
}

/** The depth of a pipe axis, moved onto an interface that its wall reaches. */
export function onInterface(layers: readonly GroundLayer[], depth: number, radius: number): number {
  return layers.map(({ bottom }) => bottom).find((bottom) => Math.abs(bottom - depth) < radius) ?? depth;
}

/** What a pipe lies in: one layer, or the mean of the two about it. */
export function groundAtPipe(layers: readonly GroundLayer[], depth: number): Pick<GroundLayer, 'conductivity' | 'heatCapacity'> {
  const above = layers.find(({ bottom }) => depth <= bottom);
  const below = layers.findLast(({ top }) => top <= depth);
  const mean = (of: 'conductivity' | 'heatCapacity'): number => ((above?.[of] ?? 0) + (below?.[of] ?? 0)) / 2;
  return { conductivity: mean('conductivity'), heatCapacity: mean('heatCapacity') };
}
