import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  applicableModels,
  ballandArpConductivity,
  johansenConductivity,
  luConductivity,
  mixedSolids,
  peatConductivity,
  soilThermalProperties,
  solidsConductivity,
  TEXTURE_CLASSES,
  typicalSoil,
  type KnownSoil,
} from '../../src/soil/index.js';
import {
  dryBasisFraction,
  fraction,
  kilogramsPerCubicMetre,
  massFraction,
  massPercent,
  ratio,
  volumeFraction,
  volumetricFraction,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { arbitrarySoil } from './arbitrary.js';

const loam = { dryDensity: kilogramsPerCubicMetre(1500), saturation: ratio(0.6) };
const whole: KnownSoil = { ...loam, texture: 'loam', sand: massPercent(40), clay: massPercent(20) };
const refusals = (soil: KnownSoil): Readonly<Record<string, string>> =>
  Object.fromEntries(applicableModels(soil).inapplicable.map(({ model, refusal }) => [model, refusal]));
const models = (soil: KnownSoil): readonly string[] => applicableModels(soil).applicable.map(({ model }) => model);

describe('applicableModels', () => {
  it('has every model on one list, with a number or a reason', () => {
    fc.assert(
      fc.property(arbitrarySoil, fc.boolean(), fc.double({ min: 0, max: 1, noNaN: true }), (soil, frozen, organic) => {
        const { applicable, inapplicable } = applicableModels({
          dryDensity: kilogramsPerCubicMetre(Math.min(soil.dryDensity, 1200)),
          saturation: ratio(soil.saturation),
          texture: soil.texture,
          organicMatter: massFraction(organic),
          frozen,
        });
        expect([...applicable, ...inapplicable].map(({ model }) => model).sort()).toEqual(
          ['johansen', 'kersten', 'cote-konrad', 'lu-2007', 'lu-2014', 'balland-arp', 'campbell', 'ewen-thomas'].sort(),
        );
        for (const { conductivity } of applicable) expect(conductivity).toBeGreaterThan(0);
      }),
    );
  });

  it('takes all eight where all is known, each with the value of the model called by name', () => {
    const { applicable, findings } = applicableModels(whole);
    expect([applicable.length, findings]).toEqual([8, []]);
    const value = (model: string): number | undefined => applicable.find((each) => each.model === model)?.conductivity;
    const quartz = { quartzFraction: typicalSoil('loam').quartzFraction };
    expect(value('johansen')).toBe(johansenConductivity({ ...loam, ...quartz, grain: 'coarse' }).conductivity);
    expect(value('lu-2007')).toBe(luConductivity({ ...loam, ...quartz, grain: 'coarse' }).conductivity);
    expect(value('balland-arp')).toBe(
      ballandArpConductivity({ ...loam, solid: solidsConductivity(quartz), sandShare: volumeFraction(0.4) }).conductivity,
    );
  });

  it('agrees with the thermal properties of a sample where both have the model', () => {
    for (const texture of TEXTURE_CLASSES) {
      const dryDensity = kilogramsPerCubicMetre(1400);
      const water = 0.6 * (1000 / 1400 - 1000 / 2650);
      const sample = soilThermalProperties({
        from: 'sample',
        moisture: { basis: 'dry', value: dryBasisFraction(water) },
        density: { from: 'core', dryDensity },
        texture: { from: 'laboratory', class: texture },
      });
      const { applicable } = applicableModels({ dryDensity, saturation: ratio(0.6), texture });
      const frozen = applicableModels({ dryDensity, saturation: ratio(0.6), texture, frozen: true });
      for (const { model, conductivity, frozenConductivity } of sample.models) {
        expect(applicable.find((each) => each.model === model)?.conductivity).toBeCloseTo(conductivity, 12);
        expect(frozen.applicable.find((each) => each.model === model)?.conductivity).toBeCloseTo(frozenConductivity, 12);
      }
    }
  });

  it('reads the texture off sand and clay, and refuses one that is of another soil', () => {
    const { texture, ...fractions } = { ...whole, texture: 'loam' } as const;
    expect(applicableModels(fractions)).toEqual(applicableModels({ ...fractions, texture }));
    expect(() => applicableModels({ ...whole, texture: 'sand' })).toThrow('texture: sand is not allowed; allowed: loam');
  });

  it('says what it lacks', () => {
    expect(refusals(loam)).toEqual({
      johansen: 'texture not known',
      kersten: 'texture not known',
      'cote-konrad': 'texture not known',
      'lu-2007': 'texture not known',
      'lu-2014': 'sand not known',
      'balland-arp': 'quartz not known',
      campbell: 'clay not known',
      'ewen-thomas': 'quartz not known',
    });
    expect(refusals({ ...loam, sand: massPercent(40) })).toEqual({
      johansen: 'quartz not known',
      'lu-2007': 'quartz not known',
      'lu-2014': 'clay not known',
      'balland-arp': 'quartz not known',
      campbell: 'clay not known',
      'ewen-thomas': 'quartz not known',
    });
    expect(refusals({ ...loam, sand: massPercent(40), clay: massPercent(0) })).toEqual({ campbell: 'no clay' });
    expect(refusals({ ...loam, texture: 'loam' })['balland-arp']).toBe('sand not known');
  });

  it('leaves frozen soil to the four that have a form for it', () => {
    expect(models({ ...whole, frozen: true })).toEqual(['johansen', 'kersten', 'cote-konrad', 'balland-arp']);
    expect(refusals({ ...whole, frozen: true })['lu-2007']).toBe('no form for frozen soil');
  });

  it('says where the forms for frozen soil part from the unfrozen ones: with little ice, but for full pores', () => {
    const at = (liquidShare: number, saturation: number): ReturnType<typeof applicableModels> => {
      const unfrozenWater = volumetricFraction(liquidShare * saturation * (1 - 1500 / 2650));
      return applicableModels({ ...whole, saturation: ratio(saturation), frozen: true, unfrozenWater });
    };
    const johansen = ({ applicable }: ReturnType<typeof applicableModels>): number => applicable[0]?.conductivity ?? NaN;
    const before = johansen(applicableModels({ ...whole, saturation: ratio(0.3) }));
    // Below the soil before it froze, and after all of it has.
    expect(johansen(at(0.9, 0.3)) / before).toBeCloseTo(0.81, 2);
    expect(johansen(at(0, 0.3)) / before).toBeCloseTo(0.926, 3);
    expect(at(0.9, 0.3).findings).toMatchObject([{ code: 'frozen-model-with-little-ice', values: { high: 0.5 } }]);
    expect(at(0.9, 0.3).findings[0]?.values).toHaveProperty('liquidShare', expect.closeTo(0.9, 12));
    expect(at(0.9, 1).findings).toEqual([]);
    expect(at(0.49, 0.3).findings).toEqual([]);
  });

  it('leaves peat to Côté and Konrad and Balland and Arp, and what lies between to the latter alone', () => {
    const fen = { ...whole, dryDensity: kilogramsPerCubicMetre(150) };
    expect(models({ ...fen, organicMatter: massFraction(0.9) })).toEqual(['cote-konrad', 'balland-arp']);
    expect(refusals({ ...fen, organicMatter: massFraction(0.5) })).toMatchObject({ 'cote-konrad': 'partly organic soil', johansen: 'organic soil' });
    expect(models({ ...fen, organicMatter: massFraction(0.5) })).toEqual(['balland-arp']);
    const peat = { dryDensity: kilogramsPerCubicMetre(150), saturation: ratio(0.9) };
    const { applicable, findings } = applicableModels({ ...peat, organicMatter: massFraction(1) });
    const particleDensity = mixedSolids(massFraction(1)).particleDensity;
    expect(applicable).toMatchObject([
      { model: 'cote-konrad', inRange: true, conductivity: peatConductivity({ ...peat, particleDensity }).conductivity },
    ]);
    expect(findings.map(({ code }) => code)).toEqual(['peat-model-reads-high']);
  });

  it('leaves gravel to those made for it, and crushed rock to Côté and Konrad', () => {
    expect(models({ ...whole, gravel: massFraction(0.3) })).toEqual(['johansen', 'kersten', 'cote-konrad', 'balland-arp']);
    expect(models({ ...whole, gravel: massFraction(0.6) })).toEqual(['cote-konrad', 'balland-arp']);
    expect(models({ ...whole, crushed: true })).toEqual(['cote-konrad']);
    expect(refusals({ ...whole, crushed: true })['balland-arp']).toBe('crushed rock');
  });

  it('says where an equation fails', () => {
    const sand: KnownSoil = { ...loam, texture: 'sand', sand: massPercent(90), clay: massPercent(5) };
    expect(refusals({ ...sand, saturation: ratio(0.01) })['kersten']).toBe('too dry');
    const fluff = refusals({ ...whole, dryDensity: kilogramsPerCubicMetre(200) });
    expect([fluff['kersten'], fluff['lu-2007'], fluff['lu-2014']]).toEqual(['too loose', 'too loose', 'too loose']);
    const dense: KnownSoil = { ...whole, dryDensity: kilogramsPerCubicMetre(2700), particleDensity: kilogramsPerCubicMetre(2900) };
    expect(refusals(dense)['kersten']).toBe('too dense');
  });

  it('computes beyond a range and says so, model by model', () => {
    const outside = (soil: KnownSoil): readonly string[] =>
      applicableModels(soil).applicable.flatMap(({ model, inRange }) => (inRange ? [] : [model]));
    const codes = (soil: KnownSoil): readonly string[] => applicableModels(soil).findings.map(({ code }) => code);
    const dry = { ...whole, saturation: ratio(0.04) };
    expect(outside(dry)).toEqual(['johansen']);
    expect(codes(dry)).toEqual(['saturation-outside-model']);
    const clay: KnownSoil = { ...loam, texture: 'clay', saturation: ratio(0.15) };
    expect(outside(clay)).toEqual(['kersten']);
    expect(codes(clay)).toEqual(['kersten-outside-range']);
    const loose = { ...whole, dryDensity: kilogramsPerCubicMetre(600) };
    expect(outside(loose)).toEqual(['lu-2007', 'lu-2014', 'campbell']);
    expect(codes(loose)).toEqual(['porosity-outside-model', 'porosity-outside-model', 'density-outside-model']);
  });

  it('refuses bad input', () => {
    const shape: Shape<KnownSoil> = {
      dryDensity: 'density',
      saturation: 'ratio',
      particleDensity: { optional: 'density' },
      frozen: { optional: 'flag' },
      unfrozenWater: { optional: 'volumetric water' },
      texture: { optional: TEXTURE_CLASSES },
      sand: { optional: 'mass fraction' },
      clay: { optional: 'mass fraction' },
      quartzFraction: { optional: 'fraction' },
      organicMatter: { optional: 'mass fraction' },
      gravel: { optional: 'mass fraction' },
      crushed: { optional: 'flag' },
    };
    refuses<KnownSoil>(applicableModels, shape, {
      ...whole,
      particleDensity: kilogramsPerCubicMetre(2700),
      frozen: true,
      unfrozenWater: volumetricFraction(0.05),
      quartzFraction: fraction(0.4),
      organicMatter: massFraction(0.05),
      gravel: massFraction(0.1),
      crushed: false,
    });
    expect(() => applicableModels({ ...whole, sand: massPercent(70), clay: massPercent(40) })).toThrow('shares of one mass');
  });
});
