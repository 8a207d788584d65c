import type { Finding } from '../findings/index.js';
import type { DegreeDays, Energy, Power, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { demandMeans, demandSignature, demandSpreads } from './checks.js';
import { designFindings, spreadFindings } from './findings.js';
import { MONTH_DAYS } from '../states/index.js';
import { type Distribution, excessAbove, type Outdoor, shortfallBelow } from './shortfall.js';
import { type EnergySignature, energySignatureShape } from './signature.js';
import { erbsSpread } from './spread.js';

/** What {@link monthlyLoads} needs. */
export interface MonthlyLoadsInput {
  /** The building, in one mode. */
  readonly signature: EnergySignature;
  /** Mean outdoor temperature of each month, January first, −75 to 45 [degC]. */
  readonly meanOutdoor: readonly Temperature[];
  /** Standard deviation of hourly temperatures within each month, 0 to 50 [K]; told from the means after Erbs when left out. */
  readonly spread?: readonly TemperatureDifference[];
}

/** Load of one month. */
export interface MonthLoad {
  /** The month, 1 to 12. */
  readonly month: number;
  /** Length of the month [s]. */
  readonly time: Time;
  /** Mean outdoor temperature [degC]. */
  readonly meanOutdoor: Temperature;
  /** Standard deviation of outdoor temperatures within the month [K]. */
  readonly spread: TemperatureDifference;
  /** Degree days on the base of the balance point [K.d]. */
  readonly degreeDays: DegreeDays;
  /** Time with a load [s]. */
  readonly loadTime: Time;
  /** Load, on the mean over the whole month [W]. */
  readonly meanLoad: Power;
  /** Heat or cold of the month [J]. */
  readonly energy: Energy;
}

/** Loads of the twelve months of a year in one mode. */
export interface MonthlyLoads {
  /** The building they belong to. */
  readonly signature: EnergySignature;
  /** How temperatures lie about the monthly means: normal where the spread was given, logistic where it was told from the means. */
  readonly distribution: Distribution;
  /** January first. */
  readonly months: readonly MonthLoad[];
  /** Degree days of the year on the base of the balance point [K.d]. */
  readonly degreeDays: DegreeDays;
  /** Heat or cold of the year [J]. */
  readonly energy: Energy;
}

/** {@link MonthlyLoads} with findings. */
export interface MonthlyLoadsResult extends MonthlyLoads {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link MonthlyLoadsInput}. */
export const monthlyLoadsInputShape: Shape<MonthlyLoadsInput> = {
  signature: energySignatureShape,
  meanOutdoor: { list: 'temperature' },
  spread: { optional: { list: 'temperature difference' } },
};

/** Shape of {@link MonthLoad}. */
export const monthLoadShape: Shape<MonthLoad> = {
  month: 'count',
  time: 'time',
  meanOutdoor: 'temperature',
  spread: 'temperature difference',
  degreeDays: 'degree days',
  loadTime: 'time',
  meanLoad: 'power',
  energy: 'energy',
};

/** Shape of {@link MonthlyLoads}. */
export const monthlyLoadsShape: Shape<MonthlyLoads> = {
  signature: energySignatureShape,
  distribution: ['normal', 'logistic'],
  months: { list: monthLoadShape },
  degreeDays: 'degree days',
  energy: 'energy',
};

const DAY = 86_400;

/**
 * Loads of the twelve months from monthly mean temperatures.
 *
 * Within a month outdoor temperatures are taken to be normally distributed where their hourly spread is given, and logistically, after
 * Erbs, where it is told from the means alone. For a typical year; a design winter is made by giving a design winter's means.
 *
 * @param input - signature, twelve means [degC] and, where known, twelve hourly standard deviations [K]
 * @returns degree days [K.d], mean load [W] and energy [J] of each month and of the year
 * @throws InputError when a number is impossible or there are not twelve of them
 * @remarks
 * Mean load = slope · mean excess beyond the balance point, degree days = N · that excess. Sources: `schoenauKehrig1990`, `erbs1983`.
 * With the hourly spread the year agrees with the hour-by-hour sum within 0.5 % (`loadWeatherChecks`); Erbs as told at {@link erbsDegreeDays}. `closedFormErrors` has both as numbers. By a mild
 * sea, and wherever hours are at hand, use {@link hourlyLoads} or bins.
 *
 * Invariants: energy = slope · degree days; a warmer month never needs more heat; the load is proportional to the slope.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference, kilowatts, kilowattHours } = await import('../units/index.js');
 * const { energySignature } = await import('./signature.js');
 * const house = { designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21), balancePoint: celsius(16) };
 * const signature = energySignature({ mode: 'heating', form: 'anchored at design', ...house });
 * const meanOutdoor = [-6, -4, 2, 8, 14, 19, 21, 20, 16, 10, 3, -3].map((t) => celsius(t));
 * const { months } = monthlyLoads({ signature, meanOutdoor, spread: meanOutdoor.map(() => kelvinDifference(6)) });
 * expect(kilowatts.of(months[0]?.meanLoad ?? kilowatts(0))).toBeCloseTo(8.516, 3);
 * expect(kilowattHours.of(months[0]?.energy ?? kilowattHours(0))).toBeCloseTo(744 * 8.516198, 2);
 * ```
 */
export function monthlyLoads({ signature, meanOutdoor, spread }: MonthlyLoadsInput): MonthlyLoadsResult {
  demandSignature(signature);
  demandMeans(meanOutdoor);
  if (spread !== undefined) demandSpreads(spread);
  const distribution = spread === undefined ? 'logistic' : 'normal';
  const spreads = spread ?? erbsSpread(meanOutdoor).withinMonth;
  const months = meanOutdoor.map((mean, index) => monthLoad(signature, index + 1, { distribution, mean, spread: spreads[index] ?? 0 }));
  return {
    signature,
    distribution,
    months,
    degreeDays: months.reduce((sum, month) => sum + month.degreeDays, 0) as DegreeDays,
    energy: months.reduce((sum, month) => sum + month.energy, 0) as Energy,
    findings: [...designFindings(signature, months), ...(spread === undefined ? spreadFindings(erbsSpread(meanOutdoor)) : [])],
  };
}

function monthLoad({ mode, slope, balancePoint }: EnergySignature, month: number, outdoor: Outdoor): MonthLoad {
  const days = MONTH_DAYS[month - 1] ?? 30;
  const beyond = (mode === 'heating' ? shortfallBelow : excessAbove)(outdoor, balancePoint);
  const meanLoad = slope * beyond.mean;
  return {
    month,
    time: (days * DAY) as Time,
    meanOutdoor: outdoor.mean as Temperature,
    spread: outdoor.spread as TemperatureDifference,
    degreeDays: (days * beyond.mean) as DegreeDays,
    loadTime: (days * DAY * beyond.share) as Time,
    meanLoad: meanLoad as Power,
    energy: (days * DAY * meanLoad) as Energy,
  };
}
