import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { TemperatureDifference, Time } from '../units/index.js';
import { fittedWave } from './fitted-wave.js';
import { modelColumns } from './harmonic-model.js';
import { leastSquares, squaresOf, varianceOf } from './least-squares.js';
import { DAY, demandPeriod, YEAR } from './limits.js';
import { demandHarmonics, demandReadings, longestGap, readingsTooFew } from './reading-demands.js';
import { gapFindings, secondHarmonicFindings, vagueDayFindings } from './reading-findings.js';
import { readingVariance } from './reading-variance.js';
import type { WaveSeries, WaveSeriesFitResult } from './wave-series.js';

/** What averaging over a span leaves of a sine that turns by an angle meanwhile. */
const left = (angle: number): number => (angle === 0 ? 1 : Math.sin(angle / 2) / (angle / 2));

/**
 * The yearly wave through a series of readings: hourly, daily, weekly or monthly, with gaps, over one year or several.
 *
 * Least squares on a sine of the year's length, with a semi-annual one if asked for; for the air, the surface, or one depth of the ground.
 * Readings that average a span are fitted by the averages of the wave over that span. Readings of neighbouring days err alike, so closer than
 * a fortnight their scatter is judged by months or longer spans; taken one by one, 8760 hours would feign errors several times too small. Limits of
 * 95 % from them hold in 90 to 95 of 100 trials for the air, and of three years of readings in 87 to 95 down to 1.5 m; of one year in 87 at
 * half a metre and in 65 to 76 at 1.5 m, where a cold season lasts.
 *
 * @param series - readings [d, degC], length of the year [s], number of harmonics, and the span that each reading averages [s]
 * @returns the wave, the second harmonic if asked for, standard errors, scatter, and findings
 * @throws InputError when a reading is impossible, or when the readings are too few or too close together to hold a wave
 * @remarks
 * Sources: `leastSquares`; errors by months: the spread of twelve means a year, as `fitAnnualWave` has it. Checked against single-depth fits of
 * three measured records computed independently, and by Monte Carlo with weather that lasts.
 *
 * Invariants: readings of a wave give that wave back; the order of readings does not matter; a shift of them moves the mean alone.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear } = await import('../units/index.js');
 * const weekly = Array.from({ length: 52 }, (_, week) => dayOfYear(4 + 7 * week));
 * const readings = weekly.map((day) => ({ day, temperature: celsius(9 - 8 * Math.cos((2 * Math.PI * (day - 40)) / 365)) }));
 * const { wave } = fitWaveSeries({ readings });
 * expect([wave.mean, wave.amplitude, wave.coldestDay].map((value) => value.toFixed(6))).toEqual(['9.000000', '8.000000', '40.000000']);
 * ```
 */
export function fitWaveSeries({ readings, period = YEAR, harmonics = 1, averaging = 0 as Time }: WaveSeries): WaveSeriesFitResult {
  demandHarmonics(harmonics);
  demandPeriod('period', period);
  demand('averaging', 'time', averaging, { atLeast: 0, atMost: 35 * DAY }, 'seconds');
  demandReadings(readings, 2 + 2 * harmonics);
  const model = { period, harmonics };
  const places = readings.map(({ day }) => ({ day, depth: 0 }));
  const shaved = [1, 1, 2].map((order, i) => (i === 0 ? 1 : left((2 * Math.PI * order * averaging) / period)));
  const columns = modelColumns(model, places, 1).map((column, i) => column.map((value) => value * (shaved[(i + 1) >> 1] ?? 1)));
  const fit = leastSquares(
    columns,
    Float64Array.from(readings, ({ temperature }) => temperature),
  );
  if (fit === undefined) throw readingsTooFew(readings.length, 'readings on different days of the year', 'a wave needs readings through the seasons');
  const { coefficients, residuals, cofactors } = fit;
  const days = readings.map(({ day }) => day);
  const { variance, degreesOfFreedom, byMonth } = readingVariance(residuals, days, coefficients.length);
  if (degreesOfFreedom < 1) {
    const months = coefficients.length + 1;
    throw readingsTooFew(
      readings.length,
      `readings spread over ${months} months or more`,
      'neighbouring days tell the same; their errors cannot be told',
    );
  }
  const fitted = fittedWave(model, coefficients, (gradient) => Math.sqrt(variance * varianceOf(gradient, cofactors)));
  const findings: readonly Finding[] = [
    ...gapFindings(longestGap(days, period) as Time, period),
    ...vagueDayFindings(fitted.wave, fitted.standardErrors.coldestDay),
    ...secondHarmonicFindings(fitted.secondHarmonic, fitted.secondHarmonicError),
  ];
  return {
    ...fitted,
    residualDeviation: Math.sqrt(squaresOf(residuals) / (readings.length - coefficients.length)) as TemperatureDifference,
    degreesOfFreedom,
    errorsByMonth: byMonth,
    findings,
  };
}
