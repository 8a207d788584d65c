import { demand, InputError } from '../errors/index.js';
import type { PipeResistance, Time } from '../units/index.js';

/**
 * Step response of the ground: temperature rise of the mean pipe wall per watt per metre of each pipe, so long after the
 * heat began [m.K/W]. The ground rooms make it; it must not fall with time.
 */
export type RiseAfter = (time: Time) => PipeResistance;

/** Reads a step response at rising times, and refuses one that is not finite, negative or falling. */
export function readRises(riseAfter: RiseAfter, times: readonly number[]): readonly number[] {
  let before = 0;
  return times.map((time) => {
    const rise = riseAfter(time as Time);
    demand('riseAfter', 'pipe resistance', rise, { atLeast: 0, atMost: 1000 });
    if (rise < before * (1 - 1e-9)) {
      throw new InputError({
        code: 'impossible',
        argument: 'riseAfter',
        value: { kind: 'pipe resistance', value: rise },
        allowed: `at least ${String(before)}, the rise at an earlier time`,
        hint: 'the response to a lasting heat only grows',
      });
    }
    before = rise;
    return rise;
  });
}
