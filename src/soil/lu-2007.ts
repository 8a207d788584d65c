import { demand, demandChoice } from '../errors/index.js';
import type { Fraction, VolumeFraction } from '../units/index.js';
import { interpolated, saturatedConductivity, type InterpolatedConductivityResult } from './interpolated.js';
import { luDryConductivity, luDryFindings } from './lu-dry.js';
import { type PackedSoil, poresOf } from './pores.js';
import { solidConductivity } from './solid-conductivity.js';
import type { Grain } from './texture.js';

/** What the equation of Lu and others of 2007 is computed from. */
export interface LuSoil extends PackedSoil {
  /** Volume of quartz in the volume of mineral solids, 0 to 1; the authors took the sand for it [1]. */
  readonly quartzFraction: Fraction;
  /** Coarse from 40 % of sand on, else fine. */
  readonly grain: Grain;
  /** Volume of organic matter in the volume of solids, 0 to 1; 0 when left out [m3/m3]. */
  readonly organicShare?: VolumeFraction;
}

/** How sharply the Kersten number rises; coarse and fine. A land model carries other numbers under the same citation: a refit of its own. */
const RISE = { coarse: 0.96, fine: 0.27 };
const SHAPE = 1.33;

/** Water as this equation has it, at 20 °C [W/(m.K)]; it has no frozen form. */
const FILLING = { water: 0.594 };

/**
 * Thermal conductivity of a mineral soil after Lu, Ren, Gong and Horton (2007): Johansen's saturated end, a Kersten number without a step.
 *
 * Unfrozen soil at room temperature, sand to silty clay, porosity 0.2 to 0.6; outside of it the line of dry soil is extrapolated and a
 * finding says so. Of the models here it meets measured cores best where moist; below a saturation of 0.1 it reads 0.18 W/(m·K) low.
 *
 * @param soil - dry density [kg/m3], saturation, quartz fraction, grain
 * @returns conductivity with dry and saturated ends [W/(m.K)], and what is outside the range
 * @throws InputError when a number is impossible, alone or together, or the soil so loose that the line of dry soil fails
 * @remarks
 * k = kdry + (ksat − kdry) exp(α (1 − S^(α − 1.33))), α 0.96 coarse and 0.27 fine; kdry = 0.51 − 0.56 n; ksat = ks^(1−n) · 0.594^n.
 * Source: `lu2007`. Checked against cases computed independently (0.1 %) and, over 98 measured states (`kansasCores2022`), the independent
 * root-mean-square error of 0.143 W/(m·K).
 *
 * Invariants: lies between the dry and the saturated conductivity; rises with saturation and density.
 * @example
 * ```ts @import.meta.vitest
 * const { fraction, kilogramsPerCubicMetre, ratio } = await import('../units/index.js');
 * const { conductivity } = luConductivity({
 *   dryDensity: kilogramsPerCubicMetre(1325),
 *   saturation: ratio(0.6),
 *   quartzFraction: fraction(0.1),
 *   grain: 'fine',
 * });
 * expect(conductivity).toBeCloseTo(1.193, 3);
 * ```
 */
export function luConductivity(soil: LuSoil): InterpolatedConductivityResult {
  const { saturation, quartzFraction, grain, organicShare = 0 as VolumeFraction } = soil;
  demand('quartzFraction', 'fraction', quartzFraction, { atLeast: 0, atMost: 1 });
  demandChoice('grain', grain, ['coarse', 'fine']);
  demand('organicShare', 'volume fraction', organicShare, { atLeast: 0, atMost: 1 });
  const pores = poresOf(soil);
  const dry = luDryConductivity(soil, pores.porosity);
  const solid = solidConductivity(quartzFraction, organicShare);
  const rise = RISE[grain];
  // The power is infinite without water, and the exponential of its negative then 0, which is meant.
  const kerstenNumber = Math.exp(rise * (1 - saturation ** (rise - SHAPE)));
  return interpolated(
    { solid, dry, saturated: saturatedConductivity(solid, pores, FILLING) },
    kerstenNumber,
    luDryFindings('lu-2007', pores.porosity),
  );
}
