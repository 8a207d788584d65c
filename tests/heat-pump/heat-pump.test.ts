import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  carnotCop,
  carnotInputShape,
  copFromEer,
  en14825PartLoadFactor,
  groundHeat,
  groundHeatInputShape,
  type HeatPumpInput,
  heatPumpInputShape,
  type PartLoadInput,
  partLoadFactor,
  partLoadInputShape,
  readHeatPump,
  ruhnauCop,
  staffellCop,
  type StandbyPartLoadInput,
  standbyPartLoadInputShape,
} from '../../src/heat-pump/index.js';
import {
  celsius,
  electricKilowatts,
  electricWatts,
  fraction,
  kelvinDifference,
  kilowatts,
  litresPerSecond,
  type Ratio,
  ratio,
  type TemperatureDifference,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { bilinear, grid } from './tables.js';
import { inventedCooling, inventedHeating } from './units.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const invented: HeatPumpInput = {
  label: 'example unit, invented',
  ratingOrigin: 'invented',
  heating: inventedHeating,
  cooling: inventedCooling,
  sourceFlow: litresPerSecond(0.567),
  lowestEntering: celsius(-4),
  lowestLeaving: celsius(-7),
  highestEntering: celsius(35),
};
const { cooling: _, highestEntering: __, lowestLeaving: ___, ...onlyHeating } = invented;
const curve = {
  control: 'by outdoor temperature',
  designOutdoor: celsius(-12),
  designSupply: celsius(50),
  balancePoint: celsius(16),
  indoor: celsius(20),
  exponent: ratio(1.3),
  waterSpread: kelvinDifference(8),
} as const;
const codes = (input: HeatPumpInput): readonly string[] => readHeatPump(input).findings.map(({ code }) => code);

describe('readHeatPump', () => {
  it('reads both modes and their limits', () => {
    const unit = readHeatPump(invented);
    expect(unit.heating.capacityAt(celsius(0))).toBeCloseTo(8000, 9);
    expect(unit.cooling?.map.groundHeatAt(celsius(25))).toBeCloseTo(12_200, 8);
    expect(unit.cooling?.highestEntering).toBe(celsius(35));
    expect(unit.flowPerPower).toBeCloseTo(0.567e-3 / 7129.6, 15);
  });

  it('warns of an invented unit, and of nothing else in it', () => {
    expect(codes(invented)).toEqual(['unit-invented']);
    expect(codes({ ...invented, ratingOrigin: 'maker' })).toEqual([]);
  });

  it('reads a unit that only heats, without limits it does not have', () => {
    const unit = readHeatPump({ ...onlyHeating, ratingOrigin: 'measured' });
    expect(unit).not.toHaveProperty('cooling');
    expect(unit).not.toHaveProperty('lowestLeaving');
    expect(unit.findings).toEqual([]);
  });

  it('says where a limit lies beyond the points, and refuses one that they do not reach', () => {
    expect(codes({ ...invented, ratingOrigin: 'maker', lowestEntering: celsius(-6) })).toEqual(['map-extrapolated']);
    expect(codes({ ...invented, ratingOrigin: 'maker', highestEntering: celsius(41) })).toEqual(['map-extrapolated']);
    expect(() => readHeatPump({ ...invented, lowestEntering: celsius(-7.1), lowestLeaving: celsius(-10) })).toThrow('lowestEntering');
    expect(() => readHeatPump({ ...invented, highestEntering: celsius(42.1) })).toThrow('highestEntering');
  });

  it('refuses limits that contradict each other, and cooling without a limit', () => {
    expect(() => readHeatPump({ ...invented, lowestLeaving: celsius(-4) })).toThrow('lowestLeaving');
    expect(() => readHeatPump({ ...onlyHeating, highestEntering: celsius(-5) })).toThrow('highestEntering');
    expect(() => readHeatPump({ ...onlyHeating, cooling: inventedCooling })).toThrow('highestEntering');
  });

  it('warns of a flow that units are not made for', () => {
    expect(codes({ ...invented, ratingOrigin: 'maker', sourceFlow: litresPerSecond(0.2) })).toEqual(['source-flow-unusual']);
    expect(codes({ ...invented, ratingOrigin: 'maker', sourceFlow: litresPerSecond(0.8) })).toEqual(['source-flow-unusual']);
  });

  it('refuses bad input by name', () => {
    const withCop = {
      ...invented,
      heating: inventedHeating.slice(0, 2).map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: ratio(3.5) })),
    };
    const atFlow = { flowRatio: ratio(1) };
    const air = { ...atFlow, enteringAir: celsius(20) };
    const water = { ...atFlow, supplyTemperature: celsius(12) };
    const radiators = grid(bilinear, [-5, 5, 20], [35, 55]);
    refuses(readHeatPump, heatPumpInputShape, invented, {
      more: [
        { ...withCop, cooling: inventedCooling.slice(0, 8).map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: ratio(4) })) },
        {
          ...invented,
          heating: inventedHeating.slice(0, 3).map((point) => ({ ...point, ...air })),
          cooling: inventedCooling.map((point) => ({ ...point, ...air })),
        },
        {
          ...invented,
          heating: radiators,
          cooling: inventedCooling.map((point) => ({ ...point, ...water })),
          supplyControl: { ...curve, lowestSupply: celsius(25), highestSupply: celsius(60) },
          highestSupply: celsius(60),
        },
        { ...invented, heating: radiators, supplyControl: { control: 'fixed', supplyTemperature: celsius(45) } },
      ],
    });
    expect(() => readHeatPump({ ...invented, label: ' ' })).toThrow('label');
  });
});

describe('groundHeat', () => {
  it('balances: ground and electricity make the heat, cold and electricity go to the ground', () => {
    fc.assert(
      fc.property(between(0.1, 1000), between(0, 1), between(0, 500), (capacity, share, circulator) => {
        const unit = { capacity: kilowatts(capacity), power: electricKilowatts(share * capacity), circulator: electricWatts(circulator) };
        const rejected = groundHeat({ mode: 'cooling', ...unit });
        expect(Math.abs(rejected - unit.power - circulator - unit.capacity)).toBeLessThanOrEqual(1e-12 * rejected);
        fc.pre(unit.power + circulator <= unit.capacity);
        const drawn = groundHeat({ mode: 'heating', ...unit });
        expect(Math.abs(drawn + unit.power + circulator - unit.capacity)).toBeLessThanOrEqual(1e-12 * unit.capacity);
        expect(drawn).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('refuses electricity that alone would make the heat', () => {
    const unit = { capacity: kilowatts(8), power: electricKilowatts(8) };
    expect(groundHeat({ mode: 'heating', ...unit })).toBe(0);
    expect(() => groundHeat({ mode: 'heating', ...unit, circulator: electricWatts(1) })).toThrow('power');
  });

  it('refuses bad input by name', () => {
    const unit = { capacity: kilowatts(8), power: electricKilowatts(2.35), circulator: electricWatts(150) };
    refuses(groundHeat, groundHeatInputShape, { mode: 'heating', ...unit }, { more: [{ mode: 'cooling', ...unit }] });
  });
});

describe('part load', () => {
  it('costs nothing at full load, in either form', () => {
    fc.assert(
      fc.property(between(0, 0.5), between(0.5, 1), (degradation, loadShare) => {
        expect(partLoadFactor({ loadRatio: fraction(1), degradation: fraction(degradation) })).toEqual({ factor: 1, runFraction: 1 });
        expect(en14825PartLoadFactor({ loadRatio: fraction(1), loadShare: fraction(loadShare) })).toBe(1);
      }),
    );
  });

  it('makes the unit run longer than load over capacity, never longer than all the time', () => {
    fc.assert(
      fc.property(between(0, 1), between(0, 0.5), (loadRatio, degradation) => {
        const { factor, runFraction } = partLoadFactor({ loadRatio: fraction(loadRatio), degradation: fraction(degradation) });
        expect(runFraction).toBeGreaterThanOrEqual(loadRatio);
        expect(runFraction).toBeLessThanOrEqual(1);
        expect(factor).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('of EN 14825 loses nothing where no input stands still, and all at no load otherwise', () => {
    for (const load of [0, 0.3, 1]) expect(en14825PartLoadFactor({ loadRatio: fraction(load), loadShare: fraction(1) })).toBe(1);
    expect(en14825PartLoadFactor({ loadRatio: fraction(0), loadShare: fraction(0.9) })).toBe(0);
  });

  it('refuses bad input by name', () => {
    refuses<PartLoadInput>(partLoadFactor, partLoadInputShape, { loadRatio: fraction(0.5), degradation: fraction(0.25) });
    refuses<StandbyPartLoadInput>(en14825PartLoadFactor, standbyPartLoadInputShape, { loadRatio: fraction(0.5), loadShare: fraction(0.9) });
  });
});

describe('COP', () => {
  it('of two regressions falls with the lift over their ranges', () => {
    for (let lift = 21; lift <= 60; lift += 1) {
      expect(staffellCop(kelvinDifference(lift))).toBeLessThan(staffellCop(kelvinDifference(lift - 1)));
      expect(ruhnauCop(kelvinDifference(lift))).toBeLessThan(ruhnauCop(kelvinDifference(lift - 1)));
    }
  });

  it('of two regressions agrees within 4 % at 30 to 40 K and within 15 % at the ends, and stays under Carnot', () => {
    for (let lift = 20; lift <= 60; lift += 1) {
      const [a, b] = [staffellCop(kelvinDifference(lift)), ruhnauCop(kelvinDifference(lift))];
      expect(Math.abs(a / b - 1)).toBeLessThan(lift >= 30 && lift <= 40 ? 0.04 : 0.15);
      expect(Math.max(a, b)).toBeLessThan(0.6 * carnotCop({ cold: celsius(0), warm: celsius(lift) }));
    }
  });

  it('refuses bad input by name', () => {
    refuses(carnotCop, carnotInputShape, { cold: celsius(0), warm: celsius(35) });
    expect(() => carnotCop({ cold: celsius(35), warm: celsius(35) })).toThrow('warm');
    refuses(
      ({ lift }: { readonly lift: TemperatureDifference }) => staffellCop(lift),
      { lift: 'temperature difference' },
      { lift: kelvinDifference(40) },
    );
    refuses(
      ({ lift }: { readonly lift: TemperatureDifference }) => ruhnauCop(lift),
      { lift: 'temperature difference' },
      { lift: kelvinDifference(40) },
    );
    refuses(
      ({ energyEfficiencyRatio }: { readonly energyEfficiencyRatio: Ratio }) => copFromEer(energyEfficiencyRatio),
      { energyEfficiencyRatio: 'ratio' },
      { energyEfficiencyRatio: ratio(17.1) },
    );
    for (const lift of [19.9, 60.1]) expect(() => staffellCop(kelvinDifference(lift))).toThrow('lift');
    for (const lift of [14.9, 60.1]) expect(() => ruhnauCop(kelvinDifference(lift))).toThrow('lift');
  });
});
