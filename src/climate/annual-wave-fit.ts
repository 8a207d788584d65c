import type { Finding } from '../findings/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';

/** What {@link fitAnnualWave} needs. */
export interface AnnualWaveReadings {
  /** Whether the readings are of the air or of the ground surface. */
  readonly of: AnnualWave['of'];
  /** Twelve monthly mean temperatures, January first, each −80 to 50 [degC]. */
  readonly monthlyMeans: readonly Temperature[];
}

/** Shape of {@link AnnualWaveReadings}. */
export const annualWaveReadingsShape: Shape<AnnualWaveReadings> = { of: ['air', 'ground surface'], monthlyMeans: { list: 'temperature' } };

/** Standard errors of a fitted wave. */
export interface AnnualWaveErrors {
  /** Of the mean [K]. */
  readonly mean: TemperatureDifference;
  /** Of the amplitude [K]. */
  readonly amplitude: TemperatureDifference;
  /** Of the coldest day; at most P/√12, the spread of a day of which nothing is known [s]. */
  readonly coldestDay: Time;
}

/** A wave through twelve monthly means, and how well it fits. */
export interface AnnualWaveFit {
  /** The wave, with a year of 365 days. */
  readonly wave: AnnualWave;
  /** Standard errors of its three parameters. */
  readonly standardErrors: AnnualWaveErrors;
  /** Monthly mean given minus that of the wave, January first [K]. */
  readonly residuals: readonly TemperatureDifference[];
  /** Standard deviation of the residuals, with nine degrees of freedom [K]. */
  readonly residualDeviation: TemperatureDifference;
  /** Mean of the twelve values, weighted by the days of the months [degC]. */
  readonly weightedMean: Temperature;
}

/** An {@link AnnualWaveFit} with its findings. */
export interface AnnualWaveFitResult extends AnnualWaveFit {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link AnnualWaveFit}. */
export const annualWaveFitShape: Shape<AnnualWaveFit> = {
  wave: annualWaveShape,
  standardErrors: { mean: 'temperature difference', amplitude: 'temperature difference', coldestDay: 'time' },
  residuals: { list: 'temperature difference' },
  residualDeviation: 'temperature difference',
  weightedMean: 'temperature',
};
