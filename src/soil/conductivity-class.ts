import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Band } from '../states/index.js';
import type { Conductivity } from '../units/index.js';

/** What the trade calls a ground by its conductivity. */
export type ConductivityClassName = 'poor' | 'fair' | 'good';

/** How a ground is called, and how it would be at the ends of its band. */
export interface ConductivityClass {
  /** By the estimate. */
  readonly class: ConductivityClassName;
  /** By the low end of the band. */
  readonly lowClass: ConductivityClassName;
  /** By the high end of the band. */
  readonly highClass: ConductivityClassName;
  /** Whether all three are the same. */
  readonly certain: boolean;
  /** The class with the band that it comes from. */
  readonly findings: readonly Finding[];
}

/** Below the first ground is called poor, above the second good; heavy damp soil, the middle of the trade, is 1.3 (`common practice`) [W/(m.K)]. */
const POOR_BELOW = 0.9;
const GOOD_ABOVE = 1.3;

/**
 * Poor, fair or good: what the trade calls a ground by its conductivity, always with the band.
 *
 * A word for a talk at the trench, no limit: nothing in this library depends on it.
 *
 * @param conductivity - conductivity of the ground with its band, 0.01 to 100, low end first [W/(m.K)]
 * @returns class by the estimate and by both ends
 * @throws InputError when a number is impossible, or the band does not hold its estimate
 * @remarks
 * Poor below 0.9, good above 1.3 W/(m.K), `common practice`; where within poor or good it lies is left to the number.
 *
 * Invariants: never better at the low end than at the estimate, nor worse at the high end.
 * @example
 * ```ts @import.meta.vitest
 * const { fraction, wattsPerMetreKelvin } = await import('../units/index.js');
 * const [low, estimate, high] = [wattsPerMetreKelvin(0.8), wattsPerMetreKelvin(1.1), wattsPerMetreKelvin(1.4)];
 * const found = conductivityClass({ low, estimate, high, coverage: fraction(0.8) });
 * expect([found.lowClass, found.class, found.highClass]).toEqual(['poor', 'fair', 'good']);
 * ```
 */
export function conductivityClass(conductivity: Band<'conductivity'>): ConductivityClass {
  demandConductivityBand(conductivity);
  const { low, estimate, high } = conductivity;
  const classes = { class: classOf(estimate), lowClass: classOf(low), highClass: classOf(high) };
  const found: Finding = {
    code: 'ground-conductivity-class',
    level: classes.class === 'poor' ? 'warning' : 'note',
    values: { ...classes, low, estimate, high },
    source: 'common practice',
  };
  return { ...classes, certain: classes.lowClass === classes.highClass, findings: [found] };
}

/** Refuses a band of a conductivity that is impossible. */
export function demandConductivityBand({ low, estimate, high, coverage }: Band<'conductivity'>): void {
  demand('estimate', 'conductivity', estimate, { atLeast: 0.01, atMost: 100 });
  demand('low', 'conductivity', low, { above: 0, atMost: estimate });
  demand('high', 'conductivity', high, { atLeast: estimate, atMost: 1000 });
  demand('coverage', 'fraction', coverage, { above: 0, below: 1 });
}

function classOf(conductivity: Conductivity): ConductivityClassName {
  if (conductivity < POOR_BELOW) return 'poor';
  return conductivity > GOOD_ABOVE ? 'good' : 'fair';
}
