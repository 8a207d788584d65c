import { crossSlope } from './cross-slope.js';

/** A quantity at a place, with its slopes along the axes below. */
export interface Reading {
  readonly value: number;
  /** Change per kelvin of entering fluid. */
  readonly byEntering: number;
  /** Change per kelvin on the load side. */
  readonly byLoadSide: number;
}

/** A reading across members, with its change along the axis they are stacked over; made once for each, with no spread, since every hour of a simulation makes some. */
export interface AcrossReading extends Reading {
  readonly across: number;
}

/**
 * Joins curves, or surfaces, that each belong to one value of a further axis: cubics between neighbours, with one slope where two meet.
 *
 * @param knots - the value of each member, rising
 * @param member - reading of one member at the place along the axes below
 * @param place - where along the further axis; beyond the ends the straight line of the end
 * @returns value and slopes along every axis
 * @remarks
 * Between two members the value lies between theirs, whatever the others do, and is continuous with all slopes if theirs are. Members that lie on a line, or on a
 * parabola whose neighbouring secants differ by less than a factor of 1/0.6, give it back. Where all members rise along an axis below, so does
 * what lies between them if the slope g across at each of the two members k satisfies −3 f'/H ≤ g' ≤ 3 f'/H with the derivative along that axis and H the
 * distance of the two: u/(1 + 2u) ≤ 1/3 bounds what the slope can take away. Members that rise at rates within a factor of 1.5, at distances within a
 * factor of 2, satisfy it; wilder ones may not.
 */
export function acrossMembers(knots: readonly number[], member: (index: number) => Reading, place: number): AcrossReading {
  const last = knots.length - 1;
  if (last === 0) return sum(1, member(0), 0, NOTHING, 0);
  const knot = (index: number): number => knots[index] ?? Number.NaN;
  let k = 0;
  while (k < last - 1 && place > knot(k + 1)) k += 1;
  const width = knot(k + 1) - knot(k);
  const [left, right] = [member(k), member(k + 1)];
  const middle = sum(1 / width, right, -1 / width, left);
  const before = k > 0 ? sum(1 / (knot(k) - knot(k - 1)), left, -1 / (knot(k) - knot(k - 1)), member(k - 1)) : undefined;
  const after = k + 1 < last ? sum(1 / (knot(k + 2) - knot(k + 1)), member(k + 2), -1 / (knot(k + 2) - knot(k + 1)), right) : undefined;
  const shareLeft = k > 0 ? width / (knot(k + 1) - knot(k - 1)) : 0;
  const shareRight = k + 1 < last ? (knot(k + 2) - knot(k + 1)) / (knot(k + 2) - knot(k)) : 0;
  const inLeft = before && between(before, middle, shareLeft);
  const inRight = after && between(middle, after, shareRight);
  // At an end its secant is led on by half the change to the next: twice the secant less the slope at the next member.
  const slopeLeft = inLeft ?? (inRight ? sum(2, middle, -1, inRight) : middle);
  const slopeRight = inRight ?? (inLeft ? sum(2, middle, -1, inLeft) : middle);
  const t = place - knot(k);
  if (t <= 0) return sum(1, left, t, slopeLeft, slopeLeft.value);
  if (t >= width) return sum(1, right, t - width, slopeRight, slopeRight.value);
  const u = t / width;
  const rise = u * u * (3 - 2 * u);
  const ends = sum(1 - rise, left, rise, right);
  const slopes = sum(width * u * (1 - u) * (1 - u), slopeLeft, -width * u * u * (1 - u), slopeRight);
  const across = 6 * u * (1 - u) * middle.value + (1 - u) * (1 - 3 * u) * slopeLeft.value - u * (2 - 3 * u) * slopeRight.value;
  return sum(1, ends, 1, slopes, across);
}

const NOTHING: Reading = { value: 0, byEntering: 0, byLoadSide: 0 };

function sum(a: number, one: Reading, b: number, other: Reading, across = 0): AcrossReading {
  return {
    value: a * one.value + b * other.value,
    byEntering: a * one.byEntering + b * other.byEntering,
    byLoadSide: a * one.byLoadSide + b * other.byLoadSide,
    across,
  };
}

function between(before: Reading, after: Reading, share: number): Reading {
  const { slope, byBefore, byAfter } = crossSlope(before.value, after.value, share);
  return {
    value: slope,
    byEntering: byBefore * before.byEntering + byAfter * after.byEntering,
    byLoadSide: byBefore * before.byLoadSide + byAfter * after.byLoadSide,
  };
}
