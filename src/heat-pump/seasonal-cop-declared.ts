import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Fraction, Power, Shape, Temperature } from '../units/index.js';
import { CLIMATES, type En14825Climate, en14825Season, loadRatioAt } from './en14825-season.js';
import { USUAL_LOAD_SHARE } from './en14825-seasons.data.js';
import { en14825PartLoadFactor } from './part-load.js';
import { type SeasonalCop, weighBins } from './seasonal-bins.js';
import { type FullCapacity, HEATING_COP, SEASON_POWER } from './seasonal-cop.js';

/** A point that the maker declares for a season: A to D, G, and the unit's own E (limit of operation) and F (bivalent temperature). */
export interface DeclaredPoint extends FullCapacity {
  /** Outdoor temperature that it stands for, −50 to 16 [degC]. */
  readonly outdoor: Temperature;
}

/** What {@link declaredSeasonalCop} needs. */
export interface DeclaredSeasonalCopInput {
  /** The season. */
  readonly climate: En14825Climate;
  /** Heat loss at the design temperature of the climate, 0.001 to 1e9 [W]. */
  readonly designLoad: Power;
  /** Declared points, 2 to 20 in any order, 0.1 K or more apart, from the coldest bin in which the unit runs to 12 °C or beyond. */
  readonly points: readonly DeclaredPoint[];
  /** Share of the full electric input that goes with the load, Cc, 0.5 to 1; 0.9 when left out [1]. */
  readonly loadShare?: Fraction;
  /** Outdoor temperature below which the unit is off, −50 to 12; none when left out [degC]. */
  readonly operationLimit?: Temperature;
  /** Beyond the warmest point the line through the two warmest is led on, or the warmest is held; led on when left out. */
  readonly aboveWarmest?: 'led on' | 'held';
}

/** Shape of {@link DeclaredPoint}. */
export const declaredPointShape: Shape<DeclaredPoint> = { outdoor: 'temperature', capacity: 'power', cop: 'ratio' };

/** Shape of {@link DeclaredSeasonalCopInput}. */
export const declaredSeasonalCopInputShape: Shape<DeclaredSeasonalCopInput> = {
  climate: CLIMATES,
  designLoad: 'power',
  points: { list: declaredPointShape },
  loadShare: { optional: 'fraction' },
  operationLimit: { optional: 'temperature' },
  aboveWarmest: { optional: ['led on', 'held'] },
};

/** A declared point with the loss by part load taken off its COP. */
interface Support {
  readonly outdoor: number;
  readonly capacity: number;
  readonly cop: number;
}

/** Declared points reach this far up at least: point D [degC]. */
const WARMEST_DECLARED = 12;

/**
 * COP over the heating hours of an EN 14825 season from declared points, the way of labels.
 *
 * At each point the loss by part load is taken off the COP; capacity and COP are interpolated in straight lines between. Below the limit of operation the
 * unit is off and all is back-up.
 *
 * @param input - season, design load [W], declared points, Cc [1]
 * @returns SCOPon and SCOPnet [1], degree by degree, with heat and electricity [J]
 * @throws InputError for a value out of its range, or where the points leave degrees of the season uncovered
 * @remarks
 * Interpolation, and the line led on above point D, are recalled (`en14825Hours`); which way the end goes is an option for that reason. A unit that follows the
 * load is declared at the load itself: then no loss is taken. Invariants tested: with Cc = 1 and one COP at all points it is that COP; a point put in on the
 * straight line between two others, where no loss is taken, changes nothing.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, ratio } = await import('../units/index.js');
 * const points = [
 *   { outdoor: celsius(-10), capacity: kilowatts(8), cop: ratio(4) },
 *   { outdoor: celsius(2), capacity: kilowatts(8), cop: ratio(4.4) },
 *   { outdoor: celsius(7), capacity: kilowatts(8), cop: ratio(4.7) },
 *   { outdoor: celsius(12), capacity: kilowatts(8), cop: ratio(5) },
 * ];
 * const { activeCop } = declaredSeasonalCop({ climate: 'average', designLoad: kilowatts(8), points });
 * expect(activeCop).toBeCloseTo(3.927538, 6);
 * ```
 */
export function declaredSeasonalCop(input: DeclaredSeasonalCopInput): SeasonalCop {
  const { climate, designLoad, loadShare = USUAL_LOAD_SHARE as Fraction, operationLimit, aboveWarmest = 'led on' } = input;
  demandChoice('climate', climate, CLIMATES);
  demand('designLoad', 'power', designLoad, SEASON_POWER);
  demand('loadShare', 'fraction', loadShare, { atLeast: 0.5, atMost: 1 });
  if (operationLimit !== undefined) demand('operationLimit', 'temperature', operationLimit, { atLeast: -50, atMost: WARMEST_DECLARED });
  demandChoice('aboveWarmest', aboveWarmest, ['led on', 'held']);
  const { designOutdoor } = en14825Season(climate);
  const supports = supportsOf(input.points, (outdoor, capacity) => {
    const loadRatio = Math.min(1, (designLoad * loadRatioAt(designOutdoor, outdoor)) / capacity) as Fraction;
    return en14825PartLoadFactor({ loadRatio, loadShare });
  });
  const lowestRunning = Math.max(designOutdoor, operationLimit ?? -Infinity);
  const coldest = supports[0]?.outdoor ?? Number.NaN;
  const warmest = supports.at(-1)?.outdoor ?? Number.NaN;
  if (!(coldest <= lowestRunning)) refuseReach(coldest, `a point at or below ${String(lowestRunning)} degC, where the unit still runs`);
  if (!(warmest >= WARMEST_DECLARED)) refuseReach(warmest, `a point at or above ${String(WARMEST_DECLARED)} degC, the standard's point D`);
  return weighBins(climate, designLoad, (outdoor) => {
    if (operationLimit !== undefined && outdoor < operationLimit) return { capacity: 0 };
    return between(supports, aboveWarmest === 'held' ? Math.min(outdoor, warmest) : outdoor);
  });
}

function refuseReach(value: number, allowed: string): never {
  throw new InputError({ code: 'impossible', argument: 'points', value: { kind: 'temperature', value }, allowed });
}

function supportsOf(points: readonly DeclaredPoint[], lossAt: (outdoor: number, capacity: number) => number): readonly Support[] {
  demandCount('points', points, 2, 20);
  const supports = points.map((point, index) => {
    const argument = `points.${String(index)}`;
    demandObject(argument, point);
    const { outdoor, capacity, cop } = point;
    demand(`${argument}.outdoor`, 'temperature', outdoor, { atLeast: -50, atMost: 16 });
    demand(`${argument}.capacity`, 'power', capacity, SEASON_POWER);
    demand(`${argument}.cop`, 'ratio', cop, HEATING_COP);
    return { outdoor, capacity, cop: cop * lossAt(outdoor, capacity) };
  });
  supports.sort((a, b) => a.outdoor - b.outdoor);
  const twice = supports.find(({ outdoor }, index) => outdoor - (supports[index - 1]?.outdoor ?? -Infinity) < 0.1);
  if (twice !== undefined) refuseReach(twice.outdoor, 'one point for each outdoor temperature, at least 0.1 K apart');
  return supports;
}

/** On the straight lines through the points, the last led on. */
function between(supports: readonly Support[], outdoor: number): { readonly capacity: number; readonly cop: number } {
  const index = supports.findIndex((each, k) => k > 0 && each.outdoor >= outdoor);
  // Not found, the index is −1, which counts from the end: the two warmest.
  const above = supports.at(index);
  const below = supports.at(index - 1);
  if (above === undefined || below === undefined) return { capacity: Number.NaN, cop: Number.NaN };
  const share = (outdoor - below.outdoor) / (above.outdoor - below.outdoor);
  const on = (from: number, to: number): number => from + share * (to - from);
  const state = { capacity: on(below.capacity, above.capacity), cop: on(below.cop, above.cop) };
  if (!(state.capacity > 0 && state.cop > 0)) refuseReach(outdoor, 'points whose line stays above nothing up to 15 degC; hold the warmest instead');
  return state;
}
