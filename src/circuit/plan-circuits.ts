import { demand, demandCount, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { PipeLength } from '../units/index.js';
import { demandCircuitNeed, LEAST_ACTIVE } from './circuit-option.js';
import { better, largestFailing, smallestOption } from './buildable.js';
import type { CircuitOption, CircuitPlanInput, CircuitPlanResult } from './circuit-plan.js';

/** Spare beyond which another coil length or count deserves a look [1]. */
const HIGH_SPARE = 0.15;

/**
 * Circuits of whole delivered coils: equal in length, without a joint inside the ground, in whole trenches, at least as much
 * exchanging pipe as needed.
 *
 * With the trenches left open, each coil length gives the smallest number of circuits that is enough; the one that buys the least pipe
 * is taken. With the trenches given, the shortest coil that is enough is taken, and coils are joined only where none is.
 *
 * @param input - see {@link CircuitPlanInput}
 * @returns the circuits, the other ways to build them, the next smaller loop that fails, and findings
 * @throws InputError for a value out of its range; `impossible` when no coil reaches past its leads or trenches do not
 * divide into circuits; `unreachable` when every coil needs a longer trench than the land has
 * @remarks Whole coils and equal circuits are common practice. Invariants tested: the active pipe is at least what is needed, the next smaller
 * loop is not, coils are whole, the trenches hold exactly the active pipe, the flow divides without rest.
 * @example
 * ```ts @import.meta.vitest
 * const { litresPerSecond, pipeMetres, ratio } = await import('../units/index.js');
 * const plan = planCircuits({
 *   pipeLength: pipeMetres(488),
 *   flow: litresPerSecond(0.6),
 *   coilLengths: [pipeMetres(100), pipeMetres(150), pipeMetres(200)],
 *   pipePerTrench: ratio(2),
 * });
 * expect([plan.circuits, plan.coilLength, plan.trenches, plan.trenchLength, plan.spare]).toEqual([5, 100, 5, 50, 12]);
 * expect(plan.nextSmaller).toEqual({ circuits: 3, coilsPerCircuit: 1, coilLength: 150, shortBy: 38 });
 * ```
 */
export function planCircuits(input: CircuitPlanInput): CircuitPlanResult {
  demandCircuitPlanInput(input);
  const { coilLengths, longestTrench = Infinity } = input;
  const reaching = coilLengths.filter((coil) => input.trenches !== undefined || coil >= (input.leadLength ?? 0) + LEAST_ACTIVE);
  if (reaching.length === 0) throw leadsTooLong(input);
  const options = reaching
    .map((coil) => smallestOption(input, coil))
    .filter(({ trenchLength }) => trenchLength <= longestTrench)
    .sort(better(input));
  const [best, ...others] = options;
  if (best === undefined) throw trenchesTooLong(input, reaching);
  const nextSmaller = largestFailing(input, options);
  return {
    ...best,
    arrangement: best.circuits === 1 ? 'single' : 'parallel',
    others,
    ...(nextSmaller === undefined ? {} : { nextSmaller }),
    findings: findingsOf(input, best),
  };
}

function findingsOf(
  { coilLengths, longestCircuit }: CircuitPlanInput,
  { circuitLength, coilsPerCircuit, spare, spareShare }: CircuitOption,
): Finding[] {
  const findings: Finding[] = [];
  if (coilsPerCircuit > 1) {
    const longestCoil = Math.max(...coilLengths) as PipeLength;
    findings.push({
      code: 'circuit-longer-than-coil',
      level: 'warning',
      values: { circuitLength, longestCoil, coilsPerCircuit },
      source: 'common practice',
    });
  }
  if (longestCircuit !== undefined && circuitLength > longestCircuit) {
    findings.push({ code: 'circuit-long', level: 'warning', values: { circuitLength, longest: longestCircuit }, source: 'common practice' });
  }
  if (spareShare > HIGH_SPARE) {
    findings.push({ code: 'spare-pipe-high', level: 'note', values: { spare, share: spareShare }, source: 'common practice' });
  }
  return findings;
}

function demandCircuitPlanInput(input: CircuitPlanInput): void {
  const { trenchesPerCircuit = 1, trenches, longestTrench, longestCircuit } = input;
  demandCircuitNeed(input);
  demandCount('coilLengths', input.coilLengths, 1, 50);
  input.coilLengths.forEach((coil, index) => {
    demand(`coilLengths.${String(index)}`, 'pipe length', coil, { atLeast: 1, atMost: 1e4 });
  });
  if (trenches !== undefined) demand('trenches', 'count', trenches, { atLeast: 1, atMost: 1000 });
  if (longestTrench !== undefined) demand('longestTrench', 'trench length', longestTrench, { atLeast: 1, atMost: 1e6 });
  if (longestCircuit !== undefined) demand('longestCircuit', 'pipe length', longestCircuit, { atLeast: 1, atMost: 1e6 });
  if (trenches !== undefined && trenches % trenchesPerCircuit !== 0) {
    throw new InputError({
      code: 'impossible',
      argument: 'trenches',
      value: { kind: 'count', value: trenches },
      allowed: `a multiple of trenchesPerCircuit (${String(trenchesPerCircuit)})`,
    });
  }
}

function leadsTooLong({ leadLength, coilLengths }: CircuitPlanInput): InputError {
  return new InputError({
    code: 'impossible',
    argument: 'leadLength',
    value: { kind: 'pipe length', value: leadLength ?? 0 },
    allowed: `at least ${String(LEAST_ACTIVE)} m less than the longest coil (${String(Math.max(...coilLengths))} m)`,
    hint: 'the whole coil would be used up between trench and header: bring the header closer or buy longer coils',
  });
}

function trenchesTooLong(input: CircuitPlanInput, coils: readonly PipeLength[]): InputError {
  const shortest = Math.min(...coils.map((coil) => smallestOption(input, coil).trenchLength));
  return new InputError({
    code: 'unreachable',
    argument: 'longestTrench',
    value: { kind: 'trench length', value: input.longestTrench ?? Infinity },
    allowed: `at least ${String(shortest)} m, which the shortest circuit on offer needs`,
    hint: 'buy shorter coils, lay more pipes in a trench, run a circuit through several trenches, or dig more trenches',
  });
}
