/** A straight piece of the face between two grounds, upright or level, with the ground on its two sides. */
export interface Panel {
  /** Middle, and half of the length. */
  readonly x: number;
  readonly depth: number;
  readonly half: number;
  readonly upright: boolean;
  /** Conductivity below it or to its right less the one above or to its left, over the sum of both. */
  readonly contrast: number;
}

/** A place in the section of a trench. */
export interface Place {
  readonly x: number;
  readonly depth: number;
}

/** 1/2π. */
const PER_TURN = 0.15915494309189535;

/** What an even charge of one per metre along a panel warms a place by, with the surface held at zero. */
export function warmingBy(panel: Panel, { x, depth }: Place): number {
  return PER_TURN * (logOver(panel, x, -depth) - logOver(panel, x, depth));
}

/** How fast that warming grows to the right, or downward, at a place; on the panel itself the mean of both sides. */
export function slopeBy(panel: Panel, { x, depth }: Place, sideways: boolean): number {
  const own = slopeOver(panel, x, depth, sideways);
  const mirrored = slopeOver(panel, x, -depth, sideways);
  return PER_TURN * (sideways ? mirrored - own : -mirrored - own);
}

/** What a line of one per metre at a place warms another by, no nearer than the radius of a pipe, with the surface held at zero. */
export function warmingByLine(line: Place, { x, depth }: Place, radius: number): number {
  const aside = x - line.x;
  return PER_TURN * Math.log(Math.hypot(aside, depth + line.depth) / Math.max(radius, Math.hypot(aside, depth - line.depth)));
}

/** How fast that warming grows to the right, or downward. */
export function slopeByLine(line: Place, { x, depth }: Place, sideways: boolean): number {
  const aside = x - line.x;
  const own = (sideways ? aside : depth - line.depth) / (aside ** 2 + (depth - line.depth) ** 2);
  const mirrored = (sideways ? aside : depth + line.depth) / (aside ** 2 + (depth + line.depth) ** 2);
  return PER_TURN * (mirrored - own);
}

/** Integral along the panel of the logarithm of the distance to a place. */
function logOver({ x, depth, half, upright }: Panel, right: number, down: number): number {
  const along = upright ? down - depth : right - x;
  const across = upright ? right - x : down - depth;
  const end = (at: number): number =>
    at === 0 && across === 0 ? 0 : (at / 2) * Math.log(at * at + across * across) - at + across * turned(at, across);
  return end(along + half) - end(along - half);
}

/** How fast that integral grows to the right, or downward. */
function slopeOver({ x, depth, half, upright }: Panel, right: number, down: number, sideways: boolean): number {
  const along = upright ? down - depth : right - x;
  const across = upright ? right - x : down - depth;
  const far = along + half;
  const near = along - half;
  if (sideways === upright) return turned(far, across) - turned(near, across);
  return Math.log((far * far + across * across) / (near * near + across * across)) / 2;
}

/** The angle under which a stretch is seen from so far across; none in line with it. */
function turned(along: number, across: number): number {
  return across === 0 ? 0 : Math.atan(along / across);
}
