import type { MonthlyLoads, RunFractions } from '../building/index.js';
import type { AntifreezeCharge } from '../fluid/index.js';
import type { CircuitHead, CircuitOption } from '../circuit/index.js';
import type { PlausibleLength } from '../operation/index.js';
import type { Finding } from '../findings/index.js';
import type { Layout } from '../ground/index.js';
import type { PipeDimensions, PipeResistanceParts } from '../pipe/index.js';
import type { Source } from '../references/index.js';
import type { Notice } from '../safety/index.js';
import type { SoilSample, SoilThermalProperties } from '../soil/index.js';
import type { AnnualWave, Band, FluidState, SoilThermal } from '../states/index.js';
import type {
  Area,
  Fraction,
  HeatPerPipeLength,
  LengthPerPower,
  Length,
  PipeLength,
  TaggedQuantity,
  Temperature,
  TrenchLength,
  Volume,
} from '../units/index.js';
import type { HardSeason } from './design-seasons.js';
import type { GroundAtPipes } from './ground-at-pipes.js';
import type { LoopFluid } from './fluid-plan.js';
import type { UnitAtDesign } from './mode-design.js';
import type { PipeNeeded } from './pipe-needed.js';

import type { EmittersAtDesign } from './emitters.js';
import type { LoopByHours } from './loop-by-hours.js';
import type { PlanIce } from './plan-ice.js';
import type { PlanSeason } from './plan-season.js';
import type { PlanSettling } from './plan-settling.js';

/** One layer of the log as it was understood. */
export interface LayerResult {
  /** Upper edge, below the ground surface [m]. */
  readonly top: Length;
  /** Lower edge [m]. */
  readonly bottom: Length;
  /** What it was known by. */
  readonly sample: SoilSample;
  /** Thermal properties with bands, and how they came about. */
  readonly properties: SoilThermalProperties;
}

/** One mode of running in the answer. */
export interface ModeResult {
  /** The unit at its design fluid temperatures. */
  readonly unit: UnitAtDesign;
  /** The loads of the months, without credit for gains. */
  readonly loads: MonthlyLoads;
  /** How the unit runs through the months at its design capacity. */
  readonly run: RunFractions;
  /** The fluid at its design mean temperature. */
  readonly fluid: FluidState;
  /** Film and pipe wall. */
  readonly resistance: PipeResistanceParts;
  /** The pipe this mode asks for. */
  readonly needed: PipeNeeded;
}

/** One buildable number of trenches, and whether it is enough. */
export interface TrialResult {
  /** How many trenches. */
  readonly trenches: number;
  /** Length of each [m]. */
  readonly trenchLength: TrenchLength;
  /** The coil delivered [m]. */
  readonly coilLength: PipeLength;
  /** Pipe that exchanges heat [m]. */
  readonly pipe: PipeLength;
  /** Pipe needed with this many trenches and circuits [m]. */
  readonly needed: PipeLength;
  /** Whether the pipe is as much as is needed. */
  readonly enough: boolean;
}

/** What the plan takes for granted; the codes are stable. */
export type AssumptionCode =
  | 'cold-spell'
  | 'hot-day'
  | 'fill-density-share'
  | 'ice-credit'
  | 'other-season-credit'
  | 'lead-length'
  | 'circulator-power'
  | 'distance-to-house'
  | 'freeze-margin';

/** A value the plan assumed, with where it comes from; the text is made on the top floor. */
export interface Assumption {
  /** What was assumed. */
  readonly code: AssumptionCode;
  /** The assumed value with its kind. */
  readonly assumed: TaggedQuantity;
  /** Where it comes from. */
  readonly source: Source;
}

/** A buildable loop with every step that led to it. */
export interface LoopPlan {
  /** What the job is called. */
  readonly name: string;
  /** The soil, layer by layer and as the pipes see it. */
  readonly soil: {
    /** The log, from the top down. */
    readonly layers: readonly LayerResult[];
    /** What uniform soil would answer like the layers do. */
    readonly effective: SoilThermal;
    /** Its conductivity with its uncertainty [W/(m.K)]. */
    readonly conductivity: Band<'conductivity'>;
  };
  /** The undisturbed ground. */
  readonly ground: {
    /** The wave of the ground surface in a usual year. */
    readonly surface: AnnualWave;
    /** The ground where the pipes lie. */
    readonly pipes: Omit<GroundAtPipes, 'onDay'>;
  };
  /** The hard winter that was designed for, where one was asked for. */
  readonly designWinter?: HardSeason;
  /** The hard summer. */
  readonly designSummer?: HardSeason;
  /** Heating, where the unit heats. */
  readonly heating?: ModeResult;
  /** Cooling, where it cools. */
  readonly cooling?: ModeResult;
  /** Which of the two set the length. */
  readonly governing: 'heating' | 'cooling';
  /** The pipe. */
  readonly pipe: PipeDimensions;
  /** What the loop is filled with, and how much of it. */
  readonly fluid: LoopFluid & {
    /** What to pour. */
    readonly charge: AntifreezeCharge;
  };
  /** The loop to build. */
  readonly loop: {
    /** Where the pipes lie. */
    readonly layout: Layout;
    /** Coils, circuits and trenches. */
    readonly circuits: CircuitOption;
    /** All trenches together [m]. */
    readonly trench: TrenchLength;
    /** Pipe needed with its band: what the soil's two ends and its estimate ask for, sorted [m]. */
    readonly needed: Band<'pipe length'>;
    /** Ground heat at design per metre of pipe laid [W/m]. */
    readonly heatPerPipeLength: HeatPerPipeLength;
    /** Pipe laid per unit of ground heat at design [m/W]. */
    readonly pipePerGroundHeat: LengthPerPower;
    /** Pipe laid beyond the need, over the need [1]. */
    readonly spare: Fraction;
    /** Land under the trenches, half a spacing around them [m2]. */
    readonly land: Area;
    /** What is usual for pipe laid like this, by rules of thumb. */
    readonly usual: PlausibleLength;
    /** The best loop of each other coil that would do as well. */
    readonly others: readonly TrialResult[];
    /** The next smaller loop, which is not enough. */
    readonly nextSmaller?: TrialResult;
  };
  /** The loop laid, followed hour by hour. */
  readonly byHours: LoopByHours;
  /** Seasonal performance and electricity of the year that repeats. */
  readonly season: PlanSeason;
  /** The loop while its fill is loose and once it has settled, where the fill was given. */
  readonly settling?: PlanSettling;
  /** The loop with the ice around its pipes, where it was asked for. */
  readonly iceAround?: PlanIce;
  /** The emitters at design, where they were given. */
  readonly emitters?: EmittersAtDesign;
  /** What the pump has to overcome at the coldest design fluid. */
  readonly hydraulics: CircuitHead & {
    /** What the pipes hold [m3]. */
    readonly loopVolume: Volume;
    /** Mean fluid temperature that the head is for [degC]. */
    readonly fluidTemperature: Temperature;
  };
  /** What to look at. */
  readonly findings: readonly Finding[];
  /** Safety notices that this job calls for. */
  readonly notices: readonly Notice[];
  /** What was assumed where the input was silent. */
  readonly assumptions: readonly Assumption[];
  /** The sources the numbers rest on. */
  readonly sources: readonly Source[];
}

/** What a plan carries beside its numbers: values without a fixed shape and texts. The document border writes them. */
export type PlanRemarks = 'findings' | 'notices' | 'assumptions' | 'sources';
