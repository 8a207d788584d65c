import { demandChoice } from '../errors/index.js';
import type { Density, Fraction, Shape } from '../units/index.js';
import { DEFAULT_PARTICLE_DENSITY } from './particle-density.js';
import { type TextureRecord, TEXTURES } from './texture.data.js';

/** A class of the USDA texture triangle. */
export type TextureClass = keyof typeof TEXTURES;

/** The classes of the USDA texture triangle. */
export const TEXTURE_CLASSES: readonly TextureClass[] = [
  'sand',
  'loamy sand',
  'sandy loam',
  'silt loam',
  'silt',
  'loam',
  'sandy clay loam',
  'silty clay loam',
  'clay loam',
  'sandy clay',
  'silty clay',
  'clay',
];

/** What is typical of a texture class where nothing was measured. */
export interface TypicalSoil {
  /** Dry density of soil lying undisturbed; right to about 10 % at one sigma [kg/m3]. */
  readonly dryDensity: Density;
  /** Porosity of soil lying undisturbed [1]. */
  readonly porosity: Fraction;
  /** Volume of quartz in the volume of the solids [1]. */
  readonly quartzFraction: Fraction;
  /** Whether it conducts like a coarse or like a fine soil: coarse from about 40 % of sand. */
  readonly grain: Grain;
  /** Whether Kersten's equation for sandy soil or the one for silt and clay is meant for it: silt and clay from half of their sum. */
  readonly kerstenSoil: KerstenSoil;
}

/** Coarse or fine, which decides how conductivity grows with saturation. */
export type Grain = 'coarse' | 'fine';

/** The soils Kersten's equations are for. */
export type KerstenSoil = 'sandy' | 'silt or clay';

/** Shape of {@link TypicalSoil}. */
export const typicalSoilShape: Shape<TypicalSoil> = {
  dryDensity: 'density',
  porosity: 'fraction',
  quartzFraction: 'fraction',
  grain: ['coarse', 'fine'],
  kerstenSoil: ['sandy', 'silt or clay'],
};

/**
 * Typical density, quartz and grain of a texture class.
 *
 * A guess that replaces no measurement: density scatters by 10 % about it, and quartz depends on the rock the soil came from.
 *
 * @param texture - class of the USDA triangle
 * @returns dry density [kg/m3], porosity and quartz fraction [1], grain
 * @throws InputError when the class is unknown
 * @remarks
 * Dry density = (1 − porosity) · 2650 kg/m³. Sources: `landModelSoils` (porosity), `petersLidard1998` (quartz). Checked against the
 * measured cores (`kansasCores2022`).
 * @example
 * ```ts @import.meta.vitest
 * expect(typicalSoil('loam').quartzFraction).toBe(0.4);
 * expect(typicalSoil('loam').dryDensity).toBeCloseTo(1487, 0);
 * ```
 */
export function typicalSoil(texture: TextureClass): TypicalSoil {
  demandChoice('texture', texture, TEXTURE_CLASSES);
  const { porosity, quartzFraction, coarse, siltOrClay }: TextureRecord = TEXTURES[texture];
  return {
    dryDensity: (1 - porosity) * DEFAULT_PARTICLE_DENSITY,
    porosity,
    quartzFraction,
    grain: coarse ? 'coarse' : 'fine',
    kerstenSoil: siltOrClay ? 'silt or clay' : 'sandy',
  } as TypicalSoil;
}
