import { demand, InputError } from '../errors/index.js';
import type { ElectricPower, Fraction, Power, Ratio, RunFraction, Shape, Temperature } from '../units/index.js';
import type { StagedUnit, UnitLevel } from './staged-unit.js';
import type { UnitState } from './unit-state.js';

/** A unit of several levels at a load and an entering fluid; means over the time of the load, unless said otherwise. */
export interface StagedState {
  /** Fluid entering the heat pump [degC]. */
  readonly enteringFluid: Temperature;
  /** Load asked for [W]. */
  readonly load: Power;
  /** Load that the unit meets [W]. */
  readonly metLoad: Power;
  /** Load that it does not meet: auxiliary heat, or cooling missed [W]. */
  readonly unmetLoad: Power;
  /** The highest level in use, from 0. */
  readonly levelInUse: number;
  /** Share of that level while the unit runs; the rest is at the level below. At the lowest level 1 [1]. */
  readonly levelShare: Fraction;
  /** Share of the time that the unit runs, at whatever level; longer by cycling where a loss by it was asked for [1]. */
  readonly runFraction: RunFraction;
  /** Ground heat over that at full output: at the level that draws most from the ground, which is the highest of a usual unit [1]. */
  readonly heatFraction: Fraction;
  /** Electric input, loss by starting included [W]. */
  readonly power: ElectricPower;
  /** The part of it that is lost by starting and stopping, and reaches neither house nor ground [W]. */
  readonly cyclingPower: ElectricPower;
  /** Load met over electric input; absent without a load [1]. */
  readonly cop?: Ratio;
  /** Heat from the ground in heating, to the ground in cooling [W]. */
  readonly groundHeat: Power;
  /** The same, the mean while the unit runs steadily: what the film between pipe and fluid sees [W]. */
  readonly runningHeat: Power;
}

/** Shape of {@link StagedState}. */
export const stagedStateShape: Shape<StagedState> = {
  enteringFluid: 'temperature',
  load: 'power',
  metLoad: 'power',
  unmetLoad: 'power',
  levelInUse: 'count',
  levelShare: 'fraction',
  runFraction: 'run fraction',
  heatFraction: 'fraction',
  power: 'electric power',
  cyclingPower: 'electric power',
  cop: { optional: 'ratio' },
  groundHeat: 'power',
  runningHeat: 'power',
};

/** A unit at a load; the levels checked, the rest not. */
export function stagedState(
  { mode, levels, usable }: Pick<StagedUnit, 'mode' | 'levels' | 'usable'>,
  enteringFluid: Temperature,
  load: Power,
  supplyTemperature?: Temperature,
): StagedState {
  demand('enteringFluid', 'temperature', enteringFluid, { atLeast: usable.lowest, atMost: usable.highest }, 'not all levels are rated there');
  demand('load', 'power', load, { atLeast: 0, atMost: 1e9 });
  if (supplyTemperature !== undefined) demand('supplyTemperature', 'temperature', supplyTemperature, { atLeast: -50, atMost: 150 });
  // A model that asks for the temperature supplied refuses one that is no number.
  const states = levels.map(({ model }) => model.continuedAt(enteringFluid, supplyTemperature ?? (Number.NaN as Temperature)));
  const found = states.findIndex(({ capacity }) => load < capacity);
  const levelInUse = found < 0 ? states.length - 1 : found;
  const upper = stateAt(states, levelInUse);
  const lower = levelInUse === 0 ? NOTHING : stateAt(states, levelInUse - 1);
  const share = found < 0 ? 1 : (load - lower.capacity) / (upper.capacity - lower.capacity);
  // What joins at a level does so with the share; below the lowest level that is the unit itself.
  const between = (of: (state: Carried) => number): number => of(lower) + share * (of(upper) - of(lower));
  const steady = between(({ power }) => power);
  const stretch = share < 1 ? 1 / cyclingFactor(levels[levelInUse] ?? {}, share as Fraction) : 1;
  const lost = share * (upper.power - lower.power) * (stretch - 1);
  const metLoad = found < 0 ? upper.capacity : load;
  const ground = metLoad + (mode === 'heating' ? -steady : steady);
  // A loss that all but fills the share, and a sum of levels, may round past 1.
  const runs = levelInUse === 0 ? Math.min(1, share * stretch) : 1;
  return {
    enteringFluid,
    load,
    metLoad,
    unmetLoad: (load - metLoad) as Power,
    levelInUse,
    levelShare: (levelInUse === 0 ? 1 : share) as Fraction,
    runFraction: runs as RunFraction,
    heatFraction: Math.min(1, ground / Math.max(...states.map((state) => state.groundHeat))) as Fraction,
    power: (steady + lost) as ElectricPower,
    cyclingPower: lost as ElectricPower,
    ...(load > 0 ? { cop: (metLoad / (steady + lost)) as Ratio } : {}),
    groundHeat: ground as Power,
    runningHeat: (levelInUse === 0 ? upper.groundHeat : ground) as Power,
  };
}

type Carried = Pick<UnitState, 'capacity' | 'power'>;
const NOTHING: Carried = { capacity: 0 as Power, power: 0 as ElectricPower };

function stateAt(states: readonly UnitState[], index: number): UnitState {
  const state = states[index];
  if (state === undefined) throw new Error('a unit has a level');
  return state;
}

/** A form of the loss with standing electricity grows beyond all bounds over the load where that goes to nothing [1]. */
const LEAST_SHARE = 1e-12;

/**
 * The factor on the COP of what starts and stops to reach a level, refused where it can be none.
 *
 * @param level - the level that is reached
 * @param share - of it that is wanted, 0 to 1
 * @returns 1 where nothing is lost, no loss was given, or less than 1e-12 is wanted, for which nothing starts [1]
 * @throws InputError for a factor below the share, with which the unit would run longer than always, or above 1
 * @example
 * ```ts @import.meta.vitest
 * const { fraction } = await import('../units/index.js');
 * const { partLoadFactor } = await import('./part-load.js');
 * const cyclingLoss = (loadRatio: ReturnType<typeof fraction>) => partLoadFactor({ loadRatio, degradation: fraction(0.25) }).factor;
 * expect(cyclingFactor({ cyclingLoss }, fraction(0.25))).toBe(0.8125);
 * expect(cyclingFactor({}, fraction(0.25))).toBe(1);
 * ```
 */
export function cyclingFactor({ cyclingLoss }: Pick<UnitLevel, 'cyclingLoss'>, share: Fraction): Ratio {
  demand('share', 'fraction', share, { atLeast: 0, atMost: 1 });
  if (cyclingLoss === undefined || share < LEAST_SHARE) return 1 as Ratio;
  const factor = cyclingLoss(share);
  // A unit that only loses by standing may come to its share but for a rounding.
  if (factor >= share * (1 - 1e-12) && factor <= 1) return factor;
  throw new InputError({
    code: Number.isFinite(factor) ? 'out-of-range' : 'not-finite',
    argument: 'cyclingLoss',
    value: { kind: 'ratio', value: factor },
    allowed: `a factor from the share wanted, ${String(share)}, to 1`,
    hint: 'the function returns COP while cycling over COP while running steadily',
  });
}
