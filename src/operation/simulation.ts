import type { Finding } from '../findings/index.js';
import type { ExponentialTerm, WallCondition } from '../ground/index.js';
import type { PerformanceMap, StagedUnit, UnitModel } from '../heat-pump/index.js';
import type { ReferenceKey } from '../references/index.js';
import type {
  Conductance,
  DayOfYear,
  ElectricPower,
  Fraction,
  PipeLength,
  PipeResistance,
  Ratio,
  Temperature,
  TemperatureDifference,
  Time,
} from '../units/index.js';
import type { ModeLedger } from './ledger.js';
import type { MonthOfRun } from './month-table.js';

/** Hot water that the unit makes beside its work for the house, before it. */
export interface HotWaterDuty {
  /** Heat for hot water in each step, as many as loads, 0 to 1e9, plain numbers [W]. */
  readonly loads: ArrayLike<number>;
  /** The unit while it makes hot water, at that condition. */
  readonly heating: PerformanceMap | UnitModel;
  /** Temperature supplied meanwhile, −50 to 150, for a unit that asks for it [degC]. */
  readonly supplyTemperature?: Temperature;
}

/** What the loop has to do, step by step through one year that repeats; plain numbers in watts, the mean over each step. */
export type SimulatedDuty =
  | {
      readonly from: 'building';
      /** Load of the building, heating above 0, cooling below, within ±1e9 [W]. */
      readonly loads: ArrayLike<number>;
      /**
       * The unit in heating: its map, its stages or speeds, several units together, or a map over the load side with the temperatures supplied; heating is
       * all auxiliary when left out.
       */
      readonly heating?: PerformanceMap | StagedUnit | UnitModel;
      /** The unit in cooling; cooling is not met when left out. */
      readonly cooling?: PerformanceMap | StagedUnit | UnitModel;
      /** Temperature supplied to the load in each step, as many as loads, −50 to 150; for units that ask for it [degC]. */
      readonly supplyTemperatures?: ArrayLike<number>;
      /** Hot water, which comes first in every step; none when left out. */
      readonly hotWater?: HotWaterDuty;
    }
  | {
      readonly from: 'ground';
      /** Heat taken from the ground above 0, given to it below, within ±1e9 [W]. */
      readonly loads: ArrayLike<number>;
    };

/** The pump that moves the fluid whenever the unit runs. */
export interface LoopPump {
  /** Electric input with the fluid at its mean temperature [W]. */
  readonly powerAt: (meanFluid: Temperature) => ElectricPower;
  /** Share of it that ends as heat in the fluid, 0 to 1; all when left out. */
  readonly heatShare?: Fraction;
}

/** Step response of the ground as a sum of exponentials; an `ExponentialResponse` is one. */
export interface GroundTerms {
  /** 1 to 100 of them. */
  readonly terms: readonly ExponentialTerm[];
  /** Their rise in the end, 0 to 1000; absent where the ground warms for ever, as below a sealed surface [m.K/W]. */
  readonly steadyRise?: PipeResistance | undefined;
  /** What the pipe walls have in common; equal flux when left out. */
  readonly wallCondition?: WallCondition;
}

/** What {@link simulate} needs. */
export interface SimulationInput {
  /** Length of a step, 1 minute to 1 day [s]. */
  readonly step: Time;
  /** What the loop has to do; as many steps as there are, 2 to 600 000, make the year. */
  readonly duty: SimulatedDuty;
  /** Undisturbed ground at pipe depth at the end of each step, as many as loads, plain numbers within −60 to 60 [degC]. */
  readonly ground: ArrayLike<number>;
  /** Step response of the ground. */
  readonly response: GroundTerms;
  /** Active pipe of the whole loop, 1 to 1e6 [m]. */
  readonly pipeLength: PipeLength;
  /** Film and wall with the fluid at its mean temperature, −60 to 100 °C, per metre of pipe, 0 to 100 [m.K/W]. */
  readonly resistanceAt: (meanFluid: Temperature) => PipeResistance;
  /** Heat that the whole flow carries per kelvin, 1 to 1e9 [W/K]. */
  readonly heatCapacityRate: Conductance;
  /** The pump; none when left out. */
  readonly pump?: LoopPump;
  /** Starts of the unit in an hour of part load, 0.1 to 60; fluid temperatures are those of even running when left out. */
  readonly cyclesPerHour?: Ratio;
  /** Day on which the loop starts to work; 1 January when left out [d]. */
  readonly start?: DayOfYear;
  /** How many years to follow, 1 to 100; until the year repeats when left out. */
  readonly years?: number;
  /** Whether the years come with the course of every step; not when left out. */
  readonly withCourse?: boolean;
}

/** An extreme temperature and when it is reached: at the end of a step in which the fluid flows. */
export interface Extreme {
  /** [degC] */
  readonly temperature: Temperature;
  /** End of that step [d]. */
  readonly day: DayOfYear;
}

/** Every step of a year, plain numbers at the end of the step or over it, from 1 January. */
export interface Course {
  /** Fluid entering the heat pump, in a step at two levels the harder of both; NaN in a step without running [degC]. */
  readonly enteringFluids: Float64Array;
  /** Fluid leaving the heat pump, in a step at two levels the harder of both; NaN in a step without running [degC]. */
  readonly leavingFluids: Float64Array;
  /** Mean wall of the pipes [degC]. */
  readonly walls: Float64Array;
  /** Share of the step that the unit runs [1]. */
  readonly runShares: Float64Array;
  /** Ground heat of the unit over that at full output; of a unit of one level without loss by cycling, the run shares [1]. */
  readonly fullHeatShares: Float64Array;
  /** Heat taken from the ground, given to it below 0, the mean over the step [W]. */
  readonly groundHeats: Float64Array;
  /** Electric input of the unit, the mean over the step [W]. */
  readonly unitPowers: Float64Array;
  /** The part of it that is lost by starting and stopping, and reaches neither house nor ground; absent for a map, which has none [W]. */
  readonly cyclingPowers?: Float64Array;
  /** Electric input of the pump, the mean over the step [W]. */
  readonly pumpPowers: Float64Array;
  /** Load that the unit does not meet, auxiliary heat above 0, cooling missed below [W]. */
  readonly unmetLoads: Float64Array;
  /** What of running time, heat and electricity is for hot water, and hot water that is not made; absent where none is asked for. */
  readonly hotWater?: HotWaterCourse;
}

/** The part of a {@link Course} that is for hot water. */
export type HotWaterCourse = Pick<Course, 'runShares' | 'groundHeats' | 'unitPowers' | 'pumpPowers' | 'unmetLoads'>;

/** The fluid of one year at its coldest and its warmest. */
export interface FluidExtremes {
  /** Coldest fluid that enters the heat pump while it heats; absent in a year without heating. */
  readonly coldestEntering?: Extreme;
  /** Coldest fluid that leaves it while it heats. */
  readonly coldestLeaving?: Extreme;
  /** Warmest fluid that enters it while it cools; absent in a year without cooling. */
  readonly warmestEntering?: Extreme;
  /** Warmest fluid that leaves it while it cools. */
  readonly warmestLeaving?: Extreme;
}

/** One year of the loop. */
export interface SimulatedYear extends FluidExtremes {
  /** Which year of operation, from 1. */
  readonly year: number;
  /** Heating over the year. */
  readonly heating: ModeLedger;
  /** Cooling over the year. */
  readonly cooling: ModeLedger;
  /** Hot water over the year, where it is asked for; no part of heating. */
  readonly hotWater?: ModeLedger;
  /** Month by month; absent where the steps do not make up 365 or 366 days. */
  readonly months?: readonly MonthOfRun[];
  /** Step by step, where asked for. */
  readonly course?: Course;
}

/** How the numbers of a simulation are meant; each alternative is an option of the input. */
export interface Conventions {
  /** All pipes give off the same heat, or all walls have the same temperature, as the response of the ground says. */
  readonly wallCondition: WallCondition;
  /** Temperatures are those at the end of a step. */
  readonly temperaturesAt: 'end of step';
  /** In a step of part load the fluid is that of even running, or that at the end of a run. */
  readonly partLoad: 'even running' | 'end of run';
  /** Share of the pump's electricity that ends in the fluid [1]. */
  readonly circulatorHeat: Fraction;
  /** Length of the year that repeats [s]. */
  readonly yearTime: Time;
}

/** A loop through its first year and the last one followed. */
export interface Simulation {
  /** From the start on. */
  readonly yearOne: SimulatedYear;
  /** The year that repeats for ever, or the last of the years asked for. */
  readonly lastYear: SimulatedYear;
  /** Whether the last year is the one that repeats. */
  readonly repeats: boolean;
  /** Change of the mean pipe wall at the end of the year over the last year, beyond what the seasons do [K]. */
  readonly drift: TemperatureDifference;
  /** How the numbers are meant. */
  readonly conventions: Conventions;
  /** What to look at. */
  readonly findings: readonly Finding[];
  /** What the numbers rest on. */
  readonly sources: readonly ReferenceKey[];
}
