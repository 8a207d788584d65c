import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Density, Fraction } from '../units/index.js';
import { DEFAULT_PARTICLE_DENSITY } from './particle-density.js';
import type { PackedSoil } from './pores.js';

/** Conductivity of dry soil by porosity: a line, with the porosities it was drawn through (`lu2007`) [W/(m.K)], [1]. */
const WITHOUT_PORES = 0.51;
const PER_PORES = 0.56;
const LOW = 0.2;
const HIGH = 0.6;

/** Density down to which the line has not come down to nothing. */
function loosest({ particleDensity = DEFAULT_PARTICLE_DENSITY as Density }: PackedSoil): number {
  return particleDensity * (1 - WITHOUT_PORES / PER_PORES);
}

/** Conductivity of dry soil as Lu and others have it, in 2007 and 2014; refuses soil so loose that the line fails. */
export function luDryConductivity(soil: PackedSoil, porosity: number): number {
  demand('dryDensity', 'density', soil.dryDensity, { above: loosest(soil) }, 'the equation fails in soil so loose');
  return WITHOUT_PORES - PER_PORES * porosity;
}

/** Whether a soil is so loose that it would be refused. */
export function luIsTooLoose(soil: PackedSoil): boolean {
  return soil.dryDensity <= loosest(soil);
}

/** What is outside the porosities of the line. */
export function luDryFindings(model: 'lu-2007' | 'lu-2014', porosity: number): readonly Finding[] {
  if (porosity >= LOW && porosity <= HIGH) return [];
  const values = { model, porosity: porosity as Fraction, low: LOW as Fraction, high: HIGH as Fraction };
  return [{ code: 'porosity-outside-model', level: 'warning', values, source: 'lu2007' }];
}
