import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  binRun,
  type ClosedFormBinsInput,
  closedFormBins,
  closedFormBinsInputShape,
  dayNightRun,
  type DayNightRunInput,
  dayNightRunInputShape,
  energySignature,
  hourlyLoads,
  monthlyLoads,
  schoenauKehrigDegreeDays,
  weatherBins,
  type WeatherBinsInput,
} from '../../src/building/index.js';
import { temperatureBins } from '../../src/climate/index.js';
import { celsius, days, hours, kelvinDifference, kilowatts, type Shape, type Temperature } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { stationHours } from './bills.js';
import { cooling, evenSpread, heating } from './houses.js';

const step = hours(1);
const anyHours = fc.array(
  fc.double({ min: -40, max: 45, noNaN: true }).map((t) => celsius(t)),
  { minLength: 1, maxLength: 200 },
);
const anyWidth = fc.double({ min: 0.1, max: 3, noNaN: true }).map((width) => kelvinDifference(width));
const anySplit = fc.array(
  fc.double({ min: -40, max: 45, noNaN: true }).map((t) => celsius(t)),
  { maxLength: 10 },
);
const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);

describe('weatherBins', () => {
  it('hold all of the time, each at a mean within its edges, none across a split', () => {
    fc.assert(
      fc.property(anyHours, anyWidth, anySplit, (temperatures, binWidth, splitAt) => {
        const bins = weatherBins({ temperatures, step, binWidth, splitAt, dayHours: { dayBegins: hours(6), dayEnds: hours(22) } });
        expect(sum(bins.map(({ time }) => time))).toBeCloseTo(temperatures.length * step, 3);
        expect(sum(bins.map(({ time, outdoor }) => (time / step) * outdoor))).toBeCloseTo(sum(temperatures), 6);
        for (const { lowerEdge, upperEdge, outdoor } of bins) {
          expect(outdoor).toBeGreaterThanOrEqual(lowerEdge - 1e-8);
          expect(outdoor).toBeLessThanOrEqual(upperEdge + 1e-8);
          expect(splitAt.some((split) => split > lowerEdge && split < upperEdge)).toBe(false);
        }
      }),
    );
  });

  it('split at the bends of load and capacity give the energy of the hours', () => {
    fc.assert(
      fc.property(anyHours, anyWidth, fc.double({ min: 1, max: 15, noNaN: true }), (temperatures, binWidth, capacity) => {
        const splitAt = [heating.balancePoint, celsius(heating.balancePoint - (1000 * capacity) / heating.slope)];
        const run = binRun({ signature: heating, bins: weatherBins({ temperatures, step, binWidth, splitAt }), capacity: kilowatts(capacity) });
        const { loads } = hourlyLoads({ heating, temperatures, step });
        expect(Math.abs(run.energy - sum([...loads]) * step)).toBeLessThan(1e-9 * (run.energy + 1e6));
        const unmet = sum([...loads].map((load) => Math.max(0, load - 1000 * capacity))) * step;
        expect(Math.abs(run.unmetEnergy - unmet)).toBeLessThan(1e-9 * (run.energy + 1e6));
      }),
    );
  });

  it('undivided are the bins of the climate room', () => {
    const temperatures = stationHours('Bologna');
    const plain = weatherBins({ temperatures, step, binWidth: kelvinDifference(2) });
    const other = temperatureBins({ temperatures, step, binWidth: kelvinDifference(2) });
    expect(plain.map(({ lowerEdge, time }) => [lowerEdge, time])).toEqual(other.map(({ lowerEdge, time }) => [lowerEdge, time]));
    plain.forEach(({ outdoor }, index) => expect(outdoor).toBeCloseTo(other[index]?.outdoor ?? Number.NaN, 9));
  });

  it('by month and by day and night fall apart and add up again', () => {
    const temperatures = Float64Array.from(stationHours('Chicago'));
    const bins = weatherBins({
      temperatures,
      step,
      binWidth: kelvinDifference(3),
      by: 'month',
      dayHours: { dayBegins: hours(7), dayEnds: hours(19) },
    });
    const timeOf = (month: number, part: 'day' | 'night'): number =>
      sum(bins.filter((bin) => bin.month === month && bin.dayPart === part).map(({ time }) => hours.of(time)));
    expect(timeOf(2, 'day')).toBe(28 * 12);
    expect(timeOf(12, 'night')).toBe(31 * 12);
    const mean = (part: 'day' | 'night'): number => {
      const own = bins.filter(({ dayPart, month }) => dayPart === part && month === 7);
      return sum(own.map(({ outdoor, time }) => outdoor * time)) / sum(own.map(({ time }) => time));
    };
    expect(mean('day')).toBeGreaterThan(mean('night') + 2);
    expect(weatherBins({ temperatures, step, binWidth: kelvinDifference(3) })[0]).not.toHaveProperty('month');
  });

  it('refuse bad input by name', () => {
    const shape: Shape<Omit<WeatherBinsInput, 'temperatures'> & { temperatures: readonly Temperature[] }> = {
      temperatures: { list: 'temperature' },
      step: 'time',
      binWidth: 'temperature difference',
      splitAt: { optional: { list: 'temperature' } },
      by: { optional: ['nothing', 'month'] },
      dayHours: { optional: { dayBegins: 'time', dayEnds: 'time' } },
    };
    const temperatures = [celsius(3), celsius(7)];
    const splitAt = [celsius(5)];
    refuses(
      weatherBins,
      shape,
      { temperatures, step, binWidth: kelvinDifference(2), splitAt, by: 'nothing', dayHours: { dayBegins: hours(6), dayEnds: hours(20) } },
      {
        unused: { splitAt: 'an empty list splits nothing' },
      },
    );
    expect(() => weatherBins({ temperatures, step, binWidth: kelvinDifference(2), by: 'month' })).toThrow('the 365 days of a year');
    expect(() => weatherBins({ temperatures, step: hours(0.7), binWidth: kelvinDifference(2) })).toThrow('a whole part of a day');
    expect(() => weatherBins({ temperatures, step, binWidth: kelvinDifference(3.1) })).toThrow('wider bins lose the cold end');
    expect(() => weatherBins({ temperatures: Float64Array.of(Number.NaN), step, binWidth: kelvinDifference(1) })).toThrow('temperatures.0');
    expect(() => weatherBins({ temperatures: Float64Array.of(), step, binWidth: kelvinDifference(1) })).toThrow('temperatures');
  });
});

const anyMonth = fc.record({
  distribution: fc.constantFrom('normal' as const, 'logistic' as const),
  meanOutdoor: fc.double({ min: -30, max: 35, noNaN: true }).map((t) => celsius(t)),
  spread: fc.double({ min: 0.1, max: 12, noNaN: true }).map((t) => kelvinDifference(t)),
  time: fc.constantFrom(28, 30, 31).map((count) => days(count)),
  binWidth: fc.double({ min: 0.3, max: 3, noNaN: true }).map((t) => kelvinDifference(t)),
  edgeAt: fc.double({ min: -20, max: 30, noNaN: true }).map((t) => celsius(t)),
});

describe('closedFormBins', () => {
  it('hold the month, its mean, and the degree days to an edge', () => {
    fc.assert(
      fc.property(anyMonth, (month) => {
        const bins = closedFormBins(month);
        const { time, meanOutdoor, spread, edgeAt: base, distribution } = month;
        expect(sum(bins.map((bin) => bin.time)) / time).toBeCloseTo(1, 9);
        expect(sum(bins.map((bin) => (bin.time * bin.outdoor) / time))).toBeCloseTo(meanOutdoor, 7);
        for (const { outdoor, lowerEdge = -Infinity, upperEdge = Infinity, time: within } of bins) {
          expect(within).toBeGreaterThan(0);
          expect(outdoor).toBeGreaterThan(lowerEdge - 1e-4);
          expect(outdoor).toBeLessThan(upperEdge + 1e-4);
        }
        // Only where the base lies among the bins is it one of their edges.
        if (distribution === 'normal' && Math.abs(base - meanOutdoor) < 4 * spread) {
          const found = sum(bins.map((bin) => (bin.time / 86_400) * Math.max(0, base - bin.outdoor)));
          expect(found).toBeCloseTo(schoenauKehrigDegreeDays({ base, meanOutdoor, spread, days: time / 86_400 }).heating, 5);
        }
      }),
    );
  });

  it('are those of a number drawn at random', () => {
    // Simpson's rule over the normal density of each bin.
    const bins = closedFormBins({
      distribution: 'normal',
      meanOutdoor: celsius(2),
      spread: kelvinDifference(5),
      time: days(30),
      binWidth: kelvinDifference(2.5),
    });
    const density = (t: number): number => Math.exp(-((t - 2) ** 2) / 50) / (5 * Math.sqrt(2 * Math.PI));
    for (const { lowerEdge, upperEdge, outdoor, time } of bins) {
      if (lowerEdge === undefined || upperEdge === undefined) continue;
      const nodes = Array.from({ length: 101 }, (_, i) => [lowerEdge + 0.025 * i, i === 0 || i === 100 ? 1 : i % 2 === 1 ? 4 : 2] as const);
      const share = sum(nodes.map(([t, weight]) => (weight * density(t) * 0.025) / 3));
      expect(time / days(30)).toBeCloseTo(share, 10);
      expect(outdoor).toBeCloseTo(sum(nodes.map(([t, weight]) => (weight * t * density(t) * 0.025) / 3)) / share, 6);
    }
  });

  it('make the month that monthlyLoads has', () => {
    const meanOutdoor = Array.from({ length: 12 }, () => celsius(4));
    const [january] = monthlyLoads({ signature: heating, meanOutdoor, spread: evenSpread(6) }).months;
    const month: ClosedFormBinsInput = {
      distribution: 'normal',
      meanOutdoor: celsius(4),
      spread: kelvinDifference(6),
      time: days(31),
      binWidth: kelvinDifference(2),
      edgeAt: heating.balancePoint,
    };
    expect(binRun({ signature: heating, bins: closedFormBins(month), capacity: kilowatts(20) }).energy / (january?.energy ?? 0)).toBeCloseTo(1, 9);
  });

  it('refuse bad input by name', () => {
    const spread = kelvinDifference(6);
    const month: ClosedFormBinsInput = {
      distribution: 'logistic',
      meanOutdoor: celsius(4),
      spread,
      time: days(31),
      binWidth: kelvinDifference(2),
      edgeAt: celsius(16),
    };
    refuses(closedFormBins, closedFormBinsInputShape, month);
  });
});

describe('dayNightRun', () => {
  const bins = weatherBins({
    temperatures: stationHours('Chicago'),
    step,
    binWidth: kelvinDifference(3),
    splitAt: [celsius(16)],
    dayHours: { dayBegins: hours(7), dayEnds: hours(19) },
  });
  const [binsByDay, binsByNight] = (['day', 'night'] as const).map((part) =>
    bins.filter(({ dayPart }) => dayPart === part).map(({ outdoor, time }) => ({ outdoor, time })),
  );
  const full: DayNightRunInput = {
    signatureByDay: heating,
    signatureByNight: heating,
    binsByDay: binsByDay ?? [],
    binsByNight: binsByNight ?? [],
    capacity: kilowatts(8),
  };

  it('with one line is the run over all bins', () => {
    const { runByDay, runByNight, ...all } = dayNightRun(full);
    const whole = binRun({ signature: heating, bins, capacity: kilowatts(8) });
    for (const key of ['energy', 'metEnergy', 'unmetEnergy', 'coveredShare', 'runTime', 'runFraction'] as const)
      expect(all[key] / whole[key]).toBeCloseTo(1, 12);
    expect(runByDay.energy + runByNight.energy).toBe(all.energy);
  });

  it('with lines about the same mean asks for as much in a year and more of other heat, the nights being colder', () => {
    const line = (balancePoint: number) =>
      energySignature({
        mode: 'heating',
        form: 'gains as offset',
        designLoad: kilowatts(12),
        designOutdoor: celsius(-15),
        indoor: celsius(21),
        balancePoint: celsius(balancePoint),
      });
    const one = dayNightRun({ ...full, signatureByDay: line(15), signatureByNight: line(15) });
    const two = dayNightRun({ ...full, signatureByDay: line(12), signatureByNight: line(18) });
    expect(Math.abs(two.energy / one.energy - 1)).toBeLessThan(0.06);
    expect(two.unmetEnergy).toBeGreaterThan(1.1 * one.unmetEnergy);
  });

  it('refuses bad input by name', () => {
    const small = { ...full, binsByDay: full.binsByDay.slice(0, 2), binsByNight: full.binsByNight.slice(0, 2) };
    refuses(dayNightRun, dayNightRunInputShape, small);
    expect(() => dayNightRun({ ...small, signatureByNight: cooling })).toThrow('signatureByNight.mode');
  });
});
