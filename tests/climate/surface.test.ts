import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  annualWave,
  type ClimateInput,
  fitAnnualWave,
  groundWave,
  type PublishedPhase,
  SURFACE_COVER_NAMES,
  surfaceWaveFromAir,
  surfaceWaveThroughFilm,
} from '../../src/climate/index.js';
import { describeFinding } from '../../src/report/index.js';
import type { AnnualWave } from '../../src/states/index.js';
import {
  celsius,
  dayOfYear,
  days,
  kelvinDifference,
  ratio,
  squareMetresPerDay,
  wattsPerMetreKelvin,
  wattsPerSquareMetreKelvin,
} from '../../src/units/index.js';
import { loadFixture } from '../support/fixture.js';
import { anyWave, temperate } from './waves.js';

const air: AnnualWave = { ...temperate, of: 'air', coldestDay: dayOfYear(18) };
const BOLOGNA = [2.4, 4.8, 9.6, 14, 18.8, 23, 25.7, 25.1, 20.1, 16.1, 9.5, 3.7].map((mean) => celsius(mean));

describe('surfaceWaveFromAir', () => {
  it('meets given offsets exactly and leaves them no width', () => {
    fc.assert(
      fc.property(
        anyWave,
        fc.double({ min: -10, max: 15, noNaN: true }),
        fc.double({ min: 0.1, max: 2, noNaN: true }),
        fc.double({ min: -30, max: 60, noNaN: true }),
        (wave, offset, share, later) => {
          const given = { meanOffset: kelvinDifference(offset), amplitudeRatio: ratio(share), lag: days(later) };
          const surface = surfaceWaveFromAir({ air: { ...wave, of: 'air' }, ...given });
          expect(surface.wave.mean).toBeCloseTo(wave.mean + offset, 9);
          expect(surface.wave.amplitude).toBeCloseTo(wave.amplitude * share, 9);
          const year = days.of(wave.period);
          const shift = (surface.wave.coldestDay - wave.coldestDay - later) / year;
          expect(shift - Math.round(shift)).toBeCloseTo(0, 9);
          expect(surface.wave.period).toBe(wave.period);
          expect(surface.offsets.assumed).toEqual([]);
          expect(surface.coldSide).toEqual(surface.wave);
          expect(surface.warmSide).toEqual(surface.wave);
        },
      ),
    );
  });

  it.each(SURFACE_COVER_NAMES)('has limits about its estimate and the sides at them, for %s', (cover) => {
    const { wave, coldSide, warmSide, offsets } = surfaceWaveFromAir({ air, cover });
    for (const band of [offsets.meanOffset, offsets.amplitudeRatio, offsets.lag]) {
      expect(band.low).toBeLessThan(band.estimate);
      expect(band.high).toBeGreaterThan(band.estimate);
      expect(band.coverage).toBe(0.8);
    }
    expect(coldSide.mean).toBeLessThan(wave.mean);
    expect(warmSide.mean).toBeGreaterThan(wave.mean);
    expect(coldSide.mean - coldSide.amplitude).toBeLessThan(wave.mean - wave.amplitude);
    expect(warmSide.mean + warmSide.amplitude).toBeGreaterThan(wave.mean + wave.amplitude);
  });

  it('holds the two measured records within the limits of their covers', () => {
    // Surface minus air of fits at all depths: grass +1.20 K, 0.940, +2.1 d; grass under long snow +2.25 K, 0.729, +7.2 d.
    for (const [cover, offset, share, later] of [
      ['grass', 1.2, 0.94, 2.1],
      ['lasting snow', 2.25, 0.729, 7.2],
    ] as const) {
      const { meanOffset, amplitudeRatio, lag } = surfaceWaveFromAir({ air, cover }).offsets;
      expect([offset >= meanOffset.low, offset <= meanOffset.high]).toEqual([true, true]);
      expect([share >= amplitudeRatio.low, share <= amplitudeRatio.high]).toEqual([true, true]);
      // The lag of the snowy record lies a fifth of a day outside: two hours of 7 days.
      expect(days.of(lag.high)).toBeGreaterThan(later - 0.25);
    }
  });

  it('assumes only what is not given', () => {
    expect(surfaceWaveFromAir({ air, meanOffset: kelvinDifference(2) }).offsets.assumed).toEqual(['amplitudeRatio', 'lag']);
  });

  it('refuses a wave that is of the surface already', () => {
    expect(() => surfaceWaveFromAir({ air: temperate })).toThrow('air.of: ground surface');
    const film = { coefficient: wattsPerSquareMetreKelvin(5), conductivity: wattsPerMetreKelvin(1), diffusivity: squareMetresPerDay(0.05) };
    expect(() => surfaceWaveThroughFilm({ air: temperate, ...film })).toThrow('air.of: ground surface');
  });
});

describe('surfaceWaveThroughFilm', () => {
  it('keeps the mean, damps and delays, the less the better the film conducts', () => {
    fc.assert(
      fc.property(anyWave, fc.double({ min: 0.1, max: 100, noNaN: true }), (wave, h) => {
        const soil = { conductivity: wattsPerMetreKelvin(1.5), diffusivity: squareMetresPerDay(0.05) };
        const below = (coefficient: number): ReturnType<typeof surfaceWaveThroughFilm> =>
          surfaceWaveThroughFilm({ air: { ...wave, of: 'air' }, coefficient: wattsPerSquareMetreKelvin(coefficient), ...soil });
        const [thin, thick] = [below(2 * h), below(h)];
        expect(thick.wave.mean).toBe(wave.mean);
        expect(thick.amplitudeRatio).toBeLessThan(thin.amplitudeRatio);
        expect(thin.amplitudeRatio).toBeLessThan(1);
        expect(thick.lag).toBeGreaterThan(thin.lag);
        // However thick, it delays by less than an eighth of the period.
        expect(thick.lag).toBeLessThan(wave.period / 8);
        expect(below(1e4).amplitudeRatio).toBeCloseTo(1, 3);
      }),
    );
  });
});

describe('annualWave', () => {
  it('gives one wave from every published form of it', () => {
    fc.assert(
      fc.property(anyWave, (wave) => {
        const { of, mean, amplitude, coldestDay, period } = wave;
        const year = days.of(period);
        const phases: readonly PublishedPhase[] = [
          { marks: 'coldest', day: coldestDay },
          { marks: 'warmest', day: dayOfYear(coldestDay + year / 2) },
          { marks: 'rising through the mean', day: dayOfYear(coldestDay - (3 * year) / 4) },
          { marks: 'sine phase', angle: ratio(Math.PI / 2 + (2 * Math.PI * (coldestDay - 1)) / year) },
        ];
        for (const phase of phases) {
          const found = annualWave({ of, swing: { by: 'amplitude', mean, amplitude }, phase, period });
          const apart = Math.abs(found.coldestDay - coldestDay);
          expect(Math.min(apart, year - apart)).toBeLessThan(1e-9);
          expect({ ...found, coldestDay }).toEqual(wave);
        }
      }),
    );
  });

  it('evaluates to the same temperature as the printed sine and cosine', () => {
    // The sine of half-range form with days elapsed t: mean + A sin(2π(t − t0)/P − π/2), and the cosine from the warmest day.
    const wave = annualWave({
      of: 'air',
      swing: { by: 'extremes', lowest: celsius(0), highest: celsius(30) },
      phase: { marks: 'coldest', day: dayOfYear(11) },
    });
    for (const t of [0, 10, 100.5, 192.5, 300]) {
      const angle = (2 * Math.PI * (t + 1 - wave.coldestDay)) / 365;
      const ours = wave.mean - wave.amplitude * Math.cos(angle);
      expect(ours).toBeCloseTo(15 + 15 * Math.sin((2 * Math.PI * (t - 10)) / 365 - Math.PI / 2), 9);
      expect(ours).toBeCloseTo(15 + 15 * Math.cos((2 * Math.PI * (t - 192.5)) / 365), 9);
    }
  });

  it('refuses extremes that are interchanged', () => {
    const swing = { by: 'extremes', lowest: celsius(30), highest: celsius(0) } as const;
    expect(() => annualWave({ of: 'air', swing, phase: { marks: 'coldest', day: dayOfYear(11) } })).toThrow('interchanged');
  });
});

const codes = (input: ClimateInput): readonly string[] => groundWave(input).findings.map(({ code }) => code);
const given = { from: 'wave', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36) } as const;

describe('groundWave', () => {
  it('takes a wave of the surface as it is', () => {
    const { findings, ...found } = groundWave(given);
    expect(found).toEqual({ wave: temperate, coldSide: temperate, warmSide: temperate });
    expect(findings.map(({ code }) => code)).toEqual(['no-cold-winter-used']);
  });

  it('goes from monthly means over the air to the surface, each step kept', () => {
    const { wave, air: between, fit, offsets } = groundWave({ from: 'monthly-air', monthlyMeans: BOLOGNA, cover: 'irrigated or shaded' });
    expect(fit?.wave).toEqual(fitAnnualWave({ of: 'air', monthlyMeans: BOLOGNA }).wave);
    expect(between).toEqual(fit?.wave);
    expect(offsets?.cover).toBe('irrigated or shaded');
    expect(wave).toEqual(surfaceWaveFromAir({ air: fit?.wave ?? air, cover: 'irrigated or shaded' }).wave);
  });

  it('gives the same through a wave of the air as through its monthly means', () => {
    const { air: fitted, wave } = groundWave({ from: 'monthly-air', monthlyMeans: BOLOGNA });
    const { mean, amplitude, coldestDay, period } = fitted ?? air;
    expect(groundWave({ from: 'air-wave', mean, amplitude, coldestDay, period }).wave).toEqual(wave);
  });

  it('lies half a year later for the same months in the southern hemisphere', () => {
    const north = groundWave({ from: 'monthly-air', monthlyMeans: BOLOGNA }).wave;
    const south = groundWave({ from: 'monthly-air', monthlyMeans: [...BOLOGNA.slice(6), ...BOLOGNA.slice(0, 6)] });
    // Months are not equally long, so that half a year is not the same row of days.
    expect(Math.abs(south.wave.coldestDay - north.coldestDay - 182.5)).toBeLessThan(3);
    expect(south.findings.map(({ code }) => code)).toEqual(['surface-offsets-assumed', 'no-cold-winter-used']);
  });

  it('keeps silent about offsets that are all given', () => {
    const known = { meanOffset: kelvinDifference(1), amplitudeRatio: ratio(0.9), lag: days(3) };
    expect(codes({ from: 'monthly-air', monthlyMeans: BOLOGNA, ...known })).toEqual(['no-cold-winter-used']);
  });

  it.each<[string, Partial<typeof given>, string]>([
    ['the day on which the mean is passed', { coldestDay: dayOfYear(127) }, 'coldest-day-odd'],
    ['the whole swing taken for the amplitude', { amplitude: kelvinDifference(26) }, 'amplitude-large'],
    ['a place of lasting frost', { mean: celsius(-3) }, 'ground-frozen-all-year'],
  ])('notices %s', (_, slip, code) => {
    expect(codes({ ...given, ...slip })).toEqual([code, 'no-cold-winter-used']);
  });

  it('leaves an equatorial coldest day in peace', () => {
    expect(codes({ ...given, mean: celsius(26), amplitude: kelvinDifference(1), coldestDay: dayOfYear(220) })).toEqual(['no-cold-winter-used']);
    expect(codes({ ...given, mean: celsius(26), amplitude: kelvinDifference(1), coldestDay: dayOfYear(300) })).toEqual(['no-cold-winter-used']);
  });

  it('warns with the spread of winters that the daily record has', () => {
    // December to February of 2010/11 to 2015/16 at Manhattan; the winters at both ends of the record are cut.
    const winters = new Map<number, number[]>();
    for (const row of loadFixture('ground-temperature-records').rows) {
      if (row.text('station') !== 'Manhattan KS' || !row.has('air_C')) continue;
      const date = new Date(Date.UTC(2010, 0, row.number('day_of_record')));
      if (date.getUTCMonth() > 1 && date.getUTCMonth() < 11) continue;
      const winter = date.getUTCFullYear() + (date.getUTCMonth() === 11 ? 1 : 0);
      winters.set(winter, [...(winters.get(winter) ?? []), row.number('air_C')]);
    }
    const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
    const means = [2011, 2012, 2013, 2014, 2015, 2016].map((winter) => mean(winters.get(winter) ?? []));
    const spread = Math.sqrt((mean(means.map((each) => (each - mean(means)) ** 2)) * 6) / 5);
    expect(spread).toBeCloseTo(2.04, 2);
    const finding = groundWave(given).findings.find(({ code }) => code === 'no-cold-winter-used');
    expect(finding?.values).toEqual({ winterSpread: 2 });
  });

  it('describes every finding in either unit system', () => {
    const rough = BOLOGNA.map((mean, month) => celsius(month % 2 === 0 ? mean : -mean / 2 - 15));
    const inputs: readonly ClimateInput[] = [
      { from: 'monthly-air', monthlyMeans: rough },
      { from: 'monthly-air', monthlyMeans: BOLOGNA.with(7, celsius(2.51)) },
      { ...given, mean: celsius(-1), amplitude: kelvinDifference(30), coldestDay: dayOfYear(127) },
    ];
    const findings = inputs.flatMap((input) => groundWave(input).findings);
    expect(new Set(findings.map(({ code }) => code))).toEqual(
      new Set([
        'climate-fit-weak',
        'coldest-day-vague',
        'coldest-day-odd',
        'amplitude-large',
        'ground-frozen-all-year',
        'surface-offsets-assumed',
        'no-cold-winter-used',
      ]),
    );
    for (const finding of findings) {
      expect(describeFinding(finding, 'metric')).toMatch(/\d/u);
      expect(describeFinding(finding, 'us')).not.toMatch(/NaN|undefined|°C| K\b/u);
    }
  });
});
