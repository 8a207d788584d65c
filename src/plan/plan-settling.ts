import type { Finding } from '../findings/index.js';
import { type BindingLimit, bindingLimitShape, followSettling, type Settling, type SettlingState, sizeLoop } from '../operation/index.js';
import type { Conductivity, Density, Length, PipeLength, PipeResistance, Shape } from '../units/index.js';
import { type HoursFixed, limitsOf } from './by-hours.js';
import type { FilledState, FilledTrench } from './filled-trench.js';
import { type FluidOfYear, fluidOfYear, fluidOfYearShape } from './loop-by-hours.js';
import type { SolvedByHours } from './solve-by-hours.js';
import { withinBounds } from './within-bounds.js';

/** The loop with its fill in one state. */
export interface SettlingResult {
  /** Dry density of the fill [kg/m3]. */
  readonly dryDensity: Density;
  /** Its conductivity [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** What it adds between pipe and native ground; below 0 where it conducts better [m.K/W]. */
  readonly addedResistance: PipeResistance;
  /** The fluid: of the first year while the fill is loose, of the year that repeats once it has settled. */
  readonly fluidOfYear: FluidOfYear;
  /** The limit that it comes nearest to. */
  readonly binding?: BindingLimit;
  /** Shortest pipe that keeps the limits in this state, with these trenches and circuits [m]. */
  readonly exactLength?: PipeLength;
}

/** The loop in its first winter with loosened fill, and once the fill has settled. */
export interface PlanSettling {
  /** Depth of the trench: 5 cm under its lowest pipe [m]. */
  readonly trenchDepth: Length;
  /** Pipe of the loop that was followed: that of `byHours`, or more where the fluid would leave all bounds in the loose fill [m]. */
  readonly followedLength: PipeLength;
  /** In the first year, while the fill is loose. */
  readonly firstWinter: SettlingResult;
  /** In the year that repeats, once it has settled. */
  readonly settled: SettlingResult;
}

const settlingResultShape: Shape<SettlingResult> = {
  dryDensity: 'density',
  conductivity: 'conductivity',
  addedResistance: 'pipe resistance',
  fluidOfYear: fluidOfYearShape,
  binding: { optional: bindingLimitShape },
  exactLength: { optional: 'pipe length' },
};

/** Shape of {@link PlanSettling}. */
export const planSettlingShape: Shape<PlanSettling> = {
  trenchDepth: 'length',
  followedLength: 'pipe length',
  firstWinter: settlingResultShape,
  settled: settlingResultShape,
};

/**
 * Follows the loop of the plan while its fill is loose and once it has settled.
 *
 * @param solved - the loop chosen
 * @param hours - loads and ground by the hour
 * @param trench - the fill in both states
 * @returns both states, and whether the first winter misses what the settled loop keeps
 */
export function planSettling(
  { topology, followedLength, chosen }: SolvedByHours,
  hours: HoursFixed,
  trench: FilledTrench,
): { readonly settling: PlanSettling; readonly findings: readonly Finding[] } {
  const limits = limitsOf(hours);
  const firstWinterResistance = trench.firstWinter.addedResistance;
  const follow = (pipeLength: PipeLength): Settling =>
    followSettling({ ...topology, pipeLength, limits, firstWinterResistance, settledResistance: trench.settled.addedResistance });
  const asLaid = withinBounds(() => follow(followedLength));
  const longer = (): PipeLength =>
    sizeLoop({
      ...topology,
      resistanceAt: (meanFluid) => (topology.resistanceAt(meanFluid) + firstWinterResistance) as PipeResistance,
      limits,
      guess: followedLength,
    }).exactLength;
  const length = asLaid === undefined ? longer() : followedLength;
  const { firstWinter, settled, findings } = asLaid ?? follow(length);
  return {
    settling: {
      trenchDepth: trench.depth,
      followedLength: length,
      firstWinter: resultOf(trench.firstWinter, firstWinter),
      settled: resultOf(trench.settled, settled),
    },
    findings: [...findings, ...shortInFill(chosen.option.activePipe, firstWinter, settled)],
  };
}

/** That the loop laid is too short even in settled fill. */
function shortInFill(laid: PipeLength, loose: SettlingState, { binding, exactLength: needed }: SettlingState): readonly Finding[] {
  const neededIfLoose = loose.exactLength;
  if (binding === undefined || needed === undefined || neededIfLoose === undefined || binding.limitMargin >= 0) return [];
  return [{ code: 'short-in-fill', level: 'warning', values: { laid, needed, neededIfLoose }, source: 'common practice' }];
}

function resultOf({ fill, addedResistance }: FilledState, { simulation, binding, exactLength }: SettlingState): SettlingResult {
  return {
    dryDensity: fill.dryDensity.estimate,
    conductivity: fill.conductivity.estimate,
    addedResistance,
    fluidOfYear: fluidOfYear(simulation.lastYear),
    ...(binding && { binding }),
    ...(exactLength !== undefined && { exactLength }),
  };
}
