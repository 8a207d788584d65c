import type { Finding } from '../findings/index.js';
import type { Moisture } from '../states/index.js';
import type { Density, DryBasisMoisture, Fraction, Ratio, Shape, VolumeFraction, VolumetricWater } from '../units/index.js';
import { USUAL_DENSITY, usualDensity } from './likely-cause.js';
import { dryBasis } from './moisture.js';
import { DEFAULT_PARTICLE_DENSITY, WATER_DENSITY } from './particle-density.js';
import { demandRoomForWater } from './room-for-water.js';
import { demandDensities, saturatedMoisture } from './zero-air-voids.js';

/** A soil as it lies: how densely, and with how much water. */
export interface SoilState {
  /** Mass of solids per volume of soil, 20 to 2800 [kg/m3]. */
  readonly dryDensity: Density;
  /** Water content with its basis. */
  readonly moisture: Moisture;
  /** Density of the grains themselves, 1000 to 5000; 2650 when left out [kg/m3]. */
  readonly particleDensity?: Density;
}

/** Solids, water and air in a volume of soil. */
export interface SoilPhases {
  /** Mass of solids per volume of soil [kg/m3]. */
  readonly dryDensity: Density;
  /** Mass of solids and water per volume of soil [kg/m3]. */
  readonly moistDensity: Density;
  /** Density of the grains [kg/m3]. */
  readonly particleDensity: Density;
  /** Water over solids [kg/kg]. */
  readonly moisture: DryBasisMoisture;
  /** Volume of solids in the volume of soil [m3/m3]. */
  readonly solids: VolumeFraction;
  /** Volume of water in the volume of soil [m3/m3]. */
  readonly volumetricWater: VolumetricWater;
  /** Volume of air in the volume of soil; below 0 where the measurements give more water than fits [m3/m3]. */
  readonly airContent: VolumeFraction;
  /** Volume of pores in the volume of soil [1]. */
  readonly porosity: Fraction;
  /** Volume of pores over volume of solids [1]. */
  readonly voidRatio: Ratio;
  /** Volume of water in the volume of pores; at most 1.05, and over 1 only by error of measurement or swelling [1]. */
  readonly saturation: Ratio;
  /** Moisture at which this density is saturated [kg/kg]. */
  readonly saturatedMoisture: DryBasisMoisture;
}

/** {@link SoilPhases} with findings. */
export interface SoilPhasesResult extends SoilPhases {
  /** What is possible but doubtful about the density and moisture. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link SoilPhases}. */
export const soilPhasesShape: Shape<SoilPhases> = {
  dryDensity: 'density',
  moistDensity: 'density',
  particleDensity: 'density',
  moisture: 'moisture on dry basis',
  solids: 'volume fraction',
  volumetricWater: 'volumetric water',
  airContent: 'volume fraction',
  porosity: 'fraction',
  voidRatio: 'ratio',
  saturation: 'ratio',
  saturatedMoisture: 'moisture on dry basis',
};

/**
 * Volumes of solids, water and air in a soil from its dry density and moisture.
 *
 * Water is counted at 1000 kg/m³, dissolved salts and bound water not apart.
 *
 * @param state - dry density [kg/m3], moisture, density of the grains [kg/m3]
 * @returns the phases with their findings
 * @throws InputError when a number is impossible, no pores are left, or the water would fill more than 1.05 of the pores; the hint names the likely cause
 * @remarks
 * θ = w ρd / ρw, n = 1 − ρd / ρs, e = n / (1 − n), S = θ / n. Source: `soilMechanicsTexts`. Water up to 5 % beyond the pores is let
 * through with a finding: measured cores reach 1.4 % (`kansasCores2022`).
 *
 * Invariants: solids, water and air add up to 1; moist density is dry density times 1 + w.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, kilogramsPerCubicMetre } = await import('../units/index.js');
 * const dryDensity = kilogramsPerCubicMetre(1600);
 * const phases = soilPhases({ dryDensity, moisture: { basis: 'dry', value: dryBasisPercent(19.375) } });
 * expect(phases.saturation).toBeCloseTo(0.7824, 4);
 * const soaked = { basis: 'dry', value: dryBasisPercent(30) } as const;
 * expect(() => soilPhases({ dryDensity, moisture: soaked })).toThrow('may be the moist density');
 * ```
 */
export function soilPhases({ dryDensity, moisture, particleDensity = DEFAULT_PARTICLE_DENSITY as Density }: SoilState): SoilPhasesResult {
  demandDensities(dryDensity, particleDensity);
  const water = dryBasis(moisture);
  demandRoomForWater({ dryDensity, particleDensity }, moisture);
  const solids = dryDensity / particleDensity;
  const porosity = 1 - solids;
  const volumetricWater = (water * dryDensity) / WATER_DENSITY;
  const saturation = volumetricWater / porosity;
  return {
    dryDensity,
    moistDensity: dryDensity * (1 + water),
    particleDensity,
    moisture: water,
    solids,
    volumetricWater,
    airContent: porosity - volumetricWater,
    porosity,
    voidRatio: porosity / solids,
    saturation,
    saturatedMoisture: saturatedMoisture({ dryDensity, particleDensity }),
    findings: phaseFindings({ dryDensity, particleDensity, saturation: saturation as Ratio, moisture: water }),
  } as SoilPhasesResult;
}

/** Water content above which a soil called mineral is more likely organic or a very soft clay [kg/kg]. */
const ORGANIC_MOISTURE = 0.6;

/** Grains lighter than these are in part organic, and such soil may lie as loosely as it likes [kg/m3]. */
const MINERAL_GRAINS = 2400;

function phaseFindings({
  dryDensity,
  particleDensity,
  saturation,
  moisture,
}: Pick<SoilPhases, 'dryDensity' | 'particleDensity' | 'saturation' | 'moisture'>): readonly Finding[] {
  const usual = { dryDensity, low: USUAL_DENSITY.low as Density, high: USUAL_DENSITY.high as Density };
  const soft = { moisture, usual: ORGANIC_MOISTURE as DryBasisMoisture };
  return [
    ...(saturation > 1 ? [{ code: 'water-beyond-pores', level: 'warning', values: { saturation }, source: 'kansasCores2022' } as const] : []),
    ...(usualDensity(dryDensity) || (dryDensity < usual.low && particleDensity < MINERAL_GRAINS)
      ? []
      : [{ code: 'density-beyond-usual', level: 'warning', values: usual, source: 'common practice' } as const]),
    ...(moisture > ORGANIC_MOISTURE
      ? [{ code: 'moisture-of-organic-soil', level: 'warning', values: soft, source: 'common practice' } as const]
      : []),
  ];
}
