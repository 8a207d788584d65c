import type { Finding } from '../findings/index.js';
import type { AnnualWave } from '../states/index.js';
import type { Temperature, TemperatureDifference, Time } from '../units/index.js';
import { DAY } from './limits.js';
import { EPW_COLUMNS, type WeatherColumnName } from './weather-columns.data.js';
import type { WeatherColumn, WeatherFile } from './weather-file.js';
import { daysAfter, type WeatherGroundHeader } from './weather-ground-header.js';
import type { WeatherHeader } from './weather-header.js';
import type { Bridged } from './weather-hours.js';

/** Ground of a header whose season lies further than this from that of the air is another season's [d]. */
const MOST_SHIFT = 20;

/** That hours of the dry bulb were missing and bridged. */
export function bridgedFinding({ hours, longest }: Bridged): readonly Finding[] {
  if (hours === 0) return [];
  const values = { bridgedHours: hours, longestGap: (3600 * longest) as Time };
  return [{ code: 'weather-hours-bridged', level: 'warning', values, source: 'common practice' }];
}

/** Which other columns lack values, and which hold doubtful ones. */
export function columnFindings(columns: WeatherFile['columns']): readonly Finding[] {
  const named = (has: (column: WeatherColumn) => boolean): readonly WeatherColumnName[] =>
    EPW_COLUMNS.flatMap(({ name }) => {
      const column = columns[name];
      return column !== undefined && has(column) ? [name] : [];
    });
  const missing = named(({ missingHours }) => missingHours > 0).filter((name) => name !== 'dryBulb');
  const doubtful = named(({ doubtfulHours }) => doubtfulHours > 0);
  return [
    ...(missing.length === 0
      ? []
      : [{ code: 'weather-values-missing', level: 'note', values: { columns: missing }, source: 'epwDataDictionary' } as const]),
    ...(doubtful.length === 0
      ? []
      : [{ code: 'weather-values-doubtful', level: 'warning', values: { columns: doubtful }, source: 'epwDataDictionary' } as const]),
  ];
}

/** That the file's 29 February was left out, and how warm it was. */
export const leapDayFinding = (mean: number): Finding => ({
  code: 'weather-leap-day-left-out',
  level: 'note',
  values: { mean: mean as Temperature },
  source: 'common practice',
});

/** That a header has design conditions which could not be read. */
export function designFindings({ designConditions }: WeatherHeader, designSets: number): readonly Finding[] {
  const readSets = designConditions.filter(({ heating }) => heating.length > 1).length;
  if (readSets === designSets) return [];
  return [{ code: 'design-conditions-unread', level: 'note', values: { designSets, readSets }, source: 'epwDataDictionary' }];
}

/** That the ground temperatures of the header are none to use, and whether their season is that of the air. */
export function groundHeaderFindings(headers: readonly WeatherGroundHeader[], air: AnnualWave | undefined): readonly Finding[] {
  const [shallowest] = [...headers].sort((a, b) => a.depth - b.depth);
  if (shallowest === undefined) return [];
  const { depth, rebuiltWithin, holds, surfaceColdestDay } = shallowest;
  const note: Finding =
    holds === 'unknown'
      ? { code: 'ground-header-unknown', level: 'note', values: { depth, rebuiltWithin }, source: 'epwGroundHeader' }
      : { code: 'ground-header-means', level: 'note', values: { depth }, source: 'epwGroundHeader' };
  if (surfaceColdestDay === undefined || air === undefined || air.amplitude < LEAST_SWING) return [note];
  const shift = daysAfter(surfaceColdestDay, air.coldestDay);
  if (Math.abs(shift) <= MOST_SHIFT) return [note];
  const values = { surfaceColdestDay, airColdestDay: air.coldestDay, lag: (shift * DAY) as Time };
  return [note, { code: 'ground-header-out-of-season', level: 'warning', values, source: 'epwGroundHeader' }];
}

/** Below this swing of the air its coldest day means little [K]. */
const LEAST_SWING = 3 as TemperatureDifference;
