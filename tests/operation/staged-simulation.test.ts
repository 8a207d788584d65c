import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  conditionMap,
  type PerformanceMap,
  performanceMap,
  type StagedUnit,
  stagedUnit,
  type UnitModel,
  unitOverSupply,
  unitsTogether,
} from '../../src/heat-pump/index.js';
import { type Course, type SimulatedYear, simulate, type SimulationInput, sizeLoop } from '../../src/operation/index.js';
import {
  celsius,
  electricWatts,
  type ElectricPower,
  fraction,
  type Power,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  type PipeResistance,
  ratio,
  type Temperature,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { cooling, heating, house, loads } from './support/plant.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const courseOf = ({ course }: SimulatedYear): Course => {
  if (course === undefined) throw new Error('no course');
  return course;
};
/** The invented unit at a share of its output, with its COP times a factor. */
const scaled = (map: PerformanceMap, share: number, better = 1): PerformanceMap =>
  performanceMap({
    mode: map.mode,
    points: map.points.map(({ enteringFluid, capacity, cop }) => ({
      enteringFluid,
      capacity: (share * capacity) as Power,
      cop: ratio(better * cop),
    })),
  });
const stages = (map: PerformanceMap, shares: readonly number[], between_: 'stages' | 'speeds' = 'stages', loss?: number): StagedUnit =>
  stagedUnit({
    levels: shares.map((share) => scaled(map, share, 1.3 - 0.3 * share)),
    between: between_,
    ...(loss === undefined ? {} : { cyclingLoss: (loadRatio) => ratio(1 - loss * (1 - loadRatio)) }),
  });
const year = (duty: object, more: Partial<SimulationInput> = {}): SimulatedYear =>
  simulate({ ...house, duty: { from: 'building', loads, heating, cooling, ...duty }, years: 1, withCourse: true, ...more }).lastYear;

const films = new Map<Temperature, PipeResistance>();
/** The film of the house, worked out once for all loops of a property. */
const knownFilm = (mean: Temperature): PipeResistance => {
  const film = films.get(mean) ?? house.resistanceAt(mean);
  films.set(mean, film);
  return film;
};

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

describe('the temperature supplied', () => {
  /** The invented unit, whose electric input grows by 2 % and whose capacity falls by 0.3 % a kelvin above 35 °C. */
  const overSupply: UnitModel = {
    ...heating,
    continuedAt: (entering, supply) => {
      const state = heating.continuedAt(entering);
      const [more, less] = [Math.exp(0.02 * (supply - 35)), 1 - 0.003 * (supply - 35)];
      const [capacity, power] = [less * state.capacity, more * state.power];
      if (Number.isNaN(capacity)) throw new Error('no temperature supplied');
      return {
        ...state,
        capacity: capacity as Power,
        power: power as ElectricPower,
        capacitySlope: (less * state.capacitySlope) as typeof state.capacitySlope,
        powerSlope: (more * state.powerSlope) as typeof state.powerSlope,
      };
    },
  };
  const curve = loads.map((load) => 28 + (20 * Math.max(0, load)) / 9000);
  const constant = (supply: number): Float64Array => loads.map(() => supply);

  it('at 35 °C all year is the map at 35 °C, and colder supply takes less electricity', () => {
    const plain = year({});
    const same = year({ heating: overSupply, supplyTemperatures: constant(35) });
    expect(same.heating.unitElectricity / plain.heating.unitElectricity).toBeCloseTo(1, 9);
    const [cool, warm] = [30, 45].map((supply) => year({ heating: overSupply, supplyTemperatures: constant(supply) }).heating.unitElectricity);
    expect(cool).toBeLessThan(plain.heating.unitElectricity);
    expect(warm).toBeGreaterThan(1.1 * plain.heating.unitElectricity);
  });

  it('that follows the load is in every hour that of the unit at fluid and supply', () => {
    const course = courseOf(year({ heating: overSupply, supplyTemperatures: curve }));
    let worst = 0;
    loads.forEach((load, hour) => {
      if (load <= 0) return;
      const state = overSupply.continuedAt(course.enteringFluids[hour] as Temperature, curve[hour] as Temperature);
      const expected = Math.min(1, load / state.capacity) * state.power;
      worst = Math.max(worst, Math.abs((course.unitPowers[hour] ?? Number.NaN) / expected - 1));
    });
    // Straight lines over a kelvin of an exponential of 2 % a kelvin: 0.02²/8 = 5e-5, beside the last Newton step.
    expect(worst).toBeLessThan(1.2e-4);
  });

  it('serves stages as well, and lies beside a plain map in the other mode', () => {
    const unit = stagedUnit({
      levels: [{ ...overSupply, continuedAt: scaledModel(overSupply, 0.5) }, overSupply],
      between: 'stages',
    });
    const { heating: heat } = year({ heating: unit, supplyTemperatures: curve });
    expect(Math.abs(heat.metEnergy - heat.groundEnergy - heat.unitElectricity)).toBeLessThanOrEqual(1e-9 * heat.energy);
    const books = year({ heating: overSupply, supplyTemperatures: curve });
    expect(books.cooling.metEnergy / year({}).cooling.metEnergy).toBeCloseTo(1, 6);
  });

  it('takes a map over the load side, whole or as levels', () => {
    const supplies = [30, 40, 50].map((each) => celsius(each));
    const map = (share: number): UnitModel =>
      unitOverSupply(
        conditionMap({
          mode: 'heating',
          points: supplies.flatMap((supplyTemperature) =>
            heating.points.map(({ enteringFluid }) => {
              const { capacity, power } = overSupply.continuedAt(enteringFluid, supplyTemperature);
              return { enteringFluid, supplyTemperature, capacity: (share * capacity) as Power, power: (share * power) as ElectricPower };
            }),
          ),
        }),
      );
    const [own, read] = [overSupply, map(1)].map((unit) => year({ heating: unit, supplyTemperatures: curve }).heating.unitElectricity);
    // Cubics through three points of an exponential in the supply temperature.
    expect(Math.abs((read ?? Number.NaN) / (own ?? Number.NaN) - 1)).toBeLessThan(0.002);
    const staged = year({ heating: stagedUnit({ levels: [map(0.5), map(1)], between: 'stages' }), supplyTemperatures: curve }).heating;
    expect(Math.abs(staged.metEnergy - staged.groundEnergy - staged.unitElectricity)).toBeLessThanOrEqual(1e-9 * staged.energy);
    expect(staged.unitElectricity / (read ?? Number.NaN)).toBeCloseTo(1, 1);
    expect(() => year({ heating: map(1) })).toThrow('loadSide');
    expect(() => unitOverSupply(Object(5))).toThrow('ratedAt');
  });

  it('is refused where it is none, or not one for each load', () => {
    const run =
      (supplyTemperatures: unknown): (() => unknown) =>
      () =>
        year({ heating: overSupply, supplyTemperatures });
    expect(run([35])).toThrow(expect.objectContaining({ argument: 'duty.supplyTemperatures.length' }));
    expect(run(constant(35).subarray(1))).toThrow(expect.objectContaining({ argument: 'duty.supplyTemperatures' }));
    expect(run(constant(Number.NaN))).toThrow(expect.objectContaining({ argument: 'duty.supplyTemperatures.0' }));
    expect(run(constant(200))).toThrow(expect.objectContaining({ argument: 'duty.supplyTemperatures.0' }));
    expect(run(undefined)).toThrow('no temperature supplied');
  });
});

const scaledModel =
  (model: UnitModel, share: number): UnitModel['continuedAt'] =>
  (entering, supply) => {
    const state = model.continuedAt(entering, supply);
    return {
      ...state,
      capacity: (share * state.capacity) as Power,
      power: (share * state.power) as ElectricPower,
      capacitySlope: (share * state.capacitySlope) as typeof state.capacitySlope,
      powerSlope: (share * state.powerSlope) as typeof state.powerSlope,
    };
  };
