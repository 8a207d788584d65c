import { demand, demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ElectricPower, Power, Ratio, Shape, Temperature } from '../units/index.js';
import { mapFindings } from './findings.js';
import { levelled } from './levelled.js';
import { monotoneCubic } from './monotone-cubic.js';
import { type RatingPoint, ratingPointShape, readRatings } from './rating-point.js';
import { type Curves, demandBelievable, EXTRAPOLATED, stateOf } from './unit-curves.js';
import type { UnitState } from './unit-state.js';

/** What {@link performanceMap} needs. */
export interface PerformanceMapInput {
  /** Heating or cooling; each has its own map. */
  readonly mode: 'heating' | 'cooling';
  /** Rating points of one flow and one indoor condition, 2 to 100, in any order. */
  readonly points: readonly RatingPoint[];
}

/** Shape of {@link PerformanceMapInput}. */
export const performanceMapInputShape: Shape<PerformanceMapInput> = { mode: ['heating', 'cooling'], points: { list: ratingPointShape } };

/** Entering fluid temperatures from the lowest to the highest. */
export interface EnteringRange {
  /** [degC] */
  readonly lowest: Temperature;
  /** [degC] */
  readonly highest: Temperature;
}

/** A unit in one mode over the entering fluid temperature. */
export interface PerformanceMap {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** The unit at its rating points, coldest first. */
  readonly points: readonly UnitState[];
  /** From the coldest to the warmest rating point. */
  readonly rated: EnteringRange;
  /** Where the map answers: 2 K beyond the rating points on either side. */
  readonly usable: EnteringRange;
  /** Heating or cooling capacity [W]. */
  readonly capacityAt: (enteringFluid: Temperature) => Power;
  /** Electric input [W]. */
  readonly powerAt: (enteringFluid: Temperature) => ElectricPower;
  /** Capacity over electric input [1]. */
  readonly copAt: (enteringFluid: Temperature) => Ratio;
  /** Heat from the ground in heating, to the ground in cooling [W]. */
  readonly groundHeatAt: (enteringFluid: Temperature) => Power;
  /** All of these with their slopes. */
  readonly at: (enteringFluid: Temperature) => UnitState;
  /**
   * As `at`, from −1000 to 1000 °C, for a search that must be able to step out and come back: beyond 2 K the unit levels off within one more
   * kelvin. No result may rest on it there.
   */
  readonly continuedAt: (enteringFluid: Temperature) => UnitState;
  /** What to look at in the rating points. */
  readonly findings: readonly Finding[];
}

/**
 * The performance of a unit over the entering fluid temperature, from its rating points.
 *
 * Capacity and electric input are each a smooth curve through the points, monotone where the points are, with one slope at every point, so
 * that a Newton iteration does not chatter there; COP and ground heat follow from the two. Up to 2 K beyond the points the end
 * slope is led on (`map-extrapolated` says so, see {@link extrapolationFindings}); further out the map refuses.
 *
 * @param input - mode and rating points
 * @returns capacity [W], electric input [W], COP and ground heat [W] at any entering fluid temperature within the usable range
 * @throws InputError when there are fewer than two points, a point is impossible, two are the same, or neighbours differ beyond belief
 * @remarks
 * Curve: {@link https://doi.org/10.1137/0717021} (`fritschCarlson1980`); points from a quadratic give the quadratic back. Two points give a line. COP is not
 * interpolated itself, which would break heat = ground + electricity.
 *
 * Invariants: through the points; monotone between them; continuous with its slopes, also beyond; heat = ground + electricity; all above 0.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, electricKilowatts, kilowatts, ratio } = await import('../units/index.js');
 * const points = [ // an invented unit
 *   { enteringFluid: celsius(-5), capacity: kilowatts(6.915), power: electricKilowatts(2.2875) },
 *   { enteringFluid: celsius(0), capacity: kilowatts(8), cop: ratio(3.404255) },
 *   { enteringFluid: celsius(5), capacity: kilowatts(9.115), power: electricKilowatts(2.4175) },
 * ];
 * const map = performanceMap({ mode: 'heating', points });
 * expect(kilowatts.of(map.capacityAt(celsius(3)))).toBeCloseTo(8.6654, 9);
 * expect(map.copAt(celsius(3))).toBeCloseTo(3.62584, 5);
 * expect(() => map.at(celsius(-8))).toThrow('at least -7');
 * ```
 */
export function performanceMap({ mode, points }: PerformanceMapInput): PerformanceMap {
  demandChoice('mode', mode, ['heating', 'cooling']);
  return readMap('points', mode, points);
}

/** A map from the rating points of a list known by some name. */
export function readMap(list: string, mode: 'heating' | 'cooling', points: readonly RatingPoint[]): PerformanceMap {
  const ratings = readRatings(list, mode, points);
  const places = ratings.map(({ enteringFluid }) => enteringFluid);
  const curves: Curves = {
    mode,
    capacity: monotoneCubic(
      places,
      ratings.map(({ capacity }) => capacity),
    ),
    power: monotoneCubic(
      places,
      ratings.map(({ power }) => power),
    ),
  };
  const lowest = Math.min(...places);
  const highest = Math.max(...places);
  demandBelievable(list, curves, ratings);
  const at = (enteringFluid: Temperature): UnitState => {
    demand('enteringFluid', 'temperature', enteringFluid, { atLeast: lowest - EXTRAPOLATED, atMost: highest + EXTRAPOLATED }, BEYOND);
    return stateOf(curves, enteringFluid);
  };
  const states = ratings.map(({ enteringFluid }) => stateOf(curves, enteringFluid));
  return {
    mode,
    points: states,
    rated: { lowest: lowest as Temperature, highest: highest as Temperature },
    usable: { lowest: (lowest - EXTRAPOLATED) as Temperature, highest: (highest + EXTRAPOLATED) as Temperature },
    capacityAt: (enteringFluid) => at(enteringFluid).capacity,
    powerAt: (enteringFluid) => at(enteringFluid).power,
    copAt: (enteringFluid) => at(enteringFluid).cop,
    groundHeatAt: (enteringFluid) => at(enteringFluid).groundHeat,
    at,
    continuedAt: (enteringFluid) => {
      demand('enteringFluid', 'temperature', enteringFluid, { atLeast: -1000, atMost: 1000 });
      const { place, fading } = levelled(enteringFluid, lowest, highest);
      return stateOf(curves, enteringFluid, place, fading);
    },
    findings: mapFindings(mode, states),
  };
}

const BEYOND = 'the rating points do not reach there; ask the maker for more of them';
