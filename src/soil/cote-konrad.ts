import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Conductivity } from '../units/index.js';
import { interpolated, saturatedConductivity, type InterpolatedConductivityResult } from './interpolated.js';
import { PEAT_PARTICLE_DENSITY } from './particle-density.js';
import { demandFlag, type FreezableSoil, poresOf } from './pores.js';
import { ORGANIC } from './solid-conductivity.js';

/** The kinds of soil that the model of Côté and Konrad tells apart. */
export type CoteKonradClass = 'gravel or coarse sand' | 'medium or fine sand' | 'silt or clay' | 'fibrous organic';

/** What the model of Côté and Konrad is computed from. */
export interface CoteKonradSoil extends FreezableSoil {
  /** Which kind of soil. */
  readonly soil: CoteKonradClass;
  /** Conductivity of the solids, 0.1 to 10; 3.0 for sand and gravel, 2.9 for silt and clay, 0.25 for organic matter when left out [W/(m.K)]. */
  readonly solid?: Conductivity;
  /** Whether the solids are crushed rock, which touch one another better when dry; no when left out. */
  readonly crushed?: boolean;
}

/** By kind of soil: rise of the Kersten number without and with ice, and solids where nothing is known of them. */
interface ClassRecord {
  readonly unfrozen: number;
  readonly frozen: number;
  readonly solid: number;
}
const CLASSES: Readonly<Record<CoteKonradClass, ClassRecord>> = {
  'gravel or coarse sand': { unfrozen: 4.6, frozen: 1.7, solid: 3.0 },
  'medium or fine sand': { unfrozen: 3.55, frozen: 0.95, solid: 3.0 },
  'silt or clay': { unfrozen: 1.9, frozen: 0.85, solid: 2.9 },
  'fibrous organic': { unfrozen: 0.6, frozen: 0.25, solid: ORGANIC },
};

/** Dry soil: conductivity extrapolated to no pores [W/(m.K)] and decades lost from there to all pores [1]. */
const DRY = { natural: [0.75, 1.2], crushed: [1.7, 1.8], organic: [0.3, 0.87] } as const;

/** Water and ice as this model has them [W/(m.K)]. */
const FILLING = { water: 0.6, ice: 2.24 };

/**
 * Thermal conductivity of soil, gravel, crushed rock or peat after Côté and Konrad: smooth in the saturation, from none to all.
 *
 * The model for what the others were not made for: coarse fills and peat. Measured between −5 and 20 °C. Porosity and saturation are
 * taken over their whole range; peat with full pores was measured 9 to 25 % lower.
 *
 * @param soil - dry density [kg/m3], saturation, kind of soil; solids [W/(m.K)], crushed or not, frozen or not
 * @returns conductivity with dry and saturated ends [W/(m.K)]
 * @throws InputError when a number is impossible, alone or together
 * @remarks
 * k = kdry + (ksat − kdry) κS / (1 + (κ − 1)S); kdry = χ · 10^(−ηn); ksat = ks^(1−n) · 0.60^n, frozen ks^(1−n) · 2.24^(n−θu) · 0.60^θu.
 * Source: `coteKonrad2005`, default solids as in `landModelSoils`. Checked against cases computed independently (0.1 %) and, over 98
 * measured states (`kansasCores2022`), the independent root-mean-square error of 0.182 W/(m·K) with solids by the sand fraction.
 *
 * Invariants: lies between the dry and the saturated conductivity; rises with saturation, and mineral soil with density.
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerCubicMetre, ratio } = await import('../units/index.js');
 * const { conductivity } = coteKonradConductivity({
 *   dryDensity: kilogramsPerCubicMetre(1590),
 *   saturation: ratio(0.5),
 *   soil: 'medium or fine sand',
 * });
 * expect(conductivity).toBeCloseTo(1.284, 3);
 * ```
 */
export function coteKonradConductivity(soil: CoteKonradSoil): InterpolatedConductivityResult {
  const { soil: kind, crushed = false } = soil;
  demandChoice('soil', kind, Object.keys(CLASSES));
  demandFlag('crushed', crushed);
  const organic = kind === 'fibrous organic';
  if (crushed && organic) {
    throw new InputError({
      code: 'impossible',
      argument: 'crushed',
      value: 'true',
      allowed: 'false for fibrous organic soil',
      hint: 'rock is crushed',
    });
  }
  const { solid = CLASSES[kind].solid as Conductivity } = soil;
  demand('solid', 'conductivity', solid, { atLeast: 0.1, atMost: 10 });
  return organic ? fibrousOrganic(soil, solid) : between(soil, { kind, solid, dry: DRY[crushed ? 'crushed' : 'natural'] });
}

/** Fibrous organic soil, its solids as the model has them or of a conductivity that is known. */
export function fibrousOrganic(soil: FreezableSoil, solid: number = ORGANIC): InterpolatedConductivityResult {
  return between(soil, { kind: 'fibrous organic', solid, dry: DRY.organic, grains: PEAT_PARTICLE_DENSITY });
}

interface Skeleton {
  readonly kind: CoteKonradClass;
  readonly solid: number;
  readonly dry: readonly [number, number];
  readonly grains?: number;
}

function between(soil: FreezableSoil, { kind, solid, dry: [scale, decades], grains }: Skeleton): InterpolatedConductivityResult {
  const { saturation, frozen = false } = soil;
  const pores = poresOf(soil, grains);
  const rise = CLASSES[kind][frozen ? 'frozen' : 'unfrozen'];
  const ends = { solid, dry: scale * 10 ** (-decades * pores.porosity), saturated: saturatedConductivity(solid, pores, FILLING) };
  return interpolated(ends, (rise * saturation) / (1 + (rise - 1) * saturation));
}
