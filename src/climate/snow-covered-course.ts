import type { Snow } from './snow-months.js';

/** Steps that a year is cut into, of five days; an odd number keeps the shortest sine whole. */
export const STEPS = 73;

/** A surface without snow, and the ground below it; plain numbers. */
export interface OpenSurface {
  /** Mean of the surface without snow [degC]. */
  readonly mean: number;
  /** Its amplitude [K]. */
  readonly amplitude: number;
  /** When it is coldest, as a share of the year from 1 January on [1]. */
  readonly coldest: number;
  /** Conductivity over the root of diffusivity [W.s^½/(m2.K)]. */
  readonly effusivity: number;
  /** Length of the year [s]. */
  readonly period: number;
}

/** The ground surface below snow. */
export interface CoveredCourse {
  /** Temperatures in the middle of each step [degC]. */
  readonly temperatures: readonly number[];
  /** Steps in which the ground melts the snow from below. */
  readonly melting: number;
}

/** Changes of what melts after which it must have settled; two to five happen, and of 400 random covers none came to these. */
const MOST_ROUNDS = 50;

/**
 * The temperature of a ground surface below snow, repeating from year to year.
 *
 * Heat conduction into uniform ground of unlimited depth against a resistance that changes with the season: temperature + resistance · flux = temperature
 * on the snow. The flux of each harmonic n of the temperature is the effusivity times √(i n ω), summed up here into one row of weights for
 * equally spaced times. Below closed snow the surface is at most at 0 °C: warmer, it melts the snow from below until the flux is used up.
 */
export function coveredCourse(open: OpenSurface, snow: readonly Snow[]): CoveredCourse {
  const kernel = fluxKernel(open);
  const outside = snow.map((_, step) => open.mean - open.amplitude * Math.cos(2 * Math.PI * ((step + 0.5) / STEPS - open.coldest)));
  let melting = snow.map(() => false);
  for (let round = 0; ; round += 1) {
    const held = melting;
    const temperatures = solve(kernel, snow, outside, held);
    const next = snow.map(({ resistance, closed }, step) => {
      if (!(held[step] ?? false)) return closed && (temperatures[step] ?? 0) > 1e-9;
      // Held at 0 °C as long as more heat comes up than the snow lets through.
      const flux = temperatures.reduce((sum, temperature, other) => sum + weight(kernel, step - other) * temperature, 0);
      return (outside[step] ?? 0) - resistance * flux > 0;
    });
    if (round === MOST_ROUNDS || next.every((melts, step) => melts === held[step])) {
      return { temperatures, melting: held.filter(Boolean).length };
    }
    melting = next;
  }
}

/** Mean fall of the surface below snow per steady heat drawn out of the ground, the snow's base free to be of any temperature [m2.K/W]. */
export function steadyResistance(open: OpenSurface, snow: readonly Snow[]): number {
  const falls = solve(
    fluxKernel(open),
    snow,
    snow.map(({ resistance }) => resistance),
    snow.map(() => false),
  );
  return falls.reduce((sum, fall) => sum + fall, 0) / STEPS;
}

/** Flux into the ground per temperature of the surface so many steps before [W/(m2.K)]. */
function fluxKernel({ effusivity, period }: OpenSurface): readonly number[] {
  return Array.from({ length: STEPS }, (_, lag) => {
    let sum = 0;
    for (let n = 1; n <= (STEPS - 1) / 2; n += 1) {
      const angle = (2 * Math.PI * n * lag) / STEPS;
      sum += Math.sqrt((Math.PI * n) / period) * (Math.cos(angle) - Math.sin(angle));
    }
    return (2 * effusivity * sum) / STEPS;
  });
}

const weight = (kernel: readonly number[], lag: number): number => kernel[(lag + STEPS) % STEPS] ?? 0;

/**
 * Temperatures for which temperature + resistance · flux = right, those of held steps being 0. Eliminated without exchanging rows: over the resistance
 * the matrix has a positive symmetric part, since ground gives back no more heat than it takes.
 */
function solve(kernel: readonly number[], snow: readonly Snow[], right: readonly number[], held: readonly boolean[]): readonly number[] {
  const rows = snow.map(({ resistance }, step) => {
    const row = new Float64Array(STEPS + 1);
    if (!(held[step] ?? false)) {
      for (let other = 0; other < STEPS; other += 1) row[other] = resistance * weight(kernel, step - other);
      row[STEPS] = right[step] ?? 0;
    }
    row[step] = (row[step] ?? 0) + 1;
    return row;
  });
  for (const [pivot, row] of rows.entries()) {
    for (const below of rows.slice(pivot + 1)) {
      const factor = (below[pivot] ?? 0) / (row[pivot] ?? 1);
      if (factor === 0) continue;
      for (let column = pivot; column <= STEPS; column += 1) below[column] = (below[column] ?? 0) - factor * (row[column] ?? 0);
    }
  }
  const solution = new Float64Array(STEPS);
  for (let step = STEPS - 1; step >= 0; step -= 1) {
    const row = rows[step] ?? solution;
    let rest = row[STEPS] ?? 0;
    for (let other = step + 1; other < STEPS; other += 1) rest -= (row[other] ?? 0) * (solution[other] ?? 0);
    solution[step] = rest / (row[step] ?? 1);
  }
  return [...solution];
}
