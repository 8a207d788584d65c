import { DAY } from './limits.js';
import { allBelow, damping, type Sine, turned, wrapDay } from './wave-at-depth.js';

/** Samples of a year between which the slope is searched for its zeros; the semi-annual sine turns eight degrees from one to the next. */
const SAMPLES = 96;

/** Halvings of an interval; more than a double can tell apart. */
const HALVINGS = 60;

/** The course of the temperature about its mean at one depth through a year, in plain numbers: kelvin and days. */
export interface YearCourse {
  /** Temperature above the mean at a day [K]. */
  readonly above: (day: number) => number;
  /** Days, in order, between which the course only rises or only falls; the last is a year after the first. */
  readonly turns: readonly number[];
}

/** The point between two at which a function that changes its sign passes zero. */
export function crossing(of: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const rising = of(to) > of(from);
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (of(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** The course of the sines at a depth, cut where it turns from falling to rising or back. */
export function yearCourse(sines: readonly Sine[], diffusivity: number, depth: number): YearCourse {
  const year = Math.max(...sines.map(({ period }) => period)) / DAY;
  /** Slope of the temperature in kelvin per radian of the year. */
  const slope = (day: number): number =>
    sines.reduce((sum, sine) => {
      const dampings = depth / damping(diffusivity, sine.period);
      const angle = turned(sine, day) - dampings;
      return sum + ((year * DAY) / sine.period) * sine.amplitude * Math.exp(-dampings) * Math.sin(angle);
    }, 0);
  const grid = Array.from({ length: SAMPLES + 1 }, (_, i) => 1 + (i * year) / SAMPLES);
  const turns = grid.slice(1).flatMap((to, i) => {
    const from = grid[i] ?? 1;
    return slope(from) > 0 === slope(to) > 0 ? [] : [crossing(slope, from, to)];
  });
  const first = turns[0] ?? 1;
  return { above: (day) => -allBelow(sines, diffusivity, depth, day), turns: [...(turns.length === 0 ? [1] : turns), first + year] };
}

/** Lowest and highest of a course about its mean, with their days within the year. */
export function extremesOf({ above, turns }: YearCourse, period: number): Readonly<Record<'coldest' | 'warmest', { day: number; above: number }>> {
  const points = turns.map((day) => ({ day: wrapDay(day, period), above: above(day) }));
  const pick = (sign: number): { day: number; above: number } =>
    points.reduce((best, point) => (sign * point.above > sign * best.above ? point : best));
  return { coldest: pick(-1), warmest: pick(1) };
}
