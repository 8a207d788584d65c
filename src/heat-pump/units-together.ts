import { demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Conductance, ElectricPower, Power, Ratio, Temperature } from '../units/index.js';
import type { EnteringRange, PerformanceMap } from './performance-map.js';
import { type StagedUnit, stagedUnit, type UnitLevel, type UnitModel, unitOf } from './staged-unit.js';
import type { UnitState } from './unit-state.js';

/** How several units share one load. */
export type LoadSharing = 'in order' | 'evenly';

/** What {@link unitsTogether} needs. */
export interface UnitsTogetherInput {
  /** Units of one mode on one loop, 2 to 20, the first to start first; equal or not. */
  readonly units: readonly (StagedUnit | PerformanceMap)[];
  /** Each starts when those before it run at their highest level, or all go from level to level together. */
  readonly sharing: LoadSharing;
}

/** A map as the unit of one level that it is. */
export function asStaged(unit: StagedUnit | PerformanceMap): StagedUnit {
  return 'levels' in unit ? unit : stagedUnit({ levels: [unit], between: 'stages' });
}

/**
 * Several units on one loop that share one load, as one unit of several levels.
 *
 * All see the same entering fluid. In order, the levels of the second unit stand on the whole output of the first, and so on; evenly, a level of all is
 * the sum of that level of each, so each carries a part of the load in proportion to what it gives. What the units meet one by one, and their
 * flow, {@link unitsOnLoop} tells.
 *
 * @param input - units, and how they share
 * @returns the units as one, for {@link StagedUnit.at} or a simulation
 * @throws InputError when there are fewer than two units, they are of two modes, have no entering temperature in common, or, evenly, differ in number or kind
 * of levels or in their loss by cycling
 * @remarks
 * Invariants: capacity, electric input and ground heat at every level are the sums of the units'; equal units evenly are one unit of as many times the output;
 * the state at any load is the sum of the states of the units.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, ratio } = await import('../units/index.js');
 * const { performanceMap } = await import('./performance-map.js');
 * const unit = (capacity: number) => performanceMap({ // invented
 *   mode: 'heating',
 *   points: [-5, 5].map((entering) => ({ enteringFluid: celsius(entering), capacity: kilowatts(capacity), cop: ratio(4) })),
 * });
 * const together = unitsTogether({ units: [unit(10), unit(6)], sharing: 'in order' });
 * const { levelInUse, levelShare, groundHeat } = together.at(celsius(0), kilowatts(13));
 * expect([levelInUse, levelShare]).toEqual([1, 0.5]);
 * expect(kilowatts.of(groundHeat)).toBeCloseTo(9.75, 12);
 * ```
 */
export function unitsTogether({ units, sharing }: UnitsTogetherInput): StagedUnit {
  demandChoice('sharing', sharing, ['in order', 'evenly']);
  demandCount('units', units, 2, 20);
  const all = units.map((unit, index) => {
    demandObject(`units.${String(index)}`, unit);
    return asStaged(unit);
  });
  const { mode } = all[0] ?? { mode: undefined };
  all.forEach((unit, index) => {
    if (unit.mode === mode) return;
    throw unlike(`units.${String(index)}.mode`, `${String(mode)}, as the first`);
  });
  const together = unitOf(sharing === 'in order' ? inOrder(all) : evenly(all));
  const own = all.flatMap(({ findings }) => findings);
  return { ...together, findings: [...own, ...together.findings.filter(({ code }) => code === 'level-ranges-differ')] };
}

function inOrder(units: readonly StagedUnit[]): readonly UnitLevel[] {
  return units.flatMap(({ levels }, index) => {
    const below = units.slice(0, index).map(topOf);
    return levels.map((level) => ({ ...level, model: sumOf([...below, level.model]) }));
  });
}

const topOf = ({ levels }: StagedUnit): UnitModel => {
  const top = levels.at(-1);
  if (top === undefined) throw new Error('a unit has a level');
  return top.model;
};

function evenly(units: readonly StagedUnit[]): readonly UnitLevel[] {
  const [first] = units;
  if (first === undefined) return [];
  return first.levels.map((level, index) => {
    const alike = units.map((unit, k) => {
      const other = unit.levels[index];
      if (other === undefined || unit.levels.length !== first.levels.length) {
        throw unlike(`units.${String(k)}.levels`, `${String(first.levels.length)} levels, as the first, where all share evenly`);
      }
      if (other.reachedBy !== level.reachedBy || other.cyclingLoss !== level.cyclingLoss) {
        throw unlike(`units.${String(k)}.levels.${String(index)}`, 'reached as the level of the first, with the same loss by cycling');
      }
      return other.model;
    });
    return { ...level, model: sumOf(alike) };
  });
}

/** Models side by side on one entering fluid. */
function sumOf(models: readonly UnitModel[]): UnitModel {
  const [first] = models;
  if (first !== undefined && models.length === 1) return first;
  const common = (range: 'rated' | 'usable'): EnteringRange => ({
    lowest: Math.max(...models.map((model) => model[range].lowest)) as Temperature,
    highest: Math.min(...models.map((model) => model[range].highest)) as Temperature,
  });
  return {
    mode: first?.mode ?? 'heating',
    rated: common('rated'),
    usable: common('usable'),
    continuedAt: (enteringFluid, supplyTemperature) => {
      const states = models.map(({ continuedAt }) => continuedAt(enteringFluid, supplyTemperature));
      const sum = (of: (state: UnitState) => number): number => states.reduce((total, state) => total + of(state), 0);
      const capacity = sum((state) => state.capacity);
      const power = sum((state) => state.power);
      return {
        enteringFluid,
        capacity: capacity as Power,
        power: power as ElectricPower,
        cop: (capacity / power) as Ratio,
        groundHeat: sum((state) => state.groundHeat) as Power,
        capacitySlope: sum((state) => state.capacitySlope) as Conductance,
        powerSlope: sum((state) => state.powerSlope) as Conductance,
        groundHeatSlope: sum((state) => state.groundHeatSlope) as Conductance,
      };
    },
  };
}

const unlike = (argument: string, allowed: string): InputError => new InputError({ code: 'impossible', argument, value: undefined, allowed });
