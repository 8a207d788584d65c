import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaCollector,
  collectorPlotShape,
  collectorRows,
  equalTemperatureResponse,
  exponentialResponse,
  groundResponse,
  pipeRowResistance,
  unequalTrenches,
  type UnequalTrench,
} from '../../src/ground/index.js';
import { days, diameterMetres, type Length, metres, wattsPerMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { layoutOf, responseOf, soilOf } from './support.js';

const ground = { radius: 0.016, conductivity: 1.5, diffusivity: 6e-7 };
const at = (depth: number, x = 0): { x: Length; depth: Length } => ({ x: metres(x), depth: metres(depth) });
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('an area collector', () => {
  it('refuses a plot that is none', () => {
    refuses(collectorRows, collectorPlotShape, { plotWidth: metres(12), plotLength: metres(25), trenchSpacing: metres(0.6) });
    expect(() => collectorRows({ plotWidth: metres(301), plotLength: metres(25), trenchSpacing: metres(0.6) })).toThrow(/plotWidth.*500 rows/u);
  });

  it('has rows that fit the plot, of which no further one would', () => {
    fc.assert(
      fc.property(between(0.2, 2), between(2, 90), (spacing, width) => {
        const { trenches, pipeLength } = collectorRows({ plotWidth: metres(width), plotLength: metres(20), trenchSpacing: metres(spacing) });
        expect(trenches * spacing).toBeLessThanOrEqual(width * (1 + 1e-8));
        expect((trenches + 1) * spacing).toBeGreaterThan(width * (1 - 1e-8));
        expect(pipeLength).toBe(20 * trenches);
      }),
    );
    expect(collectorRows({ plotWidth: metres(1.2), plotLength: metres(10), trenchSpacing: metres(0.4) }).trenches).toBe(3);
  });

  it('takes rows as near as the narrowest cut', () => {
    expect(areaCollector({ depth: metres(1.2), trenches: 10, trenchSpacing: metres(0.15) }).trenches).toBe(10);
    expect(() => areaCollector({ depth: metres(1.2), trenches: 10, trenchSpacing: metres(0.14) })).toThrow(/trenchSpacing/u);
  });

  it('tends to the endless row', () => {
    const row = pipeRowResistance({
      depth: metres(1.3),
      outsideDiameter: diameterMetres(0.032),
      conductivity: wattsPerMetreKelvin(1.5),
      spacing: metres(0.6),
    });
    const off = (trenches: number): number =>
      1 - (responseOf(areaCollector({ depth: metres(1.3), trenches, trenchSpacing: metres(0.6) }), ground).steadyRise ?? Number.NaN) / row;
    // What the outermost rows lack is spread over all, with a logarithm for how far they are felt.
    expect(off(500)).toBeLessThan(0.016);
    expect(off(100) / off(500)).toBeGreaterThan(3.5);
    expect(off(100) / off(500)).toBeLessThan(5);
  });
});

describe('unequal trenches', () => {
  const group = (...trenches: readonly (readonly [across: number, depth: number])[]): readonly UnequalTrench[] =>
    trenches.map(([across, depth]) => ({ across: metres(across), pipes: [at(depth)] }));

  it('refuse trenches that run into one another, and too many pipes', () => {
    const of = (trenchGroup: readonly UnequalTrench[]) => () => unequalTrenches({ trenchGroup, trenches: 1, trenchSpacing: metres(200) });
    expect(of(group([0, 1.2], [0.1, 1.8]))).toThrow(/trenchGroup\.1\.across.*run into one another/u);
    expect(of(group([3, 1.2], [0, 1.8], [3.1, 1.5]))).toThrow(/trenchGroup\.2\.across/u);
    const wide = [{ across: metres(0), pipes: [at(1.2, -1), at(1.2, 1)] }, ...group([0.5, 2])];
    expect(of(wide)).toThrow(/trenchGroup\.1\.across/u);
    const full = { across: metres(0), pipes: Array.from({ length: 21 }, (_, index) => at(1.2, index / 10)) };
    expect(of(Array.from({ length: 5 }, (_, index) => ({ ...full, across: metres(4 * index) })))).toThrow(/pipes/u);
    expect(of([])).toThrow(/trenchGroup/u);
  });

  it('answer like equal ones where they are equal, wherever across is counted from', () => {
    fc.assert(
      fc.property(between(0.8, 2.5), between(0.5, 5), fc.integer({ min: 1, max: 6 }), between(-40, 40), (depth, spacing, count, from) => {
        const places = Array.from({ length: count }, (_, index) => [from + index * spacing, depth] as const);
        const unlike = responseOf(unequalTrenches({ trenchGroup: group(...places), trenches: 1, trenchSpacing: metres(100) }), ground);
        const alike = responseOf(layoutOf([[0, depth]], count, spacing), ground);
        expect(unlike.riseAfter(days(200)) / alike.riseAfter(days(200))).toBeCloseTo(1, 8);
        expect((unlike.steadyRise ?? 0) / (alike.steadyRise ?? 1)).toBeCloseTo(1, 8);
      }),
      { numRuns: 30 },
    );
  });

  it('repeat as groups: shallow and deep in turn, three times, as all six listed', () => {
    const three = unequalTrenches({ trenchGroup: group([0, 1.2], [2, 1.8]), trenches: 3, trenchSpacing: metres(4) });
    const six = group([0, 1.2], [2, 1.8], [4, 1.2], [6, 1.8], [8, 1.2], [10, 1.8]);
    const [repeated, listed] = [three, unequalTrenches({ trenchGroup: six, trenches: 1, trenchSpacing: metres(100) })].map((layout) =>
      responseOf(layout, ground).riseAfter(days(365)),
    );
    expect(repeated).toBeCloseTo(listed ?? 0, 12);
  });

  it('far apart answer like the mean of each alone, and warm one another when near', () => {
    const mean = (responseOf(layoutOf([[0, 1.2]]), ground).steadyRise ?? 0) / 2 + (responseOf(layoutOf([[0, 1.8]]), ground).steadyRise ?? 0) / 2;
    const rise = (across: number): number =>
      responseOf(unequalTrenches({ trenchGroup: group([0, 1.2], [across, 1.8]), trenches: 1, trenchSpacing: metres(100) }), ground).steadyRise ?? 0;
    expect(rise(80)).toBeCloseTo(mean, 3);
    expect(rise(2)).toBeGreaterThan(rise(4));
    expect(rise(4)).toBeGreaterThan(mean);
  });

  it('act on one another alike, and their rises superpose: each pipe alone, summed', () => {
    const layout = unequalTrenches({ trenchGroup: group([0, 0.9], [1.5, 1.8], [4, 1.2]), trenches: 1, trenchSpacing: metres(100) });
    const soil = soilOf(1.5, 6e-7);
    const pipe = { outsideDiameter: diameterMetres(0.032) };
    const tied = equalTemperatureResponse({ layout, pipe, soil });
    const [shares = []] = tied.heatShares ?? [];
    const rises = groundResponse({ layout, pipe, soil }).steadyPipeRises?.[0] ?? [];
    // With matrix R symmetric: sum of equal-heat rises weighted by the equal-temperature shares is n times the tied rise.
    const weighted = shares.reduce((sum, share, index) => sum + share * (rises[index] ?? 0), 0) / 3;
    expect(weighted).toBeCloseTo(tied.steadyRise ?? 0, 9);
    expect(exponentialResponse({ layout, pipe, soil }).fit.largestError).toBeLessThan(2e-4);
  });
});
