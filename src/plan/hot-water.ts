import { hotWaterDemand, hotWaterGroundHeat } from '../building/index.js';
import { demand, demandObject, InputError, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { extrapolationFindings, type HeatPump, type PerformanceMap, performanceMap } from '../heat-pump/index.js';
import type { MonthOfRun } from '../operation/index.js';
import type { Energy, Power, Ratio } from '../units/index.js';
import { atPlace } from './at-place.js';
import type { LoopInput } from './loop-input.js';
import { monthTime } from './months.js';
import type { PlanHotWater } from './plant-input.js';

/** Hot water through the year, and the unit while it makes it. */
export interface HotWaterOfPlan {
  /** Heat for it by the hour, plain numbers [W]. */
  readonly loads: Float64Array;
  /** The same on the mean over each month, January first [W]. */
  readonly meanLoads: readonly Power[];
  /** The unit over the entering fluid at that condition. */
  readonly heating: PerformanceMap;
  readonly findings: readonly Finding[];
}

/**
 * What hot water asks for, and the unit at the condition at which it makes it.
 *
 * @param input - the whole input
 * @param unit - the heat pump that was read from it
 * @returns loads and map; nothing where no hot water is asked for
 * @throws InputError with the place in the input: impossible hot water, or a unit of which it is not known how it makes it
 */
export function hotWaterOfPlan({ hotWater, heatPump }: LoopInput, unit: HeatPump): HotWaterOfPlan | undefined {
  if (hotWater === undefined) return undefined;
  demandObject('hotWater', hotWater);
  const { highestSupply = heatPump.highestSupply } = hotWater;
  const { loads, months, findings } = locate('hotWater', () => hotWaterDemand({ ...hotWater, ...(highestSupply && { highestSupply }) }));
  const heating = mapOf(hotWater, unit, heatPump.highestSupply ?? 95);
  const { lowest, highest } = heating.usable;
  const reach = 'the rating points for hot water must reach within 2 K of the limit';
  demand('heatPump.lowestEntering', 'temperature', unit.lowestEntering, { atLeast: lowest, atMost: highest }, reach);
  return {
    loads,
    meanLoads: months.map(({ month, energy }) => (energy / monthTime(month)) as Power),
    heating,
    findings: [...findings, ...heating.findings, ...extrapolationFindings(heating, unit.lowestEntering)],
  };
}

function mapOf({ hotTemperature, supplyTemperature, points }: PlanHotWater, { waterSide }: HeatPump, highestSupply: number): PerformanceMap {
  if (points !== undefined) {
    if (supplyTemperature !== undefined) throw both(supplyTemperature);
    return locate('hotWater', () => performanceMap({ mode: 'heating', points }));
  }
  if (waterSide === undefined) {
    const allowed = 'the rating points of the unit while it makes hot water';
    throw missing('points', allowed, 'the heating is not rated over the supply temperature, so that they cannot be told from it');
  }
  if (supplyTemperature === undefined) {
    throw missing('supplyTemperature', 'the supply temperature at which the unit makes hot water', 'or give its rating points for hot water');
  }
  const range = { atLeast: hotTemperature, atMost: highestSupply };
  demand('hotWater.supplyTemperature', 'temperature', supplyTemperature, range, 'not cooler than the draw, not hotter than the unit makes it');
  return atPlace('hotWater.supplyTemperature', () => waterSide.map.slice({ loadSide: supplyTemperature }));
}

const missing = (field: string, allowed: string, hint: string): InputError =>
  new InputError({ code: 'missing', argument: `hotWater.${field}`, value: undefined, allowed, hint });

const both = (value: number): InputError =>
  new InputError({
    code: 'impossible',
    argument: 'hotWater.supplyTemperature',
    value: { kind: 'temperature', value },
    allowed: 'none beside rating points for hot water, which are of one supply temperature',
  });

/**
 * Whether hot water leaves the ground its rest in summer.
 *
 * @param months - of the year that repeats
 * @returns findings; none where no hot water was made
 */
export function restOfGround(months: readonly MonthOfRun[]): readonly Finding[] {
  const made = months.flatMap(({ hotWater }) => hotWater ?? []);
  if (made.length !== 12) return [];
  return hotWaterGroundHeat({
    monthlyHotWater: made.map(({ metEnergy }) => metEnergy),
    // A month without hot water takes nothing, whatever the COP.
    hotWaterCops: made.map(({ metEnergy, unitElectricity }) => (unitElectricity > 0 ? metEnergy / unitElectricity : 1) as Ratio),
    otherGroundHeats: months.map(({ month, heating, cooling }) => heatOver(heating.groundEnergy, cooling.groundEnergy, month)),
  }).findings;
}

const heatOver = (taken: Energy, given: Energy, month: number): Power => ((taken - given) / monthTime(month)) as Power;
