import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { annualWave, groundTemperature, type PublishedPhase, publishedForms, secondHarmonic } from '../../src/climate/index.js';
import { celsius, dayOfYear, days, kelvinDifference, metres, ratio } from '../../src/units/index.js';
import { anyDay, anyDepth, anyDiffusivity, anyWave } from './waves.js';

/** Days apart within a year. */
const apart = (a: number, b: number, year: number): number => Math.min((((a - b) % year) + year) % year, (((b - a) % year) + year) % year);

describe('publishedForms', () => {
  it('are each read back by annualWave as the same wave', () => {
    fc.assert(
      fc.property(anyWave, (wave) => {
        // A wave that ends on 60 °C, written by its extremes, may end a digit past it, which is refused.
        fc.pre(Math.abs(wave.mean) + wave.amplitude < 60 - 1e-9);
        const forms = publishedForms(wave);
        const phases: readonly PublishedPhase[] = [
          { marks: 'coldest', day: forms.coldestDay },
          { marks: 'coldest', day: dayOfYear(forms.coldestDay - 1), countedAs: 'days elapsed' },
          { marks: 'coldest', day: dayOfYear(forms.coldestDay - 0.5), countedAs: 'calendar day' },
          { marks: 'rising through the mean', day: forms.risingDay },
          { marks: 'warmest', day: forms.warmestDay },
          { marks: 'falling through the mean', day: forms.fallingDay },
          { marks: 'sine phase', angle: forms.sinePhase },
          { marks: 'cosine phase', angle: forms.cosinePhase },
        ];
        const swings = [
          { by: 'amplitude', mean: forms.mean, amplitude: forms.amplitude },
          { by: 'whole swing', mean: forms.mean, wholeSwing: forms.wholeSwing },
          { by: 'extremes', lowest: forms.lowest, highest: forms.highest },
        ] as const;
        for (const phase of phases) {
          for (const swing of swings) {
            const read = annualWave({ of: wave.of, swing, phase, period: wave.period });
            expect(read.mean).toBeCloseTo(wave.mean, 9);
            expect(read.amplitude).toBeCloseTo(wave.amplitude, 9);
            expect(apart(read.coldestDay, wave.coldestDay, days.of(wave.period))).toBeLessThan(1e-9);
          }
        }
      }),
    );
  });
});

describe('the printed forms of the wave at depth', () => {
  // Each as its publication prints it, with t in days elapsed; F1 to F5 must be one function.
  const forms = (tm: number, a: number, t0: number, alpha: number, year: number, z: number, t: number): readonly number[] => {
    const omega = (2 * Math.PI) / year;
    const d = Math.sqrt((2 * alpha) / omega);
    const faded = a * Math.exp(-z / d);
    const f1 =
      tm - a * Math.exp(-z * Math.sqrt(Math.PI / (year * alpha))) * Math.cos(omega * (t - t0 - (z / 2) * Math.sqrt(year / (Math.PI * alpha))));
    const f2 = tm + faded * Math.sin((2 * Math.PI * (t - t0)) / year - z / d - Math.PI / 2);
    const f3 = tm + faded * Math.sin(omega * t - z / d - (Math.PI / 2 + omega * t0));
    const f4 = tm + faded * Math.cos(omega * (t - (t0 + year / 2)) - z / d);
    const f5 = tm + faded * Math.sin(omega * (t - (t0 + year / 4)) - z / d);
    return [f1, f2, f3, f4, f5];
  };

  it('all agree with groundTemperature', () => {
    fc.assert(
      fc.property(anyWave, anyDiffusivity, anyDepth, anyDay, (wave, diffusivity, depth, day) => {
        const computed = groundTemperature({ wave, diffusivity, depth, day: dayOfYear(day) });
        const printed = forms(wave.mean, wave.amplitude, wave.coldestDay - 1, diffusivity * 86_400, days.of(wave.period), depth, day - 1);
        for (const form of printed) expect(Math.abs(form - computed)).toBeLessThan(1e-8);
      }),
    );
  });

  it('with two harmonics is that of groundTemperature; the version printed without lag is not', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const [ts, alpha, tau, z] = [12, 0.05, 365, 1.2];
        const sines = [
          { n: 1, swing: 11, theta: 30 },
          { n: 2, swing: 1.4, theta: 95 },
        ];
        const printed =
          ts -
          sines.reduce((sum, { n, swing, theta }) => {
            const damped = z * Math.sqrt((n * Math.PI) / (alpha * tau));
            return sum + swing * Math.exp(-damped) * Math.cos(((2 * Math.PI * n) / tau) * (day - 1 - theta) - damped);
          }, 0);
        const wave = annualWave({
          of: 'ground surface',
          swing: { by: 'amplitude', mean: celsius(12), amplitude: kelvinDifference(11) },
          phase: { marks: 'coldest', day: dayOfYear(30), countedAs: 'days elapsed' },
        });
        const second = secondHarmonic({
          amplitude: kelvinDifference(1.4),
          phase: { marks: 'coldest', day: dayOfYear(95), countedAs: 'days elapsed' },
        });
        const place = { depth: metres(z), diffusivity: (0.05 / 86_400) as never, day: dayOfYear(day) };
        expect(groundTemperature({ wave, secondHarmonic: second, ...place })).toBeCloseTo(printed, 9);
      }),
    );
    // Lowest at 1.2 m half a damping depth's lag after the surface: without the lag the form is off by kelvins.
    const lagless = 12 - 11 * Math.exp(-1.2 / 2.410219) * Math.cos((2 * Math.PI * 90) / 365 - (2 * Math.PI * 30) / 365);
    const wave = { of: 'ground surface', mean: celsius(12), amplitude: kelvinDifference(11), coldestDay: dayOfYear(31), period: days(365) } as const;
    const place = { depth: metres(1.2), diffusivity: (0.05 / 86_400) as never, day: dayOfYear(91) };
    expect(Math.abs(groundTemperature({ wave, ...place }) - lagless)).toBeGreaterThan(2);
  });
});

describe('secondHarmonic', () => {
  it('is one sine whatever the form of its phase', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 183, noNaN: true }), (coldest) => {
        const half = 182.5;
        const phases: readonly PublishedPhase[] = [
          { marks: 'coldest', day: dayOfYear(coldest) },
          { marks: 'coldest', day: dayOfYear(coldest + half) },
          { marks: 'warmest', day: dayOfYear(coldest + half / 2) },
          { marks: 'rising through the mean', day: dayOfYear(coldest + half / 4) },
          { marks: 'sine phase', angle: ratio((2 * Math.PI * (coldest - 1)) / half + Math.PI / 2) },
          { marks: 'cosine phase', angle: ratio((2 * Math.PI * (coldest - 1)) / half + Math.PI) },
        ];
        for (const phase of phases) {
          const { coldestDay } = secondHarmonic({ amplitude: kelvinDifference(1), phase });
          expect(apart(coldestDay, coldest, half)).toBeLessThan(1e-9);
        }
      }),
    );
  });
});
