import { dailyExtremeDegreeDays, type DailyExtremeRule, heatingDayDegreeDays, type MonthDegreeDays } from '../../src/building/index.js';
import { degreeDays } from '../../src/climate/index.js';
import { celsius, hours, type Temperature } from '../../src/units/index.js';
import { byMonth, stationHours } from '../building/bills.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { caseChecks, type CaseInputs } from '../support/load-cases.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const weather = loadFixture('load-weather-checks');
const months = { Chicago: byMonth(stationHours('Chicago')), Bologna: byMonth(stationHours('Bologna')) } as const;
const base = celsius(16);

/** The hours of a row’s month. */
const hoursOf = (row: FixtureRow): readonly Temperature[] =>
  months[row.text('station') === 'Bologna TMYx' ? 'Bologna' : 'Chicago'][row.number('month') - 1] ?? [];
const daysOf = (row: FixtureRow): readonly (readonly Temperature[])[] => {
  const month = hoursOf(row);
  return Array.from({ length: month.length / 24 }, (_, day) => month.slice(24 * day, 24 * day + 24));
};
const byExtremes = (rule: DailyExtremeRule, row: FixtureRow, of: keyof MonthDegreeDays): number =>
  daysOf(row).reduce(
    (sum, day) => sum + dailyExtremeDegreeDays({ rule, highest: celsius(Math.max(...day)), lowest: celsius(Math.min(...day)), base })[of],
    0,
  );

const fromWeather = (column: string, quantity: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(weather, {
    id: `LD-days ${column}`,
    room: 'building',
    quantity,
    column,
    label: (row) => `${row.text('station')} month ${row.text('month')}`,
    compute,
  });

const fourCases = ({ Tmax_C, Tmin_C, Tb_C }: CaseInputs): number =>
  dailyExtremeDegreeDays({
    rule: 'four cases',
    highest: celsius(Number(Tmax_C)),
    lowest: celsius(Number(Tmin_C)),
    base: celsius(Number(Tb_C)),
  }).heating;

/** So many equal days that make the degree days below 12 °C of the row, counted up to 20 °C. */
const heatingDays = ({ HDD12, heating_days }: CaseInputs): number =>
  heatingDayDegreeDays({
    dailyMeans: Array.from({ length: Number(heating_days) }, () => celsius(12 - Number(HDD12) / Number(heating_days))),
    indoor: celsius(20),
    heatingLimit: celsius(12),
  }).degreeDays;

export const buildingBillChecks: readonly PublishedCheck[] = [
  ...caseChecks('building', [
    ...['L7a', 'L7b', 'L7c', 'L7d', 'L7e', 'M5b', 'M5d'].map((id) => [id, 'degree days of a day, four cases', fourCases] as const),
    ...['M6-2006-02', 'M6-2006-11'].map((id) => [id, 'degree days of heating days', heatingDays] as const),
  ]),
  fromWeather('HDD_uk_rule', 'degree days by daily extremes, four cases', (row) => byExtremes('four cases', row, 'heating')),
  fromWeather('HDD_minmax', 'degree days by the middle of daily extremes', (row) => byExtremes('middle', row, 'heating')),
  fromWeather('HDD_daily_mean', 'degree days by daily means', (row) => degreeDays({ temperatures: hoursOf(row), step: hours(1), base }).heating),
  fromWeather(
    'HDD_hourly_integral',
    'degree days by hours',
    (row) => degreeDays({ temperatures: hoursOf(row), step: hours(1), base, counting: 'every step' }).heating,
  ),
];
