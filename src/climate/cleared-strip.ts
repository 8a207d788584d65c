import { demand, InputError } from '../errors/index.js';
import { besselK, type Complex, times } from '../numerics/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Fraction, Length, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { DAY, demandDiffusivity, demandWave } from './limits.js';
import { damping, wrapDay } from './wave-at-depth.js';

/** What {@link clearedStripWave} needs. */
export interface ClearedStripInput {
  /** The wave of the ground surface on the strip. */
  readonly cleared: AnnualWave;
  /** The wave of the ground surface beside the strip, with a year as long. */
  readonly covered: AnnualWave;
  /** Width of the strip, 0.1 to 1000 [m]. */
  readonly stripWidth: Length;
  /** Depth that the wave is to be right at, 0.1 to 20 [m]. */
  readonly depth: Length;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
}

/** A wave that gives the ground below the middle of a strip at one depth. */
export interface ClearedStripWave {
  /** The wave of a surface, the same everywhere, that makes the ground at the depth as it is below the middle of the strip. */
  readonly wave: AnnualWave;
  /** How far the strip rules the mean at the depth [1]. */
  readonly meanShare: Fraction;
}

/** Shape of {@link ClearedStripInput}. */
export const clearedStripInputShape: Shape<ClearedStripInput> = {
  cleared: annualWaveShape,
  covered: annualWaveShape,
  stripWidth: 'length',
  depth: 'length',
  diffusivity: 'diffusivity',
};

/** Shape of {@link ClearedStripWave}. */
export const clearedStripWaveShape: Shape<ClearedStripWave> = { wave: annualWaveShape, meanShare: 'fraction' };

/** Intervals of Simpson's rule; the integrand is a smooth decay. */
const INTERVALS = 60;

/** Damping depths beyond which the surface is not felt. */
const UNFELT = 40;

/**
 * The wave below the middle of a cleared strip, such as a drive or a path through snow.
 *
 * Both surfaces are taken at their own temperature up to the edge, where in truth the ground below the snow is colder near the strip: the
 * strip is felt a little further than this says. Beside the strip its share is smaller.
 *
 * @param input - waves on and beside the strip, width and depth [m], diffusivity of the ground [m2/s]
 * @returns a wave to be used for this depth, and the share of the strip in its mean [1]
 * @throws InputError when a number is out of range, a wave is of the air, or the years differ in length
 * @remarks
 * The mean takes the share (2/π) atan(w/2z) of the strip; the yearly wave the integral over the strip of z σ K1(σr)/(π r) over e^(−σz), σ = (1 + i)/D. Source:
 * `carslawJaeger1959`. Checked against the inverse Fourier integral of the same surface.
 *
 * Invariants: a wide strip gives its own wave, a narrow one the other; equal surfaces give themselves at any width.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay } = await import('../units/index.js');
 * const covered = { of: 'ground surface', mean: celsius(8.3), amplitude: kelvinDifference(11), coldestDay: dayOfYear(26), period: days(365) } as const;
 * const cleared = { ...covered, mean: celsius(7), amplitude: kelvinDifference(14.5) };
 * const strip = { cleared, covered, stripWidth: metres(4), depth: metres(1.5), diffusivity: squareMetresPerDay(0.05) };
 * const { wave, meanShare } = clearedStripWave(strip);
 * expect(meanShare).toBeCloseTo(0.59, 2);
 * expect([wave.mean, wave.amplitude]).toEqual([expect.closeTo(7.53, 2), expect.closeTo(13.91, 2)]);
 * ```
 */
export function clearedStripWave({ cleared, covered, stripWidth, depth, diffusivity }: ClearedStripInput): ClearedStripWave {
  demandSurface('cleared', cleared);
  demandSurface('covered', covered);
  demand('stripWidth', 'length', stripWidth, { atLeast: 0.1, atMost: 1000 });
  demand('depth', 'length', depth, { atLeast: 0.1, atMost: 20 });
  demandDiffusivity(diffusivity);
  const { period } = covered;
  if (cleared.period !== period) {
    const allowed = `that of covered, ${String(period)} s`;
    throw new InputError({ code: 'impossible', argument: 'cleared.period', value: { kind: 'time', value: cleared.period }, allowed });
  }
  const meanShare = (2 / Math.PI) * Math.atan(stripWidth / 2 / depth);
  const share = yearlyShare(stripWidth, depth, damping(diffusivity, period));
  const [on, beside] = [pointer(cleared), pointer(covered)];
  const part = times(share, { re: on.re - beside.re, im: on.im - beside.im });
  const [re, im] = [beside.re + part.re, beside.im + part.im];
  return {
    wave: {
      of: 'ground surface',
      mean: (covered.mean + meanShare * (cleared.mean - covered.mean)) as Temperature,
      amplitude: Math.hypot(re, im) as TemperatureDifference,
      coldestDay: wrapDay(1 + ((Math.atan2(-im, re) / (2 * Math.PI)) * period) / DAY, period) as DayOfYear,
      period,
    },
    meanShare: meanShare as Fraction,
  };
}

function demandSurface(argument: string, wave: AnnualWave): void {
  demandWave(argument, wave);
  if (wave.of === 'ground surface') return;
  throw new InputError({ code: 'impossible', argument: `${argument}.of`, value: wave.of, allowed: 'ground surface' });
}

/** Amplitude of a wave as the pointer of −e^(iωt), t from 1 January on. */
function pointer({ amplitude, coldestDay, period }: AnnualWave): Complex {
  const angle = (2 * Math.PI * (coldestDay - 1) * DAY) / period;
  return { re: amplitude * Math.cos(angle), im: -amplitude * Math.sin(angle) };
}

/** Share of a strip in the yearly wave below its middle: with r = z cosh u the integral is one of K1(σ z cosh u) over u. */
function yearlyShare(width: number, depth: number, dampingDepth: number): Complex {
  const end = Math.asinh(Math.min(width / 2, UNFELT * dampingDepth) / depth);
  const place = { re: depth / dampingDepth, im: depth / dampingDepth };
  const sum = { re: 0, im: 0 };
  for (let i = 0; i <= INTERVALS; i += 1) {
    const weight = i === 0 || i === INTERVALS ? 1 : i % 2 === 1 ? 4 : 2;
    const stretch = Math.cosh((end * i) / INTERVALS);
    const { k1 } = besselK({ re: place.re * stretch, im: place.im * stretch });
    sum.re += weight * k1.re;
    sum.im += weight * k1.im;
  }
  const rise = Math.exp(place.re);
  const factor = times(place, { re: rise * Math.cos(place.im), im: rise * Math.sin(place.im) });
  const scale = (2 * end) / (3 * INTERVALS * Math.PI);
  return times(factor, { re: scale * sum.re, im: scale * sum.im });
}
