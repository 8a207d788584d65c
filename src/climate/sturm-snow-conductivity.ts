import { demand } from '../errors/index.js';
import type { Conductivity, Density, Shape } from '../units/index.js';

/** What {@link sturmSnowConductivity} needs. */
export interface SnowConductivityInput {
  /** Density of the snow, 50 to 600; 100 when new, 200 to 300 settled, 350 to 450 wind-packed or at the end of winter [kg/m3]. */
  readonly density: Density;
}

/** Shape of {@link SnowConductivityInput}. */
export const snowConductivityInputShape: Shape<SnowConductivityInput> = { density: 'density' };

/** Below this density the straight line holds [kg/m3]. */
const LIGHT = 156;

/**
 * Effective conductivity of dry seasonal snow from its density, by Sturm and others (1997).
 *
 * Snow of one density conducts up to twice as well or as badly: hoar at the ground less, a wind slab more.
 *
 * @param input - density [kg/m3]
 * @returns conductivity [W/(m.K)]
 * @throws InputError when the density is no snow's
 * @remarks
 * 0.138 − 1.01 ρ + 3.233 ρ² from 0.156 g/cm3 on, 0.023 + 0.234 ρ below. Source: `sturm1997`. Checked against 0.088 for 250 kg/m3, which 0.3 m deep is a film of
 * 0.3 W/(m2.K). The two forms meet within 1 % where they change.
 *
 * Invariant: denser snow conducts better.
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerCubicMetre } = await import('../units/index.js');
 * expect(sturmSnowConductivity({ density: kilogramsPerCubicMetre(250) })).toBeCloseTo(0.0876, 4);
 * ```
 */
export function sturmSnowConductivity({ density }: SnowConductivityInput): Conductivity {
  demand('density', 'density', density, { atLeast: 50, atMost: 600 }, 'kilograms per cubic metre of snow');
  const relative = density / 1000;
  return (density < LIGHT ? 0.023 + 0.234 * relative : 0.138 - 1.01 * relative + 3.233 * relative ** 2) as Conductivity;
}
