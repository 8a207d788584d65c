import type { Fraction, Temperature } from '../units/index.js';

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
  /** Fluid leaving to the loop, where the condition fixes it; elsewhere it follows from the flow [degC]. */
  readonly leavingFluid?: Temperature;
  /** Air (dry bulb) or water entering the load side; in EN 14511 and EN 14825 water leaving it [degC]. */
  readonly loadSide: Temperature;
  /** Water entering the load side, where the condition tells of the water leaving it and fixes both [degC]. */
  readonly loadSideReturn?: Temperature;
  /** Wet bulb of the air, the highest allowed in heating; for air alone [degC]. */
  readonly wetBulb?: Temperature;
  /** Outdoor air that the part load stands for [degC]. */
  readonly outdoor?: Temperature;
  /** Load over the design load, at part load of a season [1]. */
  readonly loadRatio?: Fraction;
  /** The standard. */
  readonly source: 'iso13256' | 'en14511' | 'en14825Conditions';
}

type Row = readonly [mode: RatingCondition['mode'], running: RatingCondition['running'], enteringFluid: number, loadSide: number, wetBulb?: number];

/** ISO 13256: application, mode, running, fluid entering from the loop, load side and wet bulb [degC]. */
const ISO_ROWS: readonly (readonly [name: string, ...Row])[] = [
  ['ISO 13256-1 ground loop, air', 'heating', 'full load', 0, 20, 15],
  ['ISO 13256-1 ground loop, air', 'heating', 'part load', 5, 20, 15],
  ['ISO 13256-1 ground loop, air', 'cooling', 'full load', 25, 27, 19],
  ['ISO 13256-1 ground loop, air', 'cooling', 'part load', 20, 27, 19],
  ['ISO 13256-1 ground water, air', 'heating', 'full load', 10, 20, 15],
  ['ISO 13256-1 ground water, air', 'heating', 'part load', 10, 20, 15],
  ['ISO 13256-1 ground water, air', 'cooling', 'full load', 15, 27, 19],
  ['ISO 13256-1 ground water, air', 'cooling', 'part load', 15, 27, 19],
  ['ISO 13256-1 water loop, air', 'heating', 'full load', 20, 20, 15],
  ['ISO 13256-1 water loop, air', 'heating', 'part load', 20, 20, 15],
  ['ISO 13256-1 water loop, air', 'cooling', 'full load', 30, 27, 19],
  ['ISO 13256-1 water loop, air', 'cooling', 'part load', 30, 27, 19],
  ['ISO 13256-2 ground loop, water', 'heating', 'full load', 0, 40],
  ['ISO 13256-2 ground loop, water', 'heating', 'part load', 5, 40],
  ['ISO 13256-2 ground loop, water', 'cooling', 'full load', 25, 12],
  ['ISO 13256-2 ground loop, water', 'cooling', 'part load', 20, 12],
  ['ISO 13256-2 ground water, water', 'heating', 'full load', 10, 40],
  ['ISO 13256-2 ground water, water', 'heating', 'part load', 10, 40],
  ['ISO 13256-2 ground water, water', 'cooling', 'full load', 15, 12],
  ['ISO 13256-2 ground water, water', 'cooling', 'part load', 15, 12],
  ['ISO 13256-2 water loop, water', 'heating', 'full load', 20, 40],
  ['ISO 13256-2 water loop, water', 'heating', 'part load', 20, 40],
  ['ISO 13256-2 water loop, water', 'cooling', 'full load', 30, 12],
  ['ISO 13256-2 water loop, water', 'cooling', 'part load', 30, 12],
];

/** EN 14511, brine to water: name, brine entering, water leaving, and brine leaving and water entering where the condition fixes them [degC]. */
const EN_14511_ROWS: readonly (readonly [name: string, brine: number, water: number, brineOut?: number, waterIn?: number])[] = [
  ['EN 14511-2 B0/W35', 0, 35, -3, 30],
  ['EN 14511-2 B0/W45', 0, 45, -3, 40],
  ['EN 14511-2 B0/W55', 0, 55, -3, 47],
  ['EN 14511-2 B5/W35', 5, 35],
  ['EN 14511-2 B5/W45', 5, 45],
  ['EN 14511-2 B-5/W35', -5, 35],
  ['EN 14511-2 B-5/W45', -5, 45],
];

/** EN 14825, low-temperature heating in the average climate, brine at 0 °C: name, outdoor air and water leaving [degC], and load over design load [1]. */
const EN_14825_ROWS: readonly (readonly [name: string, outdoor: number, water: number, loadRatio: number])[] = [
  ['EN 14825 A, average, low temperature', -7, 34, 0.88],
  ['EN 14825 B, average, low temperature', 2, 30, 0.54],
  ['EN 14825 C, average, low temperature', 7, 27, 0.35],
  ['EN 14825 D, average, low temperature', 12, 24, 0.15],
];

/**
 * Standard rating conditions, to place the numbers of a data sheet: ISO 13256 (1998) for loops, ground water and water loops, EN 14511 for brine to water, and the
 * part loads of EN 14825. From memory; later editions change parts. What the electric input at them holds: `RATED_POWER`.
 */
export const RATING_CONDITIONS: readonly RatingCondition[] = /* @__PURE__ */ (() => [
  ...ISO_ROWS.map(([name, mode, running, enteringFluid, loadSide, wetBulb]) => ({
    name,
    mode,
    running,
    enteringFluid: enteringFluid as Temperature,
    loadSide: loadSide as Temperature,
    ...(wetBulb !== undefined && { wetBulb: wetBulb as Temperature }),
    source: 'iso13256' as const,
  })),
  ...EN_14511_ROWS.map(([name, brine, water, brineOut, waterIn]) => ({
    name,
    mode: 'heating' as const,
    running: 'full load' as const,
    enteringFluid: brine as Temperature,
    loadSide: water as Temperature,
    ...(brineOut !== undefined && { leavingFluid: brineOut as Temperature }),
    ...(waterIn !== undefined && { loadSideReturn: waterIn as Temperature }),
    source: 'en14511' as const,
  })),
  ...EN_14825_ROWS.map(([name, outdoor, water, loadRatio]) => ({
    name,
    mode: 'heating' as const,
    running: 'part load' as const,
    enteringFluid: 0 as Temperature,
    loadSide: water as Temperature,
    outdoor: outdoor as Temperature,
    loadRatio: loadRatio as Fraction,
    source: 'en14825Conditions' as const,
  })),
])();
