import { demand } from '../errors/index.js';
import type { SoilThermal } from '../states/index.js';
import type { Diffusivity, Shape } from '../units/index.js';
import { demandBuriedPipes, demandSoil, demandSurface } from './demand-ground.js';
import { fitExponentials } from './exponential-fit.js';
import { cylindricalPipes, type ExponentialResponse, fitInSoil, LONGEST, responseOfFit, SHORTEST } from './exponential-response.js';
import { equalFluxMean, type FittedMean } from './fitted-mean.js';
import type { GroundPipes } from './ground-pipes.js';
import { groupPairs, type PipePlaces } from './pairs.js';
import { layoutShape } from './layout.js';
import { type GroundResponseInput, groundSurfaceShape } from './response.js';

/** What {@link exponentialGeometry} needs. */
export interface ExponentialGeometryInput extends Pick<GroundResponseInput, 'layout' | 'pipe' | 'surface'> {
  /** Least diffusivity of the soils to come, 1e-10 to 1e-2; 2e-7, dry or peaty, when left out [m2/s]. */
  readonly leastDiffusivity?: Diffusivity;
  /** Greatest diffusivity of the soils to come, from the least to 1e-2; 1.5e-6, rock or frozen, when left out [m2/s]. */
  readonly greatestDiffusivity?: Diffusivity;
}

/** Shape of {@link ExponentialGeometryInput}. */
export const exponentialGeometryInputShape: Shape<ExponentialGeometryInput> = {
  layout: layoutShape,
  pipe: { outsideDiameter: 'diameter' },
  surface: { optional: groundSurfaceShape },
  leastDiffusivity: { optional: 'diffusivity' },
  greatestDiffusivity: { optional: 'diffusivity' },
};

/** Pipes whose response is known in any soil. */
export interface ExponentialGeometry {
  /**
   * The response in a soil, its diffusivity within the range of the geometry. Below a surface film it is fitted anew.
   *
   * @param soil - the soil, uniform
   */
  readonly inSoil: (soil: SoilThermal) => ExponentialResponse;
}

/**
 * Fits exponentials once for pipes in any soil: rise · conductivity depends on diffusivity · time alone, below an isothermal or a sealed surface. A
 * surface film counts as soil of thickness conductivity over coefficient, so it changes the geometry with every soil and each soil gets its own fit.
 *
 * The fit reaches from a minute in the slowest soil to 20 years in the quickest, further than that of {@link exponentialResponse} and with as many
 * terms for each factor of ten.
 *
 * @param input - pipes, surface, and the range of soils to come
 * @returns the response for each soil
 * @throws InputError when a number is out of its range, a pipe sticks out of the ground or pipes overlap; from `inSoil` for a soil outside the range
 * @remarks Invariant tested: the same as {@link exponentialResponse} in each soil, within what the two fits are off.
 * @example
 * ```ts @import.meta.vitest
 * const { feet, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const geometry = exponentialGeometry({
 *   layout: twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), trenches: 4, trenchSpacing: feet(10) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 * });
 * const soil = { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) };
 * expect(geometry.inSoil(soil).riseAfter(days(365.25))).toBeCloseTo(0.8131, 3);
 * ```
 */
export function exponentialGeometry(input: ExponentialGeometryInput): ExponentialGeometry {
  return geometryOf(input, equalFluxMean);
}

/** {@link exponentialGeometry} for a wall condition. */
export function geometryOf(input: ExponentialGeometryInput, meanOf: (pipes: GroundPipes) => FittedMean): ExponentialGeometry {
  const { layout, pipe, surface = { type: 'isothermal' }, leastDiffusivity: least = 2e-7, greatestDiffusivity: greatest = 1.5e-6 } = input;
  demandBuriedPipes(layout, pipe);
  demandSurface(surface);
  demand('leastDiffusivity', 'diffusivity', least, { atLeast: 1e-10, atMost: 1e-2 });
  demand('greatestDiffusivity', 'diffusivity', greatest, { atLeast: least, atMost: 1e-2 });
  const demandInRange = (soil: SoilThermal): void => {
    demandSoil(soil);
    demand('soil.diffusivity', 'diffusivity', soil.diffusivity, { atLeast: least, atMost: greatest }, 'the geometry was fitted for other soils');
  };
  if (surface.type === 'film')
    return {
      inSoil: (soil) => {
        demandInRange(soil);
        return fitInSoil(meanOf(cylindricalPipes({ layout, pipe, surface, soil })), soil);
      },
    };
  const places: PipePlaces = { pipes: layout.pipes, trenches: layout.trenches, trenchSpacing: layout.trenchSpacing, addedDepth: 0 };
  const sealed = surface.type === 'adiabatic';
  const pipes: GroundPipes = { radius: pipe.outsideDiameter / 2, selfTerm: 'cylinder', sealed, places, groups: groupPairs(places) };
  const fit = fitExponentials(meanOf(pipes), { from: least * SHORTEST, to: greatest * LONGEST });
  return {
    inSoil: (soil) => {
      demandInRange(soil);
      return responseOfFit(fit, soil);
    },
  };
}
