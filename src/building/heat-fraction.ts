import { demand, InputError } from '../errors/index.js';
import type { Energy, Fraction, Power, Shape, Time } from '../units/index.js';
import { LOAD } from './checks.js';

/** What {@link heatFraction} needs. */
export interface HeatFractionInput {
  /** Heat taken from the ground, or given to it, over the time: 0 up to the full ground heat over all of it [J]. */
  readonly energy: Energy;
  /** The time, as a rule a month, above 0 to 1e9 [s]. */
  readonly time: Time;
  /** Ground heat while the unit runs at full speed under design conditions, 0.001 to 1e9 [W]. */
  readonly fullGroundHeat: Power;
}

/** Shape of {@link HeatFractionInput}. */
export const heatFractionInputShape: Shape<HeatFractionInput> = { energy: 'energy', time: 'time', fullGroundHeat: 'power' };

/**
 * Share of its full ground heat that a unit takes over a month on the mean: the fraction by energy, which is what loads a loop.
 *
 * The fraction by time, of {@link runFractions}, asks how long the compressor turns. For a unit of one speed and constant capacity the two are the same. A unit
 * with stages or variable speed turns nearly all month at part speed: its fraction by time goes to 1 while the ground sees a third of the design heat, and a loop
 * sized by it comes out too long. Use this one for every unit that modulates, and where capacity changes much within the month; use time for pumps, wear and noise.
 * It is a `Fraction` and not a `RunFraction`, so that one does not pass for the other unawares.
 *
 * @param input - ground heat of the month [J], its length [s], ground heat at full speed [W]
 * @returns fraction by energy, 0 to 1 [1]
 * @throws InputError when a number is impossible, or the heat is more than the unit can take in the time
 * @remarks F = Q/(t · Φ full). Invariants: in proportion to the heat; for one speed, run fraction times its ground heat over the same.
 * @example
 * ```ts @import.meta.vitest
 * const { days, kilowattHours, kilowatts } = await import('../units/index.js');
 * // Turning all of January at 2 kW from the ground out of 6 kW: by time 1, by energy a third.
 * expect(heatFraction({ energy: kilowattHours(744 * 2), time: days(31), fullGroundHeat: kilowatts(6) })).toBeCloseTo(1 / 3, 12);
 * ```
 */
export function heatFraction({ energy, time, fullGroundHeat }: HeatFractionInput): Fraction {
  demand('energy', 'energy', energy, { atLeast: 0, atMost: 1e18 });
  demand('time', 'time', time, { above: 0, atMost: 1e9 });
  demand('fullGroundHeat', 'power', fullGroundHeat, LOAD);
  const most = fullGroundHeat * time;
  // A month without a stop may round beyond what it can hold by a few last digits.
  if (energy <= most * (1 + 1e-12)) return Math.min(1, energy / most) as Fraction;
  throw new InputError({
    code: 'impossible',
    argument: 'energy',
    value: { kind: 'energy', value: energy },
    allowed: `at most ${String(most)} J, full ground heat over all the time`,
    hint: 'heat of the house and heat from the ground may be mixed up, or kWh given for J',
  });
}
