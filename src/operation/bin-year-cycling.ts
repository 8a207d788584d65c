import { demand, demandChoice, demandObject } from '../errors/index.js';
import { en14825PartLoadFactor, partLoadFactor } from '../heat-pump/index.js';
import type { Fraction, Ratio, RunFraction, Shape } from '../units/index.js';

/**
 * What a unit loses below its capacity. The two forms are not interchangeable: at low load the second is far harsher.
 *
 * - `degradation`, AHRI 210/240: the unit runs longer than load over capacity.
 * - `load share`, EN 14825: a part of the full electric input is drawn whenever the unit is not at full load.
 */
export type PartLoadForm =
  | {
      /** After AHRI 210/240. */
      readonly form: 'degradation';
      /** Share of its COP that the unit loses towards no load, 0 to 0.5; 0.10 to 0.15 is common on a ground loop [1]. */
      readonly degradation: Fraction;
    }
  | {
      /** After EN 14825. */
      readonly form: 'load share';
      /** Share of the full electric input that goes with the load, 0.5 to 1 [1]. */
      readonly loadShare: Fraction;
    };

/** Shape of {@link PartLoadForm}. */
export const partLoadFormShape: Shape<PartLoadForm> = {
  by: 'form',
  oneOf: { degradation: { degradation: 'fraction' }, 'load share': { loadShare: 'fraction' } },
};

/** COP while cycling over COP while running steadily, and share of the time that the unit runs. */
export interface CyclingFactor {
  readonly factor: Ratio;
  readonly runFraction: RunFraction;
}

/** The loss at a load, or none. */
export function cyclingAt(cycling: PartLoadForm | undefined, loadRatio: Fraction): CyclingFactor {
  if (cycling === undefined) return { factor: 1 as Ratio, runFraction: loadRatio as number as RunFraction };
  if (cycling.form === 'degradation') return partLoadFactor({ loadRatio, degradation: cycling.degradation });
  // The extra input comes with a pause as well as with a run, so the run is no longer for it.
  return { factor: en14825PartLoadFactor({ loadRatio, loadShare: cycling.loadShare }), runFraction: loadRatio as number as RunFraction };
}

/** Refuses a loss that no unit has. */
export function demandCycling(cycling: PartLoadForm | undefined): void {
  if (cycling === undefined) return;
  demandObject('cycling', cycling);
  demandChoice('cycling.form', cycling.form, ['degradation', 'load share']);
  if (cycling.form === 'degradation') demand('cycling.degradation', 'fraction', cycling.degradation, { atLeast: 0, atMost: 0.5 });
  else demand('cycling.loadShare', 'fraction', cycling.loadShare, { atLeast: 0.5, atMost: 1 });
}
