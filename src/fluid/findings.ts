import type { Finding } from '../findings/index.js';
import type { Fraction, VolumeFraction } from '../units/index.js';
import { demandFluid, type OfAnyFluid } from './fluids.js';
import { fluidProperties, type FluidCondition } from './properties.js';
import { volumeFromMassFraction } from './volume-share.js';

/** Below this the sources of viscosity part [degC]. */
const COLD = 5;

/**
 * What to doubt about a fluid at its coldest.
 *
 * @param condition - fluid, mass fraction [kg/kg] and the coldest design temperature [degC]
 * @returns findings, none when there is nothing to say
 * @throws InputError as {@link fluidProperties} does
 * @remarks
 * `viscosity-uncertain-in-cold` for solutions below 5 °C, where `melinder2010` and `ashrae2001Coolants` differ by up to 12 %;
 * `antifreeze-below-inhibitor-floor` when the share is under what inhibitors need (`inhibitedGlycolSheets`);
 * `antifreeze-needs-permission` for what is poisonous, or what units for houses are not made for.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent } = await import('../units/index.js');
 * const found = fluidFindings({ fluid: 'propylene-glycol', massFraction: massPercent(20), temperature: celsius(-5) });
 * expect(found.map(({ code }) => code)).toEqual(['viscosity-uncertain-in-cold', 'antifreeze-below-inhibitor-floor']);
 * ```
 */
export function fluidFindings(condition: OfAnyFluid<FluidCondition>): readonly Finding[] {
  const { viscosity } = fluidProperties(condition);
  const { inhibitorFloor, uncertainty, use } = demandFluid(condition.fluid);
  const { massFraction, temperature } = condition;
  const volumeFraction = inhibitorFloor === 0 ? (0 as VolumeFraction) : volumeFromMassFraction(condition);
  const findings: Finding[] = [];
  if (massFraction > 0 && temperature < COLD) {
    const values = { temperature, viscosity, uncertainty: uncertainty.coldViscosity as Fraction };
    findings.push({ code: 'viscosity-uncertain-in-cold', level: 'note', values, source: 'ashrae2001Coolants' });
  }
  if (volumeFraction < inhibitorFloor) {
    const values = { volumeFraction, floor: inhibitorFloor as VolumeFraction };
    findings.push({ code: 'antifreeze-below-inhibitor-floor', level: 'warning', values, source: 'inhibitedGlycolSheets' });
  }
  if (use !== 'house') {
    findings.push({ code: 'antifreeze-needs-permission', level: 'warning', values: { massFraction, permission: use }, source: 'common practice' });
  }
  return findings;
}
