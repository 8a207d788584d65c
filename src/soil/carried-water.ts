import { SIGMAS } from './band-around.js';
import { HELD_MOISTURE, HELD_SCATTER } from './held-moisture.data.js';
import { MINERAL } from './model-refusals.js';
import { DRIEST_SHARE } from './season-course.js';
import { lay, type SoilCase, withWater } from './soil-case.js';
import { saturatedMoisture } from './zero-air-voids.js';

/** A case at another time of the year, and the error of the logarithm of its water that comes of carrying it there. */
export interface CarriedCase {
  readonly soil: SoilCase;
  readonly season: number;
}

/** One year against another, as a share of the water (`common practice`) [1]. */
const YEAR_TO_YEAR = 0.15;

/** How much of the way from season to season the rule may be off (`common practice`) [1]. */
const OFF_THE_WAY = 0.5;

/** Water that a texture holds against gravity, at the upper end of what cores of its class held [kg/kg]. */
const mostHeld = ({ texture }: SoilCase): number => HELD_MOISTURE[texture] * Math.exp(SIGMAS * HELD_SCATTER);

/**
 * The case at the end of a dry summer. Water beyond what the texture holds drains in any case; the rest goes down from the wetness of the day
 * it was sampled to the driest.
 */
export function driestOf(of: SoilCase, wetness: number): CarriedCase {
  const { moisture } = lay(of);
  const drained = mineral(of) ? Math.min(moisture, mostHeld(of)) : moisture;
  return carried(of, moisture, (drained * DRIEST_SHARE) / wetness);
}

/**
 * The case at the end of winter: as much wetter than on the day it was sampled, but no more than the texture holds, unless it held it already, and
 * no more than fills the pores.
 */
export function wettestOf(of: SoilCase, wetness: number): CarriedCase {
  const { moisture, soil } = lay(of);
  const most = Math.min(mineral(of) ? mostHeld(of) : Infinity, saturatedMoisture(soil));
  return carried(of, moisture, Math.max(moisture, Math.min(most, moisture / wetness)));
}

/** The case under a water table, its pores full all year round. */
export function soakedOf(of: SoilCase): CarriedCase {
  return { soil: { ...of, water: { per: 'pores', value: 1 } }, season: 0 };
}

function carried(of: SoilCase, from: number, to: number): CarriedCase {
  const ratio = to > 0 ? to / from : 1;
  return { soil: withWater(of, of.water.value * ratio), season: Math.hypot(YEAR_TO_YEAR, OFF_THE_WAY * Math.log(ratio)) };
}

/** Textures tell what mineral soil holds; peat holds several times its mass. */
const mineral = ({ organicMatter }: SoilCase): boolean => organicMatter <= MINERAL;
