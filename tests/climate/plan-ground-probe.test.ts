import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitGroundProbe, groundTemperature, planGroundProbe, probeErrors, type ProbeErrors } from '../../src/climate/index.js';
import type { AnnualWave } from '../../src/states/index.js';
import { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay } from '../../src/units/index.js';
import { normalNoise } from '../support/noise.js';

const wave: AnnualWave = { of: 'ground surface', mean: celsius(11), amplitude: kelvinDifference(10.5), coldestDay: dayOfYear(33), period: days(365) };
const ground = { wave, diffusivity: squareMetresPerDay(0.055), readingDeviation: kelvinDifference(0.3) };
const monthly = (count: number) => Array.from({ length: count }, (_, i) => dayOfYear(91 + 30 * i));
const all = ({ standardErrors: { mean, amplitude, coldestDay }, diffusivityError }: ProbeErrors): readonly number[] => [
  mean,
  amplitude,
  coldestDay,
  diffusivityError,
];

const anyDesign = fc.record({
  probeDepths: fc
    .uniqueArray(fc.integer({ min: 2, max: 30 }), { minLength: 2, maxLength: 4 })
    .map((tenths) => tenths.map((tenth) => metres(tenth / 10))),
  readingDays: fc.uniqueArray(fc.integer({ min: 1, max: 730 }), { minLength: 5, maxLength: 20 }).map((list) => list.map((day) => dayOfYear(day))),
});

describe('probeErrors', () => {
  it.each([
    ['half a year, three depths', [0.5, 1, 1.5], 7, {}],
    ['a year, two depths', [0.6, 1.8], 13, {}],
    ['a quarter, diffusivity known', [0.5, 1.2], 4, { diffusivityKnown: true }],
    ['a quarter, both known', [1], 4, { diffusivityKnown: true, coldestDayKnown: true }],
  ])('are the scatter of fits of made readings: %s', (_, probeDepths, count, known) => {
    const noise = normalNoise(count);
    const expected = probeErrors({ ...ground, probeDepths: probeDepths.map((depth) => metres(depth)), readingDays: monthly(count), ...known });
    const given = {
      ...('diffusivityKnown' in known ? { diffusivity: ground.diffusivity } : {}),
      ...('coldestDayKnown' in known ? { coldestDay: wave.coldestDay } : {}),
    };
    const trials = Array.from({ length: 400 }, () => {
      const readings = monthly(count).flatMap((day) =>
        probeDepths.map((depth) => {
          const place = { day, depth: metres(depth) };
          return { ...place, temperature: celsius(groundTemperature({ ...ground, ...place }) + 0.3 * noise()) };
        }),
      );
      const found = fitGroundProbe({ readings, ...given });
      return [found.wave.mean, found.wave.amplitude, days(found.wave.coldestDay), Math.log(found.diffusivity) * ground.diffusivity];
    });
    const spread = [0, 1, 2, 3].map((i) => {
      const values = trials.map((trial) => trial[i] ?? NaN);
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
    });
    // 400 trials know a deviation to 3.5 %; what bends away from the tangent adds a few per cent.
    for (const [i, error] of all(expected).entries()) {
      if (error < 1e-12) expect(spread[i]).toBeLessThan(1e-6);
      else expect(Math.abs((spread[i] ?? NaN) / error - 1)).toBeLessThan(0.1);
    }
  });

  it('agree with those that a fit gives for its readings, once scaled to their deviation', () => {
    const noise = normalNoise(2);
    const probeDepths = [metres(0.5), metres(1), metres(1.5)];
    const readingDays = monthly(8);
    const readings = readingDays.flatMap((day) =>
      probeDepths.map((depth) => ({ day, depth, temperature: celsius(groundTemperature({ ...ground, day, depth }) + 0.3 * noise()) })),
    );
    const fit = fitGroundProbe({ readings });
    const expected = probeErrors({ wave: fit.wave, diffusivity: fit.diffusivity, readingDeviation: fit.residualDeviation, probeDepths, readingDays });
    for (const [i, error] of all(expected).entries()) expect(error / (all(fit)[i] ?? NaN)).toBeCloseTo(1, 6);
    expect(expected.amplitudeDiffusivityCorrelation).toBeCloseTo(fit.amplitudeDiffusivityCorrelation, 6);
  });

  it('go with the deviation of a reading, and shrink with every depth and day', () => {
    fc.assert(
      fc.property(anyDesign, fc.double({ min: 0.1, max: 3, noNaN: true }), (design, factor) => {
        const errors = probeErrors({ ...ground, ...design });
        const noisier = probeErrors({ ...ground, ...design, readingDeviation: kelvinDifference(0.3 * factor) });
        const longer = probeErrors({ ...ground, ...design, readingDays: [...design.readingDays, dayOfYear(800)] });
        const deeper = probeErrors({ ...ground, ...design, probeDepths: [...design.probeDepths, metres(3.5)] });
        const known = probeErrors({ ...ground, ...design, diffusivityKnown: true });
        for (const [i, error] of all(errors).entries()) {
          // A day of which nothing is known has the spread of the year and no more.
          if (i !== 2) expect((all(noisier)[i] ?? NaN) / error).toBeCloseTo(factor, 6);
          for (const better of [longer, deeper, known]) expect(all(better)[i]).toBeLessThanOrEqual(error * (1 + 1e-9));
        }
      }),
      { numRuns: 60 },
    );
  });

  it('halve with four times the readings', () => {
    const probeDepths = [metres(0.5), metres(1.5)];
    const readingDays = monthly(9);
    const once = probeErrors({ ...ground, probeDepths, readingDays });
    const four = probeErrors({ ...ground, probeDepths, readingDays: [...readingDays, ...readingDays, ...readingDays, ...readingDays] });
    for (const [i, error] of all(once).entries()) expect((all(four)[i] ?? NaN) / error).toBeCloseTo(0.5, 9);
  });

  it('are refused where the design leaves something open', () => {
    expect(() => probeErrors({ ...ground, probeDepths: [metres(1)], readingDays: monthly(12) })).toThrow('readingDays');
    expect(() => probeErrors({ ...ground, probeDepths: [metres(0.5), metres(1)], readingDays: [dayOfYear(30)] })).toThrow('readingDays');
    const still = { ...ground, wave: { ...wave, amplitude: kelvinDifference(0) } };
    expect(() => probeErrors({ ...still, probeDepths: [metres(0.5), metres(1)], readingDays: monthly(12) })).toThrow('wave.amplitude');
  });
});

describe('planGroundProbe', () => {
  const plan = {
    ...ground,
    readingDeviation: kelvinDifference(1),
    probeDepths: [0.3, 0.6, 1, 1.5, 2].map((depth) => metres(depth)),
    start: dayOfYear(91),
    interval: days(15),
    longestTime: days(900),
    wanted: { meanError: kelvinDifference(0.4), diffusivityError: squareMetresPerDay(0.015) },
  };

  it('gives probes that meet what is wanted, and with one reading fewer do not', () => {
    const { options } = planGroundProbe(plan);
    expect(options.map(({ probeDepths }) => probeDepths.length)).toEqual([2, 3, 4, 5]);
    for (const { probeDepths, count, duration, standardErrors, diffusivityError } of options) {
      expect(standardErrors.mean).toBeLessThanOrEqual(0.4);
      expect(diffusivityError).toBeLessThanOrEqual(plan.wanted.diffusivityError);
      expect(days.of(duration)).toBeCloseTo(15 * (count - 1), 9);
      const fewer = probeErrors({
        ...ground,
        readingDeviation: kelvinDifference(1),
        probeDepths,
        readingDays: Array.from({ length: count - 1 }, (_, i) => dayOfYear(91 + 15 * i)),
      });
      expect(fewer.standardErrors.mean > 0.4 || fewer.diffusivityError > plan.wanted.diffusivityError).toBe(true);
    }
  });

  it('never takes longer with more sensors', () => {
    const counts = planGroundProbe(plan).options.map(({ count }) => count);
    for (const [i, count] of counts.slice(1).entries()) expect(count).toBeLessThanOrEqual(counts[i] ?? NaN);
  });

  it('of two depths takes one near the surface and one well below for the diffusivity', () => {
    const [two] = planGroundProbe({ ...plan, wanted: { diffusivityError: squareMetresPerDay(0.01) } }).options;
    expect(two?.probeDepths).toHaveLength(2);
    expect((two?.probeDepths[1] ?? 0) - (two?.probeDepths[0] ?? 0)).toBeGreaterThanOrEqual(0.6);
  });

  it('does with one depth where the diffusivity is known, and says when nothing does', () => {
    const known = planGroundProbe({ ...plan, diffusivityKnown: true, wanted: { meanError: kelvinDifference(0.4) } });
    expect(known.options[0]?.probeDepths).toHaveLength(1);
    const never = planGroundProbe({ ...plan, longestTime: days(60) });
    expect(never).toEqual({
      options: [],
      findings: [{ code: 'probe-plan-out-of-reach', level: 'warning', values: { longestTime: days(60) }, source: 'leastSquares' }],
    });
    expect(() => planGroundProbe({ ...plan, wanted: {} })).toThrow('wanted');
  });
});
