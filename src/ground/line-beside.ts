import type { DistanceSink } from './distance-measure.js';
import { sinhSteps } from './ring-pair.js';

/** Where a line without end is cut off [m]: further than heat reaches in the longest time. */
const END = 1e7;
/** Sixteen points in each part; a line of 100 m beside a pipe's wall gets four. */
const PART = 2.5;

/**
 * Distances between all points of two equal, parallel lines side by side, seen from the average point of one: of the pairs of points, 1 − t/L lie t further
 * along.
 *
 * @param beside - distance of the lines [m]
 * @param length - of either, Infinity without end [m]
 * @param sink - told distances and lengths that add up to that of the line
 */
export function lineBeside(beside: number, length: number, sink: DistanceSink): void {
  const end = Math.min(END, length);
  sinhSteps(beside, end, Math.ceil(Math.asinh(end / beside) / PART), (along, width) => {
    sink(Math.hypot(along, beside), 2 * (1 - along / length) * width);
  });
}
