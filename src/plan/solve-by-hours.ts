import { bindingLimit, type BindingLimit, type Simulation, type SizedLoop } from '../operation/index.js';
import type { PipeLength } from '../units/index.js';
import { followByHours, type HoursFixed, limitsOf, sizeByHours, type Topology, topologyOf } from './by-hours.js';
import { type Calibration, type Fixed, type Solved, solveWholeNumbers, type Trial } from './solve.js';
import { withinBounds } from './within-bounds.js';

/** The loop chosen, as it came out hour by hour. */
export interface SolvedByHours extends Solved {
  /** The chosen trenches and circuits with the pipe open. */
  readonly topology: Topology;
  /** The shortest pipe of that topology that keeps the limits. */
  readonly sized: SizedLoop;
  /** Pipe of the loop that was followed: that laid, or the shortest that keeps the limits where the fluid of the one laid would leave all bounds [m]. */
  readonly followedLength: PipeLength;
  /** That loop through its years, with every hour of them. */
  readonly laid: Simulation;
  /** The limit that it comes nearest to. */
  readonly binding: BindingLimit;
  /** The limit that the next smaller loop misses; absent where there is none. */
  readonly smallerBinding?: BindingLimit;
}

/** So far beyond a limit no loop is followed [K]. */
const MEANINGLESS = -15;

/** Topologies sized by the hour before the search is taken to go in circles. */
const MOST_ROUNDS = 12;

/**
 * Finds the whole numbers by the hour: the closed form proposes trenches and coils, the hours size just those trenches and circuits, and what they ask for
 * over the closed form corrects the next proposal, until the loop proposed is one that was followed. The next smaller one is followed, too, and must fail.
 *
 * @param fixed - what the trials share
 * @param hours - loads and ground by the hour
 * @returns the loop chosen with its simulation
 * @throws InputError `unreachable` when no coil fits a trench, or a limit of the unit is beyond what any pipe reaches
 */
export function solveByHours(fixed: Fixed, hours: HoursFixed): SolvedByHours {
  const followed = new Map<number, { readonly factor: number; readonly topology: Topology; readonly sized: SizedLoop }>();
  const calibration: Calibration = { known: new Map(), factorAt: (trenches) => nearest(followed, trenches)?.factor ?? 1 };
  const follow = (trial: Trial): { readonly topology: Topology; readonly sized: SizedLoop } => {
    const { trenches } = trial.layout;
    const known = followed.get(trenches);
    if (known !== undefined) return known;
    const topology = topologyOf(fixed, hours, trial, trial.option);
    const sized = sizeByHours(topology, hours, trial.asked);
    const found = { factor: sized.exactLength / trial.needed, topology, sized };
    followed.set(trenches, found);
    return found;
  };
  const smallerOf = ({ nextSmaller }: Solved): BindingLimit | undefined => {
    if (nextSmaller === undefined) return undefined;
    const topology = followed.get(nextSmaller.layout.trenches)?.topology ?? topologyOf(fixed, hours, nextSmaller, nextSmaller.option);
    const simulation = withinBounds(() => followByHours(topology, nextSmaller.option.activePipe));
    return simulation && bindingLimit(simulation, limitsOf(hours));
  };
  for (let round = 0; ; round += 1) {
    const solved = solveWholeNumbers(fixed, calibration);
    const isNew = !followed.has(solved.chosen.layout.trenches);
    const { topology, sized } = follow(solved.chosen);
    // What was found may change which trenches and coils are proposed.
    if (isNew && round < MOST_ROUNDS) continue;
    const smallerBinding = smallerOf(solved);
    if (solved.nextSmaller !== undefined && smallerBinding !== undefined && smallerBinding.limitMargin >= 0 && round < MOST_ROUNDS) {
      // It keeps the limits after all: its own trenches are sized, and it will be proposed.
      follow(solved.nextSmaller);
      continue;
    }
    const { activePipe } = solved.chosen.option;
    const asLaid = withinBounds(() => followByHours(topology, activePipe, true));
    const binding = asLaid && bindingLimit(asLaid, limitsOf(hours));
    // Far beyond its limits a unit has stopped long since, and what is computed means nothing.
    const means = asLaid !== undefined && binding !== undefined && binding.limitMargin > MEANINGLESS;
    const laid = means ? asLaid : followByHours(topology, sized.exactLength, true);
    return {
      ...solved,
      topology,
      sized,
      followedLength: means ? activePipe : sized.exactLength,
      laid,
      binding: means ? binding : sized.binding,
      ...(smallerBinding && { smallerBinding }),
    };
  }
}

/** The entry of the nearest number of trenches. */
function nearest<T>(entries: ReadonlyMap<number, T>, trenches: number): T | undefined {
  const [closest] = [...entries].sort(([one], [other]) => Math.abs(one - trenches) - Math.abs(other - trenches));
  return closest?.[1];
}
