import { demand, demandObject, InputError } from '../errors/index.js';
import type { Fraction, Power, Ratio, Temperature } from '../units/index.js';
import type { En14825Climate } from './en14825-season.js';
import { USUAL_LOAD_SHARE } from './en14825-seasons.data.js';
import { en14825PartLoadFactor } from './part-load.js';
import { type SeasonalCop, weighBins } from './seasonal-bins.js';

/** A unit running at its full capacity. */
export interface FullCapacity {
  /** Heating capacity, 0.001 to 1e9 [W]. */
  readonly capacity: Power;
  /** COP at that capacity, 1.05 to 50 [1]. */
  readonly cop: Ratio;
}

/** What {@link seasonalCop} needs. */
export interface SeasonalCopInput {
  /** The season. */
  readonly climate: En14825Climate;
  /** Heat loss at the design temperature of the climate, 0.001 to 1e9 [W]. */
  readonly designLoad: Power;
  /** The unit at an outdoor temperature, running at its full capacity. */
  readonly unitAt: (outdoor: Temperature) => FullCapacity;
  /** Share of the full electric input that goes with the load, Cc, 0.5 to 1; 0.9 when left out [1]. */
  readonly loadShare?: Fraction;
}

/** Heat loss or capacity, a bound against overflow [W]. */
export const SEASON_POWER = { atLeast: 1e-3, atMost: 1e9 } as const;

/** COPs that a heating unit may have at full capacity [1]. */
export const HEATING_COP = { atLeast: 1.05, atMost: 50 } as const;

/**
 * COP over the heating hours of an EN 14825 season with capacity and COP known at every outdoor temperature.
 *
 * The loss by part load is taken degree by degree. The certified way, {@link declaredSeasonalCop}, takes it at a few declared points and interpolates; the
 * two differ by a few per cent, and only that one is compared with labels. Pump work outside the unit is in neither.
 *
 * @param input - season, design load [W], the unit over the outdoor temperature, Cc [1]
 * @returns SCOPon and SCOPnet [1], degree by degree, with heat and electricity [J]
 * @throws InputError for a value out of its range, also one that the function of the unit gives
 * @remarks
 * SCOPon = Σ h P/Σ h ((P − back-up)/COP + back-up). Sources: `en14825`, part load `en14825PartLoad`, formula recalled. Checked against worked cases.
 *
 * Invariants tested: with Cc = 1, constant COP and capacity enough it is that COP; capacity short, the back-up fills exactly.
 * @example
 * ```ts @import.meta.vitest
 * const { kilowatts, ratio } = await import('../units/index.js');
 * const unitAt = () => ({ capacity: kilowatts(8), cop: ratio(4.4) });
 * expect(seasonalCop({ climate: 'average', designLoad: kilowatts(8), unitAt }).activeCop).toBeCloseTo(3.867447, 6);
 * ```
 */
export function seasonalCop({ climate, designLoad, unitAt, loadShare = USUAL_LOAD_SHARE as Fraction }: SeasonalCopInput): SeasonalCop {
  demand('designLoad', 'power', designLoad, SEASON_POWER);
  demand('loadShare', 'fraction', loadShare, { atLeast: 0.5, atMost: 1 });
  if (typeof unitAt !== 'function') {
    throw new InputError({ code: 'wrong-type', argument: 'unitAt', value: undefined, allowed: 'a function of the outdoor temperature' });
  }
  return weighBins(climate, designLoad, (outdoor, load) => {
    const unit = unitAt(outdoor);
    demandObject('unitAt', unit);
    demand('unitAt.capacity', 'power', unit.capacity, SEASON_POWER);
    demand('unitAt.cop', 'ratio', unit.cop, HEATING_COP);
    const loadRatio = Math.min(1, load / unit.capacity) as Fraction;
    return { capacity: unit.capacity, cop: unit.cop * en14825PartLoadFactor({ loadRatio, loadShare }) };
  });
}
