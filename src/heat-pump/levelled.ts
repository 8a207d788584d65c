import { EXTRAPOLATED, LEVELLING } from './unit-curves.js';

/** Where a continued curve is read, and how fast that place still moves. */
export interface LevelledPlace {
  readonly place: number;
  readonly fading: number;
}

/** A place between two ends and 2 K beyond stands as it is; further out it levels off within one more kelvin, with a slope that has no jump. */
export function levelled(given: number, lowest: number, highest: number): LevelledPlace {
  const inside = Math.min(Math.max(given, lowest - EXTRAPOLATED), highest + EXTRAPOLATED);
  if (given === inside) return { place: given, fading: 1 };
  const fading = Math.exp(-Math.abs(given - inside) / LEVELLING);
  return { place: inside + Math.sign(given - inside) * LEVELLING * (1 - fading), fading };
}
