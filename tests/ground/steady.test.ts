import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  equalTemperatureInputShape,
  equalTemperatureResistance,
  periodicResponse,
  type PeriodicResponseInput,
  periodicResponseInputShape,
  pipeRowResistance,
  pipeRowShape,
  singlePipeResistance,
  singlePipeShape,
} from '../../src/ground/index.js';
import { days, diameterMetres, metres, seconds, wattsPerMetreKelvin, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { layoutOf, responseOf, soilOf } from './support.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const pipe = { depth: metres(1.5), outsideDiameter: diameterMetres(0.032), conductivity: wattsPerMetreKelvin(1.5) };

describe('steady resistances', () => {
  it('refuse every impossible field by its name', () => {
    refuses(singlePipeResistance, singlePipeShape, pipe);
    refuses(pipeRowResistance, pipeRowShape, { ...pipe, spacing: metres(0.8) });
    const layout = layoutOf(
      [
        [-0.3, 1.5],
        [0.3, 1.5],
      ],
      2,
      3,
    );
    refuses(equalTemperatureResistance, equalTemperatureInputShape, {
      layout,
      pipe: { outsideDiameter: pipe.outsideDiameter },
      conductivity: pipe.conductivity,
    });
  });

  it('refuse a pipe that sticks out, rows that overlap and more pipes than are solved for', () => {
    expect(() => singlePipeResistance({ ...pipe, depth: metres(0.016) })).toThrow(/depth.*stick out/u);
    expect(() => pipeRowResistance({ ...pipe, spacing: metres(0.03) })).toThrow(/spacing.*overlap/u);
    const layout = layoutOf([[0, 1.5]], 401, 3);
    expect(() => equalTemperatureResistance({ layout, pipe, conductivity: pipe.conductivity })).toThrow(/layout\.pipes/u);
  });

  it('of one pipe is below the line source, by 0.1 % at most from ten radii on', () => {
    fc.assert(
      fc.property(between(1.001, 1000), (radii) => {
        const own = { ...pipe, depth: metres(0.016 * radii) };
        const line = Math.log(2 * radii) / (2 * Math.PI * 1.5);
        expect(singlePipeResistance(own)).toBeLessThanOrEqual(line * (1 + 1e-14));
        if (radii > 10) expect(singlePipeResistance(own) / line).toBeGreaterThan(0.999);
      }),
    );
  });

  it('of a row is what ever more trenches tend to, in their middle', () => {
    const radius = pipe.outsideDiameter / 2;
    const middle = [3, 31, 301].map((trenches) => {
      const response = responseOf(layoutOf([[0, 1.5]], trenches, 0.8), { radius, conductivity: 1.5, diffusivity: 1e-6 });
      return response.steadyPipeRises?.[(trenches - 1) / 2]?.[0] ?? Number.NaN;
    });
    const row = pipeRowResistance({ ...pipe, spacing: metres(0.8) });
    const missing = middle.map((rise) => row - rise);
    for (const [index, gap] of missing.entries()) expect(gap).toBeLessThan(missing[index - 1] ?? row);
    expect(missing[2] ?? 1).toBeGreaterThan(0);
    expect((missing[2] ?? 1) / row).toBeLessThan(0.01);
  });

  it('of a row far apart is that of one pipe as a line', () => {
    const line = Math.log((4 * pipe.depth) / pipe.outsideDiameter) / (2 * Math.PI * 1.5);
    expect(pipeRowResistance({ ...pipe, spacing: metres(1000) })).toBeCloseTo(line, 5);
  });

  it('at equal temperature is never above that at equal heat, and its shares of heat make up the whole', () => {
    fc.assert(
      fc.property(between(0.6, 2), between(0.2, 1), between(0.2, 1), fc.integer({ min: 1, max: 5 }), (top, across, down, trenches) => {
        const layout = layoutOf(
          [
            [0, top],
            [across, top + down],
            [across / 2, top + 2 * down],
          ],
          trenches,
          2,
        );
        const { resistance, heatShares } = equalTemperatureResistance({ layout, pipe, conductivity: pipe.conductivity });
        const equalHeat = responseOf(layout, { radius: 0.016, conductivity: 1.5, diffusivity: 1e-6 }).steadyRise ?? Number.NaN;
        expect(resistance).toBeLessThanOrEqual(equalHeat * (1 + 1e-12));
        expect(heatShares.flat().reduce((sum, share) => sum + share, 0)).toBeCloseTo(3 * trenches, 10);
      }),
    );
  });
});

describe('periodic response', () => {
  const soil = soilOf(1.5, 6e-7);
  const layout = layoutOf(
    [
      [0, 1.2],
      [0, 1.8],
    ],
    2,
    3,
  );

  it('refuses every impossible field by its name', () => {
    const example: PeriodicResponseInput = { layout, pipe, soil, period: days(365), surface: { type: 'isothermal' }, selfTerm: 'line' };
    const more: PeriodicResponseInput[] = [
      { ...example, surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(15) } },
      { ...example, surface: { type: 'adiabatic' } },
    ];
    refuses(periodicResponse, periodicResponseInputShape, example, { more });
    expect(() => periodicResponse({ ...example, period: seconds(1800) })).toThrow(/period.*thin against/u);
  });

  it('is what a sine of heat comes to when it is stepped through the step response', () => {
    const period = 30 * 86400;
    const [perPeriod, periods] = [480, 12];
    const step = period / perPeriod;
    const response = responseOf(layout, { radius: 0.016, conductivity: 1.5, diffusivity: 6e-7 });
    const rises = response.risesAfter(Array.from({ length: periods * perPeriod + 1 }, (_, n) => seconds(n * step)));
    const heat = (n: number): number => Math.cos((2 * Math.PI * (n + 0.5)) / perPeriod);
    const wallAfter = (steps: number): number =>
      Array.from({ length: steps }, (_, n) => heat(n) * ((rises[steps - n] ?? 0) - (rises[steps - n - 1] ?? 0))).reduce((a, b) => a + b, 0);
    // After a whole number of periods the wall is at amplitude · cos(lag), a quarter later at amplitude · sin(lag).
    const real = wallAfter((periods - 1) * perPeriod);
    const imaginary = wallAfter((periods - 1) * perPeriod + perPeriod / 4);
    const { amplitude, lag } = periodicResponse({ layout, pipe, soil, period: seconds(period) });
    expect(Math.hypot(real, imaginary) / amplitude).toBeCloseTo(1, 2);
    expect(Math.atan2(imaginary, real) / ((2 * Math.PI * lag) / period)).toBeCloseTo(1, 1);
  });

  it('swings less and lags by a smaller time the shorter the period, and comes to the steady rise for a long one', () => {
    const swings = [1, 30, 365, 36500].map((period) => periodicResponse({ layout, pipe, soil, period: days(period) }));
    for (const [index, { amplitude, lag }] of swings.entries()) {
      expect(amplitude).toBeGreaterThan(swings[index - 1]?.amplitude ?? 0);
      expect(lag).toBeGreaterThan(swings[index - 1]?.lag ?? 0);
    }
    const steady = responseOf(layout, { radius: 0.016, conductivity: 1.5, diffusivity: 6e-7 }).steadyRise ?? Number.NaN;
    const { amplitude } = periodicResponse({ layout, pipe, soil, period: seconds(1e12) });
    expect(amplitude / steady).toBeCloseTo(1, 3);
  });

  it('is the step of a thick wall for short periods: lag an eighth of the period', () => {
    const period = 60;
    const { lag } = periodicResponse({ layout, pipe: { outsideDiameter: diameterMetres(0.2) }, soil, period: seconds(period) });
    expect(lag / period).toBeCloseTo(1 / 8, 2);
  });
});
