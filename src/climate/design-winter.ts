import { InputError } from '../errors/index.js';
import type { Temperature } from '../units/index.js';
import { designGroundWave } from './design-ground-wave.js';
import { seasonFindings } from './design-season-findings.js';
import { searchSeason } from './design-season-search.js';
import { ROWS, wantedSeason } from './design-season-wanted.js';
import type { AssumedOfSeason, DesignSeason, DesignSeasonInput } from './design-season.js';
import { demandMonthlyMeans } from './fit-annual-wave.js';
import { demandReturnPeriod, RETURN_PERIOD } from './return-level.js';
import type { Season, SeasonMeans } from './season-means.js';
import { seasonOfHours } from './season-of-hours.js';
import { courseThroughMonths } from './synthetic-weather-year-course.js';
import { syntheticWeatherYear } from './synthetic-weather-year.js';

/** A usual year and a hard season of the same place are not further apart [K]. */
const FARTHEST_APART = 30;

/**
 * A year with a cold winter in it, as it comes once in a stated number of winters, in load and ground at once.
 *
 * A typical year is made of usual months, and repeated it is never a cold winter. Here the coldest month and its neighbours are lowered and a
 * cold spell of five days is laid on the coldest days of the late half of the winter, until the coldest five, thirty and ninety days in a row are each as cold as
 * they are once in the return period. All three together are somewhat rarer than that. Monthly means, hours and spell make the year by
 * `syntheticWeatherYear`; the usual wave of the ground is lowered by the same three months where it is given.
 *
 * With recorded winters (`seasonMeans`) the levels are theirs, with their small number allowed for. Without, the spread of winters is assumed,
 * and the result says so: a fifth of half the range of the months, 2.0 K at most, as at a continental and a maritime station. Winters have grown milder over the decades; of a
 * long record take the last thirty years.
 *
 * @param input - usual months, and what is known of hours, winters and ground
 * @returns months, spell and ground wave of the design year, what was wanted and reached, and what was assumed
 * @throws InputError when a number is out of range; `impossible` for winters that are of another place than the months or whose
 * five days are milder than their thirty, or these than their ninety, and whatever the made year refuses
 * @remarks
 * Sources: `climateReferenceNetwork` and `drummond1943` for the assumed spread, `studentDistribution` for the levels. Checked by leaving out one
 * winter of six at a time: the coldest 5, 30 and 90 days of one winter in ten lie below at least five of the six, and less than 2 K below the coldest.
 *
 * Invariants: longer return periods are colder in every row; months moved up or down move the year as far, months moved along the calendar move
 * it along within 0.2 K, since they are unequal; summer months are left alone; a summer is a winter of the mirrored year.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const monthlyMeans = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
 * const { monthlyShifts, spell, madeDays, departure, assumed } = designWinter({ monthlyMeans });
 * expect(monthlyShifts.map((shift) => Number(shift.toFixed(1)))).toEqual([-3.6, -1.4, 0, 0, 0, 0, 0, 0, 0, 0, 0, -1.4]);
 * expect(madeDays.thirtyDays).toBeCloseTo(-9.6, 1);
 * expect(departure).toBeCloseTo(2.56, 2);
 * expect(spell?.day).toBe(15);
 * expect(assumed).toEqual(['deviation of seasons', 'spread of hours']);
 * ```
 */
export function designWinter(input: DesignSeasonInput): DesignSeason {
  return designSeason('winter', input);
}

/**
 * A year with a hot summer in it, as it comes once in a stated number of summers, in load and ground at once.
 *
 * As {@link designWinter}, with the warmest month, its neighbours, and a hot spell; where no summers are known a deviation of 1.2 K at most is assumed.
 *
 * @param input - usual months, and what is known of hours, summers and ground
 * @returns months, spell and ground wave of the design year, what was wanted and reached, and what was assumed
 * @throws InputError as {@link designWinter} does
 * @remarks
 * Source: `climateReferenceNetwork` for the assumed spread. Invariants: as a winter of the mirrored year.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const monthlyMeans = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
 * const { monthlyShifts, madeDays } = designSummer({ monthlyMeans });
 * expect(Math.max(...monthlyShifts)).toBe(monthlyShifts[6]);
 * expect(madeDays.thirtyDays).toBeGreaterThan(26);
 * ```
 */
export function designSummer(input: DesignSeasonInput): DesignSeason {
  return designSeason('summer', input);
}

function designSeason(season: Season, input: DesignSeasonInput): DesignSeason {
  const { monthlyMeans, dailySwing, spread, returnPeriod = RETURN_PERIOD, wave, amplitudeRatio } = input;
  demandMonthlyMeans(monthlyMeans);
  demandReturnPeriod(returnPeriod);
  const sign = season === 'winter' ? -1 : 1;
  const hours = { ...(dailySwing !== undefined && { dailySwing }), ...(spread !== undefined && { spread }) };
  const usualYear = ofMonths(() => syntheticWeatherYear({ ...hours, course: { from: 'monthly-air', monthlyMeans } }));
  const month = monthlyMeans.indexOf((sign * Math.max(...monthlyMeans.map((mean) => sign * mean))) as Temperature);
  const course = seasonOfHours(courseThroughMonths(monthlyMeans), sign);
  const halfRange = (Math.max(...monthlyMeans) - Math.min(...monthlyMeans)) / 2;
  const wanted = wantedSeason({ ...input, season, returnPeriod, course, month, halfRange });
  const { wantedDays, levels } = wanted;
  if (levels !== undefined) demandOnePlace(wantedDays, course);
  const found = ofMonths(() => searchSeason({ usual: hours, monthlyMeans, wantedDays, month, sign }));
  const ratio = amplitudeRatio === undefined ? {} : { amplitudeRatio };
  const ground = wave === undefined ? undefined : designGroundWave({ season, wave, departure: found.departure, ...ratio });
  const assumed: readonly AssumedOfSeason[] = ground && amplitudeRatio === undefined ? [...wanted.assumed, 'amplitude ratio'] : wanted.assumed;
  return {
    returnPeriod,
    monthlyMeans: monthlyMeans.map((mean, index) => (mean + (found.monthlyShifts[index] ?? 0)) as Temperature),
    ...found,
    usualDays: seasonOfHours(usualYear.temperatures, sign),
    wantedDays,
    ...(ground && { wave: ground }),
    ...(levels && { levels }),
    assumed,
    findings: seasonFindings(season, { ...input, returnPeriod }, wanted, found),
  };
}

/** Refuses a hard season that is not of the place of the months. */
function demandOnePlace(wantedDays: SeasonMeans, course: SeasonMeans): void {
  const row = ROWS.find((each) => Math.abs(wantedDays[each] - course[each]) > FARTHEST_APART);
  if (row === undefined) return;
  throw new InputError({
    code: 'impossible',
    argument: 'seasons',
    value: { kind: 'temperature', value: wantedDays[row] },
    allowed: `hard seasons within ${String(FARTHEST_APART)} K of the usual months, whose own are ${course[row].toFixed(1)} degC`,
    hint: 'months and seasons may be of two places, or one of them in another unit',
  });
}

/** Runs what makes a year; what it refuses of the course is of the monthly means. */
function ofMonths<T>(run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError) || !error.argument.startsWith('course')) throw error;
    const { code, value, allowed, hint } = error;
    throw new InputError({ code, argument: error.argument.replace(/^course(?:\.monthlyMeans)?/u, 'monthlyMeans'), value, allowed, hint });
  }
}
