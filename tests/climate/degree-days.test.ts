import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binRun, energySignature, hourlyLoads } from '../../src/building/index.js';
import {
  type AirReadings,
  degreeDays,
  designFreezingIndex,
  designTemperatures,
  exceededTemperature,
  freezingIndex,
  monthlyDegreeDays,
  monthlyFreezingIndex,
  temperatureBins,
} from '../../src/climate/index.js';
import { describeFinding } from '../../src/report/index.js';
import {
  celsius,
  days,
  fahrenheit,
  fahrenheitDays,
  fahrenheitDifference,
  fraction,
  hours,
  kelvinDays,
  kelvinDifference,
  kilowatts,
} from '../../src/units/index.js';
import { loadFixture } from '../support/fixture.js';

const temperature = fc.double({ min: -40, max: 40, noNaN: true }).map((t) => celsius(t));
const daily = fc.array(temperature, { minLength: 1, maxLength: 60 });
const wholeDays = fc.array(fc.array(temperature, { minLength: 4, maxLength: 4 }), { minLength: 1, maxLength: 20 }).map((each) => each.flat());
const base = fc.double({ min: -20, max: 30, noNaN: true }).map((t) => celsius(t));
const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
const step = days(1);
const quarter = hours(6);

const chicago = loadFixture('weather-dry-bulbs').rows.map((row) => celsius(row.number('USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw')));
const year: AirReadings = { temperatures: chicago, step: hours(1) };

describe('degreeDays', () => {
  it('differ between heating and cooling by days times base less mean', () => {
    fc.assert(
      fc.property(wholeDays, base, (temperatures, from) => {
        for (const counting of ['daily means', 'every step'] as const) {
          const { heating, cooling } = degreeDays({ temperatures, step: quarter, base: from, counting });
          expect(heating - cooling).toBeCloseTo((from * temperatures.length - total(temperatures)) / 4, 7);
        }
      }),
    );
  });
  it('are no fewer counted step by step than by daily means', () => {
    fc.assert(
      fc.property(wholeDays, base, (temperatures, from) => {
        const of = (counting: 'daily means' | 'every step'): number => degreeDays({ temperatures, step: quarter, base: from, counting }).heating;
        expect(of('every step')).toBeGreaterThanOrEqual(of('daily means') - 1e-9);
      }),
    );
  });
  it('are the same from hours as from their daily means, and in either unit system', () => {
    const means = Array.from({ length: 365 }, (_, day) => celsius(total(chicago.slice(24 * day, 24 * day + 24)) / 24));
    const from = fahrenheit(65);
    expect(degreeDays({ temperatures: means, step, base: from }).heating).toBeCloseTo(degreeDays({ ...year, base: from }).heating, 6);
    expect(fahrenheitDays.of(degreeDays({ ...year, base: from }).heating)).toBeCloseTo(1.8 * degreeDays({ ...year, base: from }).heating, 6);
  });
  it('take a series in either form', () => {
    const series = { temperatures: Float64Array.from(chicago), step: hours(1) };
    expect(degreeDays({ ...series, base: celsius(18) })).toEqual(degreeDays({ ...year, base: celsius(18) }));
  });
  it('refuse a cut day, a step that does not fit a day, and extremes of daily means', () => {
    const temperatures = [1, 2, 3].map((t) => celsius(t));
    expect(() => degreeDays({ temperatures, step: hours(12), base: celsius(18) })).toThrow('whole days');
    expect(() => degreeDays({ temperatures, step: hours(7), base: celsius(18) })).toThrow('a whole part of one');
    expect(() => degreeDays({ temperatures, step, base: celsius(18), counting: 'daily extremes' })).toThrow('no extremes');
    expect(() => degreeDays({ temperatures: new Float64Array(0), step, base: celsius(18) })).toThrow('temperatures');
  });
});

describe('monthlyDegreeDays', () => {
  const spread = (sigma: number): readonly ReturnType<typeof kelvinDifference>[] => Array.from({ length: 12 }, () => kelvinDifference(sigma));
  it('keep heating less cooling, and grow with the spread', () => {
    fc.assert(
      fc.property(
        fc.array(temperature, { minLength: 12, maxLength: 12 }),
        base,
        fc.double({ min: 0, max: 15, noNaN: true }),
        (means, from, sigma) => {
          const [none, some, more] = [undefined, spread(sigma), spread(2 * sigma)].map((each) =>
            monthlyDegreeDays({ monthlyMeans: means, base: from, ...(each === undefined ? {} : { spread: each }) }),
          );
          expect((some?.heating ?? 0) - (some?.cooling ?? 0)).toBeCloseTo((none?.heating ?? 0) - (none?.cooling ?? 0), 7);
          expect(some?.heating).toBeGreaterThanOrEqual((none?.heating ?? 0) - 1e-9);
          expect(more?.heating).toBeGreaterThanOrEqual((some?.heating ?? 0) - 1e-9);
        },
      ),
    );
  });
  it('come near the days themselves with their spread, and below them without', () => {
    const row = loadFixture('load-weather-checks').rows.filter((each) => each.text('station').startsWith('Chicago'));
    const monthlyMeans = row.map((each) => celsius(each.number('mean_C')));
    const known = row.map((each) => kelvinDifference(each.number('sigma_daily_mean_K')));
    const [from, counted] = [celsius(18.3), 3505.64];
    expect(Math.abs(monthlyDegreeDays({ monthlyMeans, spread: known, base: from }).heating / counted - 1)).toBeLessThan(0.007);
    expect(monthlyDegreeDays({ monthlyMeans, base: from }).heating).toBeLessThan(counted);
  });
});

describe('temperatureBins', () => {
  it('keep time and mean, each within its edges', () => {
    fc.assert(
      fc.property(daily, fc.double({ min: 0.2, max: 20, noNaN: true }), base, (temperatures, width, anchor) => {
        const bins = temperatureBins({ temperatures, step, binWidth: kelvinDifference(width), anchor });
        expect(total(bins.map(({ time }) => time))).toBeCloseTo(temperatures.length * step, 6);
        expect(total(bins.map(({ time, outdoor }) => time * outdoor)) / step).toBeCloseTo(total(temperatures), 6);
        for (const { lowerEdge, upperEdge, outdoor } of bins) {
          expect(outdoor).toBeGreaterThanOrEqual(lowerEdge - 1e-6);
          expect(outdoor).toBeLessThanOrEqual(upperEdge + 1e-6);
        }
        expect(bins.map(({ lowerEdge }) => lowerEdge)).toEqual(bins.map(({ lowerEdge }) => lowerEdge).sort((a, b) => a - b));
      }),
    );
  });
  it('of 5 °F lie on whole degrees of that scale', () => {
    const bins = temperatureBins({ ...year, binWidth: fahrenheitDifference(5), anchor: fahrenheit(0) });
    for (const { lowerEdge } of bins) expect(fahrenheit.of(lowerEdge) / 5).toBeCloseTo(Math.round(fahrenheit.of(lowerEdge) / 5), 9);
  });
  it('give a building nearly the heat of the hours', () => {
    const house = { designLoad: kilowatts(12), designOutdoor: celsius(-20), indoor: celsius(21), balancePoint: celsius(16) };
    const signature = energySignature({ mode: 'heating', form: 'anchored at design', ...house });
    const bins = temperatureBins({ ...year, binWidth: kelvinDifference(1) });
    const energy = hourlyLoads({ heating: signature, ...year }).heating?.energy ?? 0;
    // The balance point lies on an edge, so that the load is straight in every bin.
    expect(binRun({ signature, bins, capacity: kilowatts(20) }).energy / energy).toBeCloseTo(1, 9);
  });
});

describe('freezingIndex', () => {
  const both = ['first day', 'nothing'] as const;
  it('is seasonal at most total, with the sum of all days between the totals', () => {
    fc.assert(
      fc.property(daily, fc.constantFrom(...both), (temperatures, afterLast) => {
        const { freezing, thawing } = freezingIndex({ temperatures, step, afterLast });
        for (const season of [freezing, thawing]) {
          expect(season.seasonIndex).toBeLessThanOrEqual(season.totalIndex + 1e-9);
          expect(season.duration).toBeLessThanOrEqual(temperatures.length * step);
        }
        expect(thawing.totalIndex - freezing.totalIndex).toBeCloseTo(total(temperatures), 7);
      }),
    );
  });
  it('does not mind where a repeating year is cut, and is the fall of its cumulative curve', () => {
    fc.assert(
      fc.property(daily, fc.nat(59), (temperatures, cut) => {
        const at = cut % temperatures.length;
        const turned = [...temperatures.slice(at), ...temperatures.slice(0, at)];
        const of = (each: typeof temperatures): number => freezingIndex({ temperatures: each, step, afterLast: 'first day' }).freezing.seasonIndex;
        expect(of(turned)).toBeCloseTo(of(temperatures), 7);
        // Every stretch of up to a year, one by one.
        const twice = [...temperatures, ...temperatures];
        let deepest = 0;
        for (let from = 0; from < temperatures.length; from += 1) {
          let sum = 0;
          for (const each of twice.slice(from, from + temperatures.length)) deepest = Math.max(deepest, (sum -= each));
        }
        expect(of(temperatures)).toBeCloseTo(deepest, 7);
      }),
    );
  });
  it('is thawing turned round', () => {
    fc.assert(
      fc.property(daily, fc.constantFrom(...both), (temperatures, afterLast) => {
        const { freezing, thawing } = freezingIndex({ temperatures, step, afterLast });
        const other = freezingIndex({ temperatures: temperatures.map((t) => celsius(-t)), step, afterLast });
        expect([other.freezing.seasonIndex, other.thawing.totalIndex]).toEqual([thawing.seasonIndex, freezing.totalIndex]);
      }),
    );
  });
  it('loses the start of the winter where a typical year is cut at New Year', () => {
    expect(freezingIndex({ ...year, afterLast: 'nothing' }).freezing.seasonIndex).toBeCloseTo(233.45, 2);
    expect(freezingIndex({ ...year, afterLast: 'first day' }).freezing.seasonIndex).toBeCloseTo(386.11, 2);
    const { start, duration } = freezingIndex({ ...year, afterLast: 'first day' }).freezing;
    expect(start).toBeGreaterThan(320);
    expect(days.of(duration)).toBeGreaterThan(80);
  });
  it('has no season where nothing freezes', () => {
    const { freezing } = monthlyFreezingIndex(Array.from({ length: 12 }, () => celsius(5)));
    expect([freezing.seasonIndex, freezing.totalIndex, freezing.duration]).toEqual([0, 0, 0]);
  });
});

describe('designFreezingIndex', () => {
  const index = fc.double({ min: 0, max: 3000, noNaN: true }).map((each) => kelvinDays(each));
  it('forgets winters before the last thirty and never falls with a colder one', () => {
    fc.assert(
      fc.property(fc.array(index, { minLength: 30, maxLength: 50 }), fc.nat(29), (winters, at) => {
        const of = designFreezingIndex(winters).freezingIndex;
        expect(of).toBe(designFreezingIndex(winters.slice(-30)).freezingIndex);
        expect(designFreezingIndex(winters.with(-1 - at, kelvinDays(4000))).freezingIndex).toBeGreaterThan(of);
        expect(of).toBeLessThanOrEqual(Math.max(...winters));
      }),
    );
  });
});

describe('designTemperatures', () => {
  it('fall with the share that exceeds them, lie within the readings and shift with them', () => {
    fc.assert(
      fc.property(daily, fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (temperatures, a, b) => {
        const of = (exceeded: number, by = 0): number =>
          exceededTemperature({ temperatures: temperatures.map((t) => celsius(t + by)), step, exceeded: fraction(exceeded) });
        expect(of(Math.max(a, b))).toBeLessThanOrEqual(of(Math.min(a, b)) + 1e-9);
        expect([of(1), of(0)]).toEqual([Math.min(...temperatures), Math.max(...temperatures)]);
        expect(of(a, 10)).toBeCloseTo(of(a) + 10, 7);
      }),
    );
  });
  it('say how short the record is', () => {
    const level = (count: number): readonly string[] =>
      designTemperatures({ temperatures: new Float64Array(count), step: hours(1) }).findings.map((finding) => finding.level);
    expect([level(24), level(8760), level(25 * 8760)]).toEqual([['warning'], ['note'], []]);
    for (const finding of designTemperatures(year).findings) expect(describeFinding(finding, 'us')).toContain('365 days');
  });
});
