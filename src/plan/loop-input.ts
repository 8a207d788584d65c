import { type BuildingInput, buildingInputShape } from '../building/index.js';
import { type CircuitInput, circuitInputShape } from '../circuit/index.js';
import { type ClimateInput, climateInputShape } from '../climate/index.js';
import { type Fluid, FLUID_NAMES } from '../fluid/index.js';
import { type LayoutInput, layoutInputShape } from '../ground/index.js';
import { type HeatPumpInput, heatPumpInputShape } from '../heat-pump/index.js';
import { type PipeChoice, pipeChoiceShape } from '../pipe/index.js';
import { type SeasonOptions, seasonOptionsShape } from '../operation/index.js';
import { type FollowIce, followIceShape, type PlanFill, planFillShape } from './fill-input.js';
import { type HardSeasonInput, hardSeasonInputShape } from './design-seasons.js';
import {
  type PlanEmitters,
  planEmittersShape,
  type LowerLevels,
  lowerLevelsShape,
  type PlanHotWater,
  planHotWaterShape,
  type PumpInput,
  pumpInputShape,
} from './plant-input.js';
import { type SoilSample, soilSampleShape } from '../soil/index.js';
import type { Length, Shape, Temperature, Time, TrenchLength } from '../units/index.js';

/** One layer of the soil log with the sample taken from it. */
export interface SoilLayerInput {
  /** Upper edge, below the ground surface [m]. */
  readonly top: Length;
  /** Lower edge [m]. */
  readonly bottom: Length;
  /** What is known of the soil between them. */
  readonly sample: SoilSample;
}

/** Everything the whole job starts from. */
export interface LoopInput {
  /** What the job is called. */
  readonly name: string;
  /** Design heat loss and gain, from a qualified calculation. */
  readonly building: BuildingInput;
  /** Rating points and fluid limits of the heat pump. */
  readonly heatPump: HeatPumpInput;
  /** Air temperatures through the year, or a measured wave of the ground surface. */
  readonly climate: ClimateInput;
  /** Twelve monthly mean air temperatures, January first; needed where the climate tells of the ground alone [degC]. */
  readonly airMonths?: readonly Temperature[];
  /** The soil as it was logged, from the surface down. */
  readonly soil: {
    /** Layers from the top down, without gaps. */
    readonly layers: readonly SoilLayerInput[];
  };
  /** Where the trenches can lie. */
  readonly field: {
    /** Cross-section of a trench and the distance to the next. */
    readonly layout: LayoutInput;
    /** Longest trench the land has room for [m]. */
    readonly longestTrench: TrenchLength;
    /** Most trenches the land has room for. */
    readonly mostTrenches: number;
  };
  /** The pipe in the trenches. */
  readonly pipe: PipeChoice;
  /** The pipe from the headers to the house. */
  readonly header: PipeChoice;
  /** Coils that can be had and the way to the house. */
  readonly circuits: CircuitInput;
  /** What the loop is filled with. */
  readonly fluid: Fluid;
  /** Lower stages or speeds of the unit in heating; it has one level when left out. The loop is proposed for the highest and followed by the hour at all of them. */
  readonly lowerLevels?: LowerLevels;
  /** The circulator of the loop; not counted when left out. */
  readonly pump?: PumpInput;
  /** Hot water that the unit makes; none when left out. */
  readonly hotWater?: PlanHotWater;
  /** Emitters to be checked against the water that the unit supplies; not looked at when left out. */
  readonly emitters?: PlanEmitters;
  /** What the performance of the year counts beside unit and circulator. */
  readonly seasonOptions?: SeasonOptions;
  /** A winter to design for that is harder than a usual one; the usual one when left out. */
  readonly designWinter?: HardSeasonInput;
  /** A summer to design for; the usual one when left out. */
  readonly designSummer?: HardSeasonInput;
  /** The soil in the trenches, followed through its first winter and settled; native soil alone when left out. */
  readonly trenchFill?: PlanFill;
  /** Ice around the pipes as a second result; not followed when left out. */
  readonly followIce?: FollowIce;
  /** How long the unit may run without a pause in the coldest and in the hottest weather. */
  readonly peakTimes?: {
    /** In a cold spell; 72 hours when left out [s]. */
    readonly heating?: Time;
    /** On a hot day; 6 hours when left out [s]. */
    readonly cooling?: Time;
  };
}

/** Shape of {@link LoopInput}. */
export const loopInputShape: Shape<LoopInput> = {
  name: 'text',
  building: buildingInputShape,
  heatPump: heatPumpInputShape,
  climate: climateInputShape,
  airMonths: { optional: { list: 'temperature' } },
  soil: { layers: { list: { top: 'length', bottom: 'length', sample: soilSampleShape } } },
  field: { layout: layoutInputShape, longestTrench: 'trench length', mostTrenches: 'count' },
  pipe: pipeChoiceShape,
  header: pipeChoiceShape,
  circuits: circuitInputShape,
  fluid: FLUID_NAMES,
  lowerLevels: { optional: lowerLevelsShape },
  pump: { optional: pumpInputShape },
  hotWater: { optional: planHotWaterShape },
  emitters: { optional: planEmittersShape },
  seasonOptions: { optional: seasonOptionsShape },
  designWinter: { optional: hardSeasonInputShape },
  designSummer: { optional: hardSeasonInputShape },
  trenchFill: { optional: planFillShape },
  followIce: { optional: followIceShape },
  peakTimes: { optional: { heating: { optional: 'time' }, cooling: { optional: 'time' } } },
};
