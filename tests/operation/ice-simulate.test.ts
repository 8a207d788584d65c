import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twoPipeStacked } from '../../src/ground/index.js';
import { type IceSimulation, type IceSimulationInput, iceRoomOf, simulateWithIce, type YearOfIce } from '../../src/operation/index.js';
import { dayOfYear, hours, kelvinDifference, metres, type PipeLength, pipeMetres } from '../../src/units/index.js';
import { layoutOf } from '../ground/support.js';
import { coursesOf, directInput, evenlyFreezing, runSteadily } from './support/ice-runs.js';
import { heating, house, loads, wave } from './support/plant.js';

const layout = twoPipeStacked({ upperDepth: metres(1.4), lowerDepth: metres(2), trenches: 4, trenchSpacing: metres(4) });
const moist = evenlyFreezing({ thawed: [1.5, 2.5e6], frozen: [1.95, 1.95e6], water: 0.25, range: 0.5 });
const around = {
  ...iceRoomOf(layout),
  soil: moist,
  outsideDiameter: directInput({ layout, outside: 32, soil: moist, heats: [0, 0], ground: [1, 1], step: 1 }).freezingGround.outsideDiameter,
};
/** A house of the tests on a loop of a length [m] in ground of a mean temperature [degC]. */
const iced = (length: number, mean: number, more: Partial<IceSimulationInput> = {}): IceSimulationInput => ({
  ...house,
  duty: { from: 'building', loads: loads.map((load) => Math.max(0, load)), heating },
  ground: wave(mean, 5, 60),
  pipeLength: pipeMetres(length),
  freezingGround: around,
  ...more,
});
const coldest = ({ withIce, withoutIce }: IceSimulation): readonly [number, number] => [
  withIce.lastYear.coldestEntering?.temperature ?? Number.NaN,
  withoutIce.lastYear.coldestEntering?.temperature ?? Number.NaN,
];
const coldestWall = ({ iceOfLastYear }: { readonly iceOfLastYear: YearOfIce }): number => iceOfLastYear.coldestWall;

describe('a house over ground that freezes', () => {
  const result = simulateWithIce(iced(380, 8, { withCourse: true, start: dayOfYear(240) }));
  const { iceOfLastYear, withIce, iceCourse } = result;

  it('is warmer than without ice, thaws in spring and repeats', () => {
    const [ice, plain] = coldest(result);
    expect(ice).toBeGreaterThan(plain + 1);
    expect(ice).toBeLessThan(plain + 4);
    expect(withIce.repeats).toBe(true);
    expect(iceOfLastYear.thawDay).toBeGreaterThan(80);
    expect(iceOfLastYear.thawDay).toBeLessThan(180);
    expect(result.credited).toBe(true);
    expect(result.findings.map(({ code }) => code)).toEqual([]);
  });

  it('takes back in spring what freezing gave, to 1e-9, as the sum of its steps', () => {
    const { freezingEnergy, thawingEnergy } = iceOfLastYear;
    expect(freezingEnergy / thawingEnergy).toBeCloseTo(1, 9);
    const sum = iceCourse?.iceHeats.reduce((total, heat) => total + heat, 0) ?? Number.NaN;
    expect(Math.abs(sum * 3600 * 380)).toBeLessThan(1e-9 * freezingEnergy);
  });

  it('sums up its months', () => {
    const { months = [], frozenRadius, frozenThickness, frozenWater } = iceOfLastYear;
    expect(months).toHaveLength(12);
    expect(Math.max(...months.map((month) => month.frozenRadius))).toBe(frozenRadius);
    expect(months[6]?.frozenRadius).toBe(0);
    expect(frozenRadius - frozenThickness).toBeCloseTo(0.016, 12);
    expect(frozenWater).toBeCloseTo((Math.PI * (frozenRadius ** 2 - 0.016 ** 2) * 0.25) / 2, 9);
  });

  it('solves plant and ice together: the fluid hangs on the wall with ice', () => {
    const course = withIce.lastYear.course;
    const hour = course?.enteringFluids.findIndex((fluid) => fluid === Math.min(...[...course.enteringFluids].filter(Number.isFinite))) ?? -1;
    const heat = course?.groundHeats[hour] ?? Number.NaN;
    const entering = course?.enteringFluids[hour] ?? Number.NaN;
    const mean = entering - heat / (2 * house.heatCapacityRate);
    const film = house.resistanceAt(mean as Parameters<typeof house.resistanceAt>[0]);
    expect(mean + (heat / 380) * film).toBeCloseTo(course?.walls[hour] ?? Number.NaN, 2);
  });
});

describe('ice', () => {
  it('changes nothing, to the last digit, where nothing freezes', () => {
    const { withIce, withoutIce, iceOfLastYear } = simulateWithIce(iced(900, 14, { withCourse: true }));
    expect(withIce.yearOne).toEqual(withoutIce.yearOne);
    expect(withIce.lastYear).toEqual(withoutIce.lastYear);
    expect(withIce.repeats).toBe(withoutIce.repeats);
    expect(iceOfLastYear.frozenRadius).toBe(0);
    expect(iceOfLastYear.mostIceDay).toBeUndefined();
  });

  it('does not count in dry soil, which is said, though its extent is', () => {
    const soil = evenlyFreezing({ thawed: [1.5, 2.5e6], frozen: [1.95, 1.95e6], water: 0.09, range: 0.5 });
    const { withIce, withoutIce, credited, iceOfLastYear, findings } = simulateWithIce(
      iced(380, 8, { freezingGround: { ...around, soil }, withCourse: true }),
    );
    expect(credited).toBe(false);
    expect(withIce.lastYear).toEqual(withoutIce.lastYear);
    expect(iceOfLastYear.frozenRadius).toBeGreaterThan(0.05);
    expect(iceOfLastYear.freezingEnergy).toBe(0);
    expect(findings.map(({ code }) => code)).toEqual(['ice-not-credited']);
  });

  it('tends to the run without ice as latent heat goes and frozen soil is like thawed', () => {
    const gap = (latent: number): number => {
      const soil = evenlyFreezing({ thawed: [1.5, 2.5e6], frozen: [1.5, 2.5e6], water: 0.25, range: 0.5, latent });
      const [ice, plain] = coldest(simulateWithIce(iced(380, 8, { freezingGround: { ...around, soil }, years: 1 })));
      return Math.abs(ice - plain);
    };
    expect(gap(0)).toBeLessThan(1e-6);
    expect(gap(1e4)).toBeLessThan(1e-3);
    expect(gap(1e7)).toBeLessThan(gap(8e7));
  });

  it('holds what it was given: the latent heat of its section, less what it is colder than thawed soil in scaled temperature', () => {
    const result = runSteadily({ layout: layoutOf([[0, 1.5]]), outside: 33.4, soil: moist, heat: 25, warmth: 8, step: 6, steps: 480 });
    const later = runSteadily({ layout: layoutOf([[0, 1.5]]), outside: 33.4, soil: moist, heat: 25, warmth: 8, step: 6, steps: 480, years: 2 });
    const { areas } = coursesOf(result);
    const held = (result.iceCourse?.iceHeats.reduce((sum, heat) => sum + heat, 0) ?? Number.NaN) * 6 * 3600;
    const latent = moist.latentHeat * (areas.at(-1) ?? Number.NaN);
    expect(held).toBeLessThan(latent);
    expect(held).toBeGreaterThan(0.9 * latent);
    expect(later.findings.map(({ code }) => code)).toEqual(['ice-remains']);
  });

  it('is no colder for more water, and grows less, whatever heat and ground', () => {
    const any = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(any(10, 30), any(2, 9), any(0.1, 0.3), any(1.1, 1.6), (heat, warmth, water, times) => {
        const run = (share: number): IceSimulation =>
          runSteadily({
            layout: layoutOf([[0, 1.6]]),
            outside: 32,
            soil: evenlyFreezing({ thawed: [1.5, 2.3e6], frozen: [1.9, 1.8e6], water: share, range: 0.5 }),
            heat,
            warmth,
            step: 12,
            steps: 120,
          });
        const [less, more] = [run(water), run(water * times)];
        // The front steps from ring to ring, which is worth some hundredths of a kelvin.
        expect(coldestWall(more)).toBeGreaterThan(coldestWall(less) - 0.05);
        expect(more.iceOfLastYear.frozenRadius).toBeLessThan(less.iceOfLastYear.frozenRadius * 1.02 + 1e-9);
        expect(coldestWall(less)).toBeGreaterThan(Math.min(...(less.withoutIce.lastYear.course?.walls ?? [])) - 0.05);
      }),
      { numRuns: 30 },
    );
  });

  it('never gives NaN and always balances, in any soil, heat and room', () => {
    const any = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        any(0, 40),
        any(5, 15),
        any(0.1, 0.5),
        any(0.1, 4),
        any(0.12, 3),
        fc.constantFrom(1, 6, 24),
        fc.constantFrom(1, 1.3, 2),
        (heat, mean, water, range, apart, step, gain) => {
          const steps = (365 * 24) / step;
          const course = Array.from({ length: steps }, (_, index) => Math.cos((2 * Math.PI * (index - steps / 20)) / steps));
          const result = simulateWithIce(
            directInput({
              layout: layoutOf([
                [-apart / 2, 1.5],
                [apart / 2, 1.5],
              ]),
              outside: 32,
              soil: evenlyFreezing({ thawed: [1.2, 2.2e6], frozen: [1.2 * gain, 2.2e6 - water * 2e6], water, range }),
              heats: course.map((each) => heat * each + (heat / 3) * Math.sin(1e3 * each)),
              ground: course.map((each) => mean - 5 * each),
              step,
            }),
          );
          const { iced: walls, areas } = coursesOf(result);
          expect([...walls, ...areas].every(Number.isFinite)).toBe(true);
          const { freezingEnergy, thawingEnergy } = result.iceOfLastYear;
          expect(freezingEnergy).toBeGreaterThanOrEqual(0);
          expect(thawingEnergy).toBeGreaterThanOrEqual(0);
          expect(Math.min(...walls)).toBeGreaterThan(Math.min(...(result.withoutIce.lastYear.course?.walls ?? [])) - 0.3);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('thaws in a year whose ground warms, and is said to remain where it does not', () => {
    const steps = 1460;
    const year = (mean: number): IceSimulation => {
      const course = Array.from({ length: steps }, (_, index) => Math.cos((2 * Math.PI * (index - 80)) / steps));
      return simulateWithIce(
        directInput({
          layout: layoutOf([[0, 1.5]]),
          outside: 32,
          soil: moist,
          heats: course.map((each) => 18 * Math.max(0, each)),
          ground: course.map((each) => mean - 4 * each),
          step: 6,
          years: 2,
        }),
      );
    };
    for (const mean of [6, 8]) {
      const { iceOfLastYear, findings } = year(mean);
      expect(iceOfLastYear.mostIceDay).toBeDefined();
      expect(iceOfLastYear.thawDay).toBeDefined();
      expect(findings.map(({ code }) => code)).not.toContain('ice-remains');
    }
    const frost = year(-2.5);
    expect(frost.findings.map(({ code }) => code)).toEqual(['frost-at-pipes']);
    expect(frost.credited).toBe(false);
  });

  it('stops counting where fronts meet, and says when', () => {
    const result = simulateWithIce(iced(200, 7, { freezingGround: { ...around, nearestPipe: metres(0.3) }, years: 2 }));
    expect(result.iceReach).toBe(0.15);
    expect(result.iceOfLastYear.mergeDay).toBeDefined();
    expect(result.iceOfLastYear.frozenRadius).toBeLessThanOrEqual(0.15 + 1e-9);
    expect(result.findings.map(({ code }) => code)).toContain('ice-merged');
  });

  it('is the same whatever the step, to 0.1 K and 4 % of the radius', () => {
    const run = (step: number): IceSimulation =>
      runSteadily({ layout: layoutOf([[0, 1.5]]), outside: 33.4, soil: moist, heat: 25, warmth: 8, step, steps: (120 * 24) / step });
    const fine = run(1);
    for (const coarse of [run(6), run(24)]) {
      expect(Math.abs(coldestWall(coarse) - coldestWall(fine))).toBeLessThan(0.1);
      expect(Math.abs(coarse.iceOfLastYear.frozenRadius / fine.iceOfLastYear.frozenRadius - 1)).toBeLessThan(0.04);
    }
  });

  it('follows a loop that starts in autumn over New Year', () => {
    const { iceOfYearOne } = simulateWithIce(iced(380, 8, { start: dayOfYear(260), years: 1 }));
    expect(iceOfYearOne.mostIceDay).toBeLessThan(120);
    expect(iceOfYearOne.thawDay).toBeLessThan(200);
  });

  it('refuses pipes and soil that cannot be', () => {
    const wrong =
      (ice: Partial<IceSimulationInput['freezingGround']>): (() => unknown) =>
      () =>
        simulateWithIce(iced(380, 8, { freezingGround: { ...around, ...ice } }));
    expect(wrong({ nearestPipe: metres(0.04) })).toThrow('nearestPipe');
    expect(
      wrong({ soil: { ...moist, latentHeat: evenlyFreezing({ thawed: [1, 2e6], frozen: [1, 2e6], water: 0.4, range: 1 }).latentHeat } }),
    ).toThrow('latentHeat');
    expect(wrong({ soil: { ...moist, freezing: { type: 'range', range: kelvinDifference(0) } } })).toThrow('range');
    expect(() => simulateWithIce(iced(380, 8, { step: hours(0) }))).toThrow('step');
    expect(() => simulateWithIce(iced(380, 8, { pipeLength: Number.NaN as PipeLength }))).toThrow('pipeLength');
  });
});
