import type { ConductingLayer } from './layered-rise.js';
import type { Panel, Place } from './panel.js';

/** Ground in layers with a trench in it whose fill lies in layers too; the last of these ends at the bottom of the trench. */
export interface TrenchSection {
  readonly native: readonly ConductingLayer[];
  readonly fill: readonly ConductingLayer[];
  readonly halfWidth: number;
}

/** A panel is no longer than this share of its distance from a pipe, or from an edge of the trench. */
const FINE = 0.3;

/** Panels at the edges of the trench are not made shorter than this share of its width. */
const LEAST = 0.02;

/** Faces between layers of the ground are followed aside as far as this many depths of them; charges there fade by the square. */
const FAR = 30;

/** Every face between two grounds right of the middle, in panels short enough where pipes or edges are near. */
export function trenchFaces({ native, fill, halfWidth }: TrenchSection, pipes: readonly Place[]): readonly Panel[] {
  const bottom = Math.max(...fill.map((layer) => layer.bottom));
  const depths = [...new Set([...native, ...fill].flatMap(({ top, bottom: end }) => [top, end]))].filter(Number.isFinite).sort((a, b) => a - b);
  const inTrench = (depth: number): number => conductivityAt(depth < bottom ? fill : native, depth);
  const far = FAR * (depths.at(-1) ?? bottom);
  const edges = depths.filter((depth) => depth <= bottom).map((depth) => ({ x: halfWidth, depth }));
  const near = pipes.map(({ x, depth }) => ({ x: Math.abs(x), depth }));
  const level = depths.slice(1).flatMap((depth, index) => {
    const [above, below] = [((depths[index] ?? 0) + depth) / 2, (depth + (depths[index + 2] ?? depth + 1)) / 2];
    const face = (from: number, to: number, conductivity: (where: number) => number): readonly Face[] => [
      { from: { x: from, depth }, to: { x: to, depth }, contrast: contrast(conductivity(above), conductivity(below)) },
    ];
    const beside = (each: number): number => conductivityAt(native, each);
    return [...face(0, halfWidth, inTrench), ...face(halfWidth, far, beside)];
  });
  const upright = depths.slice(1).map((depth, index) => {
    const top = depths[index] ?? 0;
    const [inside, beside] = [inTrench((top + depth) / 2), conductivityAt(native, (top + depth) / 2)];
    return { from: { x: halfWidth, depth: top }, to: { x: halfWidth, depth }, contrast: contrast(inside, beside) };
  });
  const least = LEAST * 2 * halfWidth;
  return [...level, ...upright].filter((face) => face.contrast !== 0).flatMap((face) => cut(face, near, edges, least));
}

interface Face {
  readonly from: Place;
  readonly to: Place;
  readonly contrast: number;
}

/** Conductivity of the layer at a depth that is no interface. */
export function conductivityAt(layers: readonly ConductingLayer[], depth: number): number {
  return layers.find(({ bottom }) => depth < bottom)?.conductivity ?? NaN;
}

function contrast(before: number, after: number): number {
  return (after - before) / (after + before);
}

/** Halves a face until each half is short enough. */
function cut({ from, to, contrast: over }: Face, pipes: readonly Place[], edges: readonly Place[], least: number): readonly Panel[] {
  const middle = { x: (from.x + to.x) / 2, depth: (from.depth + to.depth) / 2 };
  const half = Math.hypot(to.x - from.x, to.depth - from.depth) / 2;
  const nearest = (places: readonly Place[]): number => Math.min(...places.map((place) => distance(place, from, to)));
  const longest = Math.min(FINE * nearest(pipes), Math.max(least, FINE * nearest(edges)));
  if (2 * half <= longest) return [{ ...middle, half, upright: from.x === to.x, contrast: over }];
  return [...cut({ from, to: middle, contrast: over }, pipes, edges, least), ...cut({ from: middle, to, contrast: over }, pipes, edges, least)];
}

/** From a place to the nearest point of a level or upright face. */
function distance({ x, depth }: Place, from: Place, to: Place): number {
  return Math.hypot(Math.max(from.x - x, 0, x - to.x), Math.max(from.depth - depth, 0, depth - to.depth));
}
