import type { Finding } from '../findings/index.js';
import type { DayOfYear, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import type { AnnualWaveErrors } from './annual-wave-fit.js';
import type { WaveNumbers } from './climate-input.js';
import { type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';

/** A temperature and when it was read. */
export interface DatedTemperature {
  /** Moment of the reading, or middle of the span it averages; 1.0 is 1 January 00:00 of the first year, later years count on [d]. */
  readonly day: DayOfYear;
  /** The temperature, −90 to 90 [degC]. */
  readonly temperature: Temperature;
}

/** What {@link fitWaveSeries} needs. */
export interface WaveSeries {
  /** Readings in any order; what is missing is left out. Four at least, or six for two harmonics. */
  readonly readings: readonly DatedTemperature[];
  /** Length of the year; 365 days when left out, 365.25 for a record over several years [s]. */
  readonly period?: Time;
  /** 1 for the yearly sine, 2 for a semi-annual one as well; 1 when left out. */
  readonly harmonics?: number;
  /** Length of the span that each reading averages, 0 to 35 days; 0 when left out [s]. */
  readonly averaging?: Time;
}

/** Shape of {@link WaveSeries}. */
export const waveSeriesShape: Shape<WaveSeries> = {
  readings: { list: { day: 'day of year', temperature: 'temperature' } },
  period: { optional: 'time' },
  harmonics: { optional: 'count' },
  averaging: { optional: 'time' },
};

/** The wave through a series of readings, and how well it is known. */
export interface WaveSeriesFit {
  /** Mean, amplitude, coldest day and year of the wave where the readings were taken. */
  readonly wave: Required<WaveNumbers>;
  /** The semi-annual sine, where two harmonics were fitted. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Standard errors of the wave. */
  readonly standardErrors: AnnualWaveErrors;
  /** Standard error of the amplitude of the second harmonic, where one was fitted [K]. */
  readonly secondHarmonicError?: TemperatureDifference;
  /** Root mean square of what the fit leaves, over the readings less the parameters [K]. */
  readonly residualDeviation: TemperatureDifference;
  /** Independent pieces of information less the parameters fitted. */
  readonly degreesOfFreedom: number;
  /** Whether readings were taken together by months, or longer spans, for the errors, since those of neighbouring days err alike. */
  readonly errorsByMonth: boolean;
}

/** A {@link WaveSeriesFit} with its findings. */
export interface WaveSeriesFitResult extends WaveSeriesFit {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link WaveSeriesFit}. */
export const waveSeriesFitShape: Shape<WaveSeriesFit> = {
  wave: { mean: 'temperature', amplitude: 'temperature difference', coldestDay: 'day of year', period: 'time' },
  secondHarmonic: { optional: secondHarmonicShape },
  standardErrors: { mean: 'temperature difference', amplitude: 'temperature difference', coldestDay: 'time' },
  secondHarmonicError: { optional: 'temperature difference' },
  residualDeviation: 'temperature difference',
  degreesOfFreedom: 'count',
  errorsByMonth: 'flag',
};
