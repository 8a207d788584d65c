import { InputError } from '../errors/index.js';
import type { PipeLength } from '../units/index.js';
import type { BindingLimit } from './fluid-limits.js';
import type { WarmStart } from './loop-years.js';

/** A length with the margin to the limits. */
export interface Tried<Warm = WarmStart> {
  readonly length: PipeLength;
  readonly margin: number;
  /** The limit that binds, and the ground that the loop settled at; absent where the fluid left all bounds. */
  readonly outcome?: { readonly binding: BindingLimit; readonly warm: Warm };
}

/** No step of the year has a load. */
export const neverRuns = (): InputError =>
  new InputError({
    code: 'impossible',
    argument: 'duty.loads',
    value: undefined,
    allowed: 'a year in which the unit runs',
    hint: 'these loads need no loop; check the signs and the maps of the unit',
  });

/** Not even endless pipe keeps a limit. */
export function groundBeyond({ outcome }: Pick<Tried<unknown>, 'outcome'>): InputError {
  if (outcome === undefined) return neverRuns();
  const { limit, reached, limitMargin } = outcome.binding;
  return new InputError({
    code: 'unreachable',
    argument: `limits.${limit}`,
    value: { kind: 'temperature', value: reached },
    allowed: `a limit that the fluid keeps by more than 0 K with endless pipe; it misses this one by ${(-limitMargin).toFixed(2)} K`,
    hint: 'the ground itself is too near to the limit, or the flow too small: lay deeper, raise the flow, or use a unit with wider limits',
  });
}

/** The longest pipe allowed does not keep a limit. */
export function tooShort({ outcome, length }: Tried<unknown>): InputError {
  const how = outcome === undefined ? 'out of all bounds' : `${(-outcome.binding.limitMargin).toFixed(2)} K beyond ${outcome.binding.limit}`;
  return new InputError({
    code: 'unreachable',
    argument: 'longest',
    value: { kind: 'pipe length', value: length },
    allowed: `more pipe; with this much the fluid is ${how}`,
    hint: 'allow more pipe, or more circuits or trenches',
  });
}
