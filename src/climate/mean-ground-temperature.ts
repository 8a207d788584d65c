import { demand } from '../errors/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Length, Shape, Temperature } from '../units/index.js';
import { DAY, demandDay, demandDepth, demandDiffusivity } from './limits.js';
import { demandSines, type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';
import { below, damping, type Sine, turned } from './wave-at-depth.js';

/** Thinnest slab that a mean is taken over [m]; a thinner one is a point. */
const THINNEST = 1e-3;

/** Shortest span that a mean is taken over [d]; a shorter one is a moment. */
const SHORTEST = 1e-3;

/** What {@link meanTemperatureOverDepth} needs. */
export interface SlabInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** A second sine on top of the wave; none when left out. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Upper edge of the slab, below the surface, 0 to 1e4 [m]. */
  readonly top: Length;
  /** Lower edge, at least a millimetre deeper [m]. */
  readonly bottom: Length;
  /** When; 1.0 is 1 January 00:00 [d]. */
  readonly day: DayOfYear;
}

/** Shape of {@link SlabInput}. */
export const slabInputShape: Shape<SlabInput> = {
  wave: annualWaveShape,
  secondHarmonic: { optional: secondHarmonicShape },
  diffusivity: 'diffusivity',
  top: 'length',
  bottom: 'length',
  day: 'day of year',
};

/**
 * Mean temperature of undisturbed ground between two depths at a day.
 *
 * For pipes spread over a depth, or to compare with readings that average one. Same assumptions as `groundTemperature`.
 *
 * @param input - wave of the ground surface, diffusivity [m2/s], edges of the slab [m] and day [d]
 * @returns mean temperature of the slab [degC]
 * @throws InputError when a number is out of range, the wave is of the air, or the slab is turned over or too thin
 * @remarks
 * The wave integrated over depth in closed form; source: `carslawJaeger1959`. Checked against four values computed independently
 * and against quadrature. Invariants: lies between the extremes within the slab; two halves average to the whole.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36), period: days(365),
 * } as const;
 * const slab = { top: metres(0.9), bottom: metres(1.8), day: dayOfYear(61) };
 * expect(meanTemperatureOverDepth({ wave, diffusivity: squareMetresPerDay(0.05), ...slab })).toBeCloseTo(3.19387, 5);
 * ```
 */
export function meanTemperatureOverDepth({ wave, secondHarmonic, diffusivity, top, bottom, day }: SlabInput): Temperature {
  const sines = demandSines(wave, secondHarmonic);
  demandDiffusivity(diffusivity);
  demandDepth('top', top);
  demandDepth('bottom', bottom);
  demand('bottom', 'length', bottom, { atLeast: top + THINNEST }, 'the lower edge lies below the upper one; for a point use groundTemperature');
  demandDay('day', day);
  /** Integral over the slab of how far a sine lies below its mean [K.m]. */
  const missing = (sine: Sine): number => {
    const depthOfDamping = damping(diffusivity, sine.period);
    const angle = turned(sine, day) - Math.PI / 4;
    /** Integral from a depth down to where nothing is left of the sine, over A D/√2. */
    const downFrom = (depth: number): number => Math.exp(-depth / depthOfDamping) * Math.cos(angle - depth / depthOfDamping);
    return ((sine.amplitude * depthOfDamping) / Math.SQRT2) * (downFrom(top) - downFrom(bottom));
  };
  return (wave.mean - sines.reduce((sum, sine) => sum + missing(sine), 0) / (bottom - top)) as Temperature;
}

/** What {@link meanTemperatureOverTime} needs. */
export interface SpanInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** A second sine on top of the wave; none when left out. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Depth below the surface, 0 to 1e4 [m]. */
  readonly depth: Length;
  /** Start of the span; 1.0 is 1 January 00:00 [d]. */
  readonly start: DayOfYear;
  /** End of the span; counts on past the year: 31 March 24:00 of the next year is 456 [d]. */
  readonly end: DayOfYear;
}

/** Shape of {@link SpanInput}. */
export const spanInputShape: Shape<SpanInput> = {
  wave: annualWaveShape,
  secondHarmonic: { optional: secondHarmonicShape },
  diffusivity: 'diffusivity',
  depth: 'length',
  start: 'day of year',
  end: 'day of year',
};

/**
 * Mean temperature of undisturbed ground at a depth over a span of time, as a heating season.
 *
 * Same assumptions as `groundTemperature`.
 *
 * @param input - wave of the ground surface, diffusivity [m2/s], depth [m], start and end of the span [d]
 * @returns mean temperature over the span [degC]
 * @throws InputError when a number is out of range, the wave is of the air, or the span runs backwards
 * @remarks
 * The temperature in the middle of the span, with the swing shaved by sin(x)/x, x half the angle of the span; source:
 * `carslawJaeger1959`. Checked against a value computed independently and against quadrature. Invariants: the mean over a period is the mean
 * of the wave; spans in a row average to the whole.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36), period: days(365),
 * } as const;
 * const season = { start: dayOfYear(305), end: dayOfYear(456) };
 * expect(meanTemperatureOverTime({ wave, diffusivity: squareMetresPerDay(0.05), depth: metres(1.5), ...season })).toBeCloseTo(7.3218, 4);
 * ```
 */
export function meanTemperatureOverTime({ wave, secondHarmonic, diffusivity, depth, start, end }: SpanInput): Temperature {
  const sines = demandSines(wave, secondHarmonic);
  demandDiffusivity(diffusivity);
  demandDepth('depth', depth);
  demandDay('start', start);
  demandDay('end', end);
  demand('end', 'day of year', end, { atLeast: start + SHORTEST }, 'a span over the turn of the year counts on: 1 January is 366');
  /** How far a sine lies below its mean over the span [K]. */
  const missing = (sine: Sine): number => {
    const half = (Math.PI * (end - start) * DAY) / sine.period;
    return below(sine, diffusivity, depth, (start + end) / 2) * (Math.sin(half) / half);
  };
  return (wave.mean - sines.reduce((sum, sine) => sum + missing(sine), 0)) as Temperature;
}
