import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { designGroundWave, type DesignGroundWaveInput, designGroundWaveInputShape, groundTemperatureRange } from '../../src/climate/index.js';
import { kelvinDifference, metres, ratio, squareMetresPerDay } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { conduct, SPACING } from './conduction.js';
import { anyWave, temperate } from './waves.js';

const YEAR = 365;
const USUAL_YEARS = 12;

describe('the ground after one hard winter', () => {
  const departure = 3;
  const { mean, amplitude, coldestDay } = temperate;
  const usual = (time: number): number => mean - amplitude * Math.cos((2 * Math.PI * (time + 1 - coldestDay)) / YEAR);
  const middle = USUAL_YEARS * YEAR + coldestDay - 1;
  const hard = (time: number): number => usual(time) - (Math.abs(time - middle) <= 45 ? departure : 0);

  it.each([0.025, 0.042, 0.07])('is as cold as conduction has it with %s m²/d, from half a metre to two damping depths', (diffusivity) => {
    const lowest = (outside: (time: number) => number): ReadonlyMap<number, number> => {
      const run = conduct({ diffusivity, outside, film: 0, start: mean, time: { from: 0, to: middle + 300, step: 0.5 } });
      const after = [...run].filter(([day]) => day > middle - 100).map(([, column]) => column);
      return new Map(
        [0.5, 1, 1.5, 2, 2.5].map((depth) => [depth, Math.min(...after.map((column) => column[Math.round(depth / SPACING)] ?? Number.NaN))]),
      );
    };
    const [before, after] = [lowest(usual), lowest(hard)];
    const wave = designGroundWave({ season: 'winter', wave: temperate, departure: kelvinDifference(departure), amplitudeRatio: ratio(1) });
    const damping = Math.sqrt((diffusivity * YEAR) / Math.PI);
    for (const [depth, coldest] of after) {
      if (depth > 2 * damping) continue;
      const at = { diffusivity: squareMetresPerDay(diffusivity), depth: metres(depth) };
      const said = groundTemperatureRange({ ...at, wave: temperate }).lowest - groundTemperatureRange({ ...at, wave }).lowest;
      const truly = (before.get(depth) ?? Number.NaN) - coldest;
      expect((said - truly) / departure).toBeGreaterThan(-0.04);
      expect((said - truly) / departure).toBeLessThan(0.06);
    }
  });
});

describe('the wave', () => {
  it('does not change without a departure, keeps day and period, and mirrors in summer', () => {
    fc.assert(
      fc.property(anyWave, fc.double({ min: 0, max: 30, noNaN: true }), (wave, size) => {
        const input = { wave, departure: kelvinDifference(size), amplitudeRatio: ratio(1) };
        const [winter, summer] = [designGroundWave({ season: 'winter', ...input }), designGroundWave({ season: 'summer', ...input })];
        expect([winter.coldestDay, winter.period, winter.of]).toEqual([wave.coldestDay, wave.period, wave.of]);
        expect(wave.mean - winter.mean).toBeCloseTo(summer.mean - wave.mean, 9);
        expect(winter.amplitude).toBe(summer.amplitude);
        expect(Math.abs(wave.mean - wave.amplitude - size - (winter.mean - winter.amplitude))).toBeLessThanOrEqual(0.01 * size + 1e-9);
      }),
    );
    expect(designGroundWave({ season: 'winter', wave: temperate, departure: kelvinDifference(0) })).toEqual(temperate);
  });

  it('takes nine tenths of the departure where nothing is said of the surface', () => {
    const input = { season: 'winter', wave: temperate, departure: kelvinDifference(2) } as const;
    expect(designGroundWave(input)).toEqual(designGroundWave({ ...input, amplitudeRatio: ratio(0.9) }));
    expect(() => designGroundWave({ ...input, wave: { ...temperate, of: 'air' } })).toThrow('wave.of');
  });

  it('refuses bad input by name', () => {
    refuses<DesignGroundWaveInput>(designGroundWave, designGroundWaveInputShape, {
      season: 'summer',
      wave: temperate,
      departure: kelvinDifference(2),
      amplitudeRatio: ratio(0.9),
    });
  });
});
