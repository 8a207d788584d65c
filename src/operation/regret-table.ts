import { demand, demandCount } from '../errors/index.js';
import type { ElectricEnergy, Energy, PipeLength, Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { demandSimulation } from './demand-simulation.js';
import { bindingLimit, type BindingLimit, demandLimits, type FluidLimits } from './fluid-limits.js';
import { type Books, booksOf } from './books.js';
import type { ModeLedger } from './ledger.js';
import { LengthTrials } from './length-trials.js';
import { plantOf } from './plant.js';
import type { Simulation, SimulationInput } from './simulation.js';

/** What {@link regretTable} needs: a loop, and how much shorter and longer it might have been. */
export interface RegretTableInput extends Omit<SimulationInput, 'withCourse'> {
  /** What the fluid must keep. */
  readonly limits: FluidLimits;
  /** The loop itself, where it was simulated already: its row is read off that. */
  readonly simulation?: Simulation;
  /** Lengths over that of the loop, 1 to 50 of them, each 0.1 to 10; from 0.7 to 1.3 when left out [1]. */
  readonly lengthRatios?: readonly Ratio[];
}

/** What another length would have brought. */
export interface RegretRow {
  /** Length over that of the loop [1]. */
  readonly lengthRatio: Ratio;
  /** Pipe that exchanges heat [m]. */
  readonly pipe: PipeLength;
  /** Coldest fluid that would enter the heat pump in heating, in the year that repeats [degC]. */
  readonly coldestFluid?: Temperature;
  /** Warmest fluid that would enter it in cooling [degC]. */
  readonly warmestFluid?: Temperature;
  /** How far inside its limits the fluid would stay; negative beyond one [K]. */
  readonly limitMargin: TemperatureDifference;
  /** Electricity of unit and circulator over the year [J]. */
  readonly usedElectricity: ElectricEnergy;
  /** Load that the unit would not meet [J]. */
  readonly unmetEnergy: Energy;
}

/** Shape of {@link RegretRow}. */
export const regretRowShape: Shape<RegretRow> = {
  lengthRatio: 'ratio',
  pipe: 'pipe length',
  coldestFluid: { optional: 'temperature' },
  warmestFluid: { optional: 'temperature' },
  limitMargin: 'temperature difference',
  usedElectricity: 'electric energy',
  unmetEnergy: 'energy',
};

const USUAL: readonly Ratio[] = /* @__PURE__ */ [0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3].map((ratio) => ratio as Ratio);

/**
 * How much a mistake in the length would cost: the same loop with less and with more pipe, trenches and circuits unchanged.
 *
 * @param input - see {@link RegretTableInput}
 * @returns one row for each length; lengths so short that the fluid leaves all bounds are left out, and so is the first year where it is clear of binding at
 * the first length
 * @throws InputError for a value out of its range
 * @remarks Each row is a {@link simulate} of its own. Invariant tested: more pipe never takes the fluid nearer to a limit.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } = await import('../units/index.js');
 * const wave = Array.from({ length: 8760 }, (_, step) => Math.cos((2 * Math.PI * (step / 24 - 20)) / 365));
 * const rows = regretTable({
 *   step: hours(1),
 *   duty: { from: 'ground', loads: wave.map((each) => 5000 * Math.max(0, each)) },
 *   ground: wave.map((each) => 10 - 5 * each),
 *   response: { terms: [{ timeConstant: hours(2000), rise: pipeMetreKelvinPerWatt(0.6) }], steadyRise: pipeMetreKelvinPerWatt(0.6) },
 *   pipeLength: pipeMetres(500),
 *   resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
 *   heatCapacityRate: wattsPerKelvin(2000),
 *   limits: { lowestEntering: celsius(1.5) },
 * });
 * expect(rows.map(({ limitMargin }) => limitMargin >= 0)).toEqual([false, false, false, true, true, true, true]);
 * ```
 */
export function regretTable({ limits, lengthRatios = USUAL, simulation, ...loop }: RegretTableInput): readonly RegretRow[] {
  demandLimits(limits);
  demandCount('lengthRatios', lengthRatios, 1, 50);
  lengthRatios.forEach((ratio, index) => {
    demand(`lengthRatios.${String(index)}`, 'ratio', ratio, { atLeast: 0.1, atMost: 10 });
  });
  demandSimulation(loop);
  const { duty, step } = loop;
  const trials = new LengthTrials(loop, limits, plantOf(loop));
  return lengthRatios.flatMap((lengthRatio): RegretRow[] => {
    const pipe = (lengthRatio * loop.pipeLength) as PipeLength;
    if (simulation !== undefined && lengthRatio === 1) {
      return [{ lengthRatio, pipe, ...figures(simulation.lastYear, bindingLimit(simulation, limits)) }];
    }
    const trial = trials.follow(pipe);
    return trial === undefined ? [] : [{ lengthRatio, pipe, ...figures(booksOf(duty, trials.course, step)(0, duty.loads.length), trial.binding) }];
  });
}

function figures({ heating, cooling, hotWater }: Books, binding: BindingLimit | undefined): Omit<RegretRow, 'lengthRatio' | 'pipe'> {
  const used = (of: ModeLedger): number => of.unitElectricity + of.circulatorElectricity;
  return {
    ...(heating.coldestFluid === undefined ? {} : { coldestFluid: heating.coldestFluid }),
    ...(cooling.warmestFluid === undefined ? {} : { warmestFluid: cooling.warmestFluid }),
    limitMargin: binding?.limitMargin ?? (0 as TemperatureDifference),
    usedElectricity: (used(heating) + used(cooling) + (hotWater === undefined ? 0 : used(hotWater))) as ElectricEnergy,
    unmetEnergy: (heating.unmetEnergy + cooling.unmetEnergy + (hotWater?.unmetEnergy ?? 0)) as Energy,
  };
}
