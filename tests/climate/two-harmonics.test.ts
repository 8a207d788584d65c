import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  depthOfSwing,
  groundHeatFlux,
  groundTemperature,
  groundTemperatureRange,
  meanTemperatureOverDepth,
  meanTemperatureOverTime,
  type SecondHarmonic,
  temperatureReach,
  temperatureSpells,
} from '../../src/climate/index.js';
import type { AnnualWave } from '../../src/states/index.js';
import { celsius, dayOfYear, days, type Diffusivity, kelvinDifference, type Length, metres, wattsPerMetreKelvin } from '../../src/units/index.js';
import { anyDiffusivity, anyWave, loam, temperate } from './waves.js';

const anySecond: fc.Arbitrary<SecondHarmonic> = fc.record({
  amplitude: fc.double({ min: 0, max: 8, noNaN: true }).map((amplitude) => kelvinDifference(amplitude)),
  coldestDay: fc.double({ min: 1, max: 183, noNaN: true }).map((day) => dayOfYear(day)),
});
const anyPipeDepth: fc.Arbitrary<Length> = fc.double({ min: 0, max: 4, noNaN: true }).map((depth) => metres(depth));
const anyThreshold = fc.double({ min: -15, max: 40, noNaN: true }).map((temperature) => celsius(temperature));
const surface = fc.tuple(anyWave, anySecond, anyDiffusivity, anyPipeDepth);

/** Temperatures of every third hour of a year. */
function hoursOf(wave: AnnualWave, secondHarmonic: SecondHarmonic, diffusivity: Diffusivity, depth: Length): readonly number[] {
  const steps = Math.floor((8 * wave.period) / days(1));
  return Array.from({ length: steps }, (_, i) => groundTemperature({ wave, secondHarmonic, diffusivity, depth, day: dayOfYear(1 + i / 8) }));
}

/** Gauss and Legendre's rule with three points in each of many parts. */
function average(of: (at: number) => number, from: number, to: number): number {
  const parts = 60;
  const width = (to - from) / parts;
  const weights = [5 / 18, 8 / 18, 5 / 18];
  const places = [-Math.sqrt(0.6), 0, Math.sqrt(0.6)];
  return Array.from({ length: parts }, (_, i) =>
    places.reduce((sum, place, k) => sum + (weights[k] ?? 0) * of(from + (i + 0.5 + place / 2) * width), 0),
  ).reduce((sum, part) => sum + part / parts, 0);
}

describe('two harmonics', () => {
  it('average over depth and over time as quadrature has it', () => {
    fc.assert(
      fc.property(surface, ([wave, secondHarmonic, diffusivity, top]) => {
        const at = (depth: number, day: number): number =>
          groundTemperature({ wave, secondHarmonic, diffusivity, depth: metres(depth), day: dayOfYear(day) });
        const bottom = metres(top + 0.8);
        const slab = meanTemperatureOverDepth({ wave, secondHarmonic, diffusivity, top, bottom, day: dayOfYear(70) });
        expect(slab).toBeCloseTo(
          average((depth) => at(depth, 70), top, bottom),
          5,
        );
        const [start, end] = [dayOfYear(305), dayOfYear(456)];
        const span = meanTemperatureOverTime({ wave, secondHarmonic, diffusivity, depth: top, start, end });
        expect(span).toBeCloseTo(
          average((day) => at(top, day), start, end),
          5,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('drive the heat that the slope of the temperature says', () => {
    fc.assert(
      fc.property(surface, ([wave, secondHarmonic, diffusivity, depth]) => {
        const day = dayOfYear(123);
        const at = (z: number): number => groundTemperature({ wave, secondHarmonic, diffusivity, depth: metres(z), day });
        const conductivity = wattsPerMetreKelvin(1.5);
        const slope = (at(depth + 2e-5) - at(depth + 1e-5)) / 1e-5;
        const flux = groundHeatFlux({ wave, secondHarmonic, conductivity, diffusivity, depth: metres(depth + 1.5e-5), day });
        expect(Math.abs(flux + 1.5 * slope)).toBeLessThan(1e-3);
      }),
    );
  });

  it('have no day beyond their range, and reach it', () => {
    fc.assert(
      fc.property(surface, ([wave, secondHarmonic, diffusivity, depth]) => {
        const hours = hoursOf(wave, secondHarmonic, diffusivity, depth);
        const range = groundTemperatureRange({ wave, secondHarmonic, diffusivity, depth });
        expect(Math.min(...hours)).toBeGreaterThanOrEqual(range.lowest - 1e-9);
        expect(Math.max(...hours)).toBeLessThanOrEqual(range.highest + 1e-9);
        expect(Math.min(...hours) - range.lowest).toBeLessThan(2e-3);
        expect(range.highest - Math.max(...hours)).toBeLessThan(2e-3);
        const at = (day: number): number => groundTemperature({ wave, secondHarmonic, diffusivity, depth, day: dayOfYear(day) });
        expect(at(range.coldestDay)).toBeCloseTo(range.lowest, 9);
        expect(at(range.warmestDay)).toBeCloseTo(range.highest, 9);
      }),
      { numRuns: 40 },
    );
  });

  it('of which the second is nothing are the one sine', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyPipeDepth, (wave, diffusivity, depth) => {
        fc.pre(wave.amplitude > 0.1);
        const none = { amplitude: kelvinDifference(0), coldestDay: dayOfYear(50) };
        const one = groundTemperatureRange({ wave, diffusivity, depth });
        const two = groundTemperatureRange({ wave, secondHarmonic: none, diffusivity, depth });
        expect(two.lowest).toBeCloseTo(one.lowest, 9);
        expect(two.highest).toBeCloseTo(one.highest, 9);
        const apart = Math.abs(two.coldestDay - one.coldestDay);
        expect(Math.min(apart, days.of(wave.period) - apart)).toBeLessThan(1e-5);
      }),
    );
  });
});

describe('temperatureSpells', () => {
  it('last as long as a count of hours says', () => {
    fc.assert(
      fc.property(surface, anyThreshold, ([wave, secondHarmonic, diffusivity, depth], temperature) => {
        const hours = hoursOf(wave, secondHarmonic, diffusivity, depth);
        const { duration, spells } = temperatureSpells({ wave, secondHarmonic, diffusivity, depth, side: 'below', temperature });
        const counted = hours.filter((hour) => hour < temperature).length / 8;
        // A count knows each end of a spell to three hours.
        expect(Math.abs(days.of(duration) - counted)).toBeLessThan(0.26 + 0.26 * spells.length);
        expect(spells.length).toBeLessThanOrEqual(2);
      }),
      { numRuns: 40 },
    );
  });

  it('share out the year between below and above', () => {
    fc.assert(
      fc.property(surface, anyThreshold, ([wave, secondHarmonic, diffusivity, depth], temperature) => {
        fc.pre(wave.amplitude > 0.01);
        const place = { wave, secondHarmonic, diffusivity, depth, temperature };
        const [below, above] = [temperatureSpells({ ...place, side: 'below' }), temperatureSpells({ ...place, side: 'above' })];
        expect(days.of(below.duration) + days.of(above.duration)).toBeCloseTo(days.of(wave.period), 6);
      }),
    );
  });

  it('begin and end at the temperature asked for', () => {
    fc.assert(
      fc.property(surface, anyThreshold, ([wave, secondHarmonic, diffusivity, depth], temperature) => {
        const { spells } = temperatureSpells({ wave, secondHarmonic, diffusivity, depth, side: 'above', temperature });
        for (const { start, end } of spells.filter((spell) => spell.end - spell.start < days.of(wave.period) - 1e-6)) {
          for (const day of [start, end]) {
            expect(groundTemperature({ wave, secondHarmonic, diffusivity, depth, day })).toBeCloseTo(temperature, 8);
          }
          for (const part of [0.01, 0.3, 0.5, 0.7, 0.99]) {
            const day = dayOfYear(start + part * (end - start));
            expect(groundTemperature({ wave, secondHarmonic, diffusivity, depth, day })).toBeGreaterThan(temperature - 1e-9);
          }
        }
      }),
    );
  });

  it('of one sine are those of its closed form', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.98, noNaN: true }), anyPipeDepth, (share, depth) => {
        const { lowest, amplitude, coldestDay } = groundTemperatureRange({ wave: temperate, diffusivity: loam, depth });
        const temperature = celsius(lowest + 2 * amplitude * share);
        const half = (365 / (2 * Math.PI)) * Math.acos(1 - 2 * share);
        const [spell] = temperatureSpells({ wave: temperate, diffusivity: loam, depth, side: 'below', temperature }).spells;
        expect((spell?.end ?? NaN) - (spell?.start ?? NaN)).toBeCloseTo(2 * half, 6);
        const start = ((((coldestDay - half - 1) % 365) + 365) % 365) + 1;
        expect(spell?.start).toBeCloseTo(start, 5);
      }),
    );
  });

  it('are the whole year, or none, beyond the range', () => {
    const place = { wave: temperate, diffusivity: loam, depth: metres(1) };
    const whole = temperatureSpells({ ...place, side: 'below', temperature: celsius(30) });
    expect(whole).toEqual({ spells: [{ start: expect.any(Number), end: expect.any(Number) }], duration: days(365) });
    expect((whole.spells[0]?.end ?? 0) - (whole.spells[0]?.start ?? 0)).toBeCloseTo(365, 9);
    expect(temperatureSpells({ ...place, side: 'above', temperature: celsius(30) })).toEqual({ spells: [], duration: 0 });
  });

  it('in the south come half a year later', () => {
    const south = { ...temperate, coldestDay: dayOfYear(36 + 182.5) };
    const place = { diffusivity: loam, depth: metres(1), side: 'below', temperature: celsius(5) } as const;
    const [here, there] = [temperate, south].map((wave) => temperatureSpells({ wave, ...place }).spells[0]?.start ?? NaN);
    expect((there ?? NaN) - (here ?? NaN)).toBeCloseTo(182.5, 6);
  });
});

describe('temperatureReach', () => {
  it('ends where the extreme is the temperature', () => {
    fc.assert(
      fc.property(
        anyWave,
        anySecond,
        anyDiffusivity,
        anyThreshold,
        fc.constantFrom('below' as const, 'above' as const),
        (wave, secondHarmonic, diffusivity, temperature, side) => {
          const found = temperatureReach({ wave, secondHarmonic, diffusivity, side, temperature });
          const range = groundTemperatureRange({ wave, secondHarmonic, diffusivity, depth: metres(0) });
          const sign = side === 'above' ? 1 : -1;
          const beyond = (value: number): boolean => sign * (value - temperature) > 0;
          if (found.reach === 'nowhere') expect(beyond(side === 'above' ? range.highest : range.lowest)).toBe(false);
          else if (found.reach === 'at every depth') expect(sign * (wave.mean - temperature)).toBeGreaterThanOrEqual(-1e-9);
          else {
            const there = groundTemperatureRange({ wave, secondHarmonic, diffusivity, depth: found.depth });
            expect(side === 'above' ? there.highest : there.lowest).toBeCloseTo(temperature, 8);
            expect(groundTemperature({ wave, secondHarmonic, diffusivity, depth: found.depth, day: found.day })).toBeCloseTo(temperature, 8);
          }
        },
      ),
    );
  });

  it('is the closed form for one sine', () => {
    const found = temperatureReach({ wave: temperate, diffusivity: loam, side: 'below', temperature: celsius(4) });
    if (found.reach !== 'to a depth') throw new Error(found.reach);
    expect(found.depth).toBeCloseTo(2.410219 * Math.log(12 / 6), 5);
  });
});

describe('depthOfSwing', () => {
  it('has the amplitude that was asked for', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, fc.double({ min: 0.001, max: 1, noNaN: true }), (wave, diffusivity, share) => {
        fc.pre(wave.amplitude > 0.01);
        const amplitude = kelvinDifference(share * wave.amplitude);
        const depth = depthOfSwing({ wave, diffusivity, amplitude });
        expect(groundTemperatureRange({ wave, diffusivity, depth }).amplitude).toBeCloseTo(amplitude, 9);
      }),
    );
  });

  it('is 4.6 damping depths for a hundredth, and refuses more than the surface has', () => {
    const depth = depthOfSwing({ wave: temperate, diffusivity: loam, amplitude: kelvinDifference(0.12) });
    expect(depth / 2.410219).toBeCloseTo(4.605, 3);
    expect(() => depthOfSwing({ wave: temperate, diffusivity: loam, amplitude: kelvinDifference(12.5) })).toThrow('amplitude');
  });
});
