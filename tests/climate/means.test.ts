import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  groundHeatFlux,
  groundTemperature,
  groundTemperatureRange,
  meanTemperatureOverDepth,
  meanTemperatureOverTime,
} from '../../src/climate/index.js';
import { dayOfYear, metres, wattsPerMetreKelvin } from '../../src/units/index.js';
import { anyDay, anyDepth, anyDiffusivity, anyWave, loam, temperate } from './waves.js';

const DAY = 86_400;

/** Simpson's rule over 200 pieces. */
function simpson(of: (x: number) => number, from: number, to: number): number {
  const pieces = 200;
  const weight = (i: number): number => (i === 0 || i === pieces ? 1 : i % 2 === 1 ? 4 : 2);
  const sum = Array.from({ length: pieces + 1 }, (_, i) => weight(i) * of(from + ((to - from) * i) / pieces)).reduce((a, b) => a + b, 0);
  return (sum * (to - from)) / (3 * pieces);
}

const anyThickness = fc.double({ min: 0.01, max: 5, noNaN: true });
const anySpan = fc.double({ min: 0.5, max: 400, noNaN: true });

describe('meanTemperatureOverDepth', () => {
  it('is the quadrature of the temperature', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyThickness, anyDay, (wave, diffusivity, depth, thickness, day) => {
        const [top, bottom, when] = [depth, depth + thickness, dayOfYear(day)];
        const quadrature = simpson((z) => groundTemperature({ wave, diffusivity, depth: metres(z), day: when }), top, bottom) / thickness;
        expect(meanTemperatureOverDepth({ wave, diffusivity, top, bottom: metres(bottom), day: when })).toBeCloseTo(quadrature, 4);
      }),
    );
  });

  it('averages over two parts to the whole', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyThickness, anyThickness, anyDay, (wave, diffusivity, top, upper, lower, day) => {
        const mean = (from: number, to: number): number =>
          meanTemperatureOverDepth({ wave, diffusivity, top: metres(from), bottom: metres(to), day: dayOfYear(day) });
        const [middle, bottom] = [top + upper, top + upper + lower];
        expect((mean(top, middle) * upper + mean(middle, bottom) * lower) / (upper + lower)).toBeCloseTo(mean(top, bottom), 9);
      }),
    );
  });

  it('refuses a slab that is turned over or has no thickness', () => {
    const slab = { wave: temperate, diffusivity: loam, top: metres(1), day: dayOfYear(1) };
    expect(() => meanTemperatureOverDepth({ ...slab, bottom: metres(0.5) })).toThrow('the lower edge lies below');
    expect(() => meanTemperatureOverDepth({ ...slab, bottom: metres(1) })).toThrow('for a point use groundTemperature');
  });
});

describe('meanTemperatureOverTime', () => {
  it('is the quadrature of the temperature', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, anySpan, (wave, diffusivity, depth, start, span) => {
        const quadrature = simpson((t) => groundTemperature({ wave, diffusivity, depth, day: dayOfYear(t) }), start, start + span) / span;
        const mean = meanTemperatureOverTime({ wave, diffusivity, depth, start: dayOfYear(start), end: dayOfYear(start + span) });
        expect(mean).toBeCloseTo(quadrature, 4);
      }),
    );
  });

  it('is the mean of the wave over whole periods, whatever the depth and the start', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, fc.integer({ min: 1, max: 20 }), (wave, diffusivity, depth, start, years) => {
        const end = dayOfYear(start + (years * wave.period) / DAY);
        expect(meanTemperatureOverTime({ wave, diffusivity, depth, start: dayOfYear(start), end })).toBeCloseTo(wave.mean, 9);
      }),
    );
  });

  it('tends to the temperature of the moment for a short span', () => {
    const moment = groundTemperature({ wave: temperate, diffusivity: loam, depth: metres(1), day: dayOfYear(100) });
    const span = { start: dayOfYear(99.999), end: dayOfYear(100.001) };
    expect(meanTemperatureOverTime({ wave: temperate, diffusivity: loam, depth: metres(1), ...span })).toBeCloseTo(moment, 9);
  });

  it('says that a winter counts on past the year', () => {
    const winter = { wave: temperate, diffusivity: loam, depth: metres(1), start: dayOfYear(305), end: dayOfYear(91) };
    expect(() => meanTemperatureOverTime(winter)).toThrow('1 January is 366');
  });
});

describe('groundHeatFlux', () => {
  const conductivity = wattsPerMetreKelvin(1.5);

  it('is the slope of the temperature', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, (wave, diffusivity, depth, day) => {
        const at = (z: number): number => groundTemperature({ wave, diffusivity, depth: metres(z), day: dayOfYear(day) });
        const slope = (at(depth + 2e-4) - at(depth + 1e-4)) / 1e-4;
        const flux = groundHeatFlux({ wave, conductivity, diffusivity, depth: metres(depth + 1.5e-4), day: dayOfYear(day) });
        expect(flux).toBeCloseTo(-conductivity * slope, 5);
      }),
    );
  });

  it('warms a slab by what flows in and not out', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyThickness, anyDay, (wave, diffusivity, top, thickness, day) => {
        const bottom = metres(top + thickness);
        const through = (depth: number): number => groundHeatFlux({ wave, conductivity, diffusivity, depth: metres(depth), day: dayOfYear(day) });
        const mean = (when: number): number => meanTemperatureOverDepth({ wave, diffusivity, top, bottom, day: dayOfYear(when) });
        const stored = ((conductivity / diffusivity) * thickness * (mean(day + 0.01) - mean(day - 0.01))) / (0.02 * DAY);
        expect(through(top) - through(bottom)).toBeCloseTo(stored, 3);
      }),
    );
  });

  it('leads the temperature by an eighth of a period and vanishes over a year', () => {
    const { coldestDay } = groundTemperatureRange({ wave: temperate, diffusivity: loam, depth: metres(1.5) });
    const at = (day: number): number => groundHeatFlux({ wave: temperate, conductivity, diffusivity: loam, depth: metres(1.5), day: dayOfYear(day) });
    const strongest = coldestDay - 365 / 8;
    expect(at(strongest)).toBeLessThan(at(strongest + 0.5));
    expect(at(strongest)).toBeLessThan(at(strongest - 0.5));
    expect(simpson(at, 1, 366)).toBeCloseTo(0, 9);
  });
});
