import { joinedShape } from '../states/index.js';
import type { DayOfYear, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { SURFACE_COVER_NAMES, type SurfaceKnowledge } from './surface-offsets.js';

/** The numbers of a wave as they are published. */
export interface WaveNumbers {
  /** Mean over the year, −60 to 60 [degC]. */
  readonly mean: Temperature;
  /** Half of the swing between the warmest and the coldest day, 0 to 60 [K]. */
  readonly amplitude: TemperatureDifference;
  /** Day on which the wave is lowest; 1.0 is 1 January 00:00 [d]. */
  readonly coldestDay: DayOfYear;
  /** Length of the year; 365 days when left out [s]. */
  readonly period?: Time;
}

/** A known wave of the ground surface. */
export interface SurfaceWaveInput extends WaveNumbers {
  /** The wave of the ground surface itself is known. */
  readonly from: 'wave';
}

/** A known wave of the air. */
export interface AirWaveInput extends WaveNumbers, SurfaceKnowledge {
  /** The wave of the air is known. */
  readonly from: 'air-wave';
}

/** Twelve monthly means of the air. */
export interface MonthlyAirInput extends SurfaceKnowledge {
  /** Monthly means of the air are known. */
  readonly from: 'monthly-air';
  /** Twelve monthly mean air temperatures, January first, each −80 to 50 [degC]. */
  readonly monthlyMeans: readonly Temperature[];
}

/** What is known of the climate at the ground: its own wave, the wave of the air, or monthly means of the air. */
export type ClimateInput = SurfaceWaveInput | AirWaveInput | MonthlyAirInput;

const knowledgeShape = {
  cover: { optional: SURFACE_COVER_NAMES },
  meanOffset: { optional: 'temperature difference' },
  amplitudeRatio: { optional: 'ratio' },
  lag: { optional: 'time' },
} as const;

const numbersShape = {
  mean: 'temperature',
  amplitude: 'temperature difference',
  coldestDay: 'day of year',
  period: { optional: 'time' },
} as const;

/** Shape of {@link ClimateInput}. */
export const climateInputShape: Shape<ClimateInput> = {
  by: 'from',
  oneOf: {
    wave: numbersShape,
    'air-wave': /* @__PURE__ */ joinedShape(numbersShape, knowledgeShape),
    'monthly-air': /* @__PURE__ */ joinedShape({ monthlyMeans: { list: 'temperature' } }, knowledgeShape),
  },
};
