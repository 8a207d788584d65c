import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  copFromEer,
  cyclingElectricity,
  type CyclingElectricityInput,
  cyclingElectricityInputShape,
  eerFromCop,
  en14825PartLoadFactor,
  fluidDropInputShape,
  fluidTemperatureDrop,
  partLoadFactor,
  RATED_POWER,
  ratedPumpInputShape,
  ratedPumpPower,
  RATING_CONDITIONS,
  ratingAtBoundary,
  type RatingBoundaryInput,
  ratingBoundaryInputShape,
} from '../../src/heat-pump/index.js';
import {
  electricWatts,
  feetOfWater,
  fraction,
  gallonsPerMinute,
  joulesPerCubicMetreKelvin,
  kilopascals,
  kilowatts,
  litresPerSecond,
  ratio,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('ratedPumpPower', () => {
  it('is proportional to flow and pressure drop, and asks more by the older rule', () => {
    fc.assert(
      fc.property(between(0.05, 5), between(1, 200), between(0.2, 3), (flow, drop, factor) => {
        const pump = (convention: 'ISO 13256' | 'closed loop before 2000', a: number, b: number): number =>
          ratedPumpPower({ convention, flow: litresPerSecond(flow * a), pressureDrop: kilopascals(drop * b) }).electricPower;
        expect(pump('ISO 13256', factor, 1)).toBeCloseTo(factor * pump('ISO 13256', 1, 1), 8);
        expect(pump('ISO 13256', 1, factor)).toBeCloseTo(factor * pump('ISO 13256', 1, 1), 8);
        expect(pump('closed loop before 2000', 1, 1)).toBeGreaterThan(pump('ISO 13256', 1, 1));
      }),
    );
  });

  it('is 0.8 W for a gallon a minute through a foot of water by the older rule', () => {
    const one = ratedPumpPower({ convention: 'closed loop before 2000', flow: gallonsPerMinute(1), pressureDrop: feetOfWater(1) });
    expect(one.electricPower).toBeCloseTo(0.8, 12);
  });

  it('refuses bad input by name', () => {
    refuses(ratedPumpPower, ratedPumpInputShape, { convention: 'ISO 13256', flow: litresPerSecond(0.5), pressureDrop: kilopascals(30) });
  });
});

const rated: RatingBoundaryInput = {
  mode: 'heating',
  capacity: kilowatts(8),
  power: electricWatts(2350),
  sourcePumpRated: electricWatts(40),
  sourcePumpWanted: electricWatts(190),
  loadPumpRated: electricWatts(150),
  loadPumpWanted: electricWatts(400),
};

describe('ratingAtBoundary', () => {
  it('goes there and back, and keeps the heat from the ground when a fan is counted', () => {
    const part = between(0, 500).map((each) => electricWatts(each));
    fc.assert(
      fc.property(fc.constantFrom('heating' as const, 'cooling' as const), part, part, part, part, (mode, a, b, c, d) => {
        const there = ratingAtBoundary({ ...rated, mode, sourcePumpRated: a, sourcePumpWanted: b, loadPumpRated: c, loadPumpWanted: d });
        const { capacity, power } = there;
        const back = ratingAtBoundary({ mode, capacity, power, sourcePumpRated: b, sourcePumpWanted: a, loadPumpRated: d, loadPumpWanted: c });
        expect(back.capacity).toBeCloseTo(rated.capacity, 8);
        expect(back.power).toBeCloseTo(rated.power, 8);
        expect(copFromEer(there.energyEfficiencyRatio)).toBeCloseTo(there.cop, 12);
        // What the fan draws is what it adds, or takes: the ground does not see it.
        const sign = mode === 'heating' ? -1 : 1;
        const before = rated.capacity + sign * (rated.power - a);
        expect(capacity + sign * (power - b)).toBeCloseTo(before, 8);
      }),
    );
  });

  it('changes nothing where the same is counted, and refuses to take out more than there is', () => {
    const same = ratingAtBoundary({ mode: 'cooling', capacity: kilowatts(8), power: electricWatts(2000) });
    expect([same.capacity, same.power, same.cop]).toEqual([8000, 2000, 4]);
    expect(() => ratingAtBoundary({ ...rated, sourcePumpRated: electricWatts(5000), sourcePumpWanted: electricWatts(0) })).toThrow('power');
    expect(() =>
      ratingAtBoundary({ mode: 'cooling', capacity: kilowatts(1), power: electricWatts(500), loadPumpWanted: electricWatts(2000) }),
    ).toThrow('loadPumpWanted');
  });

  it('refuses bad input by name', () => {
    refuses(ratingAtBoundary, ratingBoundaryInputShape, rated);
  });
});

describe('EER', () => {
  it('goes to COP and back', () => {
    fc.assert(
      fc.property(between(0.5, 49), (cop) => {
        expect(copFromEer(eerFromCop(ratio(cop)))).toBeCloseTo(cop, 12);
      }),
    );
    expect(() => eerFromCop(ratio(170))).toThrow('an EER may have been given');
  });
});

describe('fluidTemperatureDrop', () => {
  it('is heat over flow and heat capacity', () => {
    fc.assert(
      fc.property(between(0.1, 100), between(0.05, 50), between(3e6, 4.2e6), (heat, flow, heatCapacity) => {
        const drop = fluidTemperatureDrop({
          groundHeat: kilowatts(heat),
          flow: litresPerSecond(flow),
          heatCapacity: joulesPerCubicMetreKelvin(heatCapacity),
        });
        expect((drop * flow * 1e-3 * heatCapacity) / (heat * 1000)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('refuses bad input by name', () => {
    const input = { groundHeat: kilowatts(6), flow: litresPerSecond(0.5), heatCapacity: joulesPerCubicMetreKelvin(4.18e6) };
    refuses(fluidTemperatureDrop, fluidDropInputShape, input);
  });
});

describe('losses at part load of a unit that nobody tested', () => {
  it('are those of the standards', () => {
    const loadRatio = fraction(0.25);
    expect(partLoadFactor({ loadRatio })).toEqual(partLoadFactor({ loadRatio, degradation: fraction(0.25) }));
    expect(en14825PartLoadFactor({ loadRatio })).toBe(en14825PartLoadFactor({ loadRatio, loadShare: fraction(0.9) }));
  });

  it('of EN 14825 are far harsher at low load than Cd = 1 − Cc would be', () => {
    const loadRatio = fraction(0.1);
    expect(en14825PartLoadFactor({ loadRatio })).toBeLessThan(0.6 * partLoadFactor({ loadRatio, degradation: fraction(0.1) }).factor);
  });
});

describe('cyclingElectricity', () => {
  const unit: CyclingElectricityInput = {
    capacity: kilowatts(8),
    power: electricWatts(2000),
    loadRatio: fraction(0.3),
    degradation: fraction(0.1),
    circulator: electricWatts(150),
    idlePower: electricWatts(20),
  };

  it('is the loss by cycling alone where nothing idles, and nothing at full load', () => {
    fc.assert(
      fc.property(between(0.01, 1), between(0, 0.5), between(0, 500), between(0, 100), (load, cd, circulator, idle) => {
        const input = { capacity: unit.capacity, power: unit.power, loadRatio: fraction(load), degradation: fraction(cd) };
        const bare = cyclingElectricity(input);
        expect(bare.factor).toBeCloseTo(partLoadFactor(input).factor, 12);
        const all = cyclingElectricity({ ...input, circulator: electricWatts(circulator), idlePower: electricWatts(idle) });
        expect(all.cop * (all.unitMean + all.circulatorMean + all.idleMean)).toBeCloseTo(load * 8000, 8);
        expect(all.cop).toBeLessThanOrEqual(bare.cop * (1 + 1e-12));
        expect(cyclingElectricity({ ...unit, loadRatio: fraction(1) }).factor).toBe(1);
      }),
    );
  });

  it('takes a quarter of the COP where 50 W idle beside a tenth of the load', () => {
    // Run fraction 0.1/0.91; 219.8 + 44.5 W for 800 W of heat.
    const { cop, idleMean } = cyclingElectricity({ ...unit, loadRatio: fraction(0.1), circulator: electricWatts(0), idlePower: electricWatts(50) });
    expect(idleMean).toBeCloseTo(50 * (1 - 0.1 / 0.91), 9);
    expect(cop).toBeCloseTo(800 / (2000 * (0.1 / 0.91) + 50 * (1 - 0.1 / 0.91)), 9);
  });

  it('refuses bad input by name', () => {
    refuses(cyclingElectricity, cyclingElectricityInputShape, unit);
  });
});

describe('standard rating conditions', () => {
  const of = (name: string): typeof RATING_CONDITIONS => RATING_CONDITIONS.filter((each) => each.name.startsWith(name));

  it('are each there once', () => {
    const keys = RATING_CONDITIONS.map(({ name, mode, running }) => `${name} ${mode} ${running}`);
    expect(new Set(keys).size).toBe(keys.length);
    expect([of('ISO 13256-1'), of('ISO 13256-2'), of('EN 14511'), of('EN 14825')].map((each) => each.length)).toEqual([12, 12, 7, 4]);
  });

  it('have air with a wet bulb below it, and water that comes back colder', () => {
    for (const { name, loadSide, wetBulb, loadSideReturn, enteringFluid, leavingFluid } of RATING_CONDITIONS) {
      expect(wetBulb !== undefined, name).toBe(name.startsWith('ISO 13256-1'));
      if (wetBulb !== undefined) expect(wetBulb).toBeLessThan(loadSide);
      if (loadSideReturn !== undefined) expect(loadSideReturn).toBeLessThan(loadSide);
      if (leavingFluid !== undefined) expect(leavingFluid).toBe(enteringFluid - 3);
    }
  });

  it('of the season have the load of a line from 16 °C to −10 °C, to the digit printed', () => {
    for (const { outdoor = NaN, loadRatio = NaN } of of('EN 14825')) expect(Math.abs(loadRatio - (16 - outdoor) / 26)).toBeLessThan(0.0051);
  });

  it('say what their electric input holds: no part both counted and left out, and never the whole loop but by the older rule', () => {
    for (const { rule, counted, leftOut } of RATED_POWER) {
      expect(counted.filter((part) => leftOut.includes(part))).toEqual([]);
      expect(counted.includes('loop circulator, resistance of the loop')).toBe(rule === 'closed loop before 2000');
    }
  });
});
