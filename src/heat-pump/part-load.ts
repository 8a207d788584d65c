import { demand } from '../errors/index.js';
import type { Fraction, Ratio, RunFraction, Shape } from '../units/index.js';
import { USUAL_LOAD_SHARE } from './en14825-seasons.data.js';

/** A unit that cycles below its capacity. */
export interface PartLoadInput {
  /** Load over capacity, 0 to 1 [1]. */
  readonly loadRatio: Fraction;
  /**
   * Share of its COP that the unit loses towards no load, 0 to 0.5. The 0.25 of the standard for a unit untested when left out; 0.10 to 0.15 is common for
   * units on a ground loop whose circulator draws little [1].
   */
  readonly degradation?: Fraction;
}

/** What cycling costs. */
export interface PartLoad {
  /** COP while cycling over COP while running steadily [1]. */
  readonly factor: Ratio;
  /** Share of the time that the unit runs, longer than load over capacity [1]. */
  readonly runFraction: RunFraction;
}

/** Shape of {@link PartLoadInput}. */
export const partLoadInputShape: Shape<PartLoadInput> = { loadRatio: 'fraction', degradation: { optional: 'fraction' } };

/** Degradation of a unit that nobody tested, `ahri210240` [1]. */
const UNTESTED_DEGRADATION = 0.25 as Fraction;

/**
 * Loss of a single-speed unit by cycling, AHRI 210/240 form.
 *
 * @param input - load over capacity [1], degradation coefficient [1]
 * @returns factor on the COP and share of the time that the unit runs
 * @throws InputError when a number is outside its range
 * @remarks
 * PLF = 1 − Cd (1 − load ratio), run fraction = load ratio/PLF. Source: `ahri210240`. For electricity; the heat drawn from the ground does not
 * grow with the longer run. What circulator and controls draw while the unit stands is not in it: see `cyclingElectricity`. Invariants: both are 1 at full load;
 * run fraction ≥ load ratio.
 * @example
 * ```ts @import.meta.vitest
 * const { fraction } = await import('../units/index.js');
 * const { factor, runFraction } = partLoadFactor({ loadRatio: fraction(0.25), degradation: fraction(0.25) });
 * expect(factor).toBe(0.8125);
 * expect(runFraction).toBeCloseTo(0.307692, 6);
 * ```
 */
export function partLoadFactor({ loadRatio, degradation = UNTESTED_DEGRADATION }: PartLoadInput): PartLoad {
  demand('loadRatio', 'fraction', loadRatio, { atLeast: 0, atMost: 1 });
  demand('degradation', 'fraction', degradation, { atLeast: 0, atMost: 0.5 });
  const factor = 1 - degradation * (1 - loadRatio);
  return { factor: factor as Ratio, runFraction: (loadRatio / factor) as RunFraction };
}

/** A unit rated by EN 14825 below its capacity. */
export interface StandbyPartLoadInput {
  /** Load over capacity, 0 to 1 [1]. */
  readonly loadRatio: Fraction;
  /**
   * Share of the full electric input that goes with the load, 0.5 to 1; the rest is drawn whenever the unit is not at full load. The 0.9 of the standard for
   * a unit untested when left out [1].
   */
  readonly loadShare?: Fraction;
}

/** Shape of {@link StandbyPartLoadInput}. */
export const standbyPartLoadInputShape: Shape<StandbyPartLoadInput> = { loadRatio: 'fraction', loadShare: { optional: 'fraction' } };

/**
 * Loss of a water or brine unit by cycling, EN 14825 form.
 *
 * Much harsher at low load than {@link partLoadFactor}; the two are not interchangeable through Cd = 1 − Cc.
 *
 * @param input - load over capacity [1], Cc [1]
 * @returns COP while cycling over COP while running steadily [1]
 * @throws InputError when a number is outside its range
 * @remarks CR/(Cc CR + 1 − Cc), CR being load over capacity. Source: `en14825PartLoad`. Invariants: 1 at full load; 0 at no load unless Cc is 1.
 * @example
 * ```ts @import.meta.vitest
 * const { fraction } = await import('../units/index.js');
 * expect(en14825PartLoadFactor({ loadRatio: fraction(0.25), loadShare: fraction(0.9) })).toBeCloseTo(0.769231, 6);
 * ```
 */
export function en14825PartLoadFactor({ loadRatio, loadShare = USUAL_LOAD_SHARE as Fraction }: StandbyPartLoadInput): Ratio {
  demand('loadRatio', 'fraction', loadRatio, { atLeast: 0, atMost: 1 });
  demand('loadShare', 'fraction', loadShare, { atLeast: 0.5, atMost: 1 });
  // At Cc = 1 nothing is lost at any load, down to none.
  return (loadShare === 1 ? 1 : loadRatio / (1 - loadShare * (1 - loadRatio))) as Ratio;
}
