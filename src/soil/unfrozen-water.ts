import { demand } from '../errors/index.js';
import type { Moisture } from '../states/index.js';
import type { DryBasisMoisture, Ratio, Shape, Temperature } from '../units/index.js';
import { dryBasis } from './moisture.js';

/** A moist soil that may freeze, and how cold it is. */
export interface CoolingSoil {
  /** Temperature of the soil, −60 to 60 [degC]. */
  readonly temperature: Temperature;
  /** Water content, liquid and frozen together. */
  readonly moisture: Moisture;
  /** Surface of the grains by mass as a multiple of 1 m²/g, 0.02 to 800: sand about 1, silt 10 to 50, clay 50 to 300 [1]. */
  readonly specificSurface: Ratio;
}

/** How much of the water of a soil is liquid. */
export interface UnfrozenWater {
  /** Water that is liquid, by the mass of dry soil [kg/kg]. */
  readonly unfrozenMoisture: DryBasisMoisture;
  /** Water that is ice, by the mass of dry soil [kg/kg]. */
  readonly frozenMoisture: DryBasisMoisture;
  /** Temperature at which the first of the water freezes; absent where none does down to −60 °C [degC]. */
  readonly freezingStart?: Temperature;
}

/** Shape of {@link UnfrozenWater}. */
export const unfrozenWaterShape: Shape<UnfrozenWater> = {
  unfrozenMoisture: 'moisture on dry basis',
  frozenMoisture: 'moisture on dry basis',
  freezingStart: { optional: 'temperature' },
};

/** Lowest temperature of a soil that is computed [degC]. */
const COLDEST = -60;

/**
 * Water that stays liquid in frozen soil, held by the surfaces of the grains, after Anderson and Tice.
 *
 * Sand keeps next to none; clay keeps much, and begins to freeze below 0 °C. Near 0 °C the equation has more water than there is: above the
 * temperature at which the two agree all of it is liquid.
 *
 * @param soil - temperature [degC], moisture, specific surface as a multiple of 1 m²/g
 * @returns liquid and frozen water [kg/kg], and where freezing starts [degC]
 * @throws InputError when a number is impossible
 * @remarks
 * ln wu = 0.2618 + 0.5519 ln A − 1.449 A^(−0.264) ln(−T), wu in per cent of the dry mass, A in m²/g, T in °C. Source: `andersonTice1972`;
 * the form by volume that a public code carries has the same constant. Checked against cases computed independently (0.1 %).
 *
 * Invariants: no more liquid water than there is; falls as the soil cools, and rises with the specific surface below −1 °C.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dryBasisPercent, ratio } = await import('../units/index.js');
 * const clay = { moisture: { basis: 'dry', value: dryBasisPercent(25) }, specificSurface: ratio(80) } as const;
 * const { unfrozenMoisture, freezingStart } = andersonTiceUnfrozenWater({ ...clay, temperature: celsius(-2) });
 * expect(dryBasisPercent.of(unfrozenMoisture)).toBeCloseTo(10.64, 2);
 * expect(freezingStart).toBeCloseTo(-0.307, 3);
 * ```
 */
export function andersonTiceUnfrozenWater({ temperature, moisture, specificSurface }: CoolingSoil): UnfrozenWater {
  demand('temperature', 'temperature', temperature, { atLeast: COLDEST, atMost: 60 });
  demand('specificSurface', 'ratio', specificSurface, { atLeast: 0.02, atMost: 800 });
  const water = dryBasis(moisture);
  const atMinusOne = 0.01 * Math.exp(0.2618 + 0.5519 * Math.log(specificSurface));
  const steepness = 1.449 * specificSurface ** -0.264;
  const start = -((atMinusOne / water) ** (1 / steepness));
  const liquid = temperature >= 0 ? water : Math.min(water, atMinusOne * (-temperature) ** -steepness);
  return {
    unfrozenMoisture: liquid,
    frozenMoisture: water - liquid,
    ...(start >= COLDEST ? { freezingStart: start } : {}),
  } as UnfrozenWater;
}
