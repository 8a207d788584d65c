import { joinedShape } from '../states/index.js';
import type { Energy, Fraction, PipeLength, Ratio, Shape, Temperature } from '../units/index.js';
import { judgedLoads } from './books.js';
import { storedPerLength } from './fluid-store.js';
import type { FlowedSection } from './section-input.js';
import type { SimulatedDuty, Simulation } from './simulation.js';

/** Every step of a year of one section, plain numbers at the end of the step or over it, from 1 January. */
export interface SectionCourse {
  /** Heat taken from the ground, given to it below 0, the mean over the step [W]. */
  readonly groundHeats: Float64Array;
  /** Mean wall of its pipes [degC]. */
  readonly walls: Float64Array;
  /** Its mean fluid; NaN in a step without running [degC]. */
  readonly meanFluids: Float64Array;
}

/** How a section shares pipe and flow. */
export interface SectionShares {
  /** Its active pipe [m]. */
  readonly pipeLength: PipeLength;
  /** Its pipe over that of all [1]. */
  readonly pipeShare: Fraction;
  /** Its flow over that of all [1]. */
  readonly flowFraction: Fraction;
}

/** A year of one section. */
export interface SectionYear extends SectionShares {
  /** Heat taken from its ground in steps of heating, hot water among them, less what it took up then [J]. */
  readonly heatingEnergy: Energy;
  /** Heat given to its ground in steps of cooling, less what it gave then [J]. */
  readonly coolingEnergy: Energy;
  /** Heat taken from its ground over the year less heat given to it, in rests too, where a store comes nearer to the wall [J]. */
  readonly netGroundEnergy: Energy;
  /** The heat of heating over that of all sections; beside `pipeShare` it says how well the section works. Absent without heating [1]. */
  readonly heatingPart?: Ratio;
  /** The same of cooling [1]. */
  readonly coolingPart?: Ratio;
  /** Heat that fluid and pipe wall hold more at the end of the year than at its start; absent without a store [J]. */
  readonly storedEnergy?: Energy;
  /** Coldest wall of the year [degC]. */
  readonly coldestWall: Temperature;
  /** Warmest wall of the year [degC]. */
  readonly warmestWall: Temperature;
  /** Coldest mean fluid of the section while the unit runs; absent where it never does [degC]. */
  readonly coldestMeanFluid?: Temperature;
  /** Warmest mean fluid of the section while the unit runs; absent where it never does [degC]. */
  readonly warmestMeanFluid?: Temperature;
}

/** Shape of {@link SectionShares}. */
export const sectionSharesShape: Shape<SectionShares> = { pipeLength: 'pipe length', pipeShare: 'fraction', flowFraction: 'fraction' };

/** Shape of {@link SectionYear}. */
export const sectionYearShape: Shape<SectionYear> = /* @__PURE__ */ joinedShape(sectionSharesShape, {
  heatingEnergy: 'energy',
  coolingEnergy: 'energy',
  netGroundEnergy: 'energy',
  heatingPart: { optional: 'ratio' },
  coolingPart: { optional: 'ratio' },
  storedEnergy: { optional: 'energy' },
  coldestWall: 'temperature',
  warmestWall: 'temperature',
  coldestMeanFluid: { optional: 'temperature' },
  warmestMeanFluid: { optional: 'temperature' },
});

/** A loop of sections through its first year and the last one followed; heats of the loop are those that leave it, with a store not yet those of the ground. */
export interface SectionedSimulation extends Simulation {
  /** The sections in the first year, in the order given. */
  readonly sectionsOfYearOne: readonly SectionYear[];
  /** The sections in the last year. */
  readonly sectionsOfLastYear: readonly SectionYear[];
  /** Each section of the last year step by step, where asked for. */
  readonly sectionCourses?: readonly SectionCourse[];
}

/** Room for the steps of a year of each section. */
export function emptySectionCourses(count: number, sections: number): readonly SectionCourse[] {
  const zeros = (): Float64Array => new Float64Array(count);
  return Array.from({ length: sections }, () => ({ groundHeats: zeros(), walls: zeros(), meanFluids: zeros() }));
}

/** What a year of each section came to; `storedRises` are how much warmer its fluid is at the end of it than at the start. */
export function sectionYears(
  sections: readonly FlowedSection[],
  courses: readonly SectionCourse[],
  duty: SimulatedDuty,
  step: number,
  storedRises: readonly number[],
): readonly SectionYear[] {
  const loads = judgedLoads(duty);
  const pipe = sections.reduce((sum, { pipeLength }) => sum + pipeLength, 0);
  const sumOf = ({ groundHeats }: SectionCourse, side: 1 | -1): number =>
    side * step * groundHeats.reduce((sum, heat, index) => (side * (loads[index] ?? 0) > 0 ? sum + heat : sum), 0);
  const heating = courses.map((course) => sumOf(course, 1));
  const cooling = courses.map((course) => sumOf(course, -1));
  const all = (energies: readonly number[]): number => energies.reduce((sum, each) => sum + each, 0);
  const [allHeating, allCooling] = [all(heating), all(cooling)];
  return sections.flatMap(({ pipeLength, flowFraction, fluidStore }, index): readonly SectionYear[] => {
    const course = courses[index];
    if (course === undefined) return [];
    const { groundHeats, walls, meanFluids } = course;
    const [ownHeating, ownCooling] = [heating[index] ?? 0, cooling[index] ?? 0];
    const fluid = extent(meanFluids);
    const wall = extent(walls);
    return [
      {
        pipeLength,
        pipeShare: (pipeLength / pipe) as Fraction,
        flowFraction,
        heatingEnergy: ownHeating as Energy,
        coolingEnergy: ownCooling as Energy,
        netGroundEnergy: (step * groundHeats.reduce((sum, heat) => sum + heat, 0)) as Energy,
        ...(allHeating > 0 && { heatingPart: (ownHeating / allHeating) as Ratio }),
        ...(allCooling > 0 && { coolingPart: (ownCooling / allCooling) as Ratio }),
        ...(fluidStore && { storedEnergy: (storedPerLength(fluidStore) * pipeLength * (storedRises[index] ?? 0)) as Energy }),
        coldestWall: wall.least,
        warmestWall: wall.most,
        ...(fluid.least <= fluid.most && { coldestMeanFluid: fluid.least, warmestMeanFluid: fluid.most }),
      },
    ];
  });
}

function extent(series: Float64Array): { readonly least: Temperature; readonly most: Temperature } {
  let least = Infinity;
  let most = -Infinity;
  for (const each of series) {
    if (each < least) least = each;
    if (each > most) most = each;
  }
  return { least: least as Temperature, most: most as Temperature };
}
