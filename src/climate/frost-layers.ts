import { demand, demandCount, demandObject } from '../errors/index.js';
import type { Conductivity, HeatCapacity, LatentHeat, Length, Shape } from '../units/index.js';
import { DAY } from './limits.js';

/** A layer of ground that freezes. */
export interface FrostLayer {
  /** How thick it is, 0.001 to 100; the last layer goes on below [m]. */
  readonly thickness: Length;
  /** Conductivity when frozen, or the mean of frozen and unfrozen, 0.01 to 10 [W/(m.K)]. */
  readonly frozenConductivity: Conductivity;
  /** Heat set free in freezing, 0 to 3.4e8, in the last layer at least 1e5 [J/m3]. */
  readonly latentHeat: LatentHeat;
  /** Heat capacity, mean of frozen and unfrozen, 1e4 to 5e6 [J/(m3.K)]. */
  readonly heatCapacity: HeatCapacity;
}

/** Shape of {@link FrostLayer}. */
export const frostLayerShape: Shape<FrostLayer> = {
  thickness: 'length',
  frozenConductivity: 'conductivity',
  latentHeat: 'latent heat',
  heatCapacity: 'heat capacity',
};

/** Refuses a conductivity that no frozen ground has. */
export function demandFrozenConductivity(argument: string, conductivity: Conductivity): void {
  demand(argument, 'conductivity', conductivity, { atLeast: 0.01, atMost: 10 });
}

/** Refuses a latent heat larger than that of ice alone. */
export function demandLatentHeat(argument: string, latentHeat: LatentHeat, least: number): void {
  demand(argument, 'latent heat', latentHeat, { atLeast: least, atMost: 3.4e8 }, 'J/m3; dry ground has no frost front, dry layers above are allowed');
}

/** Refuses layers that cannot be. */
export function demandLayers(layers: readonly FrostLayer[]): void {
  demandCount('layers', layers, 1, 100);
  layers.forEach((layer, place) => {
    const path = `layers.${String(place)}`;
    demandObject(path, layer);
    demand(`${path}.thickness`, 'length', layer.thickness, { atLeast: 0.001, atMost: 100 });
    demandFrozenConductivity(`${path}.frozenConductivity`, layer.frozenConductivity);
    demandLatentHeat(`${path}.latentHeat`, layer.latentHeat, place === layers.length - 1 ? 1e5 : 0);
    demand(`${path}.heatCapacity`, 'heat capacity', layer.heatCapacity, { atLeast: 1e4, atMost: 5e6 });
  });
}

/** The ground down to a depth. */
interface Frozen {
  /** Degree days below freezing at the surface that freeze it, the sensible heat left out [K.d]. */
  readonly index: number;
  /** Latent heat of all of it [J/m2]. */
  readonly latent: number;
  /** Heat capacity of all of it [J/(m2.K)]. */
  readonly capacity: number;
}

/** What it takes to freeze layers down to a depth under a surface resistance: each layer L d (R above + d/2k). */
export function frozenTo(depth: number, layers: readonly FrostLayer[], surfaceResistance: number): Frozen {
  let [resistance, index, latent, capacity, top] = [surfaceResistance, 0, 0, 0, 0];
  for (const [place, { thickness, frozenConductivity, latentHeat, heatCapacity }] of layers.entries()) {
    const part = place === layers.length - 1 ? depth - top : Math.min(thickness, depth - top);
    if (part <= 0) break;
    index += (latentHeat * part * (resistance + part / frozenConductivity / 2)) / DAY;
    latent += latentHeat * part;
    capacity += heatCapacity * part;
    resistance += part / frozenConductivity;
    top += part;
  }
  return { index, latent, capacity };
}

/** The depth at which an excess that starts positive turns negative [m]. */
export function depthWhere(excess: (depth: number) => number): number {
  let high = 1;
  while (excess(high) > 0) high *= 2;
  let low = 0;
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
