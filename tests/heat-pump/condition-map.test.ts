import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ConditionMap, type ConditionState, conditionMap, performanceMap } from '../../src/heat-pump/index.js';
import { celsius, ratio, type Temperature } from '../../src/units/index.js';
import { anyTable, between, bilinear, grid, ratedBy, rowOf, suppliesOf } from './tables.js';

const tables = anyTable(0.5);
const modes = fc.constantFrom('heating', 'cooling');
const valuesOf = ({ capacity, power, groundHeat }: ConditionState): readonly number[] => [capacity, power, groundHeat];
const byEntering = ({ capacitySlope, powerSlope, groundHeatSlope }: ConditionState): readonly number[] => [
  capacitySlope,
  powerSlope,
  groundHeatSlope,
];
const byLoadSide = ({ capacityByLoadSide, powerByLoadSide, groundHeatByLoadSide }: ConditionState): readonly number[] => [
  capacityByLoadSide,
  powerByLoadSide,
  groundHeatByLoadSide,
];
const STEP = 1e-5;

/** Slopes as they are against differences to either side, where a jump would show. */
function expectSlopes(map: ConditionMap, x: number, y: number): void {
  const at = (dx: number, dy: number): ConditionState => map.continuedAt(celsius(x + dx), celsius(y + dy));
  const here = at(0, 0);
  const compare = (slopes: readonly number[], before: ConditionState, after: ConditionState): void => {
    slopes.forEach((slope, k) => {
      const value = valuesOf(here)[k] ?? Number.NaN;
      const left = (value - (valuesOf(before)[k] ?? Number.NaN)) / STEP;
      const right = ((valuesOf(after)[k] ?? Number.NaN) - value) / STEP;
      // Half of a bend of up to 5 % per square kelvin times the step, and rounding of the values over it.
      expect(Math.abs(left - slope)).toBeLessThan(3e-6 * here.capacity);
      expect(Math.abs(right - slope)).toBeLessThan(3e-6 * here.capacity);
    });
  };
  compare(byEntering(here), at(-STEP, 0), at(STEP, 0));
  compare(byLoadSide(here), at(0, -STEP), at(0, STEP));
}

describe('conditionMap', () => {
  it('passes through its points, whatever their order, and along a row is the map of that row', () => {
    fc.assert(
      fc.property(tables, between(0, 1), (points, share) => {
        const map = conditionMap({ mode: 'heating', points: [...points].reverse() });
        for (const { enteringFluid, supplyTemperature = celsius(0), capacity, power = Number.NaN } of points) {
          const state = map.at({ enteringFluid, loadSide: supplyTemperature });
          expect(Math.abs(state.capacity / capacity - 1)).toBeLessThan(1e-12);
          expect(Math.abs(state.power / power - 1)).toBeLessThan(1e-12);
        }
        for (const supply of suppliesOf(points)) {
          const row = performanceMap({ mode: 'heating', points: rowOf(points, supply) });
          const slice = map.slice({ loadSide: celsius(supply) });
          const { lowest, highest } = row.usable;
          expect(slice.usable).toEqual(row.usable);
          const place = celsius(lowest + share * (highest - lowest));
          expect(slice.at(place)).toEqual(row.at(place));
        }
      }),
    );
  });

  it('keeps heat = ground + electricity everywhere, and all above nothing', () => {
    fc.assert(
      fc.property(modes, tables, between(-60, 90), between(0, 100), (mode, points, place, side) => {
        const { capacity, power, groundHeat, cop } = conditionMap({ mode, points }).continuedAt(celsius(place), celsius(side));
        const balance = mode === 'heating' ? capacity - power - groundHeat : capacity + power - groundHeat;
        expect(Math.abs(balance)).toBeLessThanOrEqual(1e-12 * capacity);
        expect(Math.abs(cop * power - capacity)).toBeLessThanOrEqual(1e-12 * capacity);
        expect(Math.min(capacity, power, groundHeat)).toBeGreaterThan(0);
      }),
    );
  });

  it('has the slopes it says over fluid and load side, without a jump at points, rows, ends and beyond them', () => {
    fc.assert(
      fc.property(anyTable(0.9), between(-25, 40), between(20, 80), (points, place, side) => {
        const map = conditionMap({ mode: 'cooling', points });
        const sides = suppliesOf(points);
        const limits = [(sides[0] ?? 0) - 2, (sides.at(-1) ?? 0) + 2];
        const entering = points.map(({ enteringFluid }) => enteringFluid);
        for (const x of [place, ...entering, Math.min(...entering) - 2, Math.max(...entering) + 2]) expectSlopes(map, x, side);
        for (const y of [...sides, ...limits]) expectSlopes(map, place, y);
        for (const { enteringFluid, supplyTemperature = celsius(0) } of points) expectSlopes(map, enteringFluid, supplyTemperature);
      }),
      { numRuns: 40 },
    );
  });

  it('lies between the values of two neighbouring load sides, whatever the others are, and runs across as they do', () => {
    fc.assert(
      fc.property(anyTable(0.9), between(-10, 30), between(0, 1), between(0, 1), (points, place, one, other) => {
        const map = conditionMap({ mode: 'cooling', points });
        const sides = suppliesOf(points);
        sides.slice(1).forEach((warm, k) => {
          const cold = sides[k] ?? warm;
          const state = (share: number): ConditionState => map.continuedAt(celsius(place), celsius(cold + share * (warm - cold)));
          const [from, to, near, far] = [state(0), state(1), state(Math.min(one, other)), state(Math.max(one, other))];
          const room = 1e-9 * from.capacity;
          for (const of of ['capacity', 'power'] as const) {
            const sign = Math.sign(to[of] - from[of]);
            expect(sign * (near[of] - from[of])).toBeGreaterThanOrEqual(-room);
            expect(sign * (to[of] - far[of])).toBeGreaterThanOrEqual(-room);
            expect(sign * (far[of] - near[of])).toBeGreaterThanOrEqual(-room);
          }
        });
      }),
    );
  });

  it('rises with the entering fluid between rows that rise at like rates', () => {
    fc.assert(
      fc.property(anyTable(0.1), between(0, 1), between(-8, 20), between(0, 3), (points, share, place, more) => {
        const map = conditionMap({ mode: 'heating', points });
        const sides = suppliesOf(points);
        const side = celsius((sides[0] ?? 0) + share * ((sides.at(-1) ?? 0) - (sides[0] ?? 0)));
        const [low, high] = [map.continuedAt(celsius(place), side), map.continuedAt(celsius(place + more), side)];
        expect(high.capacity).toBeGreaterThanOrEqual(low.capacity * (1 - 1e-12));
        expect(map.findings.map(({ code }) => code)).not.toContain('map-turns-between');
      }),
    );
  });

  it('may turn between rows that rise at very unlike rates, and says so', () => {
    const wild = (entering: number, supply: number) => ({
      capacity: 9000 - 20 * (supply - 35) + (supply < 40 ? 900 : 2) * entering,
      power: 1500 + 40 * (supply - 35),
    });
    const map = conditionMap({ mode: 'heating', points: grid(wild, [0, 5, 10], [35, 45, 55]) });
    expect(map.findings.map(({ code }) => code)).toContain('map-turns-between');
    expect(map.at({ enteringFluid: celsius(0.1), loadSide: celsius(48) }).capacitySlope).toBeLessThan(0);
  });

  it('gives a bilinear form back everywhere it answers, a missing corner and 2 K beyond included', () => {
    const points = grid(bilinear, [-5, 0, 4, 10, 20], [35, 42, 55, 65]).filter(
      ({ enteringFluid, supplyTemperature = 0 }) => supplyTemperature < 60 || enteringFluid >= 4,
    );
    const map = conditionMap({ mode: 'heating', points });
    fc.assert(
      fc.property(between(33, 67), between(0, 1), (side, share) => {
        const { lowest, highest } = map.usableAt(celsius(side));
        const place = lowest + share * (highest - lowest);
        const state = map.at({ enteringFluid: celsius(place), loadSide: celsius(side) });
        expect(state.capacity).toBeCloseTo(bilinear(place, side).capacity, 7);
        expect(state.power).toBeCloseTo(bilinear(place, side).power, 7);
      }),
    );
  });

  it('gives a parabola in both back within the table, where the secants across differ by less than a factor of 1/0.6', () => {
    const form = (x: number, y: number) => ({
      capacity: 8000 + 220 * x + 0.6 * x * x - 20 * (y - 35) - 0.25 * (y - 35) ** 2,
      power: 1800 + 8 * x + 40 * (y - 35) + 0.4 * (y - 35) ** 2,
    });
    const map = conditionMap({ mode: 'heating', points: grid(form, [-5, 0, 7, 10, 20], [35, 42, 50, 55, 65]) });
    for (let x = -5; x <= 20; x += 1.3) {
      for (let y = 35; y <= 65; y += 1.7) {
        const state = map.at({ enteringFluid: celsius(x), loadSide: celsius(y) });
        expect(state.capacity).toBeCloseTo(form(x, y).capacity, 8);
        expect(state.power).toBeCloseTo(form(x, y).power, 8);
      }
    }
  });

  it('reaches in a missing corner from the end of one row to that of the next, and counts it as beyond the points', () => {
    const points = [-5, 5, 15].map((x) => ratedBy(bilinear, x, 35)).concat([5, 15].map((x) => ratedBy(bilinear, x, 65)));
    const map = conditionMap({ mode: 'heating', points });
    expect(map.usableAt(celsius(50))).toEqual({ lowest: -2, highest: 17 });
    expect(map.ratedAt(celsius(50))).toEqual({ lowest: 5, highest: 15 });
    expect(map.ratedAt(celsius(35))).toEqual({ lowest: -5, highest: 15 });
    expect(() => map.at({ enteringFluid: celsius(-2.1), loadSide: celsius(50) })).toThrow('enteringFluid');
  });

  it('goes between flows, and refuses any outside them', () => {
    const points = [0.6, 1, 1.25].flatMap((flow) =>
      grid((x, y) => ({ capacity: bilinear(x, y).capacity * (0.9 + 0.1 * flow), power: bilinear(x, y).power }), [-5, 5, 15], [35, 55]).map(
        (point) => ({
          ...point,
          flowRatio: ratio(flow),
        }),
      ),
    );
    const map = conditionMap({ mode: 'heating', points });
    const at = (flow?: number): number =>
      map.at({ enteringFluid: celsius(3), loadSide: celsius(40), ...(flow === undefined ? {} : { flowRatio: ratio(flow) }) }).capacity;
    expect(at(0.8)).toBeCloseTo(0.98 * bilinear(3, 40).capacity, 8);
    expect(at()).toBeCloseTo(bilinear(3, 40).capacity, 8);
    for (const flow of [0.59, 1.26]) expect(() => at(flow)).toThrow('flowRatio');
    expect(() => map.at({ enteringFluid: celsius(3) })).toThrow('loadSide');
    expect(() => map.continuedAt(Number.NaN as Temperature, celsius(40))).toThrow('enteringFluid');
    expect(() => map.continuedAt(celsius(3), Number.NaN as Temperature)).toThrow('loadSide');
  });
});
