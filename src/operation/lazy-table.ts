const LOWEST = -60;
const HIGHEST = 100;
/** Places per kelvin: 0.05 K apart a film resistance is good to 1e-6, but for the two places where its regime changes, where it is good to 1 %. */
const PER_KELVIN = 20;
/** The last place that another follows: 160 K of 20 places. */
const LAST = 3199;

/**
 * A function of the fluid temperature as straight lines between places 0.05 K apart, computed where it is first asked for and held beyond −60 and 100 °C.
 * A reading lies in the table itself, so that a step makes no objects; a class, since every step of every year reads it, and its one method can be compiled
 * into the step.
 */
export class LazyTable {
  /** What was read last. */
  value = 0.5;
  /** Its change per kelvin. */
  slope = 0.5;
  readonly #of: (temperature: number) => number;
  readonly #values: Float64Array = new Float64Array(LAST + 2);
  readonly #known: Uint8Array = new Uint8Array(LAST + 2);

  /**
   * A table that knows nothing yet.
   *
   * @param of - the function
   */
  constructor(of: (temperature: number) => number) {
    this.#of = of;
  }

  /**
   * Reads the table.
   *
   * @param temperature - where [degC]
   */
  read(temperature: number): void {
    const place = (Math.min(Math.max(temperature, LOWEST), HIGHEST) - LOWEST) * PER_KELVIN;
    const index = Math.min(Math.floor(place), LAST);
    if (this.#known[index] === 0) this.#fill(index);
    if (this.#known[index + 1] === 0) this.#fill(index + 1);
    const left = this.#values[index] ?? 0;
    const rise = (this.#values[index + 1] ?? 0) - left;
    this.value = left + rise * (place - index);
    this.slope = rise * PER_KELVIN;
  }

  #fill(index: number): void {
    this.#values[index] = this.#of(LOWEST + index / PER_KELVIN);
    this.#known[index] = 1;
  }
}
