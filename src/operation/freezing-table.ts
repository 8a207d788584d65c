import { andersonTiceUnfrozenWater } from '../soil/index.js';
import type { Temperature } from '../units/index.js';
import type { FreezingCourse, IceSoil } from './ice-soil.js';

/** The coldest soil tabulated [degC]; below it nothing new freezes. */
const COLDEST = -40;
/** Strips of temperature that the integrals are taken over [K]. */
const STRIP = 0.0025;
/** Places per kelvin of scaled temperature. */
const PER_KELVIN = 100;

/**
 * A freezing soil over its scaled temperature u = ∫ k dT/k thawed, from 0 °C: in u heat is conducted everywhere as in the soil without ice, and all that ice
 * does is to set heat free, x = C thawed · u − enthalpy [J/m3]. So ice is a source in the ground without ice, and none where nothing is below 0 °C.
 *
 * Straight lines between places 0.01 K apart. A reading lies in the table itself, for the reason of `LazyTable`.
 */
export class FreezingTable {
  /** Heat set free, as read last [J/m3]. */
  freed = 0.5;
  /** Its change per kelvin of scaled temperature [J/(m3.K)]. */
  slope = 0.5;
  /** Scaled temperature at which the first ice forms; none where no ice counts [K]. */
  readonly start: number;
  readonly #freed: Float64Array;
  readonly #shares: Float64Array;
  readonly #temperatures: Float64Array;

  /**
   * A table of a soil.
   *
   * @param soil - checked
   * @param credited - whether its ice counts; else it conducts and stores as if thawed, and only how far it would be frozen is read
   */
  constructor(soil: IceSoil, credited: boolean) {
    const { thawed, latentHeat, freezing } = soil;
    const frozen = credited ? soil.frozen : thawed;
    const gain = frozen.conductivity / thawed.conductivity - 1;
    const share = shareOf(freezing);
    const freed = [0];
    const shares = [0];
    const temperatures = [0];
    let scaled = 0;
    let heat = 0;
    let before = 0;
    let freedBefore = 0;
    for (let strip = 1; strip <= -COLDEST / STRIP; strip += 1) {
      const now = share(-strip * STRIP);
      const ice = (Math.min(1, before) + Math.min(1, now)) / 2;
      const next = scaled - STRIP * (1 + gain * ice);
      heat -= STRIP * (thawed.heatCapacity + (frozen.heatCapacity - thawed.heatCapacity) * ice);
      const nextFreed = credited ? thawed.heatCapacity * next - heat + latentHeat * now : 0;
      for (let place = -freed.length / PER_KELVIN; place >= next; place = -freed.length / PER_KELVIN) {
        const along = (place - scaled) / (next - scaled);
        freed.push(freedBefore + along * (nextFreed - freedBefore));
        shares.push(before + along * (now - before));
        temperatures.push(-STRIP * (strip - 1 + along));
      }
      scaled = next;
      before = now;
      freedBefore = nextFreed;
    }
    const first = freed.findIndex((each) => each !== 0);
    this.start = first < 0 ? -Infinity : (1 - first) / PER_KELVIN;
    this.#freed = Float64Array.from(freed);
    this.#shares = Float64Array.from(shares);
    this.#temperatures = Float64Array.from(temperatures);
  }

  /**
   * Reads what a soil has set free.
   *
   * @param scaled - scaled temperature, below 0 [K]
   */
  read(scaled: number): void {
    const place = -scaled * PER_KELVIN;
    const index = Math.min(Math.floor(place), this.#freed.length - 2);
    const left = this.#freed[index] ?? 0;
    const rise = (this.#freed[index + 1] ?? 0) - left;
    this.freed = left + rise * (place - index);
    this.slope = -rise * PER_KELVIN;
  }

  /**
   * How much of what `latentHeat` stands for is ice.
   *
   * @param scaled - scaled temperature [K]
   * @returns above 1 where it is colder than that [1]
   */
  shareAt(scaled: number): number {
    return scaled < 0 ? between(this.#shares, -scaled * PER_KELVIN) : 0;
  }

  /**
   * Temperature of the soil.
   *
   * @param scaled - scaled temperature [K]
   * @returns [degC]
   */
  temperatureAt(scaled: number): number {
    return scaled < 0 ? between(this.#temperatures, -scaled * PER_KELVIN) : scaled;
  }
}

function between(values: Float64Array, place: number): number {
  const index = Math.min(Math.floor(place), values.length - 2);
  const left = values[index] ?? 0;
  return left + ((values[index + 1] ?? 0) - left) * (place - index);
}

/** Ice over the ice of the frozen soil, by temperature. */
function shareOf(freezing: FreezingCourse): (temperature: number) => number {
  if (freezing.type === 'range') return (temperature) => Math.min(1, -temperature / freezing.range);
  const { totalMoisture, specificSurface, frozenAt } = freezing;
  const iceAt = (temperature: number): number =>
    andersonTiceUnfrozenWater({ temperature: temperature as Temperature, moisture: { basis: 'dry', value: totalMoisture }, specificSurface })
      .frozenMoisture;
  const whole = iceAt(frozenAt);
  return whole > 0 ? (temperature) => iceAt(temperature) / whole : () => 0;
}
