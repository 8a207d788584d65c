import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  effectiveConductivity,
  layeredGroundShape,
  type LayeredGround,
  type PipeBedding,
  type SoilLayer,
  type TrenchFill,
} from '../../src/soil/index.js';
import {
  btuPerHourFootFahrenheit,
  diameterInches,
  diameterMillimetres,
  feet,
  megajoulesPerCubicMetreKelvin,
  metres,
  squareMetresPerSecond,
} from '../../src/units/index.js';
import { elements, inSeries, inTime, log, meshed, thermal } from '../published/soil-layers.checks.js';
import { groundLayers } from '../../src/soil/ground-at-pipe.js';
import { trenchRise } from '../../src/soil/trench-rise.js';
import { refuses } from '../support/bad-input.js';
import { everyNumberFinite } from '../support/finite.js';
import { arbitraryConductivity, arbitraryLog, arbitraryPipes, conductivities, FOUR, interfaces, pipes } from './logs.js';

const filled = (conductivity: number, width = 0.6, depth = 1.9): TrenchFill => ({
  width: metres(width),
  depth: metres(depth),
  thermal: thermal(conductivity),
});
const seen = (ground: LayeredGround): number => effectiveConductivity(ground).thermal.conductivity;
const TWO = pipes([-0.2, 1.5], [0.2, 1.5]);
/** Nothing about the middle of the trench is even here. */
const LOPSIDED = pipes([-0.25, 1.5], [0.1, 1.7], [0.2, 1.4]);
const NATIVE = log([1.8, 3]);
/** Faces are followed in panels, to a tenth of a per cent. */
const PANELS = 1e-3;

describe('trench fill', () => {
  it('of the native soil changes nothing', () => {
    for (const at of [TWO, FOUR]) expect(seen({ layers: NATIVE, pipes: at, fill: filled(1.8) })).toBeCloseTo(1.8, 9);
  });

  it('finds layers as the sum over the layers does, which it shares nothing with', () => {
    fc.assert(
      fc.property(arbitraryLog, fc.oneof(arbitraryPipes, fc.constant(LOPSIDED)), (layers, at) => {
        fc.pre(!interfaces(layers).some((depth) => at.some((pipe) => Math.abs(pipe.depth - depth) < 0.05)));
        const native = groundLayers(layers);
        const depth = Math.max(...at.map((pipe) => pipe.depth)) + 0.1;
        const fill = native.flatMap((layer) => (layer.top < depth ? [{ ...layer, bottom: Math.min(layer.bottom, depth) }] : []));
        const { steadyRise } = effectiveConductivity({ layers, pipes: at });
        expect(Math.abs(trenchRise({ native, fill, halfWidth: 0.4 }, at, 0.016) / steadyRise - 1)).toBeLessThan(PANELS);
      }),
      { numRuns: 20 },
    );
  });

  it('lies between the means by the shares of heat dissipated in uniform ground', () => {
    // Of any field, that of uniform ground too, the true one dissipates least: hence both bounds. A share is how far its zone alone is felt.
    const felt = (native: readonly number[], fill: number, at: LayeredGround['pipes']): number =>
      seen({ layers: log(...native.map((k, index): readonly [number, number] => [k, 0.7 * (index + 1)])), pipes: at, fill: filled(fill) });
    const three = fc.tuple(arbitraryConductivity, arbitraryConductivity, arbitraryConductivity);
    fc.assert(
      fc.property(three, arbitraryConductivity, fc.constantFrom(TWO, FOUR, pipes([0.1, 1.2])), (native, fill, at) => {
        const little = 1e-3;
        const share = (zone: number): number => {
          const one = (here: number): number => (here === zone ? 1 + little : 1);
          const back = (here: number): number => (here === zone ? 1 - little : 1);
          return (felt([one(0), one(1), one(2)], one(3), at) - felt([back(0), back(1), back(2)], back(3), at)) / (2 * little);
        };
        const zones = [...native, fill].map((conductivity, zone) => ({ conductivity, share: share(zone) }));
        expect(zones.reduce((sum, zone) => sum + zone.share, 0)).toBeCloseTo(1, 5);
        const effective = felt(native, fill, at);
        expect(effective).toBeGreaterThan((1 - PANELS) / zones.reduce((sum, zone) => sum + zone.share / zone.conductivity, 0));
        expect(effective).toBeLessThan((1 + PANELS) * zones.reduce((sum, zone) => sum + zone.share * zone.conductivity, 0));
      }),
      { numRuns: 6 },
    );
  });

  it('that is worse never helps, and more of it less still', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 1.7, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), arbitraryPipes, (worse, more, at) => {
        const with_ = (width: number, depth: number): number => seen({ layers: NATIVE, pipes: at, fill: filled(worse, width, depth) });
        const some = with_(0.6, 1.9);
        expect(some).toBeLessThan(1.8);
        expect(with_(0.6 + more, 1.9)).toBeLessThan(some * (1 + PANELS));
        expect(with_(0.6, 1.9 + more)).toBeLessThan(some * (1 + PANELS));
        expect(some).toBeGreaterThan(worse);
      }),
      { numRuns: 8 },
    );
  });

  it('grows with each conductivity, scales with all of them and minds no side', () => {
    fc.assert(
      fc.property(arbitraryConductivity, arbitraryConductivity, (native, fill) => {
        const of = (k: number, f: number, at = TWO): number => seen({ layers: log([k, 3]), pipes: at, fill: filled(f) });
        expect(of(1.1 * native, fill)).toBeGreaterThan(of(native, fill));
        expect(of(native, 1.1 * fill)).toBeGreaterThan(of(native, fill));
        expect(of(2 * native, 2 * fill) / of(native, fill)).toBeCloseTo(2, 7);
        expect(of(native, fill, pipes([0.2, 1.5])) / of(native, fill, pipes([-0.2, 1.5]))).toBeCloseTo(1, 9);
      }),
      { numRuns: 10 },
    );
  });

  it('is what short heat feels and says what it costs', () => {
    const {
      aroundPipes,
      thermal: seenThermal,
      findings,
      sources,
    } = effectiveConductivity({ layers: NATIVE, pipes: TWO, fill: filled(1, 0.6, 1.65) });
    expect(aroundPipes).toBe(1);
    expect(seenThermal.heatCapacity).toBe(2e6);
    expect(sources).toContain('facesOfFill');
    expect(findings.map(({ code, level }) => [code, level])).toEqual([['trench-fill-around-pipes', 'warning']]);
    expect(findings[0]?.values).toMatchObject({ fillConductivity: 1, unfilled: expect.closeTo(1.8, 9), conductivity: seenThermal.conductivity });
    const better = effectiveConductivity({ layers: NATIVE, pipes: TWO, fill: filled(1.75) });
    expect(better.findings.map(({ level }) => level)).toEqual(['note']);
  });

  it('and bedding add a resistance to the native response that holds in time, after a day too much of it', () => {
    const off = (time: string): readonly number[] =>
      elements.rows
        .filter((row) => inTime(row) && row.text('t') === time)
        .map((row) => Math.round(1000 * (inSeries(row) / row.number('rise_mean_mK_W') - 1)) / 10);
    expect(off('1d')).toEqual([1.2, -0.8, 1.8, 7.6]);
    expect(off('30d').map(Math.abs)).toEqual([0, 0, 0.1, 1.3]);
    const { native, addedResistance, steadyRise } = effectiveConductivity({ layers: NATIVE, pipes: TWO, fill: filled(1) });
    expect(native.conductivity).toBeCloseTo(1.8, 9);
    expect(steadyRise - addedResistance).toBeCloseTo(effectiveConductivity({ layers: NATIVE, pipes: TWO }).steadyRise, 9);
    expect(effectiveConductivity({ layers: log([0.9, 1.2], [1.9, 3]), pipes: TWO }).addedResistance).toBe(0);
    expect(effectiveConductivity({ layers: NATIVE, pipes: TWO, fill: filled(2.5) }).addedResistance).toBeLessThan(0);
  });

  it('and bedding have a conductivity of the long run: how far it is from what elements find after one and four months', () => {
    const off = (time: string): readonly number[] =>
      elements.rows
        .filter((row) => row.text('t') === time && /^D(?:0[7-9]|10)$/u.test(row.text('case')))
        .map((row) => Math.round(1000 * (meshed(row).thermal.conductivity / row.number('k_eff_W_mK') - 1)) / 10);
    expect(off('30d')).toEqual([14, -3.5, 14.4, 6.2]);
    expect(off('120d')).toEqual([4.4, -1.1, 4.6, 1.7]);
  });

  it('is the same ground in US units', () => {
    const metric = seen({ layers: NATIVE, pipes: TWO, outsideDiameter: diameterMillimetres(33.401), fill: filled(1) });
    const us = (watts: number): SoilLayer['thermal'] => {
      const conductivity = btuPerHourFootFahrenheit(btuPerHourFootFahrenheit.of(thermal(watts).conductivity));
      const heatCapacity = megajoulesPerCubicMetreKelvin(2);
      return { conductivity, heatCapacity, diffusivity: squareMetresPerSecond(conductivity / heatCapacity) };
    };
    const inFeet = (length: number): TrenchFill['width'] => feet(length / 0.3048);
    const foot = seen({
      layers: [{ top: feet(0), bottom: inFeet(3), thermal: us(1.8) }],
      pipes: TWO.map(({ x, depth }) => ({ x: inFeet(x), depth: inFeet(depth) })),
      outsideDiameter: diameterInches(1.315),
      fill: { width: inFeet(0.6), depth: inFeet(1.9), thermal: us(1) },
    });
    expect(foot / metric).toBeCloseTo(1, 9);
  });
});

describe('bedding', () => {
  const sand = (conductivity: number, thickness = 0.15): PipeBedding => ({
    thickness: metres(thickness),
    thermal: thermal(conductivity),
  });

  it('of the native soil changes nothing, as a ring and from wall to wall', () => {
    expect(seen({ layers: NATIVE, pipes: TWO, bedding: sand(1.8) })).toBeCloseTo(1.8, 9);
    expect(seen({ layers: NATIVE, pipes: FOUR, bedding: sand(1.8), fill: filled(1.8) })).toBeCloseTo(1.8, 9);
    const one = seen({ layers: NATIVE, pipes: FOUR, bedding: sand(1), fill: filled(1) });
    expect(Math.abs(one / seen({ layers: NATIVE, pipes: FOUR, fill: filled(1) }) - 1)).toBeLessThan(PANELS);
  });

  it('dry costs as a ring much what it costs as a square of 0.93 of the radius, and wet it helps in poor ground', () => {
    const ring = seen({ layers: NATIVE, pipes: pipes([0, 1.5]), bedding: sand(0.5, 0.164) });
    const square = seen({ layers: NATIVE, pipes: pipes([0, 1.5]), bedding: sand(0.5, 0.1507), fill: filled(1.8, 0.3334, 1.6667) });
    expect(Math.abs(square / ring - 1)).toBeLessThan(0.005);
    expect(seen({ layers: log([0.9, 3]), pipes: TWO, bedding: sand(2) })).toBeGreaterThan(1);
  });

  it('lies in levels of its own, which meet where it is thick', () => {
    const at = pipes([0, 1.1], [0, 1.8]);
    const both = [0.1, 0.2, 0.33, 0.36].map((thickness) =>
      seen({ layers: NATIVE, pipes: at, bedding: sand(0.5, thickness), fill: filled(1.2, 0.6, 2.2) }),
    );
    expect([...both].sort((a, b) => b - a)).toEqual(both);
    expect(effectiveConductivity({ layers: NATIVE, pipes: at, bedding: sand(0.5), fill: filled(1.2, 0.6, 2.2) }).aroundPipes).toBe(0.5);
  });

  it('lies between its grounds with every fill and is always finite', () => {
    fc.assert(
      fc.property(arbitraryLog, arbitraryPipes, arbitraryConductivity, arbitraryConductivity, (layers, at, fill, bed) => {
        const result = effectiveConductivity({ layers, pipes: at, fill: filled(fill), bedding: sand(bed) });
        expect(everyNumberFinite(result)).toBe(true);
        const all = [...conductivities(layers), fill, bed];
        expect(result.thermal.conductivity).toBeGreaterThan(Math.min(...all) * (1 - PANELS));
        expect(result.thermal.conductivity).toBeLessThan(Math.max(...all) * (1 + PANELS));
      }),
      { numRuns: 15 },
    );
  });

  it('and fill are refused where they cannot be', () => {
    const ground = { layers: NATIVE, pipes: TWO };
    expect(() => seen({ ...ground, fill: filled(1, 0.41) })).toThrow('the trench does not hold its pipes');
    expect(() => seen({ ...ground, fill: filled(1, 0.6, 1.5) })).toThrow('fill.depth');
    expect(() => seen({ ...ground, bedding: sand(1, 0.19) })).toThrow('rings of bedding that do not meet');
    expect(() => seen({ layers: NATIVE, pipes: pipes([0, 0.3]), bedding: sand(1, 0.29) })).toThrow('the bedding reaches the surface');
    const example: LayeredGround = { layers: log([0.9, 1.2], [1.9, 3]), pipes: TWO, outsideDiameter: diameterMillimetres(32), fill: filled(1) };
    const [first, ...rest] = example.layers;
    const named = first === undefined ? [] : [{ ...first, ground: 'peat' as const }, ...rest];
    refuses<LayeredGround>(effectiveConductivity, layeredGroundShape, example, {
      more: [{ ...example, layers: named, bedding: sand(0.8), waterTable: metres(1.4) }],
    });
  });
});
