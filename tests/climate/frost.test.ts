import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  berggrenCoefficient,
  computedFrostDepth,
  type ComputedFrostDepthInput,
  FROST_SURFACES,
  type FrostLayer,
  layeredStefanFrostDepth,
  nFactors,
  stefanFrostDepth,
} from '../../src/climate/index.js';
import { describeFinding } from '../../src/report/index.js';
import {
  celsius,
  days,
  joulesPerCubicMetre,
  joulesPerCubicMetreKelvin,
  kelvinDays,
  metres,
  ratio,
  squareMetreKelvinPerWatt,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { frozenDepth } from './freezing-column.js';

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const layerOf = (thickness: number, conductivity: number, heat: number, capacity: number): FrostLayer => ({
  thickness: metres(thickness),
  frozenConductivity: wattsPerMetreKelvin(conductivity),
  latentHeat: joulesPerCubicMetre(heat),
  heatCapacity: joulesPerCubicMetreKelvin(capacity),
});
const anyLayer = fc.tuple(number(0.05, 1.5), number(0.2, 3), number(2e7, 2e8), number(1e6, 3e6)).map((parts) => layerOf(...parts));
const anyLayers = fc.array(anyLayer, { minLength: 1, maxLength: 5 });
const anyWinter = fc.record({
  freezingIndex: number(1, 2400).map((index) => kelvinDays(index)),
  duration: number(30, 250).map((length) => days(length)),
  mean: number(0.5, 15).map((mean) => celsius(mean)),
});
const loam = layerOf(3, 1.5, 1.0688e8, 2.2e6);
const chicago: ComputedFrostDepthInput = {
  layers: [loam],
  surface: 'turf',
  freezingIndex: kelvinDays(386.1),
  duration: days(100),
  mean: celsius(11),
};

describe('berggrenCoefficient', () => {
  it('falls with a warmer ground and with more sensible heat, from one', () => {
    fc.assert(
      fc.property(number(0, 50), number(0, 50), number(0, 20), number(0, 20), (a, b, m, n) => {
        const of = (thermal: number, fusion: number): number => berggrenCoefficient({ thermalRatio: ratio(thermal), fusionParameter: ratio(fusion) });
        expect(of(Math.max(a, b), m)).toBeLessThanOrEqual(of(Math.min(a, b), m) + 1e-12);
        expect(of(a, Math.max(m, n))).toBeLessThanOrEqual(of(a, Math.min(m, n)) + 1e-12);
        expect(of(a, 0)).toBe(1);
        expect(of(a, m)).toBeGreaterThan(0);
        expect(of(a, m)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('frost depth against a run of the enthalpy of thin cells', () => {
  it.each([
    [5, 3, 2e6],
    [2, 10, 2.2e6],
    [12, 0.5, 1.8e6],
  ])('has the depth in uniform ground for %s K of frost on %s °C', (frost, start, capacity) => {
    const time = 120 * 86_400;
    const ran = frozenDepth([{ thickness: 8, conductivity: 1.6, capacity, latentHeat: 9e7 }], { frost, start, time, resistance: 0 });
    const winter = { freezingIndex: kelvinDays(frost * 120), duration: days(120), mean: celsius(start) };
    const { depth } = computedFrostDepth({ layers: [layerOf(8, 1.6, 9e7, capacity)], surface: 'snow', ...winter });
    // A cell of 0.02 m freezes as a whole: 1 % of the depth.
    expect(Math.abs(depth / ran - 1)).toBeLessThan(0.01);
  });
  it('stays within 3 % of it through two layers', () => {
    const layers = [
      { thickness: 0.4, conductivity: 0.8, capacity: 1.6e6, latentHeat: 5e7 },
      { thickness: 8, conductivity: 2, capacity: 2.4e6, latentHeat: 1.2e8 },
    ];
    const ran = frozenDepth(layers, { frost: 8, start: 4, time: 120 * 86_400, resistance: 0 });
    const given = layers.map(({ thickness, conductivity, latentHeat, capacity }) => layerOf(thickness, conductivity, latentHeat, capacity));
    const winter = { freezingIndex: kelvinDays(8 * 120), duration: days(120), mean: celsius(4) };
    const { depth } = computedFrostDepth({ layers: given, surface: 'snow', ...winter });
    expect(Math.abs(depth / ran - 1)).toBeLessThan(0.03);
  });
  it.each([
    [0.3, 4, 8],
    [1, 4, 8],
    [2, 4, 8],
    [4, 4, 8],
    [1, 8, 12],
    [2, 2, 15],
  ])('stays within 0.06 m of it under %s m2.K/W on ground of %s °C, %s K of frost above', (resistance, start, frost) => {
    const ground = { thickness: 8, conductivity: 1.6, capacity: 2.2e6, latentHeat: 9e7 };
    const ran = frozenDepth([ground], { frost, start, time: 120 * 86_400, resistance });
    const winter = { freezingIndex: kelvinDays(frost * 120), duration: days(120), mean: celsius(start) };
    const layers = [layerOf(8, 1.6, 9e7, 2.2e6)];
    const { depth } = computedFrostDepth({ layers, surface: 'snow', surfaceResistance: squareMetreKelvinPerWatt(resistance), ...winter });
    expect(Math.abs(depth - ran)).toBeLessThan(0.06);
  });
});

describe('Stefan through layers', () => {
  it('gives the closed form in uniform ground, however it is cut', () => {
    fc.assert(
      fc.property(anyLayer, number(0.05, 0.95), number(1, 3000), number(0, 5), (layer, cut, index, top) => {
        const freezingIndex = kelvinDays(index);
        const surfaceResistance = squareMetreKelvinPerWatt(top);
        const parts = [cut, 1 - cut].map((share) => ({ ...layer, thickness: metres(share * layer.thickness) }));
        expect(layeredStefanFrostDepth({ layers: [layer], freezingIndex })).toBeCloseTo(stefanFrostDepth({ ...layer, freezingIndex }), 9);
        expect(layeredStefanFrostDepth({ layers: parts, freezingIndex, surfaceResistance })).toBeCloseTo(
          layeredStefanFrostDepth({ layers: [layer], freezingIndex, surfaceResistance }),
          9,
        );
      }),
    );
  });
  it('agrees with a sum over a millimetre at a time', () => {
    const layers = [layerOf(0.1, 0.04, 0, 5e4), layerOf(0.3, 0.8, 5e7, 2e6), layerOf(1, 2, 1.2e8, 2e6)];
    let [depth, index, resistance] = [0, 0, 0.2];
    while (index < 1500) {
      const layer = depth < 0.1 ? layers[0] : depth < 0.4 ? layers[1] : layers[2];
      resistance += 5e-5 / (layer?.frozenConductivity ?? 1);
      index += ((layer?.latentHeat ?? 0) * 1e-4 * resistance) / 86_400;
      resistance += 5e-5 / (layer?.frozenConductivity ?? 1);
      depth += 1e-4;
    }
    const found = layeredStefanFrostDepth({ layers, freezingIndex: kelvinDays(1500), surfaceResistance: squareMetreKelvinPerWatt(0.2) });
    expect(Math.abs(found - depth)).toBeLessThan(2e-3);
  });
  it('grows as the root of conductivity and index', () => {
    fc.assert(
      fc.property(anyLayer, number(1, 4000), (layer, index) => {
        const of = (k: number, f: number): number =>
          stefanFrostDepth({ ...layer, frozenConductivity: wattsPerMetreKelvin(k), freezingIndex: kelvinDays(f) });
        expect(of(2, index)).toBeCloseTo(Math.SQRT2 * of(1, index), 9);
        expect(of(1, 4 * index)).toBeCloseTo(2 * of(1, index), 9);
      }),
    );
  });
});

describe('computedFrostDepth', () => {
  it('is at most that of Stefan and that without cover, and no deeper under more of it', () => {
    fc.assert(
      fc.property(anyLayers, anyWinter, fc.constantFrom(...FROST_SURFACES), number(0, 4), (layers, winter, surface, top) => {
        const at = (resistance: number): ReturnType<typeof computedFrostDepth> =>
          computedFrostDepth({ layers, surface, surfaceResistance: squareMetreKelvinPerWatt(resistance), ...winter });
        const { depth, stefanDepth, unshelteredDepth, correction } = at(top);
        expect(depth).toBeGreaterThanOrEqual(0);
        expect(depth).toBeLessThanOrEqual(stefanDepth + 1e-9);
        expect(depth).toBeLessThanOrEqual(unshelteredDepth);
        // What insulates may leave no frost to speak of, and then there is no coefficient.
        expect(correction?.berggrenCoefficient ?? 0).toBeLessThanOrEqual(1);
        expect(at(top + 1).depth).toBeLessThanOrEqual(depth + 1e-6);
      }),
    );
  });
  it('is the coefficient times Stefan in uniform ground', () => {
    fc.assert(
      fc.property(anyLayer, anyWinter, (layer, winter) => {
        const { depth, stefanDepth, correction } = computedFrostDepth({ layers: [layer], surface: 'turf', ...winter });
        expect(depth).toBeCloseTo(stefanDepth * (correction?.berggrenCoefficient ?? NaN), 7);
      }),
    );
  });
  it('is nothing without frost', () => {
    const { findings, ...none } = computedFrostDepth({ ...chicago, freezingIndex: kelvinDays(0) });
    expect(none).toEqual({ depth: 0, stefanDepth: 0, unshelteredDepth: 0, nFactor: 0.5, surfaceIndex: 0 });
    expect(findings.map(({ code }) => code)).toEqual(['frost-line-not-given']);
  });
  it('is nothing where the frost is none to speak of, without ratios of it', () => {
    for (const index of [1e-12, 1e-6]) {
      const { depth, correction } = computedFrostDepth({ ...chicago, freezingIndex: kelvinDays(index) });
      expect([depth, correction]).toEqual([0, undefined]);
    }
    expect(computedFrostDepth({ ...chicago, freezingIndex: kelvinDays(1) }).correction).toBeDefined();
  });
  it('refuses a season colder on average than any', () => {
    const season = (index: number) => () => computedFrostDepth({ ...chicago, freezingIndex: kelvinDays(index), duration: days(30) });
    expect(season(2399)).not.toThrow();
    expect(season(2401)).toThrow('80 K below freezing on average over the duration');
  });
  it('carries the frost line of the code as it came, whatever it computes', () => {
    fc.assert(
      fc.property(anyWinter, number(0, 3), (winter, line) => {
        expect(computedFrostDepth({ ...chicago, ...winter, frostLine: metres(line) }).frostLine).toBe(line);
      }),
    );
  });
  it.each<[string, Partial<ComputedFrostDepthInput>, readonly string[]]>([
    ['no frost line', {}, ['frost-line-not-given']],
    ['a frost line below the frost', { frostLine: metres(1.07) }, []],
    ['a frost line above the frost', { frostLine: metres(0.3) }, ['frost-deeper-than-code']],
    ['pipes in the frost', { frostLine: metres(0.3), pipeDepth: metres(0.4) }, ['frost-deeper-than-code', 'frost-reaches-pipes']],
    ['pipes above the line only', { frostLine: metres(1.5), pipeDepth: metres(1.2) }, ['pipes-above-frost-line']],
    ['lasting frost', { frostLine: metres(9), mean: celsius(-2) }, ['ground-frozen-all-year']],
  ])('tells %s', (_, given, codes) => {
    const { findings } = computedFrostDepth({ ...chicago, ...given });
    expect(findings.map(({ code }) => code)).toEqual(codes);
    for (const finding of findings) {
      expect(describeFinding(finding, 'metric')).toMatch(/\d/u);
      expect(describeFinding(finding, 'us')).not.toMatch(/NaN|undefined|°C| K\b/u);
    }
  });
});

describe('nFactors', () => {
  it('never freeze a surface harder than the air', () => {
    for (const surface of FROST_SURFACES) expect(nFactors(surface).freezingFactor).toBeLessThanOrEqual(1);
  });
});
