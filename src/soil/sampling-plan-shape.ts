import type { Source } from '../references/index.js';
import { SITUATIONS, type Situation } from '../safety/index.js';
import type { Diameter, Fraction, Length, Mass, Ratio, Shape, Temperature, Time, TrenchLength } from '../units/index.js';
import {
  DEPTH_PURPOSES,
  type DepthPurpose,
  DRYING_RULES,
  type DryingRule,
  PIT_NOTES,
  type PitNote,
  SAMPLING_RULES,
  SAMPLING_TOOLS,
  type SamplingRule,
  type SamplingTool,
} from './sampling.data.js';

/** A loop that is to be dug where nobody has looked yet. */
export interface FieldToSample {
  /** Depths of the pipe axes, 0.4 to 5 [m]. */
  readonly pipeDepths: readonly Length[];
  /** How many trenches, 1 to 100. */
  readonly trenches: number;
  /** Length of each trench, 1 to 500 [m]. */
  readonly trenchLength: TrenchLength;
  /** From one trench to the next, 0.3 to 20; 3 m (10 ft) when left out [m]. */
  readonly trenchSpacing?: Length;
  /** Largest particle that is common in the soil; 2 mm, no gravel, when left out [m]. */
  readonly largestParticle?: Diameter;
}

/** Where to dig a pit, counted from the beginning of the first trench. */
export interface SamplingPit {
  /** Along the trenches [m]. */
  readonly alongTrench: TrenchLength;
  /** Across them, from the first trench towards the last [m]. */
  readonly acrossField: Length;
}

/** A depth to take a sample from in every pit. */
export interface SamplingDepth {
  /** Below the surface [m]. */
  readonly depth: Length;
  /** What it is for. */
  readonly purpose: DepthPurpose;
  /** What brings it up. */
  readonly tool: SamplingTool;
}

/** How samples are dried. */
export interface DryingPlan {
  /** Of the oven [degC]. */
  readonly ovenTemperature: Temperature;
  /** For peat, dark or smelling soil, and soil with gypsum, which lose more than water in a hotter oven [degC]. */
  readonly gentleTemperature: Temperature;
  /** After which the first dry weighing is worth while [s]. */
  readonly shortestDrying: Time;
  /** Between the last two weighings, at least [s]. */
  readonly reweighAfter: Time;
  /** Loss between them below which the soil is dry, of the dry soil [1]. */
  readonly lostLimit: Ratio;
  /** What to mind. */
  readonly rules: readonly DryingRule[];
}

/** How to come from a field that is only grass to samples that speak for the ground around the pipes. */
export interface SamplingPlan {
  /** How deep to dig or bore [m]. */
  readonly pitDepth: Length;
  /** Where. */
  readonly pits: readonly SamplingPit[];
  /** Which depths to sample in every pit, from the surface down. */
  readonly depths: readonly SamplingDepth[];
  /** How many samples there will be. */
  readonly sampleCount: number;
  /** Moist soil in each bag, at least [kg]. */
  readonly sampleMass: Mass;
  /** Error of the mean of the field that a survey of this kind leaves, as a share [1]. */
  readonly surveyError: Fraction;
  /** What to write down at each pit. */
  readonly notes: readonly PitNote[];
  /** How to go about it. */
  readonly rules: readonly SamplingRule[];
  /** How to dry what was brought home. */
  readonly drying: DryingPlan;
  /** Situations whose safety notices belong to it. */
  readonly situations: readonly Situation[];
}

/** {@link SamplingPlan} with its sources. */
export interface SamplingPlanResult extends SamplingPlan {
  /** What it rests on. */
  readonly sources: readonly Source[];
}

/** Shape of {@link FieldToSample}. */
export const fieldToSampleShape: Shape<FieldToSample> = {
  pipeDepths: { list: 'length' },
  trenches: 'count',
  trenchLength: 'trench length',
  trenchSpacing: { optional: 'length' },
  largestParticle: { optional: 'diameter' },
};

/** Shape of {@link SamplingPlan}. */
export const samplingPlanShape: Shape<SamplingPlan> = {
  pitDepth: 'length',
  pits: { list: { alongTrench: 'trench length', acrossField: 'length' } },
  depths: { list: { depth: 'length', purpose: DEPTH_PURPOSES, tool: SAMPLING_TOOLS } },
  sampleCount: 'count',
  sampleMass: 'mass',
  surveyError: 'fraction',
  notes: { list: PIT_NOTES },
  rules: { list: SAMPLING_RULES },
  drying: {
    ovenTemperature: 'temperature',
    gentleTemperature: 'temperature',
    shortestDrying: 'time',
    reweighAfter: 'time',
    lostLimit: 'ratio',
    rules: { list: DRYING_RULES },
  },
  situations: { list: SITUATIONS },
};
