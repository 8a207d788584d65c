import { demand, demandObject, locate } from '../errors/index.js';
import { bandShape, type Band } from '../states/index.js';
import type { Conductivity, Diameter, PipeResistance, Shape } from '../units/index.js';
import { demandConductivityBand } from './conductivity-class.js';

/** Ground about a pipe, and air that may stand between the two. */
export interface GappedPipe {
  /** Effective conductivity of the ground with its band [W/(m.K)]. */
  readonly conductivity: Band<'conductivity'>;
  /** Steady warming of the pipe walls at the estimate, 0.001 to 1000 [m.K/W]. */
  readonly steadyRise: PipeResistance;
  /** Outside diameter of the pipe, 0.005 to 0.5 [m]. */
  readonly outsideDiameter: Diameter;
  /** Widest gap all about the pipe that is still thought likely, 0 to 0.01 [m]. */
  readonly gap: Diameter;
}

/** Shape of {@link GappedPipe}. */
export const gappedPipeShape: Shape<GappedPipe> = {
  conductivity: /* @__PURE__ */ bandShape('conductivity'),
  steadyRise: 'pipe resistance',
  outsideDiameter: 'diameter',
  gap: 'diameter',
};

/** What a gap may do. */
export interface ContactGap {
  /** Resistance of the gap full of still air [m.K/W]. */
  readonly gapResistance: PipeResistance;
  /** The conductivity with its low end lowered; estimate and high end are as they were. */
  readonly conductivity: Band<'conductivity'>;
}

/** Conductivity of still air at 5 to 10 °C (`from memory`) [W/(m.K)]. */
const AIR = 0.025;

/**
 * What a gap of air between pipe and ground may do: it widens the band of the conductivity downward and moves nothing else.
 *
 * Never a default, a shift or a credit. How wide gaps are is not known: a gap of half a millimetre all about the pipe, as loose clods or a
 * pipe that shrinks in the cold may leave, resists as much as a third of the ground. In wet ground it fills with water and is gone.
 *
 * @param input - ground with its band, steady warming [m.K/W], diameter and gap [m]
 * @returns resistance of the gap [m.K/W] and the conductivity with a lower low end
 * @throws InputError when a number is impossible
 * @remarks
 * ln(1 + gap/r) / 2πk, a ring of still air (`carslawJaeger1959`; convection and radiation would lessen it). Its logarithm and that of the
 * low end are errors that do not depend on one another and are added as squares. Checked against a worked resistance.
 *
 * Invariants: no gap changes nothing; a wider gap lowers the low end further; the estimate and the high end never move.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, fraction, pipeMetreKelvinPerWatt, wattsPerMetreKelvin } = await import('../units/index.js');
 * const { gapResistance } = contactGap({
 *   conductivity: { low: wattsPerMetreKelvin(0.9), estimate: wattsPerMetreKelvin(1.2), high: wattsPerMetreKelvin(1.5), coverage: fraction(0.8) },
 *   steadyRise: pipeMetreKelvinPerWatt(0.7),
 *   outsideDiameter: diameterMillimetres(33.4),
 *   gap: diameterMillimetres(0.5),
 * });
 * expect(gapResistance).toBeCloseTo(0.19, 2);
 * ```
 */
export function contactGap({ conductivity, steadyRise, outsideDiameter, gap }: GappedPipe): ContactGap {
  demandObject('conductivity', conductivity);
  locate('conductivity', () => {
    demandConductivityBand(conductivity);
  });
  demand('steadyRise', 'pipe resistance', steadyRise, { atLeast: 0.001, atMost: 1000 });
  demand('outsideDiameter', 'diameter', outsideDiameter, { atLeast: 0.005, atMost: 0.5 });
  demand('gap', 'diameter', gap, { atLeast: 0, atMost: 0.01 });
  const gapResistance = Math.log1p((2 * gap) / outsideDiameter) / (2 * Math.PI * AIR);
  const { low, estimate } = conductivity;
  const lowered = Math.hypot(Math.log(estimate / low), Math.log1p(gapResistance / steadyRise));
  return {
    gapResistance: gapResistance as PipeResistance,
    conductivity: { ...conductivity, low: (estimate * Math.exp(-lowered)) as Conductivity },
  };
}
