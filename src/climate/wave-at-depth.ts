import { DAY } from './limits.js';

/** One sine of the surface temperature, in plain numbers: kelvin, days, seconds. */
export interface Sine {
  readonly amplitude: number;
  readonly coldestDay: number;
  readonly period: number;
}

/** Depth at which a wave of this period has fallen to 1/e [m]; kernel of the documented `dampingDepth`. */
export const damping = (diffusivity: number, period: number): number => Math.sqrt((diffusivity * period) / Math.PI);

/** Angle that the wave has turned at the surface since its coldest day [rad]. */
export const turned = ({ coldestDay, period }: Sine, day: number): number => (2 * Math.PI * (day - coldestDay) * DAY) / period;

/** How far the sine lies below its mean at a depth and day [K]: e^(−z/D) weaker and z/D later than at the surface. */
export function below(sine: Sine, diffusivity: number, depth: number, day: number): number {
  const dampings = depth / damping(diffusivity, sine.period);
  return sine.amplitude * Math.exp(-dampings) * Math.cos(turned(sine, day) - dampings);
}

/** What several sines leave below their common mean at a depth and day [K]. */
export const allBelow = (sines: readonly Sine[], diffusivity: number, depth: number, day: number): number =>
  sines.reduce((sum, sine) => sum + below(sine, diffusivity, depth, day), 0);

/** The same day within the year that starts with day 1. */
export function wrapDay(day: number, period: number): number {
  const days = period / DAY;
  return 1 + ((((day - 1) % days) + days) % days);
}
