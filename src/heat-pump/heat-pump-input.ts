import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Flow, FlowPerPower, Shape, Temperature } from '../units/index.js';
import { type ConditionRatingPoint, conditionRatingPointShape } from './condition-point.js';
import { extrapolationFindings, flowFindings } from './findings.js';
import type { PerformanceMap } from './performance-map.js';
import { ENTERING } from './rating-point.js';
import { readCoolingMap, readHeatingMap, type WaterSide } from './water-side.js';
import { type SupplyControl, supplyControlShape } from './weather-compensation-input.js';

/** Where rating points come from. */
export type RatingOrigin = 'maker' | 'measured' | 'estimated' | 'invented';

/** What a document says about the heat pump. */
export interface HeatPumpInput {
  /** What the unit is called in the result. */
  readonly label: string;
  /** Where the rating points come from; `invented` for examples, which no loop may be built by. */
  readonly ratingOrigin: RatingOrigin;
  /** Heating over the entering fluid; of a unit that makes water, at each supply temperature that it is rated for. Of one flow, or of several with the design flow, 1, among them or between. */
  readonly heating: readonly ConditionRatingPoint[];
  /** Cooling over the entering fluid, at one load-side temperature; left out for a unit that only heats. */
  readonly cooling?: readonly ConditionRatingPoint[];
  /** How warm the water is that the unit makes for the emitters; needed where the heating is rated at several supply temperatures. */
  readonly supplyControl?: SupplyControl;
  /** Warmest water that the unit makes, 20 to 95 [degC]. */
  readonly highestSupply?: Temperature;
  /** Flow on the loop side that the rating points are for, 1e-6 to 1 [m3/s]. */
  readonly sourceFlow: Flow;
  /** Lowest entering fluid the maker allows [degC]. */
  readonly lowestEntering: Temperature;
  /** Lowest leaving fluid, where the freeze protection stops the unit with the antifreeze used [degC]. */
  readonly lowestLeaving?: Temperature;
  /** Highest entering fluid in cooling the maker allows; needed with cooling points [degC]. */
  readonly highestEntering?: Temperature;
}

/** Cooling of a heat pump read from a document. */
export interface CoolingUnit {
  /** Cooling over the entering fluid. */
  readonly map: PerformanceMap;
  /** Highest entering fluid allowed [degC]. */
  readonly highestEntering: Temperature;
}

/** A heat pump read from a document. */
export interface HeatPump {
  /** What the unit is called. */
  readonly label: string;
  /** Heating over the entering fluid; of a unit that makes water, at its design supply temperature. */
  readonly heating: PerformanceMap;
  /** Heating over entering fluid and supply temperature, and the curve of the supply; of a unit that makes water, where both are told. */
  readonly waterSide?: WaterSide;
  /** Cooling, of a unit that cools. */
  readonly cooling?: CoolingUnit;
  /** Flow on the loop side [m3/s]. */
  readonly sourceFlow: Flow;
  /** Flow over heating capacity at the lowest entering fluid [m3/(s.W)]. */
  readonly flowPerPower: FlowPerPower;
  /** Lowest entering fluid allowed [degC]. */
  readonly lowestEntering: Temperature;
  /** Lowest leaving fluid allowed, where one is known [degC]. */
  readonly lowestLeaving?: Temperature;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link HeatPumpInput}. */
export const heatPumpInputShape: Shape<HeatPumpInput> = {
  label: 'text',
  ratingOrigin: ['maker', 'measured', 'estimated', 'invented'],
  heating: { list: conditionRatingPointShape },
  cooling: { optional: { list: conditionRatingPointShape } },
  supplyControl: { optional: supplyControlShape },
  highestSupply: { optional: 'temperature' },
  sourceFlow: 'flow',
  lowestEntering: 'temperature',
  lowestLeaving: { optional: 'temperature' },
  highestEntering: { optional: 'temperature' },
};

/**
 * A heat pump as a document gives it: a map for each mode, its limits, and what is doubtful about them.
 *
 * The loop may be bound by any of three limits: lowest entering fluid, lowest leaving fluid, highest entering fluid. The rating points
 * must reach within 2 K of the entering limits, because that is where a loop is sized.
 *
 * Of a unit that makes water, `heating` is the unit at its design supply temperature: right for the coldest hours, which capacity and the extraction pulse are sized by. In milder
 * weather a curve sends cooler water, the COP is better and more of the heat comes from the ground; `supply-taken-as-fixed` says by how much. `waterSide` holds what a simulation
 * needs to vary the supply by the hour.
 *
 * @param input - rating points, flow and limits
 * @returns maps, limits and findings
 * @throws InputError as {@link performanceMap}, with the place in the input, or when limits contradict each other or the points
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, litresPerSecond, ratio } = await import('../units/index.js');
 * const unit = readHeatPump({
 *   label: 'example unit, invented', ratingOrigin: 'invented',
 *   heating: [
 *     { enteringFluid: celsius(-5), capacity: kilowatts(6.915), cop: ratio(3.023) },
 *     { enteringFluid: celsius(0), capacity: kilowatts(8), cop: ratio(3.404) },
 *     { enteringFluid: celsius(10), capacity: kilowatts(10.26), cop: ratio(4.12) },
 *   ],
 *   sourceFlow: litresPerSecond(0.567), lowestEntering: celsius(-4), lowestLeaving: celsius(-7),
 * });
 * expect(kilowatts.of(unit.heating.groundHeatAt(celsius(0)))).toBeCloseTo(5.65, 3);
 * expect(unit.findings.map(({ code }) => code)).toEqual(['unit-invented']);
 * ```
 */
export function readHeatPump(input: HeatPumpInput): HeatPump {
  const { label, ratingOrigin, sourceFlow, lowestEntering, lowestLeaving, highestEntering } = input;
  demandText('label', label);
  demandChoice('ratingOrigin', ratingOrigin, ['maker', 'measured', 'estimated', 'invented']);
  demand('sourceFlow', 'flow', sourceFlow, { atLeast: 1e-6, atMost: 1 });
  const { heating, waterSide, findings: heatingFindings } = readHeatingMap(input);
  demandWithin('lowestEntering', lowestEntering, heating);
  if (lowestLeaving !== undefined)
    demand('lowestLeaving', 'temperature', lowestLeaving, { atLeast: ENTERING.atLeast, below: lowestEntering }, LEAVING);
  const cooling = input.cooling === undefined ? undefined : readCooling(input.cooling, highestEntering);
  if (highestEntering !== undefined) demand('highestEntering', 'temperature', highestEntering, { above: lowestEntering, atMost: ENTERING.atMost });
  const flowPerPower = sourceFlow / heating.capacityAt(lowestEntering);
  const unusual: readonly Finding[] =
    ratingOrigin === 'invented' ? [{ code: 'unit-invented', level: 'warning', values: {}, source: 'common practice' }] : [];
  return {
    label,
    heating,
    ...(waterSide === undefined ? {} : { waterSide }),
    ...(cooling === undefined ? {} : { cooling }),
    sourceFlow,
    flowPerPower: flowPerPower as FlowPerPower,
    lowestEntering,
    ...(lowestLeaving === undefined ? {} : { lowestLeaving }),
    findings: [
      ...unusual,
      ...heatingFindings,
      ...extrapolationFindings(heating, lowestEntering),
      ...(cooling === undefined ? [] : [...cooling.map.findings, ...extrapolationFindings(cooling.map, cooling.highestEntering)]),
      ...flowFindings(flowPerPower),
    ],
  };
}

const LEAVING = 'the fluid leaves the unit colder than it enters in heating';

function readCooling(points: readonly ConditionRatingPoint[], highestEntering: Temperature | undefined): CoolingUnit {
  const map = readCoolingMap(points);
  if (highestEntering === undefined) {
    throw new InputError({
      code: 'missing',
      argument: 'highestEntering',
      value: undefined,
      allowed: 'the highest entering fluid allowed in cooling',
    });
  }
  demandWithin('highestEntering', highestEntering, map);
  return { map, highestEntering };
}

function demandWithin(argument: string, limit: Temperature, { usable }: PerformanceMap): void {
  demand(argument, 'temperature', limit, { atLeast: usable.lowest, atMost: usable.highest }, 'the rating points must reach within 2 K of the limit');
}

function demandText(argument: string, text: string): void {
  if (typeof text === 'string' && text.trim() !== '') return;
  throw new InputError({ code: text === undefined ? 'missing' : 'wrong-type', argument, value: String(text), allowed: 'a text' });
}
