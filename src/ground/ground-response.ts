import { groundPipes } from './ground-pipes.js';
import type { GroundResponse, GroundResponseInput } from './response.js';
import { responseOfPipes } from './response-of-pipes.js';
import { steadyKernel, stepKernel } from './step-kernel.js';

/**
 * How far the walls of buried pipes warm after a step of heat, and in the end.
 *
 * The pipes give off equal heat into uniform soil of unlimited depth. A pipe's own heat leaves a cylinder, other pipes act as lines, and the surface
 * acts through mirror images above ground. Pipe ends, the liquid's own heat capacity and freezing are left out.
 *
 * @param input - pipes, soil, surface and treatment of the pipe's own heat
 * @returns the response, ready to be asked for any time
 * @throws InputError when a number is out of its range, the soil's numbers contradict one another, a pipe sticks out of the ground or pipes overlap
 * @remarks Sources: line source of Kelvin with mirror images after Ingersoll, Zobel and Ingersoll; cylinder after Carslaw and Jaeger. Checked against
 * tables of special functions (1e-9) and finite elements (0.5 %). Invariants: equal when lengths are scaled by c and times by c²; proportional to
 * 1/conductivity; growing with time; below an isothermal surface never more than below a sealed one; N trenches far apart respond like one.
 * @example
 * ```ts @import.meta.vitest
 * const { feet, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const response = groundResponse({
 *   layout: twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), trenches: 4, trenchSpacing: feet(10) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 * });
 * expect(response.riseAfter(days(365.25))).toBeCloseTo(0.8131, 4);
 * ```
 */
export function groundResponse(input: GroundResponseInput): GroundResponse {
  const pipes = groundPipes(input);
  return responseOfPipes(input, pipes, { after: (spread) => stepKernel(spread, pipes), steady: steadyKernel(pipes.radius) });
}
