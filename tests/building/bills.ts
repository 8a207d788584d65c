import type { MeterPeriod, PeriodWeather, SignatureFitInput } from '../../src/building/index.js';
import { MONTH_DAYS } from '../../src/states/index.js';
import { celsius, fraction, hours, joules, ratio, type Temperature } from '../../src/units/index.js';
import { loadFixture } from '../support/fixture.js';

/** Hours of two real weather years [degC]. */
const dryBulbs = loadFixture('weather-dry-bulbs');
const STATIONS = {
  Chicago: 'USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw',
  Bologna: 'ITA_ER_Bologna-Marconi.AP.161400_TMYx.2004-2018.epw',
} as const;
export type Station = keyof typeof STATIONS;
export const stationHours = (station: Station): readonly Temperature[] => dryBulbs.rows.map((row) => celsius(row.number(STATIONS[station])));

/** The hours of each month, January first. */
export const byMonth = <T>(year: readonly T[]): readonly (readonly T[])[] => {
  let start = 0;
  return MONTH_DAYS.map((days) => year.slice(start, (start += 24 * days)));
};

/** A house as its bills would see it. */
export interface House {
  /** [W/K] */
  readonly slope: number;
  /** [degC] */
  readonly balancePoint: number;
  /** [W] */
  readonly baseLoad: number;
  /** Useful heat over energy by the meter. */
  readonly usefulRatio: number;
}

export const house: House = { slope: 250, balancePoint: 15.5, baseLoad: 400, usefulRatio: 0.9 };

/** What the meter counts over some hours, without scatter [J]. */
export const deliveredOver = ({ slope, balancePoint, baseLoad, usefulRatio }: House, month: readonly Temperature[]): number =>
  month.reduce((sum, outdoor) => sum + 3600 * (baseLoad + slope * Math.max(0, balancePoint - outdoor)), 0) / usefulRatio;

export const withHours = (outdoorTemperatures: readonly Temperature[]): PeriodWeather => ({
  from: 'temperatures',
  outdoorTemperatures,
  step: hours(1),
});

/** Monthly bills of a house, each scattered by a standard normal number times a share of the mean bill. */
export function billsOf(of: House, months: readonly (readonly Temperature[])[], scatter = 0, noise: () => number = () => 0): readonly MeterPeriod[] {
  const bills = months.map((month) => deliveredOver(of, month));
  const mean = bills.reduce((sum, bill) => sum + bill, 0) / bills.length;
  return months.map((month, index) => ({
    delivered: joules(Math.max(0, (bills[index] ?? 0) + scatter * mean * noise())),
    weather: withHours(month),
  }));
}

/** The input of a fit, the useful heat known without error. */
export const fitOf = (periods: readonly MeterPeriod[], usefulRatio = house.usefulRatio): SignatureFitInput => ({
  periods,
  usefulHeat: { from: 'stated', usefulRatio: ratio(usefulRatio), usefulRatioError: fraction(0) },
  designOutdoor: celsius(-20),
  indoor: celsius(20),
});
