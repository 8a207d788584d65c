import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors/index.js';
import {
  conditionFindings,
  type ConditionMapInput,
  conditionMap,
  conditionMapInputShape,
  type ConditionRatingPoint,
  type UnitConditions,
  unitConditionsShape,
} from '../../src/heat-pump/index.js';
import { celsius, electricKilowatts, kilowatts, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { bilinear, grid, ratedBy } from './tables.js';

const heating = (points: readonly ConditionRatingPoint[]) => conditionMap({ mode: 'heating', points });
const codes = (points: readonly ConditionRatingPoint[]): readonly string[] => heating(points).findings.map(({ code }) => code);
const table = grid(bilinear, [-5, 5, 15], [35, 55]);
const air = [-5, 5, 15].flatMap((x) => [18, 24].map((y): ConditionRatingPoint => ({ ...bare(x, 35 + 2 * (y - 18)), enteringAir: celsius(y) })));

function bare(x: number, y: number): ConditionRatingPoint {
  const { supplyTemperature: _, ...rest } = ratedBy(bilinear, x, y);
  return rest;
}

describe('the table of conditionMap', () => {
  it('may state entering air instead of supply water, and refuses to be asked for more than it states', () => {
    const map = heating(air);
    expect(map.side).toBe('entering air');
    expect(map.at({ enteringFluid: celsius(5), loadSide: celsius(21) }).capacity).toBeCloseTo(bilinear(5, 41).capacity, 8);
    const none = heating([-5, 5, 15].map((x) => bare(x, 35)));
    expect(none.side).toBe('not stated');
    expect(none).not.toHaveProperty('loadSides');
    expect(none.at({ enteringFluid: celsius(5) })).not.toHaveProperty('loadSide');
    expect(() => none.at({ enteringFluid: celsius(5), loadSide: celsius(35) })).toThrow('loadSide');
    const one = heating([-5, 5, 15].map((x) => ratedBy(bilinear, x, 35)));
    expect(one.at({ enteringFluid: celsius(5) }).loadSide).toBe(35);
    expect(() => one.at({ enteringFluid: celsius(5), loadSide: celsius(36) })).toThrow('loadSide');
  });

  it('refuses points that do not make one', () => {
    const first = ratedBy(bilinear, -5, 35);
    expect(() => heating([...table, first])).toThrow('enteringFluid');
    expect(() => heating([...table, bare(5, 45)])).toThrow('points.6');
    expect(() => heating([...table, { ...first, enteringAir: celsius(20) }])).toThrow('points.6');
    expect(() => heating([...table, ratedBy(bilinear, 5, 45)])).toThrow('points.6.supplyTemperature');
    const apart = [...[-15, -10].map((x) => ratedBy(bilinear, x, 35)), ...[0, 10].map((x) => ratedBy(bilinear, x, 45))];
    expect(() => heating(apart)).toThrow('overlaps');
    expect(() => heating([{ ...first, supplyTemperature: celsius(104) }, ...table])).toThrow('points.0.supplyTemperature');
    expect(() => heating(table.map((point, k) => ({ ...point, flowRatio: ratio(k === 0 ? 5 : 1) })))).toThrow('points.0.flowRatio');
    const flows = [0.8, 1].flatMap((flow, k) => [-20, -10].map((x) => ({ ...bare(x + 20 * k, 35), flowRatio: ratio(flow) })));
    expect(() => heating(flows)).toThrow('flowRatio');
  });

  it('refuses one row in kW where W were meant, wherever it stands', () => {
    table.forEach((_, k) => {
      const slip = table.map((each, index) => (index === k ? { ...each, capacity: kilowatts(0.1), power: electricKilowatts(0.05) } : each));
      expect(() => heating(slip), String(k)).toThrow(InputError);
      expect(() => heating(slip), String(k)).toThrow(/points\.\d\.capacity/u);
    });
  });

  it('takes points at flows of their own as of one flow, and says so', () => {
    const mixed = table.map((point) => ({ ...point, flowRatio: ratio(point.supplyTemperature === 35 ? 1 : 0.8) }));
    expect(codes(mixed)).toEqual(['rating-flows-mixed']);
    expect(heating(mixed).at({ enteringFluid: celsius(0), loadSide: celsius(45) }).capacity).toBeCloseTo(bilinear(0, 45).capacity, 8);
    expect(heating(mixed).flowRatios).toEqual({ leastFlowRatio: 1, greatestFlowRatio: 1 });
  });

  it('has nothing to say of a sound table, and warns of a COP that gets better with warmer water', () => {
    expect(codes(table)).toEqual([]);
    expect(codes(grid(bilinear, [-5, 5], [35, 45, 55]))).toEqual(['few-rating-points']);
    const swapped = table.map((point) => ({ ...point, supplyTemperature: celsius(point.supplyTemperature === 35 ? 55 : 35) }));
    expect(codes(swapped)).toEqual(['load-side-odd']);
  });

  it('says what lies beyond its points', () => {
    const map = heating(table);
    const found = (x: number, y: number) => conditionFindings(map, { enteringFluid: celsius(x), loadSide: celsius(y) }).map(({ code }) => code);
    expect(found(-5, 35)).toEqual([]);
    expect(found(-5, 57)).toEqual(['load-side-extrapolated']);
    expect(found(-7, 33)).toEqual(['load-side-extrapolated', 'map-extrapolated']);
    expect(() => found(0, 57.1)).toThrow('loadSide');
    expect(() => found(0, 32.9)).toThrow('loadSide');
    expect(conditionFindings(heating([-5, 5].map((x) => bare(x, 35))), { enteringFluid: celsius(0) })).toEqual([]);
  });

  it('refuses bad input by name', () => {
    const withCop = grid(bilinear, [-5, 5], [35, 45]).map(({ power: _, ...point }) => ({ ...point, cop: ratio(3.5), flowRatio: ratio(1) }));
    refuses<ConditionMapInput>(
      conditionMap,
      conditionMapInputShape,
      { mode: 'heating', points: table },
      {
        more: [
          { mode: 'cooling', points: withCop },
          { mode: 'heating', points: air },
        ],
      },
    );
    refuses<UnitConditions>(heating(table).at, unitConditionsShape, { enteringFluid: celsius(0), loadSide: celsius(40), flowRatio: ratio(1) });
  });
});
