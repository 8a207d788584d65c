import type { GroundMemory } from './ground-memory.js';
import type { IceFollower } from './ice-follower.js';
import type { LevelMix } from './level-mix.js';
import type { Plant } from './plant.js';
import { PriorityMix } from './priority-mix.js';
import type { Course } from './simulation.js';
import { StepSolver } from './step-solver.js';

/** A loop ready to be followed from step to step. */
export interface Run {
  readonly plant: Plant;
  readonly memory: GroundMemory;
  readonly pipeLength: number;
  readonly loads: ArrayLike<number>;
  /** Whether the loads are heat from the ground itself. */
  readonly direct: boolean;
  readonly ground: ArrayLike<number>;
  /** Temperature supplied to the load, where the unit asks for it [degC]. */
  readonly supplies: ArrayLike<number> | undefined;
  /** Heat for hot water, where it is asked for [W]. */
  readonly hotLoads: ArrayLike<number> | undefined;
  /** The step of the year at which the loop starts. */
  readonly first: number;
  /** Change of the wall at the end of a run beyond even running, per heat per metre while running, over the run fraction; none when absent [m.K/W]. */
  readonly endOfRun: ((runFraction: number) => number) | undefined;
  /** Ice around the pipes; none when absent. */
  readonly ice: IceFollower | undefined;
}

/**
 * Follows the loop through one year, from its start to the step before it.
 *
 * @param run - the loop; its memory is that of the end of the year afterwards
 * @param course - filled with every step of the year
 * @returns in how many steps the fluid may have had other states
 */
export function runYear({ plant, memory, pipeLength, loads, direct, ground, supplies, hotLoads, first, endOfRun, ice }: Run, course: Course): number {
  const count = loads.length;
  const { stepRise } = memory;
  const { enteringFluids, leavingFluids, walls, runShares, groundHeats, unitPowers, pumpPowers, unmetLoads } = course;
  const step = new StepSolver(plant, pipeLength, stepRise, direct);
  let lastHeat = 0;
  let manyStates = 0;
  let ran = false;
  let index = first;
  for (let n = 0; n < count; n += 1) {
    const load = loads[index] ?? 0;
    // The wall at rest: the heat of the step before joins the memory, which then decays through this step.
    const undisturbed = ground[index] ?? 0;
    const rest = undisturbed - memory.pass(lastHeat);
    const hotLoad = hotLoads === undefined ? 0 : (hotLoads[index] ?? 0);
    const runs = (load !== 0 && (direct || (load > 0 ? plant.heats : plant.cools))) || hotLoad > 0;
    const mix = plant.priority ?? (load > 0 ? plant.heatingMix : plant.coolingMix);
    if (runs) {
      step.rest = rest;
      step.load = load;
      if (!ran) step.startFrom(rest);
      if (plant.priority !== undefined) plant.priority.hotLoad = hotLoad;
      if (supplies !== undefined) mix?.turnTo(supplies[index] ?? Number.NaN);
      if (ice === undefined) step.solve();
      else ice.solve(step, rest, undisturbed);
      const colder = endOfRun === undefined || step.runFraction >= 1 ? 0 : (step.runningHeat / pipeLength) * endOfRun(step.runFraction);
      enteringFluids[index] = step.entering - colder;
      leavingFluids[index] = step.leaving - colder;
      runShares[index] = step.runFraction * step.stretch;
      groundHeats[index] = step.meanHeat;
      unitPowers[index] = step.runFraction * step.power;
      pumpPowers[index] = step.runFraction * step.circulation;
      unmetLoads[index] = step.unmet;
      lastHeat = step.meanHeat / pipeLength;
      if (step.manyStates) manyStates += 1;
      if (mix !== undefined) followLevels(step, mix, course, index, endOfRun, pipeLength);
      else if (course.fullHeatShares !== runShares) course.fullHeatShares[index] = step.runFraction;
    } else {
      enteringFluids[index] = Number.NaN;
      leavingFluids[index] = Number.NaN;
      runShares[index] = 0;
      groundHeats[index] = 0;
      unitPowers[index] = 0;
      pumpPowers[index] = 0;
      unmetLoads[index] = load;
      lastHeat = 0;
      ice?.pause(rest, undisturbed);
    }
    ran = runs;
    walls[index] = ice === undefined ? rest - lastHeat * stepRise : ice.wall;
    if (ice !== undefined) lastHeat = ice.keep(lastHeat, index);
    index = index + 1 === count ? 0 : index + 1;
  }
  memory.close(lastHeat);
  return manyStates;
}

/**
 * What a step at several levels has beside that of one: the fluid at the harder of two levels, at the end of a run of the upper, the share of the full heat,
 * and the loss by cycling.
 */
export function followLevels(
  step: StepSolver,
  mix: LevelMix | PriorityMix,
  course: Course,
  index: number,
  endOfRun: Run['endOfRun'],
  pipeLength: number,
): void {
  const { enteringFluids, leavingFluids, fullHeatShares, cyclingPowers } = course;
  const { mostBeyond, leastBeyond, levelShare } = mix;
  if (mostBeyond !== leastBeyond) {
    const apart = Math.sign(step.load) * (mostBeyond - leastBeyond);
    const end = endOfRun === undefined || levelShare >= 1 ? 0 : (apart / pipeLength) * endOfRun(levelShare);
    enteringFluids[index] = (enteringFluids[index] ?? 0) + step.enteringBeyond(mostBeyond, leastBeyond) - end;
    leavingFluids[index] = (leavingFluids[index] ?? 0) + step.leavingBeyond(mostBeyond, leastBeyond) - end;
  }
  if (cyclingPowers !== undefined) cyclingPowers[index] = step.runFraction * mix.lost;
  fullHeatShares[index] = mix.heatShare();
  const { hotWater } = course;
  if (hotWater === undefined || !(mix instanceof PriorityMix)) return;
  const { hotFraction } = mix;
  const pump = step.circulation / step.stretch;
  hotWater.runShares[index] = hotFraction;
  hotWater.groundHeats[index] = hotFraction * (mix.hotHeat - pump * step.circulatorHeat);
  hotWater.unitPowers[index] = hotFraction * mix.hotPower;
  hotWater.pumpPowers[index] = hotFraction * pump;
  hotWater.unmetLoads[index] = mix.hotUnmet;
}

/** Room for the steps of a year; with several levels, ground heat and running time are two things. */
export function emptyCourse(count: number, { heatingMix, coolingMix, priority }: Plant): Course {
  const zeros = (): Float64Array => new Float64Array(count);
  const runShares = zeros();
  const plain = heatingMix === undefined && coolingMix === undefined && priority === undefined;
  return {
    enteringFluids: zeros(),
    leavingFluids: zeros(),
    walls: zeros(),
    runShares,
    fullHeatShares: plain ? runShares : zeros(),
    groundHeats: zeros(),
    unitPowers: zeros(),
    pumpPowers: zeros(),
    unmetLoads: zeros(),
    ...(plain ? {} : { cyclingPowers: zeros() }),
    ...(priority && { hotWater: { runShares: zeros(), groundHeats: zeros(), unitPowers: zeros(), pumpPowers: zeros(), unmetLoads: zeros() } }),
  };
}
