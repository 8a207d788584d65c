import { demand, demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Area, HeatFlux, PipeLength, Power, Shape, Time } from '../units/index.js';
import { AREA_EXTRACTION, type GuidelineSoil } from './guidelines.data.js';

/** What {@link guidelineAreaExtraction} needs. */
export interface AreaGuidelineInput {
  /** The soil as the guideline names it. */
  readonly soil: GuidelineSoil;
  /** Hours a year at full load that hold the year's ground heat, 1 h to a year [s]. */
  readonly fullLoadHours: Time;
  /** Heat taken from the ground at design, of the evaporator and not of the house, 1 to 1e8 [W]. */
  readonly groundHeat: Power;
}

/** What the guideline allows, and the land it asks for. */
export interface AreaGuideline {
  /** Full-load hours it was read at [s]. */
  readonly readAt: Time;
  /** Extraction per area, lower end [W/m2]. */
  readonly low: HeatFlux;
  /** Extraction per area, usual [W/m2]. */
  readonly typical: HeatFlux;
  /** Extraction per area, upper end [W/m2]. */
  readonly high: HeatFlux;
  /** Land at the upper end [m2]. */
  readonly smallestArea: Area;
  /** Land at the usual value [m2]. */
  readonly typicalArea: Area;
  /** Land at the lower end [m2]. */
  readonly largestArea: Area;
  /** Pipe in the land at the usual value, laid 0.8 m apart [m]. */
  readonly pipe: PipeLength;
}

/** An {@link AreaGuideline} with its findings. */
export interface AreaGuidelineResult extends AreaGuideline {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link AreaGuideline}. */
export const areaGuidelineShape: Shape<AreaGuideline> = {
  readAt: 'time',
  low: 'heat flux',
  typical: 'heat flux',
  high: 'heat flux',
  smallestArea: 'area',
  typicalArea: 'area',
  largestArea: 'area',
  pipe: 'pipe length',
};

const HOUR = 3600;

/**
 * Extraction per area of a horizontal collector by the guideline of 2001, as a band to compare with.
 *
 * Holds for pipes about 0.8 m apart in the climate it was written for, and lives on ice: compare it with a result that includes freezing. Between
 * 1800 and 2400 hours a year it is interpolated; beyond, the nearer end is read and a finding says so. Divide the heat of the ground by it, not the
 * heat of the house.
 *
 * @param input - see {@link AreaGuidelineInput}
 * @returns extraction per area [W/m2], land [m2] and pipe [m]
 * @throws InputError for a value out of its range
 * @remarks Source: VDI 4640-2:2001, quoted; checked against the reprinted table and two published worked examples (LS-40, LS-41). A newer edition,
 * by climate zone, has replaced it. Invariants tested: falls with the hours, low ≤ typical ≤ high, land proportional to heat.
 * @example
 * ```ts @import.meta.vitest
 * const { hours, squareMetres, kilowatts } = await import('../units/index.js');
 * const guideline = guidelineAreaExtraction({ soil: 'damp cohesive', fullLoadHours: hours(1800), groundHeat: kilowatts(7.5) });
 * expect(guideline.typical).toBe(25);
 * expect(squareMetres.of(guideline.typicalArea)).toBe(300);
 * ```
 */
export function guidelineAreaExtraction({ soil, fullLoadHours, groundHeat }: AreaGuidelineInput): AreaGuidelineResult {
  demandChoice('soil', soil, Object.keys(AREA_EXTRACTION.soils));
  demand('fullLoadHours', 'time', fullLoadHours, { atLeast: HOUR, atMost: 8784 * HOUR });
  demand('groundHeat', 'power', groundHeat, { atLeast: 1, atMost: 1e8 });
  const [fewer, more] = AREA_EXTRACTION.hours;
  const readAt = Math.min(Math.max(fullLoadHours, fewer * HOUR), more * HOUR);
  const between = (readAt / HOUR - fewer) / (more - fewer);
  const read = (which: 'low' | 'typical' | 'high'): number => {
    const [atFewer, atMore] = AREA_EXTRACTION.soils[soil][which];
    return atFewer + between * (atMore - atFewer);
  };
  const [low, typical, high] = [read('low'), read('typical'), read('high')];
  const outside: Finding = {
    code: 'guideline-hours-outside',
    level: 'note',
    values: { fullLoadHours, read: readAt as Time },
    source: AREA_EXTRACTION.source,
  };
  return {
    readAt: readAt as Time,
    low: low as HeatFlux,
    typical: typical as HeatFlux,
    high: high as HeatFlux,
    smallestArea: (groundHeat / high) as Area,
    typicalArea: (groundHeat / typical) as Area,
    largestArea: (groundHeat / low) as Area,
    pipe: (groundHeat / typical / AREA_EXTRACTION.pipeSpacing) as PipeLength,
    findings: readAt === fullLoadHours ? [] : [outside],
  };
}
