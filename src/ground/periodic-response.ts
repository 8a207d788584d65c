import { joinedShape } from '../states/index.js';
import type { PipeResistance, Shape, Time } from '../units/index.js';
import { groundPipes } from './ground-pipes.js';
import type { PairGroup } from './pairs.js';
import { demandPeriod, type PeriodicKernel, periodicKernel } from './periodic-kernel.js';
import { type GroundResponseInput, groundResponseInputShape } from './response.js';

/** What a periodic response is computed from. */
export interface PeriodicResponseInput extends GroundResponseInput {
  /** Time after which the heat repeats [s]. */
  readonly period: Time;
}

/** Shape of {@link PeriodicResponseInput}. */
export const periodicResponseInputShape: Shape<PeriodicResponseInput> = /* @__PURE__ */ joinedShape(groundResponseInputShape, { period: 'time' });

/** How the mean wall temperature swings when every pipe gives off heat that swings as a sine. */
export interface PeriodicResponse {
  /** Swing of the mean wall temperature over the swing of the heat per metre of each pipe [m.K/W]. */
  readonly amplitude: PipeResistance;
  /** How long after the heat the wall is warmest; between 0 and a quarter of the period [s]. */
  readonly lag: Time;
}

/**
 * Steady swing of the pipe walls under heat that has swung as a sine for ever.
 *
 * Assumes what {@link groundResponse} assumes: equal heat from all pipes, uniform soil, lines between pipes, mirror images for the surface.
 *
 * @param input - what a ground response is computed from, and the period, 60 to 1e12, with a line as self term at least 4π radius²/diffusivity [s]
 * @returns amplitude and lag
 * @throws InputError when a number is out of its range, a pipe sticks out of the ground or pipes overlap
 * @remarks Modified Bessel functions K0 and K1 of √(iω/α) · distance; source Carslaw and Jaeger. Checked against a table of complex K0 (1e-9) and against
 * superposed steps.
 * @example
 * ```ts @import.meta.vitest
 * const { days, feet, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond } = await import('../units/index.js');
 * const { onePipe } = await import('./layout-makers.js');
 * const { amplitude, lag } = periodicResponse({
 *   layout: onePipe({ depth: feet(4), trenches: 1, trenchSpacing: feet(10) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 *   soil: { conductivity: wattsPerMetreKelvin(0.8), heatCapacity: joulesPerCubicMetreKelvin(2e6), diffusivity: squareMetresPerSecond(4e-7) },
 *   period: days(365.25),
 *   selfTerm: 'line',
 * });
 * expect(amplitude).toBeCloseTo(0.91246, 5);
 * expect(days.of(lag)).toBeCloseTo(6.5456, 4);
 * ```
 */
export function periodicResponse({ period, ...input }: PeriodicResponseInput): PeriodicResponse {
  const pipes = groundPipes(input);
  demandPeriod(period, pipes, input.soil);
  return swingOf(pipes.groups, periodicKernel(period * input.soil.diffusivity, pipes), { period, soil: input.soil });
}

/** The swing of the mean wall under a kernel. */
export function swingOf(
  groups: readonly PairGroup[],
  kernel: PeriodicKernel,
  { period, soil }: Pick<PeriodicResponseInput, 'period' | 'soil'>,
): PeriodicResponse {
  let re = 0;
  let im = 0;
  for (const group of groups) {
    const swing = kernel(group);
    re += group.weight * swing.re;
    im += group.weight * swing.im;
  }
  const amplitude = Math.hypot(re, im) / (2 * Math.PI * soil.conductivity);
  const lag = (-Math.atan2(im, re) / (2 * Math.PI)) * period;
  return { amplitude: amplitude as PipeResistance, lag: lag as Time };
}
