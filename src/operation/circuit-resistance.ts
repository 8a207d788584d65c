import { demand, InputError } from '../errors/index.js';
import type { Conductance, Fraction, PipeLength, PipeResistance, Ratio, Shape } from '../units/index.js';

/** What {@link circuitResistance} needs. */
export interface CircuitResistanceInput {
  /** Pipe of one circuit that exchanges heat, out and back together, 0.1 to 1e6 [m]. */
  readonly pipeLength: PipeLength;
  /** Heat that the flow of this circuit carries per kelvin, 0.01 to 1e9 [W/K]. */
  readonly heatCapacityRate: Conductance;
  /** Pipe wall and film, per metre of each pipe, 0 to 1000 [m.K/W]. */
  readonly pipeResistance: PipeResistance;
  /** Response of the soil to a lasting load of all pipes, per metre of each pipe, 0.001 to 1000 [m.K/W]. */
  readonly groundResistance: PipeResistance;
  /**
   * Part of the ground resistance that comes from the other way of the circuits in the same trench, less than half of ground and pipe together; 0, as
   * when both ways lie far apart, when left out. For two pipes side by side it is the rise of both less that of one alone [m.K/W].
   */
  readonly mutualResistance?: PipeResistance;
}

/** Shape of {@link CircuitResistanceInput}. */
export const circuitResistanceInputShape: Shape<CircuitResistanceInput> = {
  pipeLength: 'pipe length',
  heatCapacityRate: 'conductance',
  pipeResistance: 'pipe resistance',
  groundResistance: 'pipe resistance',
  mutualResistance: { optional: 'pipe resistance' },
};

/** How a circuit exchanges heat whose fluid comes nearer to the ground on its way. */
export interface CircuitResistance {
  /** Ability of the pipe to exchange heat over what the flow carries: length/(heat capacity rate · √((self + mutual)(self − mutual))) [1]. */
  readonly transferUnits: Ratio;
  /** How far the leaving fluid is still from the ground, over how far the entering one was; towards 1 the ways short-circuit [1]. */
  readonly remainingShare: Fraction;
  /** Pipe and ground, as if all of the fluid had the mean of entering and leaving [m.K/W]. */
  readonly assumedResistance: PipeResistance;
  /** Resistance between the ground and the mean of entering and leaving fluid [m.K/W]. */
  readonly effectiveResistance: PipeResistance;
  /** What the effective resistance has over the assumed one [m.K/W]. */
  readonly addedResistance: PipeResistance;
  /** Heat exchanged over the heat that the assumed resistance promises for the same entering and leaving fluid [1]. */
  readonly heatOverAssumed: Ratio;
}

/** Shape of {@link CircuitResistance}. */
export const circuitResistanceShape: Shape<CircuitResistance> = {
  transferUnits: 'ratio',
  remainingShare: 'fraction',
  assumedResistance: 'pipe resistance',
  effectiveResistance: 'pipe resistance',
  addedResistance: 'pipe resistance',
  heatOverAssumed: 'ratio',
};

/**
 * Resistance of a circuit to the mean of entering and leaving fluid, with the fluid followed along the pipe.
 *
 * Taking all fluid at the mean of entering and leaving promises too much heat: most of it flows where the fluid is still far from the ground, and in one
 * trench the way back warms the way out. With N transfer units the resistance is (pipe + ground) · (N/2)/tanh(N/2).
 *
 * The ground around has one temperature along the circuit; both ways have the same resistances and face one another along the whole trench. For two
 * pipes stacked that is an approximation.
 *
 * @param input - see {@link CircuitResistanceInput}
 * @returns effective resistance and what is added to the assumed one [m.K/W], transfer units [1], share of the difference that remains [1]
 * @throws InputError for a value out of its range; `impossible` when the ways act on one another as much as on themselves
 * @remarks Energy balance of the fluid, solved in closed form; checked against four circuits computed independently (LS-50) and stepwise integration of
 * the two ways. Invariants tested: heat by the flow equals heat by the resistance; tends to pipe + ground for a short pipe or a large flow; grows with
 * the transfer units; nothing mutual gives the exponential of one pipe.
 * @example
 * ```ts @import.meta.vitest
 * const { pipeMetres, pipeMetreKelvinPerWatt, wattsPerKelvin } = await import('../units/index.js');
 * const { effectiveResistance, addedResistance } = circuitResistance({
 *   pipeLength: pipeMetres(200),
 *   heatCapacityRate: wattsPerKelvin(1000),
 *   pipeResistance: pipeMetreKelvinPerWatt(0.1),
 *   groundResistance: pipeMetreKelvinPerWatt(0.45),
 *   mutualResistance: pipeMetreKelvinPerWatt(0.1),
 * });
 * expect(effectiveResistance).toBeCloseTo(0.5595, 4);
 * expect(addedResistance).toBeCloseTo(0.0095, 4);
 * ```
 */
export function circuitResistance(input: CircuitResistanceInput): CircuitResistance {
  const { pipeLength, heatCapacityRate, pipeResistance, groundResistance, mutualResistance = 0 } = input;
  demand('pipeLength', 'pipe length', pipeLength, { atLeast: 0.1, atMost: 1e6 });
  demand('heatCapacityRate', 'conductance', heatCapacityRate, { atLeast: 0.01, atMost: 1e9 });
  demand('pipeResistance', 'pipe resistance', pipeResistance, { atLeast: 0, atMost: 1000 });
  demand('groundResistance', 'pipe resistance', groundResistance, { atLeast: 0.001, atMost: 1000 });
  demand('mutualResistance', 'pipe resistance', mutualResistance, { atLeast: 0, atMost: 1000 });
  const sum = pipeResistance + groundResistance;
  const difference = sum - 2 * mutualResistance;
  if (difference < 1e-6 * sum) throw tooMutual(mutualResistance, sum);

  const between = Math.sqrt(sum * difference);
  const transferUnits = pipeLength / (heatCapacityRate * between);
  const added = sum * cothExcess(transferUnits / 2);
  // What would remain after an endless trench, and what would remain of one pipe alone; written so that nothing cancels.
  const endless = (2 * mutualResistance) / (sum + difference + 2 * between);
  const alone = Math.exp(-transferUnits);
  const effective = sum + added;
  return {
    transferUnits: transferUnits as Ratio,
    remainingShare: ((endless + alone) / (1 + endless * alone)) as Fraction,
    assumedResistance: sum as PipeResistance,
    effectiveResistance: effective as PipeResistance,
    addedResistance: added as PipeResistance,
    heatOverAssumed: (sum / effective) as Ratio,
  };
}

/** x · coth(x) − 1 for x above 0: up to 1 by its continued fraction x²/(3 + x²/(5 + …)), since the difference would lose its digits. */
function cothExcess(x: number): number {
  if (x > 1) return x / Math.tanh(x) - 1;
  let tail = 19;
  for (let odd = 17; odd >= 3; odd -= 2) tail = odd + (x * x) / tail;
  return (x * x) / tail;
}

function tooMutual(mutualResistance: number, sum: number): InputError {
  return new InputError({
    code: 'impossible',
    argument: 'mutualResistance',
    value: { kind: 'pipe resistance', value: mutualResistance },
    allowed: `less than ${String(sum / 2)} m.K/W, half of pipe and ground`,
    hint: 'a pipe warms its own wall more than that of another; the ground resistance holds the mutual part already',
  });
}
