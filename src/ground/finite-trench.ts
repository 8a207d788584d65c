import { demand } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Shape, TrenchLength } from '../units/index.js';
import { type ExponentialResponse, cylindricalPipes, fitInSoil } from './exponential-response.js';
import { finiteKernel, finiteSteadyKernel } from './finite-kernel.js';
import { equalFluxMean } from './fitted-mean.js';
import { groundPipes } from './ground-pipes.js';
import { meanRise } from './pairs.js';
import { type GroundResponse, type GroundResponseInput, groundResponseInputShape } from './response.js';
import { responseOfPipes } from './response-of-pipes.js';

/** What the response of trenches with ends is computed from. */
export interface FiniteTrenchInput extends GroundResponseInput {
  /** Length of every trench, straight pipes all along it, 1 to 1e5 [m]. */
  readonly trenchLength: TrenchLength;
}

/** Shape of {@link FiniteTrenchInput}. */
export const finiteTrenchInputShape: Shape<FiniteTrenchInput> = /* @__PURE__ */ joinedShape(groundResponseInputShape, {
  trenchLength: 'trench length',
});

/**
 * {@link groundResponse} for trenches that end: heat that leaves past the ends makes pipes rise less, the mean over their length by 1.6 to 1.8 % in 30 m and
 * 0.4 to 0.5 % in 100 m of a single trench in years, more in many trenches.
 *
 * All trenches are straight, of one length, and lie abreast. Bends and the pipe from trench to house are left out.
 *
 * @param input - what a ground response is computed from, and the length of the trenches
 * @returns the response, its walls averaged along the trench
 * @throws InputError as {@link groundResponse} does, and for a length out of its range
 * @remarks Finite line sources after Claesson and Javed (`claessonJaved2011`), own derivation; checked against a quadrature confirmed by point sources (1e-8). Invariants
 * tested: below {@link groundResponse} and nearer to it the longer; growing with time; steady state by closed form; scaling.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, trenchMetres, diameterMetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import('../units/index.js');
 * const { onePipe } = await import('./layout-makers.js');
 * const response = finiteTrenchResponse({
 *   layout: onePipe({ depth: metres(1.5), trenches: 1, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMetres(0.032) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   selfTerm: 'line',
 *   trenchLength: trenchMetres(30),
 * });
 * expect(response.riseAfter(days(365.25))).toBeCloseTo(0.5406695, 6);
 * ```
 */
export function finiteTrenchResponse({ trenchLength, ...input }: FiniteTrenchInput): GroundResponse {
  demandTrenchLength(trenchLength);
  const pipes = groundPipes(input);
  const response = responseOfPipes(input, pipes, {
    after: (spread) => finiteKernel(spread, pipes, trenchLength),
    steady: finiteSteadyKernel(pipes.radius, trenchLength),
  });
  return { ...response, sources: [...response.sources, 'claessonJaved2011'] };
}

/**
 * {@link finiteTrenchResponse} as a sum of decaying exponentials, which a simulation steps.
 *
 * @param input - as for {@link finiteTrenchResponse}; the pipe's own heat leaves a cylinder
 * @returns the terms, the response that they give, and how good it is
 * @throws InputError as {@link finiteTrenchResponse} does, and for a line as the pipe's own heat
 * @remarks Fitted like {@link exponentialResponse}, at several times its cost. Invariant tested: within what `fit` says of {@link finiteTrenchResponse}.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, trenchMetres, diameterMetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond } = await import('../units/index.js');
 * const { onePipe } = await import('./layout-makers.js');
 * const { fit } = exponentialFiniteTrench({
 *   layout: onePipe({ depth: metres(1.5), trenches: 2, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMetres(0.032) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   trenchLength: trenchMetres(30),
 * });
 * expect(fit.largestError).toBeLessThan(2e-4);
 * ```
 */
export function exponentialFiniteTrench({ trenchLength, ...input }: FiniteTrenchInput): ExponentialResponse {
  demandTrenchLength(trenchLength);
  const pipes = cylindricalPipes(input);
  const steady = pipes.sealed ? undefined : meanRise(pipes.groups, finiteSteadyKernel(pipes.radius, trenchLength));
  const riseAfter = (spread: number): number => meanRise(pipes.groups, finiteKernel(spread, pipes, trenchLength));
  return fitInSoil({ ...equalFluxMean(pipes, steady), riseAfter }, input.soil);
}

function demandTrenchLength(trenchLength: TrenchLength): void {
  demand('trenchLength', 'trench length', trenchLength, { atLeast: 1, atMost: 1e5 });
}
