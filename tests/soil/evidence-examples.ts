import type { SampleEvidence } from '../../src/soil/index.js';
import {
  celsius,
  dryBasisFraction,
  dryBasisPercent,
  fraction,
  grams,
  hours,
  kilogramsPerCubicMetre,
  massFraction,
  metres,
  minutes,
  wetBasisPercent,
} from '../../src/units/index.js';

const dryDensity = kilogramsPerCubicMetre(1420);
const standardError = fraction(0.04);
const plain: SampleEvidence = {
  from: 'sample',
  texture: { from: 'laboratory', class: 'silt loam' },
  moisture: { basis: 'dry', value: dryBasisPercent(20) },
  density: { from: 'core', dryDensity },
};
const jar = { from: 'jar', sandThickness: metres(0.03), siltThickness: metres(0.06), clayThickness: metres(0.01) } as const;
const reading = {
  columnHeight: metres(0.1),
  temperature: celsius(20),
  sandReadAt: minutes(1),
  siltReadAt: hours(6),
  particleDensity: kilogramsPerCubicMetre(2650),
};

/** Samples that between them are known in every way there is. */
export const everyEvidence: readonly [SampleEvidence, ...SampleEvidence[]] = [
  {
    ...plain,
    ...{ quartzFraction: fraction(0.3), particleDensity: kilogramsPerCubicMetre(2680), organicMatter: massFraction(0.02), gravel: massFraction(0.1) },
    ...{ moistureError: dryBasisFraction(0.01), moistureWord: 'moist', extent: 'sample', frozenAt: celsius(-3) },
  },
  {
    ...plain,
    moisture: { basis: 'wet', value: wetBasisPercent(14) },
    texture: { from: 'fractions', sand: massFraction(0.2), clay: massFraction(0.15) },
    density: { from: 'sand cone', dryDensity, standardError },
  },
  {
    ...plain,
    moisture: { basis: 'weighed', moistMass: grams(350), dryMass: grams(310), tareMass: grams(100) },
    texture: { ...jar, reading },
    density: { from: 'clod', dryDensity, standardError },
  },
  {
    ...plain,
    moisture: { basis: 'word', word: 'wet' },
    texture: { from: 'feel', class: 'loam', observer: 'professional' },
    density: { from: 'water replacement', dryDensity, standardError },
  },
  {
    ...plain,
    texture: { from: 'feel path', answers: ['ball', 'no ribbon'], observer: 'seasonal staff' },
    density: { from: 'disturbed', dryDensity },
  },
  { ...plain, texture: { from: 'unknown' }, density: { from: 'texture' } },
  { ...plain, density: { from: 'core', dryDensity, standardError } },
];
