import { type CircuitInput, type CircuitOption, circuitOption } from '../circuit/index.js';
import { InputError, locate } from '../errors/index.js';
import { type GroundResponse, groundResponse, type Layout, layoutFrom, type LayoutInput } from '../ground/index.js';
import type { LoadMode } from '../operation/index.js';
import type { PipeDimensions } from '../pipe/index.js';
import type { Flow, PipeLength, Ratio, Time, TrenchLength } from '../units/index.js';
import { atPlace } from './at-place.js';
import type { Mode } from './modes.js';
import { type ModeNeed, needsOf } from './needs.js';
import type { GroundState } from './ground-state.js';

/** Everything that does not change while whole numbers are tried. */
export interface Fixed extends GroundState {
  readonly layout: LayoutInput;
  readonly longestTrench: TrenchLength;
  readonly mostTrenches: number;
  readonly circuits: CircuitInput;
  readonly pipe: PipeDimensions;
  readonly flow: Flow;
  readonly peakTimes: Readonly<Record<LoadMode, Time>>;
  readonly modes: readonly Mode[];
}

/** What a number of trenches asks for. */
export interface Need {
  readonly layout: Layout;
  readonly response: GroundResponse;
  readonly needs: readonly ModeNeed[];
  /** The longer of what heating and cooling ask for in closed form [m]. */
  readonly needed: PipeLength;
}

/** What is known of topologies already, and how far the hours ask for more or less than the closed form. */
export interface Calibration {
  /** What numbers of trenches ask for in closed form, filled as they are tried. */
  readonly known: Map<number, Need>;
  /** Pipe that the hours ask for over that of the closed form [1]. */
  readonly factorAt: (trenches: number) => number;
}

/** A number of trenches with a coil, and whether it is enough. */
export interface Trial extends Need {
  /** What the hours ask for, as far as they were followed; where not, the closed form times the factor of the nearest topology [m]. */
  readonly asked: PipeLength;
  readonly option: CircuitOption;
  readonly enough: boolean;
}

/** The loop chosen and the trials around it. */
export interface Solved {
  readonly chosen: Trial;
  /** The best of each other coil length that is enough. */
  readonly others: readonly Trial[];
  /** The largest loop smaller than the chosen one, of any coil, that is not enough. */
  readonly nextSmaller?: Trial;
}

/**
 * Finds the whole numbers: for each delivered coil the fewest trenches that give the pipe which that many trenches and circuits
 * ask for, then the coil that buys the least pipe.
 *
 * Every count is tried with its own interference between trenches and its own flow in each circuit, so that a step from
 * turbulent to laminar flow between two counts cannot be missed.
 *
 * @param fixed - what the trials share
 * @param calibration - what is known already; the closed form alone when left out
 * @returns the chosen loop; its `enough` is false when the land ends before the need
 * @throws InputError `unreachable` when no coil fits a trench
 */
export function solveWholeNumbers(fixed: Fixed, calibration: Calibration = { known: new Map(), factorAt: () => 1 }): Solved {
  const coils = reaching(fixed).filter((coil) => trenchOf(fixed, coil) <= fixed.longestTrench * (1 + ROUNDED));
  const ladders = coils.map((coil) => climb(fixed, coil, calibration));
  const [chosen, ...others] = ladders.flatMap((trials) => trials.slice(-1)).sort(better);
  if (chosen === undefined) throw noCoilFits(fixed);
  const [nextSmaller] = ladders
    .flat()
    .filter(({ enough, option }) => !enough && option.activePipe < chosen.option.activePipe)
    .sort((a, b) => b.option.activePipe - a.option.activePipe);
  return { chosen, others: others.filter(({ enough }) => enough), ...(nextSmaller === undefined ? {} : { nextSmaller }) };
}

/** Coils that reach beyond their leads. */
function reaching({ circuits }: Fixed): readonly PipeLength[] {
  const { coilLengths, leadLength = 0 } = circuits;
  return coilLengths.filter((coil) => coil - leadLength >= LEAST_ACTIVE);
}

/** Least pipe of a circuit that must lie in its trench [m]. */
const LEAST_ACTIVE = 1;

/** A trench measured in feet and one in metres are the same trench; this much is rounding [1]. */
const ROUNDED = 1e-4;

/** One coil: more and more trenches until they are enough or the land ends. The last trial is the answer for this coil. */
function climb(fixed: Fixed, coil: PipeLength, { known, factorAt }: Calibration): readonly Trial[] {
  const { trenchesPerCircuit = 1 } = fixed.circuits;
  const trials: Trial[] = [];
  for (let trenches = trenchesPerCircuit; trenches <= fixed.mostTrenches; trenches += trenchesPerCircuit) {
    // What is needed depends on the number of trenches and circuits alone, so the coils share it.
    const need = known.get(trenches) ?? needAt(fixed, trenches);
    known.set(trenches, need);
    const trial = attempt(fixed, coil, need, factorAt(trenches));
    trials.push(trial);
    if (trial.enough) break;
  }
  return trials;
}

function needAt(fixed: Fixed, trenches: number): Need {
  const { pipe, soil } = fixed;
  const layout = locate('field.layout', () => layoutFrom(fixed.layout, trenches));
  const answer = (): GroundResponse => groundResponse({ layout, pipe, soil });
  const response = fixed.layout.type === 'custom' ? locate('field', answer) : atPlace('field.layout', answer);
  const needs = needsOf({ ...fixed, response, circuitFlow: (fixed.flow / circuitsIn(fixed, trenches)) as Flow });
  return { layout, response, needs, needed: Math.max(...needs.map((need) => need.needed.monthly.pipe)) as PipeLength };
}

function attempt(fixed: Fixed, coil: PipeLength, need: Need, factor: number): Trial {
  const asked = (factor * need.needed) as PipeLength;
  const { trenches, pipesPerTrench } = need.layout;
  const option = circuitOption({
    ...fixed.circuits,
    pipeLength: asked,
    flow: fixed.flow,
    pipePerTrench: pipesPerTrench as Ratio,
    coilLength: coil,
    circuits: circuitsIn(fixed, trenches),
  });
  return { ...need, asked, option, enough: option.activePipe >= asked };
}

function circuitsIn({ circuits: { circuitsPerTrench = 1, trenchesPerCircuit = 1 } }: Fixed, trenches: number): number {
  return (trenches * circuitsPerTrench) / trenchesPerCircuit;
}

function trenchOf({ circuits, layout }: Fixed, coil: PipeLength): number {
  const { leadLength = 0, circuitsPerTrench = 1, trenchesPerCircuit = 1 } = circuits;
  return ((coil - leadLength) * circuitsPerTrench) / (layoutFrom(layout, 1).pipesPerTrench * trenchesPerCircuit);
}

/** Enough before not enough; of those the least pipe bought, then the fewest trenches; of what is not enough the most. */
function better(a: Trial, b: Trial): number {
  if (a.enough !== b.enough) return a.enough ? -1 : 1;
  if (!a.enough) return b.option.activePipe - a.option.activePipe;
  return a.option.boughtPipe - b.option.boughtPipe || a.option.trenches - b.option.trenches;
}

function noCoilFits(fixed: Fixed): InputError {
  const { longestTrench } = fixed;
  const shortest = Math.min(...reaching(fixed).map((coil) => trenchOf(fixed, coil)));
  return new InputError({
    code: 'unreachable',
    argument: 'field.longestTrench',
    value: { kind: 'trench length', value: longestTrench },
    allowed: `at least ${String(shortest)} m, which the shortest coil on offer fills`,
    hint: 'lay more pipes in a trench, order shorter coils, or run a circuit through several trenches',
  });
}
