import type { Finding } from '../findings/index.js';
import type { Fraction } from '../units/index.js';
import { fibrousOrganic } from './cote-konrad.js';
import type { InterpolatedConductivityResult } from './interpolated.js';
import type { FreezableSoil } from './pores.js';

/** Of the model's value for full pores peat was measured to lack 9 to 25 % thawed and 18 % frozen (`kujala2008`) [1]. */
const EXCESS = 0.25;

/**
 * Thermal conductivity of peat: the model of Côté and Konrad with its own numbers for fibrous organic soil.
 *
 * Peat holds several times its mass in water and conducts hardly better than that water; frozen it conducts three times as well. The
 * few measurements with full pores are 9 to 25 % lower, of which a finding tells; peat also settles when it drains.
 *
 * @param peat - dry density, 50 to 250 in most peat [kg/m3], saturation; frozen or not
 * @returns conductivity with dry and saturated ends [W/(m.K)]
 * @throws InputError when a number is impossible, alone or together
 * @remarks
 * Solids 0.25 W/(m·K) at 1500 kg/m³, κ 0.60 (frozen 0.25), χ 0.30, η 0.87. Source: `coteKonrad2005`; range against `kujala2008`. Checked
 * against a case computed independently (0.1 %).
 *
 * Invariants: those of the model of Côté and Konrad, but for density: denser peat conducts worse when wet, since its solids do.
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerCubicMetre, ratio } = await import('../units/index.js');
 * const peat = { dryDensity: kilogramsPerCubicMetre(150), saturation: ratio(1) };
 * expect(peatConductivity(peat).conductivity).toBeCloseTo(0.55, 3);
 * expect(peatConductivity({ ...peat, frozen: true }).conductivity).toBeCloseTo(1.8, 2);
 * ```
 */
export function peatConductivity(peat: FreezableSoil): InterpolatedConductivityResult {
  const result = fibrousOrganic(peat);
  const high: Finding = {
    code: 'peat-model-reads-high',
    level: 'warning',
    values: { conductivity: result.conductivity, excess: EXCESS as Fraction },
    source: 'kujala2008',
  };
  return { ...result, findings: [high] };
}
