import { demand } from '../errors/index.js';
import { joinedShape, soilThermalShape } from '../states/index.js';
import type { Shape, SurfaceCoefficient, Time } from '../units/index.js';
import { cylindricalPipes, type ExponentialResponse, fitInSoil } from './exponential-response.js';
import { filmKernels } from './film-kernel.js';
import { equalFluxMean } from './fitted-mean.js';
import { groundPipes } from './ground-pipes.js';
import { layoutShape } from './layout.js';
import { meanRise } from './pairs.js';
import { demandPeriod, periodicKernel } from './periodic-kernel.js';
import { type PeriodicResponse, swingOf } from './periodic-response.js';
import type { GroundResponse, GroundResponseInput } from './response.js';
import { responseOfPipes } from './response-of-pipes.js';

/** What the response below a surface film is computed from. */
export interface FilmResponseInput extends Omit<GroundResponseInput, 'surface'> {
  /** Heat transfer coefficient between ground surface and air, 0.1 to 1e10 [W/(m2.K)]. */
  readonly coefficient: SurfaceCoefficient;
}

/** What the periodic response below a surface film is computed from. */
export interface PeriodicFilmInput extends FilmResponseInput {
  /** Time after which the heat repeats, 60 to 1e12, with a line as self term at least 4π radius²/diffusivity [s]. */
  readonly period: Time;
}

/** Shape of {@link FilmResponseInput}. */
export const filmResponseInputShape: Shape<FilmResponseInput> = {
  layout: layoutShape,
  pipe: { outsideDiameter: 'diameter' },
  soil: soilThermalShape,
  selfTerm: { optional: ['cylinder', 'line'] },
  coefficient: 'surface coefficient',
};

/** Shape of {@link PeriodicFilmInput}. */
export const periodicFilmInputShape: Shape<PeriodicFilmInput> = /* @__PURE__ */ joinedShape(filmResponseInputShape, { period: 'time' });

/**
 * {@link groundResponse} below a surface film, without the film's stand-in: a film as added depth, what `surface` of a ground response takes, is right to
 * second order in the added depth over the depth of the pipes, this to the last digits.
 *
 * The two are within 0.1 % of one another for films of 5 W/(m2.K) and more over pipes from 0.9 m down. Below snow, at 0.3 W/(m2.K), the added depth is several times
 * the depth of the pipes, and the stand-in comes out several percent too low.
 *
 * @param input - pipes, soil and coefficient of the film
 * @returns the response
 * @throws InputError as {@link groundResponse} does, and for a coefficient out of its range
 * @remarks Source: Carslaw and Jaeger, own derivation: what the film lets through lies on a line up from the image and fades as exp(−height · coefficient/conductivity).
 * Checked against quadrature of another form (1e-7), its closed steady state and finite elements (0.5 %). Invariants tested: never below an isothermal surface nor
 * above a sealed one; the better a film the lower; scaling as in {@link groundResponse}.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, diameterMetres, wattsPerMetreKelvin, wattsPerSquareMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import(
 *   '../units/index.js'
 * );
 * const { onePipe } = await import('./layout-makers.js');
 * const response = filmResponse({
 *   layout: onePipe({ depth: metres(1.2192), trenches: 1, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMetres(0.0334) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   coefficient: wattsPerSquareMetreKelvin(0.3),
 * });
 * expect(response.riseAfter(days(90))).toBeCloseTo(0.585, 3);
 * ```
 */
export function filmResponse({ coefficient, ...input }: FilmResponseInput): GroundResponse {
  const pipes = groundPipes(input);
  return responseOfPipes(input, pipes, filmKernels(pipes, addedDepth(coefficient, input.soil)));
}

/**
 * {@link filmResponse} as a sum of decaying exponentials, which a simulation steps.
 *
 * @param input - as for {@link filmResponse}; the pipe's own heat leaves a cylinder
 * @returns the terms, the response that they give, and how good it is
 * @throws InputError as {@link filmResponse} does, and for a line as the pipe's own heat
 * @remarks Fitted like {@link exponentialResponse}, at some ten times its cost. Invariant tested: within what `fit` says of {@link filmResponse}.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, diameterMetres, wattsPerMetreKelvin, wattsPerSquareMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond } = await import(
 *   '../units/index.js'
 * );
 * const { onePipe } = await import('./layout-makers.js');
 * const { fit } = exponentialFilmResponse({
 *   layout: onePipe({ depth: metres(1.2), trenches: 2, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMetres(0.0334) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   coefficient: wattsPerSquareMetreKelvin(0.3),
 * });
 * expect(fit.largestError).toBeLessThan(2e-4);
 * ```
 */
export function exponentialFilmResponse({ coefficient, ...input }: FilmResponseInput): ExponentialResponse {
  const pipes = cylindricalPipes(input);
  const added = addedDepth(coefficient, input.soil);
  const { after, steady } = filmKernels(pipes, added);
  const mean = equalFluxMean(pipes, meanRise(pipes.groups, steady));
  // A film lets a rise come to rest as late as if the pipes lay deeper by what it stands for.
  const settled = (Math.sqrt(mean.settled) + added) ** 2;
  return fitInSoil({ ...mean, settled, riseAfter: (spread) => meanRise(pipes.groups, after(spread)) }, input.soil);
}

/**
 * {@link periodicResponse} below a surface film, exact where the film as `surface` stands for added depth.
 *
 * @param input - as for {@link filmResponse}, and the period
 * @returns amplitude and lag
 * @throws InputError as {@link periodicResponse} and {@link filmResponse} do
 * @remarks Invariants tested: between isothermal and sealed surface, and that of the isothermal surface below a perfect film; the same as steps of
 * {@link filmResponse} superposed.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, diameterMetres, wattsPerMetreKelvin, wattsPerSquareMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import(
 *   '../units/index.js'
 * );
 * const { onePipe } = await import('./layout-makers.js');
 * const { amplitude } = periodicFilmResponse({
 *   layout: onePipe({ depth: metres(1.2), trenches: 1, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMetres(0.0334) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   coefficient: wattsPerSquareMetreKelvin(0.3),
 *   period: days(365),
 * });
 * expect(amplitude).toBeCloseTo(0.5302, 4);
 * ```
 */
export function periodicFilmResponse({ coefficient, period, ...input }: PeriodicFilmInput): PeriodicResponse {
  const pipes = groundPipes(input);
  const { soil } = input;
  demandPeriod(period, pipes, soil);
  return swingOf(pipes.groups, periodicKernel(period * soil.diffusivity, pipes, addedDepth(coefficient, input.soil)), { period, soil });
}

/** Conductivity over coefficient [m]. */
function addedDepth(coefficient: SurfaceCoefficient, soil: GroundResponseInput['soil']): number {
  demand('coefficient', 'surface coefficient', coefficient, { atLeast: 0.1, atMost: 1e10 });
  return soil.conductivity / coefficient;
}
