import { type AllowedRange, demand, InputError } from '../errors/index.js';
import type { Power } from '../units/index.js';

/** One power for all steps, or one for each [W]. */
export type PowerSeries = Power | Float64Array | readonly Power[];

/** More steps than any study has, a year of minutes among them. */
const MOST_STEPS = 1e6;

/** The power of a step that there is. */
export const powerAt = (powers: PowerSeries, index: number): number => (typeof powers === 'number' ? powers : Number(powers[index]));

/** Refuses powers out of range, be it one for all steps or a series of as many as there are steps. */
export function demandPowers(argument: string, powers: PowerSeries, range: AllowedRange, steps: number): void {
  if (typeof powers === 'number') demand(argument, 'power', powers, range);
  else demandSeries(argument, powers, range, steps);
}

/**
 * Refuses a series of another length, or with a power out of range.
 *
 * @param argument - the name the caller knows the powers by
 * @param powers - one for each step
 * @param range - where each power must lie [W]
 * @param steps - how many are wanted; 1 to 1e6 when left out
 * @throws InputError that names the first faulty one
 */
export function demandSeries(argument: string, powers: Float64Array | readonly Power[], range: AllowedRange, steps?: number): void {
  if (!isSeries(powers)) {
    const code = powers === undefined || powers === null ? 'missing' : 'wrong-type';
    throw new InputError({ code, argument, value: undefined, allowed: 'a list of powers or a Float64Array' });
  }
  const [least, most] = [steps ?? 1, steps ?? MOST_STEPS];
  if (powers.length < least || powers.length > most) {
    const value = { kind: 'count', value: powers.length } as const;
    const allowed = least === most ? `${String(least)}, as many as there are steps` : `1 to ${String(MOST_STEPS)} steps`;
    throw new InputError({ code: powers.length < least ? 'too-few' : 'too-many', argument, value, allowed });
  }
  for (let index = 0; index < powers.length; index += 1) demandEach(argument, powers, index, range);
}

const isSeries = (given: unknown): boolean => Array.isArray(given) || given instanceof Float64Array;

/** A year has thousands, so that the name of a place is made only for a faulty one. */
function demandEach(argument: string, powers: Float64Array | readonly Power[], index: number, range: AllowedRange): void {
  const power = powers[index];
  const { atLeast = -Infinity, atMost = Infinity } = range;
  if (typeof power === 'number' && power >= atLeast && power <= atMost && Number.isFinite(power)) return;
  demand(`${argument}.${String(index)}`, 'power', power as Power, range);
}
