import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Moisture } from '../states/index.js';
import type { Conductivity, Density, DryBasisMoisture, Shape } from '../units/index.js';
import { dryBasis } from './moisture.js';
import type { KerstenSoil } from './texture.js';

/** What Kersten's equations are computed from. */
export interface KerstenSoilState {
  /** Mass of solids per volume of soil, 500 to 2600 [kg/m3]. */
  readonly dryDensity: Density;
  /** Water content; at least 1 % (sandy) or 2 % (silt or clay) on dry basis unless frozen. */
  readonly moisture: Moisture;
  /** Which of the two equations: silt or clay where they are half of the soil or more. */
  readonly soil: KerstenSoil;
  /** Whether the water is ice; no when left out. */
  readonly frozen?: boolean;
}

/** Conductivity by Kersten's equations, and whether they were made for such a soil. */
export interface KerstenConductivity {
  /** Thermal conductivity, right to about 25 % of the soils the equations were made from [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Least moisture the equation was made for, on dry basis [kg/kg]. */
  readonly leastMoisture: DryBasisMoisture;
  /** Whether the soil is at least that moist. */
  readonly inRange: boolean;
}

/** Shape of {@link KerstenConductivity}. */
export const kerstenConductivityShape: Shape<KerstenConductivity> = {
  conductivity: 'conductivity',
  leastMoisture: 'moisture on dry basis',
  inRange: 'flag',
};

/** Least moisture of each equation's own soils, and the least it is computed for: the second turns negative at 1.67 % [kg/kg]. */
export const KERSTEN_MOISTURE: Readonly<Record<KerstenSoil, { readonly own: number; readonly computed: number }>> = {
  sandy: { own: 0.01, computed: 0.01 },
  'silt or clay': { own: 0.07, computed: 0.02 },
};

/** Dry densities that the equations are computed for; no soil of theirs was outside of them [kg/m3]. */
export const KERSTEN_DENSITY = { atLeast: 500, atMost: 2600 } as const;

/**
 * Thermal conductivity of a soil by the classical equations of Kersten, from moisture and dry density alone.
 *
 * Two equations, sandy soil and silt or clay, and no way between them: at the same moisture and density they lie up to 40 % apart.
 * Measured near 4 °C unfrozen and −4 °C frozen. On measured cores they read 10 % low.
 *
 * @param soil - dry density [kg/m3], moisture, which equation, frozen or not
 * @returns conductivity [W/(m.K)] and the range of the equation
 * @throws InputError when a number is impossible or so dry that the equation fails
 * @remarks
 * With w in per cent on dry basis and ρ in g/cm³, unfrozen: 0.1442 (0.7 log10 w + 0.4) 10^(0.6243 ρ) sandy and
 * 0.1442 (0.9 log10 w − 0.2) 10^(0.6243 ρ) silt or clay; frozen: 0.01096 · 10^(0.8116 ρ) + 0.00461 · 10^(0.9115 ρ) w and
 * 0.001442 · 10^(1.373 ρ) + 0.01226 · 10^(0.4994 ρ) w. Source: `kersten1949` in the SI form of `landModelSoils`. Checked against
 * cases computed independently, in SI (0.1 %) and from the original inch-pound form (0.2 %).
 *
 * Invariants: rises with moisture and with density; unfrozen it has no meaning beyond saturation, which the caller sees to.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, kilogramsPerCubicMetre } = await import('../units/index.js');
 * const { conductivity } = kerstenConductivity({
 *   dryDensity: kilogramsPerCubicMetre(1600),
 *   moisture: { basis: 'dry', value: dryBasisPercent(15) },
 *   soil: 'silt or clay',
 * });
 * expect(conductivity).toBeCloseTo(1.235, 3);
 * ```
 */
export function kerstenConductivity({ dryDensity, moisture, soil, frozen = false }: KerstenSoilState): KerstenConductivity {
  demand('dryDensity', 'density', dryDensity, KERSTEN_DENSITY);
  demandChoice('soil', soil, ['sandy', 'silt or clay']);
  if (typeof frozen !== 'boolean') throw new InputError({ code: 'wrong-type', argument: 'frozen', value: String(frozen), allowed: 'true or false' });
  const water = dryBasis(moisture);
  if (!frozen) {
    const hint = 'the equation fails in soil so dry';
    demand('moisture.value', 'moisture on dry basis', water, { atLeast: KERSTEN_MOISTURE[soil].computed }, hint);
  }
  const conductivity = (frozen ? frozenEquation : unfrozenEquation)(soil, 100 * water, dryDensity / 1000);
  return { conductivity, leastMoisture: KERSTEN_MOISTURE[soil].own, inRange: water >= KERSTEN_MOISTURE[soil].own } as KerstenConductivity;
}

function unfrozenEquation(soil: KerstenSoil, percent: number, density: number): number {
  const byMoisture = soil === 'sandy' ? 0.7 * Math.log10(percent) + 0.4 : 0.9 * Math.log10(percent) - 0.2;
  return 0.1442 * byMoisture * 10 ** (0.6243 * density);
}

// Copies that print 0.001096 for the first coefficient have lost a digit: it is 0.076 of the inch-pound form times 0.14423.
function frozenEquation(soil: KerstenSoil, percent: number, density: number): number {
  return soil === 'sandy'
    ? 0.01096 * 10 ** (0.8116 * density) + 0.00461 * 10 ** (0.9115 * density) * percent
    : 0.001442 * 10 ** (1.373 * density) + 0.01226 * 10 ** (0.4994 * density) * percent;
}
