import type { Finding } from '../findings/index.js';
import type { Shape, Temperature, Time } from '../units/index.js';
import type { WeatherColumnName, WeatherUnit } from './weather-columns.data.js';
import type { WeatherGroundHeader } from './weather-ground-header.js';
import type { WeatherHeader } from './weather-header.js';

/** What {@link readWeatherFile} needs. */
export interface WeatherFileInput {
  /** The whole text of the file. */
  readonly text: string;
  /** What becomes of 29 February where the file has one; left out when not said, so that the year has 8760 hours as everything that repeats it asks for. */
  readonly leapDay?: 'left out' | 'kept';
}

/** Shape of {@link WeatherFileInput}. */
export const weatherFileInputShape: Shape<WeatherFileInput> = { text: 'text', leapDay: { optional: ['left out', 'kept'] } };

/** The hours of one column of a weather file. */
export interface WeatherColumn {
  /** Unit of the numbers. */
  readonly unit: WeatherUnit;
  /** The numbers, hour 0 from 00:00 to 01:00 on 1 January; a missing hour holds 0, but in the dry bulb, where its gap is bridged. */
  readonly numbers: Float64Array;
  /** 1 where the file has no value, else 0. */
  readonly missing: Uint8Array;
  /** How many hours have no value. */
  readonly missingHours: number;
  /** How many values lie outside what the format or the atmosphere allows, as a slip of units makes them. */
  readonly doubtfulHours: number;
}

/** A year of weather as a public file has it. */
export interface WeatherFile {
  /** How the file is written. */
  readonly format: 'EPW' | 'TMY3';
  /** What stands above the hours. */
  readonly header: WeatherHeader;
  /** The ground temperatures of the header, by depth, and what they are; not for use as ground temperatures. */
  readonly groundHeaders: readonly WeatherGroundHeader[];
  /** Air temperature of each hour, gaps bridged; hour 0 is from 00:00 to 01:00 on 1 January, standard time all year [degC]. */
  readonly temperatures: Float64Array;
  /** Length of a step, an hour [s]. */
  readonly step: Time;
  /** Mean of each month's hours, January first; what `fitAnnualWave` and the climate of a plan take [degC]. */
  readonly monthlyMeans: readonly Temperature[];
  /** Mean of the year's hours [degC]. */
  readonly mean: Temperature;
  /** Coldest hour [degC]. */
  readonly lowest: Temperature;
  /** The coldest hour, counted from 0; the first of equals. */
  readonly lowestHour: number;
  /** Hottest hour [degC]. */
  readonly highest: Temperature;
  /** The hottest hour, counted from 0; the first of equals. */
  readonly highestHour: number;
  /** Whether the hours have a 29 February, 8784 of them. */
  readonly hasLeapDay: boolean;
  /** Calendar year that each hour was taken from; a typical year is put together from the months of several. */
  readonly years: Int32Array;
  /** Every column that the file has, by name. */
  readonly columns: Readonly<Partial<Record<WeatherColumnName, WeatherColumn>>>;
  /** Codes of the weather of each hour, as written. */
  readonly presentWeather: readonly string[];
  /** Where the values of each hour are from and how sure they are, as written in an EPW row; none for TMY3, whose marks stand beside each value and are not read. */
  readonly sourceFlags: readonly string[];
  /** What to look at. */
  readonly findings: readonly Finding[];
}
