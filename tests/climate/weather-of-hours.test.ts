import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { syntheticWeatherYear, weatherOfHours } from '../../src/climate/index.js';
import { celsius, kelvinDifference } from '../../src/units/index.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const monthlyMeans = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));

describe('what a year of hours tells', () => {
  it('is what a made year was made of, but for what weather adds to the mean day', () => {
    fc.assert(
      fc.property(fc.array(between(7, 10), { minLength: 12, maxLength: 12 }), (spreads) => {
        const spread = spreads.map((each) => kelvinDifference(each));
        const { temperatures } = syntheticWeatherYear({ course: { from: 'monthly-air', monthlyMeans }, spread });
        const told = weatherOfHours(temperatures);
        told.monthlyMeans.forEach((mean, month) => expect(mean).toBeCloseTo(monthlyMeans[month] ?? NaN, 9));
        told.spread.forEach((each, month) => expect(each).toBeCloseTo(spreads[month] ?? NaN, 9));
        expect(told.dailySwing.amplitude).toBeCloseTo(4, 1);
        expect(told.dailySwing.warmestHour).toBeCloseTo(15 * 3600, -3);
      }),
      { numRuns: 20 },
    );
  });

  it('makes a year again, also where a month leaves less to the day than the year has', () => {
    fc.assert(
      fc.property(fc.array(between(0.5, 1), { minLength: 200, maxLength: 200 }), between(4, 10), between(0, 8), (noise, wild, swing) => {
        const year = Float64Array.from({ length: 8760 }, (_, hour) => {
          const course = 10 - 10 * Math.cos((2 * Math.PI * hour) / 8760);
          return (
            course +
            swing * Math.cos((2 * Math.PI * (hour - 15)) / 24) +
            wild * (-1) ** Math.floor(hour / 72) * (noise[Math.floor(hour / 72) % 200] ?? 0)
          );
        });
        const { dailySwing, ...told } = weatherOfHours(year);
        const made = syntheticWeatherYear({
          course: { from: 'monthly-air', monthlyMeans: told.monthlyMeans },
          dailySwing,
          spread: told.spread,
        });
        made.monthlyMeans.forEach((mean, month) => expect(mean).toBeCloseTo(told.monthlyMeans[month] ?? NaN, 6));
      }),
      { numRuns: 30 },
    );
  });

  it('refuses hours that cannot be, with their place', () => {
    // Faults of a typed array, by hand: `refuses` walks shapes of lists, and the list must be 8760 long.
    const year = new Float64Array(8760).fill(8);
    const faulty = (value: number): Float64Array => year.map((each, hour) => (hour === 17 ? value : each));
    for (const value of [NaN, Infinity, -Infinity, 1e308, 66, -96]) expect(() => weatherOfHours(faulty(value))).toThrow('temperatures.17');
    expect(() => weatherOfHours(new Float64Array(8784))).toThrow('29 February');
    expect(() => weatherOfHours([])).toThrow('temperatures');
  });
});
