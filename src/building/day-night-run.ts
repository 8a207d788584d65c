import { demandChoice, demandObject, InputError } from '../errors/index.js';
import type { Energy, Fraction, Power, RunFraction, Shape, Time } from '../units/index.js';
import { type BinRun, binRun, binRunShape, type WeatherBin, weatherBinShape } from './bin-run.js';
import { MODES } from './checks.js';
import { type EnergySignature, energySignatureShape } from './signature.js';

/** What {@link dayNightRun} needs. */
export interface DayNightRunInput {
  /** The building by day, with the mean gains of the day in its balance point. */
  readonly signatureByDay: EnergySignature;
  /** The building by night, in the same mode. */
  readonly signatureByNight: EnergySignature;
  /** Bins of the hours of day, 1 to 10 000 of them. */
  readonly binsByDay: readonly WeatherBin[];
  /** Bins of the hours of night, 1 to 10 000 of them. */
  readonly binsByNight: readonly WeatherBin[];
  /** Heating or cooling capacity of the unit, 0.001 to 1e9 [W]. */
  readonly capacity: Power;
}

/** How a unit runs by day, by night and in all. */
export interface DayNightRun {
  /** Over the hours of day. */
  readonly runByDay: BinRun;
  /** Over the hours of night. */
  readonly runByNight: BinRun;
  /** Heat or cold that the building needs [J]. */
  readonly energy: Energy;
  /** What the unit meets [J]. */
  readonly metEnergy: Energy;
  /** Load beyond the capacity [J]. */
  readonly unmetEnergy: Energy;
  /** Share of the load that the unit meets; 1 where there is no load [1]. */
  readonly coveredShare: Fraction;
  /** Time that the unit runs [s]. */
  readonly runTime: Time;
  /** Running time over the time of all bins. */
  readonly runFraction: RunFraction;
}

/** Shape of {@link DayNightRunInput}. */
export const dayNightRunInputShape: Shape<DayNightRunInput> = {
  signatureByDay: energySignatureShape,
  signatureByNight: energySignatureShape,
  binsByDay: { list: weatherBinShape },
  binsByNight: { list: weatherBinShape },
  capacity: 'power',
};

/** Shape of {@link DayNightRun}. */
export const dayNightRunShape: Shape<DayNightRun> = {
  runByDay: binRunShape,
  runByNight: binRunShape,
  energy: 'energy',
  metEnergy: 'energy',
  unmetEnergy: 'energy',
  coveredShare: 'fraction',
  runTime: 'time',
  runFraction: 'run fraction',
};

/**
 * Load and running over bins with a line of its own for day and for night.
 *
 * By day sun and people carry part of the heat and the balance point is lower; by night it is higher, and the nights are colder. One line with mean gains gets the heat of a year
 * about right and the cold end too low.
 *
 * @param input - a line and the bins for day and for night, capacity [W]
 * @returns both runs and their sums [J, s]
 * @throws InputError when a number is impossible, or one line heats and the other cools
 * @remarks
 * The modified bin method after `knebel1983`: loads as lines made from mean, not peak, gains, for each part of the day.
 *
 * Invariants: with the same line for both it is {@link binRun} over all bins; met + unmet = energy.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, kilowatts, kilowattHours } = await import('../units/index.js');
 * const { energySignature } = await import('./signature.js');
 * const house = { mode: 'heating', form: 'gains as offset', designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21) } as const;
 * const run = dayNightRun({
 *   signatureByDay: energySignature({ ...house, balancePoint: celsius(13) }),
 *   signatureByNight: energySignature({ ...house, balancePoint: celsius(18) }),
 *   binsByDay: [{ outdoor: celsius(3), time: hours(10) }],
 *   binsByNight: [{ outdoor: celsius(-2), time: hours(10) }],
 *   capacity: kilowatts(9),
 * });
 * expect(kilowattHours.of(run.energy)).toBeCloseTo(100, 9);
 * ```
 */
export function dayNightRun({ signatureByDay, signatureByNight, binsByDay, binsByNight, capacity }: DayNightRunInput): DayNightRun {
  demandObject('signatureByDay', signatureByDay);
  demandObject('signatureByNight', signatureByNight);
  demandChoice('signatureByDay.mode', signatureByDay.mode, MODES);
  demandChoice('signatureByNight.mode', signatureByNight.mode, [signatureByDay.mode]);
  const runByDay = named('ByDay', () => binRun({ signature: signatureByDay, bins: binsByDay, capacity }));
  const runByNight = named('ByNight', () => binRun({ signature: signatureByNight, bins: binsByNight, capacity }));
  const sum = (of: 'energy' | 'metEnergy' | 'unmetEnergy' | 'runTime' | 'time'): number => runByDay[of] + runByNight[of];
  const [energy, unmetEnergy] = [sum('energy'), sum('unmetEnergy')];
  return {
    runByDay,
    runByNight,
    energy: energy as Energy,
    metEnergy: sum('metEnergy') as Energy,
    unmetEnergy: unmetEnergy as Energy,
    coveredShare: (unmetEnergy === 0 ? 1 : 1 - unmetEnergy / energy) as Fraction,
    runTime: sum('runTime') as Time,
    runFraction: Math.min(1, sum('runTime') / sum('time')) as RunFraction,
  };
}

/** Runs one part of the day, so that a refusal names the field of that part. */
function named<T>(part: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError) || !/^(?:signature|bins)/u.test(error.argument)) throw error;
    const { code, argument, value, allowed, hint } = error;
    throw new InputError({ code, argument: argument.replace(/^\w+/u, (field) => `${field}${part}`), value, allowed, hint });
  }
}
