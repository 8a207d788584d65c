import type { Fraction } from '../units/index.js';
import type { TextureClass } from './texture.js';
import { textureAt } from './texture-triangle.js';

/** A class that an uncertain composition may belong to. */
export interface TextureShare {
  /** The class. */
  readonly texture: TextureClass;
  /** How much of the compositions within the band it has, all of them taken as equally likely [1]. */
  readonly share: Fraction;
}

/** Steps from the middle of the band to its edge; a class with less than a step in the band may be missed. */
const STEPS = 20;

/** Classes of all compositions whose sand, silt and clay each lie within so many points of the given ones, the most frequent first. */
export function texturesWithin(
  earth: { readonly sand: number; readonly silt: number; readonly clay: number },
  points: number,
): readonly TextureShare[] {
  const steps = Array.from({ length: 2 * STEPS + 1 }, (_, index) => ((index - STEPS) / STEPS) * points);
  const found = steps
    .flatMap((more) => steps.map((richer) => [earth.sand + more, earth.clay + richer, more + richer] as const))
    .filter(([sand, clay, less]) => Math.abs(less) <= points && sand >= 0 && clay >= 0 && earth.silt - less >= 0)
    .map(([sand, clay]) => textureAt(sand, clay));
  const classes = [...new Set(found)];
  const shareOf = (texture: TextureClass): number => found.filter((each) => each === texture).length / found.length;
  return classes.map((texture) => ({ texture, share: shareOf(texture) as Fraction })).sort((a, b) => b.share - a.share);
}
