import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import type { ElectricPower, Flow, Power, RunFraction, Shape, Temperature } from '../units/index.js';
import type { PerformanceMap } from './performance-map.js';
import { type StagedState, stagedStateShape } from './staged-state.js';
import type { StagedUnit } from './staged-unit.js';
import { asStaged, type LoadSharing, unitsTogether } from './units-together.js';

/** One unit of a loop. */
export interface UnitOnLoop {
  /** The unit in the mode it is in. */
  readonly unit: StagedUnit | PerformanceMap;
  /** Flow on the loop side through it while it runs, 1e-6 to 1 [m3/s]. */
  readonly sourceFlow: Flow;
  /** Load of its own, 0 to 1e9; left out where all share one load [W]. */
  readonly load?: Power;
}

/** What {@link unitsOnLoop} needs. */
export interface UnitsOnLoopInput {
  /** Fluid that enters all of them [degC]. */
  readonly enteringFluid: Temperature;
  /** Temperature supplied to the load, for units that ask for it, −50 to 150 [degC]. */
  readonly supplyTemperature?: Temperature;
  /** The units, 1 to 20; of one mode where they share a load. */
  readonly units: readonly UnitOnLoop[];
  /** The load that they share, 0 to 1e9; left out where each has its own [W]. */
  readonly load?: Power;
  /** How they share it; needed with it. */
  readonly sharing?: LoadSharing;
}

/** Several units on one loop at one entering fluid. */
export interface UnitsOnLoop {
  /** The units one by one, in the order given. */
  readonly byUnit: readonly StagedState[];
  /** Load that they meet, heating and cooling alike above 0 [W]. */
  readonly metLoad: Power;
  /** Load that they do not meet [W]. */
  readonly unmetLoad: Power;
  /** Electric input [W]. */
  readonly power: ElectricPower;
  /** Heat taken from the ground by those that heat less heat given to it by those that cool, the mean [W]. */
  readonly netGroundHeat: Power;
  /** Share of the time that any of them runs, if they run together as far as they can [1]. */
  readonly leastRunFraction: RunFraction;
  /** The same, if they run one after the other as far as they can [1]. */
  readonly mostRunFraction: RunFraction;
  /** Flow with all of them running: what one pump for the whole loop moves whenever one runs [m3/s]. */
  readonly flowOfAll: Flow;
  /** Flow of those that run, the mean: with a pump or a valve for each [m3/s]. */
  readonly flowOfRunning: Flow;
}

/** Shape of {@link UnitsOnLoop}. */
export const unitsOnLoopShape: Shape<UnitsOnLoop> = {
  byUnit: { list: stagedStateShape },
  metLoad: 'power',
  unmetLoad: 'power',
  power: 'electric power',
  netGroundHeat: 'power',
  leastRunFraction: 'run fraction',
  mostRunFraction: 'run fraction',
  flowOfAll: 'flow',
  flowOfRunning: 'flow',
};

/**
 * Several heat pumps in parallel on one loop, each with its own load or all with one.
 *
 * With a pump of its own, or a valve that closes with it, a unit that rests moves no fluid: the loop then carries the flow of those that run, and its film
 * and pump electricity follow. A common pump without valves moves the flow of all whenever one runs. When starts of units with their own loads fall
 * together nobody knows, so the running time of the loop has two ends.
 *
 * @param input - units, entering fluid and loads
 * @returns each unit, the sums, running time of the loop and both flows
 * @throws InputError for a value out of its range; `missing` without loads; `impossible` with both kinds of load, or what {@link unitsTogether} refuses
 * @remarks Invariants: sums are those of the units to 1e-12; net ground heat = heating met − its electricity − cooling met − its electricity, without loss by cycling.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, litresPerSecond, ratio } = await import('../units/index.js');
 * const { performanceMap } = await import('./performance-map.js');
 * const unit = (mode: 'heating' | 'cooling', capacity: number) => performanceMap({ // invented
 *   mode, points: [5, 15].map((entering) => ({ enteringFluid: celsius(entering), capacity: kilowatts(capacity), cop: ratio(4) })),
 * });
 * const loop = unitsOnLoop({
 *   enteringFluid: celsius(10),
 *   units: [
 *     { unit: unit('heating', 8), sourceFlow: litresPerSecond(0.5), load: kilowatts(4) },
 *     { unit: unit('cooling', 6), sourceFlow: litresPerSecond(0.4), load: kilowatts(1.5) },
 *   ],
 * });
 * expect(kilowatts.of(loop.netGroundHeat)).toBeCloseTo(3 - 1.875, 12);
 * expect(litresPerSecond.of(loop.flowOfRunning)).toBeCloseTo(0.35, 12);
 * ```
 */
export function unitsOnLoop({ enteringFluid, supplyTemperature, units, load, sharing }: UnitsOnLoopInput): UnitsOnLoop {
  demandCount('units', units, 1, 20);
  const staged = units.map((each, index) => {
    demandObject(`units.${String(index)}`, each);
    demandObject(`units.${String(index)}.unit`, each.unit);
    demand(`units.${String(index)}.sourceFlow`, 'flow', each.sourceFlow, { atLeast: 1e-6, atMost: 1 });
    return { unit: asStaged(each.unit), load: each.load };
  });
  const loads =
    load === undefined
      ? ownLoads(
          staged.map((each) => each.load),
          sharing,
        )
      : sharedLoads(staged, { enteringFluid, supplyTemperature }, load, sharing);
  const byUnit = staged.map(({ unit }, index) => unit.at(enteringFluid, loads[index] ?? (0 as Power), supplyTemperature));
  const sum = (of: (state: StagedState, index: number) => number): number => byUnit.reduce((total, state, index) => total + of(state, index), 0);
  const flowOf = (index: number): number => units[index]?.sourceFlow ?? 0;
  return {
    byUnit,
    metLoad: sum(({ metLoad }) => metLoad) as Power,
    unmetLoad: sum(({ unmetLoad }) => unmetLoad) as Power,
    power: sum(({ power }) => power) as ElectricPower,
    netGroundHeat: sum(({ groundHeat }, index) => (staged[index]?.unit.mode === 'cooling' ? -groundHeat : groundHeat)) as Power,
    leastRunFraction: Math.max(...byUnit.map(({ runFraction }) => runFraction)) as RunFraction,
    mostRunFraction: Math.min(
      1,
      sum(({ runFraction }) => runFraction),
    ) as RunFraction,
    flowOfAll: sum((_, index) => flowOf(index)) as Flow,
    flowOfRunning: sum(({ runFraction }, index) => runFraction * flowOf(index)) as Flow,
  };
}

function ownLoads(loads: readonly (Power | undefined)[], sharing: LoadSharing | undefined): readonly Power[] {
  if (sharing !== undefined) throw new InputError({ code: 'missing', argument: 'load', value: undefined, allowed: 'the load that the units share' });
  return loads.map((load, index) => {
    if (load !== undefined) return load;
    const argument = `units.${String(index)}.load`;
    throw new InputError({ code: 'missing', argument, value: undefined, allowed: 'the load of this unit, or one load for all' });
  });
}

function sharedLoads(
  units: readonly { readonly unit: StagedUnit; readonly load: Power | undefined }[],
  { enteringFluid, supplyTemperature }: { readonly enteringFluid: Temperature; readonly supplyTemperature: Temperature | undefined },
  load: Power,
  sharing: LoadSharing | undefined,
): readonly Power[] {
  units.forEach((each, index) => {
    if (each.load === undefined) return;
    const value = { kind: 'power', value: each.load } as const;
    throw new InputError({
      code: 'impossible',
      argument: `units.${String(index)}.load`,
      value,
      allowed: 'no load of its own beside the one for all',
    });
  });
  if (sharing === undefined) throw new InputError({ code: 'missing', argument: 'sharing', value: undefined, allowed: '"in order" or "evenly"' });
  demandChoice('sharing', sharing, ['in order', 'evenly']);
  if (units.length === 1) return [load];
  const together = unitsTogether({ units: units.map(({ unit }) => unit), sharing });
  const { levelInUse, levelShare, unmetLoad } = together.at(enteringFluid, load, supplyTemperature);
  const supply = supplyTemperature ?? (Number.NaN as Temperature);
  const capacity = ({ levels }: StagedUnit, level: number): number => levels[level]?.model.continuedAt(enteringFluid, supply).capacity ?? 0;
  if (sharing === 'evenly') {
    const total = (level: number): number => units.reduce((sum, { unit }) => sum + capacity(unit, level), 0);
    const top = total(levelInUse);
    const share = levelInUse === 0 ? Math.min(1, load / top) : levelShare;
    return units.map(({ unit }) => {
      const lower = capacity(unit, levelInUse - 1);
      const full = lower + share * (capacity(unit, levelInUse) - lower);
      return (full + (unmetLoad * capacity(unit, levelInUse)) / top) as Power;
    });
  }
  let left: number = load;
  return units.map(({ unit }, index) => {
    const last = index === units.length - 1;
    const own = last ? left : Math.min(left, capacity(unit, unit.levels.length - 1));
    left -= own;
    return own as Power;
  });
}
