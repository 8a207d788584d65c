import type { GroundMemory } from './ground-memory.js';
import type { Plant } from './plant.js';
import { followLevels } from './run-year.js';
import type { SectionPart } from './section-part.js';
import type { SectionCourse } from './section-result.js';
import type { SectionStep } from './section-step.js';
import type { Course } from './simulation.js';
import type { StepSolver } from './step-solver.js';

/** A section with what its ground remembers. */
export interface FollowedSection {
  readonly part: SectionPart;
  readonly memory: GroundMemory;
  readonly ground: ArrayLike<number>;
  /** Change of its wall at the end of a run beyond even running, per heat per metre while running, over the run fraction; none when absent [m.K/W]. */
  readonly endOfRun: ((runFraction: number) => number) | undefined;
  /** Heat of the step before, per metre of pipe [W/m]. */
  lastHeat: number;
}

/** Sections ready to be followed from step to step. */
export interface SectionRun {
  readonly plant: Plant;
  readonly sections: readonly FollowedSection[];
  readonly split: SectionStep;
  readonly step: StepSolver;
  readonly pipeLength: number;
  readonly loads: ArrayLike<number>;
  readonly direct: boolean;
  readonly supplies: ArrayLike<number> | undefined;
  readonly hotLoads: ArrayLike<number> | undefined;
  readonly first: number;
}

/**
 * Follows sections through one year, from the start of the loop to the step before it.
 *
 * @param run - the loop; its memories are those of the end of the year afterwards
 * @param course - filled with every step of the year
 * @param sectionCourses - the same of each section
 * @returns in how many steps the fluid may have had other states
 */
export function runSectionYear(run: SectionRun, course: Course, sectionCourses: readonly SectionCourse[]): number {
  const { plant, sections, split, step, pipeLength, loads, direct, supplies, hotLoads, first } = run;
  const count = loads.length;
  // How much harder the fluid that comes back is at the end of runs: by what each section does to the mix.
  const colderBy = (fraction: number, heatOf: (part: SectionPart) => number): number =>
    sections.reduce((sum, { part, endOfRun }) => {
      return endOfRun === undefined ? sum : sum + (part.weight * heatOf(part) * endOfRun(fraction)) / part.pipeLength;
    }, 0);
  const ofWhole = (share: number): number => pipeLength * colderBy(share, ({ weight }) => weight);
  const endsRuns = sections.some(({ endOfRun }) => endOfRun !== undefined);
  let manyStates = 0;
  let ran = false;
  let index = first;
  for (let n = 0; n < count; n += 1) {
    const load = loads[index] ?? 0;
    for (const { part, memory, ground, lastHeat } of sections) part.rest = (ground[index] ?? 0) - memory.pass(lastHeat);
    const hotLoad = hotLoads === undefined ? 0 : (hotLoads[index] ?? 0);
    const runs = (load !== 0 && (direct || (load > 0 ? plant.heats : plant.cools))) || hotLoad > 0;
    if (runs) {
      const mix = plant.priority ?? (load > 0 ? plant.heatingMix : plant.coolingMix);
      step.load = load;
      if (plant.priority !== undefined) plant.priority.hotLoad = hotLoad;
      if (supplies !== undefined) mix?.turnTo(supplies[index] ?? Number.NaN);
      split.solve(step, !ran);
      const colder = endsRuns && step.runFraction < 1 ? colderBy(step.runFraction, ({ heat }) => heat) : 0;
      course.enteringFluids[index] = step.entering - colder;
      course.leavingFluids[index] = step.leaving - colder;
      course.runShares[index] = step.runFraction * step.stretch;
      course.groundHeats[index] = step.meanHeat;
      course.unitPowers[index] = step.runFraction * step.power;
      course.pumpPowers[index] = step.runFraction * step.circulation;
      course.unmetLoads[index] = step.unmet;
      if (step.manyStates || split.apart) manyStates += 1;
      if (mix !== undefined) followLevels(step, mix, course, index, endsRuns ? ofWhole : undefined, pipeLength);
      else if (course.fullHeatShares !== course.runShares) course.fullHeatShares[index] = step.runFraction;
    } else {
      split.pause();
      restIn(course, index, load);
    }
    ran = runs;
    course.walls[index] = keepSections(sections, sectionCourses, index, runs) / pipeLength;
    index = index + 1 === count ? 0 : index + 1;
  }
  for (const { memory, lastHeat } of sections) memory.close(lastHeat);
  for (const section of sections) section.lastHeat = 0;
  return manyStates;
}

/** A step in which the unit rests. */
function restIn(course: Course, index: number, load: number): void {
  course.enteringFluids[index] = Number.NaN;
  course.leavingFluids[index] = Number.NaN;
  course.runShares[index] = 0;
  course.groundHeats[index] = 0;
  course.unitPowers[index] = 0;
  course.pumpPowers[index] = 0;
  course.unmetLoads[index] = load;
}

/** Keeps what a step did to the sections; returns their walls times their lengths, together. */
function keepSections(sections: readonly FollowedSection[], courses: readonly SectionCourse[], index: number, runs: boolean): number {
  let walls = 0;
  for (let k = 0; k < sections.length; k += 1) {
    const section = sections[k];
    const own = courses[k];
    if (section === undefined || own === undefined) break;
    const { part } = section;
    own.groundHeats[index] = part.groundHeat;
    own.walls[index] = part.wall;
    own.meanFluids[index] = runs ? part.fluid : Number.NaN;
    section.lastHeat = part.groundHeat / part.pipeLength;
    walls += part.wall * part.pipeLength;
  }
  return walls;
}
