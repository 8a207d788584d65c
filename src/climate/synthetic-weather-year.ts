import { InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Temperature, TemperatureDifference, Time } from '../units/index.js';
import { coldWinterFinding } from './climate-findings.js';
import type { LaidSpell } from './cold-spell.js';
import { laySpells } from './cold-spell-laying.js';
import { courseOfWave, courseThroughMonths, type MonthHours, monthHours } from './synthetic-weather-year-course.js';
import { demandWeatherYear, type SyntheticWeatherYearInput } from './synthetic-weather-year-input.js';
import { addDailySwing, addWeather, ASSUMED_WARMEST_HOUR, dailyAmplitudes, deviationOf, meanOf } from './synthetic-weather-year-spread.js';

/** A year of hourly air temperatures that were made, not measured. */
export interface SyntheticWeatherYear {
  /** Mean air temperature of each of the 8760 hours; hour 0 is from 00:00 to 01:00 on 1 January [degC]. */
  readonly temperatures: Float64Array;
  /** Length of a step, an hour [s]. */
  readonly step: Time;
  /** Mean of each month's hours, spells included, January first [degC]. */
  readonly monthlyMeans: readonly Temperature[];
  /** How far the spells move each month's mean, January first: negative where a cold spell lies [K]. */
  readonly monthlyShifts: readonly TemperatureDifference[];
  /** Standard deviation of each month's hours about its mean, spells included, January first [K]. */
  readonly spread: readonly TemperatureDifference[];
  /** Amplitude of the daily swing in each month, January first [K]. */
  readonly dailyAmplitudes: readonly TemperatureDifference[];
  /** Mean of the year [degC]. */
  readonly mean: Temperature;
  /** Mean of the coldest hour [degC]. */
  readonly lowest: Temperature;
  /** The coldest hour, 0 to 8759; the first of equals. */
  readonly lowestHour: number;
  /** Mean of the hottest hour [degC]. */
  readonly highest: Temperature;
  /** The hottest hour, 0 to 8759; the first of equals. */
  readonly highestHour: number;
  /** The cold spell as it came out, where there is one. */
  readonly coldSpell: LaidSpell | undefined;
  /** The hot spell as it came out, where there is one. */
  readonly hotSpell: LaidSpell | undefined;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Colder and warmer than any weather on record [degC]. */
const WEATHER = { lowest: -95, highest: 65 } as const;

/**
 * A year of hourly air temperatures from what is known of a place: the course of the year, the course of the day, how far hours spread
 * within a month, and the spells that a design is made for.
 *
 * There is no chance in it, and hour 8760 is hour 0 again, so that the year can be repeated without a seam. Monthly means and spread are met by
 * the year without spells; a spell comes on top and moves the mean and the spread of its month, by how much is in the result. It is a year to
 * size and compare by, not a forecast: its weather is the same three waves in every month and knows nothing of the sun, and where a spread is
 * given its waves may go lower elsewhere than a cold spell does.
 *
 * @param input - course, and whichever of daily swing, spread and spells are wanted
 * @returns hourly temperatures [degC], their means and spread by month, extremes, and the spells as they came out
 * @throws InputError when a number is out of range; `impossible` for a wave that is not of the air or whose year is not 365 days, for a spread
 * smaller than course and day have already, for spells that overlap or have to lead the wrong way, and for a year beyond −95 to 65 °C
 * @remarks
 * Course through monthly means: `histospline1971`; a wave of 12 K comes back from its monthly means within 0.02 K. Day: a cosine. Weather: sines of
 * whole periods within each month, near to a normal distribution but with short ends. With the spread of hours of two weather years
 * (`loadWeatherChecks`) the heat of a house over the year comes within 0.5 %, its cold within 3 %; cold that only the hottest hours ask for, as by
 * a mild sea, comes out up to 20 % low.
 *
 * Invariants: without spells every month's mean and spread are those given; the mean of a wave is kept; a shift of the course shifts every hour;
 * a spell with a wanted extreme has it in one hour and goes nowhere beyond.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days } = await import('../units/index.js');
 * const monthlyMeans = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
 * const coldSpell = { by: 'lowest', day: dayOfYear(25), duration: days(5), lowest: celsius(-20) } as const;
 * const year = syntheticWeatherYear({ course: { from: 'monthly-air', monthlyMeans }, coldSpell });
 * expect(year.temperatures).toHaveLength(8760);
 * expect(year.lowest).toBeCloseTo(-20, 9);
 * expect(year.coldSpell?.departure).toBeCloseTo(11.822, 3);
 * expect(year.monthlyMeans[6]).toBeCloseTo(24.1, 9);
 * expect(year.monthlyShifts[0]).toBeCloseTo(-1.525, 3);
 * ```
 */
export function syntheticWeatherYear(input: SyntheticWeatherYearInput): SyntheticWeatherYear {
  demandWeatherYear(input);
  const { course, dailySwing, spread, coldSpell } = input;
  const months = monthHours();
  const temperatures = course.from === 'air-wave' ? courseOfWave(course.air) : courseThroughMonths(course.monthlyMeans);
  const amplitudes = dailyAmplitudes(dailySwing, spread);
  const warmestHour = dailySwing?.warmestHour === undefined ? ASSUMED_WARMEST_HOUR : dailySwing.warmestHour / 3600;
  for (const [index, month] of months.entries()) addDailySwing(temperatures, month, amplitudes[index] ?? 0, warmestHour);
  if (spread !== undefined) addWeather(temperatures, months, spread);
  const before = meansOf(temperatures, months);
  const spells = laySpells(temperatures, input);
  const monthlyMeans = meansOf(temperatures, months);
  const [lowestHour, highestHour] = extremesOf(temperatures);
  return {
    temperatures,
    step: 3600 as Time,
    monthlyMeans: monthlyMeans as readonly Temperature[],
    monthlyShifts: monthlyMeans.map((mean, month) => (mean - (before[month] ?? 0)) as TemperatureDifference),
    spread: months.map(({ start, hours }) => deviationOf(temperatures.subarray(start, start + hours)) as TemperatureDifference),
    dailyAmplitudes: amplitudes as readonly TemperatureDifference[],
    mean: meanOf(temperatures) as Temperature,
    lowest: (temperatures[lowestHour] ?? 0) as Temperature,
    lowestHour,
    highest: (temperatures[highestHour] ?? 0) as Temperature,
    highestHour,
    ...spells,
    findings: [
      ...(dailySwing === undefined ? [dailySwingFinding(amplitudes, warmestHour)] : []),
      ...(coldSpell === undefined ? [coldWinterFinding()] : []),
    ],
  };
}

function dailySwingFinding(amplitudes: readonly number[], warmestHour: number): Finding {
  return {
    code: 'daily-swing-assumed',
    level: 'note',
    values: {
      smallest: Math.min(...amplitudes) as TemperatureDifference,
      largest: Math.max(...amplitudes) as TemperatureDifference,
      warmestHour: (3600 * warmestHour) as Time,
    },
    source: 'common practice',
  };
}

const meansOf = (temperatures: Float64Array, months: readonly MonthHours[]): readonly number[] =>
  months.map(({ start, hours }) => meanOf(temperatures.subarray(start, start + hours)));

/** The coldest and the hottest hour; refuses a year that leaves what weather there has been. */
function extremesOf(temperatures: Float64Array): readonly [lowestHour: number, highestHour: number] {
  let [lowest, highest] = [0, 0];
  for (let hour = 1; hour < temperatures.length; hour += 1) {
    const temperature = temperatures[hour] ?? 0;
    if (temperature < (temperatures[lowest] ?? 0)) lowest = hour;
    if (temperature > (temperatures[highest] ?? 0)) highest = hour;
  }
  const beyond = [temperatures[lowest] ?? 0, temperatures[highest] ?? 0].find((each) => each < WEATHER.lowest || each > WEATHER.highest);
  if (beyond === undefined) return [lowest, highest];
  throw new InputError({
    code: 'impossible',
    argument: 'course',
    value: { kind: 'temperature', value: beyond },
    allowed: `hours from ${String(WEATHER.lowest)} to ${String(WEATHER.highest)} degC, with daily swing, spread and spells`,
  });
}
