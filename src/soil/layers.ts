import { demand, demandChoice, demandCount, InputError } from '../errors/index.js';
import { soilThermalShape, type SoilThermal } from '../states/index.js';
import type { Length, Shape } from '../units/index.js';

/** A layer of a soil log. */
export interface SoilLayer {
  /** Depth at which it begins, 0 to 50 [m]. */
  readonly top: Length;
  /** Depth at which it ends, at least 1 cm below its top, up to 100 [m]. */
  readonly bottom: Length;
  /** Its properties. */
  readonly thermal: SoilThermal;
  /** What it is, where more is to be said of it than its properties; soil when left out. */
  readonly ground?: LoggedGround;
}

/** What a layer is called in the field; made ground is what people filled in before. */
export type LoggedGround = 'soil' | 'rock' | 'peat' | 'made ground';

const LOGGED: readonly LoggedGround[] = ['soil', 'rock', 'peat', 'made ground'];

/** Shape of {@link SoilLayer}. */
export const soilLayerShape: Shape<SoilLayer> = {
  top: 'length',
  bottom: 'length',
  thermal: soilThermalShape,
  ground: { optional: LOGGED },
};

const MOST_LAYERS = 20;

/** Thinnest layer of a log [m]. */
const THINNEST = 0.01;

/** Depths of two layers closer than this are one depth, rounded [m]. */
const SAME = 1e-6;

/** Refuses layers that are impossible, overlap or leave a gap. */
export function demandLayers(layers: readonly SoilLayer[]): void {
  demandCount('layers', layers ?? [], 1, MOST_LAYERS);
  layers.forEach((layer, index) => {
    const at = (key: string): string => `layers.${String(index)}.${key}`;
    demand(at('top'), 'length', layer?.top, { atLeast: 0, atMost: 50 });
    demand(at('bottom'), 'length', layer.bottom, { atLeast: layer.top + THINNEST, atMost: 100 }, 'top and bottom may be interchanged');
    demandThermal(at('thermal'), layer.thermal);
    if (layer.ground !== undefined) demandChoice(at('ground'), layer.ground, LOGGED);
    const previous = layers[index - 1]?.bottom ?? layer.top;
    if (Math.abs(layer.top - previous) > SAME) refuseGap(at('top'), layer.top, previous);
  });
}

/** Refuses properties that are impossible, or do not belong together. */
export function demandThermal(argument: string, thermal: SoilThermal): void {
  demand(`${argument}.conductivity`, 'conductivity', thermal?.conductivity, { atLeast: 0.01, atMost: 100 });
  demand(`${argument}.heatCapacity`, 'heat capacity', thermal.heatCapacity, { atLeast: 1e4, atMost: 1e8 });
  demandDiffusivity(`${argument}.diffusivity`, thermal);
}

/** Diffusivity is conductivity over heat capacity to about this [1]. */
const ROUNDED = 0.01;

function demandDiffusivity(argument: string, { conductivity, heatCapacity, diffusivity }: SoilThermal): void {
  demand(argument, 'diffusivity', diffusivity, { above: 0, atMost: 1 });
  const follows = conductivity / heatCapacity;
  if (Math.abs(diffusivity - follows) <= ROUNDED * follows) return;
  throw new InputError({
    code: 'impossible',
    argument,
    value: { kind: 'diffusivity', value: diffusivity },
    allowed: `conductivity over heat capacity, ${follows.toExponential(3)} m2/s`,
  });
}

function refuseGap(argument: string, top: Length, previous: Length): never {
  const hint = top > previous ? 'there is a gap between the layers' : 'the layers overlap, or do not go from the top down';
  throw new InputError({
    code: 'impossible',
    argument,
    value: { kind: 'length', value: top },
    allowed: `${String(previous)} m, where the layer above ends`,
    hint,
  });
}
