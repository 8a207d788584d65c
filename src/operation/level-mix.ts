import { type CyclingLoss, cyclingFactor, type StagedUnit } from '../heat-pump/index.js';
import type { Fraction } from '../units/index.js';
import { SupplyTable } from './supply-table.js';
import { UnitTable } from './unit-table.js';

/** What joins at a level, beside its table. */
interface Level {
  readonly table: UnitTable | SupplyTable;
  readonly cyclingLoss?: CyclingLoss;
  /** Whether the two levels around a load are both run, or one between them. */
  readonly alternates: boolean;
}

/**
 * A unit of several levels in one mode at a load: it starts and stops below the lowest, mixes two between them, and leaves the rest of a load above the
 * highest. Heats from the ground above 0 [W]. A class for the reason of `LazyTable`.
 *
 * Film and fluid range see the mean heat of the two levels of a mix, since the load decides how long each runs; `mostBeyond` and `leastBeyond` say how
 * far either lies from it.
 */
export class LevelMix {
  /** Heat from the ground while the unit runs. */
  heat = 0.5;
  /** Its change [W/K]. */
  heatSlope = 0.5;
  /** Share of the step that the unit runs, without loss by cycling [1]. */
  fraction = 0.5;
  /** Its change [1/K]. */
  fractionSlope = 0.5;
  /** Electric input while it runs, without what cycling lengthens the run by. */
  power = 0.5;
  /** The part of it that is lost by starting units or levels. */
  lost = 0.5;
  /** Running time over that without loss by cycling [1]. */
  stretch = 0.5;
  /** Load that is not met, above 0. */
  unmet = 0.5;
  /** Share of the upper of two levels that are both run; else 1 [1]. */
  levelShare = 0.5;
  /** Heat from the ground at either of them beyond the mean, the greater and the lesser; 0 where there is one. */
  mostBeyond = 0.5;
  leastBeyond = 0.5;
  /** Fluid as read last, and the highest level that was read there. */
  #entering = 0.5;
  #used = 0;
  readonly #levels: readonly Level[];
  readonly #sign: number;

  /**
   * A unit whose tables know nothing yet.
   *
   * @param unit - its levels
   * @param supplies - temperatures supplied in the steps of the year, where the levels ask for them [degC]
   */
  constructor({ mode, levels }: Pick<StagedUnit, 'mode' | 'levels'>, supplies?: ArrayLike<number>) {
    this.#sign = mode === 'heating' ? 1 : -1;
    this.#levels = levels.map(({ model, cyclingLoss, reachedBy }) => ({
      table: supplies === undefined ? new UnitTable(model) : new SupplyTable(model, supplies),
      ...(cyclingLoss && { cyclingLoss }),
      alternates: reachedBy !== 'speed',
    }));
  }

  /**
   * Turns all levels to a temperature supplied.
   *
   * @param supply - [degC]
   */
  turnTo(supply: number): void {
    for (const { table } of this.#levels) if (table instanceof SupplyTable) table.turnTo(supply);
  }

  /**
   * Reads the unit.
   *
   * @param entering - fluid that enters it [degC]
   * @param load - above 0, heating and cooling alike [W]
   */
  read(entering: number, load: number): void {
    const levels = this.#levels;
    const count = levels.length;
    let lower: Level | undefined;
    this.#entering = entering;
    this.lost = 0;
    this.stretch = 1;
    this.unmet = 0;
    this.levelShare = 1;
    this.mostBeyond = 0;
    this.leastBeyond = 0;
    for (let index = 0; index < count; index += 1) {
      const level = levels[index];
      if (level === undefined) break;
      this.#used = index;
      level.table.read(entering);
      if (load < level.table.capacity) {
        if (lower === undefined) this.#cycle(level, load);
        else this.#mix(lower, level, load);
        return;
      }
      lower = level;
    }
    if (lower !== undefined) this.#full(lower, load);
  }

  /**
   * Heat from the ground over that at full output: at the level that draws most, which is the highest of a usual unit; at the fluid read last.
   *
   * @returns the mean over the step [1]
   */
  heatShare(): number {
    const sign = this.#sign;
    let most = 0;
    for (let index = 0; index < this.#levels.length; index += 1) {
      const table = this.#levels[index]?.table;
      if (table === undefined) break;
      if (index > this.#used) table.read(this.#entering);
      most = Math.max(most, table.capacity - sign * table.power);
    }
    // Full output may round past itself.
    return Math.min(1, this.fraction * (this.heat / (sign * most)));
  }

  #cycle(level: Level, load: number): void {
    const { capacity, capacitySlope, power, powerSlope } = level.table;
    this.fraction = load / capacity;
    this.fractionSlope = (-this.fraction * capacitySlope) / capacity;
    this.heat = this.#sign * capacity - power;
    this.heatSlope = this.#sign * capacitySlope - powerSlope;
    this.power = power;
    if (level.cyclingLoss === undefined) return;
    this.stretch = 1 / cyclingFactor(level, this.fraction as Fraction);
    this.lost = power * (this.stretch - 1);
    this.power = power * this.stretch;
  }

  #mix(below: Level, level: Level, load: number): void {
    const sign = this.#sign;
    const lower = below.table;
    const upper = level.table;
    // Above 0, whatever the tables: the load lies between the two.
    const span = upper.capacity - lower.capacity;
    const more = upper.power - lower.power;
    const share = (load - lower.capacity) / span;
    const shareSlope = -(lower.capacitySlope + share * (upper.capacitySlope - lower.capacitySlope)) / span;
    const power = lower.power + share * more;
    this.fraction = 1;
    this.fractionSlope = 0;
    this.heat = sign * load - power;
    this.heatSlope = -(lower.powerSlope + share * (upper.powerSlope - lower.powerSlope) + shareSlope * more);
    if (level.alternates) {
      const apart = sign * span - more;
      const [atUpper, atLower] = [(1 - share) * apart, -share * apart];
      this.levelShare = share;
      this.mostBeyond = Math.max(atUpper, atLower);
      this.leastBeyond = Math.min(atUpper, atLower);
    }
    if (level.cyclingLoss !== undefined) this.lost = share * more * (1 / cyclingFactor(level, share as Fraction) - 1);
    this.power = power + this.lost;
  }

  #full({ table }: Level, load: number): void {
    this.fraction = 1;
    this.fractionSlope = 0;
    this.heat = this.#sign * table.capacity - table.power;
    this.heatSlope = this.#sign * table.capacitySlope - table.powerSlope;
    this.power = table.power;
    this.unmet = load - table.capacity;
  }
}
