import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  andersonTiceUnfrozenWater,
  applicableModels,
  dryBasis,
  frozenSoil,
  volumetricHeatCapacity,
  type CoolingSoil,
  type FreezingGround,
} from '../../src/soil/index.js';
import { moistureShape } from '../../src/states/index.js';
import {
  celsius,
  dryBasisFraction,
  dryBasisPercent,
  kilogramsPerCubicMetre,
  ratio,
  volumeFraction,
  volumetricFraction,
  wetBasisPercent,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const cooling = (temperature: number, moisture: number, surface: number): CoolingSoil => ({
  temperature: celsius(temperature),
  moisture: { basis: 'dry', value: dryBasisFraction(moisture) },
  specificSurface: ratio(surface),
});
const coolingShape: Shape<CoolingSoil> = { temperature: 'temperature', moisture: moistureShape, specificSurface: 'ratio' };

describe('andersonTiceUnfrozenWater', () => {
  it('shares all of the water between liquid and ice, and never thaws by cooling', () => {
    fc.assert(
      fc.property(between(-60, 20), between(0, 20), between(0, 1), between(0.02, 800), (temperature, colder, moisture, surface) => {
        const here = andersonTiceUnfrozenWater(cooling(temperature, moisture, surface));
        expect(here.unfrozenMoisture + here.frozenMoisture).toBeCloseTo(moisture, 12);
        expect(Math.min(here.unfrozenMoisture, here.frozenMoisture)).toBeGreaterThanOrEqual(0);
        const colderSoil = andersonTiceUnfrozenWater(cooling(Math.max(-60, temperature - colder), moisture, surface));
        expect(colderSoil.unfrozenMoisture).toBeLessThanOrEqual(here.unfrozenMoisture);
      }),
    );
  });

  it('begins to freeze where it says', () => {
    fc.assert(
      fc.property(between(0.02, 1), between(1, 300), (moisture, surface) => {
        const { freezingStart } = andersonTiceUnfrozenWater(cooling(5, moisture, surface));
        fc.pre(freezingStart !== undefined && freezingStart > -50 && freezingStart < -1e-9);
        const frozenAt = (factor: number): number =>
          andersonTiceUnfrozenWater(cooling((freezingStart ?? 0) * factor, moisture, surface)).frozenMoisture;
        expect(frozenAt(0.999)).toBe(0);
        expect(frozenAt(1.001)).toBeGreaterThan(0);
      }),
    );
  });

  it('keeps nothing to speak of in sand and much in clay', () => {
    const kept = (surface: number): number => andersonTiceUnfrozenWater(cooling(-2, 0.3, surface)).unfrozenMoisture;
    expect(kept(1)).toBeLessThan(0.006);
    expect(kept(200)).toBeGreaterThan(0.15);
  });

  it('says of no start where so little water never freezes', () => {
    expect(andersonTiceUnfrozenWater(cooling(-10, 0, 20))).toEqual({ unfrozenMoisture: 0, frozenMoisture: 0 });
    expect(andersonTiceUnfrozenWater(cooling(-10, 0.004, 20)).freezingStart).toBeUndefined();
  });

  it('refuses bad input', () => {
    refuses<CoolingSoil>(andersonTiceUnfrozenWater, coolingShape, cooling(-2, 0.2, 80), {
      more: [{ temperature: celsius(-2), moisture: { basis: 'wet', value: wetBasisPercent(15) }, specificSurface: ratio(80) }],
    });
  });
});

describe('frozenSoil', () => {
  const silt = (temperature: number): FreezingGround => ({ ...cooling(temperature, 0.2, 20), dryDensity: kilogramsPerCubicMetre(1500) });

  it('is the unfrozen soil where nothing has frozen, in every model too', () => {
    const { frozen, unfrozenWater, latentHeat, heatCapacity, freezingStart = 0 } = frozenSoil(silt(-0.001));
    expect(freezingStart).toBeLessThan(-0.001);
    expect([frozen, latentHeat]).toEqual([false, 0]);
    const mineral = volumeFraction(1500 / 2650);
    expect(heatCapacity).toBeCloseTo(volumetricHeatCapacity({ mineral, water: volumetricFraction(0.3) }), 3);
    const soil = { dryDensity: kilogramsPerCubicMetre(1500), saturation: ratio(0.3 / (1 - 1500 / 2650)), texture: 'silt loam' } as const;
    expect(applicableModels({ ...soil, frozen, unfrozenWater }).applicable).toEqual(applicableModels(soil).applicable);
  });

  it('sets free the heat of the ice it holds and stores less', () => {
    const cold = frozenSoil(silt(-5));
    expect(cold.frozen).toBe(true);
    expect(cold.latentHeat).toBeCloseTo(1500 * cold.frozenMoisture * 334e3, 3);
    expect(cold.heatCapacity).toBeLessThan(frozenSoil(silt(5)).heatCapacity);
    expect(cold.unfrozenWater).toBeCloseTo(1.5 * cold.unfrozenMoisture, 12);
  });

  it('passes on what is doubtful about its water', () => {
    const soaked = frozenSoil({ ...silt(-1), moisture: { basis: 'dry', value: dryBasisFraction(0.295) } });
    expect(soaked.findings.map(({ code }) => code)).toEqual(['water-beyond-pores']);
  });

  it('refuses bad input', () => {
    const shape: Shape<FreezingGround> = {
      ...coolingShape,
      dryDensity: 'density',
      particleDensity: { optional: 'density' },
      organicShare: { optional: 'volume fraction' },
    };
    const whole = { ...silt(-2), particleDensity: kilogramsPerCubicMetre(2700), organicShare: volumeFraction(0.1) };
    refuses<FreezingGround>(frozenSoil, shape, whole, { more: [{ ...whole, moisture: { basis: 'wet', value: wetBasisPercent(15) } }] });
    expect(dryBasis(whole.moisture)).toBe(0.2);
    expect(() => frozenSoil({ ...whole, moisture: { basis: 'dry', value: dryBasisPercent(60) } })).toThrow('dryDensity');
  });
});
