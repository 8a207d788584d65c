import { demand, demandCount } from '../errors/index.js';
import type { Head, PipeLength, Pressure, Shape, Time, Volume } from '../units/index.js';
import { boreArea, flowVelocity } from './flow.js';
import { GRAVITY } from '../numerics/index.js';
import { type FrictionFlow, pressureGradient } from './pressure-gradient.js';

/** A flow through one coil of each length. */
export interface CoilFlow extends FrictionFlow {
  /** Lengths of coil, 1 to 50 of them, each 1 to 1e4 [m]. */
  readonly coilLengths: readonly PipeLength[];
}

/** What a coil of one length holds and loses. */
export interface CoilHydraulics {
  /** The coil delivered [m]. */
  readonly coilLength: PipeLength;
  /** What it holds [m3]. */
  readonly coilVolume: Volume;
  /** How long the fluid takes from end to end [s]. */
  readonly transitTime: Time;
  /** Friction from end to end, laid straight [Pa]. */
  readonly pressureDrop: Pressure;
  /** The same as a column of the fluid [m]. */
  readonly head: Head;
}

/** Shape of {@link CoilHydraulics}. */
export const coilHydraulicsShape: Shape<CoilHydraulics> = {
  coilLength: 'pipe length',
  coilVolume: 'volume',
  transitTime: 'time',
  pressureDrop: 'pressure',
  head: 'head',
};

/**
 * Contents, transit time and pressure drop of coils of the lengths on offer.
 *
 * Straight pipe without fittings; a coil that is left in rings loses more, see {@link coiledPressureGradient}.
 *
 * @param of - bore [m], fluid, flow through the one coil, above 0 [m3/s], roughness [m], coil lengths, each 1 to 1e4 [m]
 * @returns one entry per length, in the order given
 * @throws InputError when a number is impossible or the list is empty
 * @remarks Invariants: all are proportional to the length; volume over transit time is the flow.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds } = await import('../units/index.js');
 * const { DELIVERED_COILS } = await import('./coils.data.js');
 * const [shortest] = coilHydraulics({
 *   pipe: { insideDiameter: diameterMillimetres(21.844) },
 *   fluid: { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) },
 *   flow: litresPerSecond(0.19),
 *   coilLengths: DELIVERED_COILS.IPS,
 * });
 * expect(shortest).toMatchObject({ coilLength: 152.4, head: expect.closeTo(3.88, 2), transitTime: expect.closeTo(300.6, 1) });
 * ```
 */
export function coilHydraulics(of: CoilFlow): readonly CoilHydraulics[] {
  const { pipe, fluid, flow, coilLengths } = of;
  demand('flow', 'flow', flow, { above: 0 }, 'at standstill nothing arrives');
  const gradient = pressureGradient(of);
  const velocity = flowVelocity(of);
  const area = boreArea(pipe);
  demandCount('coilLengths', coilLengths, 1, 50);
  return coilLengths.map((coilLength, index) => {
    demand(`coilLengths.${String(index)}`, 'pipe length', coilLength, { atLeast: 1, atMost: 1e4 });
    const pressureDrop = gradient * coilLength;
    const head = pressureDrop / (fluid.density * GRAVITY);
    return { coilLength, coilVolume: area * coilLength, transitTime: coilLength / velocity, pressureDrop, head } as CoilHydraulics;
  });
}
