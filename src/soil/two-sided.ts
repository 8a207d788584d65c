import { SIGMAS, together } from './band-around.js';

/** An error that may differ to either side: one standard deviation of the logarithm downward and upward, neither below 0. */
export interface Sides {
  readonly downward: number;
  readonly upward: number;
}

/** The same error to both sides. */
export const even = (sigma: number): Sides => ({ downward: sigma, upward: sigma });

/** How far shifts of a logarithm go to either side. */
export function sidesOf(shifts: readonly number[]): Sides {
  return { downward: Math.max(0, ...shifts.map((shift) => -shift)), upward: Math.max(0, ...shifts) };
}

/** How far shifts go that hold together four chances in five, as standard deviations. */
export function sidesOfInterval(shifts: readonly number[]): Sides {
  const { downward, upward } = sidesOf(shifts);
  return { downward: downward / SIGMAS, upward: upward / SIGMAS };
}

/** Deviation to either side of shifts that have chances; where both sides are alike it is the standard deviation. */
export function sidesOfChances(chances: readonly { readonly shift: number; readonly share: number }[]): Sides {
  const side = (sign: number): number => {
    const squares = chances.map(({ shift, share }) => (sign * shift > 0 ? 2 * share * shift ** 2 : 0));
    return Math.sqrt(squares.reduce((sum, each) => sum + each, 0));
  };
  return { downward: side(-1), upward: side(1) };
}

/** Errors that do not depend on one another, added as squares side by side. */
export function bothTogether(sides: readonly Sides[]): Sides {
  return { downward: together(...sides.map(({ downward }) => downward)), upward: together(...sides.map(({ upward }) => upward)) };
}

/** The wider of several errors, side by side. */
export function widest(sides: readonly Sides[]): Sides {
  return { downward: Math.max(...sides.map(({ downward }) => downward)), upward: Math.max(...sides.map(({ upward }) => upward)) };
}
