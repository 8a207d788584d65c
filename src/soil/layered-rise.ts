/** A layer of ground; the first of a list begins at the surface, the last ends at infinity. */
export interface ConductingLayer {
  readonly top: number;
  readonly bottom: number;
  readonly conductivity: number;
}

/** How ground conducts and stores heat. */
export interface Conductor {
  readonly conductivity: number;
  readonly heatCapacity: number;
}

/** Layers from the top down. */
type Layers = readonly (ConductingLayer & Conductor)[];

/** A line source and a point that it warms: a depth each, and how far they are apart sideways. */
export interface LinePair {
  readonly depths: readonly [number, number];
  readonly aside: number;
}

/** Steps of the sum over wave numbers; its least wave number times the depth, its greatest times the distance to the nearest interface. */
const STEP = 0.05;
const LEAST = 1e-7;
const GREATEST = 18;

/**
 * Warming at a point by a line source of one watt per metre in layered ground, beyond what uniform ground would show, the surface held at its
 * temperature [m.K/W]. Steady at the rate zero; at another rate [1/s] the transform of Laplace of a step, times the rate.
 *
 * The cosine transform along the layers leaves a line of conductance across them. What the ground above and below the source takes up are
 * admittances, over the wave number here, carried from layer to layer; heat that a layer stores makes its wave number greater. Subtracting
 * uniform ground takes the singularity at the source away. Wave numbers go by equal ratios, and by equal steps where the cosine would otherwise
 * turn by more than a radian between two of them.
 */
export function layeredExcess(layers: Layers, uniform: Conductor, { depths, aside }: LinePair, rate = 0): number {
  const deep = Math.max(...depths);
  const high = Math.min(...depths);
  const over = [...cut(layers, 0, high), ...cut(layers, high, deep)];
  const under = cut(layers, deep, Infinity);
  const even = 1 / (STEP * aside);
  const greatest = GREATEST / nearestInterface(layers, depths);
  let sum = 0;
  for (let at = Math.log(LEAST / deep); ; at += STEP) {
    const growing = Math.exp(at);
    const wave = aside === 0 ? growing : even * Math.log1p(growing / even);
    if (wave > greatest) return (sum * STEP) / Math.PI;
    const width = aside === 0 ? 1 : growing / (1 + growing / even) / wave;
    const slowed = slowedBy(rate / wave ** 2);
    const { admittance, passed } = upward(over, high, wave, slowed);
    const layered = passed / (admittance + downward(under, wave, slowed));
    const number = wave * slowed(uniform);
    const plain = (Math.exp(-number * (deep - high)) - Math.exp(-number * (deep + high))) / (2 * uniform.conductivity * slowed(uniform));
    sum += (layered - plain) * Math.cos(wave * aside) * width;
  }
}

type Slowed = (ground: Conductor) => number;

/** By how much the storage of a ground makes its wave number greater. */
function slowedBy(delay: number): Slowed {
  return ({ conductivity, heatCapacity }) => Math.sqrt(1 + (delay * heatCapacity) / conductivity);
}

/** How near the closest interface is that neither of the two lies on; the surface is one. */
function nearestInterface(layers: readonly ConductingLayer[], depths: LinePair['depths']): number {
  return Math.min(...layers.flatMap(({ top }) => depths.map((depth) => Math.abs(depth - top)).filter((distance) => distance > 0)));
}

/** The parts of the layers between two depths. */
function cut(layers: Layers, from: number, to: number): Layers {
  return layers.flatMap((layer) => {
    const bottom = Math.min(layer.bottom, to);
    const top = Math.max(layer.top, from);
    return top < bottom ? [{ ...layer, top, bottom }] : [];
  });
}

/** What the ground above takes up, and the share of the warming at its lower end that is left at the depth `high`. */
function upward(over: Layers, high: number, wave: number, slowed: Slowed): { readonly admittance: number; readonly passed: number } {
  let admittance = Infinity;
  let passed = 1;
  for (const layer of over) {
    const factor = slowed(layer);
    const thickness = wave * factor * (layer.bottom - layer.top);
    const fading = Math.exp(-thickness);
    if (layer.top >= high) {
      const above = admittance / (layer.conductivity * factor);
      passed *= (2 * fading) / (1 + above + (1 - above) * fading * fading);
    }
    admittance = across(admittance, layer.conductivity * factor, thickness);
  }
  return { admittance, passed };
}

/** What the ground below takes up. */
function downward(under: Layers, wave: number, slowed: Slowed): number {
  return under.reduceRight((admittance, layer) => {
    const factor = slowed(layer);
    return across(admittance, layer.conductivity * factor, wave * factor * (layer.bottom - layer.top));
  }, 0);
}

/** The admittance at one side of a layer from the one at its other side: of a line of conductance, as of any line. */
function across(beyond: number, conductivity: number, thickness: number): number {
  const slope = Math.tanh(thickness);
  return beyond === Infinity ? conductivity / slope : (conductivity * (beyond + conductivity * slope)) / (conductivity + beyond * slope);
}
