/** A slope and what it changes by with the two secants it is made from. */
export interface CrossSlope {
  readonly slope: number;
  readonly byBefore: number;
  readonly byAfter: number;
}

/** From this ratio of the smaller secant to the larger the slope is that of the parabola [1]. */
const PARABOLA_FROM = 0.6;

/**
 * Slope at a place between two neighbours, as a smooth function of the secants to either side.
 *
 * Rows of a table are joined across by slopes that themselves vary along the rows. A limit that switches would put a kink into them; this one does
 * not: it is the parabola's slope while the smaller secant is at least 0.6 of the larger, fades from there to nothing where one of them is nothing, and stays
 * nothing where they differ in sign.
 *
 * @param before - secant before the place
 * @param after - secant after it
 * @param share - weight of the secant before in the parabola's slope: width after over both widths
 * @returns slope and its two derivatives
 * @remarks
 * With S the cubic 3u² − 2u³ of u = ratio/0.6: slope ≤ 1.125/0.6 = 1.875 times the smaller secant. Under 3, so that a cubic between two such
 * slopes is monotone (`fritschCarlson1980`), and under 2, so that twice a secant less this slope has the sign of the secant: the slope at an end.
 */
export function crossSlope(before: number, after: number, share: number): CrossSlope {
  if (!(before * after > 0)) return NONE;
  const parabola = share * before + (1 - share) * after;
  const first = Math.abs(before) <= Math.abs(after);
  const large = first ? after : before;
  const ratio = (first ? before : after) / large;
  if (ratio >= PARABOLA_FROM) return { slope: parabola, byBefore: share, byAfter: 1 - share };
  const u = ratio / PARABOLA_FROM;
  const kept = u * u * (3 - 2 * u);
  const bySmall = (parabola * 6 * u * (1 - u)) / (PARABOLA_FROM * large);
  const byLarge = -ratio * bySmall;
  return {
    slope: kept * parabola,
    byBefore: kept * share + (first ? bySmall : byLarge),
    byAfter: kept * (1 - share) + (first ? byLarge : bySmall),
  };
}

const NONE: CrossSlope = { slope: 0, byBefore: 0, byAfter: 0 };
