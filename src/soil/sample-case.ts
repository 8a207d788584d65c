import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Density, DryBasisMoisture, MassFraction } from '../units/index.js';
import type { SampleEvidence } from './evidence.js';
import type { CaseKnowledge } from './evidence-errors.js';
import { mixedSolids } from './mixed-solids.js';
import { MINERAL } from './model-refusals.js';
import { readMoisture } from './moisture-evidence.js';
import { densityFindings, TYPICAL_DENSITY_ERROR, usedDensity } from './sample-density.js';
import type { SoilCase } from './soil-case.js';
import { readTexture } from './texture-evidence.js';
import { typicalSoil } from './texture.js';

/** A sample as a case, and how well it is known. */
export interface ReadSample {
  readonly soil: SoilCase;
  readonly known: CaseKnowledge;
  readonly findings: readonly Finding[];
}

/** Checks a sample part by part and reads it as a case. */
export function readSample(sample: SampleEvidence): ReadSample {
  const { organicMatter = 0 as MassFraction, gravel = 0 as MassFraction, quartzFraction, extent = 'ground' } = sample;
  const { findings, possible, ...fineEarth } = readTexture(sample.texture);
  const moisture = readMoisture(sample.moisture, sample.moistureError);
  if (quartzFraction !== undefined) demand('quartzFraction', 'fraction', quartzFraction, { atLeast: 0, atMost: 1 });
  demand('gravel', 'mass fraction', gravel, { atLeast: 0, below: 1 }, 'gravel alone has no fine earth of any texture; take the handbook');
  demandChoice('extent', extent, ['ground', 'sample']);
  const mixed = mixedSolids(organicMatter).particleDensity;
  const { particleDensity = mixed } = sample;
  demand('particleDensity', 'density', particleDensity, { atLeast: 1000, atMost: 5000 });
  const typical = typicalSoil(fineEarth.texture);
  const water = (moisture.water.per === 'solids' ? moisture.water.value : 0) as DryBasisMoisture;
  const density = usedDensity(sample.density, typical, water, particleDensity);
  const inPlace = sample.density.from !== 'texture' && sample.density.from !== 'disturbed' && density.sigma < TYPICAL_DENSITY_ERROR;
  if (!inPlace) demandMineral(organicMatter, typical.dryDensity, particleDensity);
  return {
    soil: {
      ...{ ...fineEarth, quartzFraction, organicMatter, gravel, water: moisture.water, packing: 1 },
      particleDensity: sample.particleDensity,
      dryDensity: inPlace ? density.dryDensity : undefined,
    },
    known: { possible, densityError: density.sigma, moisture, season: 0, ground: extent === 'ground' },
    findings: [...findings, ...densityFindings(density, organicMatter)],
  };
}

/** A texture tells the density of mineral soil only. */
function demandMineral(organicMatter: number, typical: Density, particleDensity: Density): void {
  if (organicMatter <= MINERAL && typical < particleDensity) return;
  throw new InputError({
    code: 'impossible',
    argument: 'density',
    value: { kind: 'density', value: typical },
    allowed: 'a density measured in place to better than 10 %: core, sand cone, clod or water replacement',
    hint: 'the texture tells nothing of the density of organic soil; for peat by the word, take the handbook',
  });
}
