// Every way to lay pipe that loamloop/ground computes. All trenches are dug to the same depth: what differs is what lies in them.
import {
  areaCollector,
  coilPipe,
  customLayout,
  exponentialResponse,
  exponentialRingResponse,
  flatOverlappedCoil,
  fourPipe,
  type GroundSurface,
  groundResponse,
  type Layout,
  onePipe,
  outAndBack,
  type PipePosition,
  type RingLayout,
  ringResponse,
  ringTrench,
  sixPipe,
  twoPipeSideBySide,
  twoPipeStacked,
  unequalTrenches,
  uprightOverlappedCoil,
} from 'loamloop/ground';
import { type GroundTerms, type IceRoom, iceRoomOf } from 'loamloop/operation';
import { days, type Length, metres, type PipeResistance, type Time } from 'loamloop/units';
import { pipe, soil } from './house.js';

/** What a layout is once it is known how much pipe lies in how many trenches. */
export interface Laid {
  readonly response: GroundTerms & { readonly riseAfter: (time: Time) => PipeResistance };
  /** The rise after some time below a surface that lets no heat through. */
  readonly sealedAfter: (time: Time) => PipeResistance;
  readonly iceRoom: IceRoom;
  /** What out and back do to one another where both lie in one trench. */
  readonly mutual: PipeResistance | undefined;
}

/** One way to lay pipe. */
export interface Kind {
  readonly name: string;
  /** From ring to ring of a coil. */
  readonly pitch?: Length;
  /** Whether the trench is closed, so that nothing lies beyond its ends. */
  readonly closed?: true;
  /** The trenches of one group, unlike ones only where there are several; each as the straight pipes of its cross-section, or those that a coil comes to. */
  readonly sections: readonly (readonly PipePosition[])[];
  /** Metres of pipe to buy for a metre of trench, and metres that the response counts in it. */
  readonly perTrench: { readonly bought: number; readonly counted: number };
  readonly trenchWidth: Length;
  readonly trenchDepth: Length;
  readonly trenchSpacing: Length;
  readonly longestTrench: Length;
  /** Bend of the pipe: half the way from a pipe to the furthest in its trench, as wide as a turn comes there, or the radius of the rings. */
  readonly bendRadius: Length;
  readonly laid: (groups: number, trenchLength: Length) => Laid;
}

export const DEEP = metres(1.8);
export const SHALLOW = metres(1.2);
const SIDE = metres(0.6);
const TRENCH_SPACING = metres(4);
const LONGEST = metres(50);
const ROW_SPACING = metres(0.7);
const RING = metres(0.9);
/** How much deeper than its lowest pipe a trench is dug. */
const UNDER = 0.05;
/** A lasting cold spell, over which out and back are judged. */
export const LASTING = days(30);
const SEALED: GroundSurface = { type: 'adiabatic' };

const shared = { trenchDepth: metres(DEEP + UNDER), trenchSpacing: TRENCH_SPACING, longestTrench: LONGEST };

/** Straight pipes in equal trenches. */
export function straight(name: string, layoutOf: (trenches: number) => Layout, own: { readonly width: number } & Partial<Kind>, back = false): Kind {
  const { pipes, pipesPerTrench } = layoutOf(1);
  const { width, ...rest } = own;
  const across = pipes.flatMap((one, index) => pipes.slice(index + 1).map((other) => Math.hypot(one.x - other.x, one.depth - other.depth)));
  return {
    ...shared,
    name,
    sections: [pipes],
    perTrench: { bought: pipesPerTrench, counted: pipesPerTrench },
    trenchWidth: metres(width),
    bendRadius: metres((across.length === 0 ? TRENCH_SPACING : Math.max(...across)) / 2),
    laid: (trenches) => {
      const layout = layoutOf(trenches);
      const sealed = groundResponse({ layout, pipe, soil, surface: SEALED });
      return {
        response: exponentialResponse({ layout, pipe, soil }),
        sealedAfter: sealed.riseAfter,
        iceRoom: iceRoomOf(layout),
        mutual: back ? outAndBack({ layout, pipe, soil, time: LASTING }).mutualResistance : undefined,
      };
    },
    ...rest,
  };
}

/** Pipe laid in rings; the room for ice is told by whoever lays them. */
function inRings(layout: RingLayout, iceRoom: IceRoom): Laid {
  const sealed = ringResponse({ layout, pipe, soil, surface: SEALED });
  return { response: exponentialRingResponse({ layout, pipe, soil }), sealedAfter: sealed.riseAfter, iceRoom, mutual: undefined };
}

/** A coil, flat or upright, with its return in the trench. In the cross-section it is as many straight pipes as metres of it lie in a metre of trench. */
function coil(way: 'flat' | 'upright', pitch: Length): Kind {
  const flat = way === 'flat';
  const depth = flat ? DEEP : metres(DEEP - RING / 2);
  const returnPipe = { x: metres(0), depth: metres(flat ? DEEP - 0.3 : DEEP - RING - 0.15) };
  const { ringPipePerTrench, pipePerTrench, circlesPerTrench } = coilPipe({ ringDiameter: RING, pitch });
  const count = Math.round(ringPipePerTrench);
  // A ring has most of its pipe at its sides.
  const offsets = Array.from({ length: count }, (_, index) => (RING / 2) * Math.cos((Math.PI * (index + 0.5)) / count));
  const rings = offsets.map((offset) => ({ x: metres(flat ? offset : 0), depth: metres(flat ? depth : depth + offset) }));
  const section = { ringDiameter: RING, pitch, depth, returnPipe, trenchSpacing: TRENCH_SPACING };
  return {
    ...shared,
    name: `${way} coil`,
    pitch,
    sections: [[...rings, returnPipe]],
    perTrench: { bought: pipePerTrench, counted: circlesPerTrench + 1 },
    trenchWidth: metres(flat ? RING + 0.1 : 0.2),
    bendRadius: metres(RING / 2),
    laid: (trenches) =>
      inRings(flat ? flatOverlappedCoil({ ...section, trenches }) : uprightOverlappedCoil({ ...section, trenches }), {
        // Rings cross, and ice joins there at once; on the mean over their band the pipe is so far from itself.
        nearestPipe: metres(RING / ringPipePerTrench),
        shallowestDepth: metres(Math.min(returnPipe.depth, flat ? depth : depth - RING / 2)),
        landWidth: metres(TRENCH_SPACING / pipePerTrench),
      }),
  };
}

const two = { depth: DEEP, spacing: SIDE, trenchSpacing: TRENCH_SPACING };
const four = { upperDepth: SHALLOW, lowerDepth: DEEP, spacing: SIDE, trenchSpacing: TRENCH_SPACING };
const wide = SIDE + 0.2;
const at = (depth: Length): readonly PipePosition[] => [{ x: metres(0), depth }];
const trenchGroup = [
  { across: metres(0), pipes: at(SHALLOW) },
  { across: TRENCH_SPACING, pipes: at(DEEP) },
];
const ROWS_DEPTH = metres(1.3);
const ROWS = Array.from({ length: 20 }, (_, row) => ({ x: metres((row - 9.5) * ROW_SPACING), depth: ROWS_DEPTH }));

/** The layouts, straight pipe first. */
export const kinds: readonly Kind[] = [
  straight('one pipe', (trenches) => onePipe({ depth: DEEP, trenchSpacing: TRENCH_SPACING, trenches }), { width: 0.3 }),
  straight('unequal trenches', (groups) => unequalTrenches({ trenchGroup, trenches: groups, trenchSpacing: metres(2 * TRENCH_SPACING) }), {
    width: 0.3,
    sections: [at(SHALLOW), at(DEEP)],
    perTrench: { bought: 1, counted: 1 },
    bendRadius: metres(TRENCH_SPACING / 2),
  }),
  straight('two side by side', (trenches) => twoPipeSideBySide({ ...two, trenches }), { width: wide }),
  straight('out and back', (trenches) => twoPipeSideBySide({ ...two, trenches }), { width: wide }, true),
  straight('two stacked', (trenches) => twoPipeStacked({ ...four, trenches }), { width: 0.3 }),
  straight('four pipes', (trenches) => fourPipe({ ...four, trenches }), { width: wide }),
  straight('six pipes', (trenches) => sixPipe({ ...four, middleDepth: metres((SHALLOW + DEEP) / 2), trenches }), { width: wide }),
  ringOfFour(),
  straight('area collector', (trenches) => areaCollector({ depth: ROWS_DEPTH, trenchSpacing: ROW_SPACING, trenches }), {
    width: ROW_SPACING,
    sections: [ROWS],
    trenchDepth: metres(ROWS_DEPTH + UNDER),
    trenchSpacing: ROW_SPACING,
    longestTrench: metres(25),
    bendRadius: metres(ROW_SPACING / 2),
  }),
  coil('flat', metres(0.6)),
  coil('flat', metres(0.25)),
  coil('upright', metres(0.6)),
  coil('upright', metres(0.25)),
];

/** The four pipes of a trench round a closed ring, which is as long as its pipe makes it. */
function ringOfFour(): Kind {
  const { pipes } = fourPipe({ ...four, trenches: 1 });
  const layout = customLayout({ pipes, trenches: 1, trenchSpacing: TRENCH_SPACING });
  return {
    ...straight('ring of four pipes', () => layout, { width: wide }),
    closed: true,
    longestTrench: metres(1000),
    laid: (_, trenchLength) => inRings(ringTrench({ ringDiameter: metres(trenchLength / Math.PI), pipes }), iceRoomOf(layout)),
  };
}
