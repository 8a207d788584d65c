import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitAnnualWave, meanTemperatureOverTime } from '../../src/climate/index.js';
import type { AnnualWave } from '../../src/states/index.js';
import { celsius, dayOfYear, days, kelvinDifference, metres, type Temperature } from '../../src/units/index.js';
import { fitOf } from '../published/climate.checks.js';
import { everyNumberFinite } from '../support/finite.js';
import { loadFixture } from '../support/fixture.js';
import { loam } from './waves.js';

const MONTH_ENDS = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** The exact monthly means of a wave of the surface. */
const monthlyMeansOf = (wave: AnnualWave): readonly Temperature[] =>
  MONTH_ENDS.slice(1).map((end, month) =>
    meanTemperatureOverTime({
      wave,
      diffusivity: loam,
      depth: metres(0),
      start: dayOfYear(1 + (MONTH_ENDS[month] ?? 0)),
      end: dayOfYear(1 + end),
    }),
  );

const wave365 = fc.record({
  of: fc.constant('ground surface' as const),
  mean: fc.double({ min: -10, max: 28, noNaN: true }).map((mean) => celsius(mean)),
  amplitude: fc.double({ min: 0.5, max: 22, noNaN: true }).map((amplitude) => kelvinDifference(amplitude)),
  coldestDay: fc.double({ min: 1, max: 365.9, noNaN: true }).map((day) => dayOfYear(day)),
  period: fc.constant(days(365)),
});

const readings = fc.array(
  fc.double({ min: -40, max: 40, noNaN: true }).map((mean) => celsius(mean)),
  { minLength: 12, maxLength: 12 },
);
const fit = (monthlyMeans: readonly Temperature[]): ReturnType<typeof fitAnnualWave> => fitAnnualWave({ of: 'air', monthlyMeans });

describe('fitAnnualWave', () => {
  it('gives back the wave whose monthly means it is given, without residuals', () => {
    fc.assert(
      fc.property(wave365, (wave) => {
        const found = fitAnnualWave({ of: 'ground surface', monthlyMeans: monthlyMeansOf(wave) });
        expect(found.wave.mean).toBeCloseTo(wave.mean, 9);
        expect(found.wave.amplitude).toBeCloseTo(wave.amplitude, 9);
        const apart = Math.abs(found.wave.coldestDay - wave.coldestDay);
        expect(Math.min(apart, 365 - apart)).toBeLessThan(1e-8);
        expect(found.residualDeviation).toBeLessThan(1e-9);
        expect(found.weightedMean).toBeCloseTo(wave.mean, 9);
      }),
    );
  });

  it('finds the wave that a fit at the middles of the months shaves and shifts', () => {
    // Uncorrected, the exact monthly means of 10 °C, 12 K, day 35 come out as 9.998542 °C, 11.864014 K, day 35.0047 (days elapsed).
    const wave: AnnualWave = {
      of: 'ground surface',
      mean: celsius(10),
      amplitude: kelvinDifference(12),
      coldestDay: dayOfYear(36),
      period: days(365),
    };
    const found = fitAnnualWave({ of: 'air', monthlyMeans: monthlyMeansOf(wave) }).wave;
    expect([found.mean, found.amplitude, found.coldestDay].map((value) => Number(value.toFixed(9)))).toEqual([10, 12, 36]);
  });

  it('moves with a shift of the readings in the mean alone', () => {
    fc.assert(
      fc.property(readings, fc.double({ min: -9, max: 9, noNaN: true }), (monthlyMeans, shift) => {
        const [before, after] = [fit(monthlyMeans), fit(monthlyMeans.map((mean) => celsius(mean + shift)))];
        expect(after.wave.mean - before.wave.mean).toBeCloseTo(shift, 9);
        expect(after.wave.amplitude).toBeCloseTo(before.wave.amplitude, 9);
        expect(after.residualDeviation).toBeCloseTo(before.residualDeviation, 9);
      }),
    );
  });

  it('leaves residuals that no other wave makes smaller', () => {
    fc.assert(
      fc.property(readings, fc.constantFrom('mean', 'amplitude', 'coldestDay'), fc.constantFrom(-0.1, 0.1), (monthlyMeans, parameter, step) => {
        const { wave, residuals } = fit(monthlyMeans);
        const other: AnnualWave = { ...wave, of: 'ground surface', [parameter]: wave[parameter] + step };
        fc.pre(other.amplitude >= 0 && other.coldestDay >= 1);
        const squares = residuals.reduce((sum, residual) => sum + residual ** 2, 0);
        const otherSquares = monthlyMeansOf(other).reduce((sum, mean, month) => sum + ((monthlyMeans[month] ?? 0) - mean) ** 2, 0);
        expect(squares).toBeLessThanOrEqual(otherSquares + 1e-9);
      }),
    );
  });

  it('has standard errors that hold: two in three fits of noisy months lie within one', () => {
    // A fixed sequence of pseudo-random numbers with a normal distribution, by the polar form of Box and Muller.
    let seed = 1;
    const uniform = (): number => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const wave: AnnualWave = {
      of: 'ground surface',
      mean: celsius(10),
      amplitude: kelvinDifference(12),
      coldestDay: dayOfYear(20),
      period: days(365),
    };
    const clean = monthlyMeansOf(wave);
    const trials = Array.from({ length: 2000 }, () => fit(clean.map((mean) => celsius(mean + 1.2 * normal()))));
    const share = (inside: (found: ReturnType<typeof fit>) => boolean): number => trials.filter(inside).length / trials.length;
    // Student's t with nine degrees of freedom has 65.7 % within one standard error; 2000 trials leave ±1.1 %.
    const within = [
      share((found) => Math.abs(found.wave.mean - 10) < found.standardErrors.mean),
      share((found) => Math.abs(found.wave.amplitude - 12) < found.standardErrors.amplitude),
      share((found) => Math.abs(found.wave.coldestDay - 20) < days.of(found.standardErrors.coldestDay)),
    ];
    for (const part of within) expect(Math.abs(part - 0.657)).toBeLessThan(0.035);
  });

  it('never gives NaN, for any twelve months', () => {
    fc.assert(
      fc.property(readings, (monthlyMeans) => {
        const { wave, standardErrors, residualDeviation } = fit(monthlyMeans);
        expect(everyNumberFinite({ wave, standardErrors, residualDeviation })).toBe(true);
        expect(days.of(standardErrors.coldestDay)).toBeLessThanOrEqual(365 / Math.sqrt(12) + 1e-9);
        expect(wave.coldestDay).toBeGreaterThanOrEqual(1);
        expect(wave.coldestDay).toBeLessThan(366);
      }),
    );
  });

  it('owns to knowing nothing of the coldest day of twelve equal months', () => {
    const { wave, standardErrors, findings } = fit(Array.from({ length: 12 }, () => celsius(26)));
    expect(wave.mean).toBeCloseTo(26, 9);
    expect(wave.amplitude).toBeLessThan(1e-9);
    expect(Number.isFinite(wave.coldestDay)).toBe(true);
    expect(standardErrors.amplitude).toBeLessThan(1e-9);
    expect(findings.every(({ code }) => code === 'coldest-day-vague')).toBe(true);
    const zero = fit(Array.from({ length: 12 }, () => celsius(0)));
    expect(days.of(zero.standardErrors.coldestDay)).toBeCloseTo(365 / Math.sqrt(12), 9);
    expect(zero.findings.map(({ code }) => code)).toEqual(['coldest-day-vague']);
  });

  it('finds an equatorial year vague, and a month out of place or unit weak', () => {
    const equator = [26.6, 27.2, 27.6, 28.0, 28.4, 28.4, 28.0, 28.0, 27.8, 27.7, 27.1, 26.7].map((mean) => celsius(mean));
    expect(fit(equator).findings.every(({ level }) => level === 'note')).toBe(true);
    const temperate = [2.4, 4.8, 9.6, 14, 18.8, 23, 25.7, 25.1, 20.1, 16.1, 9.5, 3.7].map((mean) => celsius(mean));
    expect(fit(temperate).findings).toEqual([]);
    expect(fit(temperate.with(7, celsius(2.51))).findings.map(({ code }) => code)).toContain('climate-fit-weak');
  });

  it.each([
    [[], 'too-few', 'monthlyMeans'],
    [Array.from({ length: 11 }, () => celsius(5)), 'too-few', 'monthlyMeans'],
    [Array.from({ length: 13 }, () => celsius(5)), 'too-many', 'monthlyMeans'],
    [Array.from({ length: 12 }, (_, month) => celsius(month === 6 ? 75 : 40)), 'out-of-range', 'monthlyMeans.6'],
  ])('refuses anything but twelve plausible months', (monthlyMeans, code, argument) => {
    expect(() => fit(monthlyMeans)).toThrow(expect.objectContaining({ code, argument }));
  });

  it('asks about Fahrenheit where a month is hotter than any', () => {
    expect(() => fit(Array.from({ length: 12 }, () => celsius(75)))).toThrow('Fahrenheit');
  });

  it('refuses a list with a hole in it', () => {
    const hole = Array.from({ length: 12 }, () => celsius(5)).map((mean, month) => (month === 3 ? (undefined as never) : mean));
    expect(() => fit(hole)).toThrow(expect.objectContaining({ code: 'missing', argument: 'monthlyMeans.3' }));
  });
});

describe('the standard errors of a fit at the middles of the months', () => {
  it('differ by up to 0.3 % from those of the averaged fit, whose residuals differ', () => {
    // Another estimator, not an error of either: the averaged fit is checked to the printed digits against an independent minimiser.
    const off = loadFixture('ground-temperature-epw-monthly').rows.map((row) => fitOf(row).standardErrors.mean / row.number('se_mean_monthfit') - 1);
    expect(Math.max(...off)).toBeGreaterThan(0.002);
    expect(Math.max(...off)).toBeLessThan(0.003);
  });
});
