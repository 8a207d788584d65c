import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { PressureGradient, Ratio, Shape } from '../units/index.js';
import { reynoldsNumber } from './flow.js';
import { GRAVITY } from '../numerics/index.js';
import { type FrictionFlow, pressureGradient } from './pressure-gradient.js';

/** A flow whose loss by Hazen and Williams is to be compared. */
export interface HazenWilliamsFlow extends FrictionFlow {
  /** Coefficient C of Hazen and Williams, 50 to 200; 150, usual for plastic pipe, when left out [1]. */
  readonly hazenWilliamsC?: Ratio;
}

/** What Hazen and Williams give beside what friction with viscosity gives. */
export interface HazenWilliams {
  /** Loss by Hazen and Williams, of a column of this fluid [Pa/m]. */
  readonly hazenWilliams: PressureGradient;
  /** Loss with the viscosity of this fluid, as of `pressureGradient` [Pa/m]. */
  readonly gradient: PressureGradient;
  /** The loss with viscosity over that of Hazen and Williams [1]. */
  readonly lossRatio: Ratio;
  /** The coefficient that would give the loss with viscosity at this flow [1]. */
  readonly effectiveC: Ratio;
  /** Reynolds number [1]. */
  readonly reynolds: Ratio;
}

/** {@link HazenWilliams} with its findings. */
export interface HazenWilliamsResult extends HazenWilliams {
  /** Where the two lie apart. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link HazenWilliams}. */
export const hazenWilliamsShape: Shape<HazenWilliams> = {
  hazenWilliams: 'pressure gradient',
  gradient: 'pressure gradient',
  lossRatio: 'ratio',
  effectiveC: 'ratio',
  reynolds: 'ratio',
};

/** Difference beyond which the comparison is worth a word [1]. */
const AGREEMENT = 0.1;

/** 1 US gallon per minute [m3/s]. */
const GALLON_PER_MINUTE = 6.30901964e-5;

/**
 * Pressure loss by Hazen and Williams beside that with viscosity: for comparison with tables, never to choose a pump by.
 *
 * The formula knows no viscosity. It was drawn from water near 15 °C in turbulent flow, and for cold antifreeze in small pipe it says too
 * little by a third and more; in laminar flow it means nothing.
 *
 * @param of - bore [m], fluid, flow through the one pipe, above 0 [m3/s], roughness [m], C
 * @returns both losses [Pa/m], their ratio, the C that this flow has, and findings
 * @throws InputError when a number is impossible
 * @remarks
 * h/L = 0.2083 (100/C)^1.852 Q^1.852 d^−4.8655 in ft per 100 ft, gpm and in. Source: `hazenWilliams1905`. Checked against two published tables of
 * plastic pipe that were made with it (C 140, C 150).
 *
 * Invariants: with C rising the loss falls; `effectiveC` as C makes the two losses equal.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterInches, gallonsPerMinute, kilogramsPerCubicMetre, millipascalSeconds } = await import('../units/index.js');
 * const fluid = { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) };
 * const { lossRatio, effectiveC } = hazenWilliamsComparison({ pipe: { insideDiameter: diameterInches(0.86) }, fluid, flow: gallonsPerMinute(3) });
 * expect(lossRatio).toBeCloseTo(1.6, 1);
 * expect(effectiveC).toBeCloseTo(116, 0);
 * ```
 */
export function hazenWilliamsComparison(of: HazenWilliamsFlow): HazenWilliamsResult {
  const { pipe, fluid, flow, hazenWilliamsC = 150 } = of;
  demand('hazenWilliamsC', 'ratio', hazenWilliamsC, { atLeast: 50, atMost: 200 });
  demand('flow', 'flow', flow, { above: 0 }, 'at standstill there is nothing to compare');
  const reynolds = reynoldsNumber(of);
  demand('reynolds', 'ratio', reynolds, { atLeast: 1, atMost: 1e9 }, 'flow, bore and viscosity do not go together');
  const slope = 0.002083 * ((100 / hazenWilliamsC) * (flow / GALLON_PER_MINUTE)) ** 1.852 * (pipe.insideDiameter / 0.0254) ** -4.8655;
  const hazenWilliams = (slope * fluid.density * GRAVITY) as PressureGradient;
  const gradient = pressureGradient(of);
  const lossRatio = gradient / hazenWilliams;
  const result = { hazenWilliams, gradient, lossRatio, effectiveC: hazenWilliamsC * lossRatio ** (-1 / 1.852), reynolds } as HazenWilliams;
  const off = Math.abs(lossRatio - 1) > AGREEMENT;
  const finding: Finding = { code: 'hazen-williams-off', level: 'warning', values: { hazenWilliams, gradient }, source: 'hazenWilliams1905' };
  return { ...result, findings: off ? [finding] : [] };
}
