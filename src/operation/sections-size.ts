import { demand, demandCount, InputError } from '../errors/index.js';
import type { PipeLength } from '../units/index.js';
import { judgedLoads } from './books.js';
import { bindingLimit, type BindingLimit, demandLimits, type FluidLimits } from './fluid-limits.js';
import { withinBounds } from './loop-years.js';
import { emptyCourse } from './run-year.js';
import { demandSections, flowedSections } from './section-demand.js';
import type { FlowedSection, SectionsInput } from './section-input.js';
import { emptySectionCourses, type SectionedSimulation } from './section-result.js';
import { filmTable, SectionYears, type WarmSections } from './section-years.js';
import { followSections, sectionPlant } from './sections-simulate.js';
import { extremesOf } from './simulated-year.js';
import { bracketLengths, narrowLengths } from './size-loop.js';
import { neverRuns, type Tried } from './sizing-refusals.js';

/** What {@link sizeSections} needs. */
export interface SizeSectionsInput extends Omit<SectionsInput, 'withCourse'> {
  /** What the fluid must keep. */
  readonly limits: FluidLimits;
  /** Which sections may change in length, from 0, each once; all of them when left out. */
  readonly sizedSections?: readonly number[];
  /** Shortest length of these together, 1 to 1e6; 1 m when left out [m]. */
  readonly shortest?: PipeLength;
  /** Longest length of these together, above the shortest, at most 1e6; 1e6 m when left out [m]. */
  readonly longest?: PipeLength;
}

/** The shortest sections that keep their limits. */
export interface SizedSections {
  /** Pipe of the sections that were sized, together [m]. */
  readonly exactLength: PipeLength;
  /** Pipe of every section, in the order given [m]. */
  readonly sectionLengths: readonly PipeLength[];
  /** The limit that binds, with its hour. */
  readonly binding: BindingLimit;
  /** These sections through their years. */
  readonly simulation: SectionedSimulation;
  /** How many lengths were simulated. */
  readonly lengthsTried: number;
}

/** A margin for lengths so short that the fluid leaves all bounds [K]. */
const OUT_OF_BOUNDS = -100;

/**
 * The shortest pipe with which sections in parallel keep the limits of the fluid: of one section, as an extension beside an old loop, or of several that keep
 * their proportions.
 *
 * The lengths given are where the search begins, and the proportions. Flow by length, as when circuits are added, keeps the film; flows of a network are
 * asked for anew at each length, and must not starve a section that grows.
 *
 * @param input - see {@link SizeSectionsInput}
 * @returns the lengths, the limit that binds, and the simulation of just these
 * @throws InputError as {@link simulateSections} and {@link sizeLoop} do; `unreachable` when not even endless pipe of these sections keeps a limit
 * @remarks The search of {@link sizeLoop}. Invariants tested: what it finds keeps the limits, 0.1 % less does not; a single section comes out as `sizeLoop` finds it.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } = await import('../units/index.js');
 * const wave = Array.from({ length: 8760 }, (_, step) => Math.cos((2 * Math.PI * (step / 24 - 20)) / 365));
 * const section = {
 *   pipeLength: pipeMetres(300),
 *   ground: wave.map((each) => 10 - 5 * each),
 *   response: { terms: [{ timeConstant: hours(2000), rise: pipeMetreKelvinPerWatt(0.6) }], steadyRise: pipeMetreKelvinPerWatt(0.6) },
 *   resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
 * };
 * const { sectionLengths, binding } = sizeSections({
 *   step: hours(1),
 *   duty: { from: 'ground', loads: wave.map((each) => 5000 * Math.max(0, each)) },
 *   heatCapacityRate: wattsPerKelvin(2000),
 *   sections: [section, section],
 *   sizedSections: [1], // the first stays as it is
 *   limits: { lowestEntering: celsius(-1) },
 * });
 * expect(sectionLengths[0]).toBe(300);
 * expect(binding.limitMargin).toBeGreaterThanOrEqual(0);
 * ```
 */
export function sizeSections(input: SizeSectionsInput): SizedSections {
  const { limits, sections, sectionFlows, duty, step, years, shortest = 1 as PipeLength, longest = 1e6 as PipeLength } = input;
  demandLimits(limits);
  demand('shortest', 'pipe length', shortest, { atLeast: 1, atMost: 1e6 });
  demand('longest', 'pipe length', longest, { atLeast: shortest, atMost: 1e6 });
  demandSections(input);
  const sized = sizedOf(input);
  const whole = sections.reduce((sum, { pipeLength }, index) => (sized.has(index) ? sum + pipeLength : sum), 0);
  const scaled = (length: number): readonly FlowedSection[] => {
    const lengths = sections.map((section, index) =>
      sized.has(index) ? { ...section, pipeLength: ((section.pipeLength * length) / whole) as PipeLength } : section,
    );
    return flowedSections(lengths, sectionFlows);
  };
  const plant = sectionPlant(input);
  const films = sections.map(filmTable);
  const course = emptyCourse(duty.loads.length, plant);
  const courses = emptySectionCourses(duty.loads.length, sections.length);
  let like: WarmSections | undefined;
  let lengthsTried = 0;
  const attempt = (wanted: number): Tried<WarmSections> => {
    const length = wanted as PipeLength;
    lengthsTried += 1;
    const loop = new SectionYears(input, scaled(wanted), plant, films, course, courses);
    const binding = withinBounds(() => {
      loop.run();
      const yearOne = extremesOf(judgedLoads(duty), course, step);
      if (years === undefined && loop.settle(like)) like = loop.warm;
      while (years !== undefined && loop.years < years) loop.run();
      const found = bindingLimit({ yearOne, lastYear: extremesOf(judgedLoads(duty), course, step) }, limits);
      if (found === undefined) throw neverRuns();
      return found;
    });
    if (binding === undefined) return { length, margin: OUT_OF_BOUNDS };
    return { length, margin: binding.limitMargin, outcome: { binding, warm: loop.warm } };
  };
  const { kept, missed } = bracketLengths(attempt, shortest, longest, Math.min(Math.max(whole, shortest), longest));
  const { length, outcome } = missed === undefined ? kept : narrowLengths(kept, missed, attempt);
  const found = scaled(length);
  const simulation = followSections(input, found, plant, films, outcome.warm);
  return {
    exactLength: length,
    sectionLengths: found.map(({ pipeLength }) => pipeLength),
    binding: bindingLimit(simulation, limits) ?? outcome.binding,
    simulation,
    lengthsTried,
  };
}

/** Which sections are sized. */
function sizedOf({ sections, sizedSections }: SizeSectionsInput): ReadonlySet<number> {
  if (sizedSections === undefined) return new Set(sections.keys());
  demandCount('sizedSections', sizedSections, 1, sections.length);
  sizedSections.forEach((index, place) => {
    demand(`sizedSections.${String(place)}`, 'count', index, { atLeast: 0, atMost: sections.length - 1 });
  });
  const sized = new Set(sizedSections);
  if (sized.size === sizedSections.length) return sized;
  throw new InputError({ code: 'impossible', argument: 'sizedSections', value: undefined, allowed: 'each section once' });
}
