import { gaussLegendre } from '../numerics/index.js';
import type { DistanceSink } from './distance-measure.js';

/** Rings of one size made of one pipe, as plain numbers. */
export interface Rings {
  /** Radius of the rings, to the axis of the pipe [m]. */
  readonly ringRadius: number;
  /** Outside radius of the pipe [m]. */
  readonly radius: number;
}

/** Rings nearer than this share of their radius get points where they are nearest; further ones get even points, which then converge at once. */
const NEAR = 0.4;
/** Decay of the error wanted of even points, exp(−14) = 8e-7. */
const EVEN_DECAY = 14;
const LEAST_EVEN = 6;

/**
 * Distances from all points of one ring to the wall of another, in parallel planes. The wall is taken at its inner and its outer side, by the mean of
 * the two distances.
 *
 * @param rings - the rings
 * @param apart - distance of the centres within the planes [m]
 * @param gap - distance of the planes [m]
 * @param sink - told distances and lengths that add up to the length of the ring
 */
export function ringPair(rings: Rings, apart: number, gap: number, sink: DistanceSink): void {
  const { ringRadius } = rings;
  const nearest = Math.hypot(Math.max(0, apart - 2 * ringRadius), gap);
  if (nearest < NEAR * ringRadius) {
    nearPair(rings, apart, gap, sink);
    return;
  }
  const points = Math.max(LEAST_EVEN, Math.ceil(EVEN_DECAY / Math.log1p(nearest / ringRadius)));
  // By half steps, so that the half turn beyond the line of centres is the mirror image of the half turn before it.
  const half = Math.ceil(points / 2);
  const angle = (index: number): number => ((index + 0.5) * Math.PI) / half;
  const length = (ringRadius * Math.PI) / (half * half);
  for (let at = 0; at < half; at += 1) {
    const wall = wallAt(rings, angle(at));
    for (let from = 0; from < 2 * half; from += 1) sink(wall(pointAt(rings, angle(from), apart, gap)), length);
  }
}

/** Distances from all points of a ring to its own wall; every place of the ring is like every other. */
export function ringItself(rings: Rings, sink: DistanceSink): void {
  const wall = wallAt(rings, 0);
  const share = rings.radius / rings.ringRadius;
  sinhSteps(share, Math.PI, 3, (angle, width) => {
    sink(wall(pointAt(rings, angle, 0, 0)), 2 * rings.ringRadius * width);
  });
}

/** Points crowd where the rings cross or come nearest, and on the source where it is nearest to each point of the wall. */
function nearPair(rings: Rings, apart: number, gap: number, sink: DistanceSink): void {
  const { ringRadius, radius } = rings;
  const crossing = Math.acos(Math.min(1, apart / (2 * ringRadius)));
  const crowded = Math.max(radius, gap) / ringRadius;
  for (const side of [-1, 1])
    sinhSteps(crowded, side < 0 ? crossing : Math.PI - crossing, 2, (beside, width) => {
      const at = crossing + side * beside;
      const wall = wallAt(rings, at);
      const x = ringRadius * Math.cos(at) - apart;
      const y = ringRadius * Math.sin(at);
      const opposite = Math.atan2(y, x);
      const off = Math.hypot(Math.hypot(x, y) - ringRadius, gap, radius) / ringRadius;
      sinhSteps(off, Math.PI, 2, (away, step) => {
        // Twice for the mirrored half of the wall, over the whole turn of it.
        const length = (ringRadius * width * step) / Math.PI;
        sink(wall(pointAt(rings, opposite + away, apart, gap)), length);
        sink(wall(pointAt(rings, opposite - away, apart, gap)), length);
      });
    });
}

/**
 * Points between 0 and an end, as evenly as the inverse hyperbolic sine sees them: dense within a width from 0, sparse beyond.
 *
 * @param crowded - the width
 * @param end - where the points end; nothing is visited when it is 0
 * @param panels - how often sixteen points
 * @param visit - told the place and its weight
 */
export function sinhSteps(crowded: number, end: number, panels: number, visit: (place: number, weight: number) => void): void {
  const last = Math.asinh(end / crowded);
  for (let panel = 0; panel < panels; panel += 1)
    gaussLegendre((panel * last) / panels, ((panel + 1) * last) / panels, (u, weight) => {
      visit(crowded * Math.sinh(u), crowded * Math.cosh(u) * weight);
    });
}

type Point = readonly [x: number, y: number, z: number];

function pointAt({ ringRadius }: Rings, angle: number, apart: number, gap: number): Point {
  return [apart + ringRadius * Math.cos(angle), ringRadius * Math.sin(angle), gap];
}

/** The mean distance from a point to the inner and the outer side of the wall at an angle. */
function wallAt({ ringRadius, radius }: Rings, angle: number): (point: Point) => number {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [inner, outer] = [ringRadius - radius, ringRadius + radius];
  const to = (ring: number, [x, y, z]: Point): number => Math.sqrt((x - ring * cos) ** 2 + (y - ring * sin) ** 2 + z * z);
  return (point) => (to(inner, point) + to(outer, point)) / 2;
}
