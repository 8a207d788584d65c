import { type HeatPump, type UnitModel, unitOverSupply } from '../heat-pump/index.js';
import type { Temperature } from '../units/index.js';

/** The unit at the water it supplies in each hour. */
export interface SupplyByHours {
  readonly heating: UnitModel;
  /** Water leaving the unit, hour by hour, plain numbers [degC]. */
  readonly supplyTemperatures: Float64Array;
}

/**
 * The water that a heating curve asks for, hour by hour.
 *
 * Where the curve sends cooler water than the rating points are for, the unit is taken at the coolest rated, its COP being too low rather than too high; where warmer, at the
 * warmest.
 *
 * @param unit - the heat pump
 * @param outdoor - air of each hour, plain numbers [degC]
 * @param highestSupply - warmest water that the unit makes, where it is known [degC]
 * @returns unit and temperatures; nothing for a unit without a curve, or one whose curve sends the same water all year
 */
export function supplyByHours({ waterSide }: HeatPump, outdoor: Float64Array, highestSupply?: Temperature): SupplyByHours | undefined {
  const sides = waterSide?.map.loadSides;
  if (waterSide === undefined || sides === undefined) return undefined;
  const { map, curve, takenSupply } = waterSide;
  const most = Math.min(sides.highest, highestSupply ?? Infinity);
  const supplyTemperatures = outdoor.map((air) => Math.min(Math.max(curve.supplyAt(air as Temperature), sides.lowest), most));
  if (supplyTemperatures.every((supply) => supply === takenSupply)) return undefined;
  return { heating: unitOverSupply(map), supplyTemperatures };
}
