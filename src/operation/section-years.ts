import { riseBeyondMean } from './end-of-run.js';
import { storedPerLength } from './fluid-store.js';
import { GroundMemory } from './ground-memory.js';
import { LazyTable } from './lazy-table.js';
import { demanded, type Plant } from './plant.js';
import type { FlowedSection, SectionsInput } from './section-input.js';
import { SectionPart } from './section-part.js';
import type { SectionCourse } from './section-result.js';
import { SectionStep } from './section-step.js';
import { type FollowedSection, runSectionYear, type SectionRun } from './section-year.js';
import type { Course, SimulationInput } from './simulation.js';
import { StepSolver } from './step-solver.js';

const DAY = 86_400;
/** A year repeats when the ground of every section is this near to the one that it would settle at [K]. */
const REPEATING = 5e-4;
/** The correction settles in three or four years. */
const MOST_YEARS = 30;

/** What sections of like lengths left behind at the start of their repeating year: changes of each, times its length [K.m]. */
export type WarmSections = readonly Float64Array[];

/** A film over the mean fluid, tabulated for all lengths. */
export function filmTable({ resistanceAt }: Pick<SimulationInput, 'resistanceAt'>, index: number): LazyTable {
  const path = `sections.${String(index)}.resistanceAt`;
  return new LazyTable((fluid) => demanded(path, 'pipe resistance', resistanceAt(fluid as Parameters<typeof resistanceAt>[0]), 100));
}

/** Sections that are followed year by year. A class for the reason of `LoopYears`. */
export class SectionYears {
  /** Every step of the year followed last; the next one overwrites it. */
  course: Course;
  /** The same of each section. */
  sectionCourses: readonly SectionCourse[];
  /** How many were followed. */
  years = 0;
  /** In how many steps of the last the fluid may have had other states. */
  manyStates = 0;
  #before: readonly Float64Array[];
  /** Mean fluid of each section at the start of the year followed last [degC]. */
  #fluidsBefore: readonly number[] = [];
  readonly #run: SectionRun;
  readonly #year: number;

  /**
   * A loop that has not worked yet, but for what its sections did in earlier years.
   *
   * @param input - checked
   * @param sections - with their flows
   * @param plant - tables that other lengths share
   * @param films - of each section, which they share too
   * @param course - room for the steps of a year
   * @param sectionCourses - the same for each section
   */
  constructor(
    input: Omit<SectionsInput, 'sections'>,
    sections: readonly FlowedSection[],
    plant: Plant,
    films: readonly LazyTable[],
    course: Course,
    sectionCourses: readonly SectionCourse[],
  ) {
    this.course = course;
    this.sectionCourses = sectionCourses;
    this.#run = runOf(input, sections, plant, films);
    this.#before = this.#changes();
    this.#year = input.step * input.duty.loads.length;
  }

  /** Follows one more year. */
  run(): void {
    this.#before = this.#changes();
    this.#fluidsBefore = this.#run.sections.map(({ part }) => part.before);
    this.manyStates = runSectionYear(this.#run, this.course, this.sectionCourses);
    this.years += 1;
  }

  /**
   * Follows the years that it takes until one repeats, each part of every memory corrected with its own decay.
   *
   * @param like - sections of other lengths that repeat, to start from; else the year followed last
   * @returns whether the last year repeats
   */
  settle(like?: WarmSections): boolean {
    const { sections } = this.#run;
    if (like !== undefined) {
      sections.forEach(({ memory, part }, index) => {
        memory.changes.set((like[index] ?? memory.changes).map((change) => change / part.pipeLength));
      });
      this.run();
    }
    for (;;) {
      const moved = sections.map(({ memory }, index) => {
        const before = this.#before[index] ?? memory.changes;
        memory.correctToRepeating(before, this.#year);
        return memory.changes.reduce((sum, change, term) => sum + Math.abs(change - (before[term] ?? 0)), 0);
      });
      if (Math.max(...moved) <= REPEATING) return true;
      if (this.years >= MOST_YEARS) return false;
      this.run();
    }
  }

  /**
   * What the last year began with, for sections of other lengths.
   *
   * @returns changes of each, times its length [K.m]
   */
  get warm(): WarmSections {
    return this.#run.sections.map(({ part }, index) => (this.#before[index] ?? new Float64Array()).map((change) => change * part.pipeLength));
  }

  /**
   * Change of the mean wall of all pipe over the last year, beyond what the seasons do.
   *
   * @returns [K]
   */
  get drift(): number {
    const { sections, pipeLength } = this.#run;
    return sections.reduce((sum, { memory, part }, index) => {
      const own = memory.changes.reduce((all, change, term) => all + (this.#before[index]?.[term] ?? 0) - change, 0);
      return sum + (own * part.pipeLength) / pipeLength;
    }, 0);
  }

  /**
   * How much warmer the fluid of each section is at the end of the last year than at its start.
   *
   * @returns [K]
   */
  get storedRises(): readonly number[] {
    return this.#run.sections.map(({ part }, index) => part.before - (this.#fluidsBefore[index] ?? Number.NaN));
  }

  #changes(): readonly Float64Array[] {
    return this.#run.sections.map(({ memory }) => memory.changes.slice());
  }
}

function runOf(input: Omit<SectionsInput, 'sections'>, sections: readonly FlowedSection[], plant: Plant, films: readonly LazyTable[]): SectionRun {
  const { duty, step, start, cyclesPerHour } = input;
  const { loads } = duty;
  const first = Math.round((((start ?? 1) - 1) * DAY) / step) % loads.length;
  const followed = sections.map(({ response, ground, pipeLength, flowFraction, earlierWork, fluidStore }, index): FollowedSection => {
    const memory = new GroundMemory(response.terms, step);
    const storing = fluidStore === undefined ? 0 : (storedPerLength(fluidStore) * pipeLength) / step;
    const part = new SectionPart(pipeLength, memory.stepRise, plant.halfRange / flowFraction, storing, films[index] ?? plant.resistance);
    if (earlierWork !== undefined) work(memory, earlierWork, pipeLength, first);
    part.rest = ground[first] ?? 0;
    part.before = part.rest;
    part.fluid = part.rest;
    return {
      part,
      memory,
      ground,
      endOfRun: cyclesPerHour === undefined ? undefined : (fraction) => riseBeyondMean(response.terms, 3600 / cyclesPerHour, fraction),
      lastHeat: 0,
    };
  });
  const pipeLength = sections.reduce((sum, section) => sum + section.pipeLength, 0);
  const split = new SectionStep(
    followed.map(({ part }) => part),
    pipeLength,
    plant.halfRange,
  );
  const direct = duty.from === 'ground';
  return {
    plant,
    sections: followed,
    split,
    step: new StepSolver({ ...plant, resistance: split.film }, pipeLength, 0, direct),
    pipeLength,
    loads,
    direct,
    supplies: duty.from === 'building' ? duty.supplyTemperatures : undefined,
    hotLoads: duty.from === 'building' ? duty.hotWater?.loads : undefined,
    first,
  };
}

/** What years of earlier work leave behind in the ground. */
function work(memory: GroundMemory, { years, groundHeats }: NonNullable<FlowedSection['earlierWork']>, pipeLength: number, first: number): void {
  const count = groundHeats.length;
  let last = 0;
  for (let n = 0; n < years * count; n += 1) {
    memory.pass(last);
    last = (groundHeats[(first + n) % count] ?? 0) / pipeLength;
  }
  memory.close(last);
}
