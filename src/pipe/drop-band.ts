import { demand, demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Density, Length, PipeLength, Ratio, Shape } from '../units/index.js';
import { churchillFrictionFactor } from './churchill.js';
import { colebrook } from './colebrook.js';
import { demandViscosityBand } from './checks.js';
import { type BoreFlow, flowVelocity, reynoldsNumber } from './flow.js';
import { GRAVITY } from '../numerics/index.js';
import { PLASTIC_ROUGHNESS } from './pressure-gradient.js';
import { type FlowRegime, regimeOf, TRANSITION, TURBULENCE } from './regime.js';

/** A fluid whose viscosity is known within limits. */
export interface UncertainFluid {
  /** Density [kg/m3]. */
  readonly density: Density;
  /** Dynamic viscosity with its limits; ±15 % is usual for cold antifreeze [Pa.s]. */
  readonly viscosity: Band<'dynamic viscosity'>;
}

/** A flow whose pressure drop is wanted with its uncertainty. */
export interface UncertainFlow extends BoreFlow {
  /** The fluid at its temperature. */
  readonly fluid: UncertainFluid;
  /** Length of pipe, 0.001 to 1e6 [m]. */
  readonly length: PipeLength;
  /** Absolute roughness of the bore; 0.0015 mm when left out [m]. */
  readonly roughness?: Length;
}

/** Pressure drop and regime within the limits of the viscosity. */
export interface PressureDropBand {
  /** Reynolds number; its lower limit is that of the upper viscosity [1]. */
  readonly reynolds: Band<'ratio'>;
  /** Regimes that the flow may be in, slowest first. */
  readonly regimes: readonly FlowRegime[];
  /** Pressure drop over the length [Pa]. */
  readonly pressureDrop: Band<'pressure'>;
  /** The same as a column of the fluid [m]. */
  readonly head: Band<'head'>;
}

/** {@link PressureDropBand} with its findings. */
export interface PressureDropBandResult extends PressureDropBand {
  /** What the limits leave open. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PressureDropBand}. */
export const pressureDropBandShape: Shape<PressureDropBand> = {
  reynolds: /* @__PURE__ */ bandShape('ratio'),
  regimes: { list: ['laminar', 'transitional', 'turbulent'] },
  pressureDrop: /* @__PURE__ */ bandShape('pressure'),
  head: /* @__PURE__ */ bandShape('head'),
};

/**
 * Pressure drop, head and regime of a pipe with what the viscosity leaves uncertain.
 *
 * Viscosity is the property known worst. At a given flow a thicker fluid loses more as long as the regime stays; where it falls from turbulent
 * to laminar it loses less. So the limits are the least and the greatest of all viscosities in the band, and between Reynolds 2300 and 4000 of
 * laminar and turbulent flow both. The estimate is Churchill's at the estimate of the viscosity. Straight pipe without fittings.
 *
 * @param of - bore [m], density [kg/m3], viscosity with limits [Pa.s], flow, above 0 [m3/s], length [m], roughness [m]
 * @returns Reynolds number, regimes, pressure drop [Pa] and head [m], each with limits, and findings
 * @throws InputError when a number is impossible or the limits are out of order
 * @remarks
 * Sources: `churchill1977`, `colebrook1939`. Checked against a scan of the band by small steps.
 *
 * Invariants: the estimate lies in the band; a wider band of viscosity gives a wider band of drop; without one, turbulent flow leaves the 2 % by
 * which correlations differ.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, fraction, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds, pipeMetres } = await import(
 *   '../units/index.js'
 * );
 * const viscosity = { low: millipascalSeconds(3.3), estimate: millipascalSeconds(3.9), high: millipascalSeconds(4.5), coverage: fraction(0.9) };
 * const { regimes, head, findings } = pressureDropBand({
 *   pipe: { insideDiameter: diameterMillimetres(21.844) },
 *   fluid: { density: kilogramsPerCubicMetre(1022), viscosity },
 *   flow: litresPerSecond(0.16),
 *   length: pipeMetres(152.4),
 * });
 * expect(regimes).toEqual(['laminar', 'transitional']);
 * expect([head.low, head.estimate, head.high]).toEqual([expect.closeTo(1.437, 3), expect.closeTo(2.19, 2), expect.closeTo(3.07, 2)]);
 * expect(findings[0]?.code).toBe('flow-regime-open');
 * ```
 */
export function pressureDropBand(of: UncertainFlow): PressureDropBandResult {
  const { pipe, flow, fluid, length, roughness = PLASTIC_ROUGHNESS } = of;
  demandObject('fluid', fluid);
  demandViscosityBand(fluid.viscosity);
  const { low, estimate, high, coverage } = fluid.viscosity;
  demand('flow', 'flow', flow, { above: 0 }, 'at standstill nothing is lost');
  demand('length', 'pipe length', length, { atLeast: 0.001, atMost: 1e6 });
  const middle = reynoldsNumber({ pipe, flow, fluid: { density: fluid.density, viscosity: estimate } });
  const [slow, fast] = [(middle * estimate) / high, (middle * estimate) / low];
  demand('reynolds', 'ratio', slow, { atLeast: 1e-6 }, 'flow, bore and viscosity do not go together');
  demand('reynolds', 'ratio', fast, { atMost: 1e8 }, 'flow, bore and viscosity do not go together');
  demand('roughness', 'length', roughness, { atLeast: 0, atMost: pipe.insideDiameter / 20 });
  const relativeRoughness = roughness / pipe.insideDiameter;
  const friction = frictionLimits(slow, fast, relativeRoughness);
  const churchill = churchillFrictionFactor({ reynolds: middle, relativeRoughness: relativeRoughness as Ratio });
  const dynamic = (length * fluid.density * flowVelocity(of) ** 2) / (2 * pipe.insideDiameter);
  const banded = (scale: number): { low: number; estimate: number; high: number; coverage: number } => ({
    low: scale * Math.min(friction.low, churchill),
    estimate: scale * churchill,
    high: scale * Math.max(friction.high, churchill),
    coverage,
  });
  const regimes = regimesBetween(slow, fast);
  const [lowReynolds, highReynolds] = [slow as Ratio, fast as Ratio];
  const finding: Finding = { code: 'flow-regime-open', level: 'warning', values: { lowReynolds, highReynolds }, source: 'churchill1977' };
  return {
    reynolds: { low: slow, estimate: middle, high: fast, coverage } as Band<'ratio'>,
    regimes,
    pressureDrop: banded(dynamic) as Band<'pressure'>,
    head: banded(dynamic / (fluid.density * GRAVITY)) as Band<'head'>,
    findings: regimes.length > 1 || regimes.includes('transitional') ? [finding] : [],
  };
}

/** Least and greatest friction factor between two Reynolds numbers: laminar below 4000, turbulent above 2300, both between. */
function frictionLimits(slow: number, fast: number, relativeRoughness: number): { readonly low: number; readonly high: number } {
  const churchill = (re: number): number => churchillFrictionFactor({ reynolds: re as Ratio, relativeRoughness: relativeRoughness as Ratio });
  // Each of the correlations falls as the Reynolds number rises, so that its ends lie at the ends of its range.
  const [laminarEnd, turbulentStart] = [Math.min(fast, TURBULENCE), Math.max(slow, TRANSITION)];
  const laminar = slow < TURBULENCE ? [64 / slow, 64 / laminarEnd] : [];
  const turbulent = fast >= TRANSITION ? [colebrook(turbulentStart, relativeRoughness), colebrook(fast, relativeRoughness)] : [];
  // Churchill's rises in transition, but below Colebrook's; from where it is above, it falls, too.
  const estimates = fast >= TRANSITION ? [churchill(turbulentStart), churchill(fast)] : [];
  const all = [...laminar, ...turbulent, ...estimates];
  return { low: Math.min(...all), high: Math.max(...all) };
}

function regimesBetween(slow: number, fast: number): readonly FlowRegime[] {
  const all: readonly FlowRegime[] = ['laminar', 'transitional', 'turbulent'];
  return all.slice(all.indexOf(regimeOf(slow)), all.indexOf(regimeOf(fast)) + 1);
}
