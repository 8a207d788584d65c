/**
 * Degree days of a surface over those of the air, by what covers it: one value for freezing, a range for thawing.
 *
 * Rough: wind, sun and snow move them by a third. `snow` is the surface of the snow itself, which then insulates the ground as a layer.
 * Source: `ufc313004`, table 4-1; where it prints "and above", the range here ends at its last figure.
 */
export const N_FACTORS = {
  snow: { freezing: 1, thawing: undefined },
  concrete: { freezing: 0.75, thawing: [1.5, 1.5] },
  asphalt: { freezing: 0.7, thawing: [1.6, 2] },
  'bare soil': { freezing: 0.7, thawing: [1.4, 2] },
  shaded: { freezing: 0.9, thawing: [1, 1] },
  turf: { freezing: 0.5, thawing: [0.8, 0.8] },
  trees: { freezing: 0.3, thawing: [0.4, 0.4] },
} as const;
