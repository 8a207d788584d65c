import type { TaggedQuantity } from '../units/quantity.js';
import { InputError } from './input-error.js';
import { quotedChoices } from './quoted-choices.js';

/** The range a number must lie in; a bound that is absent does not bind. */
export interface AllowedRange {
  /** The number must be greater. */
  readonly above?: number;
  /** The number must be this or greater. */
  readonly atLeast?: number;
  /** The number must be less. */
  readonly below?: number;
  /** The number must be this or less. */
  readonly atMost?: number;
}

/**
 * Refuses a number that is absent, not a number, not finite or out of range.
 *
 * @param argument - the name the caller knows the number by
 * @param kind - what the number means
 * @param value - the number in the fixed unit of its kind
 * @param allowed - the range it must lie in, in the same unit; any finite number when left out
 * @param hint - the likely cause, told with the refusal
 * @throws InputError when the number is refused
 * @example
 * ```ts @import.meta.vitest
 * expect(() => demand('depth', 'length', Number.NaN, { above: 0 })).toThrow('depth: NaN (length)');
 * expect(() => demand('depth', 'length', 0, { above: 0 })).toThrow('above 0');
 * demand('depth', 'length', 1.5, { above: 0 });
 * ```
 */
export function demand(argument: string, kind: TaggedQuantity['kind'], value: number, allowed: AllowedRange = {}, hint?: string): void {
  const refuse = (code: 'not-finite' | 'out-of-range'): never => {
    throw new InputError({ code, argument, value: { kind, value }, allowed: describeRange(kind, allowed), hint });
  };
  if (typeof value !== 'number') throw wrongForm(argument, value, describeRange(kind, allowed), hint);
  if (!Number.isFinite(value)) refuse('not-finite');
  const { above = -Infinity, atLeast = -Infinity, below = Infinity, atMost = Infinity } = allowed;
  // Asked this way round, a bound that is itself no number refuses everything instead of nothing.
  if (!(value > above && value >= atLeast && value < below && value <= atMost)) refuse('out-of-range');
  if (kind === 'count' && !Number.isInteger(value)) refuse('out-of-range');
}

/**
 * Refuses a text that is not one of a set of choices.
 *
 * @param argument - the name the caller knows the text by
 * @param value - the text given
 * @param choices - what is accepted
 * @throws InputError when the text is none of them
 * @example
 * ```ts @import.meta.vitest
 * expect(() => demandChoice('series', 'imperial', ['IPS', 'metric'])).toThrow('series: imperial is not allowed; allowed: "IPS", "metric"');
 * demandChoice('series', 'IPS', ['IPS', 'metric']);
 * ```
 */
export function demandChoice(argument: string, value: string, choices: readonly string[]): void {
  if (typeof value !== 'string') throw wrongForm(argument, value, quotedChoices(choices));
  if (!choices.includes(value)) throw new InputError({ code: 'unknown-choice', argument, value, allowed: quotedChoices(choices) });
}

/**
 * Refuses a part of an input that is absent or no object, before a field of it is read.
 *
 * @param argument - the name the caller knows the part by
 * @param part - the part given
 * @throws InputError when there is no object to read fields from
 * @example
 * ```ts @import.meta.vitest
 * expect(() => demandObject('pipe', undefined)).toThrow('pipe: nothing is not allowed; allowed: an object');
 * demandObject('pipe', { insideDiameter: 0.028 });
 * ```
 */
export function demandObject(argument: string, part: object | undefined): void {
  if (typeof part !== 'object' || part === null || Array.isArray(part)) throw wrongForm(argument, part, 'an object');
}

/**
 * Refuses a list that is absent, no list, too short or too long.
 *
 * @param argument - the name the caller knows the list by
 * @param list - the list given
 * @param least - fewest entries accepted
 * @param most - most entries accepted
 * @throws InputError when it is no list of that length
 * @example
 * ```ts @import.meta.vitest
 * expect(() => demandCount('layers', [], 1)).toThrow('layers: 0 (count) is not allowed; allowed: at least 1 entry');
 * demandCount('layers', ['loam'], 1);
 * ```
 */
export function demandCount(argument: string, list: readonly unknown[], least: number, most: number = Infinity): void {
  const allowed = describeCount(least, most);
  if (!Array.isArray(list)) throw wrongForm(argument, list, `a list of ${allowed}`);
  if (list.length >= least && list.length <= most) return;
  throw new InputError({ code: list.length < least ? 'too-few' : 'too-many', argument, value: { kind: 'count', value: list.length }, allowed });
}

/**
 * Runs a computation on a part of a larger input, so that a refusal names the place in the whole.
 *
 * @param path - where the part lies, with dots between the levels
 * @param run - the computation on the part
 * @returns what the computation returns
 * @throws InputError of the computation, its argument placed under the path
 * @example
 * ```ts @import.meta.vitest
 * expect(() => locate('layers.2', () => demand('depth', 'length', -1, { above: 0 }))).toThrow('layers.2.depth');
 * ```
 */
export function locate<T>(path: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    throw error instanceof InputError ? error.within(path) : error;
  }
}

function describeCount(least: number, most: number): string {
  const entries = (count: number): string => `${String(count)} ${count === 1 ? 'entry' : 'entries'}`;
  if (least === most) return `exactly ${entries(least)}`;
  return most === Infinity ? `at least ${entries(least)}` : `${String(least)} to ${entries(most)}`;
}

/** The refusal of something that is absent or of another type; whatever it is, it is named without failing. */
function wrongForm(argument: string, given: unknown, allowed: string, hint?: string): InputError {
  if (given === undefined || given === null) return new InputError({ code: 'missing', argument, value: undefined, allowed, hint });
  return new InputError({ code: 'wrong-type', argument, value: named(given), allowed, hint });
}

function named(given: unknown): string {
  if (typeof given === 'string') return JSON.stringify(given);
  if (typeof given === 'object') return Array.isArray(given) ? 'a list' : 'an object';
  if (typeof given === 'symbol') return given.toString();
  return typeof given === 'boolean' || typeof given === 'bigint' || typeof given === 'number' ? String(given) : `a ${typeof given}`;
}

function describeRange(kind: string, { above, atLeast, below, atMost }: AllowedRange): string {
  const bound = (words: string, limit: number | undefined): string => (limit === undefined ? '' : `${words} ${String(Number(limit.toPrecision(6)))}`);
  const bounds = [bound('above', above), bound('at least', atLeast), bound('below', below), bound('at most', atMost)].filter((text) => text !== '');
  return `${kind === 'count' ? 'a whole number' : `a finite ${kind}`}${bounds.length === 0 ? '' : ` ${bounds.join(' and ')}`}`;
}
