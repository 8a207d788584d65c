import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineSinkFreezing, lineSinkInputShape, type LineSinkInput } from '../../src/operation/index.js';
import { celsius, days, joulesPerCubicMetre, metres, wattsPerPipeMetre } from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';
import { refuses } from '../support/bad-input.js';
import { coursesOf, evenlyFreezing, runSteadily } from './support/ice-runs.js';

const example: LineSinkInput = {
  extraction: wattsPerPipeMetre(25),
  thawed: soilOf(1.5, 1.5 / 2.2e6),
  frozen: soilOf(1.95, 1.95 / 1.6775e6),
  latentHeat: joulesPerCubicMetre(0.25 * 334e6),
  initial: celsius(4),
  freezingPoint: celsius(0),
  time: days(20),
  distance: metres(0.0133),
};

describe('freezing around a line sink', () => {
  it('grows with the root of time and with heat, and falls with latent heat', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 60, noNaN: true }), fc.double({ min: 1.05, max: 4, noNaN: true }), (heat, times) => {
        const one = lineSinkFreezing({ ...example, extraction: wattsPerPipeMetre(heat) });
        expect(
          lineSinkFreezing({ ...example, extraction: wattsPerPipeMetre(heat), time: days(20 * times) }).frozenRadius / one.frozenRadius,
        ).toBeCloseTo(Math.sqrt(times), 10);
        expect(lineSinkFreezing({ ...example, extraction: wattsPerPipeMetre(heat * times) }).frozenRadius).toBeGreaterThan(one.frozenRadius);
        expect(
          lineSinkFreezing({
            ...example,
            extraction: wattsPerPipeMetre(heat),
            latentHeat: joulesPerCubicMetre(Math.min(4e8, example.latentHeat * times)),
          }).frozenRadius,
        ).toBeLessThan(one.frozenRadius);
      }),
    );
  });

  it('is continuous at the front, and the start far out', () => {
    const { frozenRadius } = lineSinkFreezing(example);
    for (const side of [1 - 1e-9, 1 + 1e-9])
      expect(lineSinkFreezing({ ...example, distance: metres(frozenRadius * side) }).temperature).toBeCloseTo(0, 6);
    expect(lineSinkFreezing({ ...example, distance: metres(100) }).temperature).toBeCloseTo(4, 10);
  });

  it('takes up at the front what freezing sets free', () => {
    // Fluxes by differences on both sides of the front against its speed.
    const { frozenRadius } = lineSinkFreezing(example);
    const at = (distance: number): number => lineSinkFreezing({ ...example, distance: metres(distance) }).temperature;
    const apart = 1e-6;
    const inside = (1.95 * (at(frozenRadius) - at(frozenRadius - apart))) / apart;
    const outside = (1.5 * (at(frozenRadius + apart) - at(frozenRadius))) / apart;
    expect((inside - outside) / ((example.latentHeat * frozenRadius) / (2 * example.time))).toBeCloseTo(1, 3);
  });

  it('is met by the rings of a deep pipe over a narrow range: wall to 0.1 K, radius to 3 %', () => {
    const soil = evenlyFreezing({ thawed: [1.5, 2.2e6], frozen: [1.95, 1.6775e6], water: 0.25, range: 0.1 });
    const { iced, areas } = coursesOf(runSteadily({ layout: layoutOf([[0, 10]]), outside: 26.6, soil, heat: 25, warmth: 4, step: 2, steps: 720 }));
    for (const day of [5, 20, 60]) {
      const exact = lineSinkFreezing({ ...example, time: days(day) });
      expect(Math.abs((iced[12 * day - 1] ?? Number.NaN) - exact.temperature)).toBeLessThan(0.1);
      // The pipe's own section holds no ice; the line's does.
      expect(Math.sqrt((areas[12 * day - 1] ?? Number.NaN) / Math.PI + 0.0133 ** 2) / exact.frozenRadius).toBeGreaterThan(0.97);
      expect(Math.sqrt((areas[12 * day - 1] ?? Number.NaN) / Math.PI + 0.0133 ** 2) / exact.frozenRadius).toBeLessThan(1.03);
    }
  });

  it('refuses what cannot be', () => {
    refuses(lineSinkFreezing, lineSinkInputShape, example);
    expect(() => lineSinkFreezing({ ...example, initial: celsius(-1) })).toThrow('above the freezing point');
  });
});
