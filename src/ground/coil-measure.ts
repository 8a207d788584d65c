import { alongCoil } from './along-coil.js';
import { DistanceGatherer, type DistanceMeasure, type DistanceSink } from './distance-measure.js';
import { lineBeside } from './line-beside.js';
import { ringItself, ringPair, type Rings } from './ring-pair.js';

/** Coils in equal, parallel trenches, as plain numbers. */
export interface Coils extends Rings {
  readonly upright: boolean;
  readonly pitch: number;
  /** Rings in each trench; Infinity for a coil without end. */
  readonly turns: number;
  readonly trenches: number;
  readonly trenchSpacing: number;
  /** Depth of the ring centres below the surface, soil that stands for a film on top included [m]. */
  readonly centre: number;
  /** The return: sideways, and below the surface like the centres [m]. */
  readonly returning: { readonly x: number; readonly depth: number } | undefined;
  /** 1 below a sealed surface, whose mirror images have the sign of the pipe, otherwise −1. */
  readonly mirror: 1 | -1;
}

/** Pipe of the rings of a coil in a metre of trench, counted as circles [1]. */
export function circlesPerMetre({ ringRadius, pitch }: Pick<Coils, 'ringRadius' | 'pitch'>): number {
  return (2 * Math.PI * ringRadius) / pitch;
}

/**
 * How much pipe of coils lies how far from their walls, on average over all pipe: ring to ring, ring to return, return to return, in one trench and from
 * trench to trench, directly and by mirror images.
 *
 * Every way is the same seen from either end, so all of it is one symmetric sum.
 */
export function coilMeasure(coils: Coils): DistanceMeasure {
  const gatherer = new DistanceGatherer();
  const returning = coils.returning;
  const rings = circlesPerMetre(coils);
  const all = returning === undefined ? rings : rings + 1;
  for (let trenchesOn = 0; trenchesOn < coils.trenches; trenchesOn += 1) {
    const trenches = ((trenchesOn === 0 ? 1 : 2) * (coils.trenches - trenchesOn)) / coils.trenches;
    const gather =
      (share: number): DistanceSink =>
      (distance, length) => {
        gatherer.add(distance, trenches * share * length);
      };
    ringsToRings(coils, trenchesOn * coils.trenchSpacing, (share) => gather((share * rings) / all));
    if (returning === undefined) continue;
    // The rings feel the return as the return feels the rings: one of the two, twice.
    ringsToReturn(coils, returning, trenchesOn * coils.trenchSpacing, (share) => gather((2 * share * rings) / all));
    const beside = trenchesOn === 0 ? coils.radius : trenchesOn * coils.trenchSpacing;
    const length = coils.turns * coils.pitch;
    lineBeside(beside, length, gather(1 / all));
    lineBeside(Math.hypot(trenchesOn * coils.trenchSpacing, 2 * returning.depth), length, gather(coils.mirror / all));
  }
  return gatherer.measure();
}

type Shared = (share: number) => DistanceSink;

function ringsToRings(coils: Coils, sideways: number, shared: Shared): void {
  const { ringRadius, upright, centre, mirror } = coils;
  alongCoil({ ...coils, ringDiameter: 2 * ringRadius }, (along, number) => {
    if (along === 0 && sideways === 0) ringItself(coils, shared(number));
    else if (upright) ringPair(coils, along, sideways, shared(number));
    else ringPair(coils, Math.hypot(along, sideways), 0, shared(number));
    // A ring mirrored in the surface is a ring again, above its image's centre or beside it.
    if (upright) ringPair(coils, Math.hypot(along, 2 * centre), sideways, shared(mirror * number));
    else ringPair(coils, Math.hypot(along, sideways), 2 * centre, shared(mirror * number));
  });
}

const PLACES = 48;

function ringsToReturn(coils: Coils, returning: { readonly x: number; readonly depth: number }, sideways: number, shared: Shared): void {
  const { ringRadius, upright, centre, mirror } = coils;
  const length = coils.turns * coils.pitch;
  for (let place = 0; place < PLACES; place += 1) {
    const side = ringRadius * Math.sin((2 * Math.PI * (place + 0.5)) / PLACES);
    const [x, depth] = upright ? [0, centre + side] : [side, centre];
    // Trenches lie to both sides, and half of those a distance off are on either.
    for (const to of sideways === 0 ? [0] : [sideways, -sideways]) {
      const share = (sideways === 0 ? 1 : 0.5) / PLACES;
      const across = returning.x + to - x;
      lineBeside(Math.hypot(across, returning.depth - depth), length, shared(share));
      lineBeside(Math.hypot(across, returning.depth + depth), length, shared(mirror * share));
    }
  }
}
