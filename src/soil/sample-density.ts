import { demand, demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Density, DryBasisMoisture, Fraction } from '../units/index.js';
import { densityHint } from './likely-cause.js';
import { MINERAL } from './model-refusals.js';
import type { SampleDensity } from './sample.js';
import type { TypicalSoil } from './texture.js';
import { fullestDensity } from './zero-air-voids.js';

/** The density to reckon with, its error and what is to be said of it. */
export interface UsedDensity {
  readonly dryDensity: number;
  /** Standard error of its logarithm. */
  readonly sigma: number;
  readonly findings: readonly Finding[];
}

/** Standard error of a density measured in place, of which nothing else is said, as a share; source `common practice`. */
const MEASURED = 0.03 as Fraction;

/** Standard error of the density typical of a texture, as a share (`kansasCores2022`: 37 cores scatter by 10 %). */
export const TYPICAL_DENSITY_ERROR = 0.1 as Fraction;

/** How far a measured density may lie from the typical one before it is remarked: two standard deviations of the cores. */
const USUAL = 0.2;

const SOURCES: readonly SampleDensity['from'][] = ['core', 'sand cone', 'clod', 'water replacement', 'disturbed', 'texture'];

/**
 * The dry density of a sample: as measured in place, or what is typical of its texture and leaves room for its water. A measurement known no
 * better than the typical density gives way to it, so that knowing more never widens the band.
 */
export function usedDensity(density: SampleDensity, typical: TypicalSoil, moisture: DryBasisMoisture, particleDensity: Density): UsedDensity {
  demandChoice('density.from', density?.from, SOURCES);
  if (density.from === 'texture') {
    const known = typicalDensity(typical, moisture, particleDensity);
    const values = { used: known.used, standardError: TYPICAL_DENSITY_ERROR };
    const origin: Finding = { code: 'density-not-measured', level: 'note', values, source: 'kansasCores2022' };
    return { dryDensity: known.used, sigma: TYPICAL_DENSITY_ERROR, findings: [origin, ...known.findings] };
  }
  const { dryDensity } = density;
  demand('density.dryDensity', 'density', dryDensity, { atLeast: 20, atMost: 2800 }, densityHint(dryDensity));
  const { standardError = MEASURED } = density.from === 'disturbed' ? {} : density;
  demand('density.standardError', 'fraction', standardError, { atLeast: 0.001, atMost: 0.6 });
  const vague = standardError >= TYPICAL_DENSITY_ERROR;
  if (density.from === 'disturbed' || vague) {
    const known = typicalDensity(typical, moisture, particleDensity);
    const origin: Finding = vague
      ? {
          code: 'density-measured-poorly',
          level: 'warning',
          values: { standardError, typicalError: TYPICAL_DENSITY_ERROR },
          source: 'common practice',
        }
      : {
          code: 'disturbed-sample-density',
          level: 'warning',
          values: { given: dryDensity, used: known.used, standardError: TYPICAL_DENSITY_ERROR },
          source: 'kansasCores2022',
        };
    return { dryDensity: known.used, sigma: TYPICAL_DENSITY_ERROR, findings: [origin, ...known.findings] };
  }
  const low = ((1 - USUAL) * typical.dryDensity) as Density;
  const high = ((1 + USUAL) * typical.dryDensity) as Density;
  const unusual: Finding = { code: 'density-outside-texture', level: 'warning', values: { dryDensity, low, high }, source: 'kansasCores2022' };
  return { dryDensity, sigma: standardError, findings: dryDensity < low || dryDensity > high ? [unusual] : [] };
}

/** What is to be said of a density; no texture tells what is usual of organic soil. */
export function densityFindings({ findings }: UsedDensity, organicMatter: number): readonly Finding[] {
  return findings.filter(({ code }) => organicMatter <= MINERAL || code !== 'density-outside-texture');
}

/** What is typical of a texture, or less where the water would not have room. */
function typicalDensity(
  { dryDensity }: TypicalSoil,
  moisture: DryBasisMoisture,
  particleDensity: Density,
): { readonly used: Density; readonly findings: readonly Finding[] } {
  const fullest = fullestDensity({ moisture: { basis: 'dry', value: moisture }, particleDensity });
  if (fullest >= dryDensity) return { used: dryDensity, findings: [] };
  const values = { typical: dryDensity, used: fullest, moisture };
  return { used: fullest, findings: [{ code: 'density-limited-by-moisture', level: 'warning', values, source: 'soilMechanicsTexts' }] };
}
