import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PerformanceMap, performanceMap, stagedUnit } from '../../src/heat-pump/index.js';
import { regretTable, type SimulatedYear, simulate, type SimulationInput, sizeLoop } from '../../src/operation/index.js';
import { celsius, electricWatts, fraction, pipeMetreKelvinPerWatt, pipeMetres, type Power, ratio, type Temperature } from '../../src/units/index.js';
import { cooling, heating, house, loads } from './support/plant.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const scaled = (map: PerformanceMap, share: number, better: number): PerformanceMap =>
  performanceMap({
    mode: map.mode,
    points: map.points.map(({ enteringFluid, capacity, cop }) => ({
      enteringFluid,
      capacity: (share * capacity) as Power,
      cop: ratio(better * cop),
    })),
  });
/** The invented unit at 55 °C: 5 % less heat at two thirds of the COP. */
const hotter = scaled(heating, 0.95, 0.66);
const film = { resistanceAt: (): ReturnType<typeof pipeMetreKelvinPerWatt> => pipeMetreKelvinPerWatt(0.1) };
const year = (duty: object, more: Partial<SimulationInput> = {}): SimulatedYear =>
  simulate({ ...house, ...film, duty: { from: 'building', loads, heating, cooling, ...duty }, years: 1, withCourse: true, ...more }).lastYear;
/** 2 kW for three hours from six in the morning and one in the evening. */
const daily = loads.map((_, hour) => ([6, 7, 8, 20].includes(hour % 24) ? 2000 : 0));
const courseOf = ({ course }: SimulatedYear): NonNullable<SimulatedYear['course']> => {
  if (course === undefined) throw new Error('no course');
  return course;
};

describe('hot water by the hour', () => {
  it('that nobody asks for changes nothing', () => {
    const [without, none] = [year({}), year({ hotWater: { loads: daily.map(() => 0), heating: hotter } })];
    expect(none.hotWater).toMatchObject({ energy: 0, unitElectricity: 0, runTime: 0, coveredShare: 1 });
    expect(none.coldestEntering).toEqual(without.coldestEntering);
    expect(none.heating).toEqual(without.heating);
    expect(none.cooling).toEqual(without.cooling);
    expect(without.hotWater).toBeUndefined();
  });

  it('alone is a load of heating on its own map', () => {
    const quiet = loads.map(() => 0);
    const hot = year({ loads: quiet, hotWater: { loads: daily, heating: hotter } });
    const heat = year({ loads: daily, heating: hotter });
    // Without a load of the house no step foretells the next, so Newton's way comes from elsewhere.
    for (const name of [
      'energy',
      'metEnergy',
      'unitElectricity',
      'groundEnergy',
      'runTime',
      'fullHeatTime',
      'coldestFluid',
      'warmestFluid',
    ] as const) {
      expect((hot.hotWater?.[name] ?? Number.NaN) / (heat.heating[name] ?? Number.NaN), name).toBeCloseTo(1, 9);
    }
    expect(hot.coldestEntering?.day).toBe(heat.coldestEntering?.day);
    const walls = courseOf(heat).walls;
    expect(Math.max(...courseOf(hot).walls.map((wall, hour) => Math.abs(wall - (walls[hour] ?? Number.NaN))))).toBeLessThan(1e-6);
    expect(hot.heating).toMatchObject({ energy: 0, runTime: 0, unitElectricity: 0, groundEnergy: 0 });
  });

  it('takes its time first, and the house what is left, each by its own map at the fluid of the hour', () => {
    const result = year({ hotWater: { loads: daily, heating: hotter } });
    const course = courseOf(result);
    const { hotWater } = course;
    if (hotWater === undefined) throw new Error('no hot water');
    let compared = 0;
    loads.forEach((load, hour) => {
      const hot = daily[hour] ?? 0;
      if (load <= 0 || hot <= 0) return;
      compared += 1;
      // The fluid is reported at the service that draws more, which lies up to half a kelvin from the mean at which both are read.
      const entering = course.enteringFluids[hour] as Temperature;
      const share = hot / hotter.continuedAt(entering).capacity;
      expect(hotWater.runShares[hour]).toBeCloseTo(share, 2);
      const left = Math.min(1 - share, load / heating.continuedAt(entering).capacity);
      expect(course.runShares[hour]).toBeCloseTo(share + left, 2);
      expect((course.unmetLoads[hour] ?? 0) > 0).toBe((course.runShares[hour] ?? 0) > 1 - 1e-9);
    });
    expect(compared).toBeGreaterThan(500);
    expect(result.hotWater?.unmetEnergy).toBe(0);
    expect(result.hotWater?.performanceFactor).toBeLessThan(0.75 * (result.heating.performanceFactor ?? Number.NaN));
  });

  it('of any course and unit balances: heat = ground + electricity for each service, time within the step, what is short left over', () => {
    const any = fc.record({
      rows: fc.array(fc.tuple(between(-12_000, 14_000), fc.oneof(fc.constant(0), between(0, 12_000))), { minLength: 20, maxLength: 50 }),
      staged: fc.boolean(),
      loss: between(0, 0.4),
      share: between(0, 1),
      length: between(200, 2000),
    });
    fc.assert(
      fc.property(any, ({ rows, staged, loss, share, length }) => {
        const cyclingLoss = (wanted: number): ReturnType<typeof ratio> => ratio(1 - loss * (1 - wanted));
        const space = staged ? stagedUnit({ levels: [scaled(heating, 0.5, 1.1), heating], between: 'stages', cyclingLoss }) : heating;
        const result = year(
          { loads: rows.map(([load]) => load), heating: space, hotWater: { loads: rows.map(([, hot]) => hot), heating: hotter } },
          {
            ground: rows.map(() => 9),
            pipeLength: pipeMetres(length),
            pump: { powerAt: () => electricWatts(120), heatShare: fraction(share) },
          },
        );
        const total = rows.reduce((sum, [load, hot]) => sum + Math.abs(load) + hot, 0) * 3600;
        const { hotWater: hot } = result;
        if (hot === undefined) throw new Error('no hot water');
        for (const [book, sign] of [[result.heating, 1] as const, [result.cooling, -1] as const, [hot, 1] as const]) {
          const used = book.unitElectricity - (book.cyclingElectricity ?? 0) + share * book.circulatorElectricity;
          expect(Math.abs(book.metEnergy - book.groundEnergy - sign * used)).toBeLessThanOrEqual(1e-9 * total);
          expect(Math.abs(book.metEnergy + book.unmetEnergy - book.energy)).toBeLessThanOrEqual(1e-9 * total);
        }
        const course = courseOf(result);
        rows.forEach(([load], step) => {
          const [all, first] = [course.runShares[step] ?? Number.NaN, course.hotWater?.runShares[step] ?? Number.NaN];
          expect(all).toBeLessThanOrEqual(1 + 1e-12);
          expect(first).toBeLessThanOrEqual(all + 1e-12);
          expect((course.unmetLoads[step] ?? Number.NaN) * load).toBeGreaterThanOrEqual(0);
          if (load !== 0) expect(Number.isFinite(course.enteringFluids[step])).toBe(true);
          // Before hot water falls short, the house has nothing.
          if ((course.hotWater?.unmetLoads[step] ?? 0) > 0) expect(Math.abs((course.unmetLoads[step] ?? Number.NaN) - load)).toBe(0);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('counts in the length of a loop and in what other lengths cost', () => {
    const duty = { from: 'building', loads, heating, cooling, hotWater: { loads: daily, heating: hotter } } as const;
    const limits = { lowestEntering: celsius(-4) };
    const size = (each: SimulationInput['duty']): number => sizeLoop({ ...house, ...film, duty: each, limits }).exactLength;
    expect(size(duty)).toBeGreaterThan(1.01 * size({ from: 'building', loads, heating, cooling }));
    const [row] = regretTable({ ...house, ...film, duty, limits, lengthRatios: [ratio(1)] });
    const { lastYear } = simulate({ ...house, ...film, duty });
    const used = [lastYear.heating, lastYear.cooling, lastYear.hotWater].reduce((sum, book) => sum + (book?.unitElectricity ?? 0), 0);
    expect((row?.usedElectricity ?? Number.NaN) / used).toBeCloseTo(1, 4);
    expect(lastYear.months?.[0]?.hotWater?.energy).toBe(31 * 4 * 2000 * 3600);
  });

  it('beyond its rating points is told', () => {
    const warm = performanceMap({
      mode: 'heating',
      points: hotter.points.slice(3).map(({ enteringFluid, capacity, power }) => ({ enteringFluid, capacity, power })),
    });
    const { findings } = simulate({
      ...house,
      ...film,
      duty: { from: 'building', loads, heating, cooling, hotWater: { loads: daily, heating: warm } },
    });
    expect(findings).toMatchObject([{ code: 'map-extrapolated', values: { mode: 'heating', lowest: 10 } }]);
  });

  it('is refused where it is none', () => {
    const run =
      (hotWater: unknown): (() => unknown) =>
      () =>
        year({ hotWater });
    expect(run(5)).toThrow(expect.objectContaining({ argument: 'duty.hotWater' }));
    expect(run({ loads: daily, heating: cooling })).toThrow(expect.objectContaining({ argument: 'duty.hotWater.heating.mode' }));
    expect(run({ loads: daily.subarray(1), heating: hotter })).toThrow(expect.objectContaining({ argument: 'duty.hotWater.loads' }));
    expect(run({ loads: daily.map((each) => -each), heating: hotter })).toThrow('duty.hotWater.loads.6');
    expect(run({ loads: daily, heating: stagedUnit({ levels: [hotter], between: 'stages' }) })).toThrow('one map');
    expect(run({ loads: daily, heating: hotter, supplyTemperature: Number.NaN })).toThrow('supplyTemperature');
  });
});
