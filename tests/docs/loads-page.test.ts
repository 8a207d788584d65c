import { describe, expect, it } from 'vitest';
import { dailyExtremeDegreeDays, erbsDegreeDays, erbsSpread } from '../../src/building/index.js';
import { degreeDays, weatherOfHours } from '../../src/climate/index.js';
import { MONTH_DAYS } from '../../src/states/index.js';
import { celsius, hours, kelvinDifference, type Temperature } from '../../src/units/index.js';
import { stationHours } from '../building/bills.js';
import { projectFile } from '../support/page.js';

const base = celsius(16);
const days = (year: readonly Temperature[]): readonly (readonly Temperature[])[] =>
  Array.from({ length: 365 }, (_, day) => year.slice(24 * day, 24 * day + 24));
const byExtremes = (year: readonly Temperature[], rule: 'middle' | 'four cases'): number =>
  days(year).reduce(
    (sum, day) => sum + dailyExtremeDegreeDays({ rule, highest: celsius(Math.max(...day)), lowest: celsius(Math.min(...day)), base }).heating,
    0,
  );
function byMeans(year: readonly Temperature[]): number {
  const { monthlyMeans } = weatherOfHours(year);
  const { yearToYear } = erbsSpread(monthlyMeans);
  return monthlyMeans.reduce((sum, meanOutdoor, month) => {
    const of = { base, meanOutdoor, days: MONTH_DAYS[month] ?? 30, yearToYear: yearToYear[month] ?? kelvinDifference(Number.NaN) };
    return sum + erbsDegreeDays(of).heating;
  }, 0);
}
const WAYS: readonly (readonly [label: string, count: (year: readonly Temperature[]) => number])[] = [
  ['daily means', (temperatures) => degreeDays({ temperatures, step: hours(1), base }).heating],
  ['every hour', (temperatures) => degreeDays({ temperatures, step: hours(1), base, counting: 'every step' }).heating],
  ['middle of the extremes', (year) => byExtremes(year, 'middle')],
  ['four cases', (year) => byExtremes(year, 'four cases')],
  ['from monthly means alone, after Erbs', byMeans],
];

describe('the table of degree days on the page about loads', () => {
  const page = projectFile('docs/loads-and-what-they-mean.md');
  const years = [stationHours('Chicago'), stationHours('Bologna')];

  it.each(WAYS)('has what the hours of both years give: %s', (label, count) => {
    expect(page).toContain(`| ${label} | ${years.map((year) => `${String(Math.round(count(year)))} K·d`).join(' | ')} |`);
  });
});
