import { joinedShape, type PipeSection } from '../states/index.js';
import type { Flow, PipeResistance, Ratio, Shape, SurfaceCoefficient, Velocity } from '../units/index.js';
import { demandSection, type ThermalFluid } from './checks.js';
import { flowVelocity, reynoldsNumber } from './flow.js';
import { type NusseltNumber, nusseltNumber, nusseltNumberShape, prandtlNumber } from './nusselt.js';

/** A pipe with a fluid running through it. */
export interface RunningPipe {
  /** The pipe. */
  readonly pipe: PipeSection;
  /** The fluid at its temperature. */
  readonly fluid: ThermalFluid;
  /** Flow through this one pipe, not through the loop [m3/s]. */
  readonly flow: Flow;
}

/** Thermal resistance between the fluid and the outside of a pipe, and what it is made of. */
export interface PipeResistanceParts extends NusseltNumber {
  /** Wall and film, per metre of pipe [m.K/W]. */
  readonly total: PipeResistance;
  /** Wall alone [m.K/W]. */
  readonly wall: PipeResistance;
  /** Fluid film alone [m.K/W]. */
  readonly film: PipeResistance;
  /** Reynolds number [1]. */
  readonly reynolds: Ratio;
  /** Prandtl number [1]. */
  readonly prandtl: Ratio;
  /** Heat transfer coefficient at the bore [W/(m2.K)]. */
  readonly filmCoefficient: SurfaceCoefficient;
  /** Mean velocity [m/s]. */
  readonly velocity: Velocity;
}

/** Shape of {@link PipeResistanceParts}. */
export const pipeResistancePartsShape: Shape<PipeResistanceParts> = /* @__PURE__ */ joinedShape(nusseltNumberShape, {
  total: 'pipe resistance',
  wall: 'pipe resistance',
  film: 'pipe resistance',
  reynolds: 'ratio',
  prandtl: 'ratio',
  filmCoefficient: 'surface coefficient',
  velocity: 'velocity',
});

/**
 * Thermal resistance from the fluid to the outside of one pipe, per metre of pipe.
 *
 * Per pipe, not per trench: n pipes in a trench carry a n-th of its heat each. Perfect contact with the soil; half a millimetre of air
 * around the pipe would add more than the wall. Laminar flow is no fault: it roughly doubles this resistance, which is small beside
 * the soil's.
 *
 * @param of - pipe, fluid at its temperature, flow through the one pipe, 0 or more [m3/s]
 * @returns resistances per metre of pipe [m.K/W] with the numbers behind them
 * @throws InputError when a number is impossible
 * @remarks
 * R = ln(Do/Di) / (2 π k) + 1 / (π Di h), h = Nu k_fluid / Di. Source: `incroperaInternalFlow`, film as in {@link nusseltNumber}.
 * Checked against values computed independently in double precision (1e-10) and a published 42 mm pipe (`peConductivity2015`).
 *
 * Invariants: never rises with the flow; the parts add up to the total.
 * @example
 * ```ts @import.meta.vitest
 * const { joulesPerKilogramKelvin, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds, wattsPerMetreKelvin } = await import(
 *   '../units/index.js'
 * );
 * const { pipeDimensions } = await import('./dimensions.js');
 * const fluid = {
 *   density: kilogramsPerCubicMetre(1024),
 *   viscosity: millipascalSeconds(5.52),
 *   specificHeat: joulesPerKilogramKelvin(3878),
 *   conductivity: wattsPerMetreKelvin(0.447),
 * };
 * const pipe = pipeDimensions({ series: 'IPS', size: '3/4', dimensionRatio: '11' });
 * const resistance = pipeResistance({ pipe, fluid, flow: litresPerSecond(0.19) });
 * expect(resistance.regime).toBe('laminar');
 * expect(resistance.wall).toBeCloseTo(0.0847, 4);
 * expect(resistance.film).toBeCloseTo(0.1632, 4);
 * ```
 */
export function pipeResistance(of: RunningPipe): PipeResistanceParts {
  const { pipe, fluid } = of;
  demandSection(pipe);
  const reynolds = reynoldsNumber(of);
  const prandtl = prandtlNumber(fluid);
  const { nusselt, regime } = nusseltNumber({ reynolds, prandtl });
  const filmCoefficient = (nusselt * fluid.conductivity) / pipe.insideDiameter;
  const wall = Math.log(pipe.outsideDiameter / pipe.insideDiameter) / (2 * Math.PI * pipe.wallConductivity);
  const film = 1 / (Math.PI * pipe.insideDiameter * filmCoefficient);
  return {
    total: wall + film,
    wall,
    film,
    reynolds,
    prandtl,
    nusselt,
    regime,
    filmCoefficient,
    velocity: flowVelocity(of),
  } as PipeResistanceParts;
}
