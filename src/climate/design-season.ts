import type { Finding } from '../findings/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { type SpellByDeparture } from './cold-spell.js';
import { type ReturnLevel, returnLevelShape } from './return-level.js';
import { type SeasonMeans, seasonMeansShape } from './season-means.js';
import { type DailySwing } from './synthetic-weather-year-input.js';

/** What {@link designWinter} and {@link designSummer} need. */
export interface DesignSeasonInput {
  /** Twelve monthly mean air temperatures of a usual year, January first, each −80 to 50 [degC]. */
  readonly monthlyMeans: readonly Temperature[];
  /** The course of the day; as for a made year when left out. */
  readonly dailySwing?: DailySwing;
  /** Standard deviation of the hours of each month about its mean, January first, 0 to 30; no weather but the spell when left out [K]. */
  readonly spread?: readonly TemperatureDifference[];
  /** Recorded winters, or summers, three or more; the spread from year to year is assumed when left out. */
  readonly seasons?: readonly SeasonMeans[];
  /** Standard deviation of the mean of the ninety coldest, or hottest, days from year to year, 0 to 6; not with recorded seasons [K]. */
  readonly seasonDeviation?: TemperatureDifference;
  /** In so many seasons one is expected to be harder, 2 to 100; 10 when left out. */
  readonly returnPeriod?: number;
  /** The usual wave of the ground surface, to be taken along. */
  readonly wave?: AnnualWave;
  /** Amplitude of the surface over that of the air, above 0 to 2; 0.9, as under grass, when left out [1]. */
  readonly amplitudeRatio?: Ratio;
}

const spreads = { optional: { list: 'temperature difference' } } as const;
const swing = { optional: { amplitude: 'temperature difference', warmestHour: { optional: 'time' } } } as const;

/** Shape of {@link DesignSeasonInput}. */
export const designSeasonInputShape: Shape<DesignSeasonInput> = {
  monthlyMeans: { list: 'temperature' },
  dailySwing: swing,
  spread: spreads,
  seasons: { optional: { list: seasonMeansShape } },
  seasonDeviation: { optional: 'temperature difference' },
  returnPeriod: { optional: 'count' },
  wave: { optional: annualWaveShape },
  amplitudeRatio: { optional: 'ratio' },
};

/** What a design season rests on that was not given. */
export type AssumedOfSeason = 'deviation of seasons' | 'spread of hours' | 'amplitude ratio';

/** Levels of recorded seasons. */
export interface SeasonLevels {
  /** Of the hardest five days. */
  readonly fiveDayLevel: ReturnLevel;
  /** Of the hardest thirty. */
  readonly thirtyDayLevel: ReturnLevel;
  /** Of the hardest ninety. */
  readonly ninetyDayLevel: ReturnLevel;
}

/** A year with a hard season in it: for the loads of the house and the ground together. */
export interface DesignSeason {
  /** In so many seasons one is expected to be harder. */
  readonly returnPeriod: number;
  /** Monthly means of the year, January first, its spell not counted; with it they make the hours [degC]. */
  readonly monthlyMeans: readonly Temperature[];
  /** What was taken from each month of the usual year, or added to it, the spell not counted [K]. */
  readonly monthlyShifts: readonly TemperatureDifference[];
  /** The spell, on the hardest days of the year; absent where the spread of hours alone goes as far. */
  readonly spell?: SpellByDeparture;
  /** Hardest days of the usual year as it is made, without spell. */
  readonly usualDays: SeasonMeans;
  /** Hardest days that were asked for. */
  readonly wantedDays: SeasonMeans;
  /** Hardest days of the year made of these months, hours and spell. */
  readonly madeDays: SeasonMeans;
  /** How much harder the three months are than usual, spell and all; 0 or more [K]. */
  readonly departure: TemperatureDifference;
  /** The wave of the ground surface in such a year, where the usual one was given. */
  readonly wave?: AnnualWave;
  /** Levels of the seasons, where they were given. */
  readonly levels?: SeasonLevels;
  /** What was assumed. */
  readonly assumed: readonly AssumedOfSeason[];
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link DesignSeason} without its findings. */
export const designSeasonShape: Shape<Omit<DesignSeason, 'findings'>> = {
  returnPeriod: 'count',
  monthlyMeans: { list: 'temperature' },
  monthlyShifts: { list: 'temperature difference' },
  spell: { optional: { by: ['departure'], day: 'day of year', duration: 'time', departure: 'temperature difference' } },
  usualDays: seasonMeansShape,
  wantedDays: seasonMeansShape,
  madeDays: seasonMeansShape,
  departure: 'temperature difference',
  wave: { optional: annualWaveShape },
  levels: { optional: { fiveDayLevel: returnLevelShape, thirtyDayLevel: returnLevelShape, ninetyDayLevel: returnLevelShape } },
  assumed: { list: ['deviation of seasons', 'spread of hours', 'amplitude ratio'] },
};
