import { demandObject } from '../errors/index.js';
import type { Temperature } from '../units/index.js';
import type { ConditionMap } from './condition-map.js';
import type { EnteringRange } from './performance-map.js';
import { demandFunction, type UnitModel } from './staged-unit.js';

/**
 * A map over the load side as a unit that a simulation runs at the temperature supplied in each step, alone or as a level of a {@link stagedUnit}.
 *
 * @param map - the unit over entering fluid and load side; at the rated flow
 * @returns the unit, rated for the entering fluids that all of its load sides have in common
 * @throws InputError when there is no such map
 * @remarks Beyond the load sides of its points it levels off as the map does; {@link conditionFindings} tells of one place. Invariant: capacity, electric input and ground
 * heat are those of the map.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, ratio } = await import('../units/index.js');
 * const { conditionMap } = await import('./condition-map.js');
 * const rated = (entering: number, supply: number, capacity: number, cop: number) => // an invented unit
 *   ({ enteringFluid: celsius(entering), supplyTemperature: celsius(supply), capacity: kilowatts(capacity), cop: ratio(cop) });
 * const points = [rated(-5, 35, 6.9, 3.9), rated(5, 35, 9.1, 5.1), rated(0, 55, 7.4, 2.8), rated(5, 55, 8.4, 3.2)];
 * const unit = unitOverSupply(conditionMap({ mode: 'heating', points }));
 * expect(unit.rated).toEqual({ lowest: 0, highest: 5 });
 * expect(unit.continuedAt(celsius(0), celsius(55)).cop).toBeCloseTo(2.8, 12);
 * expect(() => unit.continuedAt(celsius(0), Number.NaN as ReturnType<typeof celsius>)).toThrow('loadSide');
 * ```
 */
export function unitOverSupply(map: Pick<ConditionMap, 'mode' | 'points' | 'ratedAt' | 'usableAt' | 'continuedAt'>): UnitModel {
  demandObject('map', map);
  demandFunction('map.ratedAt', map.ratedAt);
  const sides = [...new Set(map.points.map(({ loadSide }) => loadSide))];
  const common = (of: (loadSide?: Temperature) => EnteringRange): EnteringRange => {
    const ranges = sides.map((side) => of(side));
    return {
      lowest: Math.max(...ranges.map(({ lowest }) => lowest)) as Temperature,
      highest: Math.min(...ranges.map(({ highest }) => highest)) as Temperature,
    };
  };
  return { mode: map.mode, rated: common(map.ratedAt), usable: common(map.usableAt), continuedAt: map.continuedAt };
}
