import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HELD_MOISTURE } from '../../src/soil/held-moisture.data.js';
import {
  datedSampleShape,
  soilFromEvidence,
  soilThroughTheYear,
  type DatedSample,
  type SampleEvidence,
  type SoilThroughTheYearResult,
  type TextureClass,
} from '../../src/soil/index.js';
import { dayOfYear, dryBasisPercent, fraction, kilogramsPerCubicMetre, massFraction } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { everyNumberFinite } from '../support/finite.js';
import { arbitrarySoil, sampled } from './arbitrary.js';
import { classOf } from './cores.js';
import { everyEvidence } from './evidence-examples.js';
import { CORES } from './evidence-cores.js';

const silt = (water: number): SampleEvidence => ({
  from: 'sample',
  texture: { from: 'laboratory', class: 'silt loam' },
  moisture: { basis: 'dry', value: dryBasisPercent(water) },
  density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1450) },
});
const spring: DatedSample = { evidence: silt(26), sampledOn: dayOfYear(60), hemisphere: 'northern' };
const waterOf = ({ sample }: SoilThroughTheYearResult['driest']): number => sample?.phases.moisture ?? NaN;
const codes = (sample: DatedSample): readonly string[] => soilThroughTheYear(sample).findings.map(({ code }) => code);

describe('soilThroughTheYear', () => {
  it('halves the water of early spring by the end of summer, and takes that of late summer as it is', () => {
    const march = soilThroughTheYear(spring);
    expect(waterOf(march.driest)).toBeCloseTo(0.13, 4);
    expect(waterOf(march.wettest)).toBeCloseTo(0.26, 9);
    const september = soilThroughTheYear({ ...spring, evidence: silt(13), sampledOn: dayOfYear(60 + 365.25 / 2) });
    expect(waterOf(september.driest)).toBeCloseTo(0.13, 9);
    expect(waterOf(september.wettest)).toBeCloseTo(0.26, 9);
    expect(september.wetness).toBeCloseTo(0.5, 9);
  });

  it('lets water drain that the texture does not hold, and adds none beyond it', () => {
    const held = HELD_MOISTURE['sandy loam'] * Math.exp(1.2815515655 * 0.15);
    const soaked: DatedSample = {
      evidence: {
        ...silt(20),
        texture: { from: 'laboratory', class: 'sandy loam' },
        density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1550) },
      },
      sampledOn: dayOfYear(60),
      hemisphere: 'northern',
    };
    expect(waterOf(soilThroughTheYear(soaked).driest)).toBeCloseTo(held / 2, 9);
    const august = soilThroughTheYear({
      ...soaked,
      evidence: { ...soaked.evidence, moisture: { basis: 'dry', value: dryBasisPercent(12) } },
      sampledOn: dayOfYear(230),
    });
    expect(waterOf(august.wettest)).toBeCloseTo(held, 9);
  });

  it('is finite, goes from dry to wet, and each state carried has a wider error of water', () => {
    fc.assert(
      fc.property(arbitrarySoil, fc.double({ min: 1, max: 366, noNaN: true }), (soil, day) => {
        const found = soilThroughTheYear({ evidence: sampled(soil), sampledOn: dayOfYear(day), hemisphere: 'northern' });
        expect(everyNumberFinite(found)).toBe(true);
        expect(waterOf(found.driest)).toBeLessThanOrEqual(waterOf(found.sampled) * (1 + 1e-9));
        expect(waterOf(found.wettest)).toBeGreaterThanOrEqual(
          Math.min(waterOf(found.sampled), found.wettest.sample?.phases.saturatedMoisture ?? 0) * (1 - 1e-9),
        );
        const at = (state: 'driest' | 'sampled' | 'wettest'): number => found[state].thermal.conductivity;
        expect(at('driest')).toBeLessThanOrEqual(at('sampled') * (1 + 1e-9));
        expect(at('sampled')).toBeLessThanOrEqual(at('wettest') * (1 + 1e-9));
        expect(found.sampled.errors.some(({ cause }) => cause === 'season')).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  it('is the same half a year later on the other half of the earth', () => {
    const north = soilThroughTheYear({ ...spring, sampledOn: dayOfYear(100) });
    const south = soilThroughTheYear({ ...spring, sampledOn: dayOfYear(284), hemisphere: 'southern' });
    expect(south.driest).toEqual(north.driest);
  });

  it('begins from what soilFromEvidence makes of the sample', () => {
    const { findings: _, sources: __, ...day } = soilFromEvidence(spring.evidence);
    expect(soilThroughTheYear(spring).sampled).toEqual(day);
  });

  it('tells the season among the causes of the carried states', () => {
    const { driest } = soilThroughTheYear(spring);
    const season = driest.errors.find(({ cause }) => cause === 'season');
    expect(season?.downward).toBeGreaterThan(0.1);
    expect(driest.conductivity.high / driest.conductivity.low).toBeGreaterThan(1.8);
  });

  it('keeps the pores full under a water table', () => {
    const wet = soilThroughTheYear({ ...spring, belowWaterTable: true });
    expect(wet.driest.sample?.phases.saturation).toBeCloseTo(1, 9);
    expect(wet.driest).toEqual(wet.wettest);
    expect(wet.findings.some(({ code }) => code === 'sampled-in-wet-season')).toBe(false);
  });

  it('carries a word for the water as well, and peat without the rule for what textures hold', () => {
    const word = soilThroughTheYear({ ...spring, evidence: { ...silt(0), moisture: { basis: 'word', word: 'moist' } } });
    expect(waterOf(word.driest) / waterOf(word.sampled)).toBeCloseTo(0.5, 6);
    const peat: SampleEvidence = {
      ...silt(400),
      organicMatter: massFraction(0.9),
      density: { from: 'core', dryDensity: kilogramsPerCubicMetre(150), standardError: fraction(0.05) },
    };
    expect(waterOf(soilThroughTheYear({ ...spring, evidence: peat }).driest)).toBeCloseTo(2, 6);
  });

  it('warns of a wet spring before a dry August, and of sand that may dry out then', () => {
    expect(codes({ ...spring, sampledOn: dayOfYear(110) })).toContain('sampled-in-wet-season');
    expect(codes({ ...spring, sampledOn: dayOfYear(240) })).not.toContain('sampled-in-wet-season');
    const sand: DatedSample = {
      ...spring,
      evidence: { ...silt(7), texture: { from: 'laboratory', class: 'sand' }, density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1700) } },
    };
    expect(soilFromEvidence(sand.evidence).findings.map(({ code }) => code)).not.toContain('sand-may-dry-out-in-cooling');
    expect(codes(sand)).toContain('sand-may-dry-out-in-cooling');
  });

  it('refuses bad input', () => {
    const [first, ...others] = everyEvidence.map((evidence) => ({ ...spring, belowWaterTable: false, evidence }));
    refuses<DatedSample>(soilThroughTheYear, datedSampleShape, first ?? spring, { more: others });
  });
});

describe('water held at 33 kPa', () => {
  it('is the median of the cores at hand to 2 points for five classes; loam has two cores, 11 and 22 %', () => {
    const medianOf = (texture: TextureClass): number => {
      const water = CORES.filter((row) => row.text('state') === '33kPa' && classOf(row) === texture)
        .map((row) => row.number('water_dry_basis_pct') / 100)
        .sort((a, b) => a - b);
      return ((water[Math.floor((water.length - 1) / 2)] ?? NaN) + (water[Math.floor(water.length / 2)] ?? NaN)) / 2;
    };
    for (const texture of ['sandy loam', 'silt loam', 'clay loam', 'silty clay loam', 'silty clay'] as const) {
      expect(Math.abs(medianOf(texture) - HELD_MOISTURE[texture])).toBeLessThan(0.02);
    }
    expect(medianOf('loam')).toBeCloseTo(0.168, 3);
  });

  it('scatters by 13 % within the classes, and by 16 % with the two cores of loam', () => {
    const scatterOf = (textures: readonly TextureClass[]): number => {
      const logs = textures.flatMap((texture) => {
        const water = CORES.filter((row) => row.text('state') === '33kPa' && classOf(row) === texture).map((row) =>
          Math.log(row.number('water_dry_basis_pct')),
        );
        const mean = water.reduce((sum, each) => sum + each, 0) / water.length;
        return water.map((each) => each - mean);
      });
      return Math.sqrt(logs.reduce((sum, each) => sum + each ** 2, 0) / (logs.length - textures.length));
    };
    const five = ['sandy loam', 'silt loam', 'clay loam', 'silty clay loam', 'silty clay'] as const;
    expect(scatterOf(five)).toBeCloseTo(0.126, 3);
    expect(scatterOf([...five, 'loam'])).toBeCloseTo(0.155, 3);
  });
});
