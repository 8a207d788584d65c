import type { Ratio } from '../units/index.js';
import type { CorrectionCause } from './corrections.js';

/** How far something usually moves a unit, where its maker says nothing. */
export interface TypicalCorrection {
  /** What differs from the conditions of the rating points. */
  readonly cause: CorrectionCause;
  /** What it is. */
  readonly of: string;
  /** Factors on the capacity between which units usually lie [1]. */
  readonly capacityFactors: readonly [low: Ratio, high: Ratio];
  /** Factors on the electric input; absent where nothing was found [1]. */
  readonly inputFactors?: readonly [low: Ratio, high: Ratio];
  /** Factors on the pressure drop, which the rating points do not hold but the pump does [1]. */
  readonly pressureFactors?: readonly [low: Ratio, high: Ratio];
}

/**
 * Usual sizes of corrections. Own judgement from catalogue experience, no source: the unit's own table goes before each of them.
 *
 * In heating. Less air also costs about 8 % of the sensible part of cooling; a halved loop flow doubles the fall of the fluid temperature.
 */
export const TYPICAL_CORRECTIONS: readonly TypicalCorrection[] = [
  {
    cause: 'antifreeze',
    of: 'propylene glycol, 20 %',
    capacityFactors: [0.96 as Ratio, 0.98 as Ratio],
    inputFactors: [0.99 as Ratio, 1 as Ratio],
    pressureFactors: [1.15 as Ratio, 1.3 as Ratio],
  },
  { cause: 'antifreeze', of: 'methanol or ethanol, freezing at -10 degC', capacityFactors: [0.97 as Ratio, 0.99 as Ratio] },
  {
    cause: 'air flow',
    of: '85 % of the rated air flow',
    capacityFactors: [0.98 as Ratio, 0.98 as Ratio],
    inputFactors: [1.04 as Ratio, 1.04 as Ratio],
  },
  { cause: 'source flow', of: 'half of 54 mL/s per kilowatt, the 3 gpm per ton of the trade', capacityFactors: [0.96 as Ratio, 0.98 as Ratio] },
];
