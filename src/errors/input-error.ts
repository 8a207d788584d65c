import type { TaggedQuantity } from '../units/quantity.js';

/**
 * Why an input was refused. The codes are stable, so that a program can act on them.
 *
 * - `missing`, `surplus`, `wrong-type`, `unknown-unit`, `unknown-choice`, `unknown-version`: the form is wrong
 * - `not-finite`, `out-of-range`: the number itself is impossible
 * - `impossible`: each number alone is possible, together they are not
 * - `too-few`, `too-many`: a list of the wrong length
 * - `unreachable`: no answer exists for these inputs
 */
export type InputErrorCode =
  | 'missing'
  | 'surplus'
  | 'wrong-type'
  | 'unknown-unit'
  | 'unknown-choice'
  | 'unknown-version'
  | 'not-finite'
  | 'out-of-range'
  | 'impossible'
  | 'too-few'
  | 'too-many'
  | 'unreachable';

/** What an {@link InputError} is made of. */
export interface InputErrorDetails {
  /** Why the input was refused. */
  readonly code: InputErrorCode;
  /** The argument, with dots between the levels: `depth`, `moisture.value`, `points.3.capacity`. */
  readonly argument: string;
  /** The refused value: a quantity with its kind, or a text or other value as it was given. */
  readonly value: TaggedQuantity | string | undefined;
  /** What would have been accepted, for a person. */
  readonly allowed: string;
  /** The likely cause or what to do about it. */
  readonly hint?: string | undefined;
}

/**
 * An input that cannot be computed with. Names the field, the value and what is allowed.
 *
 * @example
 * ```ts @import.meta.vitest
 * const error = new InputError({ code: 'out-of-range', argument: 'soil.depth', value: { kind: 'length', value: -1 }, allowed: 'above 0' });
 * expect(error.message).toBe('soil.depth: -1 (length) is not allowed; allowed: above 0');
 * expect(error.pointer).toBe('/soil/depth');
 * ```
 */
export class InputError extends Error {
  /** Always `InputError`, to tell it from other errors where `instanceof` cannot. */
  override readonly name: string = 'InputError';
  /** Why the input was refused. */
  readonly code: InputErrorCode;
  /** The argument, with dots between the levels. */
  readonly argument: string;
  /** The refused value: a quantity with its kind, or a text or other value as it was given. */
  readonly value: TaggedQuantity | string | undefined;
  /** What would have been accepted, for a person. */
  readonly allowed: string;
  /** The likely cause or what to do about it, where there is something to say. */
  readonly hint: string | undefined;

  /**
   * Makes the refusal.
   *
   * @param details - what was refused, and what would not have been
   */
  constructor(details: InputErrorDetails) {
    super(messageOf(details));
    this.code = details.code;
    this.argument = details.argument;
    this.value = details.value;
    this.allowed = details.allowed;
    this.hint = details.hint;
  }

  /**
   * The argument as a JSON Pointer (RFC 6901) into the input.
   *
   * @returns the pointer; empty for the input itself
   */
  get pointer(): string {
    const steps = this.argument === '' ? [] : this.argument.split('.');
    return steps.map((step) => `/${step.replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
  }

  /**
   * The same error with the argument placed inside a larger input.
   *
   * @param path - where the argument lies, with dots between the levels; empty for the input itself
   * @returns a new error whose argument starts with the path
   */
  within(path: string): InputError {
    const argument = [path, this.argument].filter((part) => part !== '').join('.');
    return new InputError({ code: this.code, argument, value: this.value, allowed: this.allowed, hint: this.hint });
  }
}

function messageOf({ argument, value, allowed, hint }: InputErrorDetails): string {
  const shown = value === undefined ? 'nothing' : typeof value === 'string' ? value : `${String(value.value)} (${value.kind})`;
  return `${argument}: ${shown} is not allowed; allowed: ${allowed}${hint === undefined ? '' : ` (${hint})`}`;
}
