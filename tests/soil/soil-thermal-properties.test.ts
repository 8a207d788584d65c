import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coreDensity, soilSampleShape, soilThermalProperties, type SampledSoil, type SoilSample } from '../../src/soil/index.js';
import {
  centimetres,
  diameterMillimetres,
  dryBasisFraction,
  dryBasisPercent,
  fraction,
  grams,
  kilogramsPerCubicMetre,
  massFraction,
  megajoulesPerCubicMetreKelvin,
  wattsPerMetreKelvin,
  wetBasisPercent,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { everyNumberFinite } from '../support/finite.js';
import { arbitrarySoil, sampled } from './arbitrary.js';

const loam: SampledSoil = {
  from: 'sample',
  moisture: { basis: 'dry', value: dryBasisPercent(18) },
  density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1500) },
  texture: { from: 'laboratory', class: 'loam' },
};
const codes = (sample: SoilSample): readonly string[] => soilThermalProperties(sample).findings.map(({ code }) => code);

describe('soilThermalProperties of a sample', () => {
  it('is finite, lies in its band, and agrees in itself', () => {
    fc.assert(
      fc.property(arbitrarySoil, (soil) => {
        const properties = soilThermalProperties(sampled(soil));
        expect(everyNumberFinite(properties)).toBe(true);
        for (const { low, estimate, high, coverage } of [properties.conductivity, properties.heatCapacity, properties.diffusivity]) {
          expect(low).toBeLessThan(estimate);
          expect(estimate).toBeLessThan(high);
          expect(coverage).toBe(0.8);
        }
        const { conductivity, heatCapacity, diffusivity } = properties.thermal;
        expect(diffusivity * heatCapacity).toBeCloseTo(conductivity, 9);
        expect(properties.frozen?.heatCapacity).toBeLessThanOrEqual(heatCapacity);
      }),
    );
  });

  it('conducts no worse with more water or density', () => {
    fc.assert(
      fc.property(arbitrarySoil, fc.double({ min: 0, max: 1, noNaN: true }), (soil, less) => {
        const here = soilThermalProperties(sampled(soil)).thermal.conductivity;
        expect(soilThermalProperties(sampled({ ...soil, water: soil.water * less })).thermal.conductivity).toBeLessThanOrEqual(here);
        expect(soilThermalProperties(sampled({ ...soil, dryDensity: soil.dryDensity * 0.95 })).thermal.conductivity).toBeLessThanOrEqual(here);
      }),
    );
  });

  it('adds its errors as squares, each to be seen', () => {
    const { conductivityErrors, conductivity } = soilThermalProperties(loam);
    if (conductivityErrors === undefined) throw new Error('no errors');
    const { total, ...parts } = conductivityErrors;
    expect(Math.hypot(...Object.values(parts))).toBeCloseTo(total, 12);
    expect(Math.log(conductivity.high / conductivity.estimate) / total).toBeCloseTo(1.2816, 4);
    expect(parts.quartz).toBe(0.1);
  });

  it('takes moisture on either basis and as weighed alike', () => {
    const as = (moisture: SampledSoil['moisture']): number => soilThermalProperties({ ...loam, moisture }).thermal.conductivity;
    const dry = as({ basis: 'dry', value: dryBasisPercent(25) });
    expect(as({ basis: 'wet', value: wetBasisPercent(20) })).toBeCloseTo(dry, 12);
    expect(as({ basis: 'weighed', moistMass: grams(350), dryMass: grams(300), tareMass: grams(100) })).toBeCloseTo(dry, 12);
  });

  it('never uses the density of a disturbed sample', () => {
    const bag = (density: number): SampledSoil => ({ ...loam, density: { from: 'disturbed', dryDensity: kilogramsPerCubicMetre(density) } });
    const [loose, dense] = [bag(1000), bag(1700)].map(soilThermalProperties);
    expect(loose?.conductivity).toEqual(dense?.conductivity);
    expect(loose?.conductivity).toEqual(soilThermalProperties({ ...loam, density: { from: 'texture' } }).conductivity);
    expect(codes(bag(1000))).toEqual(['disturbed-sample-density']);
    expect(codes({ ...loam, density: { from: 'texture' } })).toEqual(['density-not-measured']);
    const cored = soilThermalProperties(loam).conductivityErrors?.total ?? NaN;
    expect(loose?.conductivityErrors?.density).toBeGreaterThan(0.05);
    expect(loose?.conductivityErrors?.total).toBeGreaterThan(cored);
  });

  it('takes a density as it was measured, and never makes the band wider by knowing more', () => {
    const measured = coreDensity({
      moistMass: grams(375),
      moisture: { basis: 'dry', value: dryBasisPercent(18) },
      coreDiameter: diameterMillimetres(50),
      coreLength: centimetres(10),
    });
    const cored = soilThermalProperties({ ...loam, density: measured });
    expect(cored.phases?.dryDensity).toBe(measured.dryDensity);
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.6, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (error, less) => {
        const known = (standardError: number): number =>
          soilThermalProperties({
            ...loam,
            density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1487), standardError: fraction(standardError) },
          }).conductivityErrors?.density ?? NaN;
        const better = Math.max(0.001, less * error);
        expect(known(better)).toBeLessThanOrEqual(known(error) * (1 + 1e-9));
        const guessed = soilThermalProperties({ ...loam, density: { from: 'texture' } }).conductivityErrors?.density ?? NaN;
        expect(known(error)).toBeLessThanOrEqual(guessed * (1 + 1e-3));
      }),
    );
  });

  it('leaves a density that was measured no better than guessed', () => {
    const vague = { ...loam, density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1200), standardError: fraction(0.15) } } as const;
    expect(codes(vague)).toEqual(['density-measured-poorly']);
    expect(soilThermalProperties(vague).conductivity).toEqual(soilThermalProperties({ ...loam, density: { from: 'texture' } }).conductivity);
  });

  it('takes a soil wetter than its typical pores as looser, not as impossible', () => {
    const wet: SampledSoil = {
      ...loam,
      moisture: { basis: 'dry', value: dryBasisPercent(45) },
      density: { from: 'texture' },
      texture: { from: 'feel', class: 'clay' },
    };
    expect(codes(wet)).toEqual(['density-not-measured', 'density-limited-by-moisture', 'soil-near-saturation']);
    expect(soilThermalProperties(wet).phases?.saturation).toBeCloseTo(1, 9);
  });

  it('widens the band where the texture was felt, and narrows it where quartz was measured', () => {
    const error = (sample: SampledSoil): number => soilThermalProperties(sample).conductivityErrors?.total ?? NaN;
    expect(error({ ...loam, texture: { from: 'feel', class: 'loam' } })).toBeGreaterThan(error(loam));
    expect(error({ ...loam, quartzFraction: fraction(0.4) })).toBeLessThan(error(loam));
  });

  it('refuses more water than the pores hold, with the likely cause and place', () => {
    const soaked: SampledSoil = { ...loam, density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1900) } };
    expect(() => soilThermalProperties({ ...soaked, moisture: { basis: 'dry', value: dryBasisPercent(25) } })).toThrow(
      /^density\.dryDensity: 1900 .*it may be the moist density/u,
    );
    expect(() => soilThermalProperties({ ...soaked, moisture: { basis: 'wet', value: wetBasisPercent(14) } })).toThrow('on dry basis instead of wet');
  });

  it.each<[string, SoilSample, readonly string[]]>([
    ['a plain sample', loam, []],
    ['rounding', { ...loam, moisture: { basis: 'dry', value: dryBasisFraction(0.295) } }, ['water-beyond-pores', 'soil-near-saturation']],
    ['dry soil', { ...loam, moisture: { basis: 'dry', value: dryBasisPercent(4) } }, ['soil-very-dry', 'kersten-outside-range']],
    [
      'dry sand',
      {
        ...loam,
        moisture: { basis: 'dry', value: dryBasisPercent(5) },
        density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1750) },
        texture: { from: 'laboratory', class: 'sand' },
      },
      ['sand-may-dry-out-in-cooling'],
    ],
    ['loose soil said to be a core', { ...loam, density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1100) } }, ['density-outside-texture']],
    [
      'organic soil',
      { ...loam, density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1250) }, organicMatter: massFraction(0.3) },
      ['organic-outside-models'],
    ],
    [
      'wet organic soil called mineral',
      {
        ...loam,
        moisture: { basis: 'dry', value: dryBasisPercent(80) },
        density: { from: 'clod', dryDensity: kilogramsPerCubicMetre(800) },
        texture: { from: 'feel', class: 'clay' },
      },
      ['density-outside-texture', 'moisture-of-organic-soil'],
    ],
    ['quartz at the step', { ...loam, quartzFraction: fraction(0.21) }, ['quartz-near-step']],
  ])('has the findings of %s', (_, sample, expected) => {
    expect([...codes(sample)].sort()).toEqual([...expected].sort());
  });
});

describe('soilThermalProperties of what was measured or read', () => {
  it('keeps a measured conductivity with its error', () => {
    const measured = soilThermalProperties({ from: 'laboratory', conductivity: wattsPerMetreKelvin(1.4), standardError: fraction(0.1) });
    expect(measured.conductivity.estimate).toBe(1.4);
    expect(measured.conductivity.high).toBeCloseTo(1.4 * Math.exp(0.12816), 4);
    expect(measured.findings.map(({ code }) => code)).toEqual(['heat-capacity-assumed']);
    const both = soilThermalProperties({
      from: 'laboratory',
      conductivity: wattsPerMetreKelvin(1.4),
      heatCapacity: megajoulesPerCubicMetreKelvin(2),
    });
    expect(both.thermal.diffusivity).toBeCloseTo(0.7e-6, 12);
    expect(both.findings).toEqual([]);
  });

  it('takes a word at the handbooks’ range', () => {
    const sand = soilThermalProperties({ from: 'handbook', material: 'sand', state: 'moist' });
    expect(sand.conductivity).toEqual({ low: 1, estimate: 1.4, high: 1.9, coverage: 0.8 });
    expect(sand.thermal.heatCapacity).toBeCloseTo(Math.sqrt(1.6 * 2.2) * 1e6, 3);
    expect(sand.findings.map(({ code }) => code)).toEqual(['conductivity-from-handbook']);
    expect(codes({ from: 'handbook', material: 'peat', state: 'saturated' })).toEqual([
      'conductivity-from-handbook',
      'peat-ground',
      'heat-capacity-assumed',
    ]);
  });

  it('refuses bad input of every form', () => {
    const dryDensity = kilogramsPerCubicMetre(1500);
    const standardError = fraction(0.04);
    const texture = { from: 'feel', class: 'clay loam' } as const;
    refuses<SoilSample>(
      soilThermalProperties,
      soilSampleShape,
      { ...loam, quartzFraction: fraction(0.4), particleDensity: kilogramsPerCubicMetre(2680), organicMatter: massFraction(0.02) },
      {
        more: [
          { ...loam, moisture: { basis: 'wet', value: wetBasisPercent(14) }, density: { from: 'sand cone', dryDensity, standardError }, texture },
          {
            ...loam,
            moisture: { basis: 'weighed', moistMass: grams(350), dryMass: grams(310), tareMass: grams(100) },
            density: { from: 'clod', dryDensity, standardError },
          },
          { ...loam, density: { from: 'core', dryDensity, standardError } },
          { ...loam, density: { from: 'water replacement', dryDensity, standardError } },
          { ...loam, density: { from: 'disturbed', dryDensity } },
          { ...loam, density: { from: 'texture' } },
          {
            from: 'laboratory',
            conductivity: wattsPerMetreKelvin(1.4),
            standardError: fraction(0.1),
            heatCapacity: megajoulesPerCubicMetreKelvin(2),
          },
          { from: 'handbook', material: 'sand', state: 'moist' },
        ],
      },
    );
  });
});
