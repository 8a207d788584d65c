import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { burchChristensenColdWater, coldWaterMonths, hotWaterDemand } from '../../src/building/index.js';
import { groundTemperature } from '../../src/climate/index.js';
import { type AnnualWave, annualWaveShape } from '../../src/states/index.js';
import {
  celsius,
  dayOfYear,
  days,
  fahrenheit,
  fahrenheitDifference,
  kelvinDifference,
  metres,
  squareMetresPerDay,
  type DayOfYear,
  type Temperature,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { household } from './hot-water-house.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Mean of the wave over a span of days, by Simpson's rule. */
const integrated = (mean: number, amplitude: number, coldest: number, from: number, to: number): number => {
  const steps = 2000;
  let sum = 0;
  for (let index = 0; index <= steps; index += 1) {
    const day = from + ((to - from) * index) / steps;
    const weight = index === 0 || index === steps ? 1 : index % 2 === 1 ? 4 : 2;
    sum += weight * (mean - amplitude * Math.cos((2 * Math.PI * (day - coldest)) / 365));
  }
  return sum / (3 * steps);
};

describe('cold water as a wave', () => {
  it('has the monthly means of the integral', () => {
    fc.assert(
      fc.property(between(6, 28), between(0, 6), between(1, 366), (mean, amplitude, coldest) => {
        const coldWater = {
          from: 'wave',
          mean: celsius(mean),
          amplitude: kelvinDifference(amplitude),
          coldestDay: dayOfYear(coldest),
        } as const;
        let first = 1;
        hotWaterDemand({ ...household, coldWater }).months.forEach(({ meanColdWater }, index) => {
          const next = first + Number(DAYS[index]);
          expect(Math.abs(meanColdWater - integrated(mean, amplitude, coldest, first, next))).toBeLessThan(1e-10);
          first = next;
        });
      }),
      { numRuns: 20 },
    );
  });
});

describe('coldWaterMonths', () => {
  it('takes the ground at the depth of the main, later and weaker than the surface', () => {
    const wave = {
      of: 'ground surface',
      mean: celsius(11),
      amplitude: kelvinDifference(10),
      coldestDay: dayOfYear(20),
      period: days(365),
    } as const;
    const at = (depth: number): readonly number[] =>
      coldWaterMonths((day) => groundTemperature({ wave, diffusivity: squareMetresPerDay(0.05), depth: metres(depth), day })).monthlyMeans;
    expect(Math.min(...at(1.2))).toBeGreaterThan(Math.min(...at(0.1)));
    expect(at(0.1).indexOf(Math.min(...at(0.1)))).toBe(0);
    expect(at(1.2).indexOf(Math.min(...at(1.2)))).toBe(1);
    expect(DAYS.reduce((sum, count, index) => sum + count * Number(at(1.2)[index]), 0) / 365).toBeCloseTo(11, 6);
  });

  it('refuses a course that is none, or that no main has', () => {
    expect(() => coldWaterMonths(undefined as never)).toThrow('temperatureAt');
    for (const bad of [Number.NaN, Infinity, -0.1, 34.1, undefined, 'cold'])
      expect(() => coldWaterMonths(() => bad as Temperature)).toThrow('temperatureAt');
    expect(() => coldWaterMonths((day: DayOfYear) => celsius(day > 300 ? -1 : 5))).toThrow('depth');
  });
});

describe('burchChristensenColdWater', () => {
  const air = { of: 'air', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(15), period: days(365) } as const;

  it('is 6 °F warmer and of 0.4 of the swing where the abstract says so, at a mean of 44 °F', () => {
    const { mean, amplitude, coldestDay } = burchChristensenColdWater({ ...air, mean: fahrenheit(44), amplitude: fahrenheitDifference(20) });
    expect(fahrenheit.of(mean)).toBeCloseTo(50, 10);
    expect(fahrenheitDifference.of(amplitude)).toBeCloseTo(8, 10);
    expect(coldestDay).toBeCloseTo(50, 10);
  });

  it('agrees with the form written in Fahrenheit as it is recalled', () => {
    for (const t of [33, 50, 65, 70]) {
      const water = burchChristensenColdWater({ ...air, mean: fahrenheit(t) });
      const swing = 12 * 1.8 * (0.4 + 0.01 * (t - 44));
      const form = (day: number): number => t + 6 + swing * Math.sin(((0.986301369863 * (day - 15 - (35 - (t - 44))) - 90) * Math.PI) / 180);
      for (const day of [1, 100, 200, 300])
        expect(1.8 * (water.mean - water.amplitude * Math.cos((2 * Math.PI * (day - water.coldestDay)) / 365)) + 32).toBeCloseTo(form(day), 6);
    }
  });

  it('keeps its coldest day within the year', () => {
    const { coldestDay } = burchChristensenColdWater({ ...air, coldestDay: dayOfYear(350) });
    expect(coldestDay).toBeCloseTo(350 + 29 - 365, 9);
  });

  it('refuses bad input by name', () => {
    refuses<{ readonly air: AnnualWave }>(({ air: wave }) => burchChristensenColdWater(wave), { air: annualWaveShape }, { air });
    expect(() => burchChristensenColdWater({ ...air, of: 'ground surface' })).toThrow('air.of');
    expect(() => burchChristensenColdWater({ ...air, mean: celsius(0), amplitude: kelvinDifference(20) })).toThrow('amplitude');
  });
});
