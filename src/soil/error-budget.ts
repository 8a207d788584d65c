import type { Finding } from '../findings/index.js';
import type { Fraction, Ratio } from '../units/index.js';
import type { ErrorCause } from './error-causes.js';
import type { ConductivityError } from './evidence-properties.js';
import type { Sides } from './two-sided.js';

/** Causes of an error, the greatest first, without those that add nothing. */
export function errorBudget(causes: readonly { readonly cause: ErrorCause; readonly sides: Sides }[]): readonly ConductivityError[] {
  const square = ({ downward, upward }: Sides): number => downward ** 2 + upward ** 2;
  const sum = causes.reduce((total, { sides }) => total + square(sides), 0);
  return causes
    .filter(({ sides }) => square(sides) > 0)
    .map(({ cause, sides }) => ({
      cause,
      downward: sides.downward as Ratio,
      upward: sides.upward as Ratio,
      share: (square(sides) / sum) as Fraction,
    }))
    .sort((one, other) => other.share - one.share);
}

/** Where most of an error comes from; nothing where no causes are told. */
export function mostlyBy([greatest]: readonly ConductivityError[]): readonly Finding[] {
  if (greatest === undefined) return [];
  const { cause, share } = greatest;
  return [{ code: 'conductivity-error-mostly-by', level: 'note', values: { cause, share }, source: 'common practice' }];
}
