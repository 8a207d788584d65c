import { describe, expect, it } from 'vitest';
import {
  dampingDepth,
  groundHeatFlux,
  groundTemperature,
  groundTemperatureRange,
  meanTemperatureOverDepth,
  surfaceWaveThroughFilm,
} from '../../src/climate/index.js';
import { dayOfYear, metres, squareMetresPerDay, wattsPerMetreKelvin, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { conduct, SPACING } from './conduction.js';
import { loam, temperate } from './waves.js';

/** Ten years from the coldest day on: what the start leaves behind has died away to a few ten-thousandths of a kelvin. */
const LAST = 35 + 9 * 365;
const time = { from: 35, to: LAST + 365, step: 0.25 } as const;
const outside = (t: number): number => 10 - 12 * Math.cos((2 * Math.PI * (t - 35)) / 365);

const DEPTHS = [0.5, 1, 1.5, 2, 3, 5];
const MOMENTS = Array.from({ length: 24 }, (_, i) => LAST + i * 15);
const node = (depth: number): number => Math.round(depth / SPACING);

/** Second-order errors of 0.05 m and a quarter of a day, and the start: 0.002 K of 12 K. */
const CLOSE = 2e-3;

describe('the wave against a finite-volume run of the heat equation', () => {
  const run = conduct({ diffusivity: 0.05, outside, film: 0, start: 10, time });
  const ran = (day: number, depth: number): number => run.get(day)?.[node(depth)] ?? NaN;

  it('has the same temperatures at six depths through the tenth year', () => {
    const off = MOMENTS.flatMap((day) =>
      DEPTHS.map((depth) =>
        Math.abs(groundTemperature({ wave: temperate, diffusivity: loam, depth: metres(depth), day: dayOfYear(day + 1) }) - ran(day, depth)),
      ),
    );
    expect(Math.max(...off)).toBeLessThan(CLOSE);
    expect(off).toHaveLength(144);
  });

  it('has the same extremes, day by day', () => {
    for (const depth of DEPTHS) {
      const year = Array.from({ length: 365 }, (_, i) => ran(LAST + i + 1, depth));
      const range = groundTemperatureRange({ wave: temperate, diffusivity: loam, depth: metres(depth) });
      expect(Math.abs(Math.min(...year) - range.lowest)).toBeLessThan(CLOSE);
      expect(Math.abs(Math.max(...year) - range.highest)).toBeLessThan(CLOSE);
      const coldest = ((35 + year.indexOf(Math.min(...year)) + 1) % 365) + 1;
      expect(Math.abs(coldest - range.coldestDay)).toBeLessThan(2);
    }
  });

  it('has the same mean over the ground between 0.9 and 1.8 m', () => {
    for (const day of MOMENTS) {
      const [from, to] = [node(0.9), node(1.8)];
      const inner = Array.from({ length: to - from + 1 }, (_, i) => (run.get(day)?.[from + i] ?? NaN) * (i === 0 || i === to - from ? 0.5 : 1));
      const mean = inner.reduce((sum, part) => sum + part, 0) / (to - from);
      const slab = { wave: temperate, diffusivity: loam, top: metres(0.9), bottom: metres(1.8), day: dayOfYear(day + 1) };
      expect(Math.abs(meanTemperatureOverDepth(slab) - mean)).toBeLessThan(CLOSE);
    }
  });

  it('has the same heat flux at 1 m', () => {
    for (const day of MOMENTS) {
      const slope = (ran(day, 1 + SPACING) - ran(day, 1 - SPACING)) / (2 * SPACING);
      const flux = groundHeatFlux({
        wave: temperate,
        conductivity: wattsPerMetreKelvin(1.2),
        diffusivity: loam,
        depth: metres(1),
        day: dayOfYear(day + 1),
      });
      expect(Math.abs(flux + 1.2 * slope)).toBeLessThan(5e-3);
    }
  });
});

describe('the wave below a film against the same run with a film', () => {
  it.each([
    [15, 1.2, 0.05],
    [5, 1.2, 0.05],
    [2, 2, 0.07],
  ])('has the same temperatures for h = %s W/(m2.K), k = %s W/(m.K), %s m2/d', (h, k, diffusivity) => {
    const run = conduct({ diffusivity, outside, film: k / h, start: 10, time });
    const soil = { conductivity: wattsPerMetreKelvin(k), diffusivity: squareMetresPerDay(diffusivity) };
    const { wave } = surfaceWaveThroughFilm({ air: { ...temperate, of: 'air' }, coefficient: wattsPerSquareMetreKelvin(h), ...soil });
    const off = MOMENTS.flatMap((day) =>
      [0, 1, 2].map((depth) =>
        Math.abs(
          groundTemperature({ wave, diffusivity: soil.diffusivity, depth: metres(depth), day: dayOfYear(day + 1) }) -
            (run.get(day)?.[node(depth)] ?? NaN),
        ),
      ),
    );
    expect(Math.max(...off)).toBeLessThan(CLOSE);
  });

  it('passes as much heat as the ground takes up', () => {
    const soil = { conductivity: wattsPerMetreKelvin(1.2), diffusivity: loam };
    const { wave } = surfaceWaveThroughFilm({ air: { ...temperate, of: 'air' }, coefficient: wattsPerSquareMetreKelvin(5), ...soil });
    for (const day of MOMENTS) {
      const surface = groundTemperature({ wave, diffusivity: loam, depth: metres(0), day: dayOfYear(day + 1) });
      const flux = groundHeatFlux({ wave, ...soil, depth: metres(0), day: dayOfYear(day + 1) });
      expect(flux).toBeCloseTo(5 * (outside(day) - surface), 9);
    }
    expect(dampingDepth({ diffusivity: loam, period: wave.period })).toBeCloseTo(2.41, 2);
  });
});
