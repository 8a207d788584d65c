import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { returnLevel, type ReturnLevelInput, returnLevelInputShape } from '../../src/climate/index.js';
import { celsius, fahrenheit } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';

/** Mean of December to February at Kew, 51 winters. */
const kew = loadFixture('kew-winters').rows.map((row) => {
  const months = ['december_F', 'january_F', 'february_F'].map((column) => fahrenheit(row.number(column)));
  const [december = 0, january = 0, february = 0] = months;
  return celsius((31 * december + 31 * january + 28.25 * february) / 90.25);
});

describe('the level of one winter in ten', () => {
  it('is passed by no more than that of the other winters of a place, from five to ten winters in a row', () => {
    const passed = [5, 6, 10].map((count) => {
      const shares = kew.slice(count).map((_, start) => {
        const { seasonLevel, certainLevel } = returnLevel({ season: 'winter', seasonValues: kew.slice(start, start + count) });
        const others = [...kew.slice(0, start), ...kew.slice(start + count)];
        const below = (limit: number): number => others.filter((each) => each < limit).length / others.length;
        return [below(seasonLevel), below(certainLevel)] as const;
      });
      const mean = (side: 0 | 1): number => shares.reduce((sum, share) => sum + share[side], 0) / shares.length;
      return [mean(0), mean(1)] as const;
    });
    for (const [allowedFor, certain] of passed) {
      expect(allowedFor).toBeGreaterThan(0.065);
      expect(allowedFor).toBeLessThan(0.085);
      expect(certain).toBeGreaterThan(0.1);
    }
  });

  it('of 51 winters is nearly that by rank', () => {
    const { seasonLevel, rankedLevel, deviation, farthest, farthestReturnPeriod } = returnLevel({ season: 'winter', seasonValues: kew });
    expect(deviation).toBeCloseTo(1.37, 2);
    expect(Math.abs(seasonLevel - (rankedLevel ?? NaN))).toBeLessThan(0.3);
    expect([farthest, farthestReturnPeriod]).toEqual([Math.min(...kew), 52]);
  });
});

describe('what is assumed where no winters are known', () => {
  it('has the coldest month of 51 winters as far below the course, and as spread, as judged', () => {
    const months = ['december_F', 'january_F', 'february_F'].map((column) =>
      loadFixture('kew-winters').rows.map((row) => fahrenheit(row.number(column))),
    );
    const coldest = kew.map((_, winter) => celsius(Math.min(...months.map((month) => month[winter] ?? NaN))));
    const course = Math.min(...months.map((month) => month.reduce((sum, each) => sum + each, 0) / month.length));
    const [ofMonths, ofSeasons] = [coldest, kew].map((seasonValues) => returnLevel({ season: 'winter', seasonValues }));
    const further = (course - (ofMonths?.mean ?? NaN)) / (ofSeasons?.deviation ?? NaN);
    expect(further).toBeCloseTo(0.76, 2);
    expect((ofMonths?.deviation ?? NaN) / (ofSeasons?.deviation ?? NaN)).toBeCloseTo(1.41, 2);
  });
});

const values = fc.array(fc.double({ min: -30, max: 30, noNaN: true }), { minLength: 3, maxLength: 40 });
const level = (season: 'winter' | 'summer', list: readonly number[], returnPeriod: number): number =>
  returnLevel({ season, seasonValues: list.map((each) => celsius(each)), returnPeriod }).seasonLevel;

describe('a level', () => {
  it('shifts and scales with the seasons, and is mirrored on the other side', () => {
    fc.assert(
      fc.property(values, fc.integer({ min: 2, max: 100 }), (list, period) => {
        const at = level('winter', list, period);
        expect(
          level(
            'winter',
            list.map((each) => 2 + each / 2),
            period,
          ),
        ).toBeCloseTo(2 + at / 2, 6);
        expect(
          level(
            'summer',
            list.map((each) => -each),
            period,
          ),
        ).toBeCloseTo(-at, 6);
        expect(level('winter', list, Math.min(100, period + 1))).toBeLessThanOrEqual(at + 1e-9);
      }),
    );
  });

  it('has a rank only where there are seasons enough', () => {
    const seasonValues = [5, 3, 1, 2, 4].map((each) => celsius(each));
    expect(returnLevel({ season: 'winter', seasonValues, returnPeriod: 10 }).rankedLevel).toBeUndefined();
    expect(returnLevel({ season: 'winter', seasonValues, returnPeriod: 6 }).rankedLevel).toBe(1);
    expect(returnLevel({ season: 'winter', seasonValues, returnPeriod: 4 }).rankedLevel).toBe(1.5);
    expect(returnLevel({ season: 'summer', seasonValues, returnPeriod: 2 }).rankedLevel).toBe(3);
    expect(() => returnLevel({ season: 'winter', seasonValues: seasonValues.slice(3) })).toThrow('seasonValues');
  });

  it('refuses bad input by name', () => {
    const seasonValues = [1, 2, 4].map((each) => celsius(each));
    refuses<ReturnLevelInput>(returnLevel, returnLevelInputShape, { season: 'winter', seasonValues, returnPeriod: 10 });
  });
});
