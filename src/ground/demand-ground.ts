import { demand, demandChoice, demandObject, InputError, locate } from '../errors/index.js';
import type { SoilThermal } from '../states/index.js';
import type { Conductivity, Diameter } from '../units/index.js';
import { arrange } from './arrange.js';
import type { Layout } from './layout.js';
import type { GroundSurface } from './response.js';

/** Refuses a conductivity that no ground has [W/(m.K)]. */
export function demandConductivity(argument: string, conductivity: Conductivity): void {
  demand(argument, 'conductivity', conductivity, { atLeast: 0.01, atMost: 100 });
}

/** Refuses a pipe that is none [m]. */
export function demandOutsideDiameter(argument: string, outsideDiameter: Diameter): void {
  demand(argument, 'diameter', outsideDiameter, { atLeast: 0.001, atMost: 2 });
}

/** Refuses a soil that no ground is made of, or whose three numbers do not belong together. */
export function demandSoil(soil: SoilThermal): void {
  demandObject('soil', soil);
  const { conductivity, heatCapacity, diffusivity } = soil;
  demandConductivity('soil.conductivity', conductivity);
  demand('soil.heatCapacity', 'heat capacity', heatCapacity, { atLeast: 1e4, atMost: 1e8 });
  demand('soil.diffusivity', 'diffusivity', diffusivity, { above: 0, atMost: 1e-2 });
  if (Math.abs((diffusivity * heatCapacity) / conductivity - 1) > 1e-6)
    throw new InputError({
      code: 'impossible',
      argument: 'soil.diffusivity',
      value: { kind: 'diffusivity', value: diffusivity },
      allowed: `conductivity over heat capacity, ${String(conductivity / heatCapacity)}`,
    });
}

/** Refuses a surface of no known type or with an impossible film. */
export function demandSurface(surface: GroundSurface): void {
  demandObject('surface', surface);
  demandChoice('surface.type', surface.type, ['isothermal', 'adiabatic', 'film']);
  if (surface.type === 'film') demand('surface.coefficient', 'surface coefficient', surface.coefficient, { atLeast: 0.1, atMost: 1e10 });
}

/** Refuses pipes that are none, that stick out of the ground or overlap. */
export function demandBuriedPipes(layout: Layout, pipe: { readonly outsideDiameter: Diameter }): void {
  demandObject('layout', layout);
  demandObject('pipe', pipe);
  demandOutsideDiameter('pipe.outsideDiameter', pipe.outsideDiameter);
  const { outsideDiameter } = pipe;
  const { name, pipes, trenches, trenchSpacing } = layout;
  locate('layout', () => {
    demandChoice('name', name, ['one-pipe', 'two-pipe-stacked', 'two-pipe-side-by-side', 'four-pipe', 'six-pipe', 'custom']);
    arrange(name, { trenches, trenchSpacing }, pipes);
    demand('pipesPerTrench', 'count', layout.pipesPerTrench, { atLeast: pipes.length, atMost: pipes.length });
    for (const [index, { depth }] of pipes.entries())
      demand(`pipes.${String(index)}.depth`, 'length', depth, { above: outsideDiameter / 2 }, 'the pipe would stick out of the ground');
    const nearest = nearestPipes(layout);
    demand('pipes', 'length', nearest, { atLeast: outsideDiameter }, 'distance of two pipe axes: the pipes would overlap');
  });
}

/** Least distance between two pipe axes, in one trench or in neighbouring ones [m]; 1e9 when there is only one pipe. */
export function nearestPipes({ pipes, trenches, trenchSpacing }: Pick<Layout, 'pipes' | 'trenches' | 'trenchSpacing'>): number {
  let nearest = 1e9;
  for (const [i, from] of pipes.entries())
    for (const [j, to] of pipes.entries()) {
      if (j > i) nearest = Math.min(nearest, Math.hypot(to.x - from.x, to.depth - from.depth));
      if (trenches > 1) nearest = Math.min(nearest, Math.hypot(to.x - from.x + trenchSpacing, to.depth - from.depth));
    }
  return nearest;
}
