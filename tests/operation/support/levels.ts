import fc from 'fast-check';
import { type PerformanceMap, performanceMap, type StagedUnit, stagedUnit } from '../../../src/heat-pump/index.js';
import { type Course, type SimulatedYear, simulate, type SimulationInput } from '../../../src/operation/index.js';
import { type PipeResistance, type Power, ratio, type Temperature } from '../../../src/units/index.js';
import { cooling, heating, house, loads } from './plant.js';

/** A number between two. */
export const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** The course that a year was asked for. */
export const courseOf = ({ course }: SimulatedYear): Course => {
  if (course === undefined) throw new Error('no course');
  return course;
};
/** The invented unit at a share of its output, with its COP times a factor. */
export const scaled = (map: PerformanceMap, share: number, better = 1): PerformanceMap =>
  performanceMap({
    mode: map.mode,
    points: map.points.map(({ enteringFluid, capacity, cop }) => ({
      enteringFluid,
      capacity: (share * capacity) as Power,
      cop: ratio(better * cop),
    })),
  });
/** The unit at shares of its output, better at the lower ones, with a loss by cycling. */
export const stages = (map: PerformanceMap, shares: readonly number[], between_: 'stages' | 'speeds' = 'stages', loss?: number): StagedUnit =>
  stagedUnit({
    levels: shares.map((share) => scaled(map, share, 1.3 - 0.3 * share)),
    between: between_,
    ...(loss === undefined ? {} : { cyclingLoss: (loadRatio) => ratio(1 - loss * (1 - loadRatio)) }),
  });
/** The first year of the house with another duty. */
export const year = (duty: object, more: Partial<SimulationInput> = {}): SimulatedYear =>
  simulate({ ...house, duty: { from: 'building', loads, heating, cooling, ...duty }, years: 1, withCourse: true, ...more }).lastYear;

const films = new Map<Temperature, PipeResistance>();
/** The film of the house, worked out once for all loops of a property. */
export const knownFilm = (mean: Temperature): PipeResistance => {
  const film = films.get(mean) ?? house.resistanceAt(mean);
  films.set(mean, film);
  return film;
};
