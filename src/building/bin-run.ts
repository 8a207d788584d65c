import { demand, demandCount, demandObject } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Energy, Fraction, Power, RunFraction, Shape, Temperature, Time } from '../units/index.js';
import { capacityBalancePoint } from './balance-point.js';
import { demandSignature, LOAD, OUTDOOR } from './checks.js';
import { type EnergySignature, energySignatureShape, loadAt } from './signature.js';

/** Time that the outdoor temperature spends in a narrow range. */
export interface WeatherBin {
  /** Mean temperature of the time in the bin, better than the middle of the bin [degC]. */
  readonly outdoor: Temperature;
  /** Time in the bin, 0 to 1e9 [s]. */
  readonly time: Time;
}

/** What {@link binRun} needs. */
export interface BinRunInput {
  /** The building, in one mode. */
  readonly signature: EnergySignature;
  /** Bins, no wider than 3 K, or hours, 1 to 10 000 of them in any order. */
  readonly bins: readonly WeatherBin[];
  /** Heating or cooling capacity of the unit, 0.001 to 1e9 [W]. */
  readonly capacity: Power;
}

/** Load of one bin and what the unit makes of it. */
export interface BinRunPart extends WeatherBin {
  /** Load of the building [W]. */
  readonly load: Power;
  /** Share of the time in the bin that the unit runs. */
  readonly runFraction: RunFraction;
  /** Load beyond the capacity [W]. */
  readonly unmet: Power;
}

/** How a unit runs over a set of bins: a month, a season or a year. */
export interface BinRun {
  /** Outdoor temperature at which the load equals the capacity [degC]. */
  readonly capacityBalancePoint: Temperature;
  /** Bin by bin, as given. */
  readonly bins: readonly BinRunPart[];
  /** Time of all bins [s]. */
  readonly time: Time;
  /** Heat or cold that the building needs [J]. */
  readonly energy: Energy;
  /** What the unit meets [J]. */
  readonly metEnergy: Energy;
  /** Load beyond the capacity [J]. */
  readonly unmetEnergy: Energy;
  /** Share of the load that the unit meets; 1 where there is no load [1]. */
  readonly coveredShare: Fraction;
  /** Time that the unit runs, without cycling losses [s]. */
  readonly runTime: Time;
  /** Running time over the time of all bins. */
  readonly runFraction: RunFraction;
  /** Time in which the load is beyond the capacity [s]. */
  readonly shortTime: Time;
}

/** Shape of {@link WeatherBin}. */
export const weatherBinShape: Shape<WeatherBin> = { outdoor: 'temperature', time: 'time' };

/** Shape of {@link BinRunInput}. */
export const binRunInputShape: Shape<BinRunInput> = { signature: energySignatureShape, bins: { list: weatherBinShape }, capacity: 'power' };

/** Shape of {@link BinRun}. */
export const binRunShape: Shape<BinRun> = {
  capacityBalancePoint: 'temperature',
  bins: { list: /* @__PURE__ */ joinedShape(weatherBinShape, { load: 'power', runFraction: 'run fraction', unmet: 'power' }) },
  time: 'time',
  energy: 'energy',
  metEnergy: 'energy',
  unmetEnergy: 'energy',
  coveredShare: 'fraction',
  runTime: 'time',
  runFraction: 'run fraction',
  shortTime: 'time',
};

/**
 * Load of a building and running of a unit over bins of outdoor temperature.
 *
 * The way to auxiliary heat: unlike a closed formula it sees the cold end of the weather as it is. A bin remembers nothing, so a building
 * that stores heat through a cold night is not in it; use hours where that matters.
 *
 * @param input - signature, bins [degC, s], capacity [W]
 * @returns load and running bin by bin, and their sums [J, s]
 * @throws InputError when a number is impossible or no bin holds any time
 * @remarks
 * Run fraction of a bin = min(1, load/capacity), unmet = max(0, load − capacity). With the bins of EN 14825 the hours at full load come out as the
 * legal 2066, 1336 and 2465 (`eu813of2013`).
 *
 * Invariants: met + unmet = energy; splitting a bin changes nothing; more capacity covers more, with falling returns.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, kilowatts } = await import('../units/index.js');
 * const { energySignature } = await import('./signature.js');
 * const house = { designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21), balancePoint: celsius(16) };
 * const signature = energySignature({ mode: 'heating', form: 'anchored at design', ...house });
 * const january = [[-20, 12], [-15, 40], [-10, 96], [-5, 168], [0, 214], [5, 150], [10, 64]] as const;
 * const bins = january.map(([outdoor, time]) => ({ outdoor: celsius(outdoor), time: hours(time) }));
 * expect(binRun({ signature, bins, capacity: kilowatts(9) }).runFraction).toBeCloseTo(0.718407, 6);
 * ```
 */
export function binRun({ signature, bins, capacity }: BinRunInput): BinRun {
  demandSignature(signature);
  demandCount('bins', bins, 1, 10_000);
  demand('capacity', 'power', capacity, LOAD);
  const parts = bins.map((bin, index): BinRunPart => {
    const argument = `bins.${String(index)}`;
    demandObject(argument, bin);
    demand(`${argument}.outdoor`, 'temperature', bin.outdoor, OUTDOOR);
    demand(`${argument}.time`, 'time', bin.time, { atLeast: 0, atMost: 1e9 });
    const load = loadAt(signature, bin.outdoor);
    return {
      outdoor: bin.outdoor,
      time: bin.time,
      load,
      runFraction: Math.min(1, load / capacity) as RunFraction,
      unmet: Math.max(0, load - capacity) as Power,
    };
  });
  const over = (of: (part: BinRunPart) => number): number => parts.reduce((sum, part) => sum + part.time * of(part), 0);
  const time = over(() => 1);
  demand('bins.time', 'time', time, { above: 0 }, 'all bins together hold no time');
  const energy = over(({ load }) => load);
  const unmetEnergy = over(({ unmet }) => unmet);
  const runTime = over(({ runFraction }) => runFraction);
  return {
    capacityBalancePoint: capacityBalancePoint(signature, capacity),
    bins: parts,
    time: time as Time,
    energy: energy as Energy,
    metEnergy: (energy - unmetEnergy) as Energy,
    unmetEnergy: unmetEnergy as Energy,
    coveredShare: (unmetEnergy === 0 ? 1 : 1 - unmetEnergy / energy) as Fraction,
    runTime: runTime as Time,
    // Sums of a unit that never stops may round apart.
    runFraction: Math.min(1, runTime / time) as RunFraction,
    shortTime: over(({ unmet }) => (unmet > 0 ? 1 : 0)) as Time,
  };
}
