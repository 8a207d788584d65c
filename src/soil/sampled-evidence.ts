import { locate } from '../errors/index.js';
import type { Source } from '../references/index.js';
import type { DryBasisMoisture, Fraction, Temperature } from '../units/index.js';
import { applicableModels } from './applicable-models.js';
import { bandedCase } from './banded-case.js';
import type { BestRead } from './best-read.js';
import { conductivityClass } from './conductivity-class.js';
import { mostlyBy } from './error-budget.js';
import type { CaseKnowledge } from './evidence-errors.js';
import { caseFindings } from './evidence-findings.js';
import type { EvidencePropertiesResult, FrozenProperties } from './evidence-properties.js';
import { latentHeat } from './latent-heat.js';
import { soilPhases } from './phases.js';
import { estimateOf, lay, type SoilCase } from './soil-case.js';

/** Properties of a sample that was read, with ice at the given temperature for the frozen state. */
export function sampledProperties({ read: { soil, known, findings }, banded }: BestRead, frozenAt: Temperature): EvidencePropertiesResult {
  const laid = lay(soil);
  const { dryDensity, particleDensity } = laid.soil;
  // Phases are those of the water as it was given, so that more than fits is refused or remarked before it is taken as full.
  const value = soil.water.per === 'solids' ? soil.water.value : laid.moisture;
  const { findings: doubts, ...phases } = locate('density', () =>
    soilPhases({ dryDensity, particleDensity, moisture: { basis: 'dry', value: value as DryBasisMoisture } }),
  );
  const { model } = estimateOf(laid);
  const { applicable, inapplicable } = applicableModels(laid.soil);
  return {
    from: 'sample',
    ...banded,
    sample: {
      texture: soil.texture,
      possible: known.possible,
      phases,
      quartzFraction: laid.soil.quartzFraction as Fraction,
      model,
      models: applicable,
      inapplicable,
      frozenProperties: frozenOf(soil, known, frozenAt),
    },
    findings: [
      ...findings,
      ...doubts,
      ...caseFindings(soil, laid, model),
      ...mostlyBy(banded.errors),
      ...conductivityClass(banded.conductivity).findings,
    ],
    sources: SOURCES,
  };
}

const SOURCES: readonly Source[] = [
  'lu2007',
  'johansen1975',
  'deVries1963',
  'petersLidard1998',
  'landModelSoils',
  'kansasCores2022',
  'common practice',
];

function frozenOf(soil: SoilCase, known: CaseKnowledge, temperature: Temperature): FrozenProperties {
  const frozen = { ...soil, frozenAt: temperature };
  const laid = lay(frozen);
  const { conductivity, heatCapacity, thermal } = bandedCase(frozen, known);
  const { moisture, liquid } = laid;
  return {
    ...{ temperature, conductivity, heatCapacity, thermal },
    unfrozenMoisture: liquid,
    latentHeat: latentHeat({ dryDensity: laid.soil.dryDensity, moisture: { basis: 'dry', value: moisture }, unfrozenMoisture: liquid }),
    models: applicableModels(laid.soil).applicable,
  };
}
