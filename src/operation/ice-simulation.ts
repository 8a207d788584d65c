import { demand, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { type Layout } from '../ground/index.js';
import type { ReferenceKey } from '../references/index.js';
import type { Diameter, Length, Shape } from '../units/index.js';
import type { IceCourse, YearOfIce } from './ice-result.js';
import { demandIceSoil, type IceSoil, iceSoilShape } from './ice-soil.js';
import type { Simulation, SimulationInput } from './simulation.js';

/** Room for ice around the pipes. */
export interface IceRoom {
  /** Distance between the axes of the two pipes that lie nearest to one another, 0.05 to 1000; a pipe alone when left out [m]. */
  readonly nearestPipe?: Length;
  /** Depth of the pipe nearest to the surface, 0.1 to 50 [m]. */
  readonly shallowestDepth: Length;
  /** Land over pipe: the trench spacing over the pipes in a trench, or the pitch of a collector, 0.02 to 1000 [m]. */
  readonly landWidth: Length;
}

/** The ground that may freeze, and the pipes in it. */
export interface IceAround extends IceRoom {
  /** The soil at the pipes; `thawed` is the soil of the response. */
  readonly soil: IceSoil;
  /** Outside diameter of the pipes, 0.005 to 0.2 [m]. */
  readonly outsideDiameter: Diameter;
}

/** Shape of {@link IceAround}. */
export const iceAroundShape: Shape<IceAround> = {
  nearestPipe: { optional: 'length' },
  shallowestDepth: 'length',
  landWidth: 'length',
  soil: iceSoilShape,
  outsideDiameter: 'diameter',
};

/** What {@link simulateWithIce} needs. */
export interface IceSimulationInput extends SimulationInput {
  /** The ground that may freeze. */
  readonly freezingGround: IceAround;
}

/** A loop without ice and with it. */
export interface IceSimulation {
  /** Conduction alone: the reserve. */
  readonly withoutIce: Simulation;
  /** The same with the ice that counts: the answer. */
  readonly withIce: Pick<Simulation, 'yearOne' | 'lastYear' | 'repeats' | 'drift'>;
  /** Whether ice counts; not in dry soil. */
  readonly credited: boolean;
  /** As far from the axis of each pipe as ice counts [m]. */
  readonly iceReach: Length;
  /** The ice of the first year. */
  readonly iceOfYearOne: YearOfIce;
  /** The ice of the year that repeats, or of the last one followed. */
  readonly iceOfLastYear: YearOfIce;
  /** The ice of that year step by step, where asked for; what is left of the ground heat without `iceHeats` comes from afar. */
  readonly iceCourse?: IceCourse;
  /** What to look at. */
  readonly findings: readonly Finding[];
  /** What the numbers rest on. */
  readonly sources: readonly ReferenceKey[];
}

/**
 * Room for ice around the pipes of a layout.
 *
 * @param layout - pipes in their trenches
 * @returns nearest pipe, shallowest depth and land over pipe [m]
 * @throws InputError for a layout without pipes
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const { twoPipeStacked } = await import('../ground/index.js');
 * const layout = twoPipeStacked({ upperDepth: metres(1.2), lowerDepth: metres(1.8), trenches: 4, trenchSpacing: metres(3) });
 * expect(iceRoomOf(layout)).toEqual({ nearestPipe: expect.closeTo(0.6, 12), shallowestDepth: 1.2, landWidth: 1.5 });
 * ```
 */
export function iceRoomOf({ pipes, trenches, trenchSpacing }: Layout): IceRoom {
  demand('pipes.length', 'count', pipes.length, { atLeast: 1, atMost: 10_000 });
  const apart = pipes.flatMap((pipe, index) => [
    ...pipes.slice(index + 1).map((other) => Math.hypot(pipe.x - other.x, pipe.depth - other.depth)),
    ...(trenches > 1 ? pipes.map((other) => Math.hypot(trenchSpacing + other.x - pipe.x, pipe.depth - other.depth)) : []),
  ]);
  return {
    ...(apart.length > 0 && { nearestPipe: Math.min(...apart) as Length }),
    shallowestDepth: Math.min(...pipes.map(({ depth }) => depth)) as Length,
    landWidth: (trenchSpacing / pipes.length) as Length,
  };
}

/** Refuses ground and pipes that cannot be. */
export function demandIceAround(ice: IceAround): void {
  demandObject('freezingGround', ice);
  const { soil, outsideDiameter, nearestPipe, shallowestDepth, landWidth } = ice;
  demandIceSoil('freezingGround.soil', soil);
  locate('freezingGround', () => {
    demand('outsideDiameter', 'diameter', outsideDiameter, { atLeast: 0.005, atMost: 0.2 });
    if (nearestPipe !== undefined) {
      demand(
        'nearestPipe',
        'length',
        nearestPipe,
        { atLeast: Math.max(0.05, 1.5 * outsideDiameter), atMost: 1000 },
        'pipes that touch leave no room for ice',
      );
    }
    demand('shallowestDepth', 'length', shallowestDepth, { atLeast: Math.max(0.1, outsideDiameter), atMost: 50 });
    demand('landWidth', 'length', landWidth, { atLeast: 0.02, atMost: 1000 });
  });
}
