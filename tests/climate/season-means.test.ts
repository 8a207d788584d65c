import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DailyAir, type RecordedSeason, seasonMeans, type SeasonMeansInput, seasonMeansInputShape } from '../../src/climate/index.js';
import { celsius, dayOfYear } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { airDays } from './records.js';

const record = airDays('uscrn-manhattan-daily');
const valuesOf = ({ fiveDays, thirtyDays, ninetyDays }: RecordedSeason): readonly number[] => [fiveDays, thirtyDays, ninetyDays];
const mirrored = (days: readonly DailyAir[]): readonly DailyAir[] => days.map((day) => ({ ...day, mean: celsius(20 - day.mean) }));

/** Three years of a plain wave, coldest on the given day. */
const wave = (coldest: number, extra: (year: number, day: number) => number = () => 0): readonly DailyAir[] =>
  [2010, 2011, 2012].flatMap((year) =>
    Array.from({ length: year === 2012 ? 366 : 365 }, (_, index) => ({
      year,
      day: dayOfYear(index + 1),
      mean: celsius(10 - 12 * Math.cos((2 * Math.PI * (index + 1 - coldest)) / 365.25) + extra(year, index + 1)),
    })),
  );

describe('the seasons of a record', () => {
  it('are the whole ones, with what is missing said', () => {
    const winters = seasonMeans({ season: 'winter', days: record });
    expect(winters.map(({ year }) => year)).toEqual([2011, 2012, 2013, 2014, 2015, 2016]);
    expect(winters.map(({ missingDays }) => missingDays)).toEqual([1, 12, 0, 1, 1, 3]);
    expect(seasonMeans({ season: 'summer', days: record })).toHaveLength(7);
  });

  it('are those of the mirror image on the other side', () => {
    const [winters, summers] = [seasonMeans({ season: 'winter', days: record }), seasonMeans({ season: 'summer', days: mirrored(record) })];
    expect(summers.map(({ year }) => year)).toEqual(winters.map(({ year }) => year));
    winters.forEach((winter, index) => {
      const summer = summers[index];
      valuesOf(winter).forEach((value, row) => expect(20 - value).toBeCloseTo(summer === undefined ? NaN : (valuesOf(summer)[row] ?? NaN), 9));
    });
  });

  it('lie around July on the other half of the earth, and around New Year without being cut', () => {
    const southern = seasonMeans({ season: 'winter', days: wave(196, (year, day) => (year === 2011 && day === 200 ? -10 : 0)) });
    expect(southern.map(({ year }) => year)).toEqual([2010, 2011, 2012]);
    const drop = (southern[0]?.fiveDays ?? NaN) - (southern[1]?.fiveDays ?? NaN);
    expect(drop).toBeCloseTo(2, 1);
    const turn = seasonMeans({
      season: 'winter',
      days: wave(1, (year, day) => ((year === 2011 && day >= 364) || (year === 2012 && day <= 3) ? -5 : 0)),
    });
    const spell = turn.find(({ year }) => year === 2012);
    expect((turn.find(({ year }) => year === 2011)?.fiveDays ?? NaN) - (spell?.fiveDays ?? NaN)).toBeCloseTo(5, 1);
  });

  it('of one wave have the means of the wave', () => {
    const [first] = seasonMeans({ season: 'winter', days: wave(20) });
    const over = (length: number): number =>
      10 - (12 * Math.sin((Math.PI * length) / 365.25)) / ((365.25 * Math.sin(Math.PI / 365.25) * length) / 365.25);
    expect(first?.thirtyDays).toBeCloseTo(over(30), 1);
    expect(first?.ninetyDays).toBeCloseTo(over(90), 1);
  });

  it('are no warmer with colder days', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: record.length - 1 }), fc.double({ min: 0, max: 20, noNaN: true }), (index, by) => {
        const colder = record.map((day, at) => (at === index ? { ...day, mean: celsius(day.mean - by) } : day));
        const [before, after] = [seasonMeans({ season: 'winter', days: record }), seasonMeans({ season: 'winter', days: colder })];
        before.forEach((season, at) => {
          const other = after[at];
          valuesOf(season).forEach((value, row) => expect(other === undefined ? NaN : valuesOf(other)[row]).toBeLessThanOrEqual(value + 1e-9));
        });
      }),
      { numRuns: 20 },
    );
  });
});

describe('days that cannot be', () => {
  const days = wave(20);

  it('are refused: out of order, twice, between two days, or too few', () => {
    const [first, second] = days;
    if (first === undefined || second === undefined) throw new Error('three years of days');
    const run = (list: readonly DailyAir[]) => () => seasonMeans({ season: 'winter', days: list });
    expect(run([second, first, ...days.slice(2)])).toThrow('days.1.day');
    expect(run([first, first, ...days.slice(1)])).toThrow('days.1.day');
    expect(run([{ ...first, day: dayOfYear(1.5) }, ...days.slice(1)])).toThrow('days.0.day');
    expect(run(days.slice(0, 100))).toThrow('a whole season');
    expect(run(days.filter(({ day }) => day % 5 !== 0))).toThrow('a whole season');
  });

  it('are refused by name', () => {
    // Every fault of one day in each: feeding those of all days would take the same ways a thousand times.
    const at = 400;
    const [before, after] = [days.slice(0, at), days.slice(at + 1)];
    const one = days.slice(at, at + 1);
    const run = ({ season, days: middle }: SeasonMeansInput) => {
      const whole = Array.isArray(middle) && middle.length > 0 ? [...middle, ...after] : middle;
      return seasonMeans({ season, days: whole });
    };
    expect(before).toHaveLength(at);
    refuses<SeasonMeansInput>(run, seasonMeansInputShape, { season: 'winter', days: one });
  });
});
