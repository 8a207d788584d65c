import { MONTH_DAYS } from '../states/index.js';
import { demand, demandChoice, demandCount, InputError } from '../errors/index.js';
import { solveSymmetric } from '../numerics/index.js';
import type { DayOfYear, Temperature, TemperatureDifference, Time } from '../units/index.js';
import type { AnnualWaveFit, AnnualWaveFitResult, AnnualWaveReadings } from './annual-wave-fit.js';
import { fitFindings } from './climate-findings.js';
import { DAY, YEAR } from './limits.js';
import { DAILY_ANGLE, type MonthMeans, monthMeans } from './month-means.js';
import { wrapDay } from './wave-at-depth.js';

/** Twelve readings less the three parameters of the wave. */
const DEGREES_OF_FREEDOM = 9;

/** Spread of a day of which nothing is known but the year, 365/√12 [d]. */
const UNKNOWN_DAY = 105.36642412710671;

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

/**
 * The yearly wave through twelve monthly means, with its standard errors.
 *
 * Least squares on the exact monthly averages of the wave, over months of their real lengths (28 days of February), so that neither the
 * shaving of a month's mean nor unequal months bias the answer.
 *
 * @param readings - twelve monthly means [degC], January first, and what they are of
 * @returns the wave, standard errors, residuals, and findings where the fit is weak
 * @throws InputError for anything but twelve finite means between −80 and 50 °C
 * @remarks
 * Standard errors follow from the residuals with nine degrees of freedom and hold for the year or normal given, not for the next winter.
 * Source: `leastSquares`. Checked against fits computed independently for four public weather files, and against the fit of their hours.
 *
 * Invariants: the monthly means of a wave give that wave back; the fit is linear in the readings; a shift of the readings moves the mean alone.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const monthlyMeans = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
 * const { wave, standardErrors } = fitAnnualWave({ of: 'air', monthlyMeans });
 * expect(wave.mean).toBeCloseTo(10, 1);
 * expect(wave.amplitude).toBeCloseTo(14.1, 1);
 * expect(wave.coldestDay).toBeCloseTo(18, 0);
 * expect(standardErrors.amplitude).toBeCloseTo(0.45, 1);
 * ```
 */
export function fitAnnualWave({ of, monthlyMeans }: AnnualWaveReadings): AnnualWaveFitResult {
  demandChoice('of', of, ['air', 'ground surface']);
  demandMonthlyMeans(monthlyMeans);
  const months = monthMeans();
  const normal = [0, 1, 2].map((i) => [0, 1, 2].map((j) => months.reduce((sum, month) => sum + (month[i] ?? 0) * (month[j] ?? 0), 0)));
  const right = [0, 1, 2].map((i) => months.reduce((sum, month, at) => sum + (month[i] ?? 0) * (monthlyMeans[at] ?? 0), 0));
  const fitted = solveSymmetric(normal, right);
  const [mean = 0, cosine = 0, sine = 0] = fitted;
  const residuals = residualsOf(months, fitted, monthlyMeans);
  const deviation = Math.sqrt(dot(residuals, residuals) / DEGREES_OF_FREEDOM);
  const amplitude = Math.hypot(cosine, sine);
  /** Standard error of a quantity with this gradient in mean, cosine and sine. */
  const error = (gradient: readonly number[]): number => deviation * Math.sqrt(dot(gradient, solveSymmetric(normal, gradient)));
  const coldestDayError =
    amplitude > 0 ? Math.min(error([0, -sine / amplitude, cosine / amplitude]) / (amplitude * DAILY_ANGLE), UNKNOWN_DAY) : UNKNOWN_DAY;
  const fit: AnnualWaveFit = {
    wave: {
      of,
      mean: mean as Temperature,
      amplitude: amplitude as TemperatureDifference,
      coldestDay: wrapDay(1 + Math.atan2(-sine, -cosine) / DAILY_ANGLE, YEAR) as DayOfYear,
      period: YEAR,
    },
    standardErrors: {
      mean: error([1, 0, 0]) as TemperatureDifference,
      amplitude: (amplitude > 0 ? error([0, cosine / amplitude, sine / amplitude]) : error([0, 1, 0])) as TemperatureDifference,
      coldestDay: (coldestDayError * DAY) as Time,
    },
    residuals,
    residualDeviation: deviation as TemperatureDifference,
    weightedMean: (dot(MONTH_DAYS, monthlyMeans) / (YEAR / DAY)) as Temperature,
  };
  return { ...fit, findings: fitFindings(fit) };
}

/** Refuses anything but twelve monthly means that a place on earth can have. */
export function demandMonthlyMeans(monthlyMeans: readonly Temperature[]): void {
  if (!Array.isArray(monthlyMeans)) {
    const code = monthlyMeans === undefined || monthlyMeans === null ? 'missing' : 'wrong-type';
    throw new InputError({ code, argument: 'monthlyMeans', value: undefined, allowed: 'a list of twelve temperatures, January first' });
  }
  demandCount('monthlyMeans', monthlyMeans, 12, 12);
  for (let month = 0; month < 12; month += 1) {
    const hint = 'degrees Celsius; were they given in Fahrenheit?';
    demand(`monthlyMeans.${String(month)}`, 'temperature', monthlyMeans[month] as Temperature, { atLeast: -80, atMost: 50 }, hint);
  }
}

function residualsOf(months: readonly MonthMeans[], fitted: readonly number[], readings: readonly Temperature[]): readonly TemperatureDifference[] {
  return months.map((month, at) => ((readings[at] ?? 0) - dot(month, fitted)) as TemperatureDifference);
}
