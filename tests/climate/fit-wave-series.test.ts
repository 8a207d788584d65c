import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DatedTemperature,
  fitAnnualWave,
  fitWaveSeries,
  groundTemperature,
  meanTemperatureOverTime,
  type WaveSeriesFit,
} from '../../src/climate/index.js';
import type { AnnualWave } from '../../src/states/index.js';
import { celsius, dayOfYear, days, hours, kelvinDifference, metres } from '../../src/units/index.js';
import { MONTH_DAYS } from '../../src/states/index.js';
import { hoursFit } from '../published/climate-fits.checks.js';
import { everyNumberFinite } from '../support/finite.js';
import { loadFixture } from '../support/fixture.js';
import { normalNoise } from '../support/noise.js';
import { conduct, SPACING } from './conduction.js';
import { loam, temperate } from './waves.js';

const series = (from: number, count: number, step: number, of: (day: number) => number): readonly DatedTemperature[] =>
  Array.from({ length: count }, (_, i) => ({ day: dayOfYear(from + i * step), temperature: celsius(of(from + i * step)) }));

const at = (wave: AnnualWave, day: number): number => groundTemperature({ wave, diffusivity: loam, depth: metres(0), day: dayOfYear(day) });

const knownWave = fc.record({
  of: fc.constant('ground surface' as const),
  mean: fc.double({ min: -10, max: 28, noNaN: true }).map((mean) => celsius(mean)),
  amplitude: fc.double({ min: 0.5, max: 22, noNaN: true }).map((amplitude) => kelvinDifference(amplitude)),
  coldestDay: fc.double({ min: 1, max: 365.9, noNaN: true }).map((day) => dayOfYear(day)),
  period: fc.constantFrom(days(365), days(365.25), days(366)),
});

const sameDay = (a: number, b: number, year = 365): number => {
  const off = Math.abs(a - b) % year;
  return Math.min(off, year - off);
};

describe('fitWaveSeries', () => {
  it('gives back the wave it is read from, however the readings lie', () => {
    fc.assert(
      fc.property(knownWave, fc.uniqueArray(fc.integer({ min: 1, max: 1400 }), { minLength: 40, maxLength: 80 }), (wave, moments) => {
        const readings = moments.map((day) => ({ day: dayOfYear(day), temperature: celsius(at(wave, day)) }));
        const found = fitWaveSeries({ readings, period: wave.period });
        expect(found.wave.mean).toBeCloseTo(wave.mean, 8);
        expect(found.wave.amplitude).toBeCloseTo(wave.amplitude, 8);
        expect(sameDay(found.wave.coldestDay, wave.coldestDay, days.of(wave.period))).toBeLessThan(1e-6);
        expect(found.residualDeviation).toBeLessThan(1e-8);
      }),
      { numRuns: 50 },
    );
  });

  it('gives back both harmonics of hours with gaps', () => {
    const second = { amplitude: kelvinDifference(1.5), coldestDay: dayOfYear(60) };
    const of = (day: number): number =>
      groundTemperature({ wave: temperate, secondHarmonic: second, diffusivity: loam, depth: metres(0), day: dayOfYear(day) });
    const readings = series(1 + 1 / 48, 8760, 1 / 24, of).filter(({ day }) => day < 100 || day > 130);
    const found = fitWaveSeries({ readings, harmonics: 2 });
    expect(found.wave.mean).toBeCloseTo(10, 8);
    expect(found.wave.amplitude).toBeCloseTo(12, 8);
    expect(found.wave.coldestDay).toBeCloseTo(36, 6);
    expect(found.secondHarmonic?.amplitude).toBeCloseTo(1.5, 8);
    expect(found.secondHarmonic?.coldestDay).toBeCloseTo(60, 6);
    expect(found.findings).toEqual([]);
  });

  it('undoes the averaging of long spans', () => {
    const span = 30;
    const readings = Array.from({ length: 12 }, (_, i) => {
      const [start, end] = [dayOfYear(1 + i * span), dayOfYear(1 + (i + 1) * span)];
      const temperature = meanTemperatureOverTime({ wave: temperate, diffusivity: loam, depth: metres(0), start, end });
      return { day: dayOfYear(1 + (i + 0.5) * span), temperature };
    });
    expect(fitWaveSeries({ readings, averaging: days(span) }).wave.amplitude).toBeCloseTo(12, 9);
    expect(fitWaveSeries({ readings }).wave.amplitude).toBeLessThan(11.9);
  });

  it('of twelve months comes to the fit of monthly means', () => {
    const monthlyMeans = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
    let end = 1;
    const readings = monthlyMeans.map((temperature, month) => {
      const length = MONTH_DAYS[month] ?? 30;
      end += length;
      return { day: dayOfYear(end - length / 2), temperature };
    });
    const [byMonths, bySeries] = [fitAnnualWave({ of: 'air', monthlyMeans }), fitWaveSeries({ readings, averaging: days(365 / 12) })];
    // Months of equal length instead of their own: a thousandth.
    expect(bySeries.wave.mean).toBeCloseTo(byMonths.wave.mean, 2);
    expect(bySeries.wave.amplitude).toBeCloseTo(byMonths.wave.amplitude, 2);
    expect(sameDay(bySeries.wave.coldestDay, byMonths.wave.coldestDay)).toBeLessThan(0.02);
    expect(bySeries.degreesOfFreedom).toBe(9);
    expect(bySeries.standardErrors.mean / byMonths.standardErrors.mean).toBeCloseTo(1, 2);
  });

  it('does not mind the order of readings, and moves with a shift in the mean alone', () => {
    const noise = normalNoise(7);
    const readings = series(1, 122, 3, (day) => at(temperate, day) + noise());
    const forwards = fitWaveSeries({ readings });
    const backwards = fitWaveSeries({ readings: [...readings].reverse() });
    expect(backwards.wave.amplitude).toBeCloseTo(forwards.wave.amplitude, 10);
    expect(backwards.standardErrors.mean).toBeCloseTo(forwards.standardErrors.mean, 10);
    const shifted = fitWaveSeries({ readings: readings.map(({ day, temperature }) => ({ day, temperature: celsius(temperature + 5) })) });
    expect(shifted.wave.mean - forwards.wave.mean).toBeCloseTo(5, 9);
    expect(shifted.wave.amplitude).toBeCloseTo(forwards.wave.amplitude, 9);
  });

  it('finds the winter of the south in July', () => {
    const south = { ...temperate, coldestDay: dayOfYear(36 + 182.5) };
    const { wave } = fitWaveSeries({ readings: series(1, 52, 7, (day) => at(south, day)) });
    expect(wave.coldestDay).toBeCloseTo(218.5, 6);
    expect(wave.amplitude).toBeCloseTo(12, 8);
  });

  it.each([
    ['weather that lasts a week, read daily', 365, 1, 0.87, 3],
    ['weather that lasts a week, over three years', 1095, 1, 0.87, 3],
    ['weekly readings with hardly any memory', 104, 7, 0.35, 2],
    ['monthly readings without memory', 24, 30.4, 0, 1.5],
  ])('has standard errors that hold: %s', (_, count, step, memory, deviation) => {
    const noise = normalNoise(count);
    const trial = (): WaveSeriesFit => {
      let weather = deviation * noise();
      return fitWaveSeries({
        readings: series(1, count, step, (day) => {
          weather = memory * weather + deviation * Math.sqrt(1 - memory ** 2) * noise();
          return at(temperate, day) + weather;
        }),
      });
    };
    const trials = Array.from({ length: 400 }, trial);
    const share = (inside: (found: WaveSeriesFit) => boolean): number => trials.filter(inside).length / trials.length;
    const within = [
      share((found) => Math.abs(found.wave.mean - 10) < found.standardErrors.mean),
      share((found) => Math.abs(found.wave.amplitude - 12) < found.standardErrors.amplitude),
      share((found) => sameDay(found.wave.coldestDay, 36) < days.of(found.standardErrors.coldestDay)),
    ];
    // One standard error holds 66 to 68 %; 400 trials leave 2.4 % either way, and twelve months a little bias: three of those.
    for (const part of within) expect(Math.abs(part - 0.67)).toBeLessThan(0.072);
  });

  it('of a metre below three years of weather have limits that hold in most of the trials, where months alone would not', () => {
    const noise = normalNoise(77);
    const [depth, last] = [1, 3 * 365];
    const trials = Array.from({ length: 60 }, () => {
      let weather = 3 * noise();
      const outside = Array.from({ length: last + 202 }, () => (weather = 0.87 * weather + 3 * Math.sqrt(1 - 0.87 ** 2) * noise()));
      const run = conduct({
        diffusivity: 0.05,
        outside: (t) => outside[Math.floor(t + 200 + 1e-9)] ?? NaN,
        film: 0,
        start: 0,
        time: { from: -200, to: last, step: 1 },
      });
      const strayed = (day: number): number => run.get(day - 1)?.[Math.round(depth / SPACING)] ?? NaN;
      const there = (day: number): number => groundTemperature({ wave: temperate, diffusivity: loam, depth: metres(depth), day: dayOfYear(day) });
      return fitWaveSeries({ readings: series(1, last, 1, (day) => there(day) + strayed(day)) });
    });
    // Student's t for 95 % lies between 2.04 (33 degrees of freedom) and 3.18 (three); the trials know a share to a twentieth.
    const held = trials.filter(({ wave, standardErrors }) => Math.abs(wave.mean - 10) < 2.04 * standardErrors.mean).length / trials.length;
    expect(held).toBeGreaterThan(0.75);
    expect(trials.filter(({ degreesOfFreedom }) => degreesOfFreedom < 33).length / trials.length).toBeGreaterThan(0.5);
  });

  it('through the hours of weather files err as the fits of their twelve months do, not a tenth of it', () => {
    const statistics = loadFixture('ground-temperature-epw-check');
    const rowOf = (quantity: string) => statistics.rows.find((row) => row.text('quantity') === quantity);
    for (const file of Object.keys(statistics.meta.columns)) {
      const { standardErrors, errorsByMonth, residualDeviation } = hoursFit(`${file}|1`);
      expect(errorsByMonth).toBe(true);
      const byMonths = [rowOf('se_mean_monthfit'), rowOf('se_A_monthfit')].map((row) => row?.number(file) ?? NaN);
      for (const [i, error] of [standardErrors.mean, standardErrors.amplitude].entries()) {
        // The same twelve pieces of information, and what reaches over the end of a month.
        expect(error / (byMonths[i] ?? NaN)).toBeGreaterThan(0.9);
        expect(error / (byMonths[i] ?? NaN)).toBeLessThan(1.35);
      }
      expect(standardErrors.mean / (residualDeviation / Math.sqrt(8760))).toBeGreaterThan(4);
    }
  });

  it('one by one, daily readings would feign a third of the true error', () => {
    const noise = normalNoise(3);
    let weather = 0;
    const readings = series(1, 1095, 1, (day) => (weather = 0.87 * weather + 3 * Math.sqrt(1 - 0.87 ** 2) * noise()) + at(temperate, day));
    const { residualDeviation, standardErrors, errorsByMonth, degreesOfFreedom } = fitWaveSeries({ readings });
    const oneByOne = residualDeviation / Math.sqrt(readings.length);
    expect(errorsByMonth).toBe(true);
    expect(degreesOfFreedom).toBe(33);
    expect(standardErrors.mean / oneByOne).toBeGreaterThan(2.5);
    expect(standardErrors.mean / oneByOne).toBeLessThan(5);
  });

  it('tells that seasons are missing, and that a second harmonic may be chance', () => {
    const noise = normalNoise(12);
    const summer = fitWaveSeries({ readings: series(100, 12, 15, (day) => at(temperate, day) + 0.3 * noise()) });
    expect(summer.findings.map(({ code }) => code)).toContain('readings-leave-seasons-out');
    expect(summer.standardErrors.mean).toBeGreaterThan(0.1);
    const chance = fitWaveSeries({ readings: series(1, 24, 15.2, (day) => at(temperate, day) + noise()), harmonics: 2 });
    expect(chance.findings.map(({ code }) => code)).toEqual(['second-harmonic-vague']);
  });

  it('refuses readings that hold no wave', () => {
    expect(() => fitWaveSeries({ readings: series(1, 3, 90, () => 5) })).toThrow('readings');
    expect(() => fitWaveSeries({ readings: series(50, 10, 0, () => 5) })).toThrow('seasons');
    expect(() => fitWaveSeries({ readings: series(1, 60, 1, (day) => at(temperate, day)) })).toThrow('months');
    expect(() => fitWaveSeries({ readings: series(1, 52, 7, () => 5), harmonics: 3 })).toThrow('harmonics');
    expect(() => fitWaveSeries({ readings: series(1, 52, 7, () => 5), averaging: hours(-1) })).toThrow('averaging');
  });

  it('knows nothing of the coldest day of a constant', () => {
    const found = fitWaveSeries({ readings: series(1, 52, 7, () => 0) });
    expect(everyNumberFinite(found)).toBe(true);
    expect(days.of(found.standardErrors.coldestDay)).toBeCloseTo(365 / Math.sqrt(12), 9);
    expect(found.findings.map(({ code }) => code)).toEqual(['coldest-day-vague']);
  });
});
