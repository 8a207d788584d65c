import { demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Ratio, Shape, Temperature } from '../units/index.js';
import { demandBelievableTable, type UnitSurfaces } from './condition-belief.js';
import { tableFindings } from './condition-findings.js';
import { type ConditionRatingPoint, conditionRatingPointShape, type LoadSideKind, readConditionRatings } from './condition-point.js';
import { answersOf, demandShared } from './condition-answers.js';
import { conditionTable } from './condition-rows.js';
import type { ConditionState, UnitConditions } from './condition-state.js';
import type { EnteringRange, PerformanceMap } from './performance-map.js';
import { quantitySurface } from './unit-surface.js';

/** What {@link conditionMap} needs. */
export interface ConditionMapInput {
  /** Heating or cooling; each has its own map. */
  readonly mode: 'heating' | 'cooling';
  /** Rating points at several load-side temperatures, flows, or both, 2 to 1000, in any order; two entering fluids or more for each. */
  readonly points: readonly ConditionRatingPoint[];
}

/** Shape of {@link ConditionMapInput}. */
export const conditionMapInputShape: Shape<ConditionMapInput> = {
  mode: ['heating', 'cooling'],
  points: { list: conditionRatingPointShape },
};

/** Load-side temperatures from the lowest to the highest. */
export interface LoadSideRange {
  /** [degC] */
  readonly lowest: Temperature;
  /** [degC] */
  readonly highest: Temperature;
}

/** Loop flows over the rated one, from the least to the greatest. */
export interface FlowRatioRange {
  /** [1] */
  readonly leastFlowRatio: Ratio;
  /** [1] */
  readonly greatestFlowRatio: Ratio;
}

/** A unit in one mode over entering fluid, load-side temperature and loop flow. */
export interface ConditionMap {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** What the load-side temperature is. */
  readonly side: LoadSideKind;
  /** The unit at its rating points, by flow, load side and entering fluid. */
  readonly points: readonly ConditionState[];
  /** From the lowest to the highest load side of the rating points; absent where they state none. */
  readonly loadSides?: LoadSideRange;
  /** From the least to the greatest flow; one value where the points have one, or where each had its own (`rating-flows-mixed`). */
  readonly flowRatios: FlowRatioRange;
  /** Entering fluids that the rating points reach at a load side and flow, on both sides of it. */
  readonly ratedAt: (loadSide?: Temperature) => EnteringRange;
  /** Entering fluids that the map answers at a load side: 2 K beyond the ends of the rows beside it, in a straight line from one to the other. */
  readonly usableAt: (loadSide?: Temperature) => EnteringRange;
  /** The unit at some conditions, with its slopes. */
  readonly at: (conditions: UnitConditions) => ConditionState;
  /** The unit over the entering fluid alone, at one load side and flow, as a simulation over one load side needs it. */
  readonly slice: (conditions: Omit<UnitConditions, 'enteringFluid'>) => PerformanceMap;
  /**
   * As `at`, from −1000 to 1000 °C in both temperatures, for a search that must be able to step out and come back: further than 2 K beyond the unit levels off
   * within one more kelvin. No result may rest on it there. At the rated flow, or the nearest there is.
   */
  readonly continuedAt: (enteringFluid: Temperature, loadSide: Temperature) => ConditionState;
  /** What to look at in the rating points. */
  readonly findings: readonly Finding[];
}

/**
 * The performance of a unit over entering fluid, load-side temperature and loop flow, from the rating points of a catalogue table.
 *
 * The points need not fill a grid: each load-side temperature has its own entering fluids, so that a corner may be missing. Where one of the two rows beside
 * a place does not reach, its end slope is led on, and the place counts as extrapolated ({@link conditionFindings}). Beyond the first and last load side the map answers
 * for 2 K along the end slope, as it does for the entering fluid: COP changes there by 4 to 6 %, steadily; further out a unit may not run at all, its pressure
 * limit being near. Outside the flows it refuses.
 *
 * @param input - mode and rating points
 * @returns capacity [W], electric input [W], COP and ground heat [W] at any conditions within the usable range
 * @throws InputError when a point is impossible, two are of the same conditions, a load side has one entering fluid, neighbouring rows have no entering
 * fluid in common, load sides are of two kinds or stated at some points only, or neighbours differ beyond belief
 * @remarks
 * Along the entering fluid monotone cubics as in {@link performanceMap}; across load sides and flows cubics with smoothly limited slopes, so that value
 * and all slopes are continuous everywhere. COP is made from capacity and electric input, not interpolated.
 *
 * Invariants: through the points; between neighbouring load sides or flows between their values, hence monotone across where the points are, and within the
 * points around inside the rows; along a row as `performanceMap` of that row. Along the entering fluid between two rows monotone where both are and they rise at like rates (within a
 * factor of 1.5); where it is not, `map-turns-between` says so. Heat = ground + electricity everywhere; all above 0. A form linear in the load side
 * comes back exactly, a parabola where neighbouring secants differ by less than a factor of 1/0.6. Curve: `fritschCarlson1980`.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, ratio } = await import('../units/index.js');
 * const rated = (entering: number, supply: number, capacity: number, cop: number) => // an invented unit
 *   ({ enteringFluid: celsius(entering), supplyTemperature: celsius(supply), capacity: kilowatts(capacity), cop: ratio(cop) });
 * const points = [rated(-5, 35, 6.9, 3.9), rated(0, 35, 8, 4.5), rated(5, 35, 9.1, 5.1), rated(0, 55, 7.4, 2.8), rated(5, 55, 8.4, 3.2)];
 * const map = conditionMap({ mode: 'heating', points });
 * expect(map.at({ enteringFluid: celsius(0), loadSide: celsius(45) }).cop).toBeCloseTo(3.4837, 4);
 * expect(map.slice({ loadSide: celsius(35) }).copAt(celsius(0))).toBeCloseTo(4.5, 12);
 * expect(() => map.at({ enteringFluid: celsius(0), loadSide: celsius(60) })).toThrow('loadSide');
 * ```
 */
export function conditionMap({ mode, points }: ConditionMapInput): ConditionMap {
  demandChoice('mode', mode, ['heating', 'cooling']);
  return readConditionMap('points', mode, points);
}

/** A map from the rating points of a list known by some name. */
export function readConditionMap(list: string, mode: 'heating' | 'cooling', points: readonly ConditionRatingPoint[]): ConditionMap {
  const ratings = readConditionRatings(list, mode, points);
  const table = conditionTable(list, ratings);
  demandShared(list, table);
  const surfaces: UnitSurfaces = { mode, table, capacity: quantitySurface(table, 'capacity'), power: quantitySurface(table, 'power') };
  demandBelievableTable(list, surfaces);
  const answers = answersOf(ratings[0]?.side ?? 'not stated', surfaces);
  const given = ratings.map(({ flowRatio }) => flowRatio);
  return { ...answers, findings: tableFindings(answers.side, surfaces, { least: Math.min(...given), greatest: Math.max(...given) }) };
}
