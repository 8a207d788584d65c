import type { Ratio } from '../units/index.js';
import { equalTemperatureMean } from './equal-temperature-mean.js';
import { type ExponentialGeometry, type ExponentialGeometryInput, geometryOf } from './exponential-geometry.js';
import { cylindricalPipes, type ExponentialResponse, fitInSoil } from './exponential-response.js';
import type { GroundResponseInput } from './response.js';

/** An {@link ExponentialResponse} of walls that share one temperature, for heat that is the mean over all pipes. */
export interface EqualTemperatureResponse extends ExponentialResponse {
  /** Heat of each pipe over the mean in the end, trench by trench in the order of the layout's pipes [1]; absent below a sealed surface. */
  readonly heatShares: readonly (readonly Ratio[])[] | undefined;
}

/**
 * A ground response as a sum of decaying exponentials, like {@link exponentialResponse}, for pipes whose walls share one temperature at every time and
 * each give off the heat that follows.
 *
 * The other limit beside pipes of equal heat; parallel circuits on one header are nearer to this one. In the end it rises less, by a few percent at
 * most in usual trenches. It may do so later: with pipes as unlike as 0.5 and 1.6 m deep it is 0.2 % the higher for a while, when the shallow ones, which
 * had the larger share, have come to rest. Nor is a loop always the shorter for it, since shallow pipes take more heat from the colder ground of winter.
 *
 * Where pipes lie at unlike depths, the walls at rest come to a mean of the ground around the pipes, its weights the shares of heat at the pace of the
 * change. At the pace of a year these are still near to equal: the plain mean over the pipes is the ground to simulate with, within 0.5 % of the swing of
 * the surface for two pipes 0.6 m over one another.
 *
 * @param input - pipes, soil and surface as for {@link exponentialResponse}, 400 pipes at most
 * @returns terms, response and fit, for heat per metre of the mean pipe, and the shares of heat in the end
 * @throws InputError as {@link exponentialResponse} does, and for more than 400 pipes
 * @remarks The difference to equal heat is solved exactly at real rates of growth and inverted after Gaver and Stehfest. Checked against finite elements
 * (0.5 %) and shares of heat stepped through time (2e-5). Invariants tested: one pipe and a pair at equal depth as {@link exponentialResponse}; the steady
 * rise that of {@link equalTemperatureResistance}, and like every swell at a steady rate never above that of equal heat; trenches far apart like one.
 * Some tenths of a second for 100 pipes, a few seconds for 400.
 * @example
 * ```ts @import.meta.vitest
 * const { feet, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const { wallCondition, riseAfter, heatShares } = equalTemperatureResponse({
 *   layout: twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), trenches: 4, trenchSpacing: feet(10) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 * });
 * expect(wallCondition).toBe('equal temperature');
 * expect(riseAfter(days(365.25))).toBeCloseTo(0.8093, 3);
 * expect(heatShares?.[0]?.[0]).toBeCloseTo(1.1455, 3);
 * ```
 */
export function equalTemperatureResponse(input: GroundResponseInput): EqualTemperatureResponse {
  const mean = equalTemperatureMean(cylindricalPipes(input));
  return { ...fitInSoil(mean, input.soil), heatShares: mean.heatShares as EqualTemperatureResponse['heatShares'] };
}

/**
 * Fits {@link equalTemperatureResponse} once for pipes in any soil, as {@link exponentialGeometry} does for pipes of equal heat.
 *
 * @param input - pipes, surface, and the range of soils to come; 400 pipes at most
 * @returns the response for each soil
 * @throws InputError as {@link exponentialGeometry} does, and for more than 400 pipes
 * @remarks Invariant tested: the same as {@link equalTemperatureResponse} in each soil, within what the two fits are off.
 * @example
 * ```ts @import.meta.vitest
 * const { feet, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const { inSoil } = equalTemperatureGeometry({
 *   layout: twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), trenches: 4, trenchSpacing: feet(10) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 * });
 * const soil = { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) };
 * expect(inSoil(soil).riseAfter(days(365.25))).toBeCloseTo(0.8093, 3);
 * ```
 */
export function equalTemperatureGeometry(input: ExponentialGeometryInput): ExponentialGeometry {
  return geometryOf(input, equalTemperatureMean);
}
