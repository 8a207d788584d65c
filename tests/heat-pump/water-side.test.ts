import { describe, expect, it } from 'vitest';
import { type HeatPumpInput, performanceMap, readHeatPump } from '../../src/heat-pump/index.js';
import { celsius, kelvinDifference, litresPerSecond, ratio } from '../../src/units/index.js';
import { bilinear, grid, ratedBy } from './tables.js';
import { inventedHeating } from './units.js';

const curve = {
  control: 'by outdoor temperature',
  designOutdoor: celsius(-12),
  designSupply: celsius(50),
  balancePoint: celsius(16),
  indoor: celsius(20),
  exponent: ratio(1.3),
  waterSpread: kelvinDifference(8),
} as const;
const water: HeatPumpInput = {
  label: 'example unit that makes water, invented',
  ratingOrigin: 'maker',
  heating: grid(bilinear, [-5, 5, 20], [35, 55]),
  supplyControl: curve,
  highestSupply: celsius(60),
  sourceFlow: litresPerSecond(0.5),
  lowestEntering: celsius(-4),
};
const { supplyControl: _, ...uncontrolled } = water;
const codes = (input: HeatPumpInput): readonly string[] => readHeatPump(input).findings.map(({ code }) => code);

describe('a heat pump that makes water', () => {
  it('is taken at its design supply temperature, and says what that costs the year', () => {
    const unit = readHeatPump(water);
    expect(unit.heating.capacityAt(celsius(0))).toBeCloseTo(bilinear(0, 50).capacity, 8);
    expect(unit.waterSide?.takenSupply).toBe(50);
    expect(unit.findings.map(({ code }) => code)).toEqual(['supply-taken-as-fixed']);
    const [found] = unit.findings;
    if (found?.code !== 'supply-taken-as-fixed') throw new Error('the finding');
    const mild = 20 + 26 * 0.5 ** (1 / 1.3) + 2;
    expect(found.values.mildOutdoor).toBe(2);
    expect(found.values.mildSupply).toBeCloseTo(mild, 12);
    const cop = (supply: number): number => bilinear(-4, supply).capacity / bilinear(-4, supply).power;
    expect(found.values.designCop).toBeCloseTo(cop(50), 10);
    expect(found.values.mildCop).toBeCloseTo(cop(mild), 10);
  });

  it('gives a simulation the unit at every outdoor temperature', () => {
    const side = readHeatPump(water).waterSide;
    if (side === undefined) throw new Error('a water side');
    const supply = side.curve.supplyAt(celsius(-3));
    expect(side.mapAtOutdoor(celsius(-3)).copAt(celsius(0))).toBe(side.map.at({ enteringFluid: celsius(0), loadSide: supply }).cop);
    expect(side.continuedAt(celsius(0), supply).groundHeat).toBe(side.mapAtOutdoor(celsius(-3)).continuedAt(celsius(0)).groundHeat);
    expect(side.mapAtOutdoor(celsius(15)).copAt(celsius(0))).toBe(side.map.at({ enteringFluid: celsius(0), loadSide: celsius(35) }).cop);
    expect(side.mapAtOutdoor(celsius(-30)).copAt(celsius(0))).toBe(side.map.at({ enteringFluid: celsius(0), loadSide: celsius(55) }).cop);
  });

  it('reads a plain table as the map of its points, bit for bit', () => {
    const { supplyControl: _control, highestSupply: __, ...plain } = { ...water, heating: inventedHeating };
    const map = performanceMap({ mode: 'heating', points: inventedHeating });
    const { heating, waterSide } = readHeatPump(plain);
    expect(waterSide).toBeUndefined();
    expect(heating.rated).toEqual(map.rated);
    expect(heating.usable).toEqual(map.usable);
    expect(heating.points).toEqual(map.points);
    for (let place = -30; place < 60; place += 0.73) expect(heating.continuedAt(celsius(place))).toEqual(map.continuedAt(celsius(place)));
  });

  it('warns of a supply that is not rated, not stated, or above what the unit makes', () => {
    const fixed = (supply: number): HeatPumpInput => ({ ...water, supplyControl: { control: 'fixed', supplyTemperature: celsius(supply) } });
    expect(codes(fixed(45))).toEqual([]);
    expect(codes(fixed(57))).toEqual(['supply-not-rated']);
    expect(codes(fixed(62))).toEqual(['supply-above-unit', 'supply-not-rated']);
    expect(readHeatPump(fixed(62)).waterSide?.takenSupply).toBe(55);
    const one = { ...water, heating: [-5, 5, 20].map((x) => ratedBy(bilinear, x, 35)) };
    expect(codes(one)).toEqual(['supply-not-rated']);
    expect(codes({ ...water, heating: inventedHeating })).toEqual(['rating-supply-unstated']);
    expect(codes({ ...uncontrolled, heating: one.heating })).toEqual([]);
    expect(() => readHeatPump({ ...water, highestSupply: celsius(30) })).toThrow('highestSupply');
  });

  it('needs to know the supply where several are rated, and one load side where it cannot', () => {
    expect(() => readHeatPump(uncontrolled)).toThrow('supplyControl');
    const air = [18, 22].flatMap((y) => inventedHeating.map((point) => ({ ...point, enteringAir: celsius(y) })));
    expect(() => readHeatPump({ ...uncontrolled, heating: air })).toThrow('heating.0.enteringAir');
    expect(() => readHeatPump({ ...water, heating: air.slice(0, 7) })).toThrow('supplyControl');
    const cooling = grid((x, y) => ({ capacity: 9000, power: 1500 + 40 * x - 20 * (y - 7) }), [10, 20, 30], [7, 18]);
    expect(() => readHeatPump({ ...water, cooling, highestEntering: celsius(30) })).toThrow('cooling.0.supplyTemperature');
    expect(() => readHeatPump({ ...water, heating: water.heating.map((point) => ({ ...point, flowRatio: ratio(0.8) })) })).toThrow(
      'heating.0.flowRatio',
    );
  });

  it('is taken at the design flow between flows', () => {
    const heating = [0.8, 1.2].flatMap((flow) => water.heating.map((point) => ({ ...point, flowRatio: ratio(flow) })));
    expect(readHeatPump({ ...water, heating }).heating.capacityAt(celsius(0))).toBeCloseTo(bilinear(0, 50).capacity, 8);
  });
});
