import { demand, demandChoice, InputError } from '../errors/index.js';
import type { ElectricPower, Power, Ratio, Shape } from '../units/index.js';
import { WATT_HOURS_PER_BTU } from './cop.data.js';
import { GREATEST_COP } from './rating-point.js';

/** A rating, and what it is to count of pumps and fan. */
export interface RatingBoundaryInput {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Capacity as rated, 1 to 1e8 [W]. */
  readonly capacity: Power;
  /** Electric input as rated, a fiftieth of the capacity to 1e8 [W]. */
  readonly power: ElectricPower;
  /** Loop circulator that the rating counts, 0 to 1e6; none when left out [W]. */
  readonly sourcePumpRated?: ElectricPower;
  /** Loop circulator to be counted, 0 to 1e6; none when left out [W]. */
  readonly sourcePumpWanted?: ElectricPower;
  /** Fan or pump on the load side that the rating counts, 0 to 1e6; none when left out [W]. */
  readonly loadPumpRated?: ElectricPower;
  /** Fan or pump on the load side to be counted, 0 to 1e6; none when left out [W]. */
  readonly loadPumpWanted?: ElectricPower;
}

/** The rating at the other boundary. */
export interface RatingBoundary {
  /** Capacity [W]. */
  readonly capacity: Power;
  /** Electric input [W]. */
  readonly power: ElectricPower;
  /** Capacity over electric input [1]. */
  readonly cop: Ratio;
  /** The same as US tables tell it, Btu/(W.h) [1]. */
  readonly energyEfficiencyRatio: Ratio;
}

/** Shape of {@link RatingBoundaryInput}. */
export const ratingBoundaryInputShape: Shape<RatingBoundaryInput> = {
  mode: ['heating', 'cooling'],
  capacity: 'power',
  power: 'electric power',
  sourcePumpRated: { optional: 'electric power' },
  sourcePumpWanted: { optional: 'electric power' },
  loadPumpRated: { optional: 'electric power' },
  loadPumpWanted: { optional: 'electric power' },
};

/** Shape of {@link RatingBoundary}. */
export const ratingBoundaryShape: Shape<RatingBoundary> = {
  capacity: 'power',
  power: 'electric power',
  cop: 'ratio',
  energyEfficiencyRatio: 'ratio',
};

/**
 * A rating with the work of pumps and fan taken out or put in, to compare units rated by different rules or to come to what the meter sees.
 *
 * The loop circulator changes the electric input alone. A fan or pump on the load side also ends as heat in the house: it adds to the capacity in heating and
 * takes from it in cooling. For `RatingPoint` leave the loop circulator out and the fan as it really runs in.
 *
 * @param input - rating, what it counts and what it is to count; see {@link RatingBoundaryInput}
 * @returns capacity [W], electric input [W], COP [1] and EER [Btu/(W.h)] there
 * @throws InputError when a number is outside its range, or more is taken out than there is
 * @remarks
 * Exact bookkeeping; `iso13256` for which is counted where, see `RATED_POWER`. Invariants: there and back gives the rating back; counting the same changes nothing;
 * counting more never raises the COP of a unit that is better than a heater.
 * @example
 * ```ts @import.meta.vitest
 * const { electricWatts, kilowatts } = await import('../units/index.js');
 * const rated = { mode: 'heating', capacity: kilowatts(8), power: electricWatts(2350) } as const;
 * const metered = ratingAtBoundary({ ...rated, sourcePumpRated: electricWatts(40), sourcePumpWanted: electricWatts(190) });
 * expect(metered.cop).toBeCloseTo(3.2, 9);
 * const ducted = ratingAtBoundary({ ...rated, loadPumpRated: electricWatts(150), loadPumpWanted: electricWatts(400) });
 * expect(kilowatts.of(ducted.capacity)).toBe(8.25);
 * ```
 */
export function ratingAtBoundary(input: RatingBoundaryInput): RatingBoundary {
  const { mode, capacity, power, sourcePumpRated = 0, sourcePumpWanted = 0, loadPumpRated = 0, loadPumpWanted = 0 } = input;
  demandChoice('mode', mode, ['heating', 'cooling']);
  demand('capacity', 'power', capacity, { atLeast: 1, atMost: 1e8 });
  demand('power', 'electric power', power, { atLeast: capacity / GREATEST_COP, atMost: 1e8 });
  const parts = { sourcePumpRated, sourcePumpWanted, loadPumpRated, loadPumpWanted };
  for (const [name, part] of Object.entries(parts)) demand(name, 'electric power', part, { atLeast: 0, atMost: 1e6 });
  const onLoad = loadPumpWanted - loadPumpRated;
  const heat = capacity + (mode === 'heating' ? onLoad : -onLoad);
  const electricity = power - sourcePumpRated + sourcePumpWanted + onLoad;
  if (!(heat > 0 && electricity >= heat / GREATEST_COP)) {
    throw new InputError({
      code: 'impossible',
      argument: heat > 0 ? 'power' : 'loadPumpWanted',
      value: { kind: 'electric power', value: heat > 0 ? power : loadPumpWanted },
      allowed: 'an electric input and a capacity of which something is left, with a COP of 50 at most',
      hint: 'pumps in watts and the unit in kilowatts may be mixed',
    });
  }
  const cop = heat / electricity;
  return {
    capacity: heat as Power,
    power: electricity as ElectricPower,
    cop: cop as Ratio,
    energyEfficiencyRatio: (cop / WATT_HOURS_PER_BTU) as Ratio,
  };
}
