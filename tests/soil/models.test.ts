import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  johansenConductivity,
  kerstenConductivity,
  latentHeat,
  soilDiffusivity,
  typicalSoil,
  volumetricHeatCapacity,
  type ConductingSoil,
  type FreezingSoil,
  type JohansenSoil,
  type KerstenSoilState,
  type SoilConstituents,
} from '../../src/soil/index.js';
import { moistureShape } from '../../src/states/index.js';
import {
  dryBasisFraction,
  dryBasisPercent,
  fraction,
  joulesPerCubicMetreKelvin,
  kilogramsPerCubicMetre,
  ratio,
  volumeFraction,
  volumetricFraction,
  wattsPerMetreKelvin,
  wetBasisPercent,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { arbitrarySoil } from './arbitrary.js';
import { kerstenOf, measuredCores, scored } from './cores.js';

const soilOf = (
  { texture, dryDensity }: { readonly texture: Parameters<typeof typicalSoil>[0]; readonly dryDensity: number },
  saturation: number,
): JohansenSoil => ({
  dryDensity: kilogramsPerCubicMetre(dryDensity),
  saturation: ratio(saturation),
  quartzFraction: typicalSoil(texture).quartzFraction,
  grain: typicalSoil(texture).grain,
});

describe('johansenConductivity', () => {
  it('lies between dry and saturated, and never falls with water or quartz', () => {
    fc.assert(
      fc.property(arbitrarySoil, fc.double({ min: 0, max: 1, noNaN: true }), fc.boolean(), (soil, less, frozen) => {
        const wet = johansenConductivity({ ...soilOf(soil, soil.saturation), frozen });
        const drier = johansenConductivity({ ...soilOf(soil, less * soil.saturation), frozen });
        expect(wet.conductivity).toBeGreaterThanOrEqual(wet.dry);
        expect(wet.conductivity).toBeLessThanOrEqual(wet.saturated * (1 + 1e-12));
        expect(wet.conductivity).toBeGreaterThanOrEqual(drier.conductivity);
        expect(Number.isFinite(wet.conductivity)).toBe(true);
      }),
    );
  });

  it('reaches the dry conductivity without water and the saturated one with full pores', () => {
    for (const frozen of [false, true]) {
      const dry = johansenConductivity({ ...soilOf({ texture: 'loam', dryDensity: 1500 }, 0), frozen });
      expect(dry.conductivity).toBe(dry.dry);
      const full = johansenConductivity({ ...soilOf({ texture: 'loam', dryDensity: 1500 }, 1), frozen });
      expect(full.conductivity).toBeCloseTo(full.saturated, 12);
    }
  });

  it('keeps the author’s step of the solids at a fifth of quartz', () => {
    const at = (quartz: number): number =>
      johansenConductivity({ ...soilOf({ texture: 'loam', dryDensity: 1500 }, 1), quartzFraction: fraction(quartz) }).solid;
    expect(at(0.2)).toBeCloseTo(3.622, 3);
    expect(at(0.2 + 1e-9)).toBeCloseTo(2.619, 3);
  });

  it('conducts less with organic matter among the solids', () => {
    const soil = soilOf({ texture: 'loam', dryDensity: 1500 }, 0.8);
    expect(johansenConductivity({ ...soil, organicShare: volumeFraction(1) }).solid).toBe(0.25);
    expect(johansenConductivity({ ...soil, organicShare: volumeFraction(0.1) }).conductivity).toBeLessThan(johansenConductivity(soil).conductivity);
  });

  it('refuses bad input', () => {
    const shape: Shape<JohansenSoil> = {
      dryDensity: 'density',
      saturation: 'ratio',
      quartzFraction: 'fraction',
      grain: ['coarse', 'fine'],
      frozen: { optional: 'flag' },
      unfrozenWater: { optional: 'volumetric water' },
      particleDensity: { optional: 'density' },
      organicShare: { optional: 'volume fraction' },
    };
    const whole = {
      ...soilOf({ texture: 'clay', dryDensity: 1400 }, 0.8),
      frozen: true,
      unfrozenWater: volumetricFraction(0.05),
      particleDensity: kilogramsPerCubicMetre(2700),
      organicShare: volumeFraction(0.05),
    };
    refuses<JohansenSoil>(johansenConductivity, shape, whole);
    expect(() => johansenConductivity({ ...whole, dryDensity: kilogramsPerCubicMetre(2750) })).toThrow('no pores are left');
    expect(() => johansenConductivity({ ...whole, unfrozenWater: volumetricFraction(0.6) })).toThrow('no more than the pores hold');
  });
});

describe('kerstenConductivity', () => {
  const shape: Shape<KerstenSoilState> = {
    dryDensity: 'density',
    moisture: moistureShape,
    soil: ['sandy', 'silt or clay'],
    frozen: { optional: 'flag' },
  };
  const at = (soil: 'sandy' | 'silt or clay', dryDensity: number, percent: number, frozen = false): number =>
    kerstenConductivity({
      dryDensity: kilogramsPerCubicMetre(dryDensity),
      moisture: { basis: 'dry', value: dryBasisPercent(percent) },
      soil,
      frozen,
    }).conductivity;

  it('rises with moisture and density, and is above nothing', () => {
    const amount = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom('sandy' as const, 'silt or clay' as const),
        fc.boolean(),
        amount(800, 2200),
        amount(2, 40),
        amount(1.001, 1.1),
        (soil, frozen, density, percent, more) => {
          const here = at(soil, density, percent, frozen);
          expect(here).toBeGreaterThan(0);
          expect(at(soil, density, percent * more, frozen)).toBeGreaterThan(here);
          expect(at(soil, density * more, percent, frozen)).toBeGreaterThan(here);
        },
      ),
    );
  });

  it('gains by freezing where wet and loses where dry', () => {
    expect(at('silt or clay', 1500, 25, true) / at('silt or clay', 1500, 25)).toBeCloseTo(1.43, 2);
    expect(at('sandy', 1600, 5, true)).toBeCloseTo(0.88, 3);
    expect(at('sandy', 1600, 5, true)).toBeLessThan(at('sandy', 1600, 5));
  });

  it('says where it was made for, and refuses where it turns negative', () => {
    const clay = { dryDensity: kilogramsPerCubicMetre(1500), soil: 'silt or clay' } as const;
    expect(kerstenConductivity({ ...clay, moisture: { basis: 'dry', value: dryBasisPercent(5) } }).inRange).toBe(false);
    expect(kerstenConductivity({ ...clay, moisture: { basis: 'dry', value: dryBasisPercent(7) } }).inRange).toBe(true);
    expect(() => kerstenConductivity({ ...clay, moisture: { basis: 'dry', value: dryBasisPercent(1.6) } })).toThrow('fails in soil so dry');
  });

  it('refuses bad input', () => {
    const dryDensity = kilogramsPerCubicMetre(1600);
    refuses<KerstenSoilState>(
      kerstenConductivity,
      shape,
      { dryDensity, moisture: { basis: 'dry', value: dryBasisPercent(15) }, soil: 'sandy', frozen: false },
      { more: [{ dryDensity, moisture: { basis: 'wet', value: wetBasisPercent(15) }, soil: 'silt or clay' }] },
    );
  });

  it('meets nearly every moist core within the quarter its author claims', () => {
    const moist = measuredCores.filter((row) => scored(row) && row.number('saturation') >= 0.3);
    const within = moist.filter((row) => Math.abs(kerstenOf(row) / row.number('k_W_mK') - 1) <= 0.25);
    expect([moist.length, within.length]).toEqual([98, 93]);
  });
});

describe('volumetricHeatCapacity', () => {
  const shape: Shape<SoilConstituents> = {
    mineral: 'volume fraction',
    organic: { optional: 'volume fraction' },
    water: 'volumetric water',
    ice: { optional: 'volumetric water' },
  };

  it('is of each core’s phases what its mass and water make by specific heats', () => {
    // 1.92 MJ/(m³·K) of mineral at 2650 kg/m³ is 724.5 J/(kg·K), beside Kersten's 0.17 Btu/(lb·°F) = 712.
    const capacity = volumetricHeatCapacity({ mineral: volumeFraction(1600 / 2650), water: volumetricFraction(0.24) });
    expect(capacity).toBeCloseTo(1600 * 724.528 + 1600 * 0.15 * 4180, -3);
  });

  it('refuses bad input, and more than fills the volume', () => {
    refuses<SoilConstituents>(volumetricHeatCapacity, shape, {
      mineral: volumeFraction(0.5),
      organic: volumeFraction(0.02),
      water: volumetricFraction(0.2),
      ice: volumetricFraction(0.05),
    });
    expect(() => volumetricHeatCapacity({ mineral: volumeFraction(0.6), water: volumetricFraction(0.5) })).toThrow('overfill');
  });
});

describe('soilDiffusivity and latentHeat', () => {
  it('refuse bad input', () => {
    const conducting: Shape<ConductingSoil> = { conductivity: 'conductivity', heatCapacity: 'heat capacity' };
    refuses(soilDiffusivity, conducting, { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6) });
    const freezing: Shape<FreezingSoil> = {
      dryDensity: 'density',
      moisture: moistureShape,
      unfrozenMoisture: { optional: 'moisture on dry basis' },
    };
    const dryDensity = kilogramsPerCubicMetre(1500);
    refuses<FreezingSoil>(
      latentHeat,
      freezing,
      { dryDensity, moisture: { basis: 'dry', value: dryBasisFraction(0.2) }, unfrozenMoisture: dryBasisFraction(0.03) },
      { more: [{ dryDensity, moisture: { basis: 'wet', value: wetBasisPercent(15) } }] },
    );
  });

  it('frees nothing where all the water stays liquid', () => {
    const water = dryBasisFraction(0.2);
    expect(latentHeat({ dryDensity: kilogramsPerCubicMetre(1500), moisture: { basis: 'dry', value: water }, unfrozenMoisture: water })).toBe(0);
  });
});
