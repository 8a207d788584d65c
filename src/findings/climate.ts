import { joinedShape } from '../states/index.js';
import type { DayOfYear, Length, Ratio, Shape, SurfaceCoefficient, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { type GroundTemperatureFindingValues, groundTemperatureShapes } from './ground-temperature.js';

/** What a weather file says of each hour, as the columns of an EPW row. */
export type WeatherColumnName = (typeof WEATHER_COLUMN_NAMES)[number];

/** The columns a weather file can have. */
export const WEATHER_COLUMN_NAMES = [
  'dryBulb',
  'dewPoint',
  'relativeHumidity',
  'pressure',
  'extraterrestrialHorizontal',
  'extraterrestrialNormal',
  'horizontalInfrared',
  'globalHorizontal',
  'directNormal',
  'diffuseHorizontal',
  'globalIlluminance',
  'directNormalIlluminance',
  'diffuseIlluminance',
  'zenithLuminance',
  'windDirection',
  'windSpeed',
  'totalSkyCover',
  'opaqueSkyCover',
  'visibility',
  'ceilingHeight',
  'presentWeatherObservation',
  'precipitableWater',
  'aerosolOpticalDepth',
  'snowDepth',
  'daysSinceSnow',
  'albedo',
  'liquidPrecipitation',
  'liquidPrecipitationTime',
] as const;

/** Values of the findings that the climate room raises, by code. */
export interface ClimateFindingValues extends GroundTemperatureFindingValues {
  /** The months stray far from the wave fitted through them. */
  'climate-fit-weak': { readonly residualDeviation: TemperatureDifference; readonly amplitude: TemperatureDifference };
  /** The readings hardly tell which day is coldest. */
  'coldest-day-vague': { readonly coldestDay: DayOfYear; readonly standardError: Time; readonly amplitude: TemperatureDifference };
  /** The coldest day lies outside the cold season of either hemisphere. */
  'coldest-day-odd': { readonly coldestDay: DayOfYear; readonly amplitude: TemperatureDifference };
  /** A swing that few places have. */
  'amplitude-large': { readonly amplitude: TemperatureDifference; readonly usual: TemperatureDifference };
  /** The ground surface is frozen on average, so the ground below thaws at the top only. */
  'ground-frozen-all-year': { readonly mean: Temperature };
  /** The step from air to ground surface was assumed in part or whole. */
  'surface-offsets-assumed': {
    readonly meanOffset: TemperatureDifference;
    readonly meanOffsetLow: TemperatureDifference;
    readonly meanOffsetHigh: TemperatureDifference;
    readonly amplitudeRatio: Ratio;
    readonly lag: Time;
  };
  /** Design temperatures were sorted out of a record too short to know its climate's tails. */
  'design-temperatures-short-record': { readonly record: Time; readonly longRecord: Time };
  /** The local frost line was not given; the computed depth does not stand in for it. */
  'frost-line-not-given': { readonly depth: Length };
  /** Frost is computed to go deeper than the local frost line. */
  'frost-deeper-than-code': { readonly depth: Length; readonly frostLine: Length };
  /** Frost is computed to reach the pipes. */
  'frost-reaches-pipes': { readonly depth: Length; readonly pipeDepth: Length };
  /** Pipes lie above the local frost line. */
  'pipes-above-frost-line': { readonly pipeDepth: Length; readonly frostLine: Length };
  /** The ground is counted warmer for the snow on it, which insulates the loop from the air as well. */
  'snow-relied-on': { readonly meanGain: TemperatureDifference; readonly coefficient: SurfaceCoefficient };
  /** Snow is given where the air is too warm for it to lie. */
  'snow-in-mild-air': { readonly month: number; readonly outdoor: Temperature };
  /** The wave describes a usual year, not a cold one. */
  'no-cold-winter-used': { readonly winterSpread: TemperatureDifference };
  /** How the air goes through the day was assumed. */
  'daily-swing-assumed': { readonly smallest: TemperatureDifference; readonly largest: TemperatureDifference; readonly warmestHour: Time };
  /** How far hard seasons go was assumed, not read off recorded ones. */
  'season-spread-assumed': {
    readonly season: 'winter' | 'summer';
    readonly returnPeriod: number;
    readonly deviation: TemperatureDifference;
  };
  /** A design season rests on fewer seasons than its return period. */
  'few-seasons-recorded': {
    readonly season: 'winter' | 'summer';
    readonly seasonCount: number;
    readonly returnPeriod: number;
    readonly factor: Ratio;
    readonly further: TemperatureDifference;
  };
  /** The year made for a design season is harder or milder in one row of days than was wanted. */
  'design-season-missed': {
    readonly season: 'winter' | 'summer';
    readonly duration: Time;
    readonly wanted: Temperature;
    readonly reached: Temperature;
  };
  /** A weather file lacked air temperatures, which were bridged. */
  'weather-hours-bridged': { readonly bridgedHours: number; readonly longestGap: Time };
  /** A weather file has columns with hours that have no value. */
  'weather-values-missing': { readonly columns: readonly WeatherColumnName[] };
  /** A weather file has columns with values that cannot be in their unit. */
  'weather-values-doubtful': { readonly columns: readonly WeatherColumnName[] };
  /** A weather file had a 29 February, which was left out. */
  'weather-leap-day-left-out': { readonly mean: Temperature };
  /** A weather file has sets of design temperatures in its header that could not be read. */
  'design-conditions-unread': { readonly designSets: number; readonly readSets: number };
  /** The ground temperatures of a weather file are means from the surface down, not temperatures at a depth. */
  'ground-header-means': { readonly depth: Length };
  /** The ground temperatures of a weather file do not follow from its air by the usual rule. */
  'ground-header-unknown': { readonly depth: Length; readonly rebuiltWithin: TemperatureDifference };
  /** The ground temperatures of a weather file are of another season than its air. */
  'ground-header-out-of-season': { readonly surfaceColdestDay: DayOfYear; readonly airColdestDay: DayOfYear; readonly lag: Time };
}

/** Shapes of {@link ClimateFindingValues}. */
export const climateFindingShapes: { readonly [C in keyof ClimateFindingValues]: Shape<ClimateFindingValues[C]> } = /* @__PURE__ */ joinedShape(
  groundTemperatureShapes,
  {
    'climate-fit-weak': { residualDeviation: 'temperature difference', amplitude: 'temperature difference' },
    'coldest-day-vague': { coldestDay: 'day of year', standardError: 'time', amplitude: 'temperature difference' },
    'coldest-day-odd': { coldestDay: 'day of year', amplitude: 'temperature difference' },
    'amplitude-large': { amplitude: 'temperature difference', usual: 'temperature difference' },
    'ground-frozen-all-year': { mean: 'temperature' },
    'surface-offsets-assumed': {
      meanOffset: 'temperature difference',
      meanOffsetLow: 'temperature difference',
      meanOffsetHigh: 'temperature difference',
      amplitudeRatio: 'ratio',
      lag: 'time',
    },
    'design-temperatures-short-record': { record: 'time', longRecord: 'time' },
    'frost-line-not-given': { depth: 'length' },
    'frost-deeper-than-code': { depth: 'length', frostLine: 'length' },
    'frost-reaches-pipes': { depth: 'length', pipeDepth: 'length' },
    'pipes-above-frost-line': { pipeDepth: 'length', frostLine: 'length' },
    'snow-relied-on': { meanGain: 'temperature difference', coefficient: 'surface coefficient' },
    'snow-in-mild-air': { month: 'count', outdoor: 'temperature' },
    'no-cold-winter-used': { winterSpread: 'temperature difference' },
    'daily-swing-assumed': { smallest: 'temperature difference', largest: 'temperature difference', warmestHour: 'time' },
    'season-spread-assumed': { season: ['winter', 'summer'], returnPeriod: 'count', deviation: 'temperature difference' },
    'few-seasons-recorded': {
      season: ['winter', 'summer'],
      seasonCount: 'count',
      returnPeriod: 'count',
      factor: 'ratio',
      further: 'temperature difference',
    },
    'design-season-missed': { season: ['winter', 'summer'], duration: 'time', wanted: 'temperature', reached: 'temperature' },
    'weather-hours-bridged': { bridgedHours: 'count', longestGap: 'time' },
    'weather-values-missing': { columns: { list: WEATHER_COLUMN_NAMES } },
    'weather-values-doubtful': { columns: { list: WEATHER_COLUMN_NAMES } },
    'weather-leap-day-left-out': { mean: 'temperature' },
    'design-conditions-unread': { designSets: 'count', readSets: 'count' },
    'ground-header-means': { depth: 'length' },
    'ground-header-unknown': { depth: 'length', rebuiltWithin: 'temperature difference' },
    'ground-header-out-of-season': { surfaceColdestDay: 'day of year', airColdestDay: 'day of year', lag: 'time' },
  },
);
