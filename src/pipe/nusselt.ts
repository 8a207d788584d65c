import { demand } from '../errors/index.js';
import type { Ratio, Shape } from '../units/index.js';
import { demandThermal, type ThermalFluid } from './checks.js';
import { type FlowRegime, TRANSITION, TURBULENCE } from './regime.js';

/** Nusselt number and the regime it is of. */
export interface NusseltNumber {
  /** Nusselt number [1]. */
  readonly nusselt: Ratio;
  /** Regime; what is transitional may be off by a factor of two. */
  readonly regime: FlowRegime;
}

/** Shape of {@link NusseltNumber}. */
export const nusseltNumberShape: Shape<NusseltNumber> = { nusselt: 'ratio', regime: ['laminar', 'transitional', 'turbulent'] };

/** What the heat transfer in a pipe depends on. */
export interface FilmState {
  /** Reynolds number [1]. */
  readonly reynolds: Ratio;
  /** Prandtl number [1]. */
  readonly prandtl: Ratio;
}

/** Fully developed laminar flow with an even heat flux along the wall; 48/11 to four digits, as the textbooks print it [1]. */
export const LAMINAR_NUSSELT = 4.364;

/**
 * Prandtl number of a fluid, Pr = c_p μ / k.
 *
 * @param fluid - the fluid at its temperature
 * @returns Prandtl number [1]
 * @throws InputError when a property is impossible
 * @example
 * ```ts @import.meta.vitest
 * const { joulesPerKilogramKelvin, kilogramsPerCubicMetre, millipascalSeconds, wattsPerMetreKelvin } = await import('../units/index.js');
 * const water = {
 *   density: kilogramsPerCubicMetre(1000),
 *   viscosity: millipascalSeconds(1.519),
 *   specificHeat: joulesPerKilogramKelvin(4203),
 *   conductivity: wattsPerMetreKelvin(0.57),
 * };
 * expect(prandtlNumber(water)).toBeCloseTo(11.2, 2);
 * ```
 */
export function prandtlNumber(fluid: ThermalFluid): Ratio {
  demandThermal(fluid);
  return ((fluid.specificHeat * fluid.viscosity) / fluid.conductivity) as Ratio;
}

/**
 * Nusselt number of developed flow in a smooth pipe, in every regime.
 *
 * Laminar below Reynolds 2300: 4.364, the value for an even flux, which a long buried pipe is near; the entrance is ignored, which is
 * on the safe side. Turbulent from 4000: Gnielinski with Petukhov's friction. Between them a straight line, so that the result is
 * continuous; nature is not so orderly there, and the value may be off by a factor of two.
 *
 * @param state - Reynolds number, 0 to 5e6; Prandtl number, 0.5 to 2000 once the flow is not laminar
 * @returns Nusselt number [1] and regime
 * @throws InputError when a number is impossible or outside the correlation
 * @remarks
 * Source: `gnielinski1976` for turbulent flow, `gnielinski2013` for the line, `incroperaInternalFlow` for laminar. Checked against values
 * computed independently in double precision (1e-10) and a textbook's laminar example.
 *
 * Invariants: continuous at 2300 and 4000; never falls as the Reynolds number rises.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(nusseltNumber({ reynolds: ratio(1500), prandtl: ratio(30) })).toEqual({ nusselt: 4.364, regime: 'laminar' });
 * expect(nusseltNumber({ reynolds: ratio(7836.659), prandtl: ratio(11.200626) }).nusselt).toBeCloseTo(75.044, 3);
 * ```
 */
export function nusseltNumber({ reynolds, prandtl }: FilmState): NusseltNumber {
  demand('reynolds', 'ratio', reynolds, { atLeast: 0, atMost: 5e6 });
  demand('prandtl', 'ratio', prandtl, { above: 0 });
  if (reynolds < TRANSITION) return { nusselt: LAMINAR_NUSSELT as Ratio, regime: 'laminar' };
  demand('prandtl', 'ratio', prandtl, { atLeast: 0.5, atMost: 2000 }, 'the turbulent correlation ends there');
  if (reynolds >= TURBULENCE) return { nusselt: gnielinski(reynolds, prandtl) as Ratio, regime: 'turbulent' };
  const share = (reynolds - TRANSITION) / (TURBULENCE - TRANSITION);
  const nusselt = (1 - share) * LAMINAR_NUSSELT + share * gnielinski(TURBULENCE, prandtl);
  return { nusselt: nusselt as Ratio, regime: 'transitional' };
}

/** Gnielinski's Nusselt number with Petukhov's friction factor of smooth pipe. */
export function gnielinski(reynolds: number, prandtl: number): number {
  const eighth = (0.79 * Math.log(reynolds) - 1.64) ** -2 / 8;
  return (eighth * (reynolds - 1000) * prandtl) / (1 + 12.7 * Math.sqrt(eighth) * (prandtl ** (2 / 3) - 1));
}
