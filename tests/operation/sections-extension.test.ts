import { describe, expect, it } from 'vitest';
import { solveFlowSplit } from '../../src/circuit/index.js';
import { unitsTogether } from '../../src/heat-pump/index.js';
import { type LoopSection, neighbourChange, simulate, simulateSections, sizeSections } from '../../src/operation/index.js';
import {
  celsius,
  diameterMillimetres,
  hours,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metres,
  millipascalSeconds,
  pipeMetres,
} from '../../src/units/index.js';
import { soilOf } from '../ground/support.js';
import { courseOf, knownFilm, scaled } from './support/levels.js';
import { cooling, heating, house, loads } from './support/plant.js';
import { clay, extremes, onSections } from './support/sections.js';

const whole = { ...house, resistanceAt: knownFilm };

describe('a section that has worked', () => {
  it('goes on where a loop left its ground', () => {
    // Heat from the ground itself is the same in every year, whatever the ground: then the years of before and those followed are one course.
    const duty = { from: 'ground', loads: loads.map((load) => 0.7 * load) } as const;
    const third = simulate({ ...whole, duty, years: 3, withCourse: true }).lastYear;
    const old = { ...clay(), earlierWork: { years: 2, groundHeats: duty.loads } };
    const { yearOne } = simulateSections(onSections([old], { duty, years: 1, withCourse: true }));
    const walls = courseOf(yearOne).walls;
    const apart = courseOf(third).walls.map((wall, hour) => Math.abs(wall - (walls[hour] ?? Number.NaN)));
    expect(Math.max(...apart)).toBeLessThan(1e-9);
    expect(extremes(yearOne)).toEqual(extremes(third).map((each) => expect.closeTo(each ?? Number.NaN, 9)));
  });

  it('also from a start within the year', () => {
    const duty = { from: 'ground', loads: loads.map((load) => 0.7 * load) } as const;
    const start = 245 as NonNullable<typeof whole.start>;
    const second = simulate({ ...whole, duty, start, years: 2, withCourse: true }).lastYear;
    const old = { ...clay(), earlierWork: { years: 1, groundHeats: duty.loads } };
    const { yearOne } = simulateSections(onSections([old], { duty, start, years: 1, withCourse: true }));
    const walls = courseOf(yearOne).walls;
    expect(Math.max(...courseOf(second).walls.map((wall, hour) => Math.abs(wall - (walls[hour] ?? Number.NaN))))).toBeLessThan(1e-9);
  });
});

describe('an extension after ten years, for a second unit beside the first', () => {
  // Invented: the loop of the house in clay, and a house whose load has grown by half.
  const before = simulate({ ...whole, years: 10, withCourse: true }).lastYear;
  const earlierWork = { years: 10, groundHeats: courseOf(before).groundHeats };
  const old: LoopSection = { ...clay(), earlierWork };
  const units = unitsTogether({ units: [heating, scaled(heating, 0.5)], sharing: 'in order' });
  const duty = { from: 'building', loads: loads.map((load) => 1.5 * load), heating: units, cooling } as const;
  const limits = { lowestEntering: celsius(-4.6) };
  const extended = sizeSections({ ...onSections([old, clay(150)], { duty }), sizedSections: [1], limits });
  const [oldPart, newPart] = extended.simulation.sectionsOfYearOne;

  it('keeps the old loop and is as long as the limit asks', () => {
    expect(extended.sectionLengths[0]).toBe(house.pipeLength);
    expect(extended.binding.limitMargin).toBeGreaterThanOrEqual(0);
    // Half more load asks for half more pipe, and for what the old loop has left to give.
    expect(extended.exactLength / house.pipeLength).toBeGreaterThan(0.3);
    expect(extended.exactLength / house.pipeLength).toBeLessThan(0.8);
  });

  it('gives more in its first year than its pipe alone would, from ground not drawn on yet', () => {
    expect(newPart?.heatingPart).toBeGreaterThan(newPart?.pipeShare ?? 1);
    expect(oldPart?.heatingPart).toBeLessThan(oldPart?.pipeShare ?? 0);
    const [, later] = extended.simulation.sectionsOfLastYear;
    expect(later?.heatingPart).toBeCloseTo(later?.pipeShare ?? 0, 3);
  });

  it('does not end where the old loop came from: the year that repeats is the same without its past', () => {
    const young = simulateSections(onSections([clay(), { ...clay(), pipeLength: extended.exactLength }], { duty }));
    expect(young.yearOne.coldestEntering?.temperature).toBeGreaterThan(extended.simulation.yearOne.coldestEntering?.temperature ?? 0);
    expect(
      Math.abs((young.lastYear.coldestEntering?.temperature ?? 0) - (extended.simulation.lastYear.coldestEntering?.temperature ?? 9)),
    ).toBeLessThan(2e-3);
  });

  it('is beside the old loop, which is told how near it may lie', () => {
    const { groundHeats = new Float64Array() } =
      simulateSections(onSections([old, { ...clay(), pipeLength: extended.exactLength }], { duty, withCourse: true })).sectionCourses?.[0] ?? {};
    const pipes = [-6, -2, 2, 6].flatMap((x) => [1.4, 2].map((depth) => ({ x: metres(x), depth: metres(depth) })));
    const at = (away: number): ReturnType<typeof neighbourChange> =>
      neighbourChange({
        pipes: [0, 4].flatMap((x) => [1.4, 2].map((depth) => ({ x: metres(x + 6 + away), depth: metres(depth) }))),
        neighbourPipes: pipes,
        soil: soilOf(1.5, 6e-7),
        step: hours(1),
        groundHeats,
        neighbourLength: house.pipeLength,
      });
    expect(at(3).findings.map(({ code }) => code)).toEqual(['section-neighbour']);
    expect(at(3).mostChange).toBeLessThan(-0.2);
    expect(at(15).findings).toEqual([]);
  });
});

it('circuits of unlike length share the flow that their network gives them', () => {
  const pipe = { insideDiameter: diameterMillimetres(26.2) };
  const fluid = { density: kilogramsPerCubicMetre(1035), viscosity: millipascalSeconds(5) };
  // Three circuits of 80 m in one section, two of 100 m in the other.
  const sectionFlows = (lengths: readonly number[]): readonly number[] => {
    const [short = 0, long = 0] = lengths;
    const circuits = [short / 3, short / 3, short / 3, long / 2, long / 2].map((length) => ({ pipe, length: pipeMetres(length) }));
    const flows = solveFlowSplit({ arrangement: 'common manifold', circuits, flow: litresPerSecond(0.5), fluid }).circuits.map(({ flow }) => flow);
    return [flows.slice(0, 3), flows.slice(3)].map((each) => each.reduce((sum, flow) => sum + flow, 0));
  };
  const { sectionsOfLastYear } = simulateSections(onSections([clay(240), clay(200)], { sectionFlows }));
  const [short, long] = sectionsOfLastYear;
  // Laminar: in proportion to circuits over their length.
  expect((short?.flowFraction ?? 0) / (long?.flowFraction ?? 1)).toBeCloseTo(3 / 80 / (2 / 100), 6);
  expect(short?.heatingPart).toBeGreaterThan(short?.pipeShare ?? 1);
});
