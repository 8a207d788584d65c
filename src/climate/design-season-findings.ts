import type { Finding } from '../findings/index.js';
import type { TemperatureDifference, Time } from '../units/index.js';
import type { FoundSeason } from './design-season-search.js';
import { ROWS, type WantedSeason } from './design-season-wanted.js';
import type { DesignSeasonInput, SeasonLevels } from './design-season.js';
import { DAY } from './limits.js';
import type { Season, SeasonMeans } from './season-means.js';

/** Beyond this a row of days counts as missed [K]. */
const MISSED = 0.25;

/** Days of the rows that a season is told by [d]. */
const LENGTHS = { fiveDays: 5, thirtyDays: 30, ninetyDays: 90 } as const;

/** What to know about a design season. */
export function seasonFindings(
  season: Season,
  { seasons, returnPeriod }: DesignSeasonInput & { readonly returnPeriod: number },
  { wantedDays, levels, assumed, deviation }: WantedSeason,
  { madeDays }: FoundSeason,
): readonly Finding[] {
  const findings: Finding[] = [];
  if (deviation !== undefined && (assumed.includes('deviation of seasons') || assumed.includes('spread of hours'))) {
    const values = { season, returnPeriod, deviation };
    findings.push({ code: 'season-spread-assumed', level: 'note', values, source: 'climateReferenceNetwork' });
  }
  if (levels !== undefined && seasons !== undefined && seasons.length < returnPeriod) {
    findings.push(fewSeasons(season, seasons.length, returnPeriod, levels));
  }
  const row = worstMissed(season, wantedDays, madeDays);
  if (row !== undefined) {
    const values = { season, duration: (LENGTHS[row] * DAY) as Time, wanted: wantedDays[row], reached: madeDays[row] };
    findings.push({ code: 'design-season-missed', level: 'warning', values, source: 'common practice' });
  }
  return findings;
}

/** The row of days that is missed most, one that came out too mild before any that came out too hard; none where all are met. */
function worstMissed(season: Season, wantedDays: SeasonMeans, madeDays: SeasonMeans): (typeof ROWS)[number] | undefined {
  const sign = season === 'winter' ? -1 : 1;
  const missing = ROWS.map((row) => ({ row, short: sign * (wantedDays[row] - madeDays[row]) })).filter(({ short }) => Math.abs(short) > MISSED);
  const mild = missing.filter(({ short }) => short > 0);
  return (mild.length > 0 ? mild : missing).sort((a, b) => Math.abs(b.short) - Math.abs(a.short))[0]?.row;
}

function fewSeasons(season: Season, count: number, returnPeriod: number, { ninetyDayLevel }: SeasonLevels): Finding {
  const further = Math.abs(ninetyDayLevel.seasonLevel - ninetyDayLevel.certainLevel) as TemperatureDifference;
  const values = { season, seasonCount: count, returnPeriod, factor: ninetyDayLevel.factor, further };
  return { code: 'few-seasons-recorded', level: 'note', values, source: 'studentDistribution' };
}
