import { demand } from '../errors/index.js';
import type { Energy, Power, RunFraction, Time } from '../units/index.js';
import { LOAD } from './checks.js';
import { demandPowers, demandSeries, type PowerSeries, powerAt } from './power-series.js';

/** What {@link hotWaterPriority} needs. */
export interface HotWaterPriorityInput {
  /** Space heating wanted in each step, 1 to 1e6 of them, 0 or more; of a house that is cooled, the heating alone [W]. */
  readonly spaceLoads: Float64Array | readonly Power[];
  /** Hot water wanted in each step, losses included, as many as there are of space heating [W]. */
  readonly hotWaterLoads: Float64Array | readonly Power[];
  /** Length of a step, 1 s to a day [s]. */
  readonly step: Time;
  /** What the unit gives to the house at its supply temperature, above 0: one for all steps or one for each [W]. */
  readonly spaceCapacity: PowerSeries;
  /** What the unit gives to hot water at the hotter supply temperature, likewise [W]. */
  readonly hotWaterCapacity: PowerSeries;
}

/** One of the two duties over all steps. */
export interface UnitDuty {
  /** Share of each step that the unit runs on this duty [1]. */
  readonly shares: Float64Array;
  /** What the unit gives in each step, on the mean [W]. */
  readonly met: Float64Array;
  /** What auxiliary heat has to give in each step: the load less what the unit gives [W]. */
  readonly auxiliary: Float64Array;
  /** Heat wanted over all steps [J]. */
  readonly energy: Energy;
  /** Heat of the unit over all steps [J]. */
  readonly metEnergy: Energy;
  /** Auxiliary heat over all steps [J]. */
  readonly unmetEnergy: Energy;
  /** Time that the unit runs on this duty [s]. */
  readonly runTime: Time;
}

/** A unit that makes hot water first and heats the house with what time is left. */
export interface HotWaterPriority {
  /** Hot water, which goes first. */
  readonly hotWaterDuty: UnitDuty;
  /** Space heating, in the time that is left. */
  readonly spaceDuty: UnitDuty;
  /** What the unit could give to the house in each step after hot water, on the mean [W]. */
  readonly capacityLeft: Float64Array;
  /** Time that the unit runs on either duty, its full-load hours with hot water [s]. */
  readonly runTime: Time;
  /** That time over the time of all steps. */
  readonly runFraction: RunFraction;
  /** Space heating that falls to auxiliary heat only because the unit was busy with hot water [J]. */
  readonly displacedEnergy: Energy;
}

/**
 * What a unit is asked for by a house and its hot water, step by step, hot water first.
 *
 * The unit does one thing at a time: for a share of the step it runs hot, for hot water; in the rest it heats the house, as far as it is able.
 * Nothing is carried from step to step, neither by the tank nor by the house, so that an hour shorter of capacity than a day is shows as auxiliary heat;
 * spread the loads by the hours in which the tank is charged.
 *
 * @param input - loads and capacities of both duties [W], length of a step [s]
 * @returns shares of time, heat of the unit and auxiliary heat of each step, and their sums
 * @throws InputError when a number is impossible, or there are not as many loads of one kind as of the other
 * @remarks
 * Share for hot water x = min(1, Lw/Cw), capacity left (1 − x) Cs, space heating met min(Ls, (1 − x) Cs). The two duties differ in COP and in what they take
 * from the ground, so that each share is to be evaluated at its own supply temperature.
 *
 * Invariants: met + auxiliary = load in each step and duty; shares of a step add up to 1 at most; without hot water it is the plain run
 * fraction; more capacity never leaves more to auxiliary heat.
 * @example
 * ```ts @import.meta.vitest
 * const { hours, kilowatts, kilowattHours, watts } = await import('../units/index.js');
 * const { spaceDuty, hotWaterDuty, capacityLeft } = hotWaterPriority({
 *   spaceLoads: [kilowatts(7), kilowatts(2)], hotWaterLoads: [kilowatts(2), watts(0)], step: hours(1),
 *   spaceCapacity: kilowatts(8), hotWaterCapacity: kilowatts(6),
 * });
 * expect(hotWaterDuty.shares[0]).toBeCloseTo(1 / 3, 12);
 * expect(capacityLeft[0]).toBeCloseTo(16_000 / 3, 9);
 * expect(kilowattHours.of(spaceDuty.unmetEnergy)).toBeCloseTo(7 - 16 / 3, 12);
 * ```
 */
export function hotWaterPriority(input: HotWaterPriorityInput): HotWaterPriority {
  const { spaceLoads, hotWaterLoads, step, spaceCapacity, hotWaterCapacity } = input;
  demandSeries('spaceLoads', spaceLoads, { atLeast: 0, atMost: LOAD.atMost });
  const steps = spaceLoads.length;
  demandSeries('hotWaterLoads', hotWaterLoads, { atLeast: 0, atMost: LOAD.atMost }, steps);
  demand('step', 'time', step, { atLeast: 1, atMost: 86_400 }, 'seconds; an hour is 3600');
  demandPowers('spaceCapacity', spaceCapacity, LOAD, steps);
  demandPowers('hotWaterCapacity', hotWaterCapacity, LOAD, steps);
  const [space, water] = [emptyDuty(steps), emptyDuty(steps)];
  const capacityLeft = new Float64Array(steps);
  let displaced = 0;
  for (let index = 0; index < steps; index += 1) {
    const [wanted, heating] = [powerAt(hotWaterLoads, index), powerAt(spaceLoads, index)];
    const [able, house] = [powerAt(hotWaterCapacity, index), powerAt(spaceCapacity, index)];
    const busy = Math.min(1, wanted / able);
    const left = (1 - busy) * house;
    const met = Math.min(heating, left);
    capacityLeft[index] = left;
    fill(water, index, wanted, Math.min(wanted, able), busy);
    // Where all that is left is used, the share is what is left: dividing again could round beyond it.
    fill(space, index, heating, met, heating < left ? Math.min(1 - busy, heating / house) : 1 - busy);
    displaced += Math.min(heating, house) - met;
  }
  const [spaceDuty, hotWaterDuty] = [dutyOf(space, step), dutyOf(water, step)];
  const runTime = spaceDuty.runTime + hotWaterDuty.runTime;
  return {
    hotWaterDuty,
    spaceDuty,
    capacityLeft,
    runTime: runTime as Time,
    // A unit that never stops may round apart.
    runFraction: Math.min(1, runTime / (steps * step)) as RunFraction,
    displacedEnergy: (displaced * step) as Energy,
  };
}

type Arrays = Pick<UnitDuty, 'shares' | 'met' | 'auxiliary'>;

const emptyDuty = (steps: number): Arrays => ({
  shares: new Float64Array(steps),
  met: new Float64Array(steps),
  auxiliary: new Float64Array(steps),
});

function fill({ shares, met, auxiliary }: Arrays, index: number, load: number, given: number, share: number): void {
  shares[index] = share;
  met[index] = given;
  auxiliary[index] = load - given;
}

function dutyOf(arrays: Arrays, step: Time): UnitDuty {
  const over = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) * step;
  const [metEnergy, unmetEnergy] = [over(arrays.met), over(arrays.auxiliary)];
  return {
    ...arrays,
    energy: (metEnergy + unmetEnergy) as Energy,
    metEnergy: metEnergy as Energy,
    unmetEnergy: unmetEnergy as Energy,
    runTime: over(arrays.shares) as Time,
  };
}
