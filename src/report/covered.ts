import type { Kind } from '../units/index.js';

/** From here on a year counts as covered; the rest lies below what a monthly computation can tell [1]. */
const WHOLE = 0.995;

/** Whether what is missing is too little to be told as a number. */
export const nearlyAll = (share: number): boolean => share >= WHOLE;

/** A share of a year that is never printed as the whole when something is missing. */
export function coveredText(share: number, write: (kind: Kind, value: number) => string): string {
  return share < 1 && nearlyAll(share) ? `over ${write('fraction', 0.99)}` : write('fraction', share);
}
