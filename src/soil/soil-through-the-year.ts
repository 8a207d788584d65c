import { demand, demandChoice, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import type { DayOfYear, DryBasisMoisture, Fraction, Shape } from '../units/index.js';
import { bandedCase } from './banded-case.js';
import { bestRead } from './best-read.js';
import { type CarriedCase, driestOf, soakedOf, wettestOf } from './carried-water.js';
import { type SampleEvidence, sampleEvidenceShape } from './evidence.js';
import { type EvidenceProperties, evidencePropertiesShape } from './evidence-properties.js';
import { HELD_MOISTURE } from './held-moisture.data.js';
import { sampledProperties } from './sampled-evidence.js';
import { DRIEST_SHARE, type Hemisphere, HEMISPHERES, wetnessOn } from './season-course.js';
import { lay } from './soil-case.js';
import { frozenTemperature } from './soil-from-evidence.js';
import { demandFlag } from './pores.js';

/** A sample, and when and where it was taken. */
export interface DatedSample {
  /** What is known of the soil. */
  readonly evidence: SampleEvidence;
  /** Day the sample was taken, 1 to 367 [d]. */
  readonly sampledOn: DayOfYear;
  /** Half of the earth it was taken on. */
  readonly hemisphere: Hemisphere;
  /** Whether the soil lies under the water table all year round; no when left out. */
  readonly belowWaterTable?: boolean;
}

/** A soil on the day it was sampled, and in the driest and the wettest plausible state. */
export interface SoilThroughTheYear {
  /** As it was sampled. */
  readonly sampled: EvidenceProperties;
  /** At the end of a dry summer: to check cooling with, and heating where the loop is to run in a dry winter. */
  readonly driest: EvidenceProperties;
  /** At the end of winter. */
  readonly wettest: EvidenceProperties;
  /** Water in the ground on the day of the sample, of what it holds when it is wettest, by the rule [1]. */
  readonly wetness: Fraction;
}

/** {@link SoilThroughTheYear} with findings and sources. */
export interface SoilThroughTheYearResult extends SoilThroughTheYear {
  /** What is possible but doubtful in any of the states. */
  readonly findings: readonly Finding[];
  /** What the numbers rest on. */
  readonly sources: readonly Source[];
}

/** Shape of {@link DatedSample}. */
export const datedSampleShape: Shape<DatedSample> = {
  evidence: sampleEvidenceShape,
  sampledOn: 'day of year',
  hemisphere: HEMISPHERES,
  belowWaterTable: { optional: 'flag' },
};

/** Shape of {@link SoilThroughTheYear}. */
export const soilThroughTheYearShape: Shape<SoilThroughTheYear> = {
  sampled: evidencePropertiesShape,
  driest: evidencePropertiesShape,
  wettest: evidencePropertiesShape,
  wetness: 'fraction',
};

/** From this wetness on the sample was taken in the wet half of the year. */
const WET_HALF = 0.75;

/**
 * A soil in the driest and the wettest plausible state of the year, from one sample and its date.
 *
 * Ground is wettest at the end of winter and driest at the end of summer, when half of the water is left; what the texture does not hold
 * against gravity drains before. Each state has its own band, wider by what the rule and one year against another leave open. The rule knows
 * neither rain nor depth: it fits climates in which plants draw more in summer than falls. Use one state for conductivity and for diffusivity,
 * not the worst of each.
 *
 * @param sample - what is known of the soil, day and hemisphere
 * @returns properties as sampled, in the driest and in the wettest state
 * @throws InputError when a number is impossible, alone or together, or a word unknown
 * @remarks
 * Sources: `kansasCores2022` (water held at 33 kPa) and `common practice`: a half at the end of summer, the days, 15 % from year to year,
 * half of the way as the error of the rule. Nothing was measured for it; sampling in the other season replaces it.
 *
 * Invariants: the driest state is never wetter than the sample, the wettest never drier; the same sample half a year later on the other
 * hemisphere gives the same; under a water table all states are full.
 * @example
 * ```ts @import.meta.vitest
 * const { dayOfYear, dryBasisPercent, kilogramsPerCubicMetre } = await import('../units/index.js');
 * const { sampled, driest, findings } = soilThroughTheYear({
 *   evidence: {
 *     from: 'sample',
 *     texture: { from: 'laboratory', class: 'silt loam' },
 *     moisture: { basis: 'dry', value: dryBasisPercent(26) },
 *     density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1450) },
 *   },
 *   sampledOn: dayOfYear(91),
 *   hemisphere: 'northern',
 * });
 * expect(driest.conductivity.estimate).toBeLessThan(sampled.conductivity.estimate);
 * expect(findings.map(({ code }) => code)).toContain('sampled-in-wet-season');
 * ```
 */
export function soilThroughTheYear({ evidence, sampledOn, hemisphere, belowWaterTable = false }: DatedSample): SoilThroughTheYearResult {
  demandObject('evidence', evidence);
  demand('sampledOn', 'day of year', sampledOn, { atLeast: 1, below: 367 });
  demandChoice('hemisphere', hemisphere, HEMISPHERES);
  demandFlag('belowWaterTable', belowWaterTable);
  return locate('evidence', () => {
    demandChoice('from', evidence.from, ['sample']);
    const frozenAt = frozenTemperature(evidence);
    const best = bestRead(evidence);
    const { read } = best;
    const wetness = wetnessOn(sampledOn, hemisphere) as Fraction;
    const state = ({ soil, season }: CarriedCase): ReturnType<typeof sampledProperties> => {
      const known = { ...read.known, season };
      return sampledProperties({ read: { ...read, soil, known }, banded: bandedCase(soil, known) }, frozenAt);
    };
    const day = sampledProperties(best, frozenAt);
    const dry = state(belowWaterTable ? soakedOf(read.soil) : driestOf(read.soil, wetness));
    const wet = state(belowWaterTable ? soakedOf(read.soil) : wettestOf(read.soil, wetness));
    const moistures = { moisture: lay(read.soil).moisture, driestMoisture: dry.sample?.phases.moisture ?? (0 as DryBasisMoisture) };
    const conductivities = { conductivity: day.conductivity.estimate, driestConductivity: dry.conductivity.estimate };
    const spring: Finding = {
      code: 'sampled-in-wet-season',
      level: 'warning',
      values: { sampledOn, ...moistures, ...conductivities },
      source: 'common practice',
    };
    const rule: Finding = {
      code: 'moisture-carried-by-rule',
      level: 'note',
      values: { heldMoisture: HELD_MOISTURE[read.soil.texture] as DryBasisMoisture, driestShare: DRIEST_SHARE },
      source: 'common practice',
    };
    const ofDry = dry.findings.filter(({ code }) => code === 'sand-may-dry-out-in-cooling' && !day.findings.some((each) => each.code === code));
    const seasonal = belowWaterTable ? [] : [...(wetness > WET_HALF ? [spring] : []), rule];
    return {
      sampled: told(day),
      driest: told(dry),
      wettest: told(wet),
      wetness,
      findings: [...day.findings, ...ofDry, ...seasonal],
      sources: day.sources,
    };
  });
}

/** Properties without what stands beside them once for all states. */
function told({ findings: _, sources: __, ...properties }: ReturnType<typeof sampledProperties>): EvidenceProperties {
  return properties;
}
