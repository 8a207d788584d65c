import {
  type BindingLimit,
  bindingLimitShape,
  type Extreme,
  extremeShape,
  type LengthFactors,
  lengthFactors,
  lengthFactorsShape,
  type LoadMode,
  type ModeLedger,
  modeLedgerShape,
  type MonthOfRun,
  monthOfRunShape,
  type RegretRow,
  regretRowShape,
  regretTable,
  type SimulatedYear,
} from '../operation/index.js';
import type { PipeLength, Power, Shape, Temperature } from '../units/index.js';
import { type HoursFixed, limitsOf } from './by-hours.js';
import type { SolvedByHours } from './solve-by-hours.js';
import { type HoursOfWeather, hoursOfWeatherShape } from './year-of-hours.js';

/** The fluid of the laid loop in one year. */
export interface FluidOfYear {
  /** Which year of operation, from 1. */
  readonly year: number;
  /** Coldest fluid that enters the heat pump while it heats. */
  readonly coldestEntering?: Extreme;
  /** Coldest fluid that leaves it while it heats. */
  readonly coldestLeaving?: Extreme;
  /** Warmest fluid that enters it while it cools. */
  readonly warmestEntering?: Extreme;
}

/** The loop hour by hour, in its first year and in the one that repeats. */
export interface LoopByHours {
  /** The weather it was followed through. */
  readonly weather: HoursOfWeather;
  /** Shortest pipe that keeps the limits with these trenches and circuits [m]. */
  readonly exactLength: PipeLength;
  /** Pipe of the loop that was followed: that laid, or the exact length where the laid one is so short that the fluid leaves all bounds [m]. */
  readonly followedLength: PipeLength;
  /** The limit that the loop followed comes nearest to. */
  readonly binding: BindingLimit;
  /** The limit that the next smaller loop misses. */
  readonly smallerBinding?: BindingLimit;
  /** The fluid in the first year. */
  readonly yearOne: FluidOfYear;
  /** The fluid in the year that repeats. */
  readonly lastYear: FluidOfYear;
  /** Heating over the year that repeats. */
  readonly heating: ModeLedger;
  /** Cooling over the year that repeats. */
  readonly cooling: ModeLedger;
  /** Hot water over the year that repeats, where the unit makes it; no part of heating. */
  readonly hotWater?: ModeLedger;
  /** The months of the year that repeats. */
  readonly months: readonly MonthOfRun[];
  /** Why the laid length differs from the handbook's, in the hour of the binding limit; absent where no handbook length is. */
  readonly factors?: LengthFactors;
  /** Shorter and longer loops of the same trenches and circuits. */
  readonly regret: readonly RegretRow[];
}

/** Shape of {@link FluidOfYear}. */
export const fluidOfYearShape: Shape<FluidOfYear> = {
  year: 'count',
  coldestEntering: { optional: extremeShape },
  coldestLeaving: { optional: extremeShape },
  warmestEntering: { optional: extremeShape },
};

/** Shape of {@link LoopByHours}. */
export const loopByHoursShape: Shape<LoopByHours> = {
  weather: hoursOfWeatherShape,
  exactLength: 'pipe length',
  followedLength: 'pipe length',
  binding: bindingLimitShape,
  smallerBinding: { optional: bindingLimitShape },
  yearOne: fluidOfYearShape,
  lastYear: fluidOfYearShape,
  heating: modeLedgerShape,
  cooling: modeLedgerShape,
  hotWater: { optional: modeLedgerShape },
  months: { list: monthOfRunShape },
  factors: { optional: lengthFactorsShape },
  regret: { list: regretRowShape },
};

/**
 * What the hours say of the loop chosen.
 *
 * @param solved - the loop with its simulation
 * @param hours - loads and ground by the hour
 * @param weather - the weather behind the loads
 * @returns fluid, energies, months, what explains the length, and what other lengths would have brought
 */
export function loopByHours(solved: SolvedByHours, hours: HoursFixed, weather: HoursOfWeather): LoopByHours {
  const { topology, followedLength, laid, sized, binding, smallerBinding } = solved;
  const { heating, cooling, hotWater, months = [] } = laid.lastYear;
  const factors = factorsOf(solved, hours);
  return {
    weather,
    exactLength: sized.exactLength,
    followedLength,
    binding,
    ...(smallerBinding && { smallerBinding }),
    yearOne: fluidOfYear(laid.yearOne),
    lastYear: fluidOfYear(laid.lastYear),
    heating,
    cooling,
    ...(hotWater && { hotWater }),
    months,
    ...(factors && { factors }),
    regret: regretTable({ ...topology, pipeLength: followedLength, limits: limitsOf(hours), simulation: laid }),
  };
}

/** The fluid of a year, without what else there is to it. */
export function fluidOfYear({ year, coldestEntering, coldestLeaving, warmestEntering }: SimulatedYear): FluidOfYear {
  return {
    year,
    ...(coldestEntering && { coldestEntering }),
    ...(coldestLeaving && { coldestLeaving }),
    ...(warmestEntering && { warmestEntering }),
  };
}

/** The hour of the binding limit, read off the course, beside the handbook equation of its mode. */
function factorsOf({ laid, binding, chosen, followedLength }: SolvedByHours, { groundHours }: HoursFixed): LengthFactors | undefined {
  const mode: LoadMode = binding.limit === 'highestEntering' ? 'cooling' : 'heating';
  const course = (binding.year === 'first' ? laid.yearOne : laid.lastYear).course;
  const handbook = chosen.needs.find((need) => need.mode === mode)?.needed.handbookMeanFluid;
  if (course === undefined || handbook === undefined) return undefined;
  const hour = (Math.round((binding.day - 1) * 24) + groundHours.length - 1) % groundHours.length;
  // Hot water in an hour of cooling takes from the ground what cooling gives it, and there is no one heat to explain.
  if (mode === 'cooling' && (course.hotWater?.runShares[hour] ?? 0) > 0) return undefined;
  const at = (series: Float64Array): number => series[hour] ?? Number.NaN;
  const runningHeat = Math.abs(at(course.groundHeats)) / at(course.runShares);
  return lengthFactors({
    mode,
    pipeLength: followedLength,
    hour: {
      runningHeat: runningHeat as Power,
      undisturbed: at(groundHours) as Temperature,
      wallTemperature: at(course.walls) as Temperature,
      meanFluid: ((at(course.enteringFluids) + at(course.leavingFluids)) / 2) as Temperature,
    },
    handbook,
  });
}
