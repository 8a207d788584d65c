import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { Length, PressureGradient, Ratio, Shape } from '../units/index.js';
import { type CoiledFriction, coiledFrictionFactor, coiledFrictionShape } from './coil-friction.js';
import { flowVelocity, reynoldsNumber } from './flow.js';
import { type FrictionFlow, PLASTIC_ROUGHNESS } from './pressure-gradient.js';
import { TRANSITION } from './regime.js';

/** A flow through a pipe laid in rings. */
export interface CoiledFlow extends FrictionFlow {
  /** Diameter of the rings, axis to axis of the pipe; at least 15 bores, up to 1000 [m]. */
  readonly ringDiameter: Length;
}

/** What a pipe laid in rings loses. */
export interface CoiledGradient extends CoiledFriction {
  /** Pressure lost per metre of pipe [Pa/m]. */
  readonly gradient: PressureGradient;
  /** What the same pipe would lose laid straight [Pa/m]. */
  readonly straightGradient: PressureGradient;
  /** Reynolds number [1]. */
  readonly reynolds: Ratio;
}

/** {@link CoiledGradient} with its findings. */
export interface CoiledGradientResult extends CoiledGradient {
  /** Where the rings make a difference that is not in a straight pipe's numbers. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link CoiledGradient}. */
export const coiledGradientShape: Shape<CoiledGradient> = /* @__PURE__ */ joinedShape(coiledFrictionShape, {
  gradient: 'pressure gradient',
  straightGradient: 'pressure gradient',
  reynolds: 'ratio',
});

/**
 * Pressure lost by friction per metre of a pipe laid in rings, as in an overlapped coil or on the coil it is delivered in.
 *
 * Laminar flow loses half as much again to twice as much as in straight pipe, turbulent flow about a tenth more. What is turbulent in
 * straight pipe may still be laminar in rings, with less heat transfer than reckoned by straight pipe; a finding says so.
 *
 * @param of - bore [m], fluid, flow through the one pipe, above 0 [m3/s], ring diameter, at least 15 bores [m], roughness [m]
 * @returns gradient beside the straight pipe's [Pa/m], with the numbers behind them and findings
 * @throws InputError when a number is impossible
 * @remarks Friction as of {@link coiledFrictionFactor}. Invariants: rises with the flow; the straight pipe's in wide rings.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, metres, millipascalSeconds } = await import('../units/index.js');
 * const fluid = { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) };
 * const pipe = { insideDiameter: diameterMillimetres(21.844) };
 * const rings = coiledPressureGradient({ pipe, fluid, flow: litresPerSecond(0.19), ringDiameter: metres(0.9) });
 * expect(rings.gradient / rings.straightGradient).toBeCloseTo(1.37, 2);
 * expect(rings.findings[0]?.code).toBe('coil-laminar');
 * ```
 */
export function coiledPressureGradient(of: CoiledFlow): CoiledGradientResult {
  const { pipe, fluid, flow, ringDiameter, roughness = PLASTIC_ROUGHNESS } = of;
  demand('flow', 'flow', flow, { above: 0 }, 'at standstill nothing is lost');
  const reynolds = reynoldsNumber(of);
  demand('reynolds', 'ratio', reynolds, { atLeast: 1e-6, atMost: 1e8 }, 'flow, bore and viscosity do not go together');
  demand('roughness', 'length', roughness, { atLeast: 0, atMost: pipe.insideDiameter / 20 });
  demand('ringDiameter', 'length', ringDiameter, { atLeast: 15 * pipe.insideDiameter, atMost: 1e3 }, 'a ring, not a bend');
  const curvatureRatio = (pipe.insideDiameter / ringDiameter) as Ratio;
  const friction = coiledFrictionFactor({ reynolds, curvatureRatio, relativeRoughness: (roughness / pipe.insideDiameter) as Ratio });
  const gradient = (friction.frictionFactor * fluid.density * flowVelocity(of) ** 2) / (2 * pipe.insideDiameter);
  const { criticalReynolds, frictionRatio } = friction;
  const finding: Finding = { code: 'coil-laminar', level: 'note', values: { reynolds, criticalReynolds, frictionRatio }, source: 'schmidt1967' };
  return {
    ...friction,
    gradient: gradient as PressureGradient,
    straightGradient: (gradient / frictionRatio) as PressureGradient,
    reynolds,
    findings: friction.regime === 'laminar' && reynolds >= TRANSITION ? [finding] : [],
  };
}
