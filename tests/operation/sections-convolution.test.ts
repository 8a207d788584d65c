import { describe, expect, it } from 'vitest';
import { exponentialResponse, groundResponse, type GroundResponseInput, onePipe, twoPipeStacked } from '../../src/ground/index.js';
import { type LoopSection, simulateSections } from '../../src/operation/index.js';
import { diameterMillimetres, hours, metres, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } from '../../src/units/index.js';
import { soilOf } from '../ground/support.js';
import { exactRises } from './support/convolution.js';
import { courseOf } from './support/levels.js';

const COUNT = 2000;
const at = (list: ArrayLike<number>, index: number): number => list[index] ?? Number.NaN;
const pipe = { outsideDiameter: diameterMillimetres(32) };
const grounds: readonly GroundResponseInput[] = [
  {
    layout: twoPipeStacked({ upperDepth: metres(1.3), lowerDepth: metres(1.9), trenches: 2, trenchSpacing: metres(3) }),
    pipe,
    soil: soilOf(1.8, 7e-7),
  },
  { layout: onePipe({ depth: metres(1.1), trenches: 2, trenchSpacing: metres(3) }), pipe, soil: soilOf(0.7, 4e-7) },
];
const LENGTHS = [220, 140] as const;
const FILMS = [0.11, 0.24] as const;
const FLOWS = [0.45, 0.55] as const;
const RATE = 1500;

/** Heat taken from the ground [W]: a season with days, rests and a warm spell that gives some back. */
const loads = Float64Array.from({ length: COUNT }, (_, hour) => {
  const heat = 2500 - 3000 * Math.cos((2 * Math.PI * (hour - 900)) / 4000) + 1800 * Math.cos((2 * Math.PI * hour) / 24);
  return Math.abs(heat) < 10 ? 0 : heat;
});
const undisturbed = [7, 5].map((amplitude, index) =>
  Float64Array.from({ length: COUNT }, (_, hour) => 9 - 2 * index - amplitude * Math.cos((2 * Math.PI * (hour - 600)) / 8760)),
);

/**
 * Two sections by the definition, without terms or shares: the wall of each from all heats before it by the exact response, and in every hour two equations for
 * two heats that add up to the load and give both the same entering fluid.
 */
function byConvolution(): readonly (readonly Float64Array[])[] {
  const rises = grounds.map((ground) => exactRises(groundResponse(ground), hours(1), COUNT));
  const increments = rises.map((rise) => rise.map((each, k) => (k === 0 ? each : each - at(rise, k - 1))));
  const heats = [new Float64Array(COUNT), new Float64Array(COUNT)];
  const walls = [new Float64Array(COUNT), new Float64Array(COUNT)];
  for (let hour = 0; hour < COUNT; hour += 1) {
    const rests = heats.map((heat, s) => {
      let change = 0;
      for (let ago = 1; ago <= hour; ago += 1) change += at(increments[s] ?? [], ago) * at(heat, hour - ago);
      return at(undisturbed[s] ?? [], hour) - change / at(LENGTHS, s);
    });
    const [own, other] = rests.map((_, s) => (at(rises[s] ?? [], 0) + at(FILMS, s)) / at(LENGTHS, s) + 1 / (2 * RATE * at(FLOWS, s)));
    const load = at(loads, hour);
    // rests[0] − own·heat = entering = rests[1] − other·(load − heat)
    const first = load === 0 ? 0 : (at(rests, 0) - at(rests, 1) + (other ?? Number.NaN) * load) / ((own ?? Number.NaN) + (other ?? Number.NaN));
    for (const [s, heat] of [first, load - first].entries()) {
      heats[s]?.set([heat], hour);
      walls[s]?.set([at(rests, s) - (heat / at(LENGTHS, s)) * at(rises[s] ?? [], 0)], hour);
    }
  }
  return [heats, walls];
}

const sections: readonly LoopSection[] = grounds.map((ground, index) => ({
  pipeLength: pipeMetres(at(LENGTHS, index)),
  ground: undisturbed[index] ?? [],
  response: exponentialResponse(ground),
  resistanceAt: () => pipeMetreKelvinPerWatt(at(FILMS, index)),
}));

describe('two sections', () => {
  const { lastYear, sectionCourses = [] } = simulateSections({
    step: hours(1),
    duty: { from: 'ground', loads },
    heatCapacityRate: wattsPerKelvin(RATE),
    sections,
    sectionFlows: FLOWS,
    years: 1,
    withCourse: true,
  });
  const [heats = [], walls = []] = byConvolution();
  const worst = (one: ArrayLike<number>, other: ArrayLike<number>): number =>
    Array.from(one).reduce((most, each, hour) => Math.max(most, Math.abs(each - at(other, hour))), 0);

  it('are within 0.003 K of the full convolution of both, hour by hour', () => {
    for (const [index, course] of sectionCourses.entries()) {
      expect(Math.min(...course.walls)).toBeLessThan(2);
      expect(worst(course.walls, walls[index] ?? [])).toBeLessThan(0.003);
      // A heat is worth its share of a response in which 0.003 K are some watts.
      expect(worst(course.groundHeats, heats[index] ?? [])).toBeLessThan(3);
    }
  });

  it('bring the fluid to the unit that they do by convolution', () => {
    const course = courseOf(lastYear);
    for (let hour = 0; hour < COUNT; hour += 1) {
      const load = at(loads, hour);
      if (load === 0) continue;
      const heat = at(heats[0] ?? [], hour);
      const mean = at(walls[0] ?? [], hour) - (heat * FILMS[0]) / LENGTHS[0];
      const leaving = mean - heat / (2 * RATE * FLOWS[0]);
      expect(Math.abs(at(course.leavingFluids, hour) - leaving)).toBeLessThan(0.003);
      expect(Math.abs(at(course.enteringFluids, hour) - leaving - load / RATE)).toBeLessThan(0.003);
    }
  });

  it('give heat to one another where the unit draws little', () => {
    const opposed = loads.reduce((count, load, hour) => count + (load !== 0 && at(heats[0] ?? [], hour) * at(heats[1] ?? [], hour) < 0 ? 1 : 0), 0);
    expect(opposed).toBeGreaterThan(0);
    const byTerms = loads.reduce(
      (count, _, hour) => count + (at(sectionCourses[0]?.groundHeats ?? [], hour) * at(sectionCourses[1]?.groundHeats ?? [], hour) < 0 ? 1 : 0),
      0,
    );
    expect(Math.abs(byTerms - opposed)).toBeLessThanOrEqual(2);
  });
});
