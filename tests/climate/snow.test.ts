import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clearedStripWave,
  coveredSurface,
  type CoveredSurface,
  type CoveredSurfaceInput,
  groundTemperature,
  type SnowMonth,
  sturmSnowConductivity,
  surfaceWaveFromAir,
} from '../../src/climate/index.js';
import { exponentialResponse, groundResponse, twoPipeStacked } from '../../src/ground/index.js';
import { describeFinding } from '../../src/report/index.js';
import {
  celsius,
  dayOfYear,
  days,
  diameterMillimetres,
  joulesPerCubicMetreKelvin,
  kelvinDifference,
  kilogramsPerCubicMetre,
  metres,
  ratio,
  squareMetresPerDay,
  squareMetresPerSecond,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { SANDSTONE_AIR, SANDSTONE_SNOW } from '../published/climate-frost.checks.js';
import { loadFixture } from '../support/fixture.js';
import { surfaceBelowSnow } from './snow-column.js';
import { anyWave, loam, temperate } from './waves.js';

const ground = { conductivity: wattsPerMetreKelvin(1.5), diffusivity: loam };
const exact = { meanOffset: kelvinDifference(0), amplitudeRatio: ratio(1), lag: days(0) };
const air = { of: 'air', mean: celsius(6), amplitude: kelvinDifference(15), coldestDay: dayOfYear(19), period: days(365) } as const;
const snowOf = (depths: readonly number[]): readonly SnowMonth[] =>
  depths.map((depth) => ({ depth: metres(depth), density: kilogramsPerCubicMetre(220) }));
const NONE = snowOf(Array.from({ length: 12 }, () => 0));
const WINTER = [0.2, 0.25, 0.15, 0.02, 0, 0, 0, 0, 0, 0, 0.03, 0.12];
const THIN = WINTER.map((depth) => depth / 6);

/** Months' middles of a year of 365 days, and what is between them. */
const MIDDLES = [15.5, 45, 74.5, 105, 135.5, 166, 196.5, 227.5, 258, 288.5, 319, 349.5];
function between(values: readonly number[], share: number): number {
  const day = 365 * share;
  const points = [
    [MIDDLES[11] ?? 0, values[11] ?? 0, -365],
    ...MIDDLES.map((middle, month) => [middle, values[month] ?? 0, 0]),
    [MIDDLES[0] ?? 0, values[0] ?? 0, 365],
  ].map(([middle = 0, value = 0, year = 0]) => [middle + year, value] as const);
  const next = points.findIndex(([middle]) => middle > day);
  const [[x0, y0], [x1, y1]] = [points[next - 1] ?? [0, 0], points[next] ?? [1, 0]];
  return y0 + ((y1 - y0) * (day - x0)) / (x1 - x0);
}

const harmonic = (values: Float64Array, n: number): { amplitude: number; coldest: number } => {
  let [cosine, sine] = [0, 0];
  values.forEach((value, i) => {
    const angle = (2 * Math.PI * n * (i + 0.5)) / values.length;
    cosine += (2 * value * Math.cos(angle)) / values.length;
    sine += (2 * value * Math.sin(angle)) / values.length;
  });
  return { amplitude: Math.hypot(cosine, sine), coldest: (365 * Math.atan2(-sine, -cosine)) / (2 * Math.PI * n) };
};
/** How far two days lie apart, with n waves a year. */
function apart(a: number, b: number, n = 1): number {
  const waves = ((a - b) * n) / 365;
  return (Math.abs(waves - Math.round(waves)) * 365) / n;
}

describe('the surface below snow against a finite-volume run', () => {
  it.each([
    ['thin snow, which never melts from below', THIN, 2],
    ['the usual snow', WINTER, 6],
    ['much snow', WINTER.map((depth) => 2 * depth), 6],
    ['a warmer place', WINTER.map((depth) => depth / 2), 10],
  ])('has mean, both waves and their days for %s', (_, depths, mean) => {
    const there = { ...air, mean: celsius(mean) };
    const found = coveredSurface({ air: there, snow: snowOf(depths), ...exact, ...ground });
    const conductivity = sturmSnowConductivity({ density: kilogramsPerCubicMetre(220) });
    const run = surfaceBelowSnow({
      conductivity: 1.5,
      diffusivity: 0.05,
      outside: (share) => mean - 15 * Math.cos(2 * Math.PI * (share - 18 / 365)),
      snow: (share) => {
        const depth = between(depths, share);
        return { resistance: depth / conductivity, closed: depth >= 0.05 };
      },
      start: found.wave.mean,
    });
    const [first, second] = [harmonic(run, 1), harmonic(run, 2)];
    // Snow closes between two steps of five days; with 183 steps it comes four times as near.
    expect(Math.abs(found.wave.mean - run.reduce((sum, each) => sum + each, 0) / run.length)).toBeLessThan(0.06);
    expect(Math.abs(found.wave.amplitude - first.amplitude)).toBeLessThan(0.06);
    expect(Math.abs(found.secondHarmonic.amplitude - second.amplitude)).toBeLessThan(0.06);
    expect(apart(found.wave.coldestDay - 1, first.coldest)).toBeLessThan(0.75);
    expect(apart(found.secondHarmonic.coldestDay - 1, second.coldest, 2)).toBeLessThan(0.75);
  });
});

describe('coveredSurface', () => {
  it('without snow is the surface under its cover', () => {
    fc.assert(
      fc.property(anyWave, fc.constantFrom('grass', 'long grass', 'bare soil', 'pavement'), (wave, cover) => {
        const there = { ...wave, amplitude: kelvinDifference(wave.amplitude + 0.1), of: 'air' } as const;
        const found = coveredSurface({ air: there, cover, snow: NONE, ...ground });
        const open = surfaceWaveFromAir({ air: there, cover });
        expect([found.wave, found.coldSide, found.warmSide, found.offsets]).toEqual([open.wave, open.coldSide, open.warmSide, open.offsets]);
        expect(found.secondHarmonic.amplitude).toBeLessThan(1e-9);
        expect(found.remainder).toBeLessThan(1e-9);
        expect(found.response.covered).toEqual(found.response.open);
        expect(found.meltingTime).toBe(0);
        expect(found.findings.map(({ code }) => code)).toEqual(['surface-offsets-assumed']);
      }),
      { numRuns: 20 },
    );
  });
  it('has limits about what it finds, cold below warm, and swings less than without snow', () => {
    fc.assert(
      fc.property(fc.double({ min: -2, max: 9, noNaN: true }), fc.double({ min: 0.3, max: 2.5, noNaN: true }), (mean, much) => {
        const input: CoveredSurfaceInput = { air: { ...air, mean: celsius(mean) }, snow: snowOf(WINTER.map((depth) => much * depth)), ...ground };
        const { offsets, openOffsets, coldSide, wave, warmSide } = coveredSurface(input);
        for (const band of [offsets.meanOffset, offsets.amplitudeRatio, offsets.lag]) {
          expect(band.low).toBeLessThanOrEqual(band.estimate);
          expect(band.high).toBeGreaterThanOrEqual(band.estimate);
        }
        expect(offsets.amplitudeRatio.estimate).toBeLessThan(openOffsets.amplitudeRatio.estimate);
        expect(coldSide.mean - coldSide.amplitude).toBeLessThanOrEqual(wave.mean - wave.amplitude);
        expect(warmSide.mean + warmSide.amplitude).toBeGreaterThanOrEqual(wave.mean + wave.amplitude);
      }),
      { numRuns: 25 },
    );
  });
  it('is no colder for warmer air, nor for a warmer cover', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 12, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true }), (mean, more) => {
        const of = (offset: number): number =>
          coveredSurface({ air: { ...air, mean: celsius(mean) }, ...exact, meanOffset: kelvinDifference(offset), snow: snowOf(WINTER), ...ground })
            .wave.mean;
        expect(of(more)).toBeGreaterThanOrEqual(of(0) - 1e-9);
      }),
      { numRuns: 25 },
    );
  });
  it('turns with the hemisphere', () => {
    const south = { ...air, coldestDay: dayOfYear(air.coldestDay + 181) };
    // Half a year by months: seven to twelve, then one to six, which are 181 and 184 days.
    const [north, turned] = [air, south].map((each, half) =>
      coveredSurface({ air: each, snow: snowOf(half === 0 ? WINTER : [...WINTER.slice(6), ...WINTER.slice(0, 6)]), ...ground }),
    );
    expect(turned?.wave.mean).toBeCloseTo(north?.wave.mean ?? NaN, 1);
    expect(Math.abs((turned?.wave.coldestDay ?? NaN) - (north?.wave.coldestDay ?? NaN) - 181)).toBeLessThan(2);
  });
  it('refuses snow counted twice, snow that no ground carries, and air that does not swing', () => {
    expect(() => coveredSurface({ air, cover: 'lasting snow', snow: snowOf(WINTER), ...ground })).toThrow('snow would count twice');
    expect(() => coveredSurface({ air, snow: snowOf(WINTER.with(0, 4)), ...ground })).toThrow('snow.0.depth');
    expect(() => coveredSurface({ air: { ...air, amplitude: kelvinDifference(0) }, snow: snowOf(WINTER), ...ground })).toThrow('air.amplitude');
  });
  it('tells that it relies on snow, and of snow in summer, in either unit system', () => {
    expect(coveredSurface({ air, snow: snowOf(WINTER), ...ground }).findings.map(({ code }) => code)).toEqual([
      'surface-offsets-assumed',
      'snow-relied-on',
    ]);
    const { findings } = coveredSurface({ air, snow: snowOf([...WINTER.slice(6), ...WINTER.slice(0, 6)]), ...ground });
    expect(findings.find(({ code }) => code === 'snow-in-mild-air')?.values).toMatchObject({ month: 7 });
    for (const finding of findings) expect(describeFinding(finding, 'us')).not.toMatch(/NaN|undefined|°C| K\b/u);
  });
});

describe('the snowy record of Sandstone', () => {
  const sandstone = (snow: readonly SnowMonth[], conductivity = 1.5): CoveredSurface =>
    coveredSurface({ air: SANDSTONE_AIR, snow, ...ground, conductivity: wattsPerMetreKelvin(conductivity) });
  /** How far the ground lies from the daily readings, root mean square [K]. */
  const missed = ({ wave, secondHarmonic }: CoveredSurface, column: string, depth: number): number => {
    const squares = loadFixture('ground-temperature-records')
      .rows.filter((row) => row.text('station').startsWith('Sandstone') && row.has(column))
      .map((row) => {
        const day = dayOfYear(row.number('day_of_record') + 0.5);
        return (groundTemperature({ wave, secondHarmonic, diffusivity: loam, depth: metres(depth), day }) - row.number(column)) ** 2;
      });
    return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
  };
  it('is met better from the air and usual snow than by offsets for lasting snow, 1.52 and 1.28 K', () => {
    const found = sandstone(SANDSTONE_SNOW);
    expect(missed(found, 'soil_050cm_C', 0.5)).toBeLessThan(1);
    expect(missed(found, 'soil_100cm_C', 1)).toBeLessThan(1.1);
  });
  it('lies within the limits, which are near to those assumed where only the season of the snow is known', () => {
    const { meanOffset, amplitudeRatio, lag } = sandstone(SANDSTONE_SNOW).offsets;
    const assumed = surfaceWaveFromAir({ air: SANDSTONE_AIR, cover: 'lasting snow' }).offsets;
    for (const [band, measured] of [
      [meanOffset, 2.254],
      [amplitudeRatio, 0.729],
      [lag, days(7.23)],
    ] as const) {
      expect(band.low).toBeLessThan(measured);
      expect(band.high).toBeGreaterThan(measured);
    }
    for (const [band, other, near] of [
      [meanOffset, assumed.meanOffset, 0.3],
      [amplitudeRatio, assumed.amplitudeRatio, 0.03],
    ] as const) {
      expect(Math.abs(band.low - other.low)).toBeLessThan(near);
      expect(Math.abs(band.high - other.high)).toBeLessThan(near);
    }
  });
  it('hardly asks how deep the snow was or what the ground conducts, since snow melts from below', () => {
    for (const [much, conductivity] of [
      [0.5, 1.5],
      [2, 1.5],
      [1, 1],
      [1, 2],
    ] as const) {
      const snow = SANDSTONE_SNOW.map(({ depth }) => ({ depth: metres(much * depth) }));
      const { meanOffset, amplitudeRatio } = sandstone(snow, conductivity).offsets;
      expect(Math.abs(meanOffset.estimate - 2.254)).toBeLessThan(0.5);
      expect(Math.abs(amplitudeRatio.estimate - 0.729)).toBeLessThan(0.05);
    }
  });
});

describe('the same snow for the response', () => {
  const soil = { ...ground, diffusivity: squareMetresPerSecond(6e-7), heatCapacity: joulesPerCubicMetreKelvin(2.5e6) };
  const layout = twoPipeStacked({ upperDepth: metres(1.2), lowerDepth: metres(1.8), trenches: 4, trenchSpacing: metres(3) });
  const pipe = { outsideDiameter: diameterMillimetres(32) };
  it('is taken as films by the room of responses, open below steady below covered', () => {
    const { open, steady, covered } = coveredSurface({ air, snow: snowOf(WINTER), ...ground }).response;
    const rises = [open, steady, covered].map((surface) => groundResponse({ layout, pipe, soil, surface }).riseAfter(days(90)));
    expect([...rises].sort((a, b) => a - b)).toEqual(rises);
    expect(exponentialResponse({ layout, pipe, soil, surface: covered })).toBeDefined();
  });
});

describe('clearedStripWave', () => {
  const covered = { ...temperate, mean: celsius(8.3), amplitude: kelvinDifference(11), coldestDay: dayOfYear(26) };
  const cleared = { ...temperate, mean: celsius(7), amplitude: kelvinDifference(14.5), coldestDay: dayOfYear(21) };
  const at = (stripWidth: number, depth: number): ReturnType<typeof clearedStripWave> =>
    clearedStripWave({ cleared, covered, stripWidth: metres(stripWidth), depth: metres(depth), diffusivity: loam });

  it('is the inverse Fourier integral of the same surface', () => {
    const d = Math.sqrt((0.05 * 365) / Math.PI);
    for (const [width, depth] of [
      [1, 0.5],
      [4, 1.5],
      [10, 2],
      [0.5, 3],
    ] as const) {
      // Share of the strip in e^(iωt): (2/π) ∫ sin(ξa)/ξ · exp(−z (√(σ² + ξ²) − σ)) dξ, σ = (1 + i)/D, by the midpoint rule.
      let [re, im] = [0, 0];
      const step = 0.002;
      for (let xi = step / 2; xi < 40 / depth; xi += step) {
        const [a, b] = [xi * xi, 2 / (d * d)];
        const root = Math.hypot(a, b);
        const [real, imaginary] = [Math.sqrt((root + a) / 2) - 1 / d, Math.sqrt((root - a) / 2) - 1 / d];
        const size = ((2 / Math.PI) * Math.sin((xi * width) / 2) * Math.exp(-depth * real) * step) / xi;
        re += size * Math.cos(depth * imaginary);
        im -= size * Math.sin(depth * imaginary);
      }
      const pointer = ({ amplitude, coldestDay }: typeof covered): readonly [number, number] => {
        const angle = (2 * Math.PI * (coldestDay - 1)) / 365;
        return [amplitude * Math.cos(angle), -amplitude * Math.sin(angle)];
      };
      const [[x0, y0], [x1, y1]] = [pointer(covered), pointer(cleared)];
      const [x, y] = [x0 + re * (x1 - x0) - im * (y1 - y0), y0 + re * (y1 - y0) + im * (x1 - x0)];
      const { wave } = at(width, depth);
      expect(wave.amplitude).toBeCloseTo(Math.hypot(x, y), 4);
      expect(wave.coldestDay - 1).toBeCloseTo((-Math.atan2(y, x) * 365) / (2 * Math.PI), 2);
    }
  });
  it('is the surface on the strip where that is wide, and the other where it is narrow', () => {
    const [wide, narrow] = [at(1000, 0.5), at(0.1, 15)];
    expect([wide.wave.mean, wide.wave.amplitude]).toEqual([expect.closeTo(7, 2), expect.closeTo(14.5, 2)]);
    expect([narrow.wave.mean, narrow.wave.amplitude]).toEqual([expect.closeTo(8.3, 1), expect.closeTo(11, 1)]);
  });
  it('is either where both are alike', () => {
    fc.assert(
      fc.property(anyWave, fc.double({ min: 0.1, max: 50, noNaN: true }), fc.double({ min: 0.1, max: 10, noNaN: true }), (wave, width, depth) => {
        const found = clearedStripWave({ cleared: wave, covered: wave, stripWidth: metres(width), depth: metres(depth), diffusivity: loam });
        expect(found.wave.mean).toBeCloseTo(wave.mean, 9);
        expect(found.wave.amplitude).toBeCloseTo(wave.amplitude, 9);
      }),
    );
  });
  it('refuses a wave of the air, and years of two lengths', () => {
    const strip = { stripWidth: metres(4), depth: metres(1), diffusivity: squareMetresPerDay(0.05) };
    expect(() => clearedStripWave({ cleared: { ...cleared, of: 'air' }, covered, ...strip })).toThrow('cleared.of');
    expect(() => clearedStripWave({ cleared: { ...cleared, period: days(366) }, covered, ...strip })).toThrow('cleared.period');
  });
});

describe('sturmSnowConductivity', () => {
  it('rises with the density, across the change of form too', () => {
    fc.assert(
      fc.property(fc.double({ min: 157, max: 600, noNaN: true }), fc.double({ min: 50, max: 155, noNaN: true }), (heavy, light) => {
        const of = (density: number): number => sturmSnowConductivity({ density: kilogramsPerCubicMetre(density) });
        expect(of(heavy)).toBeGreaterThanOrEqual(0.059);
        expect(of(light)).toBeLessThan(0.0595);
      }),
    );
  });
});
