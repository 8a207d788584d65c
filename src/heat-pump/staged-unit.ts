import { demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Fraction, Power, Ratio, Temperature } from '../units/index.js';
import type { EnteringRange, PerformanceMap } from './performance-map.js';
import { levelFindings } from './staged-findings.js';
import { type StagedState, stagedState } from './staged-state.js';
import type { UnitState } from './unit-state.js';

/** A unit in one mode as far as running it asks; a `PerformanceMap` is one, and a map over the load side may be. */
export interface UnitModel extends Pick<PerformanceMap, 'mode' | 'rated' | 'usable'> {
  /** The unit at any entering fluid and, where it tells them apart, at any temperature supplied to the load [degC]. */
  readonly continuedAt: (enteringFluid: Temperature, supplyTemperature: Temperature) => UnitState;
}

/** COP of a unit that starts and stops over its COP while it runs, for the share of its capacity that is wanted: at least that share, at most 1. */
export type CyclingLoss = (loadRatio: Fraction) => Ratio;

/** One step of a unit's output. */
export interface UnitLevel {
  /** Everything that runs at this level. */
  readonly model: UnitModel;
  /**
   * How loads between the level below and this one are met: what joins starts and stops, the unit switches between the two levels, or its speed
   * lies between theirs.
   */
  readonly reachedBy: 'starting' | 'switching' | 'speed';
  /** Loss of what starts and stops; none when left out. */
  readonly cyclingLoss?: CyclingLoss;
}

/** What {@link stagedUnit} needs. */
export interface StagedUnitInput {
  /** The unit at each of its stages or speeds, the least output first, 1 to 20. */
  readonly levels: readonly UnitModel[];
  /** Whether it switches between levels, or runs at any speed between them. */
  readonly between: 'stages' | 'speeds';
  /** Loss by starting and stopping below the lowest level; none when left out. */
  readonly cyclingLoss?: CyclingLoss;
}

/** A unit of several levels in one mode. */
export interface StagedUnit {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** The levels, the least output first. */
  readonly levels: readonly UnitLevel[];
  /** Entering fluid that all levels are rated for. */
  readonly rated: EnteringRange;
  /** Entering fluid at which all levels answer. */
  readonly usable: EnteringRange;
  /** The unit at a load of 0 to 1e9 W; the temperature supplied is for models that ask for it, and may be left out for others. */
  readonly at: (enteringFluid: Temperature, load: Power, supplyTemperature?: Temperature) => StagedState;
  /** What to look at in the levels. */
  readonly findings: readonly Finding[];
}

/**
 * A unit of two or more stages, or of variable speed, in one mode.
 *
 * Below its lowest level it starts and stops; between two levels it is a mix of both, in proportion to the load; above the highest, auxiliary heat fills
 * the rest. A unit of variable speed is so a straight line between its rated speeds: {@link speedMixing} says how much electricity that can be too much.
 *
 * @param input - levels, what lies between them, and loss by cycling
 * @returns the unit at any load and entering fluid
 * @throws InputError when there are no levels, they are of two modes, have no entering temperature in common, or do not rise in capacity
 * @remarks
 * Share of the upper level = (load − lower capacity)/(upper − lower capacity); electric input in that proportion (`common practice`). The heat fraction is
 * the ground heat over that at full speed: the share of running time would say 1 for a unit that idles at low speed.
 * The electricity lost by starting is in `power` and again in `cyclingPower`: it reaches neither house nor ground, whose heat is that of steady running.
 *
 * Invariants: heat = ground + electricity − loss by starting; load met + auxiliary = load; fractions from 0 to 1; no jump at a level.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, electricKilowatts, kilowatts, ratio } = await import('../units/index.js');
 * const { performanceMap } = await import('./performance-map.js');
 * const level = (capacity: number, cop: number) => performanceMap({ // invented
 *   mode: 'heating',
 *   points: [-5, 5].map((entering) => ({ enteringFluid: celsius(entering), capacity: kilowatts(capacity), cop: ratio(cop) })),
 * });
 * const unit = stagedUnit({ levels: [level(6, 3.9), level(9, 3.5)], between: 'stages' });
 * const { power, heatFraction, runFraction } = unit.at(celsius(0), kilowatts(7.5));
 * expect(electricKilowatts.of(power)).toBeCloseTo(2.054945, 6);
 * expect(heatFraction).toBeCloseTo(0.847009, 6);
 * expect(runFraction).toBe(1);
 * ```
 */
export function stagedUnit({ levels, between, cyclingLoss }: StagedUnitInput): StagedUnit {
  demandChoice('between', between, ['stages', 'speeds']);
  demandCount('levels', levels, 1, 20);
  if (cyclingLoss !== undefined) demandFunction('cyclingLoss', cyclingLoss);
  const upper = between === 'stages' ? 'switching' : 'speed';
  return unitOf(
    levels.map((model, index): UnitLevel => {
      if (index > 0) return { model, reachedBy: upper };
      return { model, reachedBy: 'starting', ...(cyclingLoss && { cyclingLoss }) };
    }),
  );
}

/** A unit from its levels, which are refused where they are none. */
export function unitOf(levels: readonly UnitLevel[]): StagedUnit {
  const models = levels.map(({ model }) => model);
  models.forEach((model, index) => {
    demandModel(`levels.${String(index)}`, model);
  });
  const mode = models[0]?.mode ?? 'heating';
  const common = (range: 'rated' | 'usable'): EnteringRange => ({
    lowest: Math.max(...models.map((model) => model[range].lowest)) as Temperature,
    highest: Math.min(...models.map((model) => model[range].highest)) as Temperature,
  });
  const rated = common('rated');
  const usable = common('usable');
  demandRising(models, usable);
  return {
    mode,
    levels,
    rated,
    usable,
    at: (enteringFluid, load, supplyTemperature) => stagedState({ mode, levels, usable }, enteringFluid, load, supplyTemperature),
    findings: levelFindings(models, rated),
  };
}

/** Where levels over the load side are compared [degC]. */
const COMPARED = 35 as Temperature;
/** How finely capacities are compared [K]. */
const STRIDE = 0.25;

function demandModel(argument: string, model: UnitModel): void {
  demandObject(argument, model);
  demandChoice(`${argument}.mode`, model.mode, ['heating', 'cooling']);
  demandObject(`${argument}.rated`, model.rated);
  demandObject(`${argument}.usable`, model.usable);
  demandFunction(`${argument}.continuedAt`, model.continuedAt);
}

/** Refuses what cannot be called. */
export function demandFunction(argument: string, given: unknown): void {
  if (typeof given === 'function') return;
  throw new InputError({ code: given === undefined ? 'missing' : 'wrong-type', argument, value: String(given), allowed: 'a function' });
}

/** Refuses levels of two modes, and levels of which a higher one gives no more than the one below it. */
function demandRising(models: readonly UnitModel[], { lowest, highest }: EnteringRange): void {
  const refuse = (index: number, field: string, allowed: string, hint: string): never => {
    throw new InputError({ code: 'impossible', argument: `levels.${String(index)}.${field}`, value: undefined, allowed, hint });
  };
  models.forEach(({ mode, continuedAt, rated }, index) => {
    const below = models[index - 1];
    if (below === undefined) return;
    if (mode !== below.mode) refuse(index, 'mode', `${below.mode}, as the level below`, 'heating and cooling are two units');
    if (lowest >= highest) refuse(index, 'rated', 'rating points at the entering temperatures of the other levels', 'they have none in common');
    const strides = Math.ceil((highest - lowest) / STRIDE);
    const grid = Array.from({ length: strides + 1 }, (_, k) => lowest + (k * (highest - lowest)) / strides);
    for (const place of [...grid, rated.lowest, rated.highest].filter((each) => each >= lowest && each <= highest)) {
      const { capacity } = continuedAt(place as Temperature, COMPARED);
      const least = below.continuedAt(place as Temperature, COMPARED).capacity;
      if (capacity > least) continue;
      const allowed = `above ${String(least)} W at ${String(place)} degC, the capacity of the level below`;
      throw new InputError({
        code: 'impossible',
        argument: `levels.${String(index)}.model.capacity`,
        value: { kind: 'power', value: capacity },
        allowed,
        hint: 'levels go from the least output to the most',
      });
    }
  });
}
