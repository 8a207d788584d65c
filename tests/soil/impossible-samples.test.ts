import { describe, expect, it } from 'vitest';
import { InputError, type InputErrorCode } from '../../src/errors/index.js';
import type { FindingCode } from '../../src/findings/index.js';
import {
  clodDensity,
  constantMass,
  coreDensity,
  fineEarth,
  leastSampleMass,
  moistureFromDrying,
  sandConeDensity,
  soilPhases,
  soilThermalProperties,
  waterReplacementDensity,
  weighedMoisture,
  type CoatedClod,
  type CoreSample,
  type SampledSoil,
  type SandConeTest,
} from '../../src/soil/index.js';
import {
  centimetres,
  cubicMetres,
  diameterMetres,
  diameterMillimetres,
  dryBasisFraction,
  dryBasisPercent,
  fraction,
  grams,
  hours,
  kilograms,
  kilogramsPerCubicMetre,
  litres,
  massPercent,
  metres,
  wetBasisFraction,
  wetBasisPercent,
} from '../../src/units/index.js';

type Refusal = readonly [name: string, run: () => unknown, code: InputErrorCode, argument: string, hint: string];
type Doubt = readonly [name: string, run: () => { readonly findings: readonly { readonly code: string }[] }, code: FindingCode];

const phases = (dryDensity: number, percent: number, particleDensity = 2650): ReturnType<typeof soilPhases> =>
  soilPhases({
    dryDensity: kilogramsPerCubicMetre(dryDensity),
    moisture: { basis: 'dry', value: dryBasisPercent(percent) },
    particleDensity: kilogramsPerCubicMetre(particleDensity),
  });
const wetPhases = (dryDensity: number, percent: number): ReturnType<typeof soilPhases> =>
  soilPhases({ dryDensity: kilogramsPerCubicMetre(dryDensity), moisture: { basis: 'wet', value: wetBasisPercent(percent) } });
const dried = (moist: number, dry: number, tare = 0): ReturnType<typeof moistureFromDrying> =>
  moistureFromDrying({ moistMass: kilograms(moist), dryMass: kilograms(dry), tareMass: kilograms(tare) });

/* A soil of 1600 kg/m³ dry with 19.4 % of water, measured by each of the ways, and a change to it that is a mistake. */
const moisture = { basis: 'dry', value: dryBasisPercent(19.375) } as const;
const core = (mistake: Partial<CoreSample>): ReturnType<typeof coreDensity> =>
  coreDensity({ moistMass: grams(375), moisture, coreDiameter: diameterMillimetres(50), coreLength: centimetres(10), ...mistake });
const cone = (mistake: Partial<SandConeTest>): ReturnType<typeof sandConeDensity> =>
  sandConeDensity({
    moistMass: grams(3138),
    moisture,
    sandBefore: kilograms(6.5),
    sandAfter: kilograms(2.7),
    coneSand: kilograms(1.5),
    sandDensity: kilogramsPerCubicMetre(1400),
    ...mistake,
  });
const clod = (mistake: Partial<CoatedClod>): ReturnType<typeof clodDensity> =>
  clodDensity({ moistMass: grams(300), moisture, coatedMass: grams(320), coatedMassInWater: grams(141), ...mistake });

const REFUSED: readonly Refusal[] = [
  ['weighings interchanged', () => dried(0.4317, 0.5124, 0.1023), 'impossible', 'dryMass', 'the two weighings may be interchanged'],
  ['dry mass in grams', () => dried(0.5124, 431.7, 0.1023), 'impossible', 'dryMass', 'the dry mass may be in grams, given as kilograms'],
  ['moist mass in grams', () => dried(512.4, 0.4317, 0.1023), 'out-of-range', 'dryMass', 'the moist mass may be in grams, given as kilograms'],
  ['tare in grams', () => dried(0.5124, 0.4317, 102.3), 'impossible', 'tareMass', 'the container may be in grams, given as kilograms'],
  ['tare taken off the dry mass', () => dried(0.5124, 0.21, 0.25), 'impossible', 'tareMass', 'the dry mass may be without the container'],
  ['tare taken off both masses', () => dried(0.24, 0.2, 0.25), 'impossible', 'tareMass', 'the masses may be without the container already'],
  ['tare taken off the moist mass', () => dried(0.3, 0.4, 0.15), 'impossible', 'dryMass', 'the moist mass may be without the container'],
  ['a truckload', () => dried(5124, 4317), 'out-of-range', 'moistMass', 'it may be in grams, given as kilograms'],
  ['more water than any peat', () => dried(1, 0.02), 'out-of-range', 'dryMass', 'hardly any solids are left'],
  [
    'per cent as a share',
    () => soilPhases({ dryDensity: kilogramsPerCubicMetre(1600), moisture: { basis: 'dry', value: dryBasisFraction(25) } }),
    'out-of-range',
    'moisture.value',
    'per cent given as a share',
  ],
  [
    'a negative share',
    () => soilPhases({ dryDensity: kilogramsPerCubicMetre(1600), moisture: { basis: 'dry', value: dryBasisFraction(-0.1) } }),
    'out-of-range',
    'moisture.value',
    'may be interchanged',
  ],
  [
    'a wet share of one and a half',
    () => soilPhases({ dryDensity: kilogramsPerCubicMetre(600), moisture: { basis: 'wet', value: wetBasisFraction(1.5) } }),
    'out-of-range',
    'moisture.value',
    'a share of 1 or more is on dry basis',
  ],
  ['moist density given as dry', () => phases(1920, 20), 'impossible', 'dryDensity', 'it may be the moist density'],
  ['bases swapped', () => wetPhases(1650, 22), 'impossible', 'dryDensity', 'the moisture may be on dry basis instead of wet'],
  ['1600 kg/m³ at 30 % (S = 1.211)', () => phases(1600, 30), 'impossible', 'dryDensity', 'it may be the moist density'],
  ['heavy grains taken as quartz', () => phases(1990, 13.5), 'impossible', 'dryDensity', 'the grains may be heavier than those given'],
  ['volume too small', () => phases(2100, 60), 'impossible', 'dryDensity', 'the volume measured may be too small'],
  ['density in g/cm³', () => phases(1.6, 15), 'out-of-range', 'dryDensity', 'it may be in g/cm3 or t/m3, given as kg/m3'],
  ['density a thousand times', () => phases(1.6e6, 15), 'out-of-range', 'dryDensity', 'it may be in kg/m3, given as g/cm3'],
  ['specific gravity as density', () => phases(1600, 15, 2.65), 'out-of-range', 'particleDensity', 'specific gravity'],
  ['denser than its grains', () => phases(2700, 0), 'impossible', 'dryDensity', 'the volume measured may be too small'],
  [
    'core weighed in its tube',
    () => core({ moistMass: grams(620) }),
    'impossible',
    'moistMass',
    'the container, of about 0.24 kg, may not have been taken off',
  ],
  ['core by its radius', () => core({ coreDiameter: diameterMillimetres(25) }), 'impossible', 'moistMass', 'the diameter may be the radius'],
  [
    'core in kilograms for grams',
    () => core({ moistMass: kilograms(375) }),
    'impossible',
    'moistMass',
    'the mass may be in grams, given as kilograms',
  ],
  ['core in grams for kilograms', () => core({ moistMass: grams(0.375) }), 'impossible', 'moistMass', 'the mass may be in kilograms, given as grams'],
  ['core diameter in cm for mm', () => core({ coreDiameter: diameterMillimetres(5) }), 'out-of-range', 'coreDiameter', 'given as millimetres'],
  [
    'core in inches for centimetres',
    () => core({ coreDiameter: diameterMillimetres(19.7), coreLength: centimetres(3.94) }),
    'impossible',
    'moistMass',
    'both lengths may be in inches, given as centimetres',
  ],
  ['core length in metres', () => core({ coreLength: metres(100) }), 'out-of-range', 'coreLength', 'given as metres'],
  ['core diameter in metres', () => core({ coreDiameter: diameterMetres(50) }), 'out-of-range', 'coreDiameter', 'given as metres'],
  [
    'core with its moisture on the other basis',
    () => core({ moisture: { basis: 'wet', value: wetBasisPercent(27) } }),
    'impossible',
    'moistMass',
    'the moisture may be on dry basis instead of wet',
  ],
  ['container heavier than all', () => core({ tareMass: grams(500) }), 'out-of-range', 'tareMass', 'may be without the container already'],
  ['jar interchanged', () => cone({ sandBefore: kilograms(2.7), sandAfter: kilograms(6.5) }), 'impossible', 'sandAfter', 'may be interchanged'],
  [
    'sand of the cone in grams',
    () => cone({ coneSand: kilograms(750) }),
    'impossible',
    'sandAfter',
    'the sand in the cone may be in grams, given as kilograms',
  ],
  [
    'cone taken off twice',
    () => cone({ sandAfter: kilograms(4.2) }),
    'impossible',
    'moistMass',
    'the sand of the cone may have been taken off already',
  ],
  ['sand density in t/m³', () => cone({ sandDensity: kilogramsPerCubicMetre(1.4) }), 'out-of-range', 'sandDensity', 'it may be in g/cm3 or t/m3'],
  [
    'clod by what the water rose',
    () => clod({ coatedMassInWater: grams(179) }),
    'impossible',
    'moistMass',
    'what the water rose by may have been given as the mass in water',
  ],
  [
    'clod in water heavier than in air',
    () => clod({ coatedMass: grams(141), coatedMassInWater: grams(320) }),
    'impossible',
    'coatedMass',
    'the weights in air and in water may be interchanged',
  ],
  [
    'coat of negative mass',
    () => clod({ coatedMass: grams(300), moistMass: grams(320) }),
    'impossible',
    'coatedMass',
    'the coated and the bare clod may be interchanged',
  ],
  [
    'hole in litres as cubic metres',
    () => waterReplacementDensity({ moistMass: kilograms(19), moisture, waterVolume: cubicMetres(10) }),
    'out-of-range',
    'waterVolume',
    'it may be in litres',
  ],
  [
    'hole in cubic centimetres as litres',
    () => waterReplacementDensity({ moistMass: grams(1910), moisture, waterVolume: litres(1000) }),
    'impossible',
    'moistMass',
    'the volume may be in cubic centimetres, given as litres',
  ],
  [
    'level above the hole',
    () => waterReplacementDensity({ moistMass: kilograms(19), moisture, waterVolume: litres(1), levelVolume: litres(10) }),
    'impossible',
    'levelVolume',
    'the two volumes may be interchanged',
  ],
  ['stones in metres', () => leastSampleMass({ largestParticle: diameterMetres(20) }), 'out-of-range', 'largestParticle', 'given as metres'],
  [
    'stones that leave no room',
    () => fineEarth({ dryDensity: kilogramsPerCubicMetre(2300), moisture, stoneShare: massPercent(10) }),
    'impossible',
    'stoneShare',
    'may be the moist one',
  ],
  [
    'weighings out of order',
    () =>
      constantMass({
        weighings: [
          { ovenTime: hours(16), dryMass: grams(400) },
          { ovenTime: hours(14), dryMass: grams(400) },
        ],
      }),
    'out-of-range',
    'weighings.1.ovenTime',
    'in order of time',
  ],
];

const loam: SampledSoil = {
  from: 'sample',
  moisture: { basis: 'dry', value: dryBasisPercent(18) },
  density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1500) },
  texture: { from: 'laboratory', class: 'loam' },
};
const sample = (change: Partial<SampledSoil>): ReturnType<typeof soilThermalProperties> => soilThermalProperties({ ...loam, ...change });

const DOUBTED: readonly Doubt[] = [
  ['a little more water than pores', () => phases(1600, 25.5), 'water-beyond-pores'],
  ['as dense as rock', () => phases(2350, 3), 'density-beyond-usual'],
  ['as loose as peat, with mineral grains', () => phases(560, 40), 'density-beyond-usual'],
  ['pounds per cubic foot as kg/m³', () => phases(100, 15), 'density-beyond-usual'],
  ['wet as peat', () => phases(850, 70), 'moisture-of-organic-soil'],
  ['hole without the cone’s sand taken off', () => cone({ moistMass: grams(2200), coneSand: grams(0.1) }), 'density-beyond-usual'],
  ['core length in centimetres for millimetres', () => core({ coreLength: centimetres(100) }), 'density-beyond-usual'],
  ['a core measured by eye', () => core({ rulerError: centimetres(0.5) }), 'density-measured-poorly'],
  [
    'a bag weighed for its density',
    () => sample({ density: { from: 'disturbed', dryDensity: kilogramsPerCubicMetre(1100) } }),
    'disturbed-sample-density',
  ],
  ['a loose core', () => sample({ density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1100) } }), 'density-outside-texture'],
  [
    'a density off by 15 %',
    () => sample({ density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1300), standardError: fraction(0.15) } }),
    'density-measured-poorly',
  ],
  ['a share given as per cent', () => sample({ moisture: { basis: 'dry', value: dryBasisPercent(0.18) } }), 'soil-very-dry'],
  [
    'wetter than its texture can be as dense as usual',
    () => sample({ density: { from: 'texture' }, moisture: { basis: 'dry', value: dryBasisPercent(45) } }),
    'density-limited-by-moisture',
  ],
  ['dried on a window sill', () => weighedMoisture({ moistMass: grams(240), dryMass: grams(200), dried: 'air' }), 'dried-in-air'],
  ['a pinch on a kitchen balance', () => weighedMoisture({ moistMass: grams(24), dryMass: grams(20) }), 'moisture-weighed-poorly'],
  [
    'a cup of gravel',
    () => weighedMoisture({ moistMass: grams(240), dryMass: grams(220), largestParticle: diameterMillimetres(30) }),
    'sample-small-for-its-grains',
  ],
];

describe('what cannot be', () => {
  it.each(REFUSED)('%s is refused with its likely cause', (_, run, code, argument, hint) => {
    let refusal: unknown;
    try {
      run();
    } catch (error) {
      refusal = error;
    }
    expect(refusal).toBeInstanceOf(InputError);
    expect(refusal).toMatchObject({ code, argument });
    expect(String(refusal)).toContain(hint);
  });

  it('is not refused where there is no mistake', () => {
    for (const right of [core({}), cone({}), clod({})]) {
      expect(right.dryDensity / 1600).toBeCloseTo(1, 2);
      expect(right.findings).toEqual([]);
    }
    expect(dried(0.5124, 0.4317, 0.1023).value).toBeCloseTo(0.245, 3);
  });
});

describe('what is doubtful', () => {
  it.each(DOUBTED)('%s is computed and remarked', (_, run, code) => {
    expect(run().findings.map((finding) => finding.code)).toContain(code);
  });
});
