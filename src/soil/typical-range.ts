import { bandShape, type Band } from '../states/index.js';
import type { Density, Fraction, Shape } from '../units/index.js';
import { bandAround } from './band-around.js';
import { typicalSoil, type TextureClass } from './texture.js';
import { TYPICAL_RANGES } from './typical-range.data.js';

/** How far the guess for a texture class may be off. */
export interface TypicalSoilRange {
  /** Dry density of soil lying undisturbed. */
  readonly dryDensityBand: Band<'density'>;
  /** Dry density of farmed topsoil, looser than soil at the depth of a pipe; absent where the table has none [kg/m3]. */
  readonly topsoilDensity?: Density;
  /** Quartz by the poorest of three customs [1]. */
  readonly quartzFractionLow: Fraction;
  /** Quartz by the table that is reckoned with [1]. */
  readonly quartzFraction: Fraction;
  /** Quartz by the richest of three customs [1]. */
  readonly quartzFractionHigh: Fraction;
}

/** Shape of {@link TypicalSoilRange}. */
export const typicalSoilRangeShape: Shape<TypicalSoilRange> = {
  dryDensityBand: /* @__PURE__ */ bandShape('density'),
  topsoilDensity: { optional: 'density' },
  quartzFractionLow: 'fraction',
  quartzFraction: 'fraction',
  quartzFractionHigh: 'fraction',
};

/** Standard error of the logarithm of a typical density (`kansasCores2022`: 37 cores scatter by 10 %). */
const SCATTER = 0.1;

/**
 * How far density and quartz of a texture class may lie from what is typical.
 *
 * Quartz is told by three customs that differ most in sand: the table that is reckoned with, all of the sand, and half of it.
 *
 * @param texture - class of the USDA triangle
 * @returns band of the dry density and its topsoil value [kg/m3], least, reckoned and greatest quartz [1]
 * @throws InputError when the class is unknown
 * @remarks
 * Sources: `kansasCores2022` (scatter of density), `topsoilDensities`, `petersLidard1998` (table of quartz), `landModelSoils` (half of the sand),
 * `lu2007` (all of the sand).
 *
 * Invariants: the estimates are those of {@link typicalSoil} and lie within their limits.
 * @example
 * ```ts @import.meta.vitest
 * const { quartzFractionLow, quartzFractionHigh } = typicalSoilRange('sandy loam');
 * expect(quartzFractionLow).toBeCloseTo(0.32, 2);
 * expect(quartzFractionHigh).toBeCloseTo(0.65, 2);
 * ```
 */
export function typicalSoilRange(texture: TextureClass): TypicalSoilRange {
  const { dryDensity, quartzFraction } = typicalSoil(texture);
  const { middleSand, topsoil } = TYPICAL_RANGES[texture];
  const customs = [quartzFraction, middleSand, middleSand / 2];
  return {
    dryDensityBand: bandAround<'density'>(dryDensity, SCATTER),
    ...(topsoil === undefined ? {} : { topsoilDensity: topsoil as Density }),
    quartzFractionLow: Math.min(...customs) as Fraction,
    quartzFraction,
    quartzFractionHigh: Math.max(...customs) as Fraction,
  };
}
