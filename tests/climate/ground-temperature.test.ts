import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dampingDepth, groundTemperature, groundTemperatureRange } from '../../src/climate/index.js';
import { celsius, dayOfYear, days, type DayOfYear, kelvinDifference, metres, squareMetresPerSecond } from '../../src/units/index.js';
import { anyDay, anyDepth, anyDiffusivity, anyWave, loam, temperate } from './waves.js';

const DAY = 86_400;

describe('groundTemperature', () => {
  it('follows the surface exactly at depth zero', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDay, (wave, diffusivity, day) => {
        const surface = wave.mean - wave.amplitude * Math.cos((2 * Math.PI * (day - wave.coldestDay) * DAY) / wave.period);
        expect(groundTemperature({ wave, diffusivity, depth: metres(0), day: dayOfYear(day) })).toBe(surface);
      }),
    );
  });

  it('repeats after a period', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, fc.integer({ min: -5, max: 20 }), (wave, diffusivity, depth, day, years) => {
        const at = (when: number): number => groundTemperature({ wave, diffusivity, depth, day: dayOfYear(when) });
        expect(Math.abs(at(day + (years * wave.period) / DAY) - at(day))).toBeLessThan(1e-9);
      }),
    );
  });

  it('is mirrored at the mean by half a year, as between the hemispheres', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, (wave, diffusivity, depth, day) => {
        const half = wave.period / DAY / 2;
        const opposite = { ...wave, coldestDay: dayOfYear(wave.coldestDay > half ? wave.coldestDay - half : wave.coldestDay + half) };
        const point = { diffusivity, depth, day: dayOfYear(day) };
        const sum = groundTemperature({ wave, ...point }) + groundTemperature({ wave: opposite, ...point });
        expect(Math.abs(sum - 2 * wave.mean)).toBeLessThan(1e-10);
      }),
    );
  });

  it('is linear in mean and amplitude', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, fc.double({ min: 0, max: 2, noNaN: true }), (wave, diffusivity, depth, day, factor) => {
        const point = { diffusivity, depth, day: dayOfYear(day) };
        const scaled = { ...wave, mean: celsius(wave.mean + 5), amplitude: kelvinDifference(wave.amplitude * factor) };
        const expected = wave.mean + 5 + factor * (groundTemperature({ wave, ...point }) - wave.mean);
        expect(groundTemperature({ wave: scaled, ...point })).toBeCloseTo(expected, 9);
      }),
    );
  });

  it('adds a second harmonic of half the period, damped √2 faster', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, (wave, diffusivity, depth, day) => {
        const point = { diffusivity, depth, day: dayOfYear(day) };
        const second = { amplitude: kelvinDifference(1.5), coldestDay: dayOfYear(110) };
        const alone = { ...wave, ...second, mean: celsius(0), period: days(wave.period / DAY / 2) };
        const sum = groundTemperature({ wave, ...point }) + groundTemperature({ wave: alone, ...point });
        expect(groundTemperature({ wave, secondHarmonic: second, ...point })).toBeCloseTo(sum, 9);
      }),
    );
  });

  it('says what to do with a wave of the air', () => {
    const air = { ...temperate, of: 'air' as const };
    expect(() => groundTemperature({ wave: air, diffusivity: loam, depth: metres(1), day: dayOfYear(1) })).toThrow(
      /wave\.of: air.*surfaceWaveFromAir/u,
    );
  });

  it('names the likely cause where a diffusivity per day or in mm2/s is taken for m2/s', () => {
    for (const slip of [0.05, 0.579]) {
      const point = { wave: temperate, diffusivity: squareMetresPerSecond(slip), depth: metres(1), day: dayOfYear(1) };
      expect(() => groundTemperature(point)).toThrow('per hour or per day');
    }
  });
});

describe('groundTemperatureRange', () => {
  it('holds every day of the year and is reached on its two days', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, (wave, diffusivity, depth, day) => {
        const range = groundTemperatureRange({ wave, diffusivity, depth });
        const at = (when: DayOfYear): number => groundTemperature({ wave, diffusivity, depth, day: when });
        const now = at(dayOfYear(day));
        expect(now).toBeGreaterThanOrEqual(range.lowest - 1e-9);
        expect(now).toBeLessThanOrEqual(range.highest + 1e-9);
        expect(at(range.coldestDay)).toBeCloseTo(range.lowest, 9);
        expect(at(range.warmestDay)).toBeCloseTo(range.highest, 9);
      }),
    );
  });

  it('keeps its days within the year, half a period apart', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, (wave, diffusivity, depth) => {
        const { coldestDay, warmestDay } = groundTemperatureRange({ wave, diffusivity, depth });
        const year = wave.period / DAY;
        for (const day of [coldestDay, warmestDay]) {
          expect(day).toBeGreaterThanOrEqual(1);
          expect(day).toBeLessThan(1 + year);
        }
        expect(Math.abs(Math.abs(coldestDay - warmestDay) - year / 2)).toBeLessThan(1e-8);
      }),
    );
  });

  it('narrows and lags with depth about an unchanged mean, the less the better the ground conducts warmth', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, fc.double({ min: 0.01, max: 5, noNaN: true }), (wave, diffusivity, depth, further) => {
        const upper = groundTemperatureRange({ wave, diffusivity, depth });
        const lower = groundTemperatureRange({ wave, diffusivity, depth: metres(depth + further) });
        const quicker = groundTemperatureRange({ wave, diffusivity: squareMetresPerSecond(diffusivity * 1.5), depth });
        expect(lower.amplitudeRatio).toBeLessThan(upper.amplitudeRatio);
        expect(lower.lag).toBeGreaterThan(upper.lag);
        expect((lower.lowest + lower.highest) / 2).toBeCloseTo(wave.mean, 9);
        expect(quicker.amplitudeRatio).toBeGreaterThanOrEqual(upper.amplitudeRatio);
        expect(quicker.lag).toBeLessThanOrEqual(upper.lag);
        expect(upper.lag).toBeCloseTo((-Math.log(upper.amplitudeRatio) * wave.period) / (2 * Math.PI), 0);
      }),
    );
  });

  it('has dry ground warmer in winter than damp ground at the depth of a pipe', () => {
    // 4e-7 against 7e-7 m2/s at 1.5 m under 12 K: 5.7 against 6.8 K of amplitude.
    const amplitude = (diffusivity: number): number =>
      groundTemperatureRange({ wave: temperate, diffusivity: squareMetresPerSecond(diffusivity), depth: metres(1.5) }).amplitude;
    expect(amplitude(4e-7)).toBeCloseTo(5.7, 1);
    expect(amplitude(7e-7)).toBeCloseTo(6.8, 1);
  });
});

describe('dampingDepth', () => {
  it('doubles with four times the diffusivity or the period', () => {
    fc.assert(
      fc.property(anyDiffusivity, fc.double({ min: 1, max: 400, noNaN: true }), (diffusivity, period) => {
        const once = dampingDepth({ diffusivity, period: days(period) });
        expect(dampingDepth({ diffusivity: squareMetresPerSecond(4 * diffusivity * 0.5), period: days(2 * period) })).toBeCloseTo(2 * once, 9);
      }),
    );
  });

  it('keeps 1.9 % of a daily swing at 0.5 m, so that the mean of a day is enough for pipes', () => {
    expect(Math.exp(-0.5 / dampingDepth({ diffusivity: loam, period: days(1) }))).toBeCloseTo(0.019, 3);
  });

  it('turns the wave over at π damping depths with 4.3 % of it left', () => {
    const depth = metres(Math.PI * dampingDepth({ diffusivity: loam, period: temperate.period }));
    const range = groundTemperatureRange({ wave: temperate, diffusivity: loam, depth });
    expect(range.amplitudeRatio).toBeCloseTo(0.0432, 4);
    expect(range.warmestDay).toBeCloseTo(temperate.coldestDay, 6);
  });
});
