import type { Flow, Fraction, PipeLength, TrenchLength } from '../units/index.js';
import type { CircuitNeed, CircuitOption, CircuitPlan, CircuitPlanInput } from './circuit-plan.js';
import { smallestEnough } from './whole.js';

/** Circuits that fill whole trenches come in steps of this many. */
const stepOf = ({ circuitsPerTrench = 1 }: CircuitPlanInput): number => circuitsPerTrench;

const activeOf = ({ leadLength }: CircuitNeed, coil: number, joined: number): number => joined * coil - (leadLength ?? 0);

/** The smallest loop from one coil length that is enough: fewest circuits, or with the trenches given, fewest coils to each circuit. */
export function smallestOption(input: CircuitPlanInput, coil: PipeLength): CircuitOption {
  const { pipeLength, trenches, circuitsPerTrench = 1, trenchesPerCircuit = 1 } = input;
  if (trenches !== undefined) {
    const circuits = (trenches * circuitsPerTrench) / trenchesPerCircuit;
    const enough = (joined: number): boolean => activeOf(input, coil, joined) * circuits >= pipeLength;
    return optionOf(input, coil, circuits, smallestEnough((pipeLength / circuits + (input.leadLength ?? 0)) / coil, 1, enough));
  }
  const active = activeOf(input, coil, 1);
  const step = stepOf(input);
  return optionOf(
    input,
    coil,
    smallestEnough(pipeLength / active, step, (circuits) => active * circuits >= pipeLength),
    1,
  );
}

/** Coils joined to circuits; the spare is negative where the pipe falls short. */
export function optionOf(input: CircuitNeed, coil: PipeLength, circuits: number, joined: number): CircuitOption {
  const { pipeLength, pipePerTrench, circuitsPerTrench = 1, trenchesPerCircuit = 1 } = input;
  const active = activeOf(input, coil, joined);
  const activePipe = active * circuits;
  return {
    circuits,
    coilsPerCircuit: joined,
    coilLength: coil,
    circuitLength: (joined * coil) as PipeLength,
    activeLength: active as PipeLength,
    trenches: (circuits * trenchesPerCircuit) / circuitsPerTrench,
    trenchLength: ((active * circuitsPerTrench) / (pipePerTrench * trenchesPerCircuit)) as TrenchLength,
    circuitFlow: (input.flow / circuits) as Flow,
    boughtPipe: (joined * coil * circuits) as PipeLength,
    activePipe: activePipe as PipeLength,
    spare: (activePipe - pipeLength) as PipeLength,
    spareShare: ((activePipe - pipeLength) / pipeLength) as Fraction,
  };
}

/** Fewest joints first, then circuits within the wanted length, then the least pipe bought, then the fewest circuits. */
export function better({ longestCircuit = Infinity as PipeLength }: CircuitPlanInput): (a: CircuitOption, b: CircuitOption) => number {
  const over = ({ circuitLength }: CircuitOption): number => (circuitLength > longestCircuit ? 1 : 0);
  return (a, b) => a.coilsPerCircuit - b.coilsPerCircuit || over(a) - over(b) || a.boughtPipe - b.boughtPipe || a.circuits - b.circuits;
}

/** The largest loop from the same coils that is not enough. */
export function largestFailing(input: CircuitPlanInput, options: readonly CircuitOption[]): CircuitPlan['nextSmaller'] {
  const [closest] = options
    .map(({ circuits, coilsPerCircuit, coilLength }) =>
      input.trenches === undefined
        ? optionOf(input, coilLength, circuits - stepOf(input), 1)
        : optionOf(input, coilLength, circuits, coilsPerCircuit - 1),
    )
    .filter(({ circuits, activeLength }) => circuits > 0 && activeLength > 0)
    .sort((a, b) => b.activePipe - a.activePipe);
  if (closest === undefined) return undefined;
  const { circuits, coilsPerCircuit, coilLength, spare } = closest;
  return { circuits, coilsPerCircuit, coilLength, shortBy: -spare as PipeLength };
}
