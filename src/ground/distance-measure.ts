import { complementaryError } from '../numerics/index.js';

/** How much of a pipe's heat lies how far from a wall: what a step of heat does there is the sum over the places, whatever the time. */
export interface DistanceMeasure {
  /** Distances, nearest first [m]. */
  readonly distances: Float64Array;
  /** Length of pipe at each of them, that of mirror images below an isothermal surface counted against it [m]. */
  readonly lengths: Float64Array;
}

/** Told a distance [m] and the length of pipe that lies there [m]. */
export type DistanceSink = (distance: number, length: number) => void;

/** Steps per factor of ten; at 160 the sum over steps is within some 5e-6 of the integral. */
const STEPS_PER_DECADE = 160;
/** ln 10 / 160. */
const STEP = 0.014391156831212788;
/** The nearest distance kept apart from nearer ones [m]; no pipe is as thin. */
const NEAREST = 1e-4;
const DECADES = 12;

/** Gathers distances on an even grid of their logarithm. */
export class DistanceGatherer {
  private readonly lengths = new Float64Array(DECADES * STEPS_PER_DECADE + 2);

  /**
   * Adds a length of pipe. It is split between the two places beside its distance so that it keeps its sum and, exactly, the steady rise that it makes.
   *
   * @param distance - from the wall [m]
   * @param length - of pipe there [m]
   */
  add(distance: number, length: number): void {
    const place = Math.max(0, Math.floor(Math.log(distance / NEAREST) / STEP));
    const near = Math.exp(-place * STEP) / NEAREST;
    const far = near * Math.exp(-STEP);
    const share = (1 / distance - far) / (near - far);
    this.lengths[place] = (this.lengths[place] ?? 0) + length * share;
    this.lengths[place + 1] = (this.lengths[place + 1] ?? 0) + length * (1 - share);
  }

  /**
   * Everything added so far.
   *
   * @returns distances at which anything lies, and what lies there
   */
  measure(): DistanceMeasure {
    const filled = Array.from(this.lengths.keys()).filter((place) => this.lengths[place] !== 0);
    return {
      distances: Float64Array.from(filled, (place) => NEAREST * Math.exp(place * STEP)),
      lengths: Float64Array.from(filled, (place) => this.lengths[place] ?? 0),
    };
  }
}

/** Rise · 4πk after a diffusivity · time [m2]: Σ length · erfc(d/2√(αt))/d. */
export function measuredRise({ distances, lengths }: DistanceMeasure, spread: number): number {
  const scale = 0.5 / Math.sqrt(spread);
  let sum = 0;
  for (let place = 0; place < distances.length; place += 1) {
    const distance = distances[place] ?? 0;
    const heat = complementaryError(scale * distance);
    if (heat === 0) break;
    sum += ((lengths[place] ?? 0) * heat) / distance;
  }
  return sum;
}

/** What {@link measuredRise} tends to. */
export function measuredSteady({ distances, lengths }: DistanceMeasure): number {
  return lengths.reduce((sum, length, place) => sum + length / (distances[place] ?? Infinity), 0);
}
