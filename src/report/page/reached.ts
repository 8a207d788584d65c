import type { Extreme } from '../../operation/index.js';
import type { TemperatureDifference } from '../../units/index.js';
import type { Write } from './layout.js';

/** A temperature with its day, in words. */
export function reachedText(extreme: Extreme | undefined, write: Write): string {
  return extreme === undefined ? 'never' : `${write('temperature', extreme.temperature)} on ${write('day of year', extreme.day)}`;
}

/** How far the fluid stays inside a limit, or goes beyond it, in words. */
export function marginText(limitMargin: TemperatureDifference, write: Write): string {
  return `${write('temperature difference', Math.abs(limitMargin))} ${limitMargin < 0 ? 'beyond' : 'inside'}`;
}
