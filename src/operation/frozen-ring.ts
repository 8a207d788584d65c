import type { FreezingTable } from './freezing-table.js';
import type { RingConduction } from './frozen-conduction.js';
import type { FrozenNodes } from './frozen-nodes.js';
import { FrozenStep } from './frozen-step.js';

/**
 * The ground beyond the rings, which moves all of them alike, moves them this slowly: what it seems to do within hours is only that rings and response do
 * not quite agree on a single step, and would shake ice for nothing [s].
 */
const STEADYING = 172_800;
/** And no faster than in so many steps [1]. */
const STEADY_STEPS = 5;
/** Traces of ice long gone below this are dropped [K]. */
const FORGOTTEN = 1e-9;

/**
 * The ground around one pipe, in which ice sets heat free. It is followed twice, in scaled temperature and from the same heat: with the heat of the ice where it
 * is set free, and with all of it at the wall. What the second is at the wall the response of the whole ground tells better; so only the difference of the
 * two is used, and a ground without ice is the response itself. The heat from afar is that of the pipe less that of the ice.
 *
 * Per metre of pipe. A class for the reason of `LazyTable`.
 */
export class FrozenRing {
  /** Heat of the last step that came from afar [W/m]. */
  net = 0;
  /** Whether there is ice that counts. */
  icy = false;
  /** What all ice holds: the heat that it set free so far [J/m]. */
  freed = 0;
  readonly #table: FreezingTable;
  readonly #nodes: FrozenNodes;
  readonly #rings: RingConduction;
  readonly #step: number;
  /** How much further the rings fall in one step at the wall than by the response [m.K/W]. */
  readonly #lag: number;
  /** With the heat of ice where it is set free, and at the wall: at the start of a step, and at its end if no heat were taken [K]. */
  readonly #inPlace: Float64Array;
  readonly #atWall: Float64Array;
  readonly #inPlaceRest: Float64Array;
  readonly #atWallRest: Float64Array;
  readonly #heats: Float64Array;
  /** The step that is being solved. */
  readonly #now: FrozenStep;
  #trialFreed = 0;
  /** What the ground beyond the rings does to them, steadied [K], and how much of its news a step takes up [1]. */
  #steady = 0;
  readonly #news: number;
  /** Whether both are the same, and no ring has ice. */
  #same = true;
  /** Undisturbed ground [degC]. */
  #ground = 0;
  /** From the first ring to the wall of the response if no heat were taken [K]. */
  #offset = 0;
  /** From the rings to the ground, at the end of the step kept last [K]. */
  #kept = 0;

  /**
   * Ground without ice.
   *
   * @param table - of the soil
   * @param nodes - around the pipe
   * @param rings - between them
   * @param step - [s]
   * @param stepRise - rise of the wall by the response of the whole ground at the end of one step [m.K/W]
   */
  constructor(table: FreezingTable, nodes: FrozenNodes, rings: RingConduction, step: number, stepRise: number) {
    const zeros = (): Float64Array => new Float64Array(nodes.areas.length);
    this.#table = table;
    this.#nodes = nodes;
    this.#rings = rings;
    this.#step = step;
    this.#news = -Math.expm1(-1 / Math.max(STEADY_STEPS, STEADYING / step));
    this.#lag = (rings.unit[0] ?? 0) - stepRise;
    this.#inPlace = zeros();
    this.#atWall = zeros();
    this.#inPlaceRest = zeros();
    this.#atWallRest = zeros();
    this.#heats = zeros();
    this.#now = new FrozenStep(table, nodes, rings, step);
  }

  /**
   * Begins a step.
   *
   * @param rest - wall at its end by the response of the whole ground, if no heat were taken in it [degC]
   * @param ground - undisturbed [degC]
   */
  begin(rest: number, ground: number): void {
    this.#ground = ground;
    this.#rings.decay(this.#inPlace, this.#inPlaceRest);
    if (this.#same) this.#atWallRest.set(this.#inPlaceRest);
    else this.#rings.decay(this.#atWall, this.#atWallRest);
    this.#offset = rest - (this.#atWallRest[0] ?? 0);
  }

  /**
   * How much warmer the wall is at the end of the step for where ice set its heat free before, if none does in the step.
   *
   * @returns 0 without ice so far [K]
   */
  get ahead(): number {
    return this.#same ? 0 : (this.#inPlaceRest[0] ?? 0) - (this.#atWallRest[0] ?? 0);
  }

  /**
   * Whether all ground is without ice at the end of the step.
   *
   * @param heat - taken at the wall [W/m]
   * @returns false where any has to freeze or thaw
   */
  thawedWith(heat: number): boolean {
    if (this.icy) return false;
    const wall = this.#offset + this.#lag * heat + (this.#inPlaceRest[0] ?? 0) - heat * (this.#rings.unit[0] ?? 0);
    if (wall < 0) return false;
    const offset = this.#ground + this.#steady;
    const { unit } = this.#rings;
    for (let ring = 0; ring < this.#nodes.counting; ring += 1) {
      if ((this.#inPlaceRest[ring] ?? 0) - heat * (unit[ring] ?? 0) + offset < 0) return false;
    }
    return true;
  }

  /**
   * Solves the step with ice; {@link FrozenRing.keep} takes it.
   *
   * @param heat - taken at the wall [W/m]
   * @returns wall at the end of the step, scaled [K]
   */
  freeze(heat: number): number {
    const offset = this.#ground + this.#steady;
    const freed = this.#now.solve(heat, offset, this.#inPlace, this.#heats);
    this.#trialFreed = freed;
    return (this.#now.trial[0] ?? 0) + this.#offset + this.#lag * (heat - (freed - this.freed) / this.#step);
  }

  /**
   * Ends the step.
   *
   * @param heat - taken at the wall [W/m]
   * @param iced - whether it was solved with ice
   */
  keep(heat: number, iced: boolean): void {
    this.#kept = this.#ground + this.#steady;
    this.net = iced ? heat - (this.#trialFreed - this.freed) / this.#step : heat;
    this.#steady += (this.#offset + this.#lag * this.net - this.#kept) * this.#news;
    const { unit } = this.#rings;
    if (iced) {
      this.#heats.set(this.#now.heats);
      this.freed = this.#trialFreed;
      this.icy = this.#heats.some((each) => each !== 0);
      this.#same = false;
    }
    let apart = 0;
    for (let ring = 0; ring < unit.length; ring += 1) {
      const fall = unit[ring] ?? 0;
      if (!iced) this.#now.trial[ring] = (this.#inPlaceRest[ring] ?? 0) - heat * fall;
      const inPlace = this.#now.trial[ring] ?? 0;
      const atWall = (this.#atWallRest[ring] ?? 0) - this.net * fall;
      this.#inPlace[ring] = inPlace;
      this.#atWall[ring] = atWall;
      apart = Math.max(apart, Math.abs(inPlace - atWall));
    }
    if (!this.icy && apart < FORGOTTEN) this.#same = true;
  }

  /**
   * Section of soil that is frozen at the end of the step kept last, partly frozen soil by its share of ice.
   *
   * @returns [m2]
   */
  get frozenArea(): number {
    const { areas, counting } = this.#nodes;
    let sum = 0;
    for (let ring = 0; ring < counting; ring += 1) {
      sum += (areas[ring] ?? 0) * Math.min(1, this.#table.shareAt((this.#inPlace[ring] ?? 0) + this.#kept));
    }
    return sum;
  }
}
