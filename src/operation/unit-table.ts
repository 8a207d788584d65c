import type { UnitModel } from '../heat-pump/index.js';
import type { Temperature } from '../units/index.js';

const LOWEST = -60;
const HIGHEST = 100;
/** Places per kelvin; with cubics that share value and slope at each, 0.25 K apart is good to 1e-6. */
const PER_KELVIN = 4;
/** The last place that another follows: 160 K of 4 places. */
const LAST = 639;
/** Numbers held for each place: capacity, its slope, power, its slope. */
const WIDTH = 4;

/**
 * A unit in one mode over the entering fluid, as cubics between places 0.25 K apart that share value and slope, which keeps it as smooth as its map;
 * computed where it is first asked for, and held beyond −60 and 100 °C. A class for the reason of {@link LazyTable}.
 */
export class UnitTable {
  /** Capacity last read [W]. */
  capacity = 0.5;
  /** Its change [W/K]. */
  capacitySlope = 0.5;
  /** Electric input last read [W]. */
  power = 0.5;
  /** Its change [W/K]. */
  powerSlope = 0.5;
  readonly #map: Pick<UnitModel, 'continuedAt'>;
  readonly #supply: Temperature;
  readonly #held: Float64Array = new Float64Array((LAST + 2) * WIDTH);
  readonly #known: Uint8Array = new Uint8Array(LAST + 2);

  /**
   * A table that knows nothing yet.
   *
   * @param map - the unit
   * @param supply - temperature supplied to the load; a unit that asks for it refuses none [degC]
   */
  constructor(map: Pick<UnitModel, 'continuedAt'>, supply: number = Number.NaN) {
    this.#map = map;
    this.#supply = supply as Temperature;
  }

  /**
   * Reads the table.
   *
   * @param entering - where [degC]
   */
  read(entering: number): void {
    const place = (Math.min(Math.max(entering, LOWEST), HIGHEST) - LOWEST) * PER_KELVIN;
    const index = Math.min(Math.floor(place), LAST);
    if (this.#known[index] === 0) this.#fill(index);
    if (this.#known[index + 1] === 0) this.#fill(index + 1);
    const held = this.#held;
    const at = index * WIDTH;
    // value = left + u (a + u (b + u c)), u from 0 to 1 between the two places
    const u = place - index;
    const left = held[at] ?? 0;
    const a = held[at + 1] ?? 0;
    const rise = (held[at + 4] ?? 0) - left;
    const next = held[at + 5] ?? 0;
    const b = 3 * rise - 2 * a - next;
    const c = a + next - 2 * rise;
    this.capacity = left + u * (a + u * (b + u * c));
    this.capacitySlope = (a + u * (2 * b + 3 * u * c)) * PER_KELVIN;
    const powerLeft = held[at + 2] ?? 0;
    const powerA = held[at + 3] ?? 0;
    const powerRise = (held[at + 6] ?? 0) - powerLeft;
    const powerNext = held[at + 7] ?? 0;
    const powerB = 3 * powerRise - 2 * powerA - powerNext;
    const powerC = powerA + powerNext - 2 * powerRise;
    this.power = powerLeft + u * (powerA + u * (powerB + u * powerC));
    this.powerSlope = (powerA + u * (2 * powerB + 3 * u * powerC)) * PER_KELVIN;
  }

  #fill(index: number): void {
    const { capacity, capacitySlope, power, powerSlope } = this.#map.continuedAt((LOWEST + index / PER_KELVIN) as Temperature, this.#supply);
    this.#held.set([capacity, capacitySlope / PER_KELVIN, power, powerSlope / PER_KELVIN], index * WIDTH);
    this.#known[index] = 1;
  }
}
