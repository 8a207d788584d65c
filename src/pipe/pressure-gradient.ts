import { demand } from '../errors/index.js';
import type { Length, PressureGradient } from '../units/index.js';
import { frictionTimesReynolds } from './churchill.js';
import { flowVelocity, reynoldsNumber, type PipeFlow } from './flow.js';

/** Roughness of drawn plastic pipe [m]. */
export const PLASTIC_ROUGHNESS = 1.5e-6;

/** A flow whose pressure loss is wanted. */
export interface FrictionFlow extends PipeFlow {
  /** Absolute roughness of the bore; 0.0015 mm when left out [m]. */
  readonly roughness?: Length;
}

/**
 * Pressure lost by friction per metre of straight pipe.
 *
 * Darcy–Weisbach with Churchill's friction factor, in every regime down to standstill. Between Reynolds 2300 and 4000 the truth may lie
 * anywhere between the laminar and the turbulent value. Bends, tees and joints come on top.
 *
 * @param of - bore [m], fluid, flow through the one pipe, 0 or more [m3/s], roughness [m]
 * @returns pressure gradient [Pa/m], 0 or more
 * @throws InputError when a number is impossible
 * @remarks
 * dp/dx = f ρ v² / (2 D), written as (f Re) μ v / (2 D²) so that it stays exact as the flow goes to 0. Source: `churchill1977`;
 * roughness `plasticRoughness`. Checked against a general fluid-mechanics library (2e-4) and a textbook pipe.
 *
 * Invariants: 0 at standstill; rises strictly with the flow; laminar flow is Hagen–Poiseuille.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds } = await import('../units/index.js');
 * const fluid = { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) };
 * const gradient = pressureGradient({ pipe: { insideDiameter: diameterMillimetres(21.844) }, fluid, flow: litresPerSecond(0.19) });
 * expect(gradient).toBeCloseTo(255.3, 1);
 * ```
 */
export function pressureGradient(of: FrictionFlow): PressureGradient {
  const { pipe, fluid, roughness = PLASTIC_ROUGHNESS } = of;
  const reynolds = reynoldsNumber(of);
  demand('roughness', 'length', roughness, { atLeast: 0, atMost: pipe.insideDiameter / 10 });
  const friction = frictionTimesReynolds(reynolds, roughness / pipe.insideDiameter);
  return ((friction * fluid.viscosity * flowVelocity(of)) / (2 * pipe.insideDiameter ** 2)) as PressureGradient;
}
