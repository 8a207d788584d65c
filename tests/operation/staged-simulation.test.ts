import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PerformanceMap, performanceMap, type StagedUnit, stagedUnit, unitsTogether } from '../../src/heat-pump/index.js';
import { type SimulatedYear, sizeLoop } from '../../src/operation/index.js';
import {
  celsius,
  electricWatts,
  type ElectricPower,
  fraction,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  type Power,
  ratio,
  type Temperature,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { between, courseOf, knownFilm, scaled, stages, year } from './support/levels.js';
import { cooling, heating, house, loads } from './support/plant.js';

describe('a unit of several levels by the hour', () => {
  it('of one level gives bit for bit what its map gives', () => {
    const one = (map: PerformanceMap): StagedUnit => stagedUnit({ levels: [map], between: 'stages' });
    // A course of its own for the loss by cycling, which is none.
    const withoutCycling = (result: SimulatedYear): SimulatedYear => {
      const { cyclingPowers, ...course } = courseOf(result);
      expect(cyclingPowers?.every((each) => each === 0)).toBe(true);
      return { ...result, course };
    };
    const [plain, staged] = [year({}), year({ heating: one(heating), cooling: one(cooling) })];
    expect(withoutCycling(staged)).toEqual(plain);
    expect(plain.heating.fullHeatTime).toBe(plain.heating.runTime);
    expect(withoutCycling(year({ heating: one(heating) }))).toEqual(plain);
  });

  it('always converges: fractions from 0 to 1, auxiliary exactly the rest, heat = ground + electricity − loss by cycling', () => {
    const any = fc.record({
      levels: fc.array(between(1.05, 3), { minLength: 1, maxLength: 5 }),
      kind: fc.constantFrom('stages' as const, 'speeds' as const),
      loss: fc.option(between(0, 0.5), { nil: undefined }),
      series: fc.array(between(-12_000, 16_000), { minLength: 20, maxLength: 60 }),
      share: between(0, 1),
      top: between(0.6, 1.4),
      length: between(150, 2000),
      starts: fc.option(between(0.5, 6), { nil: undefined }),
    });
    fc.assert(
      fc.property(any, ({ levels, kind, loss, series, share, top, length, starts }) => {
        const rising = levels.reduce<number[]>((all, more) => [...all, (all.at(-1) ?? 1) * more], []);
        const shares = rising.map((each) => (top * each) / (rising.at(-1) ?? 1));
        const units = { heating: stages(heating, shares, kind, loss), cooling: stages(cooling, shares, kind, loss) };
        const {
          heating: heat,
          cooling: cold,
          course,
        } = year(
          { loads: series, ...units },
          {
            ground: series.map(() => 9),
            pipeLength: pipeMetres(length),
            resistanceAt: knownFilm,
            pump: { powerAt: () => electricWatts(120), heatShare: fraction(share) },
            ...(starts === undefined ? {} : { cyclesPerHour: ratio(starts) }),
          },
        );
        if (course === undefined) throw new Error('no course');
        const total = series.reduce((sum, each) => sum + Math.abs(each), 0) * 3600;
        for (const [book, sign] of [[heat, 1] as const, [cold, -1] as const]) {
          const electricity = book.unitElectricity - (book.cyclingElectricity ?? 0) + share * book.circulatorElectricity;
          expect(Math.abs(book.metEnergy - book.groundEnergy - sign * electricity)).toBeLessThanOrEqual(1e-9 * total);
          expect(Math.abs(book.metEnergy + book.unmetEnergy - book.energy)).toBeLessThanOrEqual(1e-9 * total);
        }
        series.forEach((load, step) => {
          const unmet = course.unmetLoads[step] ?? Number.NaN;
          expect(unmet * load).toBeGreaterThanOrEqual(0);
          if (load !== 0) expect(Number.isFinite(course.enteringFluids[step])).toBe(true);
          for (const each of [course.runShares[step], course.fullHeatShares[step]]) {
            expect(each).toBeGreaterThanOrEqual(0);
            expect(each).toBeLessThanOrEqual(1 + 1e-12);
          }
          // All of its levels before any auxiliary heat.
          if (unmet !== 0) expect(course.fullHeatShares[step]).toBeCloseTo(1, 9);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('is in every hour what the unit itself says at the fluid of that hour', () => {
    const unit = stages(heating, [0.3, 0.6, 1], 'speeds', 0.15);
    const course = courseOf(year({ heating: unit }));
    let compared = 0;
    loads.forEach((load, hour) => {
      const entering = course.enteringFluids[hour] ?? Number.NaN;
      if (load <= 0 || entering < unit.usable.lowest || entering > unit.usable.highest) return;
      compared += 1;
      const state = unit.at(entering as Temperature, load as Power);
      // The last Newton step moves the fluid by under 1e-3 K, and the table of the unit is good to 1e-6.
      expect(Math.abs((course.unitPowers[hour] ?? Number.NaN) / state.power - 1)).toBeLessThan(1e-4);
      expect(Math.abs((course.groundHeats[hour] ?? Number.NaN) / state.groundHeat - 1)).toBeLessThan(1e-4);
      expect(Math.abs((course.runShares[hour] ?? Number.NaN) - state.runFraction)).toBeLessThan(1e-4);
      expect(Math.abs((course.fullHeatShares[hour] ?? Number.NaN) - state.heatFraction)).toBeLessThan(1e-4);
    });
    expect(compared).toBeGreaterThan(4000);
  });

  it('runs longer than at full speed alone, at a better COP, with the same need of full heat but for the better COP', () => {
    const [single, staged] = [year({}).heating, year({ heating: stages(heating, [0.4, 0.7, 1], 'speeds') }).heating];
    expect(staged.runTime).toBeGreaterThan(1.5 * single.runTime);
    expect(staged.unitElectricity).toBeLessThan(0.95 * single.unitElectricity);
    expect(staged.fullHeatTime).toBeLessThan(0.8 * staged.runTime);
    expect(staged.fullHeatTime).toBeGreaterThan(single.fullHeatTime);
  });

  it('reports the fluid at the harder of two stages, so that a stage of much heat is not averaged away', () => {
    const course = courseOf(year({ heating: stages(heating, [0.5, 1]) }));
    const even = courseOf(year({ heating: stages(heating, [0.5, 1], 'speeds') }));
    let colder = 0;
    loads.forEach((load, hour) => {
      if (load <= 0) return;
      const [entering, evenly] = [course.enteringFluids[hour] ?? 0, even.enteringFluids[hour] ?? 0];
      expect(entering).toBeLessThan(evenly + 1e-9);
      expect(course.leavingFluids[hour]).toBeLessThan((even.leavingFluids[hour] ?? 0) + 1e-9);
      expect(course.walls[hour]).toBe(even.walls[hour]);
      if (evenly - entering > 0.2) colder += 1;
    });
    expect(colder).toBeGreaterThan(500);
    // By hand, in an hour of both: the wall less the heat of the upper stage through the film, and half its range.
    const at = loads.findIndex((load, hour) => load > 0 && (course.fullHeatShares[hour] ?? 0) > 0.6 && (course.fullHeatShares[hour] ?? 1) < 0.9);
    const constant = { resistanceAt: () => pipeMetreKelvinPerWatt(0.1), heatCapacityRate: wattsPerKelvin(1950) };
    const flat = courseOf(year({ heating: stages(heating, [0.5, 1]) }, constant));
    const steady = courseOf(year({ heating: stages(heating, [0.5, 1], 'speeds') }, constant));
    const { groundHeat } = heating.continuedAt(steady.enteringFluids[at] as Temperature);
    const full = (flat.walls[at] ?? 0) - groundHeat * (0.1 / house.pipeLength - 1 / 3900);
    const leaving = (flat.walls[at] ?? 0) - groundHeat * (0.1 / house.pipeLength + 1 / 3900);
    const low = scaled(heating, 0.5, 1.15).continuedAt(steady.enteringFluids[at] as Temperature).groundHeat;
    const atLow = (flat.walls[at] ?? 0) - low * (0.1 / house.pipeLength - 1 / 3900);
    expect(flat.enteringFluids[at]).toBeCloseTo(Math.min(full, atLow), 3);
    expect(flat.leavingFluids[at]).toBeCloseTo(leaving, 3);
  });

  it('mirrors heating in cooling', () => {
    const mirror = (mode: 'heating' | 'cooling', capacity: number, power: number): StagedUnit =>
      stagedUnit({
        levels: [0.5, 1].map((share) =>
          performanceMap({
            mode,
            points: [-30, 0, 30].map((entering) => {
              const grown = share * (1 + (mode === 'heating' ? 0.01 : -0.01) * entering);
              return { enteringFluid: celsius(entering), capacity: (capacity * grown) as Power, power: (power * grown) as ElectricPower };
            }),
          }),
        ),
        between: 'stages',
      });
    const constant = { resistanceAt: () => pipeMetreKelvinPerWatt(0.1) };
    // 8 kW from 2 kW against 5 kW with 1 kW: 6 kW either way, at loads in the same ratio.
    const winter = loads.map((load) => Math.max(0, load));
    const mean = { ...constant, ground: house.ground };
    const hot = year({ loads: winter, heating: mirror('heating', 8000, 2000) }, mean);
    const cold = year(
      { loads: winter.map((load) => (-5 * load) / 8), cooling: mirror('cooling', 5000, 1000) },
      { ...constant, ground: Array.from(house.ground, (each) => -each) },
    );
    expect(cold.warmestEntering?.temperature).toBeCloseTo(-(hot.coldestEntering?.temperature ?? Number.NaN), 9);
    expect(cold.warmestLeaving?.temperature).toBeCloseTo(-(hot.coldestLeaving?.temperature ?? Number.NaN), 9);
    expect(cold.cooling.groundEnergy / hot.heating.groundEnergy).toBeCloseTo(1, 12);
    expect(cold.cooling.fullHeatTime / hot.heating.fullHeatTime).toBeCloseTo(1, 12);
  });

  it('of units together is followed, and a loop is sized for it', () => {
    const pair = unitsTogether({ units: [scaled(heating, 0.6), scaled(heating, 0.6)], sharing: 'in order' });
    const { simulation, binding } = sizeLoop({
      ...house,
      duty: { from: 'building', loads, heating: pair, cooling },
      limits: { lowestEntering: celsius(-4) },
    });
    expect(binding.limitMargin).toBeGreaterThanOrEqual(0);
    expect(binding.limitMargin).toBeLessThan(0.2);
    expect(simulation.lastYear.heating.coveredShare).toBeGreaterThan(0.95);
    expect(simulation.repeats).toBe(true);
  });

  it('is refused in the wrong mode', () => {
    const run =
      (duty: object): (() => unknown) =>
      () =>
        year(duty);
    expect(run({ heating: cooling })).toThrow(expect.objectContaining({ argument: 'duty.heating.mode' }));
    expect(run({ cooling: stages(heating, [1]) })).toThrow(expect.objectContaining({ argument: 'duty.cooling.mode' }));
    expect(run({ heating: 5 })).toThrow(expect.objectContaining({ argument: 'duty.heating' }));
  });
});
