import { MONTH_DAYS } from '../states/index.js';
import type { DayOfYear, Energy, Length, Temperature } from '../units/index.js';
import type { IceCourse, MonthOfIce, YearOfIce } from './ice-result.js';

const DAY = 86_400;
/** Less frozen soil than this around a pipe is none: a skin of a few hundredths of a millimetre [m2]. */
const NOTHING = 1e-6;
/** Fronts have met when so much of the soil within reach is frozen [1]. */
const MET = 0.99;

/** The loop that it lies around. */
export interface IceLoop {
  /** Outside radius of the pipe [m]. */
  readonly radius: number;
  /** As far as ice counts [m]. */
  readonly reach: number;
  /** Whether a neighbour or the surface ends it. */
  readonly bounded: boolean;
  /** Land of a metre of pipe [m]. */
  readonly landWidth: number;
  /** Water that freezes in a volume of soil [m3/m3]. */
  readonly freezingWater: number;
  /** Length of a step [s]. */
  readonly step: number;
  /** [m] */
  readonly pipeLength: number;
}

/** Sums up the ice of a year. */
export function iceYear({ frozenAreas: areas, iceHeats: heats }: IceCourse, walls: Float64Array, loop: IceLoop): YearOfIce {
  const { radius, reach, bounded, step, pipeLength } = loop;
  const count = areas.length;
  const dayOf = (index: number): DayOfYear => (1 + ((index + 1) * step) / DAY) as DayOfYear;
  const most = areas.reduce((best, area, index) => (area > (areas[best] ?? 0) ? index : best), 0);
  const freezes = (areas[most] ?? 0) > NOTHING;
  // The year is a ring: ice of the winter is followed from its most into the summer, over New Year if need be.
  const thawedAfter = Array.from({ length: count }, (_, after) => (most + after) % count).find((index) => (areas[index] ?? 0) <= NOTHING);
  const merged = !bounded ? -1 : areas.findIndex((area) => area >= MET * Math.PI * (reach * reach - radius * radius));
  const sum = (side: 1 | -1): Energy => (heats.reduce((total, heat) => total + Math.max(0, side * heat), 0) * step * pipeLength) as Energy;
  const months = iceMonths(areas, loop);
  return {
    coldestWall: walls.reduce((coldest, wall) => Math.min(coldest, wall), Infinity) as Temperature,
    ...extentOf(areas[most] ?? 0, loop),
    ...(freezes && { mostIceDay: dayOf(most) }),
    ...(freezes && thawedAfter !== undefined && { thawDay: dayOf(thawedAfter) }),
    ...(merged >= 0 && { mergeDay: dayOf(merged) }),
    freezingEnergy: sum(1),
    thawingEnergy: sum(-1),
    ...(months && { months }),
  };
}

/** A frozen section around a pipe as radius, thickness and water. */
function extentOf(area: number, { radius, landWidth, freezingWater }: IceLoop): Omit<MonthOfIce, 'month'> {
  const frozenRadius = area > NOTHING ? Math.sqrt(radius * radius + area / Math.PI) : 0;
  return {
    frozenRadius: frozenRadius as Length,
    frozenThickness: Math.max(0, frozenRadius - radius) as Length,
    frozenWater: ((area > NOTHING ? area * freezingWater : 0) / landWidth) as Length,
  };
}

function iceMonths(areas: Float64Array, loop: IceLoop): readonly MonthOfIce[] | undefined {
  const { step } = loop;
  const days = (areas.length * step) / DAY;
  if ((days !== 365 && days !== 366) || DAY % step !== 0) return undefined;
  let to = 0;
  return MONTH_DAYS.map((length, index) => {
    const from = to;
    to += ((index === 1 ? length + days - 365 : length) * DAY) / step;
    return {
      month: index + 1,
      ...extentOf(
        areas.subarray(from, to).reduce((most, area) => Math.max(most, area), 0),
        loop,
      ),
    };
  });
}
