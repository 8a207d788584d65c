import type { GroundResponse } from '../ground/index.js';
import type { LoadMode } from '../operation/index.js';
import { type PipeDimensions, pipeResistance, type PipeResistanceParts } from '../pipe/index.js';
import type { Flow, Time } from '../units/index.js';
import type { GroundState } from './ground-state.js';
import { atPlace } from './at-place.js';
import type { Mode } from './modes.js';
import { pipeNeeded, type PipeNeeded } from './pipe-needed.js';

/** What one mode asks for in one topology. */
export interface ModeNeed {
  readonly mode: LoadMode;
  readonly resistance: PipeResistanceParts;
  readonly needed: PipeNeeded;
}

/** A topology with the ground it lies in. */
export interface NeedsInput extends GroundState {
  readonly modes: readonly Mode[];
  readonly pipe: PipeDimensions;
  readonly peakTimes: Readonly<Record<LoadMode, Time>>;
  readonly response: GroundResponse;
  readonly circuitFlow: Flow;
}

/**
 * The pipe that each mode asks for.
 *
 * @param input - modes, pipe, ground and flow of each circuit
 * @returns one entry a mode
 * @throws InputError `unreachable` at the unit's limit when the fluid it allows does not go beyond the ground
 */
export function needsOf({ modes, pipe, ground, response, peakTimes, circuitFlow }: NeedsInput): readonly ModeNeed[] {
  return modes.map(({ design, fluid }) => {
    const { mode } = design.unit;
    const resistance = atPlace('heatPump.sourceFlow', () => pipeResistance({ pipe, fluid, flow: circuitFlow }));
    // A length that no pipe reaches is the unit's limit against the ground.
    const limit = `heatPump.${mode === 'heating' ? 'lowestEntering' : 'highestEntering'}`;
    const needed = atPlace(limit, () => pipeNeeded({ design, ground, response, pipeResistance: resistance.total, peakTime: peakTimes[mode] }), [
      'unreachable',
    ]);
    return { mode, resistance, needed };
  });
}
