/** A number that was read, and the standard error of the reading. */
export interface Reading {
  readonly value: number;
  readonly error: number;
}

/** Takes a reading into a computation: as it is, or moved a little to see what that changes. */
export type Take = (reading: Reading) => number;

/** How far a reading is moved, in its standard errors: so little that the result follows in proportion. */
const NUDGE = 1e-3;

/** A reading as it is. */
export const asRead: Take = ({ value }) => value;

/** Standard error, as a share, of a positive number computed from readings that do not depend on one another: the first-order law. */
export function relativeError(of: (take: Take) => number, readings: readonly Reading[]): number {
  const moved = (one: Reading, by: number): number => Math.log(of((each) => each.value + (each === one ? by * each.error : 0)));
  return Math.hypot(...readings.map((one) => (moved(one, NUDGE) - moved(one, -NUDGE)) / (2 * NUDGE)));
}
