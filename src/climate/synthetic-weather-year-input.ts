import { demand, demandChoice, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { type ColdSpell, coldSpellShape, demandSpell, type HotSpell, hotSpellShape } from './cold-spell.js';
import { demandMonthlyMeans } from './fit-annual-wave.js';
import { demandWave, YEAR } from './limits.js';

/** A wave of the air as the course of the year. */
export interface WaveCourse {
  /** The wave of the air is known. */
  readonly from: 'air-wave';
  /** The wave of the air; its year must be that of the hours, 365 days. */
  readonly air: AnnualWave;
}

/** Monthly means of the air as the course of the year. */
export interface MonthlyCourse {
  /** Monthly means of the air are known. */
  readonly from: 'monthly-air';
  /** Twelve monthly mean air temperatures, January first, each −80 to 50 [degC]. */
  readonly monthlyMeans: readonly Temperature[];
}

/** How the air goes through the year, days and weather taken out. */
export type AirCourse = WaveCourse | MonthlyCourse;

/** How the air goes through the day. */
export interface DailySwing {
  /** Half of the difference between the warmest and the coldest time of day, 0 to 30 [K]. */
  readonly amplitude: TemperatureDifference;
  /** Time of the day, counted from midnight, at which it is warmest, 0 to 24 h; 15 h when left out [s]. */
  readonly warmestHour?: Time;
}

/** What {@link syntheticWeatherYear} needs. */
export interface SyntheticWeatherYearInput {
  /** The course of the year. */
  readonly course: AirCourse;
  /** The course of the day; an amplitude of 4 K is assumed when left out, or in a month with less spread, that spread. */
  readonly dailySwing?: DailySwing;
  /**
   * Standard deviation of the hours of each month about its mean, January first, 0 to 30; no weather beside the daily swing when left out [K].
   */
  readonly spread?: readonly TemperatureDifference[];
  /** A cold spell on top of all. */
  readonly coldSpell?: ColdSpell;
  /** A hot spell on top of all. */
  readonly hotSpell?: HotSpell;
}

/** Shape of {@link SyntheticWeatherYearInput}. */
export const syntheticWeatherYearInputShape: Shape<SyntheticWeatherYearInput> = {
  course: { by: 'from', oneOf: { 'air-wave': { air: annualWaveShape }, 'monthly-air': { monthlyMeans: { list: 'temperature' } } } },
  dailySwing: { optional: { amplitude: 'temperature difference', warmestHour: { optional: 'time' } } },
  spread: { optional: { list: 'temperature difference' } },
  coldSpell: { optional: coldSpellShape },
  hotSpell: { optional: hotSpellShape },
};

/** Refuses a year that cannot be. */
export function demandWeatherYear({ course, dailySwing, spread, coldSpell, hotSpell }: SyntheticWeatherYearInput): void {
  demandObject('course', course);
  demandChoice('course.from', course.from, ['air-wave', 'monthly-air']);
  locate('course', () => {
    if (course.from === 'air-wave') demandAirWave(course.air);
    else demandMonthlyMeans(course.monthlyMeans);
  });
  if (dailySwing !== undefined) demandDailySwing(dailySwing);
  if (spread !== undefined) {
    demandCount('spread', spread, 12, 12);
    spread.forEach((each, month) => demand(`spread.${String(month)}`, 'temperature difference', each, { atLeast: 0, atMost: 30 }));
  }
  if (coldSpell !== undefined) {
    demandObject('coldSpell', coldSpell);
    locate('coldSpell', () => demandSpell('lowest', coldSpell));
  }
  if (hotSpell !== undefined) {
    demandObject('hotSpell', hotSpell);
    locate('hotSpell', () => demandSpell('highest', hotSpell));
  }
}

function demandAirWave(air: AnnualWave): void {
  demandWave('air', air);
  if (air.of !== 'air') {
    const hint = 'the ground surface swings less than the air and says nothing of the load of a building';
    throw new InputError({ code: 'impossible', argument: 'air.of', value: air.of, allowed: 'air', hint });
  }
  if (air.period === YEAR) return;
  throw new InputError({
    code: 'impossible',
    argument: 'air.period',
    value: { kind: 'time', value: air.period },
    allowed: `the length of the year, ${String(YEAR)} s`,
    hint: 'a wave of another length does not meet itself at the end of 8760 hours',
  });
}

function demandDailySwing(dailySwing: DailySwing): void {
  demandObject('dailySwing', dailySwing);
  const { amplitude, warmestHour } = dailySwing;
  const hint = 'half of the daily range';
  demand('dailySwing.amplitude', 'temperature difference', amplitude, { atLeast: 0, atMost: 30 }, hint);
  if (warmestHour !== undefined) demand('dailySwing.warmestHour', 'time', warmestHour, { atLeast: 0, atMost: 86_400 }, 'seconds since midnight');
}
