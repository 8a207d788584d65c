import { demand } from '../errors/index.js';
import type { Energy, Power, Shape, Time } from '../units/index.js';
import { LOAD } from './checks.js';

/** What {@link unitFullLoadHours} needs. */
export interface UnitFullLoadInput {
  /** Space heating that the unit makes over the year, 0 to 1e16 [J]. */
  readonly spaceEnergy: Energy;
  /** Capacity of the unit at the supply temperature of the house, 0.001 to 1e9 [W]. */
  readonly ratedSpaceCapacity: Power;
  /** Hot water that the unit makes over the year, losses included, 0 to 1e16 [J]. */
  readonly hotWaterEnergy: Energy;
  /** Capacity of the unit at the supply temperature of hot water, 0.001 to 1e9 [W]. */
  readonly ratedHotWaterCapacity: Power;
}

/** Hours at full load of a unit that also makes hot water. */
export interface UnitFullLoadHours {
  /** For the house [s]. */
  readonly spaceTime: Time;
  /** For hot water [s]. */
  readonly hotWaterTime: Time;
  /** Together [s]. */
  readonly fullLoadHours: Time;
}

/** Shape of {@link UnitFullLoadInput}. */
export const unitFullLoadInputShape: Shape<UnitFullLoadInput> = {
  spaceEnergy: 'energy',
  ratedSpaceCapacity: 'power',
  hotWaterEnergy: 'energy',
  ratedHotWaterCapacity: 'power',
};

/** Shape of {@link UnitFullLoadHours}. */
export const unitFullLoadHoursShape: Shape<UnitFullLoadHours> = { spaceTime: 'time', hotWaterTime: 'time', fullLoadHours: 'time' };

/**
 * Full-load hours of a unit with hot water in them, each duty counted at its own capacity.
 *
 * Guidelines of heat per area of ground come with their hours, and some of them without hot water; take a figure whose hours are those of the
 * sum here. Hot water adds several hundred hours, in summer too.
 *
 * @param input - heat of each duty [J] and the capacity it is made at [W]
 * @returns hours of each duty and of both [s]
 * @throws InputError when a number is impossible
 * @remarks Invariant: without hot water it is {@link equivalentFullLoadHours} of the house at the capacity of the unit.
 * @example
 * ```ts @import.meta.vitest
 * const { hours, kilowattHours, kilowatts } = await import('../units/index.js');
 * const { fullLoadHours } = unitFullLoadHours({
 *   spaceEnergy: kilowattHours(16_000), ratedSpaceCapacity: kilowatts(8), hotWaterEnergy: kilowattHours(3500), ratedHotWaterCapacity: kilowatts(7),
 * });
 * expect(hours.of(fullLoadHours)).toBeCloseTo(2500, 9);
 * ```
 */
export function unitFullLoadHours({ spaceEnergy, ratedSpaceCapacity, hotWaterEnergy, ratedHotWaterCapacity }: UnitFullLoadInput): UnitFullLoadHours {
  demand('spaceEnergy', 'energy', spaceEnergy, { atLeast: 0, atMost: 1e16 });
  demand('ratedSpaceCapacity', 'power', ratedSpaceCapacity, LOAD);
  demand('hotWaterEnergy', 'energy', hotWaterEnergy, { atLeast: 0, atMost: 1e16 });
  demand('ratedHotWaterCapacity', 'power', ratedHotWaterCapacity, LOAD);
  const [spaceTime, hotWaterTime] = [spaceEnergy / ratedSpaceCapacity, hotWaterEnergy / ratedHotWaterCapacity];
  return { spaceTime: spaceTime as Time, hotWaterTime: hotWaterTime as Time, fullLoadHours: (spaceTime + hotWaterTime) as Time };
}
