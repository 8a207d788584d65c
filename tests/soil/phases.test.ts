import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soilPhases, type SoilState } from '../../src/soil/index.js';
import { moistureShape } from '../../src/states/index.js';
import { dryBasisFraction, dryBasisPercent, kilogramsPerCubicMetre, wetBasisPercent, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { arbitrarySoil } from './arbitrary.js';

const soilStateShape: Shape<SoilState> = { dryDensity: 'density', moisture: moistureShape, particleDensity: { optional: 'density' } };
const at = (dryDensity: number, percent: number): ReturnType<typeof soilPhases> =>
  soilPhases({ dryDensity: kilogramsPerCubicMetre(dryDensity), moisture: { basis: 'dry', value: dryBasisPercent(percent) } });

describe('soilPhases', () => {
  it('adds solids, water and air up to one, and masses to the moist density', () => {
    fc.assert(
      fc.property(arbitrarySoil, ({ dryDensity, water, saturation }) => {
        const phases = soilPhases({ dryDensity: kilogramsPerCubicMetre(dryDensity), moisture: { basis: 'dry', value: dryBasisFraction(water) } });
        expect(phases.solids + phases.volumetricWater + phases.airContent).toBeCloseTo(1, 12);
        expect(phases.solids * phases.particleDensity + 1000 * phases.volumetricWater).toBeCloseTo(phases.moistDensity, 8);
        expect(phases.saturation).toBeCloseTo(saturation, 9);
        expect(phases.porosity).toBeCloseTo(phases.voidRatio / (1 + phases.voidRatio), 12);
      }),
    );
  });

  it('lets a little too much water through with a finding, and no more', () => {
    const nearly = at(1600, 25.5);
    expect(nearly.saturation).toBeCloseTo(1.03, 2);
    expect(nearly.findings.map(({ code }) => code)).toEqual(['water-beyond-pores']);
    expect(nearly.airContent).toBeLessThan(0);
    expect(at(1600, 24.7).findings).toEqual([]);
    expect(() => at(1600, 26.1)).toThrow('dryDensity');
  });

  it('tells the likely mistake of an impossible density', () => {
    // The moist density 1920 of a soil of 1600 and 20 %.
    expect(() => at(1920, 20)).toThrow('it may be the moist density');
    const swapped = { basis: 'wet', value: wetBasisPercent(24) } as const;
    expect(() => soilPhases({ dryDensity: kilogramsPerCubicMetre(1600), moisture: swapped })).toThrow('on dry basis instead of wet');
    expect(() => at(2100, 60)).toThrow('the volume measured may be too small');
    expect(() => at(2700, 0)).toThrow('at most 2650 kg/m3');
  });

  it('remarks water that only organic soil holds', () => {
    expect(at(800, 80).findings.map(({ code }) => code)).toEqual(['moisture-of-organic-soil']);
  });

  it('refuses bad input', () => {
    const moisture = { basis: 'dry', value: dryBasisPercent(15) } as const;
    refuses<SoilState>(
      soilPhases,
      soilStateShape,
      { dryDensity: kilogramsPerCubicMetre(1600), moisture, particleDensity: kilogramsPerCubicMetre(2650) },
      { more: [{ dryDensity: kilogramsPerCubicMetre(1600), moisture: { basis: 'wet', value: wetBasisPercent(12) } }] },
    );
  });
});
