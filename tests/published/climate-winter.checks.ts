import {
  groundTemperatureSpread,
  type RecordedSeason,
  returnLevel,
  type SeasonMeans,
  seasonMeans,
  syntheticWeatherYear,
  type SyntheticWeatherYear,
} from '../../src/climate/index.js';
import { dailyMeans, hardestDays } from '../../src/climate/season-of-hours.js';
import { celsius, days, hours, kelvinDifference, metres, type Temperature } from '../../src/units/index.js';
import { airDays } from '../climate/records.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const recorded = loadFixture('manhattan-seasons');
const factors = loadFixture('return-level-factors');
const files = loadFixture('weather-year-hours');
const spread = loadFixture('ground-spread');

/** The seasons of the record, reckoned once. */
const seasonsOf = new Map<string, readonly RecordedSeason[]>();
function seasonOf(row: FixtureRow): SeasonMeans | undefined {
  const season = row.text('season') === 'winter' ? 'winter' : 'summer';
  const seasons = seasonsOf.get(season) ?? seasonMeans({ season, days: airDays('uscrn-manhattan-daily') });
  seasonsOf.set(season, seasons);
  return seasons.find(({ year }) => year === row.number('year'));
}

/** So many seasons with a mean of 0 and a deviation of 1, so that a level is its factor. */
function plainSeasons(count: number): readonly Temperature[] {
  const raw = Array.from({ length: count }, (_, index) => index - (count - 1) / 2);
  const deviation = Math.sqrt(raw.reduce((sum, each) => sum + each ** 2, 0) / (count - 1));
  return raw.map((each) => celsius(each / deviation));
}

const levelOf = (row: FixtureRow): ReturnType<typeof returnLevel> =>
  returnLevel({ season: 'summer', seasonValues: plainSeasons(row.number('seasons')), returnPeriod: row.number('return_period') });

/** A weather year made again from its months, spread and mean day; where a month spreads less than that day, from a smaller one. */
function madeAgain(row: FixtureRow): SyntheticWeatherYear {
  const months = Array.from({ length: 12 }, (_, month) => String(month + 1).padStart(2, '0'));
  const amplitude = row.text('file') === '45 N 8 E' ? 3 : row.number('amplitude_K');
  return syntheticWeatherYear({
    course: { from: 'monthly-air', monthlyMeans: months.map((month) => celsius(row.number(`mean${month}_C`))) },
    spread: months.map((month) => kelvinDifference(row.number(`spread${month}_K`))),
    dailySwing: { amplitude: kelvinDifference(amplitude), warmestHour: hours(row.number('warmest_h')) },
  });
}

const quantile = ({ temperatures }: SyntheticWeatherYear, share: number): number =>
  Float64Array.from(temperatures).sort()[Math.round(share * (temperatures.length - 1))] ?? Number.NaN;
const degreeDays = ({ temperatures }: SyntheticWeatherYear, sign: 1 | -1, base: number): number =>
  temperatures.reduce((sum, each) => sum + Math.max(0, sign * (each - base)) / 24, 0);
const hardest = ({ temperatures }: SyntheticWeatherYear, length: number, sign: 1 | -1): number =>
  hardestDays(dailyMeans(temperatures), length, sign).mean;

const ofFiles = (id: string, quantity: string, column: string, of: (year: SyntheticWeatherYear) => number): PublishedCheck =>
  fromFixture(files, {
    id,
    room: 'climate',
    quantity: `made year against the weather year: ${quantity}`,
    column,
    label: (row) => row.text('file'),
    compute: (row) => of(madeAgain(row)),
  });

export const climateWinterChecks: readonly PublishedCheck[] = [
  ...(
    [
      ['five', 'fiveDays'],
      ['thirty', 'thirtyDays'],
      ['ninety', 'ninetyDays'],
    ] as const
  ).map(([length, field]) =>
    fromFixture(recorded, {
      id: `GT-seasons ${length}`,
      room: 'climate',
      quantity: `hardest ${length} days of recorded winters and summers`,
      column: `${length}_days_C`,
      label: (row) => `${row.text('season')} ${row.text('year')}`,
      compute: (row) => seasonOf(row)?.[field] ?? Number.NaN,
    }),
  ),
  fromFixture(factors, {
    id: 'GT-level few',
    room: 'climate',
    quantity: 'deviations from the mean that the next season passes once in a return period',
    column: 'factor',
    label: (row) => `${row.text('seasons')} seasons, one in ${row.text('return_period')}`,
    compute: (row) => levelOf(row).factor,
  }),
  fromFixture(factors, {
    id: 'GT-level certain',
    room: 'climate',
    quantity: 'the same if mean and deviation were known for certain',
    column: 'certain_factor',
    label: (row) => `${row.text('seasons')} seasons, one in ${row.text('return_period')}`,
    compute: (row) => levelOf(row).certainLevel,
  }),
  ofFiles('GT-year heating', 'degree hours below 18 °C over 24', 'heating_degree_days_K_d', (year) => degreeDays(year, -1, 18)),
  ofFiles('GT-year cooling', 'degree hours above 22 °C over 24', 'cooling_degree_days_K_d', (year) => degreeDays(year, 1, 22)),
  ofFiles('GT-year cold 30', 'coldest thirty days', 'cold30d_C', (year) => hardest(year, 30, -1)),
  ofFiles('GT-year cold 90', 'coldest ninety days', 'cold90d_C', (year) => hardest(year, 90, -1)),
  ofFiles('GT-year hot 30', 'hottest thirty days', 'hot30d_C', (year) => hardest(year, 30, 1)),
  ofFiles('GT-year hot 90', 'hottest ninety days', 'hot90d_C', (year) => hardest(year, 90, 1)),
  ofFiles('GT-year tenth', 'temperature that a tenth of the hours is below', 'q10_C', (year) => quantile(year, 0.1)),
  ofFiles('GT-year half', 'temperature that half of the hours is below', 'q50_C', (year) => quantile(year, 0.5)),
  ofFiles('GT-year nine tenths', 'temperature that nine tenths of the hours are below', 'q90_C', (year) => quantile(year, 0.9)),
  fromFixture(spread, {
    id: 'GT-spread',
    room: 'climate',
    quantity: 'spread of soil temperature about its yearly wave',
    column: 'rms_K',
    label: (row) => `${row.text('depth_m')} m, ${row.text('days')} d`,
    compute: (row) => groundTemperatureSpread({ depth: metres(row.number('depth_m')), averagingTime: days(row.number('days')) }).deviation,
  }),
];
