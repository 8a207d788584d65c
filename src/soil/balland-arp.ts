import { demand } from '../errors/index.js';
import type { Conductivity, VolumeFraction } from '../units/index.js';
import { interpolated, saturatedConductivity, type InterpolatedConductivityResult } from './interpolated.js';
import { DEFAULT_PARTICLE_DENSITY } from './particle-density.js';
import { type FreezableSoil, poresOf } from './pores.js';

/** What the model of Balland and Arp is computed from. */
export interface BallandArpSoil extends FreezableSoil {
  /** Conductivity of the solids, 0.1 to 10 [W/(m.K)]. */
  readonly solid: Conductivity;
  /** Volume of organic matter in the volume of solids, 0 to 1; 0 when left out [m3/m3]. */
  readonly organicShare?: VolumeFraction;
  /** Volume of sand in the volume of solids, 0 to 1; 0 when left out [m3/m3]. */
  readonly sandShare?: VolumeFraction;
  /** Volume of grains above 2 mm in the volume of solids, 0 to 1; 0 when left out [m3/m3]. */
  readonly gravelShare?: VolumeFraction;
}

/** Fit of the Kersten number: weight of the sand, 0.24 ± 0.04, and sharpness, 18.1 ± 1.1; another copy has 18.3. */
const SAND = 0.24;
const SHARPNESS = 18.1;

/** Dry soil: how much of the grains' conductivity their contacts let through [1], and air [W/(m.K)]. */
const CONTACT = 0.053;
const AIR = 0.024;

/** Water and ice; the authors' own are not before us, so those of Johansen [W/(m.K)]. */
const FILLING = { water: 0.57, ice: 2.2 };

/**
 * Thermal conductivity of a soil after Balland and Arp: one Kersten number from sand to humus, with gravel in it, frozen or not.
 *
 * The model for soils that are part mineral and part organic. The shares are of the volume of the solids, not of the soil.
 *
 * @param soil - dry density [kg/m3], saturation, solids [W/(m.K)]; shares of organic matter, sand and gravel [m3/m3], frozen or not
 * @returns conductivity with dry and saturated ends [W/(m.K)]
 * @throws InputError when a number is impossible, alone or together
 * @remarks
 * Ke = S^((1 + Vom − 0.24 Vsand − Vcoarse) / 2) · [(1 + e^(−18.1 S))^(−3) − ((1 − S) / 2)³]^(1 − Vom), frozen S^(1 + Vom);
 * kdry = ((a ks − kair) ρd + kair ρs) / (ρs − (1 − a) ρd), a = 0.053; ksat as a geometric mean. Source: `ballandArp2005`. One copy has
 * −0.24 beside the minus sign, with which sand would conduct worse at the same saturation. Checked against cases computed independently
 * (0.1 %) and, its Kersten number between Johansen's ends, over 98 measured states (`kansasCores2022`) the independent root-mean-square
 * error of 0.224 W/(m·K).
 *
 * Invariants: lies between the dry and the saturated conductivity, which it misses by 4e-8 of their difference; rises with saturation.
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerCubicMetre, ratio, volumeFraction, wattsPerMetreKelvin } = await import('../units/index.js');
 * const { dry, kerstenNumber } = ballandArpConductivity({
 *   dryDensity: kilogramsPerCubicMetre(1500),
 *   saturation: ratio(0.5),
 *   solid: wattsPerMetreKelvin(3),
 *   sandShare: volumeFraction(0.5),
 * });
 * expect(kerstenNumber).toBeCloseTo(0.7254, 4);
 * expect(dry).toBeCloseTo(0.2164, 4);
 * ```
 */
export function ballandArpConductivity(soil: BallandArpSoil): InterpolatedConductivityResult {
  const none = 0 as VolumeFraction;
  const { solid, organicShare = none, sandShare = none, gravelShare = none, saturation, frozen = false } = soil;
  demand('solid', 'conductivity', solid, { atLeast: 0.1, atMost: 10 });
  demand('organicShare', 'volume fraction', organicShare, { atLeast: 0, atMost: 1 });
  demand('sandShare', 'volume fraction', sandShare, { atLeast: 0, atMost: 1 });
  const room = 1 - organicShare - sandShare + 1e-9;
  demand('gravelShare', 'volume fraction', gravelShare, { atLeast: 0, atMost: 1 });
  demand('gravelShare', 'volume fraction', gravelShare, { atMost: room }, 'organic matter, sand and gravel are shares of one volume');
  const pores = poresOf(soil);
  const { dryDensity, particleDensity = DEFAULT_PARTICLE_DENSITY } = soil;
  const dry = ((CONTACT * solid - AIR) * dryDensity + AIR * particleDensity) / (particleDensity - (1 - CONTACT) * dryDensity);
  const power = (1 + organicShare - SAND * sandShare - gravelShare) / 2;
  const rise = (1 / (1 + Math.exp(-SHARPNESS * saturation))) ** 3 - ((1 - saturation) / 2) ** 3;
  const kerstenNumber = frozen ? saturation ** (1 + organicShare) : saturation ** power * rise ** (1 - organicShare);
  return interpolated({ solid, dry, saturated: saturatedConductivity(solid, pores, FILLING) }, kerstenNumber);
}
