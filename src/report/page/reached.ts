import type { Extreme } from '../../operation/index.js';
import type { Write } from './layout.js';

/** A temperature with its day, in words. */
export function reachedText(extreme: Extreme | undefined, write: Write): string {
  return extreme === undefined ? 'never' : `${write('temperature', extreme.temperature)} on ${write('day of year', extreme.day)}`;
}
