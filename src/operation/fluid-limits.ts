import { demand, demandObject, InputError } from '../errors/index.js';
import type { DayOfYear, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import type { Extreme, FluidExtremes } from './simulation.js';

/** What the fluid must keep, in the first year as in the one that repeats; at least one of the three. */
export interface FluidLimits {
  /** Lowest temperature at which the fluid may enter the heat pump while it heats, −60 to 60 [degC]. */
  readonly lowestEntering?: Temperature;
  /** Lowest temperature at which it may leave it while it heats, where the freeze-protection stop acts, −60 to 60 [degC]. */
  readonly lowestLeaving?: Temperature;
  /** Highest temperature at which it may enter while it cools, −60 to 100 [degC]. */
  readonly highestEntering?: Temperature;
}

/** The limit that a loop comes nearest to. */
export interface BindingLimit {
  /** Which of the three. */
  readonly limit: keyof FluidLimits;
  /** In the first year or in the last one followed. */
  readonly year: 'first' | 'last';
  /** When, the end of that step [d]. */
  readonly day: DayOfYear;
  /** The fluid then [degC]. */
  readonly reached: Temperature;
  /** How far it is inside the limit; negative beyond it [K]. */
  readonly limitMargin: TemperatureDifference;
}

/** The fluid in the years of a loop; a `Simulation` is that. */
export interface YearsOfFluid {
  /** The first year; limits are kept in the last alone when left out. */
  readonly yearOne?: FluidExtremes;
  /** The year that repeats, or the last one followed. */
  readonly lastYear: FluidExtremes;
}

/** Shape of {@link FluidLimits}. */
export const fluidLimitsShape: Shape<FluidLimits> = {
  lowestEntering: { optional: 'temperature' },
  lowestLeaving: { optional: 'temperature' },
  highestEntering: { optional: 'temperature' },
};

/** Shape of {@link BindingLimit}. */
export const bindingLimitShape: Shape<BindingLimit> = {
  limit: ['lowestEntering', 'lowestLeaving', 'highestEntering'],
  year: ['first', 'last'],
  day: 'day of year',
  reached: 'temperature',
  limitMargin: 'temperature difference',
};

/** Refuses limits that bind nothing or contradict one another. */
export function demandLimits(limits: FluidLimits): void {
  demandObject('limits', limits);
  const { lowestEntering, lowestLeaving, highestEntering } = limits;
  if (lowestEntering !== undefined) demand('limits.lowestEntering', 'temperature', lowestEntering, { atLeast: -60, atMost: 60 });
  if (lowestLeaving !== undefined) demand('limits.lowestLeaving', 'temperature', lowestLeaving, { atLeast: -60, atMost: 60 });
  const above = Math.max(lowestEntering ?? -60, lowestLeaving ?? -60);
  if (highestEntering !== undefined) demand('limits.highestEntering', 'temperature', highestEntering, { above, atMost: 100 });
  if (lowestEntering === undefined && lowestLeaving === undefined && highestEntering === undefined) {
    throw new InputError({ code: 'missing', argument: 'limits', value: undefined, allowed: 'at least one of the three limits' });
  }
}

/**
 * The limit that binds a loop.
 *
 * @param fluid - of the loop in its years
 * @param limits - what it must keep
 * @returns the limit with the least margin; nothing where the unit never runs in a mode that has one
 */
export function bindingLimit({ yearOne, lastYear }: YearsOfFluid, limits: FluidLimits): BindingLimit | undefined {
  const found: BindingLimit[] = [];
  const add = (limit: keyof FluidLimits, year: BindingLimit['year'], side: 1 | -1, extreme: Extreme | undefined): void => {
    const at = limits[limit];
    if (at === undefined || extreme === undefined) return;
    const { temperature, day } = extreme;
    found.push({ limit, year, day, reached: temperature, limitMargin: (side * (temperature - at)) as TemperatureDifference });
  };
  const addYear = (name: BindingLimit['year'], year: FluidExtremes): void => {
    add('lowestEntering', name, 1, year.coldestEntering);
    add('lowestLeaving', name, 1, year.coldestLeaving);
    add('highestEntering', name, -1, year.warmestEntering);
  };
  addYear('last', lastYear);
  if (yearOne !== undefined) addYear('first', yearOne);
  return found.reduce<BindingLimit | undefined>(
    (least, each) => (least === undefined || each.limitMargin < least.limitMargin ? each : least),
    undefined,
  );
}
