import type { Finding } from '../findings/index.js';
import type { LoadMode } from '../operation/index.js';
import { filmFindings } from '../pipe/index.js';
import type { ModeResult } from './loop-plan.js';
import type { Mode } from './modes.js';
import type { Trial } from './solve.js';

/** The modes as the plan reports them. */
export interface ModeResults {
  readonly modes: { readonly heating?: ModeResult; readonly cooling?: ModeResult };
  readonly governing: 'heating' | 'cooling';
  readonly findings: readonly Finding[];
}

/**
 * Joins what each mode is with what it asks of the chosen loop.
 *
 * @param modes - one or two modes
 * @param chosen - the loop chosen
 * @param governing - the mode whose limit set the length
 * @returns results by mode, and the mode that set the length
 */
export function modeResults(modes: readonly Mode[], chosen: Trial, governing: LoadMode): ModeResults {
  const results = modes.flatMap(({ design, fluid, loads, run }) => {
    const need = chosen.needs.find(({ mode }) => mode === design.unit.mode);
    return need === undefined ? [] : [{ unit: design.unit, fluid, loads, run, resistance: need.resistance, needed: need.needed }];
  });
  const of = (mode: 'heating' | 'cooling'): ModeResult | undefined => results.find(({ unit }) => unit.mode === mode);
  const [heating, cooling] = [of('heating'), of('cooling')];
  const governs = results.find(({ unit }) => unit.mode === governing);
  return {
    modes: { ...(heating === undefined ? {} : { heating }), ...(cooling === undefined ? {} : { cooling }) },
    governing,
    findings: governs === undefined ? [] : filmFindings(governs.resistance),
  };
}
