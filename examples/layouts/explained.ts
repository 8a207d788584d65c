// Why one layout needs more pipe than another, in the form of the handbook equation: resistance over margin.
import { celsius, type Ratio, ratio } from 'loamloop/units';
import type { Compared } from './compared.js';
import { atLimit, duty, heatCapacityRate } from './house.js';

/** A layout beside another, factor by factor. */
export interface Explained {
  /** Resistance of wall, fill and ground, over that of the other. */
  readonly byResistance: Ratio;
  /** Margin from the ground at its coldest to the fluid, that of the other over its own. */
  readonly byGround: Ratio;
  /** Both, which is what a handbook would say. */
  readonly together: Ratio;
  /** What came out hour by hour. */
  readonly hourByHour: Ratio;
}

const FIRST_WINTER_DAY = 334;
const LAST_WINTER_DAY = 59;

/** Share of December to February that the unit runs at its limit: a season of heat is so much smaller than that of an hour. */
const winter = Array.from(duty.loads).filter((_, hour) => hour >= 24 * FIRST_WINTER_DAY || hour < 24 * LAST_WINTER_DAY);
export const runFraction = ratio(
  winter.reduce((sum, load) => sum + Math.min(Math.max(load, 0), atLimit.capacity), 0) / winter.length / atLimit.capacity,
);
/** The mean of fluid entering and leaving at the limit. */
export const meanFluid = celsius(atLimit.enteringFluid - atLimit.groundHeat / (2 * heatCapacityRate));

const resistance = ({ makings }: Compared): number =>
  makings.wallAndFilm + makings.circuitEnds + makings.fill.settled + runFraction * makings.alone * makings.byNeighbours;
const margin = ({ makings }: Compared): number => makings.coldestGround - meanFluid;

/** What a layout needs beside another one, and why. */
export function explained(row: Compared, beside: Compared): Explained {
  const byResistance = resistance(row) / resistance(beside);
  const byGround = margin(beside) / margin(row);
  return {
    byResistance: ratio(byResistance),
    byGround: ratio(byGround),
    together: ratio(byResistance * byGround),
    hourByHour: ratio(row.needed / beside.needed),
  };
}
