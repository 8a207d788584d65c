import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import type { ElectricPower, Power, Ratio, Shape, Temperature } from '../units/index.js';

/** The unit at one entering fluid temperature, as its maker rates it; electric power or COP, whichever the table gives. */
export interface RatingPoint {
  /** Fluid entering the heat pump from the loop, −40 to 60 [degC]. */
  readonly enteringFluid: Temperature;
  /** Heating or cooling capacity, 1 to 1e8 [W]. */
  readonly capacity: Power;
  /** Electric input, compressor and indoor fan or internal pump as rated, without the loop circulator [W]. */
  readonly power?: ElectricPower;
  /** Capacity over electric input; in cooling the dimensionless one, 0.293 times the Btu/(W.h) of a US table [1]. */
  readonly cop?: Ratio;
}

/** Shape of {@link RatingPoint}. */
export const ratingPointShape: Shape<RatingPoint> = {
  enteringFluid: 'temperature',
  capacity: 'power',
  power: { optional: 'electric power' },
  cop: { optional: 'ratio' },
};

/** A rating point as plain numbers: place, capacity and electric power. */
export interface Rating {
  /** Which of the points given, from 0. */
  readonly index: number;
  readonly enteringFluid: number;
  readonly capacity: number;
  readonly power: number;
}

/** No entering fluid is colder or warmer; a bound against absurd input [degC]. */
export const ENTERING = { atLeast: -40, atMost: 60 } as const;

/** Rating points closer together than this are the same point twice [K]. */
const CLOSEST = 0.1;

/** Under 1 a heating unit would draw no heat from the ground [1]. */
const LEAST_HEATING_COP = 1.05;
/** Worse than any unit in cooling [1]. */
const LEAST_COOLING_COP = 0.5;
/** No compressor does better between a loop and a house; ten times the usual [1]. */
export const GREATEST_COP = 50;

/** Refuses rating points that no unit can have; gives them as plain numbers, coldest first. */
export function readRatings(list: string, mode: 'heating' | 'cooling', points: readonly RatingPoint[]): readonly Rating[] {
  demandCount(list, points, 2, 100);
  const ratings = points.map((point, index) => ({ index, ...readRating(`${list}.${String(index)}`, mode, point) }));
  const rising = ratings.sort((a, b) => a.enteringFluid - b.enteringFluid);
  rising.forEach(({ enteringFluid, index }, k) => {
    if (enteringFluid - (rising[k - 1]?.enteringFluid ?? -Infinity) >= CLOSEST) return;
    throw new InputError({
      code: 'impossible',
      argument: `${list}.${String(index)}.enteringFluid`,
      value: { kind: 'temperature', value: enteringFluid },
      allowed: 'one rating point for each entering temperature, at least 0.1 K apart',
      hint: 'rows of several flows or several indoor temperatures may be mixed; give those of the design flow',
    });
  });
  return rising;
}

/** Refuses a rating point that no unit can have; gives it as plain numbers. */
export function readRating(argument: string, mode: 'heating' | 'cooling', point: RatingPoint): Omit<Rating, 'index'> {
  demandObject(argument, point);
  const { enteringFluid, capacity, power, cop } = point;
  demand(`${argument}.enteringFluid`, 'temperature', enteringFluid, ENTERING, 'a temperature in degF may have been given as degC');
  demand(`${argument}.capacity`, 'power', capacity, { atLeast: 1, atMost: 1e8 });
  const least = mode === 'heating' ? LEAST_HEATING_COP : LEAST_COOLING_COP;
  if (cop !== undefined) {
    demand(`${argument}.cop`, 'ratio', cop, { atLeast: least, atMost: GREATEST_COP });
    if (power === undefined) return { enteringFluid, capacity, power: capacity / cop };
    throw new InputError({ code: 'impossible', argument, value: 'electric power and COP', allowed: 'one of the two' });
  }
  if (power === undefined)
    throw new InputError({ code: 'missing', argument: `${argument}.power`, value: undefined, allowed: 'electric power or COP' });
  const range = { atLeast: capacity / GREATEST_COP, atMost: capacity / least };
  demand(`${argument}.power`, 'electric power', power, range, 'units mixed, or capacity and power interchanged');
  return { enteringFluid, capacity, power };
}
