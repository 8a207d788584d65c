import { InputError } from '../errors/index.js';
import type { TemperatureDifference } from '../units/index.js';
import { hourShare, type MonthHours } from './synthetic-weather-year-course.js';
import type { DailySwing } from './synthetic-weather-year-input.js';

/** Amplitude of a mean day where none is given, common practice; in three weather years of Illinois and Italy its months have 3.4 to 3.9 K on the mean [K]. */
const ASSUMED_DAILY_AMPLITUDE = 4;

/** When a day is warmest where it is not said, common practice; the same weather years have 14:00 to 15:20 [h]. */
export const ASSUMED_WARMEST_HOUR = 15;

/** Waves of weather in a month; of 30 days they are 10, 6 and 3.75 days long, as highs and lows pass in the middle latitudes. */
const WAVES = [3, 5, 8] as const;

/** Amplitude of the daily swing in each month, January first [K]. */
export function dailyAmplitudes(dailySwing: DailySwing | undefined, spread: readonly TemperatureDifference[] | undefined): readonly number[] {
  return Array.from(
    { length: 12 },
    (_, month) => dailySwing?.amplitude ?? Math.min(ASSUMED_DAILY_AMPLITUDE, spread?.[month] ?? ASSUMED_DAILY_AMPLITUDE),
  );
}

/** Adds the daily swing to a month. */
export function addDailySwing(temperatures: Float64Array, { start, hours }: MonthHours, amplitude: number, warmestHour: number): void {
  const day = Float64Array.from({ length: 24 }, (_, hour) => amplitude * hourShare(24) * Math.cos((2 * Math.PI * (hour + 0.5 - warmestHour)) / 24));
  for (let hour = 0; hour < hours; hour += 1) temperatures[start + hour] = (temperatures[start + hour] ?? 0) + (day[hour % 24] ?? 0);
}

/**
 * Adds waves of weather to a year so that the hours of each month have the given standard deviation about its mean.
 *
 * The waves are sines of whole periods within the month: they leave its mean alone and are nothing at its ends, so that months of unlike
 * spread meet without a step.
 *
 * @throws InputError when course and day spread further than that already
 */
export function addWeather(temperatures: Float64Array, months: readonly MonthHours[], spread: readonly TemperatureDifference[]): void {
  const known = new Map<number, Float64Array>();
  for (const [month, { start, hours }] of months.entries()) {
    const waves = known.get(hours) ?? weatherWaves(hours);
    known.set(hours, waves);
    const part = temperatures.subarray(start, start + hours);
    const height = weatherHeight(part, waves, { month, wanted: spread[month] ?? 0 });
    for (let hour = 0; hour < hours; hour += 1) part[hour] = (part[hour] ?? 0) + height * (waves[hour] ?? 0);
  }
}

/** The waves of a month, of unit height each. */
function weatherWaves(hours: number): Float64Array {
  const waves = new Float64Array(hours);
  for (let hour = 0; hour < hours; hour += 1) {
    for (const periods of WAVES) waves[hour] = (waves[hour] ?? 0) + Math.sin((2 * Math.PI * periods * (hour + 0.5)) / hours);
  }
  return waves;
}

/**
 * Height of the waves that brings the hours of a month to the wanted deviation.
 *
 * With v the variance of course and day, c their covariance with waves of unit height and w = 3/2 the variance of those, the height s solves
 * v + 2 s c + s² w = wanted².
 */
function weatherHeight(part: Float64Array, waves: Float64Array, { month, wanted }: { readonly month: number; readonly wanted: number }): number {
  const mean = meanOf(part);
  let [variance, covariance] = [0, 0];
  for (let hour = 0; hour < part.length; hour += 1) {
    const departure = (part[hour] ?? 0) - mean;
    variance += departure ** 2 / part.length;
    covariance += (departure * (waves[hour] ?? 0)) / part.length;
  }
  const missing = wanted ** 2 - variance;
  if (missing < 0) {
    throw new InputError({
      code: 'impossible',
      argument: `spread.${String(month)}`,
      value: { kind: 'temperature difference', value: wanted },
      allowed: `at least ${Math.sqrt(variance).toFixed(3)} K, which course and daily swing have in that month already`,
      hint: 'the spread of hours is wanted, not that of daily means; or give a smaller daily swing',
    });
  }
  const waveVariance = WAVES.length / 2;
  return (Math.sqrt(covariance ** 2 + waveVariance * missing) - covariance) / waveVariance;
}

/** Mean of a row of numbers. */
export function meanOf(row: Float64Array): number {
  let sum = 0;
  for (const each of row) sum += each;
  return sum / row.length;
}

/** Standard deviation of a row of numbers about its mean. */
export function deviationOf(row: Float64Array): number {
  const mean = meanOf(row);
  let squares = 0;
  for (const each of row) squares += (each - mean) ** 2;
  return Math.sqrt(squares / row.length);
}
