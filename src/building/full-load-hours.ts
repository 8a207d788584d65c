import { demand } from '../errors/index.js';
import type { Conductance, DegreeDays, Energy, Power, Time } from '../units/index.js';
import { LOAD } from './checks.js';

/** A year's heat or cold and the load it is counted in. */
export interface FullLoadHoursInput {
  /** Energy of the year, 0 to 1e16 [J]. */
  readonly energy: Energy;
  /** Design load of the building, or capacity of the unit, 0.001 to 1e9 [W]. */
  readonly designLoad: Power;
}

/**
 * Equivalent full-load hours: how long the design load would have to run to make the energy of the year.
 *
 * Tables of heat drawn per area of ground are made for stated full-load hours (1800 or 2400 h); do not use one with a building of the other.
 *
 * @param of - energy of the year [J], design load [W]
 * @returns time [s]
 * @throws InputError when a number is impossible
 * @remarks The European season is 2066, 1336 and 2465 h in its average, warmer and colder climate, reproduced from its bins (`eu813of2013`).
 * @example
 * ```ts @import.meta.vitest
 * const { hours, kilowattHours, kilowatts } = await import('../units/index.js');
 * const time = equivalentFullLoadHours({ energy: kilowattHours(24_254.9), designLoad: kilowatts(12) });
 * expect(hours.of(time)).toBeCloseTo(2021.2, 1);
 * ```
 */
export function equivalentFullLoadHours({ energy, designLoad }: FullLoadHoursInput): Time {
  demand('energy', 'energy', energy, { atLeast: 0, atMost: 1e16 });
  demand('designLoad', 'power', designLoad, LOAD);
  return (energy / designLoad) as Time;
}

/**
 * Energy by degree days, Q = slope · degree days.
 *
 * The degree days must be counted from the balance point of the building, not from a fixed base.
 *
 * @param slope - load per kelvin, 1e-6 to 1e9 [W/K]
 * @param degreeDays - on the base of the balance point, 0 to 1e5 [K.d]
 * @returns energy [J]
 * @throws InputError when a number is impossible
 * @example
 * ```ts @import.meta.vitest
 * const { kelvinDays, kilowattHours, wattsPerKelvin } = await import('../units/index.js');
 * expect(kilowattHours.of(degreeDayEnergy(wattsPerKelvin(250), kelvinDays(3000)))).toBeCloseTo(18_000, 9);
 * ```
 */
export function degreeDayEnergy(slope: Conductance, degreeDays: DegreeDays): Energy {
  demand('slope', 'conductance', slope, { atLeast: 1e-6, atMost: 1e9 });
  demand('degreeDays', 'degree days', degreeDays, { atLeast: 0, atMost: 1e5 });
  return (slope * degreeDays * 86_400) as Energy;
}
