import { solveSymmetric } from '../numerics/index.js';
import type { DayOfYear, Diffusivity, Length, Temperature, TemperatureDifference } from '../units/index.js';
import { DAY, YEAR } from './limits.js';
import { meanTemperatureOverDepth } from './mean-ground-temperature.js';
import { DAILY_ANGLE } from './month-means.js';
import { damping, wrapDay } from './wave-at-depth.js';
import type { PrintedGround } from './weather-header.js';

/** Ground temperatures out of the header of a file, and what they are. */
export interface WeatherGroundHeader extends PrintedGround {
  /** The same made anew from the file's own air by the rule of the usual converter, January first [degC]. */
  readonly rebuilt: readonly Temperature[];
  /** Largest difference between printed and rebuilt [K]. */
  readonly rebuiltWithin: TemperatureDifference;
  /** What the printed numbers hold: means of the ground from the surface down to the depth, if the rule gives them; else nothing is known of them. */
  readonly holds: 'means from the surface down' | 'unknown';
  /** Day on which the surface above would be coldest by the printed numbers, their lag by the depth taken off; absent where they do not swing [d]. */
  readonly surfaceColdestDay?: DayOfYear;
}

/** What the air of a file gives to the rule. */
export interface HeaderAir {
  readonly monthlyMeans: readonly Temperature[];
  /** Day before which the month of the coldest hour begins, from 0. */
  readonly coldestMonthStart: number;
}

/** 0.025 ft2/h; the comment in the files gives its number in m2/h and calls it m2 a day [m2/s]. */
const DIFFUSIVITY: Diffusivity = 6.4516e-7 as Diffusivity;
/** The rule lets the surface be coldest this long after the month of the coldest hour begins [rad]. */
const SURFACE_LAG = 0.6;
/** Days the twelve numbers stand for; 95 for April, where 105 is meant, dents every header [d]. */
const HEADER_DAYS: readonly number[] = [15, 46, 74, 95, 135, 166, 196, 227, 258, 288, 319, 349];
/** Printed to 0.01 K: a difference up to that is one of the last digit [K]. */
const PRINTED = 0.01;
/** A swing below this says nothing of its day [K]. */
const LEAST_SWING = 0.1;

/**
 * What the header's ground temperatures are: the rule `epwGroundHeader` takes the mean of the months and half their range as a wave of the surface,
 * puts its coldest day after the month that has the coldest hour of the year, and gives means from the surface to the depth, not values at it.
 */
export function groundHeader(printed: PrintedGround, { monthlyMeans, coldestMonthStart }: HeaderAir): WeatherGroundHeader {
  const { depth } = printed;
  const wave = {
    of: 'ground surface',
    mean: (monthlyMeans.reduce((sum, each) => sum + each, 0) / monthlyMeans.length) as Temperature,
    amplitude: ((Math.max(...monthlyMeans) - Math.min(...monthlyMeans)) / 2) as TemperatureDifference,
    coldestDay: wrapDay(1 + coldestMonthStart + SURFACE_LAG / DAILY_ANGLE, YEAR) as DayOfYear,
    period: YEAR,
  } as const;
  const rebuilt = HEADER_DAYS.map((day) =>
    meanTemperatureOverDepth({ wave, diffusivity: DIFFUSIVITY, top: 0 as Length, bottom: depth, day: (1 + day) as DayOfYear }),
  );
  const within = Math.max(...rebuilt.map((each, month) => Math.abs(each - (printed.monthlyMeans[month] ?? 0))));
  const surfaceColdestDay = coldestSurface(printed);
  return {
    ...printed,
    rebuilt,
    rebuiltWithin: within as TemperatureDifference,
    holds: within <= PRINTED ? 'means from the surface down' : 'unknown',
    ...(surfaceColdestDay === undefined ? {} : { surfaceColdestDay }),
  };
}

/** The coldest day of the sine through the printed numbers, less the lag of a mean from the surface to their depth. */
function coldestSurface({ depth, monthlyMeans }: PrintedGround): DayOfYear | undefined {
  const rows = HEADER_DAYS.map((day) => [1, Math.cos(DAILY_ANGLE * day), Math.sin(DAILY_ANGLE * day)]);
  const sumOf = (of: (row: readonly number[], month: number) => number): number => rows.reduce((sum, row, month) => sum + of(row, month), 0);
  const normal = [0, 1, 2].map((i) => [0, 1, 2].map((j) => sumOf((row) => (row[i] ?? 0) * (row[j] ?? 0))));
  const right = [0, 1, 2].map((i) => sumOf((row, month) => (row[i] ?? 0) * (monthlyMeans[month] ?? 0)));
  const [, cosine = 0, sine = 0] = solveSymmetric(normal, right);
  if (Math.hypot(cosine, sine) < LEAST_SWING) return undefined;
  return wrapDay(1 + (Math.atan2(-sine, -cosine) - slabLag(depth)) / DAILY_ANGLE, YEAR) as DayOfYear;
}

/** How far the mean from the surface to a depth turns after the surface [rad]. */
export function slabLag(depth: Length): number {
  const dampings = depth / damping(DIFFUSIVITY, YEAR);
  const left = Math.exp(-dampings);
  return Math.atan2(1 - left * (Math.cos(dampings) + Math.sin(dampings)), 1 - left * (Math.cos(dampings) - Math.sin(dampings)));
}

/** How many days a day lies after another, the nearer way round the year; negative before it. */
export const daysAfter = (day: DayOfYear, other: DayOfYear): number => {
  const days = YEAR / DAY;
  return day - other - days * Math.round((day - other) / days);
};
