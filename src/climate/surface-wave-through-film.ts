import { demand, demandChoice } from '../errors/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Conductivity, DayOfYear, Diffusivity, Ratio, Shape, SurfaceCoefficient, TemperatureDifference, Time } from '../units/index.js';
import { demandConductivity } from './ground-heat-flux.js';
import { DAY, demandDiffusivity, demandWave } from './limits.js';
import { damping, wrapDay } from './wave-at-depth.js';

/** What {@link surfaceWaveThroughFilm} needs. */
export interface SurfaceFilmInput {
  /** The wave on the outer side of the film: the air, with the sun and the sky counted into it where they matter. */
  readonly air: AnnualWave;
  /** Heat transfer coefficient of the film, 0.01 to 1e4 [W/(m2.K)]. */
  readonly coefficient: SurfaceCoefficient;
  /** Thermal conductivity of the ground, 0.01 to 100 [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
}

/** Shape of {@link SurfaceFilmInput}. */
export const surfaceFilmInputShape: Shape<SurfaceFilmInput> = {
  air: annualWaveShape,
  coefficient: 'surface coefficient',
  conductivity: 'conductivity',
  diffusivity: 'diffusivity',
};

/** The wave of the ground surface below a film. */
export interface SurfaceFilmWave {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** Amplitude of the surface over that outside the film [1]. */
  readonly amplitudeRatio: Ratio;
  /** How much later than outside the film the surface is coldest [s]. */
  readonly lag: Time;
}

/** Shape of {@link SurfaceFilmWave}. */
export const surfaceFilmWaveShape: Shape<SurfaceFilmWave> = { wave: annualWaveShape, amplitudeRatio: 'ratio', lag: 'time' };

/**
 * The wave of the ground surface below a film of constant coefficient.
 *
 * A film damps and delays the wave as it damps the loop's own disturbance: give the same coefficient to the response of the
 * ground, or neither. A mulch, long grass or still air is such a film all year; snow is one for a season only, and then a much
 * better insulator than this constant can say.
 *
 * @param input - wave outside the film, coefficient [W/(m2.K)], conductivity [W/(m.K)] and diffusivity [m2/s] of the ground
 * @returns the wave of the surface, its amplitude ratio and its lag [s]
 * @throws InputError when a number is out of range or the wave is of the ground surface already
 * @remarks
 * Ratio 1/√(1 + 2b + 2b²), lag atan(b/(1 + b)) P/2π, b = k/(hD): the slope of the wave at the surface against the film.
 * Source: `carslawJaeger1959`. Checked against three cases computed independently. Invariants: the mean is kept; a perfect film changes nothing; the
 * flux through the film is the flux into the ground.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, squareMetresPerDay, wattsPerMetreKelvin, wattsPerSquareMetreKelvin } = await import(
 *   '../units/index.js'
 * );
 * const air = { of: 'air', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(18), period: days(365) } as const;
 * const ground = { conductivity: wattsPerMetreKelvin(1.2), diffusivity: squareMetresPerDay(0.05) };
 * const { amplitudeRatio, lag } = surfaceWaveThroughFilm({ air, coefficient: wattsPerSquareMetreKelvin(5), ...ground });
 * expect(amplitudeRatio).toBeCloseTo(0.906, 3);
 * expect(days.of(lag)).toBeCloseTo(5.2, 1);
 * ```
 */
export function surfaceWaveThroughFilm({ air, coefficient, conductivity, diffusivity }: SurfaceFilmInput): SurfaceFilmWave {
  demandWave('air', air);
  demandChoice('air.of', air.of, ['air']);
  demand('coefficient', 'surface coefficient', coefficient, { atLeast: 0.01, atMost: 1e4 });
  demandConductivity(conductivity);
  demandDiffusivity(diffusivity);
  const b = conductivity / (coefficient * damping(diffusivity, air.period));
  const amplitudeRatio = (1 / Math.sqrt(1 + 2 * b + 2 * b * b)) as Ratio;
  const lag = ((Math.atan(b / (1 + b)) * air.period) / (2 * Math.PI)) as Time;
  const wave: AnnualWave = {
    of: 'ground surface',
    mean: air.mean,
    amplitude: (air.amplitude * amplitudeRatio) as TemperatureDifference,
    coldestDay: wrapDay(air.coldestDay + lag / DAY, air.period) as DayOfYear,
    period: air.period,
  };
  return { wave, amplitudeRatio, lag };
}
