import type { Finding } from '../findings/index.js';
import type { Fraction, PipeResistance, TemperatureDifference, Time } from '../units/index.js';
import type { LazyTable } from './lazy-table.js';
import { type Plant, plantOf } from './plant.js';
import { emptyCourse } from './run-year.js';
import { demandSections, flowedSections } from './section-demand.js';
import type { FlowedSection, SectionsInput } from './section-input.js';
import { emptySectionCourses, type SectionedSimulation, type SectionYear, sectionYears } from './section-result.js';
import { filmTable, SectionYears, type WarmSections } from './section-years.js';
import { findingsOf } from './simulate.js';
import { simulatedYear } from './simulated-year.js';
import type { SimulatedYear } from './simulation.js';

/** A section that gives less than this share of what its pipe would give evenly is told [1]. */
const LAGGING = 0.5;

/**
 * Follows a loop of sections in parallel that are unlike in ground, depth, fill, length or age: half a field in clay and half in gravel, an old loop and its
 * extension.
 *
 * The fluid that leaves the unit enters all sections alike and comes back mixed by flow; each section has its own undisturbed ground, response, film at its own
 * mean fluid, and memory. A warm section may give heat to a cold one while the unit draws little. While the unit rests no fluid moves. Everything else is as in
 * {@link simulate}; `resistanceAt` of a section is the film at the flow that the section has.
 *
 * What the sections do to one another through the ground is left out; {@link neighbourChange} says how much that is.
 *
 * With a `fluidStore` the fluid in the pipes and their wall hold heat as one lump at the mean fluid of the section, through a step implicitly: it takes from the
 * hardest steps and gives back after them, and between runs fluid and wall come nearer to one another by the same film. Energies of the loop then are what leaves
 * it, those of the sections what the ground gives. Ends of runs by `cyclesPerHour` are those without the store, the hard side.
 *
 * @param input - see {@link SectionsInput}
 * @returns what {@link simulate} does, and each section of the first and the last year
 * @throws InputError for a value out of its range, as {@link simulate} does; for flows that are not one above 0 for each section
 * @remarks Parallel resistances, exact for the films found; the films by iteration. Checked against full convolution of two sections. Invariants tested: equal sections
 * are one loop; the order does not matter; heats of the sections add up to that of the loop to 1e-9; a section without length changes nothing.
 * @example
 * ```ts @import.meta.vitest
 * const { hours, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } = await import('../units/index.js');
 * const year = Array.from({ length: 8760 }, (_, step) => Math.cos((2 * Math.PI * (step / 24 - 20)) / 365));
 * const section = (metres: number, rise: number) => ({
 *   pipeLength: pipeMetres(metres),
 *   ground: year.map((wave) => 10 - 5 * wave),
 *   response: { terms: [{ timeConstant: hours(2000), rise: pipeMetreKelvinPerWatt(rise) }], steadyRise: pipeMetreKelvinPerWatt(rise) },
 *   resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
 * });
 * const { sectionsOfLastYear } = simulateSections({
 *   step: hours(1),
 *   duty: { from: 'ground', loads: year.map((wave) => 5000 * Math.max(0, wave)) },
 *   heatCapacityRate: wattsPerKelvin(2000),
 *   sections: [section(300, 0.5), section(300, 1)], // wet clay and dry sand
 * });
 * expect(sectionsOfLastYear[0]?.heatingPart).toBeGreaterThan(0.6);
 * ```
 */
export function simulateSections(input: SectionsInput): SectionedSimulation {
  demandSections(input);
  const sections = flowedSections(input.sections, input.sectionFlows);
  return followSections(input, sections, sectionPlant(input), sections.map(filmTable));
}

/** The plant of sections, whose films are their own: the one in it is never read. */
export function sectionPlant({ duty, pump, heatCapacityRate }: Omit<SectionsInput, 'sections'>): Plant {
  return plantOf({ duty, ...(pump && { pump }), heatCapacityRate, resistanceAt: () => Number.NaN as PipeResistance });
}

/** {@link simulateSections} with input that was checked and tables that other lengths share. */
export function followSections(
  input: Omit<SectionsInput, 'sections'>,
  sections: readonly FlowedSection[],
  plant: Plant,
  films: readonly LazyTable[],
  like?: WarmSections,
): SectionedSimulation {
  const { duty, step, years, withCourse = false } = input;
  const count = duty.loads.length;
  const loop = new SectionYears(input, sections, plant, films, emptyCourse(count, plant), emptySectionCourses(count, sections.length));
  const summary = (number: number): readonly [SimulatedYear, readonly SectionYear[]] => [
    simulatedYear(number, duty, loop.course, step, withCourse),
    sectionYears(sections, loop.sectionCourses, duty, step, loop.storedRises),
  ];
  loop.run();
  const [yearOne, sectionsOfYearOne] = summary(1);
  if (withCourse) loop.course = emptyCourse(count, plant);
  const repeats = years === undefined && loop.settle(like);
  while (years !== undefined && loop.years < years) loop.run();
  const [lastYear, sectionsOfLastYear] = loop.years === 1 ? [yearOne, sectionsOfYearOne] : summary(loop.years);
  const conditions = new Set(sections.map(({ response }) => response.wallCondition ?? 'equal flux'));
  return {
    yearOne,
    lastYear,
    repeats,
    drift: loop.drift as TemperatureDifference,
    conventions: {
      wallCondition: conditions.size === 1 && conditions.has('equal temperature') ? 'equal temperature' : 'equal flux',
      temperaturesAt: 'end of step',
      partLoad: input.cyclesPerHour === undefined ? 'even running' : 'end of run',
      circulatorHeat: plant.circulatorHeat as Fraction,
      yearTime: (step * count) as Time,
    },
    findings: [...findingsOf(input, [yearOne, lastYear], loop.manyStates * step), ...laggingSections(sectionsOfLastYear)],
    sources: ['ingersoll1954', 'carslawJaeger1959'],
    sectionsOfYearOne,
    sectionsOfLastYear,
    ...(withCourse && { sectionCourses: loop.sectionCourses }),
  };
}

function laggingSections(sections: readonly SectionYear[]): readonly Finding[] {
  return sections.flatMap(({ pipeShare, heatingPart }, index): readonly Finding[] =>
    heatingPart !== undefined && heatingPart < LAGGING * pipeShare
      ? [{ code: 'section-lags', level: 'note', values: { section: index + 1, heatingPart, pipeShare }, source: 'common practice' }]
      : [],
  );
}
