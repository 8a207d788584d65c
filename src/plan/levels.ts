import { demandCount, demandObject, InputError } from '../errors/index.js';
import { conditionMap, type HeatPump, type StagedUnit, stagedUnit, type UnitModel, unitOverSupply } from '../heat-pump/index.js';
import type { LowerLevels } from './plant-input.js';
import type { SupplyByHours } from './supply-by-hours.js';

/**
 * The unit at all of its levels, as the hours run it.
 *
 * @param lower - levels below the highest; the unit has one level when left out
 * @param unit - the heat pump, which is the highest
 * @param supply - water by the hour, where the hours follow it
 * @returns the unit of several levels; nothing for one of one level
 * @throws InputError with the place in the input
 */
export function levelsOf(lower: LowerLevels | undefined, unit: HeatPump, supply: SupplyByHours | undefined): StagedUnit | undefined {
  if (lower === undefined) return undefined;
  demandObject('lowerLevels', lower);
  demandCount('lowerLevels.levels', lower.levels, 1, 19);
  const models = lower.levels.map((level, index): UnitModel => {
    const path = `lowerLevels.levels.${String(index)}`;
    demandObject(path, level);
    return atLevels(path, () => modelOf(level.points, unit, supply));
  });
  const highest: UnitModel = supply?.heating ?? unit.heating;
  return atLevels('lowerLevels', () => stagedUnit({ between: lower.between, levels: [...models, highest] }));
}

/** A level at the water by the hour, at that of the year, or of a unit whose points tell of none. */
function modelOf(points: LowerLevels['levels'][number]['points'], { waterSide }: HeatPump, supply: SupplyByHours | undefined): UnitModel {
  const map = conditionMap({ mode: 'heating', points });
  if (supply !== undefined && map.loadSides === undefined) {
    const allowed = 'the supply temperature, as the highest level is rated over it';
    throw new InputError({ code: 'missing', argument: 'points.0.supplyTemperature', value: undefined, allowed });
  }
  if (supply !== undefined) return unitOverSupply(map);
  return map.slice(map.loadSides === undefined || waterSide === undefined ? {} : { loadSide: waterSide.takenSupply });
}

/** Faults of a level by their place; a condition that its points lack is a fault of the points. */
function atLevels<T>(path: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { code, argument, value, allowed, hint } = error;
    const place = ['loadSide', 'flowRatio'].includes(argument) ? 'points' : argument;
    throw new InputError({ code, argument: `${path}.${place}`, value, allowed, hint });
  }
}
