import { demand } from '../errors/index.js';
import type { Temperature } from '../units/index.js';

/** Viscosity [Pa.s] and density [kg/m3] of the water in a jar. */
export interface SettlingWater {
  readonly viscosity: number;
  readonly density: number;
}

/** Water by temperature [degC, mPa.s, kg/m3] at atmospheric pressure; source `iapwsWater`, recalled and held to the release by a test. */
const NODES = [
  [10, 1.3059, 999.7],
  [15, 1.1375, 999.1],
  [20, 1.0016, 998.21],
  [25, 0.89, 997.05],
] as const;

const [COLDEST, WARMEST] = [10, 25] as const;

/** Water between 10 and 25 °C: a cubic through four tabled temperatures, of the logarithm for the viscosity. */
export function settlingWater(temperature: Temperature): SettlingWater {
  const hint = 'bring the jar into a room of even temperature';
  demand('temperature', 'temperature', temperature, { atLeast: COLDEST, atMost: WARMEST }, hint);
  const through = (of: (node: (typeof NODES)[number]) => number): number =>
    NODES.reduce((sum, node) => sum + of(node) * weightOf(node[0], temperature), 0);
  return { viscosity: Math.exp(through(([, viscosity]) => Math.log(viscosity))) / 1000, density: through(([, , density]) => density) };
}

/** Weight of a node in the polynomial through all of them (Lagrange). */
function weightOf(node: number, temperature: number): number {
  return NODES.filter(([other]) => other !== node).reduce((weight, [other]) => (weight * (temperature - other)) / (node - other), 1);
}
