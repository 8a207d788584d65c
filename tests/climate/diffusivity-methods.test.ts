import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  diffusivityFromAmplitudes,
  diffusivityFromLags,
  diffusivityFromQuarters,
  groundTemperature,
  groundTemperatureRange,
} from '../../src/climate/index.js';
import { celsius, dayOfYear, days, type Diffusivity, kelvinDifference, metres, squareMetresPerDay, type Temperature } from '../../src/units/index.js';
import { normalNoise } from '../support/noise.js';
import { loam, temperate } from './waves.js';

const anySoil = fc.double({ min: 0.01, max: 0.15, noNaN: true }).map((value) => squareMetresPerDay(value));
const QUARTERS = [21, 112.25, 203.5, 294.75];

const waves = (diffusivity: Diffusivity, depths: readonly number[]) =>
  depths.map((depth) => ({ depth: metres(depth), ...groundTemperatureRange({ wave: temperate, diffusivity, depth: metres(depth) }) }));
const quarterly = (diffusivity: Diffusivity, depth: number, noise: () => number = () => 0): readonly Temperature[] =>
  QUARTERS.map((day) => celsius(groundTemperature({ wave: temperate, diffusivity, depth: metres(depth), day: dayOfYear(day) }) + noise()));
const probes = (diffusivity: Diffusivity, noise?: () => number) =>
  [0.5, 1.5].map((depth) => ({ depth: metres(depth), quarterly: quarterly(diffusivity, depth, noise) }));

describe('the four explicit methods', () => {
  it('give back the diffusivity of an exact wave', () => {
    fc.assert(
      fc.property(anySoil, fc.constantFrom([0.5, 1.5], [0.3, 0.8, 1.4, 2]), (diffusivity, depths) => {
        const at = waves(diffusivity, depths);
        const arrivals = at.map(({ depth, coldestDay }) => ({ depth, day: coldestDay }));
        const { byArctangent, byLogarithm } = diffusivityFromQuarters({ probes: probes(diffusivity) });
        const found = [
          diffusivityFromAmplitudes({ amplitudes: at }).diffusivity,
          diffusivityFromLags({ arrivals }).diffusivity,
          byArctangent,
          byLogarithm,
        ];
        for (const each of found) expect(each / diffusivity).toBeCloseTo(1, 8);
      }),
    );
  });

  it('tell their own weakness first, loudly when the readings leave much open', () => {
    const at = waves(loam, [0.5, 0.7]);
    const close = diffusivityFromAmplitudes({ amplitudes: at });
    expect(close.findings[0]).toMatchObject({ code: 'diffusivity-method-weak', level: 'warning', values: { method: 'amplitudes' } });
    const far = diffusivityFromLags({ arrivals: waves(loam, [0.5, 2.5]).map(({ depth, coldestDay }) => ({ depth, day: coldestDay })) });
    expect(far.findings).toMatchObject([{ code: 'diffusivity-method-weak', level: 'note', values: { method: 'lags' } }]);
    const both = diffusivityFromQuarters({ probes: probes(loam) });
    expect(both.findings.map(({ values }) => values)).toMatchObject([{ method: 'arctangent' }, { method: 'logarithm' }]);
  });

  it('say so when they disagree, or give what no soil has', () => {
    const [upper, lower] = probes(loam);
    if (upper === undefined || lower === undefined) throw new Error('two probes');
    // A swing halved by something else than conduction, as under snow: the phase stays.
    const shrunk = { ...lower, quarterly: lower.quarterly.map((read) => celsius(10 + (read - 10) / 2)) };
    expect(diffusivityFromQuarters({ probes: [upper, shrunk] }).findings.map(({ code }) => code)).toContain('diffusivities-disagree');
    // Sandstone MN, 5 and 10 cm: 1.5 m2/d.
    const amplitudes = [
      { depth: metres(0.05), amplitude: kelvinDifference(10.6056) },
      { depth: metres(0.1), amplitude: kelvinDifference(10.5655) },
    ];
    expect(diffusivityFromAmplitudes({ amplitudes }).findings.map(({ code }) => code)).toContain('diffusivity-unlikely');
  });

  it('take a day of the next year for what it is', () => {
    const [first, second] = waves(loam, [0.5, 2.5]).map(({ depth, coldestDay }) => ({ depth, day: coldestDay + 310 }));
    if (first === undefined || second === undefined) throw new Error('two depths');
    const wrapped = { ...second, day: dayOfYear(second.day - 365) };
    const arrivals = [{ ...first, day: dayOfYear(first.day) }, wrapped];
    expect(diffusivityFromLags({ arrivals }).diffusivity / loam).toBeCloseTo(1, 8);
  });

  it('have relative errors that hold, by Monte Carlo of their readings', () => {
    const noise = normalNoise(21);
    const spreadOf = (trial: () => number): number => {
      const found = Array.from({ length: 2000 }, trial);
      const mean = found.reduce((sum, each) => sum + each, 0) / found.length;
      return Math.sqrt(found.reduce((sum, each) => sum + (each - mean) ** 2, 0) / found.length);
    };
    const at = waves(loam, [0.5, 1, 1.5]);
    const amplitudeError = kelvinDifference(0.2);
    const byAmplitudes = spreadOf(() =>
      Math.log(
        diffusivityFromAmplitudes({
          amplitudes: at.map(({ depth, amplitude }) => ({ depth, amplitude: kelvinDifference(amplitude + 0.2 * noise()) })),
        }).diffusivity,
      ),
    );
    expect(diffusivityFromAmplitudes({ amplitudes: at, amplitudeError }).relativeError / byAmplitudes).toBeCloseTo(1, 1);
    const arrivals = at.map(({ depth, coldestDay }) => ({ depth, day: coldestDay }));
    const byLags = spreadOf(() =>
      Math.log(diffusivityFromLags({ arrivals: arrivals.map(({ depth, day }) => ({ depth, day: dayOfYear(day + noise()) })) }).diffusivity),
    );
    expect(diffusivityFromLags({ arrivals, arrivalError: days(1) }).relativeError / byLags).toBeCloseTo(1, 1);
    const { relativeError } = diffusivityFromQuarters({ probes: probes(loam), readingDeviation: kelvinDifference(0.3) });
    const byArctangent = spreadOf(() => Math.log(diffusivityFromQuarters({ probes: probes(loam, () => 0.3 * noise()) }).byArctangent));
    const byLogarithm = spreadOf(() => Math.log(diffusivityFromQuarters({ probes: probes(loam, () => 0.3 * noise()) }).byLogarithm));
    expect(Math.abs(relativeError / byArctangent - 1)).toBeLessThan(0.08);
    expect(Math.abs(relativeError / byLogarithm - 1)).toBeLessThan(0.08);
  });

  it('of eight readings with 0.3 K of noise spread from 0.036 to 0.075 m2/d, as another program found', () => {
    const noise = normalNoise(33);
    const found = Array.from({ length: 2000 }, () => diffusivityFromQuarters({ probes: probes(loam, () => 0.3 * noise()) }));
    for (const key of ['byArctangent', 'byLogarithm'] as const) {
      const sorted = found.map((each) => squareMetresPerDay.of(each[key])).sort((a, b) => a - b);
      // The ends of 95 % in 2000 trials are known to about 0.001.
      expect(Math.abs((sorted[50] ?? NaN) - 0.036)).toBeLessThan(0.0015);
      expect(Math.abs((sorted[1949] ?? NaN) - 0.075)).toBeLessThan(0.004);
    }
  });

  it('refuse depths that are interchanged or in one place', () => {
    const at = waves(loam, [0.5, 1.5]);
    const swapped = at.map(({ depth }, i) => ({ depth, amplitude: at[1 - i]?.amplitude ?? kelvinDifference(1) }));
    expect(() => diffusivityFromAmplitudes({ amplitudes: swapped })).toThrow('interchanged');
    const arrivals = at.map(({ depth }, i) => ({ depth, day: at[1 - i]?.coldestDay ?? dayOfYear(1) }));
    expect(() => diffusivityFromLags({ arrivals })).toThrow('interchanged');
    const [upper, lower] = probes(loam);
    const quarters = [upper, lower].map((_, i) => ({ depth: metres(0.5 + i), quarterly: ([upper, lower][1 - i] ?? { quarterly: [] }).quarterly }));
    expect(() => diffusivityFromQuarters({ probes: quarters })).toThrow('interchanged');
    expect(() => diffusivityFromAmplitudes({ amplitudes: at.map((each) => ({ ...each, depth: metres(1) })) })).toThrow('amplitudes.1.depth');
  });
});
