import { demand } from '../errors/index.js';
import type { Conductance, DegreeDays, Energy, Ratio, Shape } from '../units/index.js';
import { degreeDayEnergy } from './full-load-hours.js';

/** What {@link degreeDayFuel} needs. */
export interface DegreeDayFuelInput {
  /** Heating per kelvin below the balance point, 1e-6 to 1e9 [W/K]. */
  readonly slope: Conductance;
  /** On the base of the balance point, 0 to 1e5 [K.d]. */
  readonly degreeDays: DegreeDays;
  /** Useful heat over energy by the meter, 0.05 to 8; on the basis, higher or lower heating value, that the fuel is counted on [1]. */
  readonly usefulRatio: Ratio;
}

/** Shape of {@link DegreeDayFuelInput}. */
export const degreeDayFuelInputShape: Shape<DegreeDayFuelInput> = { slope: 'conductance', degreeDays: 'degree days', usefulRatio: 'ratio' };

/**
 * Fuel or electricity for heating by degree days.
 *
 * @param input - slope [W/K], degree days from the balance point [K.d], useful heat over energy by the meter [1]
 * @returns energy by the meter [J]
 * @throws InputError when a number is impossible
 * @remarks
 * Q = slope · degree days / useful ratio. Degree days on a fixed base of 65 °F count gains as loss; tables correct that with a factor of 0.6 to 0.8, which a base at the balance point
 * makes needless. Source: `ashraeEnergyEstimating`.
 *
 * Invariants: proportional to slope and degree days; energy · ratio = heat.
 * @example
 * ```ts @import.meta.vitest
 * const { kelvinDays, kilowattHours, ratio, wattsPerKelvin } = await import('../units/index.js');
 * const fuel = degreeDayFuel({ slope: wattsPerKelvin(250), degreeDays: kelvinDays(3000), usefulRatio: ratio(0.9) });
 * expect(kilowattHours.of(fuel)).toBeCloseTo(20_000, 9);
 * ```
 */
export function degreeDayFuel({ slope, degreeDays, usefulRatio }: DegreeDayFuelInput): Energy {
  demand('usefulRatio', 'ratio', usefulRatio, { atLeast: 0.05, atMost: 8 }, 'a share, not per cent');
  return (degreeDayEnergy(slope, degreeDays) / usefulRatio) as Energy;
}
