import type { Time } from '../units/index.js';

/** Years of which every step is kept apart; heat older than that acts by its mean alone. */
const YEARS = 5;

/** A year's steps of heat at one wall. */
export interface FoldedSteps {
  /** What heat of one step adds so many steps later, the same step of all years before counted in [m.K/W]. */
  readonly increments: Float64Array;
  /** How far the rise has come by the end of the years [m.K/W]. */
  readonly last: number;
}

/**
 * Folds step responses into a year that repeats.
 *
 * @param risesAfter - rises of some walls after a time
 * @param year - steps in it, their length [s], and how many walls
 */
export function foldedSteps(
  risesAfter: (time: Time) => readonly number[],
  { steps, step, walls }: { readonly steps: number; readonly step: number; readonly walls: number },
): readonly FoldedSteps[] {
  const increments = Array.from({ length: walls }, () => new Float64Array(steps));
  let before: readonly number[] = increments.map(() => 0);
  for (let index = 0; index < YEARS * steps; index += 1) {
    const rises = risesAfter(((index + 1) * step) as Time);
    for (const [wall, row] of increments.entries()) row[index % steps] = (row[index % steps] ?? 0) + (rises[wall] ?? NaN) - (before[wall] ?? NaN);
    before = rises;
  }
  return increments.map((row, wall) => ({ increments: row, last: before[wall] ?? NaN }));
}

/** What heat of a repeating year comes to at the end of a step, with the rise that it tends to [K]. */
export function foldedRise({ increments, last }: FoldedSteps, heat: readonly number[], end: number, steady: number): number {
  const steps = heat.length;
  let rise = (heat.reduce((sum, each) => sum + each, 0) / steps) * (steady - last);
  for (let back = 0; back < steps; back += 1) rise += (increments[back] ?? NaN) * (heat[(end - back + steps) % steps] ?? NaN);
  return rise;
}
