import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectiveConductivity, type LayeredGround, type SoilLayer } from '../../src/soil/index.js';
import type { SoilThermal } from '../../src/states/index.js';
import {
  diameterMillimetres,
  megajoulesPerCubicMetreKelvin,
  metres,
  squareMillimetresPerSecond,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { elements, meshed } from '../published/soil.checks.js';
import { everyNumberFinite } from '../support/finite.js';

const soil = (conductivity: number, heatCapacity = 2): SoilThermal => ({
  conductivity: wattsPerMetreKelvin(conductivity),
  heatCapacity: megajoulesPerCubicMetreKelvin(heatCapacity),
  diffusivity: squareMillimetresPerSecond(conductivity / heatCapacity),
});
/** Layers from depths and conductivities: 0 m, 0.9, 1.2 m, 1.9, 3 m. */
const log = (...[first = 0, ...rest]: readonly number[]): readonly SoilLayer[] => {
  const layers: SoilLayer[] = [];
  let top = first;
  for (let at = 0; at + 1 < rest.length; at += 2) {
    const [conductivity = NaN, bottom = NaN] = rest.slice(at, at + 2);
    layers.push({ top: metres(top), bottom: metres(bottom), thermal: soil(conductivity) });
    top = bottom;
  }
  return layers;
};
const pipes = (...positions: readonly (readonly [x: number, depth: number])[]): LayeredGround['pipes'] =>
  positions.map(([x, depth]) => ({ x: metres(x), depth: metres(depth) }));
const FOUR = pipes([-0.15, 1.5], [0.15, 1.5], [-0.15, 1.8], [0.15, 1.8]);
const seen = (layers: readonly SoilLayer[], at: LayeredGround['pipes'] = pipes([0, 1.5])): number =>
  effectiveConductivity({ layers, pipes: at, outsideDiameter: diameterMillimetres(33.4) }).thermal.conductivity;

const arbitraryConductivity = fc.double({ min: 0.2, max: 4, noNaN: true });
const arbitraryLog: fc.Arbitrary<readonly SoilLayer[]> = fc
  .tuple(
    fc.double({ min: 0.2, max: 1.45, noNaN: true }),
    fc.double({ min: 0.05, max: 1, noNaN: true }),
    fc.array(arbitraryConductivity, { minLength: 3, maxLength: 3 }),
  )
  .map(([first, second, [a = 1, b = 1, c = 1]]) => log(0, a, first, b, first + second, c, 4));

describe('effectiveConductivity', () => {
  it('gives uniform ground back, cut up or not', () => {
    expect(seen(log(0, 1.3, 3))).toBeCloseTo(1.3, 9);
    expect(seen(log(0, 1.3, 0.7, 1.3, 1.5, 1.3, 2), FOUR)).toBeCloseTo(1.3, 9);
  });

  it('lies between its layers, scales with them and is always finite', () => {
    fc.assert(
      fc.property(arbitraryLog, fc.double({ min: 0.5, max: 2, noNaN: true }), fc.boolean(), (layers, factor, four) => {
        const result = effectiveConductivity({ layers, pipes: four ? FOUR : pipes([0, 1.5]) });
        expect(everyNumberFinite(result)).toBe(true);
        const each = layers.map(({ thermal }) => thermal.conductivity);
        expect(result.thermal.conductivity).toBeGreaterThanOrEqual(Math.min(...each) * (1 - 1e-6));
        expect(result.thermal.conductivity).toBeLessThanOrEqual(Math.max(...each) * (1 + 1e-6));
        const scaled = layers.map((layer) => ({ ...layer, thermal: soil(factor * layer.thermal.conductivity) }));
        const again = effectiveConductivity({ layers: scaled, pipes: four ? FOUR : pipes([0, 1.5]) });
        expect(again.thermal.conductivity / (factor * result.thermal.conductivity)).toBeCloseTo(1, 9);
        expect(again.steadyRise * factor).toBeCloseTo(result.steadyRise, 9);
      }),
      { numRuns: 30 },
    );
  });

  it('rises with every layer, and does not notice a cut through one', () => {
    fc.assert(
      fc.property(arbitraryLog, fc.nat(2), (layers, which) => {
        const better = layers.map((layer, index) => (index === which ? { ...layer, thermal: soil(1.2 * layer.thermal.conductivity) } : layer));
        expect(seen(better)).toBeGreaterThan(seen(layers));
        const cut = layers.flatMap(({ top, bottom, thermal }) => [
          { top, bottom: metres((top + bottom) / 2), thermal },
          { top: metres((top + bottom) / 2), bottom, thermal },
        ]);
        const touched = cut.some(({ bottom }) => Math.abs(bottom - 1.5) < 0.0167);
        expect(touched || Math.abs(seen(cut) / seen(layers) - 1) < 1e-6).toBe(true);
      }),
      { numRuns: 30 },
    );
  });

  it('passes smoothly from one layer into the next', () => {
    const at = (depth: number): number => seen(log(0, 0.9, depth, 1.9, 4));
    const [above, on, below] = [at(1.5 + 0.017), at(1.5), at(1.5 - 0.017)];
    expect(above).toBeLessThan(on);
    expect(on).toBeLessThan(below);
    expect(on).toBeCloseTo(1.32, 1);
  });

  it('stands between extremes: a far layer counts little, one about the pipe nearly all', () => {
    expect(seen(log(0, 1.2, 1.5 + 5, 2.4, 10))).toBeCloseTo(1.2, 1);
    expect(seen(log(0, 0.9, 0.1, 1.9, 4))).toBeGreaterThan(1.8);
  });

  it('is the steady one: how far it is from what elements find after one and four months', () => {
    const off = (time: string): readonly number[] =>
      elements.rows
        .filter((row) => row.text('time') === time)
        .map((row) => Math.round(1000 * (meshed(row).thermal.conductivity / row.number('k_effective') - 1)) / 10);
    expect(off('30d')).toEqual([-6.9, -4.7, 0.3, 4.9, -8.9, -6.7]);
    expect(off('120d')).toEqual([-3.3, -1.9, -0.9, 1.6, -4.2, -3.8]);
  });

  it('finds a log that starts deep or ends too high, and continues it', () => {
    const codes = (layers: readonly SoilLayer[]): readonly (readonly string[])[] =>
      effectiveConductivity({ layers, pipes: pipes([0, 1.5]) }).findings.map(({ code, level }) => [code, level]);
    expect(codes(log(0.2, 1.3, 2))).toEqual([]);
    expect(codes(log(1.4, 1.3, 2.4))).toEqual([['soil-log-starts-deep', 'warning']]);
    expect(codes(log(0, 1.3, 1.7))).toEqual([['soil-log-too-shallow', 'note']]);
    expect(codes(log(0, 1.3, 1.2))).toEqual([['soil-log-too-shallow', 'warning']]);
    expect(seen(log(0.8, 0.9, 1.2, 1.9, 1.3))).toBeCloseTo(seen(log(0, 0.9, 1.2, 1.9, 9)), 12);
  });

  it('takes the heat capacity of the layers about the pipes', () => {
    const layers = [
      { top: metres(0), bottom: metres(1.5), thermal: soil(0.9, 1.6) },
      { top: metres(1.5), bottom: metres(3), thermal: soil(1.9, 2.6) },
    ];
    const at = (...depths: readonly number[]): number =>
      effectiveConductivity({ layers, pipes: pipes(...depths.map((z) => [0, z] as const)) }).thermal.heatCapacity;
    expect(at(1.2)).toBe(1.6e6);
    expect(at(1.8)).toBe(2.6e6);
    expect(at(1.2, 1.8)).toBeCloseTo(2.1e6, 3);
    expect(at(1.5)).toBeCloseTo(2.1e6, 3);
  });

  it('refuses gaps, overlaps, pipes in one another and bad input', () => {
    const gap = [...log(0, 1, 1), ...log(1.2, 1, 3)];
    expect(() => seen(gap)).toThrow('gap');
    expect(() => seen([...log(0, 1, 1.5), ...log(1.2, 1, 3)])).toThrow('overlap');
    expect(() => seen(log(0, 1, 3), pipes([0, 1.5], [0.01, 1.5]))).toThrow('do not lie in one another');
    const wrong = { ...soil(1.3), diffusivity: squareMillimetresPerSecond(0.9) };
    expect(() => seen([{ top: metres(0), bottom: metres(3), thermal: wrong }])).toThrow('conductivity over heat capacity');
  });
});
