import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FluidStore, type LoopSection, type SectionedSimulation, simulateSections } from '../../src/operation/index.js';
import {
  diameterMillimetres,
  hours,
  joulesPerCubicMetreKelvin,
  minutes,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { between, courseOf } from './support/levels.js';
import { cooling, heating, loads } from './support/plant.js';
import { clay, extremes, onSections, sand } from './support/sections.js';

const at = (list: ArrayLike<number>, index: number): number => list[index] ?? Number.NaN;
const store = (heatCapacity: number, wallHeatCapacity?: number): FluidStore => ({
  insideDiameter: diameterMillimetres(26.2),
  outsideDiameter: diameterMillimetres(32),
  heatCapacity: joulesPerCubicMetreKelvin(heatCapacity),
  ...(wallHeatCapacity !== undefined && { wallHeatCapacity: joulesPerCubicMetreKelvin(wallHeatCapacity) }),
});
/** Brine, and polyethylene. */
const brine = store(3.9e6);
/** Joules that a metre takes with each kelvin. */
const HELD = (Math.PI / 4) * (0.0262 ** 2 * 3.9e6 + (0.032 ** 2 - 0.0262 ** 2) * 2.1e6);
const keeping = (section: LoopSection, fluidStore = brine): LoopSection => ({ ...section, fluidStore });
const coldest = ({ lastYear }: SectionedSimulation): number => lastYear.coldestEntering?.temperature ?? Number.NaN;

describe('what fluid and pipe wall store', () => {
  const without = simulateSections(onSections([clay(250), sand(180)]));
  const stored = simulateSections(
    onSections(
      [clay(250), sand(180)].map((each) => keeping(each)),
      { withCourse: true },
    ),
  );

  it('is nothing without capacity', () => {
    const empty = simulateSections(onSections([clay(250), sand(180)].map((each) => keeping(each, store(0, 0)))));
    expect(extremes(empty.lastYear)).toEqual(extremes(without.lastYear).map((each) => expect.closeTo(each ?? Number.NaN, 9)));
    expect(empty.sectionsOfLastYear.map(({ storedEnergy }) => storedEnergy)).toEqual([expect.closeTo(0, 12), expect.closeTo(0, 12)]);
    expect(without.sectionsOfLastYear[0]).not.toHaveProperty('storedEnergy');
  });

  it('balances to 1e-9 with the heat from the ground and that of the unit', () => {
    for (const [year, sections] of [
      [stored.yearOne, stored.sectionsOfYearOne],
      [stored.lastYear, stored.sectionsOfLastYear],
    ] as const) {
      const fromGround = sections.reduce((sum, { netGroundEnergy }) => sum + netGroundEnergy, 0);
      const held = sections.reduce((sum, { storedEnergy = Number.NaN }) => sum + storedEnergy, 0);
      const drawn = year.heating.groundEnergy - year.cooling.groundEnergy;
      expect(Math.abs(fromGround - held - drawn)).toBeLessThan(1e-9 * year.heating.groundEnergy);
      const { metEnergy, groundEnergy, unitElectricity } = year.heating;
      expect((groundEnergy + unitElectricity) / metEnergy).toBeCloseTo(1, 9);
    }
    // The first year begins at the undisturbed ground and ends in winter: what is held then is less.
    expect(stored.sectionsOfYearOne[0]?.storedEnergy).toBeLessThan(-1e5);
  });

  it('keeps the year and takes the edge off its hardest hours, by tenths of a kelvin at most', () => {
    expect(stored.repeats).toBe(true);
    const [[cold, , warm], [coldBare, , warmBare]] = [extremes(stored.lastYear), extremes(without.lastYear)];
    expect(cold).toBeGreaterThan(coldBare ?? 0);
    expect(warm).toBeLessThan(warmBare ?? 0);
    expect((cold ?? 0) - (coldBare ?? 0)).toBeLessThan(0.2);
    expect((warmBare ?? 0) - (warm ?? 0)).toBeLessThan(0.2);
    expect(stored.lastYear.heating.unitElectricity / without.lastYear.heating.unitElectricity).toBeCloseTo(1, 3);
  });

  it('goes to its end in the steps of an implicit rule, by the capacity of water and wall', () => {
    // Ground that does not move: fluid = ground − heat · film/length · (1 − (1 + c)^−n), c = step/(film · capacity of a metre).
    const film = 0.2;
    const length = 100;
    const rise = pipeMetreKelvinPerWatt(0);
    const count = 48;
    const { sectionCourses = [] } = simulateSections({
      step: minutes(5),
      duty: { from: 'ground', loads: Float64Array.from({ length: count }, (_, index) => (index < 24 ? 2000 : 0)) },
      heatCapacityRate: wattsPerKelvin(1000),
      sections: [
        {
          pipeLength: pipeMetres(length),
          ground: new Float64Array(count).fill(10),
          response: { terms: [{ timeConstant: hours(1), rise }], steadyRise: rise },
          resistanceAt: () => pipeMetreKelvinPerWatt(film),
          fluidStore: brine,
        },
      ],
      years: 1,
      withCourse: true,
    });
    const [{ meanFluids, groundHeats } = { meanFluids: new Float64Array(), groundHeats: new Float64Array() }] = sectionCourses;
    const each = 1 + 300 / (film * HELD);
    for (let n = 1; n <= 24; n += 1) {
      expect(at(meanFluids, n - 1)).toBeCloseTo(10 - ((2000 * film) / length) * (1 - each ** -n), 6);
    }
    const last = 10 - at(meanFluids, 23);
    for (let n = 1; n <= 24; n += 1) {
      expect(at(meanFluids, 23 + n)).toBeNaN();
      expect(at(groundHeats, 23 + n)).toBeCloseTo((last * each ** -n * length) / film, 3);
    }
  });

  it('matters most in the first hour of a lasting heat, and hardly after a day', () => {
    const lasting = (fluidStore?: FluidStore): Float64Array => {
      const count = 288;
      const section = {
        ...clay(400),
        ground: new Float64Array(count).fill(9),
        resistanceAt: () => pipeMetreKelvinPerWatt(0.15),
        ...(fluidStore && { fluidStore }),
      };
      const duty = { from: 'ground', loads: new Float64Array(count).fill(6000) } as const;
      return courseOf(simulateSections(onSections([section], { step: minutes(5), duty, years: 1, withCourse: true })).lastYear).enteringFluids;
    };
    const [bare, held] = [lasting(), lasting(brine)];
    const off = bare.map((each, index) => at(held, index) - each);
    expect(off[0]).toBeGreaterThan(2);
    expect(off[11]).toBeLessThan(at(off, 0) / 5);
    expect(off[287]).toBeLessThan(0.03);
    off.forEach((each, index) => {
      expect(each).toBeGreaterThan(0);
      if (index > 0) expect(each).toBeLessThanOrEqual(at(off, index - 1));
    });
  });
});

it('more capacity brings the extremes of any loop nearer to the mean of its hours', () => {
  const part = (of: ArrayLike<number>): Float64Array => Float64Array.from({ length: 600 }, (_, hour) => at(of, hour));
  const duty = { from: 'building', loads: part(loads), heating, cooling } as const;
  fc.assert(
    fc.property(between(200, 600), between(0, 4e6), between(1e5, 4e6), (length, capacity, more) => {
      const year = (heatCapacity: number): number =>
        coldest(simulateSections(onSections([keeping({ ...clay(length), ground: part(clay().ground) }, store(heatCapacity))], { duty, years: 1 })));
      expect(year(capacity + more)).toBeGreaterThanOrEqual(year(capacity) - 1e-4);
    }),
    { numRuns: 15 },
  );
});
