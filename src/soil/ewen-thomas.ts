import type { Density, Fraction, VolumeFraction } from '../units/index.js';
import { interpolated, type InterpolatedConductivityResult } from './interpolated.js';
import { johansenConductivity } from './johansen.js';
import { DEFAULT_PARTICLE_DENSITY } from './particle-density.js';
import type { PackedSoil } from './pores.js';

/** What the equation of Ewen and Thomas is computed from. */
export interface EwenThomasSoil extends PackedSoil {
  /** Volume of quartz in the volume of mineral solids, 0 to 1 [1]. */
  readonly quartzFraction: Fraction;
  /** Volume of organic matter in the volume of solids, 0 to 1; 0 when left out [m3/m3]. */
  readonly organicShare?: VolumeFraction;
}

/** How fast the Kersten number rises with the saturation [1]. */
const RISE = 8.9;

/**
 * Thermal conductivity of a mineral soil after Ewen and Thomas: between the ends of Johansen's equation, by an exponential from dry soil on.
 *
 * Made from an unsaturated medium sand, unfrozen. It tells no fine from coarse soil and reads half-dry clay high.
 *
 * @param soil - dry density [kg/m3], saturation, quartz fraction
 * @returns conductivity with dry and saturated ends [W/(m.K)]
 * @throws InputError when a number is impossible, alone or together
 * @remarks
 * Ke = 1 − exp(−8.9 S), ends as {@link johansenConductivity}. Source: `ewenThomas1987` in the form of `landModelSoils`. Checked, over 98
 * measured states (`kansasCores2022`), against the independent root-mean-square error of 0.205 W/(m·K).
 *
 * Invariants: lies between the dry and the saturated conductivity, which it misses by 0.014 % of their difference; rises with saturation
 * and density.
 * @example
 * ```ts @import.meta.vitest
 * const { fraction, kilogramsPerCubicMetre, ratio } = await import('../units/index.js');
 * const sand = { dryDensity: kilogramsPerCubicMetre(1600), saturation: ratio(0.2), quartzFraction: fraction(0.8) };
 * expect(ewenThomasConductivity(sand).kerstenNumber).toBeCloseTo(0.8314, 4);
 * ```
 */
export function ewenThomasConductivity({
  dryDensity,
  saturation,
  particleDensity = DEFAULT_PARTICLE_DENSITY as Density,
  quartzFraction,
  organicShare = 0 as VolumeFraction,
}: EwenThomasSoil): InterpolatedConductivityResult {
  // The ends are those of either grain.
  const ends = johansenConductivity({ dryDensity, saturation, particleDensity, quartzFraction, organicShare, grain: 'coarse' });
  return interpolated(ends, 1 - Math.exp(-RISE * saturation));
}
