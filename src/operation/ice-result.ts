import type { DayOfYear, Energy, Length, Shape, Temperature } from '../units/index.js';

/** The ice of every step of a year, plain numbers from 1 January. */
export interface IceCourse {
  /** Frozen section around each pipe at the end of the step, partly frozen soil by its share of ice [m2]. */
  readonly frozenAreas: Float64Array;
  /** Heat set free by ice around a metre of pipe, the mean over the step, taken up by thawing below 0 [W/m]. */
  readonly iceHeats: Float64Array;
}

/** A month of the ice around the pipes. */
export interface MonthOfIce {
  /** 1 to 12. */
  readonly month: number;
  /** Greatest radius of the frozen soil from the axis of the pipe, partly frozen soil by its share of ice; 0 where nothing is frozen [m]. */
  readonly frozenRadius: Length;
  /** How thick frozen soil lies on the pipe then [m]. */
  readonly frozenThickness: Length;
  /** Water frozen then, as a depth over the land of the loop: 1 mm is 1 kg/m² [m]. */
  readonly frozenWater: Length;
}

/** Shape of {@link MonthOfIce}. */
export const monthOfIceShape: Shape<MonthOfIce> = { month: 'count', frozenRadius: 'length', frozenThickness: 'length', frozenWater: 'length' };

/** A year of the ice around the pipes. */
export interface YearOfIce {
  /** Coldest wall of the pipes with ice [degC]. */
  readonly coldestWall: Temperature;
  /** Greatest radius of frozen soil; 0 where nothing freezes [m]. */
  readonly frozenRadius: Length;
  /** How thick frozen soil lies on the pipe then [m]. */
  readonly frozenThickness: Length;
  /** Water frozen then, as a depth over the land of the loop: 1 mm is 1 kg/m² [m]. */
  readonly frozenWater: Length;
  /** When there is most ice; absent where nothing freezes [d]. */
  readonly mostIceDay?: DayOfYear;
  /** When the last of it has thawed; absent where nothing freezes, or it does not thaw [d]. */
  readonly thawDay?: DayOfYear;
  /** When the fronts of neighbouring pipes meet, or the front the surface; beyond it no more ice counts; absent where they do not [d]. */
  readonly mergeDay?: DayOfYear;
  /** Heat that freezing set free, with what frozen soil conducts and stores otherwise than thawed soil, over all of the loop [J]. */
  readonly freezingEnergy: Energy;
  /** Heat that thawing took back [J]. */
  readonly thawingEnergy: Energy;
  /** Month by month; absent where the steps do not make up 365 or 366 days. */
  readonly months?: readonly MonthOfIce[];
}

/** Shape of {@link YearOfIce}. */
export const yearOfIceShape: Shape<YearOfIce> = {
  coldestWall: 'temperature',
  frozenRadius: 'length',
  frozenThickness: 'length',
  frozenWater: 'length',
  mostIceDay: { optional: 'day of year' },
  thawDay: { optional: 'day of year' },
  mergeDay: { optional: 'day of year' },
  freezingEnergy: 'energy',
  thawingEnergy: 'energy',
  months: { optional: { list: monthOfIceShape } },
};
