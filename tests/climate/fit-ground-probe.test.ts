import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitGroundProbe, type GroundProbeFitResult, type GroundReading, groundTemperature, type SecondHarmonic } from '../../src/climate/index.js';
import type { AnnualWave } from '../../src/states/index.js';
import { celsius, dayOfYear, days, type Diffusivity, fraction, kelvinDifference, metres, squareMetresPerDay } from '../../src/units/index.js';
import { FITS_LEFT_OUT, probeReadings } from '../published/climate-fits.checks.js';
import { everyNumberFinite } from '../support/finite.js';
import { normalNoise } from '../support/noise.js';
import { soilRecord } from '../support/soil-records.js';

const truth = {
  wave: { of: 'ground surface', mean: celsius(11), amplitude: kelvinDifference(10.5), coldestDay: dayOfYear(33), period: days(365) } as AnnualWave,
  diffusivity: squareMetresPerDay(0.055),
};

interface Ground {
  readonly wave: AnnualWave;
  readonly diffusivity: Diffusivity;
  readonly secondHarmonic?: SecondHarmonic;
}

const SIX = [21, 81, 141, 201, 261, 321];
const THREE = [0.5, 1, 1.5];

const read = (ground: Ground, moments: readonly number[], depths: readonly number[], noise: () => number = () => 0): readonly GroundReading[] =>
  moments.flatMap((moment) =>
    depths.map((depth) => {
      const place = { day: dayOfYear(moment), depth: metres(depth) };
      return { ...place, temperature: celsius(groundTemperature({ ...ground, ...place }) + noise()) };
    }),
  );

const codes = ({ findings }: GroundProbeFitResult): readonly string[] => findings.map(({ code }) => code);
const sameDay = (a: number, b: number, year: number): number => Math.min(Math.abs(a - b) % year, year - (Math.abs(a - b) % year));

const anyGround = fc.record({
  wave: fc.record({
    of: fc.constant('ground surface' as const),
    mean: fc.double({ min: -5, max: 25, noNaN: true }).map((mean) => celsius(mean)),
    amplitude: fc.double({ min: 2, max: 22, noNaN: true }).map((amplitude) => kelvinDifference(amplitude)),
    coldestDay: fc.double({ min: 1, max: 365.9, noNaN: true }).map((day) => dayOfYear(day)),
    period: fc.constantFrom(days(365), days(365.25)),
  }),
  diffusivity: fc.double({ min: 0.005, max: 0.2, noNaN: true }).map((value) => squareMetresPerDay(value)),
});

describe('fitGroundProbe', () => {
  it('gives back the wave and the diffusivity it is read from, in either hemisphere', () => {
    fc.assert(
      fc.property(anyGround, (ground) => {
        const found = fitGroundProbe({ readings: read(ground, SIX, THREE), period: ground.wave.period });
        expect(found.wave.mean).toBeCloseTo(ground.wave.mean, 5);
        expect(found.wave.amplitude).toBeCloseTo(ground.wave.amplitude, 5);
        expect(sameDay(found.wave.coldestDay, ground.wave.coldestDay, days.of(ground.wave.period))).toBeLessThan(1e-4);
        expect(found.diffusivity / ground.diffusivity).toBeCloseTo(1, 6);
        expect(found.residualDeviation).toBeLessThan(1e-6);
      }),
      { numRuns: 40 },
    );
  });

  it('gives back two harmonics, and a wave of which diffusivity or coldest day are known', () => {
    const secondHarmonic = { amplitude: kelvinDifference(1.8), coldestDay: dayOfYear(77) };
    const months = Array.from({ length: 12 }, (_, i) => 16 + 30.4 * i);
    const two = fitGroundProbe({ readings: read({ ...truth, secondHarmonic }, months, THREE), harmonics: 2 });
    expect(two.wave.amplitude).toBeCloseTo(10.5, 6);
    expect(two.secondHarmonic?.amplitude).toBeCloseTo(1.8, 6);
    expect(two.secondHarmonic?.coldestDay).toBeCloseTo(77, 4);
    expect(squareMetresPerDay.of(two.diffusivity)).toBeCloseTo(0.055, 7);
    const oneDepth = read(truth, [30, 60, 90], [1]);
    const known = fitGroundProbe({ readings: oneDepth, diffusivity: truth.diffusivity, coldestDay: truth.wave.coldestDay });
    expect([known.wave.mean, known.wave.amplitude].map((value) => Number(value.toFixed(8)))).toEqual([11, 10.5]);
    expect(known.standardErrors.coldestDay).toBe(0);
    expect(known.diffusivityError).toBe(0);
  });

  it('does not mind the order of the readings', () => {
    const readings = probeReadings('ground-temperature-probe');
    const [forwards, backwards] = [fitGroundProbe({ readings }), fitGroundProbe({ readings: [...readings].reverse() })];
    expect(backwards.diffusivity / forwards.diffusivity).toBeCloseTo(1, 7);
    expect(backwards.standardErrors.amplitude).toBeCloseTo(forwards.standardErrors.amplitude, 7);
  });

  it('leaves residuals that no neighbouring wave or diffusivity makes smaller', () => {
    const readings = probeReadings('ground-temperature-probe');
    const { wave, diffusivity } = fitGroundProbe({ readings });
    const squares = (ground: Ground): number =>
      readings.reduce((sum, { temperature, ...place }) => sum + (temperature - groundTemperature({ ...ground, ...place })) ** 2, 0);
    const least = squares({ wave, diffusivity });
    for (const step of [-1e-3, 1e-3]) {
      expect(squares({ wave, diffusivity: squareMetresPerDay(squareMetresPerDay.of(diffusivity) * (1 + step)) })).toBeGreaterThan(least);
      for (const key of ['mean', 'amplitude', 'coldestDay'] as const) {
        expect(squares({ wave: { ...wave, [key]: wave[key] + 10 * step }, diffusivity })).toBeGreaterThan(least);
      }
    }
  });

  it('finds the least of all diffusivities, whatever the readings', () => {
    const noise = normalNoise(13);
    for (let trial = 0; trial < 5; trial += 1) {
      const readings = read(truth, SIX, THREE, () => 1.2 * noise());
      const { residualDeviation } = fitGroundProbe({ readings });
      const least = residualDeviation ** 2 * (18 - 4);
      for (let step = 0; step <= 300; step += 1) {
        const diffusivity = (1e-8 * 1000 ** (step / 300)) as Diffusivity;
        const known = fitGroundProbe({ readings, diffusivity });
        expect(known.residualDeviation ** 2 * (18 - 3)).toBeGreaterThanOrEqual(least * (1 - 1e-9));
      }
    }
  });

  it('has limits that hold the truth in 95 of 100 probes, of all four and of the ground at a depth', () => {
    const noise = normalNoise(5);
    const wanted = [{ depth: metres(1.5), day: dayOfYear(61) }];
    const there = groundTemperature({ ...truth, depth: metres(1.5), day: dayOfYear(61) });
    const trials = Array.from({ length: 400 }, () => fitGroundProbe({ readings: read(truth, SIX, THREE, () => 0.3 * noise()), wanted }));
    const share = (inside: (fit: GroundProbeFitResult) => boolean): number => trials.filter(inside).length / trials.length;
    const held = [
      share(({ meanBand: { low, high } }) => low < 11 && 11 < high),
      share(({ amplitudeBand: { low, high } }) => low < 10.5 && 10.5 < high),
      share(({ diffusivityBand: { low, high } }) => low < truth.diffusivity && truth.diffusivity < high),
      // Student's t with 14 degrees of freedom: 2.145.
      share(({ wave, standardErrors }) => Math.abs(wave.coldestDay - 33) < 2.145 * days.of(standardErrors.coldestDay)),
      share(({ temperatures: [at] }) => Math.abs((at?.temperatureBand.estimate ?? NaN) - there) < 2.145 * (at?.temperatureError ?? 0)),
    ];
    // 400 trials leave 1.1 % either way: three of those.
    for (const part of held) expect(Math.abs(part - 0.95)).toBeLessThan(0.033);
  });

  it('answers six readings within 60 days with wide limits and a stop, and the truth inside', () => {
    const found = fitGroundProbe({ readings: probeReadings('ground-temperature-probe-sparse') });
    expect(found.degreesOfFreedom).toBe(2);
    expect(found.meanBand.high - found.meanBand.low).toBeGreaterThan(8);
    expect(found.meanBand.low).toBeLessThan(11);
    expect(found.meanBand.high).toBeGreaterThan(11);
    expect(found.findings.find(({ code }) => code === 'probe-fit-vague')?.level).toBe('stop');
    expect(codes(found)).toContain('readings-leave-seasons-out');
  });

  it('is helped by what is known: the sparse readings with diffusivity and coldest day leave a fifth of the width', () => {
    const readings = probeReadings('ground-temperature-probe-sparse');
    const alone = fitGroundProbe({ readings });
    const helped = fitGroundProbe({ readings, diffusivity: truth.diffusivity, coldestDay: truth.wave.coldestDay });
    const width = ({ meanBand }: GroundProbeFitResult): number => meanBand.high - meanBand.low;
    expect(width(helped) / width(alone)).toBeLessThan(0.2);
    expect(Math.abs(helped.wave.mean - 11)).toBeLessThan(0.5);
  });

  it('tells depths that are close, and a depth that disagrees', () => {
    const noise = normalNoise(9);
    expect(codes(fitGroundProbe({ readings: read(truth, SIX, [0.9, 1.2], () => 0.05 * noise()) }))).toEqual(['probe-depths-close']);
    const spoilt = read(truth, SIX, THREE).map((reading) =>
      reading.depth === 1 ? { ...reading, temperature: celsius(reading.temperature + 1.5) } : reading,
    );
    expect(codes(fitGroundProbe({ readings: spoilt }))).toContain('probe-depth-disagrees');
  });

  it('finds the layer or water in the record of Princeton, where neighbouring depths give fivefold diffusivities', () => {
    const found = fitGroundProbe({ readings: soilRecord('USGS_MN_Princeton_MC11 1993 (1 Mar-30 Nov)').readings, period: days(365.25) });
    expect(codes(found).filter((code) => code === 'probe-depth-disagrees')).toHaveLength(2);
    expect(found.errorsByMonth).toBe(true);
    expect(found.byDepth.map(({ depth }) => depth)).toEqual([0.5, 1, 1.5, 2, 2.5]);
  });

  it('refuses readings that leave the diffusivity or all open', () => {
    expect(() => fitGroundProbe({ readings: read(truth, SIX, [1]) })).toThrow('diffusivity');
    expect(() => fitGroundProbe({ readings: read(truth, [21, 81], [0.5, 1]) })).toThrow('readings');
    const daily = Array.from({ length: 60 }, (_, i) => 100 + i);
    const noise = normalNoise(4);
    expect(() => fitGroundProbe({ readings: read(truth, daily, [0.6, 1.2], () => 0.2 * noise()) })).toThrow('months');
    expect(() => fitGroundProbe({ readings: read(truth, SIX, THREE), coverage: fraction(1) })).toThrow('coverage');
  });

  it('warns of a profile read on one day, which tells all only where it is exact', () => {
    const noise = normalNoise(8);
    const found = fitGroundProbe({ readings: read(truth, [120], [0.5, 0.8, 1.2, 1.6, 2, 2.5, 3], () => 0.05 * noise()) });
    expect(codes(found)).toContain('readings-leave-seasons-out');
  });

  it('never gives NaN for readings of no wave at all', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -20, max: 30, noNaN: true }), { minLength: 18, maxLength: 18 }), (values) => {
        const readings = read(truth, SIX, THREE).map((reading, i) => ({ ...reading, temperature: celsius(values[i] ?? 0) }));
        try {
          expect(everyNumberFinite(fitGroundProbe({ readings }))).toBe(true);
        } catch (error) {
          expect(error).toMatchObject({ name: 'InputError', argument: 'readings' });
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('values of another program that end one unit high', () => {
  it.each(Object.entries(FITS_LEFT_OUT))('%s: a third computation agrees with the library', (_, { expected, third, compute }) => {
    const digit = 10 ** -4;
    expect(compute() / third).toBeCloseTo(1, 6);
    expect(Math.abs(compute() - expected)).toBeGreaterThan(digit / 2);
    expect(Math.abs(compute() - expected)).toBeLessThan(digit);
  });
});
