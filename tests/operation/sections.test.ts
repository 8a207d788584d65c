import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LoopSection, type SectionedSimulation, type SectionFlows, simulate, simulateSections } from '../../src/operation/index.js';
import { electricWatts, fraction, hours, pipeMetreKelvinPerWatt, type PipeResistance, ratio, type Temperature } from '../../src/units/index.js';
import { between, courseOf, knownFilm, stages } from './support/levels.js';
import { cooling, heating, HOURS, house, loads, wave } from './support/plant.js';
import { clay, extremes, lengthOf, onSections, sand } from './support/sections.js';

const whole = { ...house, resistanceAt: knownFilm };
const pump = { powerAt: () => electricWatts(150), heatShare: fraction(0.8) };
/** A year of three weeks in winter and three in summer, for properties. */
const weeks = (of: ArrayLike<number>): Float64Array =>
  Float64Array.from({ length: 1000 }, (_, hour) => of[hour < 500 ? hour : hour + 4000] ?? Number.NaN);
const short = (section: LoopSection): LoopSection => ({ ...section, ground: weeks(section.ground) });
const shortDuty = { from: 'building', loads: weeks(loads), heating, cooling } as const;
const near = (one: readonly (number | undefined)[], other: readonly (number | undefined)[], off = 1e-9): void => {
  expect(one).toHaveLength(other.length);
  const apart = one.map((each, index) => Math.abs((each ?? Number.NaN) - (other[index] ?? Number.NaN)));
  expect(apart.reduce((most, each) => (each <= most ? most : each), 0)).toBeLessThanOrEqual(off);
};
const at = (list: ArrayLike<number>, index: number): number => list[index] ?? Number.NaN;
const coldest = ({ lastYear }: Pick<SectionedSimulation, 'lastYear'>): number => lastYear.coldestEntering?.temperature ?? Number.NaN;

describe('a loop of equal sections', () => {
  const variants = [
    ['as it is', {}],
    ['with a pump', { pump }],
    ['at the ends of its runs', { cyclesPerHour: ratio(3) }],
    [
      'with a unit of two stages',
      { duty: { from: 'building', loads, heating: stages(heating, [0.6, 1], 'stages', 0.1), cooling }, cyclesPerHour: ratio(3) },
    ],
    ['with hot water', { duty: { from: 'building', loads, heating, cooling, hotWater: { loads: wave(300, 50, 20), heating } } }],
  ] as const;

  it.each(variants)('is the loop of all their pipe, %s', (_, more) => {
    const one = simulate({ ...whole, ...more, years: 2, withCourse: true });
    for (const sections of [[clay()], [clay(216), clay(216)], [clay(100), clay(300), clay(32)]]) {
      const together = simulateSections(onSections(sections, { ...more, years: 2, withCourse: true }));
      for (const year of ['yearOne', 'lastYear'] as const) {
        near(extremes(together[year]), extremes(one[year]));
        near([together[year].heating.groundEnergy / one[year].heating.groundEnergy], [1], 1e-10);
        near([...courseOf(together[year]).walls], [...courseOf(one[year]).walls]);
        near([...courseOf(together[year]).unitPowers], [...courseOf(one[year]).unitPowers], 1e-6);
      }
      expect(together.sectionsOfLastYear.map(({ heatingPart }) => heatingPart)).toEqual(
        together.sectionsOfLastYear.map(({ pipeShare }) => expect.closeTo(pipeShare, 9)),
      );
      expect(together.conventions).toEqual(one.conventions);
      expect(together.findings).toEqual(one.findings);
    }
  });

  it('settles to the same year that repeats', () => {
    const together = simulateSections(onSections([clay(232), clay(200)]));
    expect(together.repeats).toBe(true);
    expect(Math.abs(together.drift)).toBeLessThan(0.001);
    // Either is within 0.0005 K of the year that it would settle at, by each term.
    near(extremes(together.lastYear), extremes(simulate(whole).lastYear), 1e-3);
  });
});

describe('a loop of unlike sections', () => {
  const both = simulateSections(onSections([clay(250), sand(180)], { withCourse: true, pump }));

  it('settles where many years lead', () => {
    expect(both.repeats).toBe(true);
    near(extremes(simulateSections(onSections([clay(250), sand(180)], { years: 100, pump })).lastYear), extremes(both.lastYear), 5e-3);
  });

  it('does not depend on their order', () => {
    const turned = simulateSections(onSections([sand(180), clay(250)], { withCourse: true, pump }));
    near([...courseOf(turned.lastYear).walls], [...courseOf(both.lastYear).walls]);
    expect(turned.sectionsOfLastYear[0]?.heatingPart).toBeCloseTo(both.sectionsOfLastYear[1]?.heatingPart ?? Number.NaN, 9);
  });

  it('lies between the loops of either ground alone', () => {
    const alone = [clay(430), sand(430)].map((section) => coldest(simulateSections(onSections([section], { pump }))));
    expect(coldest(both)).toBeGreaterThan(alone[1] ?? Number.NaN);
    expect(coldest(both)).toBeLessThan(alone[0] ?? Number.NaN);
    const [inClay, inSand] = both.sectionsOfLastYear;
    expect(inClay?.heatingPart).toBeGreaterThan(inClay?.pipeShare ?? 1);
    expect((inClay?.heatingPart ?? 0) + (inSand?.heatingPart ?? 0)).toBeCloseTo(1, 12);
  });

  it('balances to 1e-9: house, unit, pump and the ground of each', () => {
    for (const [year, sections] of [
      [both.yearOne, both.sectionsOfYearOne],
      [both.lastYear, both.sectionsOfLastYear],
    ] as const) {
      const sum = (of: (section: (typeof sections)[number]) => number): number => sections.reduce((total, each) => total + of(each), 0);
      expect(sum(({ heatingEnergy }) => heatingEnergy) / year.heating.groundEnergy).toBeCloseTo(1, 10);
      expect(sum(({ coolingEnergy }) => coolingEnergy) / year.cooling.groundEnergy).toBeCloseTo(1, 10);
      expect(sum(({ netGroundEnergy }) => netGroundEnergy) / (year.heating.groundEnergy - year.cooling.groundEnergy)).toBeCloseTo(1, 10);
      const { metEnergy, groundEnergy, unitElectricity, circulatorElectricity } = year.heating;
      expect((groundEnergy + unitElectricity + 0.8 * circulatorElectricity) / metEnergy).toBeCloseTo(1, 9);
    }
  });

  it('is not changed by a section without length to speak of', () => {
    near(extremes(simulateSections(onSections([clay(250), sand(180), sand(0.001)], { pump })).lastYear), extremes(both.lastYear), 1e-4);
  });

  it('splits its flow by length of pipe, as told, or as a function of the lengths tells', () => {
    const sections = [clay(250), sand(180)];
    const by = (sectionFlows: SectionFlows): SectionedSimulation => simulateSections(onSections(sections, { sectionFlows, pump }));
    const told = by([25, 18]);
    near(extremes(told.lastYear), extremes(both.lastYear));
    near(extremes(by((lengths) => lengths.map((length) => 2 * length)).lastYear), extremes(both.lastYear));
    const starved = by([9, 1]);
    expect(starved.sectionsOfLastYear[1]?.flowFraction).toBeCloseTo(0.1, 12);
    expect(starved.sectionsOfLastYear[1]?.heatingPart).toBeLessThan(told.sectionsOfLastYear[1]?.heatingPart ?? 0);
    expect(coldest(starved)).toBeLessThan(coldest(told));
  });

  it('gains by a section in ground that hardly answers, up to that ground', () => {
    const steadyRise = pipeMetreKelvinPerWatt(1e-6);
    const perfect = {
      ...sand(180),
      ground: new Float64Array(HOURS).fill(9),
      response: { terms: [{ timeConstant: hours(10), rise: steadyRise }], steadyRise },
    };
    const gain = simulateSections(onSections([clay(250), perfect], { pump }));
    expect(coldest(gain)).toBeGreaterThan(coldest(both) + 1);
    const [, own] = gain.sectionsOfLastYear;
    expect(own?.coldestWall).toBeGreaterThan(8.99);
    expect(coldest(gain)).toBeLessThan(9);
  });

  it('tells of a section that gives little', () => {
    const poor = { ...sand(200), resistanceAt: () => pipeMetreKelvinPerWatt(3) };
    const { findings } = simulateSections(onSections([clay(300), poor]));
    expect(findings.find(({ code }) => code === 'section-lags')).toMatchObject({ values: { section: 2, pipeShare: 0.4 } });
    expect(both.findings.map(({ code }) => code)).not.toContain('section-lags');
  });
});

describe('any sections', () => {
  /** A film in a straight line, which its table follows exactly. */
  const film = (mean: Temperature): PipeResistance => pipeMetreKelvinPerWatt(0.15 - 0.002 * mean);
  const section = fc.tuple(fc.boolean(), between(20, 400), between(0.3, 3));

  it('share the heat of the loop, each by the fluid that enters it, its film and its wall', () => {
    fc.assert(
      fc.property(fc.array(section, { minLength: 1, maxLength: 4 }), between(0.5, 1.5), (drawn, share) => {
        const sections = drawn.map(([inClay, length]) => ({ ...short((inClay ? clay : sand)(length)), resistanceAt: film }));
        const sum = (each: readonly number[]): number => each.reduce((total, one) => total + one, 0);
        const flows = drawn.map(([, length, more]) => length * more);
        const duty = { ...shortDuty, loads: shortDuty.loads.map((load) => (load * share * sum(sections.map(lengthOf))) / 600) };
        const { lastYear, sectionCourses = [] } = simulateSections(onSections(sections, { duty, years: 1, withCourse: true, sectionFlows: flows }));
        const course = courseOf(lastYear);
        const ran = [...course.groundHeats.keys()].filter((hour) => course.runShares[hour] !== 0);
        let [unequal, offUnit, offWall] = [0, 0, 0];
        for (const hour of ran) {
          const heats = sectionCourses.map(({ groundHeats }) => at(groundHeats, hour));
          const heat = at(course.groundHeats, hour);
          unequal = Math.max(unequal, Math.abs(sum(heats) - heat) / Math.max(1000, Math.abs(heat)));
          for (const [index, { meanFluids, walls }] of sectionCourses.entries()) {
            const running = at(heats, index) / at(course.runShares, hour);
            const fluid = at(meanFluids, hour);
            const half = (running * sum(flows)) / (2 * house.heatCapacityRate * at(flows, index));
            const byFilm = fluid + (running * film(fluid as Temperature)) / at(sections.map(lengthOf), index);
            offUnit = Math.max(offUnit, Math.abs(fluid - half - at(course.leavingFluids, hour)));
            offWall = Math.max(offWall, Math.abs(byFilm - at(walls, hour)));
          }
        }
        expect(ran.length).toBeGreaterThan(100);
        expect(unequal).toBeLessThanOrEqual(1e-9);
        // The last step of Newton's way, below 1e-3 K, moves the fluid at the unit and not the heat, which over half of the range is a tenth of that and more.
        expect(offUnit).toBeLessThan(1e-3);
        // The film is read where the fluid was before that step: up to 1e-3 K · 0.002 m.K/(W.K) · 100 W/m off.
        expect(offWall).toBeLessThan(3e-4);
      }),
      { numRuns: 12 },
    );
  });
});
