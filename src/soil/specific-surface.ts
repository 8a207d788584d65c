import { demandChoice } from '../errors/index.js';
import type { Ratio } from '../units/index.js';
import { TEXTURE_MIDDLES } from './texture-middles.data.js';
import { TEXTURE_CLASSES, type TextureClass } from './texture.js';

/**
 * Surface of the grains by mass as a multiple of 1 m²/g: sand about 1; silt 10 to 50 and clay 50 to 300, of which the geometric means stand
 * here. Surfaces add up by mass.
 */
const SURFACE = { sand: 1, silt: 22, clay: 122 };

/** Surface of the grains of a mixture [1]. */
export function surfaceOf(sand: number, clay: number): Ratio {
  return (SURFACE.sand * sand + SURFACE.silt * (1 - sand - clay) + SURFACE.clay * clay) as Ratio;
}

/**
 * Surface of the grains that is typical of a texture class, which tells how much water stays liquid in its frozen soil.
 *
 * A guess from the middle of the class in the triangle: clays of one class differ by a factor of three with their minerals.
 *
 * @param texture - class of the USDA triangle
 * @returns surface by mass as a multiple of 1 m²/g [1]
 * @throws InputError when the class is unknown
 * @remarks Sand 1, silt 22, clay 122 m²/g, added by mass; ranges of the three from `andersonTice1972`, their middle is judgement (`common practice`). Invariant
 * tested: lies between sand's and clay's, and what soil of evidence keeps liquid follows from it.
 * @example
 * ```ts @import.meta.vitest
 * expect(typicalSpecificSurface('silt loam')).toBeCloseTo(30.4, 1);
 * expect(typicalSpecificSurface('sand')).toBeLessThan(6);
 * ```
 */
export function typicalSpecificSurface(texture: TextureClass): Ratio {
  demandChoice('texture', texture, TEXTURE_CLASSES);
  const { sand, clay } = TEXTURE_MIDDLES[texture];
  return surfaceOf(sand, clay);
}
