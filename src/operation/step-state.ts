import type { Plant } from './plant.js';

/**
 * Load, unit, film and wall of one step at a fluid that may not be the right one yet:
 * mean fluid = wall at rest − (mean heat · rise of one step + running heat · film and wall)/length.
 *
 * Temperatures [degC], heats and powers [W], heat from the ground above 0. A class for the reason of `LazyTable`.
 */
export class StepState {
  /** Wall at the end of the step if nothing happened in it. */
  rest = 0.5;
  /** Load of the building, heating above 0, or the heat from the ground itself. */
  load = 0.5;
  /** Fluid entering the heat pump while it runs. */
  entering = 0.5;
  /** Fluid leaving it. */
  leaving = 0.5;
  /** Mean of the fluid in the pipes. */
  meanFluid = 0.5;
  /** Share of the step that the unit runs, without loss by cycling [1]. */
  runFraction = 0.5;
  /** Running time over that without loss by cycling, which unit and circulator draw their electricity in [1]. */
  stretch = 0.5;
  /** Heat from the ground while the unit runs. */
  runningHeat = 0.5;
  /** Heat from the ground, the mean over the step. */
  meanHeat = 0.5;
  /** Electric input of the unit over the run fraction. */
  power = 0.5;
  /** Electric input of the circulator over the run fraction. */
  circulation = 0.5;
  /** Load that the unit does not meet, heating above 0, cooling below. */
  unmet = 0.5;
  /** Mean fluid less what wall, film and heat make of it; 0 where the step is solved [K]. */
  protected residual = 0.5;
  /** Its change with the entering fluid [1]. */
  protected slope = 0.5;
  /** Film and wall at the mean fluid of the state [m.K/W]. */
  protected film = 0.5;
  /** Rise of the wall at the end of one step per heat per metre of pipe; of sections together it changes from step to step [m.K/W]. */
  stepRise: number;
  protected readonly plant: Plant;
  protected readonly perLength: number;
  protected readonly direct: boolean;

  /**
   * A step of one loop.
   *
   * @param plant - unit, film and circulator
   * @param pipeLength - [m]
   * @param stepRise - rise of the wall at the end of one step per heat per metre of pipe [m.K/W]
   * @param direct - whether the load is the heat from the ground itself
   */
  constructor(plant: Plant, pipeLength: number, stepRise: number, direct: boolean) {
    this.plant = plant;
    this.perLength = 1 / pipeLength;
    this.stepRise = stepRise;
    this.direct = direct;
  }

  /**
   * Share of the circulator's electricity that ends in the fluid.
   *
   * @returns [1]
   */
  get circulatorHeat(): number {
    return this.plant.circulatorHeat;
  }

  /** Everything that follows from the entering fluid. */
  protected evaluate(): void {
    const { entering, load } = this;
    const { resistance, circulation, circulatorHeat, halfRange, heating, cooling, heatingMix, coolingMix, priority } = this.plant;
    const sign = load > 0 ? 1 : -1;
    const unit = this.direct ? undefined : load > 0 ? heating : cooling;
    let heat = load;
    let heatSlope = 0;
    let fraction = 1;
    let fractionSlope = 0;
    let unmet = 0;
    let power = 0;
    let stretch = 1;
    if (unit !== undefined) {
      unit.read(entering);
      const { capacity, capacitySlope } = unit;
      power = unit.power;
      heat = sign * capacity - power;
      heatSlope = sign * capacitySlope - unit.powerSlope;
      if (sign * load < capacity) {
        fraction = (sign * load) / capacity;
        fractionSlope = (-fraction * capacitySlope) / capacity;
      } else unmet = load - sign * capacity;
    } else if (!this.direct) {
      const mix = priority ?? (load > 0 ? heatingMix : coolingMix);
      if (mix !== undefined) {
        mix.read(entering, mix === priority ? load : sign * load);
        heat = mix.heat;
        heatSlope = mix.heatSlope;
        fraction = mix.fraction;
        fractionSlope = mix.fractionSlope;
        unmet = load > 0 ? mix.unmet : 0 - mix.unmet;
        power = mix.power;
        stretch = mix.stretch;
      }
    }
    let pumpPower = 0;
    if (circulation !== undefined) {
      // The circulator warms the fluid by hundredths of a kelvin; its power may be read beside that.
      circulation.read(entering - heat * halfRange);
      pumpPower = circulation.value;
    }
    const running = heat - pumpPower * circulatorHeat;
    // Where a run is longer by cycling, the circulator warms the fluid for longer.
    const warmed = (stretch - 1) * fraction * pumpPower * circulatorHeat;
    const meanFluid = entering - running * halfRange;
    const meanSlope = 1 - heatSlope * halfRange;
    resistance.read(meanFluid);
    this.film = resistance.value;
    const inWay = fraction * this.stepRise + resistance.value;
    const inWaySlope = fractionSlope * this.stepRise + resistance.slope * meanSlope;
    this.residual = meanFluid - this.rest + (running * inWay - warmed * this.stepRise) * this.perLength;
    this.slope = meanSlope + (heatSlope * inWay + running * inWaySlope) * this.perLength;
    this.leaving = entering - 2 * heat * halfRange;
    this.meanFluid = meanFluid;
    this.runFraction = fraction;
    this.stretch = stretch;
    this.runningHeat = running;
    this.meanHeat = fraction * running - warmed;
    this.power = power;
    this.circulation = pumpPower * stretch;
    this.unmet = unmet;
  }

  /**
   * How much harder the entering fluid is at the harder of two levels or services than at their mean: with more heat the film takes more, and half of the range
   * comes back; either may outweigh the other.
   *
   * @param most - heat from the ground at the one that draws most, beyond the mean [W]
   * @param least - the same of the one that draws least [W]
   * @returns below 0 in heating [K]
   */
  enteringBeyond(most: number, least: number): number {
    const perHeat = this.plant.halfRange - this.film * this.perLength;
    return this.load >= 0 ? Math.min(most * perHeat, least * perHeat) : Math.max(most * perHeat, least * perHeat);
  }

  /**
   * The same of the leaving fluid, which is hardest with the most heat.
   *
   * @param most - heat from the ground at the one that draws most, beyond the mean [W]
   * @param least - the same of the one that draws least, or gives most in cooling [W]
   * @returns below 0 in heating [K]
   */
  leavingBeyond(most: number, least: number): number {
    return -(this.load >= 0 ? most : least) * (this.plant.halfRange + this.film * this.perLength);
  }
}
