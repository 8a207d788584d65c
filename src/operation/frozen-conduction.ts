import type { FrozenNodes } from './frozen-nodes.js';

/** Conduction through the rings around a pipe over one step, without ice, solved backwards from the end of the step. Per metre of pipe. */
export class RingConduction {
  /** Heat capacity of each ring over the step [W/(m.K)]. */
  readonly stores: Float64Array;
  /** From each ring to the next one out [W/(m.K)]. */
  readonly links: Float64Array;
  /** What holds each ring: its store and both of its links [W/(m.K)]. */
  readonly diagonal: Float64Array;
  /** Fall of each ring in one step per heat taken at the wall [m.K/W]. */
  readonly unit: Float64Array;
  readonly #ratios: Float64Array;
  readonly #pivots: Float64Array;

  /**
   * Rings of one soil.
   *
   * @param nodes - around the pipe
   * @param soil - conductivity [W/(m.K)] and heat capacity [J/(m3.K)] without ice
   * @param step - [s]
   */
  constructor({ areas, links }: FrozenNodes, soil: { readonly conductivity: number; readonly heatCapacity: number }, step: number) {
    this.stores = areas.map((area) => (area * soil.heatCapacity) / step);
    this.links = links.map((link) => link * soil.conductivity);
    this.diagonal = this.stores.map((store, ring) => store + (this.links[ring - 1] ?? 0) + (this.links[ring] ?? 0));
    this.#ratios = new Float64Array(areas.length);
    this.#pivots = new Float64Array(areas.length);
    for (let ring = 0; ring < areas.length; ring += 1) {
      this.#pivots[ring] = 1 / ((this.diagonal[ring] ?? 0) - (this.links[ring - 1] ?? 0) * (this.#ratios[ring - 1] ?? 0));
      this.#ratios[ring] = (this.links[ring] ?? 0) * (this.#pivots[ring] ?? 0);
    }
    this.unit = new Float64Array(areas.length);
    this.unit[0] = 1;
    this.#eliminate(this.unit);
  }

  /**
   * Temperatures at the end of a step in which no heat is taken.
   *
   * @param start - at its start [K]
   * @param end - filled [K]
   */
  decay(start: Float64Array, end: Float64Array): void {
    for (let ring = 0; ring < start.length; ring += 1) end[ring] = (this.stores[ring] ?? 0) * (start[ring] ?? 0);
    this.#eliminate(end);
  }

  // Elimination inwards and outwards, in place.
  #eliminate(values: Float64Array): void {
    const ratios = this.#ratios;
    let carried = 0;
    for (let ring = 0; ring < values.length; ring += 1) {
      const inner = ring === 0 ? 0 : (this.links[ring - 1] ?? 0);
      carried = ((values[ring] ?? 0) + inner * carried) * (this.#pivots[ring] ?? 0);
      values[ring] = carried;
    }
    let outer = 0;
    for (let ring = values.length - 1; ring >= 0; ring -= 1) {
      outer = (values[ring] ?? 0) + (ratios[ring] ?? 0) * outer;
      values[ring] = outer;
    }
  }
}
