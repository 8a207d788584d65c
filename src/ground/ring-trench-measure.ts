import { DistanceGatherer, type DistanceMeasure } from './distance-measure.js';
import { sinhSteps } from './ring-pair.js';

/** Pipes round a closed ring of trench, as plain numbers. */
export interface RingedPipes {
  /** Radius of each pipe's ring and depth of its axis, soil that stands for a film included [m]. */
  readonly rings: readonly { readonly ringRadius: number; readonly depth: number }[];
  /** Outside radius of the pipe [m]. */
  readonly radius: number;
  /** 1 below a sealed surface, otherwise −1. */
  readonly mirror: 1 | -1;
}

const PARTS = 4;

/** How much pipe lies how far from the walls of pipes on rings about one axis, on average over all pipe, directly and by mirror images. */
export function ringTrenchMeasure({ rings, radius, mirror }: RingedPipes): DistanceMeasure {
  const gatherer = new DistanceGatherer();
  const all = rings.reduce((sum, { ringRadius }) => sum + ringRadius, 0);
  for (const wall of rings)
    for (const source of rings) {
      const share = wall.ringRadius / all;
      coaxial(wall.ringRadius, source.ringRadius, wall.depth - source.depth, radius, (distance, length) => {
        gatherer.add(distance, share * length);
      });
      coaxial(wall.ringRadius, source.ringRadius, wall.depth + source.depth, radius, (distance, length) => {
        gatherer.add(distance, mirror * share * length);
      });
    }
  return gatherer.measure();
}

/** Distances from all points of a ring to the wall of one on the same axis, which is taken at its inner and its outer side. */
function coaxial(wall: number, source: number, gap: number, radius: number, sink: (distance: number, length: number) => void): void {
  const to = (ring: number, chord: number): number => Math.sqrt((ring - source) ** 2 + gap * gap + ring * source * chord * chord);
  sinhSteps(Math.hypot(wall - source, gap, radius) / source, Math.PI, PARTS, (angle, width) => {
    const chord = 2 * Math.sin(angle / 2);
    sink((to(wall - radius, chord) + to(wall + radius, chord)) / 2, 2 * source * width);
  });
}
