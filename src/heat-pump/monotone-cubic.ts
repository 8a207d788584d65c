/** A smooth curve through points. */
export interface MonotoneCubic {
  /** Value and slope at a place; beyond the ends the straight line of the end. */
  readonly at: (x: number) => { readonly value: number; readonly slope: number };
}

/**
 * Smooth curve through points that rises and falls only where they do: a cubic between each two, with one slope where two meet.
 *
 * Slopes at the points are those of the parabola through three neighbours, so that points from a parabola give it back; where the
 * curve would overshoot they are made smaller. Two points give their straight line.
 *
 * @param xs - places, rising, two or more
 * @param ys - values at the places
 * @returns value and slope at any place
 * @remarks
 * A cubic with end slopes α d and β d about the secant slope d is monotone if α, β ≥ 0 and α² + β² ≤ 9. Source: `fritschCarlson1980`.
 *
 * Invariants: passes through its points; continuous with its slope; monotone between points, on intervals of monotone points.
 */
export function monotoneCubic(xs: readonly number[], ys: readonly number[]): MonotoneCubic {
  const x = Float64Array.from(xs);
  const y = Float64Array.from(ys);
  const secants = Float64Array.from({ length: x.length - 1 }, (_, k) => (at(y, k + 1) - at(y, k)) / (at(x, k + 1) - at(x, k)));
  const slopes = limit(parabolaSlopes(x, secants), secants);
  const last = x.length - 1;
  return {
    at: (place) => {
      if (place <= at(x, 0)) return line(at(y, 0), at(slopes, 0), place - at(x, 0));
      if (place >= at(x, last)) return line(at(y, last), at(slopes, last), place - at(x, last));
      let k = 0;
      while (place > at(x, k + 1)) k += 1;
      const width = at(x, k + 1) - at(x, k);
      const t = place - at(x, k);
      const left = at(slopes, k);
      const secant = at(secants, k);
      const square = (3 * secant - 2 * left - at(slopes, k + 1)) / width;
      const cube = (left + at(slopes, k + 1) - 2 * secant) / (width * width);
      return { value: at(y, k) + t * (left + t * (square + t * cube)), slope: left + t * (2 * square + 3 * t * cube) };
    },
  };
}

const line = (value: number, slope: number, distance: number): { value: number; slope: number } => ({ value: value + slope * distance, slope });

/** An entry that is known to be there. */
const at = (list: Float64Array, index: number): number => list[index] ?? Number.NaN;

function parabolaSlopes(x: Float64Array, secants: Float64Array): Float64Array {
  const last = secants.length;
  if (last === 1) return Float64Array.of(at(secants, 0), at(secants, 0));
  // Inside, the two secants weighed crosswise by their widths; at an end, its secant led on by half the change to the next.
  const inside = (k: number): number => {
    const before = at(x, k) - at(x, k - 1);
    const after = at(x, k + 1) - at(x, k);
    return (after * at(secants, k - 1) + before * at(secants, k)) / (before + after);
  };
  return Float64Array.from({ length: last + 1 }, (_, k) => {
    if (k === 0) return 2 * at(secants, 0) - inside(1);
    if (k === last) return 2 * at(secants, last - 1) - inside(last - 1);
    return inside(k);
  });
}

function limit(slopes: Float64Array, secants: Float64Array): Float64Array {
  secants.forEach((secant, k) => {
    if (at(slopes, k) * secant <= 0) slopes[k] = 0;
    if (at(slopes, k + 1) * secant <= 0) slopes[k + 1] = 0;
    if (secant === 0) return;
    const size = Math.hypot(at(slopes, k), at(slopes, k + 1)) / Math.abs(secant);
    if (size <= 3) return;
    slopes[k] = (3 / size) * at(slopes, k);
    slopes[k + 1] = (3 / size) * at(slopes, k + 1);
  });
  return slopes;
}
