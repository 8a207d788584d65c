import { DAY } from './limits.js';
import { damping, wrapDay } from './wave-at-depth.js';

/** What is fitted to readings, in plain numbers: kelvin, days, metres, seconds. */
export interface HarmonicModel {
  /** Length of the year [s]. */
  readonly period: number;
  /** One sine, or a second one of half the period as well. */
  readonly harmonics: number;
  /** Day on which the yearly sine is lowest at the surface, when known. */
  readonly coldestDay?: number | undefined;
}

/** Where and when a reading is taken. */
export interface Place {
  readonly day: number;
  readonly depth: number;
}

/** One column of the linear part of the model: e^(−z/D) cos(order ω t − z/D − phase). */
interface Term {
  readonly order: number;
  readonly phase: number;
}

/** A sine is a cosine that comes π/2 later. */
const COSINE_AND_SINE = [0, 1.5707963267948966];

/** The columns after that of the mean, in order. */
function termsOf({ period, harmonics, coldestDay }: HarmonicModel): readonly Term[] {
  const first = coldestDay === undefined ? COSINE_AND_SINE : [(2 * Math.PI * (coldestDay - 1) * DAY) / period + Math.PI];
  const second = harmonics === 2 ? COSINE_AND_SINE : [];
  return [...first.map((phase) => ({ order: 1, phase })), ...second.map((phase) => ({ order: 2, phase }))];
}

/** A term as a function of the place, turned on by an angle; at the surface, depth 0, the diffusivity does not matter. */
function termAt({ order, phase }: Term, period: number, diffusivity: number, turn = 0): (place: Place) => number {
  const dampingDepth = damping(diffusivity, period / order);
  const perDay = (2 * Math.PI * order * DAY) / period;
  return ({ day, depth }) => {
    const dampings = depth / dampingDepth;
    return Math.exp(-dampings) * Math.cos(perDay * (day - 1) - dampings - phase + turn);
  };
}

/** What the coefficients are multiplied with at a place: 1 for the mean, then the terms. */
export const modelRow = (model: HarmonicModel, place: Place, diffusivity: number): readonly number[] => [
  1,
  ...termsOf(model).map((term) => termAt(term, model.period, diffusivity)(place)),
];

/** The columns of the linear part of the model at many places. */
export const modelColumns = (model: HarmonicModel, places: readonly Place[], diffusivity: number): readonly Float64Array[] => [
  new Float64Array(places.length).fill(1),
  ...termsOf(model).map((term) => Float64Array.from(places, termAt(term, model.period, diffusivity))),
];

/** How the temperature at a place changes with the logarithm of the diffusivity [K]. */
export function diffusivitySlope(model: HarmonicModel, diffusivity: number, coefficients: readonly number[]): (place: Place) => number {
  const terms = termsOf(model).map((term) => {
    const at = termAt(term, model.period, diffusivity, Math.PI / 4);
    const dampingDepth = damping(diffusivity, model.period / term.order);
    return (place: Place): number => ((place.depth / dampingDepth) * at(place)) / Math.SQRT2;
  });
  return (place) => terms.reduce((sum, term, i) => sum + (coefficients[i + 1] ?? 0) * term(place), 0);
}

/** A sine of the model with the gradients of its numbers in the coefficients. */
export interface FittedSine {
  readonly amplitude: number;
  readonly coldestDay: number;
  readonly amplitudeGradient: readonly number[];
  readonly dayGradient: readonly number[];
}

/** Amplitude and coldest day of the sine of an order, from the coefficients. */
export function sineOf(model: HarmonicModel, coefficients: readonly number[], order: 1 | 2): FittedSine {
  const at = order === 1 ? 1 : coefficients.length - 2;
  const gradient = (...parts: readonly number[]): readonly number[] => coefficients.map((_, i) => parts[i - at] ?? 0);
  const [cosine = 0, sine = 0] = coefficients.slice(at);
  if (order === 1 && model.coldestDay !== undefined) {
    return { amplitude: cosine, coldestDay: model.coldestDay, amplitudeGradient: gradient(1), dayGradient: gradient() };
  }
  const amplitude = Math.hypot(cosine, sine);
  const perDay = (2 * Math.PI * order * DAY) / model.period;
  const [c, s] = amplitude > 0 ? [cosine / amplitude, sine / amplitude] : [1, 0];
  return {
    amplitude,
    coldestDay: wrapDay(1 + Math.atan2(-sine, -cosine) / perDay, model.period / order),
    amplitudeGradient: gradient(c, s),
    dayGradient: amplitude > 0 ? gradient(-s / (amplitude * perDay), c / (amplitude * perDay)) : gradient(Infinity, Infinity),
  };
}
