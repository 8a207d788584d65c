import type { FreezingTable } from './freezing-table.js';
import type { RingConduction } from './frozen-conduction.js';
import type { FrozenNodes } from './frozen-nodes.js';

const MOST_ROUNDS = 120;
/** A ring that begins to freeze in a round goes this far below the first ice, where the table tells how much heat that sets free [K]. */
const INSIDE = 1e-3;
/** A round that moves no node further is the last [K]. */
const CLOSE = 1e-6;
/** Beyond this many rounds a step is halved: between two kinks of the table Newton's way may go to and fro. */
const PATIENT = 20;

/** One step of the rings with ice, solved by Newton's way. A class for the reason of `LazyTable`. */
export class FrozenStep {
  /** Rings at the end of the step, and where the next search starts [K]. */
  readonly trial: Float64Array;
  /** What their ice has set free at its end [J/m3]. */
  readonly heats: Float64Array;
  readonly #table: FreezingTable;
  readonly #nodes: FrozenNodes;
  readonly #rings: RingConduction;
  readonly #step: number;
  readonly #upper: Float64Array;
  readonly #right: Float64Array;

  /**
   * Rings without ice.
   *
   * @param table - of the soil
   * @param nodes - around the pipe
   * @param rings - between them
   * @param step - [s]
   */
  constructor(table: FreezingTable, nodes: FrozenNodes, rings: RingConduction, step: number) {
    const zeros = (): Float64Array => new Float64Array(nodes.areas.length);
    this.#table = table;
    this.#nodes = nodes;
    this.#rings = rings;
    this.#step = step;
    this.trial = zeros();
    this.heats = zeros();
    this.#upper = zeros();
    this.#right = zeros();
  }

  /**
   * Solves a step.
   *
   * @param heat - taken at the wall [W/m]
   * @param offset - from the rings to the ground [K]
   * @param inPlace - rings at its start [K]
   * @param heats - what their ice had set free then [J/m3]
   * @returns heat that all ice has set free at its end [J/m]
   */
  solve(heat: number, offset: number, inPlace: Float64Array, heats: Float64Array): number {
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      this.#forwards(heat, offset, inPlace, heats);
      if (this.#backwards(round < PATIENT ? 1 : 0.5, this.#table.start - offset) < CLOSE) break;
    }
    const { areas, counting } = this.#nodes;
    let freed = 0;
    for (let ring = 0; ring < counting; ring += 1) {
      const scaled = (this.trial[ring] ?? 0) + offset;
      if (scaled < 0) this.#table.read(scaled);
      const each = scaled < 0 ? this.#table.freed : 0;
      this.heats[ring] = each;
      freed += (areas[ring] ?? 0) * each;
    }
    return freed;
  }

  // One round of Newton's way: elimination from the wall outwards, with the table's straight line at each ring.
  #forwards(heat: number, offset: number, inPlace: Float64Array, heats: Float64Array): void {
    const table = this.#table;
    const { stores, links, diagonal } = this.#rings;
    const { areas, counting } = this.#nodes;
    let ratio = 0;
    let carried = 0;
    for (let ring = 0; ring < stores.length; ring += 1) {
      const inner = ring === 0 ? 0 : (links[ring - 1] ?? 0);
      const before = this.trial[ring] ?? 0;
      let holds = (diagonal[ring] ?? 0) - inner * ratio;
      let force = (stores[ring] ?? 0) * (inPlace[ring] ?? 0) + inner * carried;
      if (ring === 0) force -= heat;
      if (ring < counting) {
        const rate = (areas[ring] ?? 0) / this.#step;
        if (before + offset < 0) {
          table.read(before + offset);
          holds -= rate * table.slope;
          force += rate * (table.freed - table.slope * before);
        }
        force -= rate * (heats[ring] ?? 0);
      }
      ratio = (links[ring] ?? 0) / holds;
      carried = force / holds;
      this.#upper[ring] = ratio;
      this.#right[ring] = carried;
    }
  }

  // And back to the wall; how far the ring moved that moved furthest [K].
  // No ring crosses the first ice in one round, where the table breaks: it stops on the other side of it.
  #backwards(share: number, first: number): number {
    const trial = this.trial;
    let moved = 0;
    let outer = 0;
    for (let ring = trial.length - 1; ring >= 0; ring -= 1) {
      outer = (this.#right[ring] ?? 0) + (this.#upper[ring] ?? 0) * outer;
      const by = outer - (trial[ring] ?? 0);
      moved = Math.max(moved, Math.abs(by));
      const before = trial[ring] ?? 0;
      const after = before + share * by;
      trial[ring] = before >= first && after < first ? first - INSIDE : before < first && after > first ? first : after;
    }
    return moved;
  }
}
