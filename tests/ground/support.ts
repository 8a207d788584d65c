import { customLayout, groundResponse, type GroundResponse, type GroundResponseInput, type Layout } from '../../src/ground/index.js';
import type { SoilThermal } from '../../src/states/index.js';
import { diameterMetres, joulesPerCubicMetreKelvin, metres, squareMetresPerSecond, wattsPerMetreKelvin } from '../../src/units/index.js';

/** A soil of a conductivity [W/(m.K)] and a diffusivity [m2/s]. */
export const soilOf = (conductivity: number, diffusivity: number): SoilThermal => ({
  conductivity: wattsPerMetreKelvin(conductivity),
  diffusivity: squareMetresPerSecond(diffusivity),
  heatCapacity: joulesPerCubicMetreKelvin(conductivity / diffusivity),
});

/** Pipes at [x, depth] in equal trenches. */
export const layoutOf = (pipes: readonly (readonly [x: number, depth: number])[], trenches = 1, trenchSpacing = 100): Layout =>
  customLayout({ pipes: pipes.map(([x, depth]) => ({ x: metres(x), depth: metres(depth) })), trenches, trenchSpacing: metres(trenchSpacing) });

/** The response of a layout with everything given in SI units. */
export const responseOf = (
  layout: Layout,
  of: { readonly radius: number; readonly conductivity: number; readonly diffusivity: number } & Pick<GroundResponseInput, 'surface' | 'selfTerm'>,
): GroundResponse => {
  const { radius, conductivity, diffusivity, ...rest } = of;
  return groundResponse({ layout, pipe: { outsideDiameter: diameterMetres(2 * radius) }, soil: soilOf(conductivity, diffusivity), ...rest });
};
