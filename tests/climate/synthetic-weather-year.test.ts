import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SyntheticWeatherYearInput, syntheticWeatherYear, syntheticWeatherYearInputShape } from '../../src/climate/index.js';
import {
  celsius,
  dayOfYear,
  days,
  hours,
  kelvinDays,
  kelvinDifference,
  type Temperature,
  type TemperatureDifference,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { temperate } from './waves.js';

const MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const sum = (row: Iterable<number>): number => [...row].reduce((total, each) => total + each, 0);
const differences = (row: readonly number[]): readonly number[] => row.map((each, index) => (row[(index + 1) % row.length] ?? Number.NaN) - each);
const monthOf = <T>(row: ArrayLike<T>, month: number): readonly T[] => {
  const start = 24 * sum(MONTHS.slice(0, month));
  return Array.from(row).slice(start, start + 24 * (MONTHS[month] ?? 0));
};
const meanOf = (row: readonly number[]): number => sum(row) / row.length;
function deviationOf(row: readonly number[]): number {
  const mean = meanOf(row);
  return Math.sqrt(meanOf(row.map((each) => (each - mean) ** 2)));
}
/** How far two rows of hours are apart at most. */
const apart = (a: readonly number[], b: readonly number[]): number => Math.max(...a.map((each, hour) => Math.abs(each - (b[hour] ?? Number.NaN))));

const chicago = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
const byMonths = { from: 'monthly-air', monthlyMeans: chicago } as const;
const air = { ...temperate, of: 'air' } as const;
const still = { amplitude: kelvinDifference(0) };
const evenSpread = (spread: number): readonly TemperatureDifference[] => MONTHS.map(() => kelvinDifference(spread));
const cold = { by: 'lowest', day: dayOfYear(25), duration: days(5), lowest: celsius(-20) } as const;
const hot = { by: 'highest', day: dayOfYear(200), duration: days(6), highest: celsius(36) } as const;
const temperaturesOf = (input: SyntheticWeatherYearInput): readonly number[] => [...syntheticWeatherYear(input).temperatures];

/** Monthly means of any place: a wave, and each month off it by up to 3 K. */
const anyMeans: fc.Arbitrary<readonly Temperature[]> = fc
  .tuple(between(-15, 22), between(0, 12), fc.array(between(-3, 3), { minLength: 12, maxLength: 12 }))
  .map(([mean, amplitude, off]) => off.map((each, month) => celsius(mean - amplitude * Math.cos(((month - 0.5) * Math.PI) / 6) + each)));
const anySpreads = fc.array(
  between(7, 10).map((spread) => kelvinDifference(spread)),
  { minLength: 12, maxLength: 12 },
);

describe('the course', () => {
  it('has the monthly means that are given, spread or not', () => {
    fc.assert(
      fc.property(anyMeans, fc.option(anySpreads, { nil: undefined }), (monthlyMeans, spread) => {
        const year = syntheticWeatherYear({ course: { from: 'monthly-air', monthlyMeans }, ...(spread === undefined ? {} : { spread }) });
        monthlyMeans.forEach((mean, month) => {
          expect(Math.abs(meanOf(monthOf(year.temperatures, month)) - mean)).toBeLessThan(1e-9);
          expect(Math.abs((year.monthlyMeans[month] ?? Number.NaN) - mean)).toBeLessThan(1e-9);
        });
        expect(year.monthlyShifts.every((shift) => shift === 0)).toBe(true);
        expect(year.mean).toBeCloseTo(meanOf([...year.temperatures]), 9);
      }),
      { numRuns: 40 },
    );
  });

  it('of a wave is its mean over each hour, by Simpson’s rule', () => {
    const at = (hour: number): number => air.mean - air.amplitude * Math.cos((2 * Math.PI * (1 + hour / 24 - air.coldestDay)) / 365);
    const course = temperaturesOf({ course: { from: 'air-wave', air }, dailySwing: still });
    for (const hour of [0, 839, 840, 4000, 8759]) expect(course[hour]).toBeCloseTo((at(hour) + 4 * at(hour + 0.5) + at(hour + 1)) / 6, 9);
    expect(meanOf(course)).toBeCloseTo(air.mean, 9);
  });

  it('comes back from the monthly means of a wave within 0.02 K of 12 K, wherever its coldest day is', () => {
    for (const coldestDay of [1, 18, 100, 200, 300]) {
      const wave = syntheticWeatherYear({ course: { from: 'air-wave', air: { ...air, coldestDay: dayOfYear(coldestDay) } }, dailySwing: still });
      const course = temperaturesOf({ course: { from: 'monthly-air', monthlyMeans: wave.monthlyMeans }, dailySwing: still });
      expect(apart(course, [...wave.temperatures])).toBeLessThan(0.02);
    }
  });

  it('is a parabola in each month, and bends no more sharply where two meet', () => {
    const course = temperaturesOf({ course: byMonths, dailySwing: still });
    const bends = differences(differences(course));
    for (const month of MONTHS.keys()) {
      // A bend is told from three hours; the last two of a month reach into the next.
      const own = monthOf(bends, month).slice(0, -2);
      expect(Math.max(...own) - Math.min(...own)).toBeLessThan(1e-11);
      const next = monthOf(bends, (month + 1) % 12)[0] ?? Number.NaN;
      const [low, high] = [Math.min(own[0] ?? Number.NaN, next), Math.max(own[0] ?? Number.NaN, next)];
      for (const bend of monthOf(bends, month).slice(-2)) {
        expect(bend).toBeGreaterThan(low - 1e-11);
        expect(bend).toBeLessThan(high + 1e-11);
      }
    }
  });

  it('is the flattest of all with these means', () => {
    const course = temperaturesOf({ course: byMonths, dailySwing: still });
    const slope = (row: readonly number[]): number => sum(differences(row).map((each) => each ** 2));
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 11 }), fc.integer({ min: 1, max: 9 }), between(0.1, 5), (month, periods, height) => {
        const start = 24 * sum(MONTHS.slice(0, month));
        const length = 24 * (MONTHS[month] ?? 0);
        const other = course.map((each, hour) =>
          hour < start || hour >= start + length ? each : each + height * Math.sin((2 * Math.PI * periods * (hour - start + 0.5)) / length),
        );
        expect(slope(other)).toBeGreaterThan(slope(course));
      }),
      { numRuns: 40 },
    );
  });

  it('shifts every hour with its means, and turns over with them', () => {
    fc.assert(
      fc.property(anyMeans, between(-5, 5), (monthlyMeans, by) => {
        const course = temperaturesOf({ course: { from: 'monthly-air', monthlyMeans }, dailySwing: still });
        const shifted = temperaturesOf({
          course: { from: 'monthly-air', monthlyMeans: monthlyMeans.map((mean) => celsius(by - mean)) },
          dailySwing: still,
        });
        expect(
          apart(
            shifted,
            course.map((each) => by - each),
          ),
        ).toBeLessThan(1e-9);
      }),
      { numRuns: 20 },
    );
  });

  it('of even months is even', () => {
    const course = temperaturesOf({ course: { from: 'monthly-air', monthlyMeans: MONTHS.map(() => celsius(12)) }, dailySwing: still });
    expect(
      apart(
        course,
        course.map(() => 12),
      ),
    ).toBeLessThan(1e-9);
  });
});

describe('the day', () => {
  const flat = { from: 'air-wave', air: { ...air, amplitude: kelvinDifference(0) } } as const;
  const day = (input: Partial<SyntheticWeatherYearInput>): readonly number[] => temperaturesOf({ course: flat, ...input }).slice(4800, 4824);

  it('is warmest at 15:00 and swings by 4 K where nothing else is said, and says so', () => {
    const swing = day({});
    expect(swing[14]).toBe(Math.max(...swing));
    expect(swing[15]).toBeCloseTo(swing[14] ?? Number.NaN, 9);
    // Mean of a cosine over half an hour to either side of a quarter past its top: the area below it between the two hours.
    expect(swing[14]).toBeCloseTo(10 + 4 * (Math.sin(Math.PI / 12) / (Math.PI / 12)), 9);
    const { findings, dailyAmplitudes } = syntheticWeatherYear({ course: flat });
    expect(findings.map(({ code }) => code)).toEqual(['daily-swing-assumed', 'no-cold-winter-used']);
    expect(dailyAmplitudes).toEqual(MONTHS.map(() => 4));
  });

  it('is that which is given', () => {
    const swing = day({ dailySwing: { amplitude: kelvinDifference(6), warmestHour: hours(13.5) } });
    expect(swing[13]).toBe(Math.max(...swing));
    expect(swing[1]).toBe(Math.min(...swing));
    expect(Math.sqrt(2) * deviationOf(swing)).toBeCloseTo(6 * (Math.sin(Math.PI / 24) / (Math.PI / 24)), 9);
    const said = syntheticWeatherYear({ course: flat, dailySwing: { amplitude: kelvinDifference(6) }, coldSpell: cold });
    expect(said.findings).toEqual([]);
    const midnight = (warmestHour: number): readonly number[] =>
      day({ dailySwing: { amplitude: kelvinDifference(6), warmestHour: hours(warmestHour) } });
    midnight(24).forEach((each, hour) => expect(each).toBeCloseTo(midnight(0)[hour] ?? Number.NaN, 9));
  });

  it('assumed swings by no more than the hours of its month spread', () => {
    const spread = evenSpread(6).with(1, kelvinDifference(2.5));
    const { dailyAmplitudes } = syntheticWeatherYear({ course: flat, spread });
    expect(dailyAmplitudes.slice(0, 3)).toEqual([4, 2.5, 4]);
  });
});

describe('the weather', () => {
  it('makes the hours of every month spread as they are said to', () => {
    fc.assert(
      fc.property(anyMeans, anySpreads, (monthlyMeans, spread) => {
        const year = syntheticWeatherYear({ course: { from: 'monthly-air', monthlyMeans }, spread });
        spread.forEach((each, month) => {
          expect(Math.abs(deviationOf(monthOf(year.temperatures, month)) - each)).toBeLessThan(1e-9);
          expect(Math.abs((year.spread[month] ?? Number.NaN) - each)).toBeLessThan(1e-9);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('leaves the months without a step between them, nor one at the end of the year', () => {
    fc.assert(
      fc.property(anyMeans, anySpreads, (monthlyMeans, spread) => {
        const steps = differences(temperaturesOf({ course: { from: 'monthly-air', monthlyMeans }, dailySwing: still, spread })).map(Math.abs);
        const borders = MONTHS.map((_, month) => 24 * sum(MONTHS.slice(0, month + 1)) - 1);
        // The weather is steepest where it begins, at the borders themselves; the hours beside them have all but the same slope.
        for (const hour of borders) {
          const beside = [steps[hour - 1] ?? Number.NaN, steps[(hour + 1) % steps.length] ?? Number.NaN];
          expect(steps[hour]).toBeLessThanOrEqual(1.01 * Math.max(...beside));
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is the same each time', () => {
    const input = { course: byMonths, spread: evenSpread(6), coldSpell: cold, hotSpell: hot };
    expect(syntheticWeatherYear(input)).toEqual(syntheticWeatherYear(input));
  });

  it('cannot spread less than course and day do', () => {
    expect(() => syntheticWeatherYear({ course: byMonths, dailySwing: { amplitude: kelvinDifference(6) }, spread: evenSpread(4) })).toThrow(
      'spread.0',
    );
    expect(() => syntheticWeatherYear({ course: byMonths, spread: evenSpread(6).slice(1) })).toThrow('exactly 12');
  });
});

describe('a spell', () => {
  const before = temperaturesOf({ course: byMonths });

  it('has its coldest or hottest hour as wanted, and touches no hour beside', () => {
    fc.assert(
      fc.property(between(1, 365.99), between(1, 20), between(-32, -10), (day, duration, lowest) => {
        const coldSpell = { by: 'lowest', day: dayOfYear(day), duration: days(duration), lowest: celsius(lowest) } as const;
        const { temperatures, coldSpell: laid } = syntheticWeatherYear({ course: byMonths, coldSpell });
        const changed = [...temperatures.keys()].filter((hour) => temperatures[hour] !== before[hour]);
        expect(Math.min(...changed.map((hour) => temperatures[hour] ?? Number.NaN))).toBeCloseTo(lowest, 9);
        expect(laid?.reached).toBeCloseTo(lowest, 9);
        expect(changed.length).toBeLessThanOrEqual(Math.ceil(24 * duration) + 1);
        for (const hour of changed) expect((hour + 1 - 24 * (day - 1) + 8760) % 8760).toBeLessThanOrEqual(24 * duration + 1);
      }),
      { numRuns: 60 },
    );
    const { temperatures } = syntheticWeatherYear({ course: byMonths, hotSpell: hot });
    expect(Math.max(...temperatures)).toBeCloseTo(36, 9);
  });

  it('takes from the year the degree days that it says, over New Year as well', () => {
    fc.assert(
      fc.property(between(1, 365.99), between(1, 60), between(0, 30), (day, duration, departure) => {
        const coldSpell = { by: 'departure', day: dayOfYear(day), duration: days(duration), departure: kelvinDifference(departure) } as const;
        const year = syntheticWeatherYear({ course: byMonths, coldSpell });
        const taken = (sum(before) - sum(year.temperatures)) / 24;
        expect(taken).toBeCloseTo(kelvinDays.of(year.coldSpell?.degreeDays ?? kelvinDays(Number.NaN)), 6);
        expect(taken).toBeCloseTo(departure * (duration - Math.min(1, duration / 2)), 6);
        const shifts = year.monthlyShifts.map((shift, month) => shift * (MONTHS[month] ?? 0));
        expect(-sum(shifts)).toBeCloseTo(taken, 6);
      }),
      { numRuns: 60 },
    );
  });

  it('comes and goes within a day, as half a wave', () => {
    const coldSpell = { by: 'departure', day: dayOfYear(25), duration: days(5), departure: kelvinDifference(8) } as const;
    const year = temperaturesOf({ course: byMonths, coldSpell });
    const departure = (hour: number): number => (before[24 * 24 + hour] ?? Number.NaN) - (year[24 * 24 + hour] ?? Number.NaN);
    // The integral of 4 (1 − cos πx), from hour 5 to hour 6 of 24.
    expect(departure(5)).toBeCloseTo(4 - (4 * 24 * (Math.sin(Math.PI / 4) - Math.sin((5 * Math.PI) / 24))) / Math.PI, 9);
    expect(departure(11) + departure(12)).toBeCloseTo(8, 9);
    for (const hour of [24, 60, 95]) expect(departure(hour)).toBeCloseTo(8, 9);
    for (const hour of [0, 7, 20]) expect(departure(hour)).toBeCloseTo(departure(119 - hour), 9);
    expect([departure(-1), departure(120)]).toEqual([0, 0]);
  });

  it('is given with what it moves, and with the deeper departure for the lower extreme', () => {
    const depth = (lowest: number): number =>
      syntheticWeatherYear({ course: byMonths, coldSpell: { ...cold, lowest: celsius(lowest) } }).coldSpell?.departure ?? Number.NaN;
    expect(depth(-25)).toBeGreaterThan(depth(-20));
    const year = syntheticWeatherYear({ course: byMonths, coldSpell: cold, hotSpell: hot });
    const moved = year.monthlyShifts.map((shift) => Math.sign(shift));
    expect(moved).toEqual([-1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0]);
    expect(year.temperatures[year.lowestHour]).toBe(year.lowest);
    expect(year.temperatures[year.highestHour]).toBe(year.highest);
    expect([year.lowest, year.highest]).toEqual([Math.min(...year.temperatures), Math.max(...year.temperatures)]);
    expect(year.findings.map(({ code }) => code)).toEqual(['daily-swing-assumed']);
  });

  it('is refused where it would have to warm, goes too far, or meets the other', () => {
    const yearWith = (spells: Partial<SyntheticWeatherYearInput>) => () => syntheticWeatherYear({ course: byMonths, ...spells });
    expect(yearWith({ coldSpell: { ...cold, lowest: celsius(5) } })).toThrow('coldSpell.lowest');
    expect(yearWith({ coldSpell: { ...cold, lowest: celsius(-90) } })).toThrow('coldSpell.lowest');
    expect(yearWith({ hotSpell: { ...hot, highest: celsius(10) } })).toThrow('hotSpell.highest');
    expect(yearWith({ coldSpell: cold, hotSpell: { ...hot, day: dayOfYear(28) } })).toThrow('hotSpell.day');
    expect(yearWith({ coldSpell: { ...cold, day: dayOfYear(364) }, hotSpell: { ...hot, day: dayOfYear(2) } })).toThrow('hotSpell.day');
  });
});

describe('a year', () => {
  it('is refused where it cannot be', () => {
    expect(() => syntheticWeatherYear({ course: { from: 'air-wave', air: temperate } })).toThrow('course.air.of');
    expect(() => syntheticWeatherYear({ course: { from: 'air-wave', air: { ...air, period: days(365.25) } } })).toThrow('course.air.period');
    const hottest = { from: 'monthly-air', monthlyMeans: MONTHS.map(() => celsius(50)) } as const;
    expect(() => syntheticWeatherYear({ course: hottest, spread: evenSpread(20) })).toThrow('course');
  });

  it('refuses bad input by name', () => {
    const departure = { by: 'departure', day: dayOfYear(20), duration: days(4), departure: kelvinDifference(9) } as const;
    const dailySwing = { amplitude: kelvinDifference(4), warmestHour: hours(15) };
    refuses<SyntheticWeatherYearInput>(
      syntheticWeatherYear,
      syntheticWeatherYearInputShape,
      { course: byMonths, dailySwing, spread: evenSpread(6), coldSpell: cold, hotSpell: hot },
      { more: [{ course: { from: 'air-wave', air }, coldSpell: departure, hotSpell: { ...departure, day: dayOfYear(210) } }] },
    );
  });
});
