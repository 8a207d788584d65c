import type { DegreeDays, Energy, Fraction, Ratio, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { HEATER_NAMES, type HeaterName } from './heaters.data.js';

/** Degree days of a period on one base. */
export interface DegreeDaysOnBase {
  /** Temperature counted from [degC]. */
  readonly base: Temperature;
  /** Below the base over the whole period, 0 to 1e5 [K.d]. */
  readonly degreeDays: DegreeDays;
}

/**
 * The weather of a period between two readings.
 *
 * - `temperatures`: every hour or day of it, the best.
 * - `mean and spread`: taken as normally distributed; give the spread of hours.
 * - `degree days`: on one base or more. Between bases they are taken to rise evenly; outside them nothing is known, so that a single base holds the balance point.
 */
export type PeriodWeather =
  | {
      readonly from: 'temperatures';
      /** Mean outdoor temperature of each step, 1 to 1e5 of them, each −95 to 65 [degC]. */
      readonly outdoorTemperatures: readonly Temperature[];
      /** Length of a step, 60 s to a day; daily means lose the nights of mild days [s]. */
      readonly step: Time;
    }
  | {
      readonly from: 'mean and spread';
      /** Length of the period, an hour to three years [s]. */
      readonly time: Time;
      /** Mean outdoor temperature, −75 to 45 [degC]. */
      readonly meanOutdoor: Temperature;
      /** Standard deviation of hourly temperatures about it, 0 to 50 [K]. */
      readonly spread: TemperatureDifference;
    }
  | {
      readonly from: 'degree days';
      /** Length of the period, an hour to three years [s]. */
      readonly time: Time;
      /** On rising bases, 1 to 100 of them. */
      readonly onBases: readonly DegreeDaysOnBase[];
    };

/** How the reading that ends a period came about: read off the meter, or estimated by the supplier. */
export type MeterReading = 'read' | 'estimated';

/** What the meter counted between two readings. */
export interface MeterPeriod {
  /** Fuel or electricity by the meter, as energy on the basis that the useful heat is counted on, 0 to 1e15 [J]. */
  readonly delivered: Energy;
  /** Its weather. */
  readonly weather: PeriodWeather;
  /** How the reading at its end came about; read when left out. */
  readonly reading?: MeterReading;
}

/**
 * What the heater makes of what the meter counts.
 *
 * - `stated`: measured or from a test of this heater.
 * - `assumed`: what heaters of its kind do; the band gets wider for it and a finding says so.
 */
export type UsefulHeat =
  | {
      readonly from: 'stated';
      /** Useful heat over energy by the meter, 0.05 to 8: an efficiency, or the seasonal performance of a heat pump [1]. */
      readonly usefulRatio: Ratio;
      /** Its standard error as a share of it, 0 to 0.5; 0 only where heat itself is metered [1]. */
      readonly usefulRatioError: Fraction;
    }
  | {
      readonly from: 'assumed';
      /** What heats the building. */
      readonly heater: HeaterName;
    };

/** Shape of {@link PeriodWeather}. */
export const periodWeatherShape: Shape<PeriodWeather> = {
  by: 'from',
  oneOf: {
    temperatures: { outdoorTemperatures: { list: 'temperature' }, step: 'time' },
    'mean and spread': { time: 'time', meanOutdoor: 'temperature', spread: 'temperature difference' },
    'degree days': { time: 'time', onBases: { list: { base: 'temperature', degreeDays: 'degree days' } } },
  },
};

/** Shape of {@link MeterPeriod}. */
export const meterPeriodShape: Shape<MeterPeriod> = {
  delivered: 'energy',
  weather: periodWeatherShape,
  reading: { optional: ['read', 'estimated'] },
};

/** Shape of {@link UsefulHeat}. */
export const usefulHeatShape: Shape<UsefulHeat> = {
  by: 'from',
  oneOf: { stated: { usefulRatio: 'ratio', usefulRatioError: 'fraction' }, assumed: { heater: HEATER_NAMES } },
};
