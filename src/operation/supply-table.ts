import type { UnitModel } from '../heat-pump/index.js';
import { UnitTable } from './unit-table.js';

/** So many temperatures supplied, or fewer, have each a table of its own. */
const FEW = 12;

/**
 * A unit in one mode over the entering fluid at a temperature supplied to the load that changes from step to step: a {@link UnitTable} at every kelvin
 * supplied, or at every temperature where they are few, and straight lines between two. A class for the reason of `LazyTable`.
 */
export class SupplyTable {
  /** Capacity last read [W]. */
  capacity = 0.5;
  /** Its change [W/K]. */
  capacitySlope = 0.5;
  /** Electric input last read [W]. */
  power = 0.5;
  /** Its change [W/K]. */
  powerSlope = 0.5;
  readonly #model: Pick<UnitModel, 'continuedAt'>;
  readonly #few: boolean;
  readonly #tables: Map<number, UnitTable> = new Map<number, UnitTable>();
  #left: UnitTable;
  #right: UnitTable;
  #weight = 0.5;

  /**
   * A table that knows nothing yet.
   *
   * @param model - the unit
   * @param supplies - all temperatures that will be supplied [degC]
   */
  constructor(model: Pick<UnitModel, 'continuedAt'>, supplies: ArrayLike<number>) {
    this.#model = model;
    this.#few = areFew(supplies);
    this.#left = this.#tableAt(supplies[0] ?? Number.NaN);
    this.#right = this.#left;
  }

  /**
   * Turns to another temperature.
   *
   * @param supply - supplied to the load [degC]
   */
  turnTo(supply: number): void {
    const place = this.#few ? supply : Math.floor(supply);
    this.#weight = supply - place;
    this.#left = this.#tableAt(place);
    this.#right = this.#weight === 0 ? this.#left : this.#tableAt(place + 1);
  }

  /**
   * Reads the table at the temperature turned to.
   *
   * @param entering - where [degC]
   */
  read(entering: number): void {
    const left = this.#left;
    const right = this.#right;
    left.read(entering);
    this.capacity = left.capacity;
    this.capacitySlope = left.capacitySlope;
    this.power = left.power;
    this.powerSlope = left.powerSlope;
    if (left === right) return;
    right.read(entering);
    const weight = this.#weight;
    this.capacity += weight * (right.capacity - left.capacity);
    this.capacitySlope += weight * (right.capacitySlope - left.capacitySlope);
    this.power += weight * (right.power - left.power);
    this.powerSlope += weight * (right.powerSlope - left.powerSlope);
  }

  #tableAt(supply: number): UnitTable {
    const known = this.#tables.get(supply);
    if (known !== undefined) return known;
    const table = new UnitTable(this.#model, supply);
    this.#tables.set(supply, table);
    return table;
  }
}

function areFew(supplies: ArrayLike<number>): boolean {
  const seen = new Set<number>();
  for (let index = 0; index < supplies.length && seen.size <= FEW; index += 1) seen.add(supplies[index] ?? Number.NaN);
  return seen.size <= FEW;
}
