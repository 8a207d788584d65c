import { describe, expect, it } from 'vitest';
import { conditionMap, stagedUnit, type UnitModel, unitOverSupply } from '../../src/heat-pump/index.js';
import { celsius, type ElectricPower, type Power, type Temperature } from '../../src/units/index.js';
import { courseOf, year } from './support/levels.js';
import { heating, loads } from './support/plant.js';

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
