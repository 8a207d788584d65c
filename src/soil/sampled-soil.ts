import { demand, demandChoice, locate } from '../errors/index.js';
import type { Source } from '../references/index.js';
import type { Moisture } from '../states/index.js';
import type { Conductivity, Density, HeatCapacity, MassFraction } from '../units/index.js';
import { bandAround } from './band-around.js';
import { conductivityErrors, diffusivityError, heatCapacityError } from './conductivity-errors.js';
import { thermalOf } from './heat-capacity.js';
import { latentHeat } from './latent-heat.js';
import { estimate, heatCapacityOf, sideBySide, type ModelSoil } from './models.js';
import { dryBasis, moistureFromDrying } from './moisture.js';
import { mixedSolids } from './mixed-solids.js';
import { soilPhases } from './phases.js';
import type { SoilThermalPropertiesResult } from './properties.js';
import { densityFindings, usedDensity } from './sample-density.js';
import { sampleFindings } from './sample-findings.js';
import type { SampledSoil, SampleMoisture } from './sample.js';
import { TEXTURE_CLASSES, typicalSoil } from './texture.js';
import { demandParticleDensity } from './zero-air-voids.js';

/** Standard error of the logarithm of the conductivity by quartz and texture: quartz measured, or typical of a class found by either way. */
const QUARTZ_ERROR = { measured: 0.05, laboratory: 0.1, feel: 0.15 };

/** Thermal properties of a soil that was sampled. */
export function sampledSoil(sample: SampledSoil): SoilThermalPropertiesResult {
  const given = sampleMoisture(sample.moisture);
  const moisture = dryBasis(given);
  demandChoice('texture.from', sample.texture?.from, ['laboratory', 'feel']);
  demandChoice('texture.class', sample.texture.class, TEXTURE_CLASSES);
  const typical = typicalSoil(sample.texture.class);
  const { quartzFraction = typical.quartzFraction, organicMatter = 0 } = sample;
  demand('quartzFraction', 'fraction', quartzFraction, { atLeast: 0, atMost: 1 });
  const { organicShare, particleDensity: mixed } = mixedSolids(organicMatter as MassFraction);
  const { particleDensity = mixed } = sample;
  demandParticleDensity(particleDensity);
  const density = usedDensity(sample.density, typical, moisture, particleDensity);
  const dryDensity = density.dryDensity as Density;
  const { findings: phaseFindings, ...phases } = locate('density', () => soilPhases({ dryDensity, moisture: given, particleDensity }));
  const soil: ModelSoil = { dryDensity, moisture, particleDensity, quartzFraction, organicShare, typical };
  const models = sideBySide(soil);
  const inputs = { density: density.sigma, quartz: QUARTZ_ERROR[sample.quartzFraction === undefined ? sample.texture.from : 'measured'] };
  const errors = conductivityErrors(soil, models, inputs);
  const thermal = thermalOf(estimate(soil) as Conductivity, heatCapacityOf(soil) as HeatCapacity);
  return {
    from: 'sample',
    conductivity: bandAround(thermal.conductivity, errors.total),
    heatCapacity: bandAround(thermal.heatCapacity, heatCapacityError(soil, inputs)),
    diffusivity: bandAround(thermal.diffusivity, diffusivityError(soil, errors, inputs)),
    thermal,
    phases,
    quartzFraction,
    frozen: thermalOf(estimate(soil, true) as Conductivity, heatCapacityOf(soil, true) as HeatCapacity),
    latentHeat: latentHeat({ dryDensity, moisture: given }),
    models,
    conductivityErrors: errors,
    findings: [...densityFindings(density, organicMatter), ...phaseFindings, ...sampleFindings(sample, soil, models)],
    sources: SOURCES,
  };
}

const SOURCES: readonly Source[] = [
  'johansen1975',
  'farouki1981',
  'kersten1949',
  'deVries1963',
  'petersLidard1998',
  'landModelSoils',
  'kansasCores2022',
  'common practice',
];

/** Moisture as it was given or follows from the weighings. */
function sampleMoisture(given: SampleMoisture): Moisture {
  demandChoice('moisture.basis', given?.basis, ['dry', 'wet', 'weighed']);
  return given.basis === 'weighed' ? locate('moisture', () => moistureFromDrying(given)) : given;
}
