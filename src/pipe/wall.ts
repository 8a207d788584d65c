/** Wall of a pipe, in the unit that its standard rounds in. */
export interface WallThickness {
  /** Least wall that the standard allows. */
  readonly minimum: number;
  /** Wall in the middle of what the standard allows. */
  readonly average: number;
}

/** Walls of metric pipe that the standard rounds up further, in tenths of a millimetre. */
const SMALL_WALLS: Readonly<Record<number, number>> = { 19: 20, 28: 30, 29: 30 };

/**
 * Wall of inch pipe: to the nearest thousandth of an inch and never under 62. The standards allow 12 % more, so the average is 6 % more.
 *
 * @param exact - outside diameter over dimension ratio [0.001 in]
 * @returns walls [0.001 in]
 */
export function inchWall(exact: number): WallThickness {
  const minimum = Math.max(Math.round(exact), 62);
  return { minimum, average: 1.06 * minimum };
}

/**
 * Wall of metric pipe: to the nearest hundredth of a millimetre, then up to the next tenth. The standard allows a tenth of the wall
 * and 0.1 mm more, rounded up.
 *
 * @param exact - outside diameter over 2 S + 1 [0.1 mm]
 * @returns walls [0.1 mm]
 */
export function metricWall(exact: number): WallThickness {
  const tenths = Math.ceil(Math.round(exact * 10) / 10);
  const minimum = SMALL_WALLS[tenths] ?? tenths;
  const maximum = minimum + Math.ceil((minimum + 10) / 10);
  return { minimum, average: (minimum + maximum) / 2 };
}
