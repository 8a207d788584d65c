import fc from 'fast-check';
import { TEXTURE_CLASSES, typicalSoil, type SampledSoil, type TextureClass } from '../../src/soil/index.js';
import { dryBasisFraction, kilogramsPerCubicMetre } from '../../src/units/index.js';

/** A class of the texture triangle. */
export const arbitraryTexture: fc.Arbitrary<TextureClass> = fc.constantFrom(...TEXTURE_CLASSES);

/** A soil as it may lie: texture, a density within a quarter of the typical one, and water from none to full pores. */
export const arbitrarySoil: fc.Arbitrary<{
  readonly texture: TextureClass;
  readonly dryDensity: number;
  readonly saturation: number;
  readonly water: number;
}> = fc
  .record({
    texture: arbitraryTexture,
    looseness: fc.double({ min: 0.75, max: 1.25, noNaN: true }),
    saturation: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ texture, looseness, saturation }) => {
    const dryDensity = looseness * typicalSoil(texture).dryDensity;
    return { texture, dryDensity, saturation, water: saturation * (1000 / dryDensity - 1000 / 2650) };
  });

/** Such a soil as a sample with a pushed core. */
export function sampled({
  texture,
  dryDensity,
  water,
}: {
  readonly texture: TextureClass;
  readonly dryDensity: number;
  readonly water: number;
}): SampledSoil {
  return {
    from: 'sample',
    moisture: { basis: 'dry', value: dryBasisFraction(water) },
    density: { from: 'core', dryDensity: kilogramsPerCubicMetre(dryDensity) },
    texture: { from: 'laboratory', class: texture },
  };
}
