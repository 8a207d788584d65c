import { demand } from '../errors/index.js';
import type { Fraction } from '../units/index.js';
import { together } from './band-around.js';
import type { ProbeEvidence } from './evidence.js';
import { PLACE } from './evidence-errors.js';
import { errorBudget, mostlyBy } from './error-budget.js';
import type { ConductivityError, EvidencePropertiesResult } from './evidence-properties.js';
import { conductivityClass } from './conductivity-class.js';
import { handbookSoil, measuredSoil, SURVEY_ERROR } from './known-soil.js';
import type { HandbookSoil, MeasuredSoil } from './sample.js';
import type { SoilThermalPropertiesResult } from './properties.js';
import { even } from './two-sided.js';

/** Most places that a probe is taken to be read at. */
const MOST_READINGS = 1000;

/** Largest error that all readings of a probe may share [1]. */
const LARGEST = 0.9;

/** Readings of a probe: the error that they share, and the scatter from place to place, less by the root of their number. */
export function probedEvidence({ readings, standardError = SURVEY_ERROR, ...measured }: ProbeEvidence): EvidencePropertiesResult {
  demand('readings', 'count', readings, { atLeast: 1, atMost: MOST_READINGS });
  demand('standardError', 'fraction', standardError, { atLeast: 0.01, atMost: LARGEST });
  const place = PLACE / Math.sqrt(readings);
  const soil = measuredSoil({ ...measured, from: 'laboratory', standardError: together(standardError, place) as Fraction });
  const causes = [
    { cause: 'measurement', sides: even(standardError) },
    { cause: 'place', sides: even(place) },
  ] as const;
  return { ...withErrors(soil, errorBudget(causes)), from: 'probe' };
}

/** A conductivity from a laboratory, with its error for the ground at the pipes. */
export function measuredEvidence(measured: MeasuredSoil): EvidencePropertiesResult {
  const { standardError = SURVEY_ERROR } = measured;
  return withErrors(measuredSoil(measured), errorBudget([{ cause: 'measurement', sides: even(standardError) }]));
}

/** A word: the band of the handbooks, of which no causes are told. */
export function wordEvidence(word: HandbookSoil): EvidencePropertiesResult {
  return withErrors(handbookSoil(word), []);
}

function withErrors(soil: SoilThermalPropertiesResult, errors: readonly ConductivityError[]): EvidencePropertiesResult {
  const { from, conductivity, heatCapacity, diffusivity, thermal, findings, sources } = soil;
  const told = [...findings, ...mostlyBy(errors), ...conductivityClass(conductivity).findings];
  return { from, conductivity, heatCapacity, diffusivity, thermal, errors, findings: told, sources };
}
