import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ReferenceKey } from '../references/index.js';
import type { PipeLength, PipeResistance } from '../units/index.js';
import { demandSimulation } from './demand-simulation.js';
import { bindingLimit, type BindingLimit, demandLimits, type FluidLimits } from './fluid-limits.js';
import { plantOf } from './plant.js';
import { follow } from './simulate.js';
import type { Simulation, SimulationInput } from './simulation.js';
import { sizeLoop } from './size-loop.js';

/** What {@link followSettling} needs: a loop in its native ground, and what the fill of the trench adds to that. */
export interface SettlingInput extends SimulationInput {
  /** What the loosened fill adds in series with the pipe wall, below 0 where it conducts better than the native ground, −100 to 100 [m.K/W]. */
  readonly firstWinterResistance: PipeResistance;
  /** What it adds once it has settled, −100 to 100 [m.K/W]. */
  readonly settledResistance: PipeResistance;
  /** What the fluid must keep; no lengths are looked for when left out. */
  readonly limits?: FluidLimits;
}

/** A loop with its fill in one state. */
export interface SettlingState {
  /** The loop as it is. */
  readonly simulation: Simulation;
  /** The limit that it comes nearest to; absent without limits, or where the unit never runs in a mode that has one. */
  readonly binding?: BindingLimit;
  /** The shortest pipe that keeps the limits in this state; absent where `binding` is [m]. */
  readonly exactLength?: PipeLength;
}

/** A loop while its fill is loose, and once it has settled. */
export interface Settling {
  /** One year from the start on; its first and last year are the same. */
  readonly firstWinter: SettlingState;
  /** Through the years to the one that repeats or as many as asked for, as if the fill had settled from the start on. */
  readonly settled: SettlingState;
  /** What to look at. */
  readonly findings: readonly Finding[];
  /** What the numbers rest on. */
  readonly sources: readonly ReferenceKey[];
}

/**
 * Follows a loop through its first year in loosened fill, and through the year that repeats once the fill has settled.
 *
 * A trench is filled with soil that is looser than the ground around, and settles after a wet season or two. What the fill adds to the
 * response of the native ground is taken in series with the pipe wall: `addedResistance` of `effectiveConductivity` for either state of
 * `loosenedFill`. The year that repeats does not know how it began, so a loose first year and a settled one behind it end in the same.
 * The first year has ground that no heat was taken from yet, the year that repeats has not; either may be the harder one.
 *
 * @param input - see {@link SettlingInput}; start it before the heating season, else the first winter is cut in two
 * @returns both states with their years, and, where there are limits, the length that each asks for
 * @throws InputError for a value out of its range, as {@link simulate} and {@link sizeLoop} do, and where a fill takes more off than film and wall have; `unreachable` where no length keeps the limits
 * @remarks In series the fill holds no heat of its own: after a day of heat the pipe is up to 8 % too cold, from a week on 3 % (`effectiveConductivity`).
 * Invariants tested: fills that add nothing give {@link simulate} and {@link sizeLoop}; a looser fill is never warmer in heating, nor cooler in cooling, nor shorter.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, hours, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } = await import('../units/index.js');
 * const wave = Array.from({ length: 8760 }, (_, step) => Math.cos((2 * Math.PI * (step / 24 - 20)) / 365));
 * const { firstWinter, settled } = followSettling({
 *   step: hours(1),
 *   duty: { from: 'ground', loads: wave.map((each) => 5000 * Math.max(0, each)) },
 *   ground: wave.map((each) => 10 - 5 * each),
 *   response: { terms: [{ timeConstant: hours(2000), rise: pipeMetreKelvinPerWatt(0.6) }], steadyRise: pipeMetreKelvinPerWatt(0.6) },
 *   pipeLength: pipeMetres(600),
 *   resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
 *   heatCapacityRate: wattsPerKelvin(2000),
 *   firstWinterResistance: pipeMetreKelvinPerWatt(0.2),
 *   settledResistance: pipeMetreKelvinPerWatt(0.08),
 *   start: dayOfYear(245),
 *   limits: { lowestEntering: celsius(-1) },
 * });
 * expect(firstWinter.binding?.reached).toBeLessThan(settled.binding?.reached ?? NaN);
 * expect(firstWinter.exactLength).toBeGreaterThan(settled.exactLength ?? NaN);
 * ```
 */
export function followSettling({ firstWinterResistance, settledResistance, limits, ...native }: SettlingInput): Settling {
  demand('firstWinterResistance', 'pipe resistance', firstWinterResistance, { atLeast: -100, atMost: 100 });
  demand('settledResistance', 'pipe resistance', settledResistance, { atLeast: -100, atMost: 100 });
  if (limits !== undefined) demandLimits(limits);
  demandSimulation(native);
  const behind = (added: PipeResistance): SimulationInput => ({
    ...native,
    resistanceAt: (meanFluid) => (native.resistanceAt(meanFluid) + added) as PipeResistance,
  });
  const firstWinter = stateOf({ ...behind(firstWinterResistance), years: 1 }, limits);
  const settled = stateOf(behind(settledResistance), limits);
  return {
    firstWinter,
    settled,
    findings: [...findingsOf(firstWinter, settled), ...settled.simulation.findings],
    sources: settled.simulation.sources,
  };
}

/** The loop with its fill in one state. */
function stateOf(input: SimulationInput, limits: FluidLimits | undefined): SettlingState {
  const simulation = follow(input, plantOf(input));
  if (limits === undefined) return { simulation };
  // Of a loop followed for one year the last is the first.
  const { yearOne, lastYear } = simulation;
  const nearest = bindingLimit({ yearOne, lastYear }, limits);
  const binding: BindingLimit | undefined = nearest && lastYear.year === 1 ? { ...nearest, year: 'first' } : nearest;
  if (binding === undefined) return { simulation };
  return { simulation, binding, exactLength: sizeLoop({ ...input, limits, guess: Math.min(input.pipeLength, 1e6) as PipeLength }).exactLength };
}

/** That the loose fill takes the fluid beyond a limit which the settled one keeps. */
function findingsOf({ binding: loose }: SettlingState, { binding: settled }: SettlingState): readonly Finding[] {
  if (loose === undefined || settled === undefined || loose.limitMargin >= 0 || settled.limitMargin < 0) return [];
  const { limit, reached, day, limitMargin } = loose;
  return [{ code: 'first-winter-beyond-limit', level: 'warning', values: { limit, reached, day, limitMargin }, source: 'common practice' }];
}
