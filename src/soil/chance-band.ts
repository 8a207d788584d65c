import type { Band } from '../states/index.js';
import type { Kind } from '../units/index.js';
import { COVERAGE, SIGMAS } from './band-around.js';
import { normalShare } from './normal-share.js';
import type { Sides } from './two-sided.js';

/** A shift of a logarithm that has a chance; the chances of all add up to 1. */
export interface ChanceShift {
  readonly shift: number;
  readonly share: number;
}

/** Halvings of the interval in which a limit is sought; beyond a double's digits. */
const HALVINGS = 60;

/** How far beyond the outermost shift a limit is sought, in standard deviations. */
const BEYOND = 3;

/**
 * Median and limits of a logarithm that is one of several shifts, each with its chance, and has an error to either side on top: the places
 * below which a tenth, a half and nine tenths of the whole lie.
 */
export function limitsOf(chances: readonly ChanceShift[], sides: Sides): readonly [low: number, middle: number, high: number] {
  const [only] = chances;
  if (only !== undefined && chances.length === 1) {
    return [only.shift - SIGMAS * sides.downward, only.shift, only.shift + SIGMAS * sides.upward];
  }
  const below = (x: number): number =>
    chances.reduce((sum, { shift, share }) => sum + share * normalShare((x - shift) / (x < shift ? sides.downward : sides.upward)), 0);
  const shifts = chances.map(({ shift }) => shift);
  const limit = (part: number): number => {
    let low = Math.min(...shifts) - BEYOND * sides.downward;
    let high = Math.max(...shifts) + BEYOND * sides.upward;
    for (let halving = 0; halving < HALVINGS; halving++) {
      const middle = (low + high) / 2;
      if (below(middle) < part) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const tail = (1 - COVERAGE) / 2;
  return [limit(tail), limit(0.5), limit(1 - tail)];
}

/**
 * The band of a positive quantity: its value as reckoned, what it may be instead, and the error on top. It reaches no less far from its middle
 * to either side than it would if what may be doubted were certain.
 */
export function bandOfChances<K extends Kind>(
  reckoned: number,
  { chances, certain }: { readonly chances: readonly ChanceShift[]; readonly certain: readonly ChanceShift[] },
  sides: Sides,
): Band<K> {
  const [low, middle, high] = limitsOf(chances, sides);
  const [certainLow, certainMiddle, certainHigh] = limitsOf(certain, sides);
  const estimate = reckoned * Math.exp(middle);
  return {
    low: estimate * Math.exp(-Math.max(middle - low, certainMiddle - certainLow)),
    estimate,
    high: estimate * Math.exp(Math.max(high - middle, certainHigh - certainMiddle)),
    coverage: COVERAGE,
  } as Band<K>;
}
