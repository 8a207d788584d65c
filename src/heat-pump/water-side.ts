import { demand, InputError, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Temperature } from '../units/index.js';
import { type ConditionMap, readConditionMap } from './condition-map.js';
import type { ConditionRatingPoint } from './condition-point.js';
import type { ConditionState } from './condition-state.js';
import type { HeatPumpInput } from './heat-pump-input.js';
import type { PerformanceMap } from './performance-map.js';
import { type HeatingCurve, heatingCurve } from './weather-compensation.js';
import type { SupplyControl } from './weather-compensation-input.js';

/** A unit that makes water for emitters, with the temperature it makes it at. */
export interface WaterSide {
  /** Heating over entering fluid and supply temperature. */
  readonly map: ConditionMap;
  /** Supply temperature over the outdoor temperature. */
  readonly curve: HeatingCurve;
  /** Supply temperature that `heating` is at [degC]. */
  readonly takenSupply: Temperature;
  /**
   * Heating over the entering fluid alone, at the supply temperature that the curve sends at an outdoor temperature. Where the curve sends cooler water than the rating points
   * are for, as most do in mild weather, the unit is taken at the coolest rated, its COP being too low rather than too high; where warmer, at the warmest.
   */
  readonly mapAtOutdoor: (outdoor: Temperature) => PerformanceMap;
  /**
   * The unit at an entering fluid and a supply temperature, with its slopes over both, at the design flow; continued as that of the map is, levelling off beyond 2 K
   * outside. For each hour of a simulation: the supply temperature from the curve, the entering fluid searched for.
   */
  readonly continuedAt: (enteringFluid: Temperature, supplyTemperature: Temperature) => ConditionState;
}

/** Heating of a document: one curve over the entering fluid, and what it was cut from. */
export interface HeatingRead {
  readonly heating: PerformanceMap;
  readonly waterSide?: WaterSide;
  readonly findings: readonly Finding[];
}

/** Cooling over the entering fluid, from points of one load-side temperature. */
export function readCoolingMap(points: readonly ConditionRatingPoint[]): PerformanceMap {
  const map = readConditionMap('cooling', 'cooling', points);
  demandDesignFlow('cooling', map);
  demandOneLoadSide('cooling', map, points);
  return { ...map.slice({}), findings: map.findings };
}

/** Heating over the entering fluid at the design supply temperature. */
export function readHeatingMap(input: Pick<HeatPumpInput, 'heating' | 'supplyControl' | 'highestSupply' | 'lowestEntering'>): HeatingRead {
  const { heating: points, supplyControl, highestSupply, lowestEntering } = input;
  const map = readConditionMap('heating', 'heating', points);
  demandDesignFlow('heating', map);
  if (highestSupply !== undefined) demand('highestSupply', 'temperature', highestSupply, { atLeast: 20, atMost: 95 });
  if (supplyControl === undefined) {
    demandOneLoadSide('heating', map, points);
    return { heating: map.slice({}), findings: map.findings };
  }
  const curve = locate('supplyControl', () => heatingCurve(supplyControl));
  const asked = curve.designSupply;
  const above: readonly Finding[] =
    highestSupply === undefined || asked <= highestSupply
      ? []
      : [{ code: 'supply-above-unit', level: 'warning', values: { designSupply: asked, highestSupply }, source: 'common practice' }];
  const findings = [...map.findings, ...curve.findings, ...above];
  if (map.side === 'entering air') {
    throw new InputError({
      code: 'impossible',
      argument: 'supplyControl',
      value: 'a supply temperature',
      allowed: 'none, for a unit rated at entering air',
    });
  }
  const sides = map.loadSides;
  if (sides === undefined) {
    findings.push({ code: 'rating-supply-unstated', level: 'warning', values: { designSupply: asked }, source: 'en14511' });
    return { heating: map.slice({}), findings };
  }
  if (highestSupply !== undefined) {
    demand('highestSupply', 'temperature', highestSupply, { atLeast: sides.lowest, atMost: 95 }, 'the heating is rated at warmer water than this');
  }
  const most = Math.min(sides.highest, highestSupply ?? Infinity);
  const within = (supply: number): Temperature => Math.min(Math.max(supply, sides.lowest), most) as Temperature;
  const takenSupply = within(asked);
  if (asked < sides.lowest || asked > sides.highest) {
    const values = { designSupply: asked, lowestSupply: sides.lowest, highestSupply: sides.highest, takenSupply };
    findings.push({ code: 'supply-not-rated', level: 'warning', values, source: 'en14511' });
  }
  const waterSide: WaterSide = {
    map,
    curve,
    takenSupply,
    mapAtOutdoor: (outdoor) => map.slice({ loadSide: within(curve.supplyAt(outdoor)) }),
    continuedAt: map.continuedAt,
  };
  const heating = map.slice({ loadSide: takenSupply });
  return { heating, waterSide, findings: [...findings, ...fixedFindings(waterSide, supplyControl, lowestEntering, within)] };
}

/** What the year loses by one supply temperature, told where the load is half of the design's. */
function fixedFindings(
  { map, curve, takenSupply }: WaterSide,
  control: SupplyControl,
  lowestEntering: Temperature,
  within: (supply: number) => Temperature,
): readonly Finding[] {
  if (control.control === 'fixed' || !Number.isFinite(lowestEntering)) return [];
  const mildOutdoor = ((control.designOutdoor + control.balancePoint) / 2) as Temperature;
  const mildSupply = within(curve.supplyAt(mildOutdoor));
  if (takenSupply - mildSupply < 1) return [];
  const designCop = map.continuedAt(lowestEntering, takenSupply).cop;
  const mildCop = map.continuedAt(lowestEntering, mildSupply).cop;
  const values = { designSupply: takenSupply, designCop, mildOutdoor, mildSupply, mildCop };
  return [{ code: 'supply-taken-as-fixed', level: 'note', values, source: 'common practice' }];
}

function demandDesignFlow(list: string, { flowRatios: { leastFlowRatio, greatestFlowRatio }, points }: ConditionMap): void {
  if (leastFlowRatio <= 1 && greatestFlowRatio >= 1) return;
  const value = { kind: 'ratio', value: points[0]?.flowRatio ?? leastFlowRatio } as const;
  throw new InputError({
    code: 'impossible',
    argument: `${list}.0.flowRatio`,
    value,
    allowed: 'flows with the design flow, 1, among them or between',
  });
}

function demandOneLoadSide(list: string, { loadSides }: ConditionMap, points: readonly ConditionRatingPoint[]): void {
  if (loadSides === undefined || loadSides.highest === loadSides.lowest) return;
  const { supplyTemperature } = points[0] ?? {};
  if (supplyTemperature !== undefined && list === 'heating') {
    throw new InputError({
      code: 'missing',
      argument: 'supplyControl',
      value: undefined,
      allowed: 'the supply temperature, or how it is controlled, as the heating is rated at several',
    });
  }
  const argument = `${list}.0.${supplyTemperature === undefined ? 'enteringAir' : 'supplyTemperature'}`;
  const value = { kind: 'temperature', value: loadSides.lowest } as const;
  throw new InputError({ code: 'impossible', argument, value, allowed: 'rating points of one load-side temperature: that at design' });
}
