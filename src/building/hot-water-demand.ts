import { demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { fluidProperties } from '../fluid/index.js';
import { MONTH_DAYS } from '../states/index.js';
import type { Energy, MassFraction, Power, Temperature, Time, Volume } from '../units/index.js';
import { coldWaterDays } from './cold-water.js';
import { hotWaterFindings } from './hot-water-findings.js';
import { demandHotWater, type HotWaterDraw, type HotWaterInput } from './hot-water-input.js';

/** Hot water of one month. */
export interface HotWaterMonth {
  /** The month, 1 to 12. */
  readonly month: number;
  /** Mean temperature of the cold water over the month [degC]. */
  readonly meanColdWater: Temperature;
  /** Hot water drawn [m3]. */
  readonly drawn: Volume;
  /** Heat in the water that is drawn [J]. */
  readonly usefulEnergy: Energy;
  /** Heat lost by tank and circulation [J]. */
  readonly lossEnergy: Energy;
  /** Heat to be made: useful and lost [J]. */
  readonly energy: Energy;
}

/** Heat for hot water through a year of 365 days. */
export interface HotWaterDemand {
  /** Heat to be made in each of 8760 hours, losses included, from 1 January 00:00 on [W]. */
  readonly loads: Float64Array;
  /** Length of a step, an hour [s]. */
  readonly step: Time;
  /** January first. */
  readonly months: readonly HotWaterMonth[];
  /** Hot water drawn over the year [m3]. */
  readonly drawn: Volume;
  /** Heat in the water that is drawn over the year [J]. */
  readonly usefulEnergy: Energy;
  /** Heat lost by tank and circulation over the year [J]. */
  readonly lossEnergy: Energy;
  /** Heat to be made over the year [J]. */
  readonly energy: Energy;
  /** Load on the mean over the year [W]. */
  readonly meanLoad: Power;
  /** Largest load of an hour [W]. */
  readonly peakLoad: Power;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

const DAY = 86_400;
const HOUR = 3600;
const YEAR = 31_536_000;

/** Half a span over √3: the mean of a smooth curve is that of its values so far on both sides of the middle. */
const GAUSS = 0.28867513459481287;

/**
 * Heat that hot water asks for, hour by hour and month by month through a year.
 *
 * The draw is the same every day but for absences; what moves over the year is the cold water. Losses are taken as constant, and none of them is
 * counted as heating the house. An hour asks for what is drawn in it: a tank that is charged at other hours wants those hours as its `hourShares`.
 *
 * @param input - draw [m3/s], hot and cold water [degC], losses [W], shares of the hours, days away
 * @returns heat of each hour [W], and of months and year its useful and its lost part [J]
 * @throws InputError when a number is impossible, a wave of cold water freezes, or 24 shares do not make a day
 * @remarks
 * Q = V ρ c (θhot − θcold): V as a meter in the cold pipe counts it, with ρ at the cold temperature and c the mean between the two, of {@link fluidProperties}. The usual
 * 200 L a day from 10 to 50 °C is 9.29 kWh; 9.31 with c as at 10 °C throughout.
 *
 * Invariants: useful + lost = energy; hours add up to the months and the months to the year; heat is proportional to the draw; warmer cold water
 * never wants more heat.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, kelvinDifference, kilowattHours, litresPerDay, watts } = await import('../units/index.js');
 * const { energy, months } = hotWaterDemand({
 *   draw: { by: 'persons', persons: 4, perPerson: litresPerDay(50) },
 *   hotTemperature: celsius(50),
 *   coldWater: { from: 'wave', mean: celsius(10), amplitude: kelvinDifference(5), coldestDay: dayOfYear(45) },
 *   tankLoss: watts(60), circulationLoss: watts(0),
 * });
 * expect(kilowattHours.of(energy)).toBeCloseTo(365 * 9.29 + 8.76 * 60, -1);
 * expect(months[1]?.usefulEnergy).toBeGreaterThan(months[7]?.usefulEnergy ?? Infinity);
 * ```
 */
export function hotWaterDemand(input: HotWaterInput): HotWaterDemand {
  demandObject('', input);
  demandHotWater(input);
  const { draw, hotTemperature, coldWater, tankLoss, circulationLoss, absences = [] } = input;
  const cold = coldWaterDays(coldWater);
  const drawOfDay = DAY * flowOf(draw);
  const draws = cold.map((_, index) => (absences.some(({ firstDay, lastDay }) => index + 1 >= firstDay && index + 1 <= lastDay) ? 0 : drawOfDay));
  const heats = cold.map((temperature, index) => Number(draws[index]) * heatOf(temperature, hotTemperature));
  const loss = tankLoss + circulationLoss;
  const loads = hourlyLoadsOf(heats, loss, input.hourShares);
  const months = monthsOf(cold, draws, heats, loss);
  const total = (of: (month: HotWaterMonth) => number): number => months.reduce((sum, month) => sum + of(month), 0);
  const energy = total((month) => month.energy);
  return {
    loads,
    step: HOUR as Time,
    months,
    drawn: total(({ drawn }) => drawn) as Volume,
    usefulEnergy: total(({ usefulEnergy }) => usefulEnergy) as Energy,
    lossEnergy: total(({ lossEnergy }) => lossEnergy) as Energy,
    energy: energy as Energy,
    meanLoad: (energy / YEAR) as Power,
    peakLoad: loads.reduce((most, load) => Math.max(most, load), 0) as Power,
    findings: hotWaterFindings(input, cold.reduce((sum, temperature) => sum + temperature, 0) / cold.length),
  };
}

const flowOf = (draw: HotWaterDraw): number => (draw.by === 'persons' ? draw.persons * draw.perPerson : draw.dailyDraw);

/** Heat of a cubic metre of water counted cold [J/m3]. */
function heatOf(cold: number, hot: number): number {
  const water = (temperature: number): ReturnType<typeof fluidProperties> =>
    fluidProperties({ fluid: 'water', massFraction: 0 as MassFraction, temperature: temperature as Temperature });
  const [middle, aside] = [(cold + hot) / 2, (hot - cold) * GAUSS];
  const specificHeat = (water(middle - aside).specificHeat + water(middle + aside).specificHeat) / 2;
  return water(cold).density * specificHeat * (hot - cold);
}

/** Loads of 8760 hours; shares are divided by their sum, so that a day holds its draw to the last digit. */
function hourlyLoadsOf(heats: readonly number[], loss: number, shares: HotWaterInput['hourShares']): Float64Array {
  const sum = shares?.reduce((total, share) => total + share, 0) ?? 24;
  return Float64Array.from({ length: 24 * heats.length }, (_, hour) => {
    const share = (shares?.[hour % 24] ?? 1) / sum;
    return (Number(heats[Math.floor(hour / 24)]) * share) / HOUR + loss;
  });
}

function monthsOf(cold: readonly number[], draws: readonly number[], heats: readonly number[], loss: number): readonly HotWaterMonth[] {
  let first = 0;
  return MONTH_DAYS.map((days, index) => {
    const sum = (values: readonly number[]): number => values.slice(first, first + days).reduce((all, value) => all + value, 0);
    const [coldSum, drawn, useful] = [sum(cold), sum(draws), sum(heats)];
    first += days;
    return {
      month: index + 1,
      meanColdWater: (coldSum / days) as Temperature,
      drawn: drawn as Volume,
      usefulEnergy: useful as Energy,
      lossEnergy: (loss * days * DAY) as Energy,
      energy: (useful + loss * days * DAY) as Energy,
    };
  });
}
