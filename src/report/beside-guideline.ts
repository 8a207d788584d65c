import { type AreaGuideline, areaGuidelineShape, guidelineAreaExtraction, type GuidelineSoil } from '../operation/index.js';
import type { Finding } from '../findings/index.js';
import type { LoopPlan } from '../plan/index.js';
import type { HeatFlux, Power, Shape, Time, TrenchLength } from '../units/index.js';
import { guidelineSoils } from './guideline-soils.js';

/** What the guideline allows in one of its soils, and the trench that holds its pipe. */
export interface GuidelineClass extends AreaGuideline {
  /** The soil as the guideline names it. */
  readonly soil: GuidelineSoil;
  /** Trench of this plan's section that holds as much pipe [m]. */
  readonly trench: TrenchLength;
}

/** The plan beside the area guideline, by the ground heat at design and the hours in which it would be the year's. */
export interface ComparedGuideline {
  /** It can be compared. */
  readonly comparison: 'made';
  /** Hours a year at full load that hold the year's ground heat [s]. */
  readonly fullLoadHours: Time;
  /** Ground heat at design over the land under the trenches, half a spacing around them [W/m2]. */
  readonly heatPerLand: HeatFlux;
  /** The guideline's soil, or two neighbours where the soil at the pipes lies between. */
  readonly classes: readonly GuidelineClass[];
}

/** No comparison, and why. */
export interface NoGuideline<Why extends string> {
  /** A loop that hardly heats, or organic soil at the pipes: the guideline is for neither. */
  readonly comparison: Why;
}

/** The plan beside the area guideline, or why it is not. */
export type BesideGuideline = ComparedGuideline | NoGuideline<'hardly heats'> | NoGuideline<'organic soil'>;

/** Shape of {@link BesideGuideline}. */
export const besideGuidelineShape: Shape<BesideGuideline> = {
  by: 'comparison',
  oneOf: {
    made: {
      fullLoadHours: 'time',
      heatPerLand: 'heat flux',
      classes: {
        list: {
          ...areaGuidelineShape,
          soil: ['dry non-cohesive', 'damp cohesive', 'water-saturated sand or gravel'],
          trench: 'trench length',
        },
      },
    },
    'hardly heats': {},
    'organic soil': {},
  },
};

const HOUR = 3600;
const YEAR = 8784 * HOUR;

/** A {@link BesideGuideline} with its findings. */
export type BesideGuidelineResult = BesideGuideline & {
  /** What to look at. */
  readonly findings: readonly Finding[];
};

/**
 * A plan beside the area guideline: the land and the pipe that it would have for the same heat.
 *
 * To compare with, never to dig by. The guideline counts on ice around the pipes, for which the plan gives no credit: beside a loop without ice it
 * looks 30 to 40 % too small. It lays pipes 0.8 m apart all over its area, and trenches far apart use more land and less of it, so that the pipe
 * compares better than the land.
 *
 * The soil of the layers that pipes lie in decides the class: sand and gravel, dry or full of water, and cohesive soil that is not dry have their own;
 * what lies between has two neighbours, chosen by its conductivity; organic soil has none.
 *
 * @param plan - of a loop that heats
 * @returns hours at full load, heat per land, and what each class allows; or why there is no comparison
 * @remarks Source: `areaGuideline2001`; the class of a soil `common practice`. Tested: the land is the heat over what the class allows, the pipe the
 * land over 0.8 m; classes by a table of soils.
 * @example
 * ```ts @import.meta.vitest
 * const { demoDocument } = await import('../demo.data.js');
 * const { inputDocument } = await import('../document/index.js');
 * const { planLoop } = await import('../plan/index.js');
 * const beside = besideGuideline(planLoop(inputDocument().read(demoDocument)));
 * expect(beside.comparison === 'made' && beside.classes.map(({ soil }) => soil)).toEqual(['damp cohesive']);
 * ```
 */
export function besideGuideline({ soil: { layers }, loop: { land, layout }, byHours, heating }: LoopPlan): BesideGuidelineResult {
  const groundHeat = heating?.unit.performance.groundHeat ?? (0 as Power);
  const { groundEnergy } = byHours.heating;
  if (groundHeat < 1 || groundEnergy < HOUR * groundHeat) return { comparison: 'hardly heats', findings: [] };
  const soils = layout.pipes.map(({ depth }) => {
    const at = layers.find(({ bottom }) => depth <= bottom) ?? layers.at(-1);
    return at === undefined ? [] : guidelineSoils(at);
  });
  if (soils.some((classes) => classes.length === 0)) return { comparison: 'organic soil', findings: [] };
  const fullLoadHours = Math.min(groundEnergy / groundHeat, YEAR) as Time;
  const read = [...new Set(soils.flat())].map((soil) => {
    const { findings, ...allowed } = guidelineAreaExtraction({ soil, fullLoadHours, groundHeat });
    return { findings, allowed: { ...allowed, soil, trench: (allowed.pipe / layout.pipesPerTrench) as TrenchLength } };
  });
  return {
    comparison: 'made',
    fullLoadHours,
    heatPerLand: (groundHeat / land) as HeatFlux,
    classes: read.map(({ allowed }) => allowed).sort((a, b) => a.typical - b.typical),
    // Every class is read at the same hours.
    findings: read[0]?.findings ?? [],
  };
}
