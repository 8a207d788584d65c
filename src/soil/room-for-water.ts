import { InputError } from '../errors/index.js';
import type { Moisture } from '../states/index.js';
import { likelyCauses, usualDensity } from './likely-cause.js';
import { dryBasis } from './moisture.js';
import { WATER_DENSITY } from './particle-density.js';

/** Water beyond the pores that errors of weighing, swelling and the density of the grains account for, as a share of the pores. */
const ALLOWANCE = 1.05;

/** Heaviest grains that are still taken for those of a soil, one rich in iron [kg/m3]; source `common practice`. */
const HEAVY_GRAINS = 3000;

/** A soil by its density, water over solids and grains. */
export interface SoilWithWater {
  readonly dryDensity: number;
  readonly water: number;
  readonly particleDensity: number;
}

/** Whether there are pores, and room in them for the water. */
export function hasRoom({ dryDensity, water, particleDensity }: SoilWithWater): boolean {
  return dryDensity < particleDensity && (water * dryDensity) / WATER_DENSITY <= ALLOWANCE * (1 - dryDensity / particleDensity);
}

/** Highest dry density that leaves room for the water [kg/m3]. */
export function densestWith({ water, particleDensity }: Omit<SoilWithWater, 'dryDensity'>): number {
  return (ALLOWANCE * particleDensity) / (ALLOWANCE + (water * particleDensity) / WATER_DENSITY);
}

/** Whether a soil is possible and usual, so that a mistake which turns it into this is believed. */
export const believable = (soil: SoilWithWater): boolean => hasRoom(soil) && usualDensity(soil.dryDensity);

/** Refuses a density that leaves no pores, or none for the water; the hint tells which mistakes would explain it. */
export function demandRoomForWater({ dryDensity, particleDensity }: Omit<SoilWithWater, 'water'>, moisture: Moisture): void {
  const soil = { dryDensity, particleDensity, water: dryBasis(moisture) };
  if (hasRoom(soil)) return;
  const slips = [
    { cause: 'it may be the moist density, water included', undone: { ...soil, dryDensity: dryDensity / (1 + soil.water) } },
    ...(moisture.basis === 'wet' ? [{ cause: 'the moisture may be on dry basis instead of wet', undone: { ...soil, water: moisture.value } }] : []),
    { cause: 'the grains may be heavier than those given', undone: { ...soil, particleDensity: HEAVY_GRAINS } },
  ];
  throw new InputError({
    code: 'impossible',
    argument: 'dryDensity',
    value: { kind: 'density', value: dryDensity },
    allowed: `at most ${densestWith(soil).toFixed(0)} kg/m3 at a moisture of ${(100 * soil.water).toFixed(1)} % on dry basis`,
    hint: likelyCauses(slips, believable) ?? 'the volume measured may be too small, or the moisture too high',
  });
}
