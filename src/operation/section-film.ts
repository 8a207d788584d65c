import { LazyTable } from './lazy-table.js';

/**
 * Film and wall of all sections as those of one loop, over its mean fluid: each section's own at its own mean fluid, weighted by the square of the share that
 * it takes. Of all shares those of parallel resistances make the sum least, so that it is right to second order where the shares lag behind. A table
 * by its face alone: it keeps nothing.
 */
export class SectionFilm extends LazyTable {
  /** Weight of each film in the whole [1]. */
  readonly parts: Float64Array;
  /** How far the mean fluid of each section is from that of the loop [K]. */
  readonly offsets: Float64Array;
  /** What unequal flow adds [m.K/W]. */
  added = 0.5;
  readonly #tables: readonly LazyTable[];

  /**
   * Films without weights yet.
   *
   * @param tables - film and wall of each section
   */
  constructor(tables: readonly LazyTable[]) {
    super(() => Number.NaN);
    this.#tables = tables;
    this.parts = new Float64Array(tables.length);
    this.offsets = new Float64Array(tables.length);
  }

  /**
   * Reads all films.
   *
   * @param temperature - mean fluid of the loop [degC]
   */
  override read(temperature: number): void {
    let value = this.added;
    let slope = 0;
    for (let index = 0; index < this.parts.length; index += 1) {
      const table = this.#tables[index];
      if (table === undefined) break;
      const part = this.parts[index] ?? 0;
      table.read(temperature + (this.offsets[index] ?? 0));
      value += part * table.value;
      slope += part * table.slope;
    }
    this.value = value;
    this.slope = slope;
  }
}
