import { InputError } from '../errors/index.js';
import type { Conductance, ElectricPower, Power, Ratio, Temperature } from '../units/index.js';
import type { MonotoneCubic } from './monotone-cubic.js';
import type { Rating } from './rating-point.js';
import type { UnitState } from './unit-state.js';

/** How far beyond the rating points the map answers [K]. */
export const EXTRAPOLATED = 2;

/** Within how much more the continuation levels off [K]. */
export const LEVELLING = 1;

/** Capacity and electric input over the entering fluid. */
export interface Curves {
  readonly mode: 'heating' | 'cooling';
  readonly capacity: MonotoneCubic;
  readonly power: MonotoneCubic;
}

/** The unit at a place of its curves; `fading` is how fast that place still moves with the entering fluid. */
export function stateOf({ mode, capacity, power }: Curves, enteringFluid: number, place: number = enteringFluid, fading = 1): UnitState {
  const heat = capacity.at(place);
  const electricity = power.at(place);
  return unitState(
    mode,
    enteringFluid,
    { value: heat.value, slope: fading * heat.slope },
    { value: electricity.value, slope: fading * electricity.slope },
  );
}

/** All that follows from capacity and electric input with their slopes; COP and ground heat are made here, so that the balance holds. */
export function unitState(mode: 'heating' | 'cooling', enteringFluid: number, heat: Sloped, electricity: Sloped): UnitState {
  const sign = mode === 'heating' ? -1 : 1;
  return {
    enteringFluid: enteringFluid as Temperature,
    capacity: heat.value as Power,
    power: electricity.value as ElectricPower,
    cop: (heat.value / electricity.value) as Ratio,
    groundHeat: (heat.value + sign * electricity.value) as Power,
    capacitySlope: heat.slope as Conductance,
    powerSlope: electricity.slope as Conductance,
    groundHeatSlope: (heat.slope + sign * electricity.slope) as Conductance,
  };
}

interface Sloped {
  readonly value: number;
  readonly slope: number;
}

/** Refuses points so unlike that the curves between or beside them would leave what a unit can do. */
export function demandBelievable(list: string, curves: Curves, ratings: readonly Rating[]): void {
  const refuse = ({ index, capacity }: Rating, allowed: string): never => {
    throw new InputError({
      code: 'impossible',
      argument: `${list}.${String(index)}.capacity`,
      value: { kind: 'power', value: capacity },
      allowed,
      hint: 'capacity and power may be interchanged, in different units, or of different units',
    });
  };
  const farthest = EXTRAPOLATED + LEVELLING;
  ratings.forEach((rating, k) => {
    const next = ratings[k + 1] ?? rating;
    const above = Math.min(rating.capacity, next.capacity) > Math.max(rating.power, next.power);
    if (curves.mode === 'heating' && !above) refuse(next, 'more than the electric power here and at the neighbouring point');
    // Between the points all is above zero by now; the lines led on beyond the two ends have yet to stay there.
    const beyond = [...(k === 0 ? [-farthest] : []), ...(next === rating ? [farthest] : [])].map((far) =>
      stateOf(curves, rating.enteringFluid + far),
    );
    if (beyond.some(({ capacity, power, groundHeat: ground }) => !(Math.min(capacity, power, ground) > 0))) {
      refuse(rating, 'a change from point to point that does not lead to nothing within 3 K');
    }
  });
}
