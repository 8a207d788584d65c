import type { Finding } from '../findings/index.js';
import {
  type Heave,
  heaveRisk,
  heaveShape,
  iceRoomOf,
  type IceSimulation,
  type IceSoil,
  type RootZone,
  rootZone,
  rootZoneShape,
  simulateWithIce,
  type YearOfIce,
  yearOfIceShape,
} from '../operation/index.js';
import type { Source } from '../references/index.js';
import type { TextureClass } from '../soil/index.js';
import type { Diameter, Length, Shape } from '../units/index.js';
import { atPlace } from './at-place.js';
import { type FollowIce, highestRoots } from './fill-input.js';
import { groundAtPipes, type SurfaceWaves } from './ground-at-pipes.js';
import { type FluidOfYear, fluidOfYear, fluidOfYearShape } from './loop-by-hours.js';
import type { SolvedByHours } from './solve-by-hours.js';

/** The ice around the pipes of the loop laid, in the year that repeats. */
export interface PlanIce {
  /** Whether ice counts; not in dry soil, nor where frost from above reaches the pipes. */
  readonly credited: boolean;
  /** The fluid by conduction alone: the reserve, which the loop is sized by. */
  readonly withoutIce: FluidOfYear;
  /** The fluid with the ice that counts. */
  readonly withIce: FluidOfYear;
  /** The ice, by month as well. */
  readonly iceYear: YearOfIce;
  /** How much frost around the pipes may lift the ground. */
  readonly heave: Omit<Heave, 'findings' | 'sources'>;
  /** The roots of what grows over the loop; absent where the pipes leave no room for them, and where the ice does not thaw. */
  readonly roots?: Omit<RootZone, 'sources'>;
}

/** Shape of {@link PlanIce}. */
export const planIceShape: Shape<PlanIce> = {
  credited: 'flag',
  withoutIce: fluidOfYearShape,
  withIce: fluidOfYearShape,
  iceYear: yearOfIceShape,
  heave: heaveShape,
  roots: { optional: rootZoneShape },
};

/** What the ice is followed from beside the loop. */
export interface IceFacts {
  readonly asked: FollowIce;
  readonly soil: IceSoil;
  readonly textureClass: TextureClass;
  readonly surface: SurfaceWaves;
  readonly outsideDiameter: Diameter;
}

/** Roots of grass where nothing else is said [m]. */
const USUAL_ROOTS = 0.2 as Length;
const HOURS_OF_DAY = 24;
const DAYS = 365;

/**
 * Follows the loop of the plan with the ice around its pipes, in its native ground.
 *
 * @param solved - the loop chosen
 * @param facts - soil and what is asked
 * @returns the fluid without and with ice, ice, heave and roots
 * @throws InputError at the layout, where pipes lie so near to one another that there is no room for ice
 */
export function planIce(
  { topology, followedLength, chosen: { layout } }: SolvedByHours,
  facts: IceFacts,
): { readonly ice: PlanIce; readonly findings: readonly Finding[]; readonly sources: readonly Source[] } {
  const { soil, asked, textureClass, outsideDiameter } = facts;
  const run = atPlace('field.layout', () =>
    simulateWithIce({
      ...topology,
      pipeLength: followedLength,
      withCourse: true,
      freezingGround: { ...iceRoomOf(layout), soil, outsideDiameter },
    }),
  );
  const { credited, withoutIce, withIce, iceOfLastYear } = run;
  const { structureDistance, rootDepth = USUAL_ROOTS } = asked;
  const { findings, sources, ...heave } = heaveRisk({
    ...{ textureClass, waterByVolume: soil.waterByVolume, ...iceOfLastYear },
    ...(structureDistance !== undefined && { structureDistance }),
  });
  const roomy = withIce.repeats && rootDepth < highestRoots(layout.pipes);
  const { sources: rootSources, ...roots } = roomy ? rootsOf(run, followedLength, layout, rootDepth, facts) : { sources: [] };
  return {
    ice: {
      credited,
      withoutIce: fluidOfYear(withoutIce.lastYear),
      withIce: fluidOfYear(withIce.lastYear),
      iceYear: iceOfLastYear,
      heave,
      ...('largestCooling' in roots && { roots }),
    },
    findings: [...run.findings, ...findings],
    sources: [...run.sources, ...sources, ...rootSources],
  };
}

/** The roots by the heat that each day takes from afar. */
function rootsOf(
  { withIce, iceCourse }: IceSimulation,
  pipeLength: number,
  layout: SolvedByHours['chosen']['layout'],
  rootDepth: Length,
  { surface, soil }: IceFacts,
): RootZone {
  const heats = withIce.lastYear.course?.groundHeats ?? [];
  const dailyHeats = Array.from({ length: DAYS }, (_, day) => {
    let sum = 0;
    for (let hour = day * HOURS_OF_DAY; hour < (day + 1) * HOURS_OF_DAY; hour += 1) {
      sum += (heats[hour] ?? 0) / pipeLength - (iceCourse?.iceHeats[hour] ?? 0);
    }
    return sum / HOURS_OF_DAY;
  });
  const { onDay } = groundAtPipes(surface, soil.thawed, {
    ...layout,
    pipes: layout.pipes.slice(0, 1).map((pipe) => ({ ...pipe, depth: rootDepth })),
  });
  const rootGround = Array.from({ length: DAYS }, (_, day) => onDay(day + 2, DAYS));
  return rootZone({ layout, soil: soil.thawed, dailyHeats, rootGround, rootDepth });
}
