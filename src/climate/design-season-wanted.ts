import { demand, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { Temperature, TemperatureDifference } from '../units/index.js';
import { ASSUMED_SEASONS, THIRTY_DAYS_DEVIATION, THIRTY_DAYS_FURTHER } from './design-season.data.js';
import type { AssumedOfSeason, DesignSeasonInput, SeasonLevels } from './design-season.js';
import { normalWidth } from './normal-width.js';
import { type ReturnLevel, returnLevel } from './return-level.js';
import type { Season, SeasonMeans } from './season-means.js';

/** The rows of days that a season is told by. */
export const ROWS = ['fiveDays', 'thirtyDays', 'ninetyDays'] as const;

/** What is wanted of a season, and what that rests on. */
export interface WantedSeason {
  readonly wantedDays: SeasonMeans;
  readonly levels?: SeasonLevels;
  /** Deviation of ninety days from year to year that was reckoned with, where there are no levels. */
  readonly deviation?: TemperatureDifference;
  readonly assumed: readonly AssumedOfSeason[];
}

/** What the wanted season is told from. */
interface WantedInput extends Pick<DesignSeasonInput, 'seasons' | 'seasonDeviation' | 'spread'> {
  readonly season: Season;
  readonly returnPeriod: number;
  /** The hardest days of the usual course, without days or weather. */
  readonly course: SeasonMeans;
  /** The hardest month of the usual year, 0 to 11. */
  readonly month: number;
  /** Half of the range of the usual months [K]. */
  readonly halfRange: number;
}

/** The hardest days of the season that comes once in the return period: by the seasons of a record, or by what is assumed. */
export function wantedSeason(input: WantedInput): WantedSeason {
  return input.seasons === undefined ? assumedSeason(input) : recordedSeason(input, input.seasons);
}

function recordedSeason({ season, returnPeriod, seasonDeviation }: WantedInput, seasons: readonly SeasonMeans[]): WantedSeason {
  if (seasonDeviation !== undefined) {
    const value = { kind: 'temperature difference', value: seasonDeviation } as const;
    throw new InputError({ code: 'impossible', argument: 'seasonDeviation', value, allowed: 'none beside recorded seasons, which have their own' });
  }
  demandCount('seasons', seasons, 3, 1000);
  seasons.forEach((each, index) => {
    demandObject(`seasons.${String(index)}`, each);
    for (const row of ROWS) demand(`seasons.${String(index)}.${row}`, 'temperature', each[row], { atLeast: -95, atMost: 65 });
    demandHardestFirst(season, each, index);
  });
  const levelOf = (row: (typeof ROWS)[number]): ReturnLevel =>
    locate('seasons', () => returnLevel({ season, returnPeriod, seasonValues: seasons.map((each) => each[row]) }));
  const levels = { fiveDayLevel: levelOf('fiveDays'), thirtyDayLevel: levelOf('thirtyDays'), ninetyDayLevel: levelOf('ninetyDays') };
  return {
    wantedDays: {
      fiveDays: levels.fiveDayLevel.seasonLevel,
      thirtyDays: levels.thirtyDayLevel.seasonLevel,
      ninetyDays: levels.ninetyDayLevel.seasonLevel,
    },
    levels,
    assumed: [],
  };
}

/** A row with days missing may seem milder than a longer one, by no more [K]. */
const BY_MISSING_DAYS = 1;

/** Refuses a season in which a short row of days is milder than a longer one: the hardest days of the longer would have been the shorter. */
function demandHardestFirst(season: Season, means: SeasonMeans, index: number): void {
  const sign = season === 'winter' ? -1 : 1;
  for (const [short, long] of [
    ['fiveDays', 'thirtyDays'],
    ['thirtyDays', 'ninetyDays'],
  ] as const) {
    if (sign * (means[short] - means[long]) >= -BY_MISSING_DAYS) continue;
    throw new InputError({
      code: 'impossible',
      argument: `seasons.${String(index)}.${short}`,
      value: { kind: 'temperature', value: means[short] },
      allowed: `at ${season === 'winter' ? 'most' : 'least'} the ${String(means[long])} degC of its ${long}`,
      hint: `each is the mean of the ${season === 'winter' ? 'coldest' : 'hottest'} days in a row: five are harder than thirty, thirty harder than ninety; rows may be interchanged`,
    });
  }
}

function assumedSeason({ season, returnPeriod, seasonDeviation, spread, course, month, halfRange }: WantedInput): WantedSeason {
  if (seasonDeviation !== undefined) demand('seasonDeviation', 'temperature difference', seasonDeviation, { atLeast: 0, atMost: 6 });
  const usual = ASSUMED_SEASONS[season];
  const deviation = seasonDeviation ?? assumedOf(usual.deviation, halfRange);
  const sign = season === 'winter' ? -1 : 1;
  const normal = normalWidth(1 - 2 / returnPeriod);
  const thirtyDays = course.thirtyDays + sign * deviation * (THIRTY_DAYS_FURTHER + normal * THIRTY_DAYS_DEVIATION);
  const assumed: AssumedOfSeason[] = seasonDeviation === undefined ? ['deviation of seasons'] : [];
  return {
    wantedDays: {
      fiveDays: (thirtyDays + sign * usual.fiveBelowThirty * (spread?.[month] ?? assumedOf(usual.hoursSpread, halfRange))) as Temperature,
      thirtyDays: thirtyDays as Temperature,
      ninetyDays: (course.ninetyDays + sign * normal * deviation) as Temperature,
    },
    deviation: deviation as TemperatureDifference,
    assumed: spread === undefined ? [...assumed, 'spread of hours'] : assumed,
  };
}

const assumedOf = ({ share, most }: { readonly share: number; readonly most: number }, halfRange: number): number =>
  Math.min(most, share * halfRange);
