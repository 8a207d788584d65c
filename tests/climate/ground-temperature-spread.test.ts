import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  groundTemperatureSpread,
  type GroundTemperatureSpreadInput,
  groundTemperatureSpreadInputShape,
  type SurfaceStraying,
} from '../../src/climate/index.js';
import { days, fraction, kelvinDifference, metres, squareMetresPerDay } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';
import { departures, jointWave, type JointWave, type SoilDay, soilDays, straying } from './records.js';
import { anyDepth, loam } from './waves.js';

const DEPTHS = [0.05, 0.1, 0.2, 0.5, 1];
const LENGTHS = [1, 5, 30, 90];
const PARTS = ['weatherStraying', 'seasonStraying', 'yearStraying'] as const;
const record = soilDays(loadFixture('uscrn-manhattan-daily'), DEPTHS);
const only = (row: readonly (number | undefined)[]): readonly number[] => row.flatMap((each) => (each === undefined ? [] : [each]));
const meanSquare = (row: readonly number[]): number => row.reduce((sum, each) => sum + each ** 2, 0) / row.length;
const places = DEPTHS.flatMap((depth) => LENGTHS.map((length) => ({ depth, length })));
const placed = ({ depth, length }: (typeof places)[number], { diffusivity }: JointWave) =>
  ({ depth: metres(depth), averagingTime: days(length), diffusivity: squareMetresPerDay(diffusivity) }) as const;

/** The straying of a surface, from the departures of a record from its wave: what the shipped numbers were made by. */
function calibrated(recorded: readonly SoilDay[], wave: JointWave, of?: (day: SoilDay) => boolean): SurfaceStraying {
  const none = { weatherStraying: kelvinDifference(0), seasonStraying: kelvinDifference(0), yearStraying: kelvinDifference(0) };
  const rows = places.map((place) => ({
    square: meanSquare(only(departures(recorded, { wave, ...place, ...(of && { of }) }))),
    shares: PARTS.map(
      (part) => groundTemperatureSpread({ ...placed(place, wave), straying: { ...none, [part]: kelvinDifference(1) } }).deviation ** 2,
    ),
  }));
  const [weatherStraying = 0, seasonStraying = 0, yearStraying = 0] = straying(rows).map((each) => kelvinDifference(each));
  return {
    weatherStraying: kelvinDifference(weatherStraying),
    seasonStraying: kelvinDifference(seasonStraying),
    yearStraying: kelvinDifference(yearStraying),
  };
}

describe('the spread at the station that it was measured at', () => {
  it('is what seven years of readings give', () => {
    const wave = jointWave(record);
    expect(wave.diffusivity / 86_400).toBeCloseTo(4.82e-7, 9);
    const { weatherStraying, seasonStraying, yearStraying } = calibrated(record, wave);
    expect(weatherStraying).toBeCloseTo(1.723, 2);
    expect(seasonStraying).toBeCloseTo(1.258, 2);
    expect(yearStraying).toBeCloseTo(0.998, 2);
    for (const place of places) {
      const measured = Math.sqrt(meanSquare(only(departures(record, { wave, ...place }))));
      const { deviation } = groundTemperatureSpread({ depth: metres(place.depth), averagingTime: days(place.length) });
      expect(Math.abs(deviation / measured - 1)).toBeLessThan(0.11);
    }
  });

  it.each([0.8, 0.9])('holds its share of %s with each year left out in turn, and is at most half again the least that would have', (coverage) => {
    const years = [...new Set(record.map(({ year }) => year))];
    expect(years).toHaveLength(7);
    const held = new Map(places.map((place) => [place, { absolute: [] as number[], inside: 0, allowance: 0 }]));
    for (const year of years) {
      const rest = record.filter((day) => day.year !== year);
      const wave = jointWave(rest);
      const known = calibrated(record, wave, (day) => day.year !== year);
      for (const [place, tally] of held) {
        const spread = groundTemperatureSpread({ ...placed(place, wave), coverage: fraction(coverage), straying: known, years: years.length - 1 });
        const left = departures(record, { wave, ...place }).filter((_, index) => record[index]?.year === year);
        const off = only(left).map(Math.abs);
        tally.absolute.push(...off);
        tally.inside += off.filter((each) => each <= spread.allowance).length;
        tally.allowance += spread.allowance / years.length;
      }
    }
    const ratios = [...held.values()].map(({ absolute, inside, allowance }) => {
      const least = [...absolute].sort((a, b) => a - b)[Math.ceil(coverage * absolute.length) - 1] ?? Number.NaN;
      return { share: inside / absolute.length, ratio: allowance / least };
    });
    expect(Math.min(...ratios.map(({ share }) => share))).toBeGreaterThanOrEqual(coverage);
    expect(Math.max(...ratios.map(({ share }) => share))).toBeLessThan(0.5 + coverage / 2 + 0.03);
    expect(Math.min(...ratios.map(({ ratio }) => ratio))).toBeGreaterThanOrEqual(1);
    expect(Math.max(...ratios.map(({ ratio }) => ratio))).toBeLessThanOrEqual(1.5);
  });
});

describe('the spread elsewhere', () => {
  const shareHeld = (name: string, depths: readonly number[], length: number): readonly number[] => {
    const elsewhere = soilDays(loadFixture(name), depths);
    const wave = jointWave(elsewhere);
    return depths.map((depth) => {
      const off = only(departures(elsewhere, { wave, depth, length })).map(Math.abs);
      const { allowance } = groundTemperatureSpread({
        depth: metres(depth),
        averagingTime: days(length),
        diffusivity: squareMetresPerDay(wave.diffusivity),
      });
      return off.filter((each) => each <= allowance).length / off.length;
    });
  };

  it('holds its share of one season of a well down to 2 m, and less at 2.5 m, where one wave does not fit all depths', () => {
    const shares = shareHeld('usgs-princeton-daily', [0.5, 1, 1.5, 2, 2.5], 5);
    for (const share of shares.slice(0, 4)) expect(share).toBeGreaterThan(0.8);
    expect(shares[4]).toBeGreaterThan(0.7);
    expect(shares[4]).toBeLessThan(0.8);
  });

  it('holds its share of a year with lasting snow about the wave of that same year', () => {
    for (const share of shareHeld('uscrn-sandstone-daily', DEPTHS, 5)) expect(share).toBeGreaterThan(0.8);
  });
});

const anyLength = fc.double({ min: 1, max: 365, noNaN: true }).map((length) => days(length));

describe('the spread', () => {
  it('is never wider deeper, over longer times, or with more years', () => {
    fc.assert(
      fc.property(anyDepth, anyDepth, anyLength, anyLength, (z1, z2, t1, t2) => {
        const at = (depth: typeof z1, averagingTime: typeof t1) => groundTemperatureSpread({ depth, averagingTime, diffusivity: loam });
        const [low, high] = z1 < z2 ? [z1, z2] : [z2, z1];
        const [short, long] = t1 < t2 ? [t1, t2] : [t2, t1];
        // But for the last digit.
        expect(at(high, short).deviation).toBeLessThanOrEqual(at(low, short).deviation * (1 + 1e-12));
        expect(at(low, long).deviation).toBeLessThanOrEqual(at(low, short).deviation * (1 + 1e-12));
        const { weatherStraying, seasonStraying, yearStraying, deviation, allowance, factor } = at(low, short);
        expect(Math.hypot(weatherStraying, seasonStraying, yearStraying)).toBeCloseTo(deviation, 12);
        expect(factor * deviation).toBeCloseTo(allowance, 12);
      }),
    );
  });

  it('is given with an allowance that grows with the coverage and shrinks with the years', () => {
    const place = { depth: metres(1), averagingTime: days(30) };
    const factor = (coverage: number, years: number): number => groundTemperatureSpread({ ...place, coverage: fraction(coverage), years }).factor;
    expect(factor(0.9, 7)).toBeGreaterThan(factor(0.8, 7));
    expect(factor(0.8, 3)).toBeGreaterThan(factor(0.8, 7));
    expect(factor(0.8, 100)).toBeCloseTo(1.2816, 1);
  });

  it('scales with the straying of the surface, which it is itself at no depth and over a moment of time', () => {
    const straying = { weatherStraying: kelvinDifference(3), seasonStraying: kelvinDifference(0), yearStraying: kelvinDifference(4) };
    const { deviation, weatherStraying } = groundTemperatureSpread({ depth: metres(0), averagingTime: days(1), straying });
    expect(deviation).toBeCloseTo(5, 1);
    expect(weatherStraying).toBeCloseTo(3 * (Math.sin(Math.PI / 25) / (Math.PI / 25)), 9);
    expect(groundTemperatureSpread({ depth: metres(0), averagingTime: days(25), straying }).weatherStraying).toBe(0);
  });

  it('refuses bad input by name', () => {
    const straying = { weatherStraying: kelvinDifference(2), seasonStraying: kelvinDifference(1), yearStraying: kelvinDifference(1) };
    refuses<GroundTemperatureSpreadInput>(groundTemperatureSpread, groundTemperatureSpreadInputShape, {
      depth: metres(1),
      averagingTime: days(30),
      coverage: fraction(0.8),
      diffusivity: loam,
      straying,
      years: 7,
    });
  });
});
