import { demand, InputError } from '../errors/index.js';
import { optionOf } from './buildable.js';
import type { CircuitNeed, CircuitOption, CircuitOptionInput } from './circuit-plan.js';

/** Least pipe of a circuit that must lie in its trench [m]. */
export const LEAST_ACTIVE = 1;

/**
 * One way to build a loop: this many circuits, each of so many whole coils of one length, enough or not.
 *
 * @param input - see {@link CircuitOptionInput}
 * @returns lengths, flow of a circuit and spare pipe; the spare is negative where the loop falls short
 * @throws InputError for a value out of its range; `impossible` when the circuits do not fill whole trenches or the leads use up the coils
 * @remarks Arithmetic of whole coils, common practice. Invariant tested: what {@link planCircuits} takes is this for its own counts.
 * @example
 * ```ts @import.meta.vitest
 * const { litresPerSecond, pipeMetres, ratio } = await import('../units/index.js');
 * const three = circuitOption({
 *   pipeLength: pipeMetres(488),
 *   flow: litresPerSecond(0.6),
 *   pipePerTrench: ratio(2),
 *   coilLength: pipeMetres(150),
 *   circuits: 3,
 * });
 * expect([three.trenches, three.trenchLength, three.activePipe, three.spare]).toEqual([3, 75, 450, -38]);
 * ```
 */
export function circuitOption(input: CircuitOptionInput): CircuitOption {
  const { coilLength, circuits, coilsPerCircuit = 1, circuitsPerTrench = 1, leadLength = 0 } = input;
  demandCircuitNeed(input);
  demand('coilLength', 'pipe length', coilLength, { atLeast: 1, atMost: 1e4 });
  demand('circuits', 'count', circuits, { atLeast: 1, atMost: 20_000 });
  demand('coilsPerCircuit', 'count', coilsPerCircuit, { atLeast: 1, atMost: 1000 });
  if (circuits % circuitsPerTrench !== 0) {
    throw new InputError({
      code: 'impossible',
      argument: 'circuits',
      value: { kind: 'count', value: circuits },
      allowed: `a multiple of circuitsPerTrench (${String(circuitsPerTrench)})`,
    });
  }
  if (coilsPerCircuit * coilLength < leadLength + LEAST_ACTIVE) {
    throw new InputError({
      code: 'impossible',
      argument: 'leadLength',
      value: { kind: 'pipe length', value: leadLength },
      allowed: `at least ${String(LEAST_ACTIVE)} m less than the coils of a circuit (${String(coilsPerCircuit * coilLength)} m)`,
      hint: 'the whole circuit would be used up between trench and header: bring the header closer or buy longer coils',
    });
  }
  return optionOf(input, coilLength, circuits, coilsPerCircuit);
}

/** Refuses what no loop can need of its circuits. */
export function demandCircuitNeed({ pipeLength, flow, pipePerTrench, circuitsPerTrench = 1, trenchesPerCircuit = 1, leadLength }: CircuitNeed): void {
  demand('pipeLength', 'pipe length', pipeLength, { atLeast: 1, atMost: 1e6 });
  demand('flow', 'flow', flow, { atLeast: 1e-6, atMost: 1 });
  demand('pipePerTrench', 'ratio', pipePerTrench, { atLeast: 0.1, atMost: 100 });
  demand('circuitsPerTrench', 'count', circuitsPerTrench, { atLeast: 1, atMost: 20 });
  demand('trenchesPerCircuit', 'count', trenchesPerCircuit, { atLeast: 1, atMost: circuitsPerTrench === 1 ? 20 : 1 });
  if (leadLength !== undefined) demand('leadLength', 'pipe length', leadLength, { atLeast: 0, atMost: 1e4 });
}
