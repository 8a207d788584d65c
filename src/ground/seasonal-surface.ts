import { type Complex, gaussLegendre, root, solveDense, times } from '../numerics/index.js';
import type { PipePlaces } from './pairs.js';

/** Times of the year at which the surface is solved for; odd, so that the shortest sine is whole. */
export const TIMES = 49;
/** Harmonics of the year that these times hold. */
export const HARMONICS = 24;
/** What is beyond e^−this of the surface's waves across the field is left out. */
const NEGLIGIBLE = 24;

/** A year's heat at the pipes and the ground below the surface, plain numbers. */
export interface SeasonalGround {
  readonly places: PipePlaces;
  readonly conductivity: number;
  readonly diffusivity: number;
  /** Length of the year [s]. */
  readonly period: number;
  /** Heat of each pipe: its mean, then twice the coefficient of each harmonic; the heat is the real part of their sum [W/m]. */
  readonly heat: readonly Complex[];
}

/** How the surface answers: what its temperature is under a flux [W/m2] that comes up to it while it is held, both by harmonics; for one wave across the field. */
export type SurfaceAnswer = (flux: readonly Complex[], rates: readonly Complex[]) => readonly Complex[];

/**
 * What the mean wall of the pipes is warmer than below an isothermal surface, by harmonics of the year [K].
 *
 * Across the field the surface's temperature is taken apart into waves λ, each of which goes down as exp(−√(λ² + iω/α) z), as does the flux that the pipes send up.
 * Sideways even and odd parts go apart, so that a field need not be symmetric.
 */
export function surfacePart({ places, conductivity, diffusivity, period, heat }: SeasonalGround, answer: SurfaceAnswer): readonly Complex[] {
  const pipes = Array.from({ length: places.trenches }, (_, trench) =>
    places.pipes.map(({ x, depth }) => ({ x: x + (trench - (places.trenches - 1) / 2) * places.trenchSpacing, depth })),
  ).flat();
  const furthest = Math.max(...pipes.map(({ x }) => Math.abs(x)));
  const most = NEGLIGIBLE / 2 / Math.min(...pipes.map(({ depth }) => depth));
  const sum = heat.map(() => ({ re: 0, im: 0 }));
  const addWave = (wave: number, width: number): void => {
    const rates = heat.map((_, n) => root({ re: wave * wave, im: (2 * Math.PI * n) / (period * diffusivity) }));
    for (const sideways of [Math.cos, Math.sin]) {
      const seen = rates.map(({ re, im }) =>
        pipes.reduce<Complex>(
          (all, { x, depth }) => {
            const size = sideways(wave * x) * Math.exp(-re * depth);
            return { re: all.re + size * Math.cos(im * depth), im: all.im - size * Math.sin(im * depth) };
          },
          { re: 0, im: 0 },
        ),
      );
      if (seen.every(({ re, im }) => Math.abs(re) + Math.abs(im) < 1e-13)) continue;
      const surface = answer(
        seen.map((each, n) => times(each, heat[n] ?? each)),
        rates.map(({ re, im }) => ({ re: conductivity * re, im: conductivity * im })),
      );
      for (const [n, each] of sum.entries()) {
        const part = times(seen[n] ?? each, surface[n] ?? each);
        each.re += (width * part.re) / (Math.PI * pipes.length);
        each.im += (width * part.im) / (Math.PI * pipes.length);
      }
    }
  };
  // Parts that double from the centre on, no wider than the waves between the outermost pipes allow.
  for (let from = 0; from < most; ) {
    const to = Math.min(most, from + Math.min(Math.max(0.02, from), 4 / Math.max(furthest, 1)));
    gaussLegendre(from, to, addWave);
    from = to;
  }
  return sum;
}

/** A surface below a resistance that stays the same [m2.K/W]: each harmonic by itself. */
export function constantSurface(resistance: number): SurfaceAnswer {
  return (flux, rates) =>
    flux.map(({ re, im }, n) => {
      const rate = rates[n] ?? { re: NaN, im: NaN };
      const [a, b] = [1 + resistance * rate.re, resistance * rate.im];
      const scale = resistance / (a * a + b * b);
      return { re: scale * (re * a + im * b), im: scale * (im * a - re * b) };
    });
}

/** A surface below a resistance that changes through the year, given at the equal times [m2.K/W]: all harmonics at once, temperature + resistance · flux into the ground. */
export function changingSurface(resistances: readonly number[]): SurfaceAnswer {
  const turns = Array.from({ length: TIMES }, (_, index) => ({
    re: Math.cos((2 * Math.PI * index) / TIMES),
    im: Math.sin((2 * Math.PI * index) / TIMES),
  }));
  const turned = (n: number, time: number): Complex => turns[(n * time) % TIMES] ?? { re: NaN, im: NaN };
  const atTime = (harmonics: readonly Complex[], time: number): number =>
    harmonics.reduce((sum, each, n) => sum + times(each, turned(n, time)).re, 0);
  return (flux, rates) => {
    const kernel = turns.map(
      (_, lag) =>
        atTime(
          rates.map(({ re, im }, n) => (n === 0 ? { re, im } : { re: 2 * re, im: 2 * im })),
          lag,
        ) / TIMES,
    );
    const matrix = resistances.map((resistance, time) =>
      resistances.map((_, other) => (time === other ? 1 : 0) + resistance * (kernel[(time - other + TIMES) % TIMES] ?? NaN)),
    );
    const surface = solveDense(
      matrix,
      resistances.map((resistance, time) => resistance * atTime(flux, time)),
    );
    return flux.map((_, n) => {
      const scale = (n === 0 ? 1 : 2) / TIMES;
      let [re, im] = [0, 0];
      for (const [time, each] of surface.entries()) {
        const turn = turned(n, time);
        re += scale * each * turn.re;
        im -= scale * each * turn.im;
      }
      return { re, im };
    });
  };
}
