import { demand, demandChoice, demandCount, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Energy, Fraction, Power, RunFraction, Shape, Temperature, Time } from '../units/index.js';
import { capacityBalancePoint } from './balance-point.js';
import { demandSignature, demandSpread, LOAD, MONTHLY_MEAN } from './checks.js';
import { capacityFindings } from './findings.js';
import { type MonthLoad, type MonthlyLoads, monthlyLoadsShape } from './monthly-loads.js';
import { excessAbove, shortfallBelow } from './shortfall.js';

/** What {@link runFractions} needs. */
export interface RunFractionsInput {
  /** Loads of twelve months in one mode. */
  readonly loads: MonthlyLoads;
  /** Heating or cooling capacity of the unit, as a rule at the design entering fluid, 0.001 to 1e9 [W]. */
  readonly capacity: Power;
}

/** How the unit runs in one month. */
export interface MonthRun {
  /** The month, 1 to 12. */
  readonly month: number;
  /** Share of the month that the unit runs. */
  readonly runFraction: RunFraction;
  /** Time that it runs [s]. */
  readonly runTime: Time;
  /** Load that it meets, on the mean over the whole month [W]. */
  readonly meanMet: Power;
  /** Load beyond its capacity, on the mean over the whole month: auxiliary heat, or cooling missed [W]. */
  readonly meanUnmet: Power;
  /** Load beyond its capacity over the month [J]. */
  readonly unmetEnergy: Energy;
}

/** How a unit runs over a year in one mode. */
export interface RunFractions {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Capacity of the unit [W]. */
  readonly capacity: Power;
  /** Outdoor temperature at which the load equals the capacity [degC]. */
  readonly capacityBalancePoint: Temperature;
  /** January first. */
  readonly months: readonly MonthRun[];
  /** The month with the largest run fraction, 1 to 12; the first of equals. */
  readonly designMonth: number;
  /** Run fraction of the design month. */
  readonly designRunFraction: RunFraction;
  /** Load that the unit meets over the year [J]. */
  readonly metEnergy: Energy;
  /** Load beyond its capacity over the year; good to about 25 % [J]. */
  readonly unmetEnergy: Energy;
  /** Share of the year's load that the unit meets; 1 where there is no load [1]. */
  readonly coveredShare: Fraction;
}

/** {@link RunFractions} with findings. */
export interface RunFractionsResult extends RunFractions {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link RunFractionsInput}. */
export const runFractionsInputShape: Shape<RunFractionsInput> = { loads: monthlyLoadsShape, capacity: 'power' };

/** Shape of {@link MonthRun}. */
export const monthRunShape: Shape<MonthRun> = {
  month: 'count',
  runFraction: 'run fraction',
  runTime: 'time',
  meanMet: 'power',
  meanUnmet: 'power',
  unmetEnergy: 'energy',
};

/** Shape of {@link RunFractions}. */
export const runFractionsShape: Shape<RunFractions> = {
  mode: ['heating', 'cooling'],
  capacity: 'power',
  capacityBalancePoint: 'temperature',
  months: { list: monthRunShape },
  designMonth: 'count',
  designRunFraction: 'run fraction',
  metEnergy: 'energy',
  unmetEnergy: 'energy',
  coveredShare: 'fraction',
};

/** 366 days, a bound against overflow [s]. */
const YEAR = 31_622_400;

/**
 * Share of each month that a unit of constant capacity runs, what it leaves unmet, and the design month.
 *
 * The loop equations take the run fraction of the design month: F = running time in the month over its length. It is that of a
 * single-speed unit without cycling losses; a unit with stages or variable speed wants the share of its full ground heat instead, {@link heatFraction}.
 *
 * @param input - loads of the months, capacity [W]
 * @returns run fraction of each month, unmet load [W, J], and the month with the largest fraction
 * @throws InputError when a number is impossible
 * @remarks
 * With ψ the mean excess of the month beyond a temperature: F = m [ψ(θbal) − ψ(θbp)]/C, unmet = m ψ(θbp), θbp = θbal ∓ C/m. Against two
 * hour-by-hour years (`loadWeatherChecks`) the fraction of the design months is good to 0.02, the unmet energy to 25 %: the cold end of real weather is not
 * normal. `closedFormErrors` has both as numbers and the finding `capacity-short` carries them; for auxiliary heat itself use {@link binRun} or hours. Where ground and building lag, the month of the coldest ground may govern instead; try every month, as the plan does.
 *
 * Invariants: 0 ≤ F ≤ 1; F · C + unmet = mean load; more capacity never raises F, nor leaves more unmet.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference, kilowatts } = await import('../units/index.js');
 * const { energySignature } = await import('./signature.js');
 * const { monthlyLoads } = await import('./monthly-loads.js');
 * const house = { designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21), balancePoint: celsius(16) };
 * const signature = energySignature({ mode: 'heating', form: 'anchored at design', ...house });
 * const meanOutdoor = [-6, -4, 2, 8, 14, 19, 21, 20, 16, 10, 3, -3].map((t) => celsius(t));
 * const loads = monthlyLoads({ signature, meanOutdoor, spread: meanOutdoor.map(() => kelvinDifference(6)) });
 * const { designMonth, designRunFraction, capacityBalancePoint } = runFractions({ loads, capacity: kilowatts(9) });
 * expect(designMonth).toBe(1);
 * expect(designRunFraction).toBeCloseTo(0.867947, 6);
 * expect(capacityBalancePoint).toBeCloseTo(-7.25, 9);
 * ```
 */
export function runFractions({ loads, capacity }: RunFractionsInput): RunFractionsResult {
  demandObject('loads', loads);
  const { signature, distribution, months: monthLoads } = loads;
  locate('loads', () => demandSignature(signature));
  demandChoice('loads.distribution', distribution, ['normal', 'logistic']);
  demandCount('loads.months', monthLoads, 12, 12);
  demand('capacity', 'power', capacity, LOAD);
  const balance = capacityBalancePoint(signature, capacity);
  const months = monthLoads.map((load, index) => locate(`loads.months.${String(index)}`, () => monthRun(loads, load, capacity, balance)));
  const design = months.reduce((most, month) => (month.runFraction > most.runFraction ? month : most));
  const metEnergy = months.reduce((sum, { meanMet }, index) => sum + meanMet * (monthLoads[index]?.time ?? 0), 0);
  const unmetEnergy = months.reduce((sum, month) => sum + month.unmetEnergy, 0);
  const run: RunFractions = {
    mode: signature.mode,
    capacity,
    capacityBalancePoint: balance,
    months,
    designMonth: design.month,
    designRunFraction: design.runFraction,
    metEnergy: metEnergy as Energy,
    unmetEnergy: unmetEnergy as Energy,
    coveredShare: (unmetEnergy === 0 ? 1 : metEnergy / (metEnergy + unmetEnergy)) as Fraction,
  };
  return { ...run, findings: capacityFindings(signature, run) };
}

function monthRun({ signature, distribution }: MonthlyLoads, load: MonthLoad, capacity: Power, balance: Temperature): MonthRun {
  demandObject('', load);
  const { month, time, meanOutdoor, spread } = load;
  demand('month', 'count', month, { atLeast: 1, atMost: 12 });
  demand('time', 'time', time, { above: 0, atMost: YEAR });
  demand('meanOutdoor', 'temperature', meanOutdoor, MONTHLY_MEAN);
  demandSpread('spread', spread);
  const { mode, slope, balancePoint } = signature;
  const beyond = mode === 'heating' ? shortfallBelow : excessAbove;
  const outdoor = { distribution, mean: meanOutdoor, spread };
  const unmet = slope * beyond(outdoor, balance).mean;
  // Between 0 and the capacity but for rounding, which must not make a fraction of more than 1.
  const met = Math.min(capacity, Math.max(0, slope * beyond(outdoor, balancePoint).mean - unmet));
  const fraction = met / capacity;
  return {
    month,
    runFraction: fraction as RunFraction,
    runTime: (fraction * time) as Time,
    meanMet: met as Power,
    meanUnmet: unmet as Power,
    unmetEnergy: (unmet * time) as Energy,
  };
}
