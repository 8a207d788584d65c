import type { Temperature } from '../units/index.js';

/** A standard condition that makers rate units at. */
export interface RatingCondition {
  /** Standard and application. */
  readonly name: string;
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Whether the unit runs at full or at part load. */
  readonly running: 'full load' | 'part load';
  /** Fluid entering from the loop [degC]. */
  readonly enteringFluid: Temperature;
  /** Air (dry bulb) or water entering the load side; in EN 14511 water leaving it [degC]. */
  readonly loadSide: Temperature;
  /** The standard. */
  readonly source: 'iso13256' | 'en14511';
}

/** Name, standard, mode, running, fluid entering from the loop and load side [degC]. */
const ROWS = [
  ['ISO 13256-1 ground loop, air', 'iso13256', 'heating', 'full load', 0, 20],
  ['ISO 13256-1 ground loop, air', 'iso13256', 'heating', 'part load', 5, 20],
  ['ISO 13256-1 ground loop, air', 'iso13256', 'cooling', 'full load', 25, 27],
  ['ISO 13256-1 ground loop, air', 'iso13256', 'cooling', 'part load', 20, 27],
  ['ISO 13256-1 ground water, air', 'iso13256', 'heating', 'full load', 10, 20],
  ['ISO 13256-1 ground water, air', 'iso13256', 'cooling', 'full load', 15, 27],
  ['ISO 13256-1 water loop, air', 'iso13256', 'heating', 'full load', 20, 20],
  ['ISO 13256-1 water loop, air', 'iso13256', 'cooling', 'full load', 30, 27],
  ['ISO 13256-2 ground loop, water', 'iso13256', 'heating', 'full load', 0, 40],
  ['ISO 13256-2 ground loop, water', 'iso13256', 'cooling', 'full load', 25, 12],
  ['EN 14511-2 B0/W35', 'en14511', 'heating', 'full load', 0, 35],
  ['EN 14511-2 B0/W45', 'en14511', 'heating', 'full load', 0, 45],
  ['EN 14511-2 B0/W55', 'en14511', 'heating', 'full load', 0, 55],
] as const;

/**
 * Standard rating conditions, to place the numbers of a data sheet: ISO 13256 (1998) for loops, ground water and water loops, EN 14511 for brine to water.
 *
 * Electric input at these conditions leaves out the circulator's work outside the unit: add that where a season is counted. Later editions change parts.
 */
export const RATING_CONDITIONS: readonly RatingCondition[] = /* @__PURE__ */ ROWS.map(([name, source, mode, running, enteringFluid, loadSide]) => ({
  name,
  source,
  mode,
  running,
  enteringFluid: enteringFluid as Temperature,
  loadSide: loadSide as Temperature,
}));
