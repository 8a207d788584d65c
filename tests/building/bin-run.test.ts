import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binRun, binRunInputShape, monthlyLoads, runFractions } from '../../src/building/index.js';
import { celsius, hours, kilowatts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { continental, cooling, evenSpread, heating } from './houses.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const bins = fc
  .array(
    fc.record({
      outdoor: between(-40, 45).map((outdoor) => celsius(outdoor)),
      time: fc.oneof(fc.constant(0), between(0.001, 500)).map((time) => hours(time)),
    }),
    {
      minLength: 1,
      maxLength: 40,
    },
  )
  .filter((all) => all.some(({ time }) => time > 0));
const signatures = fc.constantFrom(heating, cooling);

describe('binRun', () => {
  it('splits the load into met and unmet', () => {
    fc.assert(
      fc.property(signatures, bins, between(0.1, 50), (signature, all, capacity) => {
        const run = binRun({ signature, bins: all, capacity: kilowatts(capacity) });
        expect(Math.abs(run.metEnergy + run.unmetEnergy - run.energy)).toBeLessThanOrEqual(1e-12 * run.energy);
        expect(Math.abs(run.runTime * kilowatts(capacity) - run.metEnergy)).toBeLessThanOrEqual(1e-11 * run.energy);
        expect(run.runFraction).toBeGreaterThanOrEqual(0);
        expect(run.runFraction).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('does not change when a bin is split, or the order', () => {
    fc.assert(
      fc.property(signatures, bins, between(0, 1), (signature, all, share) => {
        const split = all.flatMap(({ outdoor, time }) => [
          { outdoor, time: hours(hours.of(time) * share) },
          { outdoor, time: hours(hours.of(time) * (1 - share)) },
        ]);
        const whole = binRun({ signature, bins: all, capacity: kilowatts(6) });
        const parts = binRun({ signature, bins: split.reverse(), capacity: kilowatts(6) });
        expect(Math.abs(parts.energy - whole.energy)).toBeLessThanOrEqual(1e-11 * whole.energy);
        expect(Math.abs(parts.unmetEnergy - whole.unmetEnergy)).toBeLessThanOrEqual(1e-11 * whole.energy);
      }),
    );
  });

  it('covers more with more capacity, with falling returns', () => {
    fc.assert(
      fc.property(signatures, bins, between(0.5, 10), between(0.1, 5), (signature, all, capacity, step) => {
        const [a = 0, b = 0, c = 0] = [0, 1, 2].map((k) => binRun({ signature, bins: all, capacity: kilowatts(capacity + k * step) }).coveredShare);
        expect(b - a).toBeGreaterThanOrEqual(-1e-12);
        expect(b - a).toBeGreaterThanOrEqual(c - b - 1e-12);
      }),
    );
  });

  it('over fine bins of a normal month is the closed form', () => {
    const loads = monthlyLoads({ signature: heating, meanOutdoor: continental, spread: evenSpread(6) });
    const { runFraction = 0, meanUnmet = 0 } = runFractions({ loads, capacity: kilowatts(9) }).months[0] ?? {};
    const fine = Array.from({ length: 1000 }, (_, k) => {
      const z = -8 + (16 * (k + 0.5)) / 1000;
      return { outdoor: celsius(-6 + 6 * z), time: hours(Math.exp(-(z * z) / 2)) };
    });
    const run = binRun({ signature: heating, bins: fine, capacity: kilowatts(9) });
    expect(run.runFraction).toBeCloseTo(runFraction, 5);
    expect(run.unmetEnergy / run.time / meanUnmet).toBeCloseTo(1, 3);
  });

  it('takes every hour of a leap year, and no more than ten thousand', () => {
    const year = (length: number) => Array.from({ length }, (_, hour) => ({ outdoor: celsius(10 - 12 * Math.cos(hour / 1394)), time: hours(1) }));
    const { time, coveredShare } = binRun({ signature: heating, bins: year(8784), capacity: kilowatts(9) });
    expect(hours.of(time)).toBe(8784);
    expect(coveredShare).toBe(1);
    expect(() => binRun({ signature: heating, bins: year(10_001), capacity: kilowatts(9) })).toThrow('1 to 10000 entries');
  });

  it('refuses bins without any time', () => {
    expect(() => binRun({ signature: heating, bins: [{ outdoor: celsius(0), time: hours(0) }], capacity: kilowatts(9) })).toThrow('hold no time');
  });

  it('refuses bad input by name', () => {
    const january = [
      { outdoor: celsius(-10), time: hours(96) },
      { outdoor: celsius(0), time: hours(648) },
    ];
    refuses(binRun, binRunInputShape, { signature: heating, bins: january, capacity: kilowatts(9) });
  });
});
