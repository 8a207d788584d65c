import type { LevelMix } from './level-mix.js';
import type { UnitTable } from './unit-table.js';

/**
 * A unit that makes hot water first and serves the house in what is left of the step. It gives what `LevelMix` gives, over all the time that the unit runs, and
 * what of it is for hot water. A class for the reason of `LazyTable`.
 */
export class PriorityMix {
  /** Heat from the ground while the unit runs, the mean of both services [W]. */
  heat = 0.5;
  /** Its change [W/K]. */
  heatSlope = 0.5;
  /** Share of the step that the unit runs for either, without loss by cycling [1]. */
  fraction = 0.5;
  /** Its change [1/K]. */
  fractionSlope = 0.5;
  /** Electric input over that share [W]. */
  power = 0.5;
  /** The part of it that is lost by starting [W]. */
  lost = 0.5;
  /** Running time over that without loss by cycling [1]. */
  stretch = 0.5;
  /** Load of the house that is not met, above 0 [W]. */
  unmet = 0.5;
  /** Cycles of a run in which hot water has its turn are not told apart [1]. */
  readonly levelShare: number = 1;
  /** Heat from the ground at the service or level that draws most, and least, beyond the mean [W]. */
  mostBeyond = 0.5;
  leastBeyond = 0.5;
  /** Share of the step that the unit makes hot water [1]. */
  hotFraction = 0.5;
  /** Heat from the ground meanwhile [W]. */
  hotHeat = 0.5;
  /** Electric input meanwhile [W]. */
  hotPower = 0.5;
  /** Hot water that is not made, above 0 [W]. */
  hotUnmet = 0.5;
  /** Heat for hot water of the step [W]. */
  hotLoad = 0.5;
  #space: LevelMix | undefined;
  #spaceTime = 0.5;
  readonly #hot: UnitTable;
  readonly #heating: LevelMix | undefined;
  readonly #cooling: LevelMix | undefined;

  /**
   * A unit whose tables know nothing yet.
   *
   * @param hot - the unit while it makes hot water
   * @param heating - the unit in heating
   * @param cooling - the unit in cooling
   */
  constructor(hot: UnitTable, heating: LevelMix | undefined, cooling: LevelMix | undefined) {
    this.#hot = hot;
    this.#heating = heating;
    this.#cooling = cooling;
  }

  /**
   * Turns to the temperature that the house is supplied with.
   *
   * @param supply - [degC]
   */
  turnTo(supply: number): void {
    this.#heating?.turnTo(supply);
    this.#cooling?.turnTo(supply);
  }

  /**
   * Reads the unit.
   *
   * @param entering - fluid that enters it [degC]
   * @param load - of the house, cooling below 0 [W]
   */
  read(entering: number, load: number): void {
    const hot = this.#hot;
    hot.read(entering);
    const short = this.hotLoad >= hot.capacity;
    const share = short ? 1 : this.hotLoad / hot.capacity;
    const shareSlope = short ? 0 : (-share * hot.capacitySlope) / hot.capacity;
    const heat = hot.capacity - hot.power;
    this.hotFraction = share;
    this.hotHeat = heat;
    this.hotPower = hot.power;
    this.hotUnmet = short ? this.hotLoad - hot.capacity : 0;
    const left = 1 - share;
    const space = load === 0 ? undefined : load > 0 ? this.#heating : this.#cooling;
    if (space === undefined || left <= 0) {
      this.#space = undefined;
      this.#spaceTime = 0;
      this.#alone(Math.abs(load), shareSlope, heat, hot.capacitySlope - hot.powerSlope);
      return;
    }
    // The house has to be served in less time, as by a greater load; that this changes with the fluid a little is left out of the slopes alone.
    space.read(entering, Math.abs(load) / left);
    const time = left * space.fraction;
    const timeSlope = left * space.fractionSlope - shareSlope * space.fraction;
    const whole = share + time;
    const wholeSlope = shareSlope + timeSlope;
    // A load next to nothing, of which no running time is left in doubles.
    if (!(whole > 0)) {
      this.#alone(0, shareSlope, heat, hot.capacitySlope - hot.powerSlope);
      return;
    }
    const mean = (share * heat + time * space.heat) / whole;
    const sumSlope = shareSlope * heat + share * (hot.capacitySlope - hot.powerSlope) + timeSlope * space.heat + time * space.heatSlope;
    this.#space = space;
    this.#spaceTime = time;
    this.fraction = whole;
    this.fractionSlope = wholeSlope;
    this.heat = mean;
    this.heatSlope = (sumSlope - mean * wholeSlope) / whole;
    this.power = (share * hot.power + time * space.power) / whole;
    this.lost = (time * space.lost) / whole;
    this.stretch = (share + time * space.stretch) / whole;
    this.unmet = left * space.unmet;
    const drawn = share > 0 ? heat : space.heat;
    this.mostBeyond = Math.max(drawn, space.heat + space.mostBeyond) - mean;
    this.leastBeyond = Math.min(drawn, space.heat + space.leastBeyond) - mean;
  }

  /**
   * Heat from the ground over that at full output, each service by its own; hot water is always made at full output.
   *
   * @returns the mean over the step [1]
   */
  heatShare(): number {
    const space = this.#space;
    if (space === undefined || space.fraction === 0) return this.hotFraction;
    return this.hotFraction + (this.#spaceTime / space.fraction) * space.heatShare();
  }

  #alone(unmet: number, shareSlope: number, heat: number, heatSlope: number): void {
    this.fraction = this.hotFraction;
    this.fractionSlope = shareSlope;
    this.heat = heat;
    this.heatSlope = heatSlope;
    this.power = this.hotPower;
    this.lost = 0;
    this.stretch = 1;
    this.unmet = unmet;
    this.mostBeyond = 0;
    this.leastBeyond = 0;
  }
}
