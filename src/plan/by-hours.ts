import type { CircuitOption } from '../circuit/index.js';
import { InputError } from '../errors/index.js';
import { exponentialResponse, groundResponse, onePipe } from '../ground/index.js';
import type { HeatPump, StagedUnit } from '../heat-pump/index.js';
import {
  circuitResistance,
  type FluidLimits,
  type HotWaterDuty,
  type LoadMode,
  type LoopPump,
  simulate,
  type Simulation,
  type SimulationInput,
  sizeLoop,
  type SizedLoop,
} from '../operation/index.js';
import { pipeResistance } from '../pipe/index.js';
import type { Conductance, DayOfYear, Length, PipeLength, PipeResistance, Temperature, Time } from '../units/index.js';
import { type LoopFluid, stateAt } from './fluid-plan.js';
import type { SupplyByHours } from './supply-by-hours.js';
import type { Fixed, Need } from './solve.js';

/** What following the loop by the hour takes beside what the whole numbers share. */
export interface HoursFixed {
  readonly unit: HeatPump;
  readonly fluid: LoopFluid;
  readonly modes: readonly LoadMode[];
  /** Loads of the house by the hour, plain numbers [W]. */
  readonly loads: Float64Array;
  /** Undisturbed ground by the hour, plain numbers [degC]. */
  readonly groundHours: Float64Array;
  /** Day on which the loop starts to work [d]. */
  readonly start: DayOfYear;
  /** Water that the unit supplies by the hour; that of its map when left out. */
  readonly supply?: SupplyByHours;
  /** The unit at its levels; one of one level when left out. */
  readonly levels?: StagedUnit;
  /** Hot water that it makes; none when left out. */
  readonly hotWater?: HotWaterDuty;
  /** The circulator; none when left out. */
  readonly pump?: LoopPump;
}

/** A topology ready to be followed at any length. */
export type Topology = Omit<SimulationInput, 'pipeLength'>;

const HOUR = 3600 as Time;
/** How long a lasting heat has worked on the ground where the ends of a circuit are judged: 30 days [s]. */
const LASTING = 2_592_000 as Time;
/** The fluid is read no nearer to ice than this, and no hotter than its properties are known [K, degC]. */
const ABOVE_ICE = 0.05;
const HOTTEST = 95;

/**
 * One topology by the hour: trenches, circuits and flow as they are, the length open.
 *
 * @param fixed - what all topologies share
 * @param hours - loads, ground, unit and fluid
 * @param need - trenches with their response
 * @param option - circuits, for their flow and their ends
 * @returns everything {@link simulate} needs but the length
 */
export function topologyOf(fixed: Fixed, hours: HoursFixed, { layout, response, needs }: Need, option: CircuitOption): Topology {
  const { pipe, soil, flow } = fixed;
  const { unit, fluid, modes, loads, groundHours, start, supply, levels, hotWater, pump } = hours;
  const designFluid = fixed.modes[0]?.fluid ?? stateAt(fluid, unit.lowestEntering);
  const heatCapacityRate = (flow * designFluid.density * designFluid.specificHeat) as Conductance;
  const filmAt = remembered((meanFluid: Temperature): PipeResistance => {
    const temperature = Math.min(Math.max(meanFluid, fluid.freezingPoint + ABOVE_ICE), HOTTEST) as Temperature;
    return pipeResistance({ pipe, fluid: stateAt(fluid, temperature), flow: option.circuitFlow }).total;
  });
  const lasting = response.riseAfter(LASTING);
  const alone = (): PipeResistance =>
    groundResponse({
      layout: onePipe({ depth: meanDepth(layout.pipes), trenches: layout.trenches, trenchSpacing: layout.trenchSpacing }),
      pipe,
      soil,
    }).riseAfter(LASTING);
  // Out and back lie in one trench only where a trench holds two pipes and one circuit.
  const shared = layout.pipesPerTrench === 2 && (fixed.circuits.circuitsPerTrench ?? 1) === 1 && (fixed.circuits.trenchesPerCircuit ?? 1) === 1;
  const { addedResistance } = circuitResistance({
    pipeLength: option.activeLength,
    heatCapacityRate: (heatCapacityRate / option.circuits) as Conductance,
    pipeResistance: needs[0]?.resistance.total ?? filmAt(unit.lowestEntering),
    groundResistance: lasting,
    ...(shared ? { mutualResistance: Math.max(0, lasting - alone()) as PipeResistance } : {}),
  });
  return {
    step: HOUR,
    duty: {
      from: 'building',
      loads,
      ...(modes.includes('heating') ? { heating: unit.heating, ...supply, ...(levels && { heating: levels }), ...(hotWater && { hotWater }) } : {}),
      ...(unit.cooling !== undefined && modes.includes('cooling') ? { cooling: unit.cooling.map } : {}),
    },
    ground: groundHours,
    response: exponentialResponse({ layout, pipe, soil }),
    resistanceAt: (meanFluid) => (filmAt(meanFluid) + addedResistance) as PipeResistance,
    heatCapacityRate,
    ...(pump && { pump }),
    start,
  };
}

/** The limits that the unit sets in the modes in which it runs. */
export function limitsOf({ unit, modes }: HoursFixed): FluidLimits {
  const { lowestEntering, lowestLeaving, cooling } = unit;
  return {
    ...(modes.includes('heating') ? { lowestEntering, ...(lowestLeaving === undefined ? {} : { lowestLeaving }) } : {}),
    ...(cooling !== undefined && modes.includes('cooling') ? { highestEntering: cooling.highestEntering } : {}),
  };
}

/** The shortest pipe of a topology that keeps the unit's limits; a limit that no pipe keeps is refused at the unit. */
export function sizeByHours(topology: Topology, hours: HoursFixed, guess: PipeLength): SizedLoop {
  try {
    return sizeLoop({ ...topology, limits: limitsOf(hours), guess });
  } catch (error) {
    if (!(error instanceof InputError) || error.code !== 'unreachable') throw error;
    const { code, value, allowed, hint } = error;
    throw new InputError({ code, argument: `heatPump.${error.argument.replace(/^limits\./u, '')}`, value, allowed, hint });
  }
}

/** A loop of some length by the hour. */
export function followByHours(topology: Topology, pipeLength: PipeLength, withCourse = false): Simulation {
  return simulate({ ...topology, pipeLength, withCourse });
}

const meanDepth = (pipes: readonly { readonly depth: Length }[]): Length =>
  (pipes.reduce((sum, { depth }) => sum + depth, 0) / pipes.length) as Length;

/** A function that works out each temperature once: a film is asked for at the same ones at every length of a topology. */
function remembered<T>(of: (temperature: Temperature) => T): (temperature: Temperature) => T {
  const known = new Map<Temperature, T>();
  return (temperature) => {
    const held = known.get(temperature);
    if (held !== undefined) return held;
    const found = of(temperature);
    known.set(temperature, found);
    return found;
  };
}
