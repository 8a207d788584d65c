import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  extrapolationFindings,
  type PerformanceMapInput,
  performanceMap,
  performanceMapInputShape,
  type UnitState,
} from '../../src/heat-pump/index.js';
import { celsius, electricKilowatts, kilowatts, ratio, type Temperature } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { anyUnit, inventedCooling, inventedHeating } from './units.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const modes = fc.constantFrom('heating', 'cooling');
const anyMap = fc.tuple(modes, anyUnit).map(([mode, points]) => performanceMap({ mode, points }));
const heating = performanceMap({ mode: 'heating', points: inventedHeating });
const codes = (input: PerformanceMapInput): readonly string[] => performanceMap(input).findings.map(({ code }) => code);
const slopesOf = ({ capacitySlope, powerSlope, groundHeatSlope }: UnitState): readonly number[] => [capacitySlope, powerSlope, groundHeatSlope];
const valuesOf = ({ capacity, power, groundHeat }: UnitState): readonly number[] => [capacity, power, groundHeat];

describe('performanceMap', () => {
  it('gives the invented unit back, whose curves are parabolas, between its points and 2 K beyond', () => {
    for (let t = -5; t <= 25; t += 0.37) {
      expect(kilowatts.of(heating.capacityAt(celsius(t)))).toBeCloseTo(8 + 0.22 * t + 0.0006 * t * t, 12);
      expect(electricKilowatts.of(heating.powerAt(celsius(t)))).toBeCloseTo(2.35 + 0.013 * t + 0.0001 * t * t, 12);
    }
    // The line led on leaves the parabola by its square term times 2 K squared.
    expect(kilowatts.of(heating.capacityAt(celsius(-7)))).toBeCloseTo(8 - 0.22 * 7 + 0.0006 * 49 - 0.0006 * 4, 12);
  });

  it('keeps heat = ground + electricity everywhere', () => {
    fc.assert(
      fc.property(anyMap, between(-60, 120), (map, place) => {
        const { capacity, power, groundHeat, cop } = map.continuedAt(celsius(place));
        const balance = map.mode === 'heating' ? capacity - power - groundHeat : capacity + power - groundHeat;
        expect(Math.abs(balance)).toBeLessThanOrEqual(1e-12 * capacity);
        expect(Math.abs(cop * power - capacity)).toBeLessThanOrEqual(1e-12 * capacity);
        expect(Math.min(capacity, power, groundHeat)).toBeGreaterThan(0);
      }),
    );
  });

  it('passes through its points, whatever their order', () => {
    fc.assert(
      fc.property(modes, anyUnit, (mode, points) => {
        const map = performanceMap({ mode, points });
        for (const { enteringFluid, capacity, cop = Number.NaN } of points) {
          const state = map.at(enteringFluid);
          expect(state.capacity / capacity).toBeCloseTo(1, 11);
          expect(state.cop / cop).toBeCloseTo(1, 11);
        }
      }),
    );
  });

  it('rises in capacity where the points do, out to where the continuation has levelled off', () => {
    fc.assert(
      fc.property(anyMap, between(-60, 60), between(0, 5), (map, place, more) => {
        const low = map.continuedAt(celsius(place));
        const high = map.continuedAt(celsius(place + more));
        expect(high.capacity).toBeGreaterThanOrEqual(low.capacity * (1 - 1e-12));
        expect(low.capacitySlope).toBeGreaterThanOrEqual(-1e-9 * low.capacity);
      }),
    );
  });

  it('has the slopes it says everywhere, continuous at points, ends and limits of use', () => {
    fc.assert(
      fc.property(anyMap, between(-40, 60), (map, place) => {
        const special = [...map.points.map(({ enteringFluid }) => enteringFluid), map.usable.lowest, map.usable.highest];
        for (const x of [place, ...special]) {
          const h = 1e-6;
          const [before, here, after] = [x - h, x, x + h].map((t) => map.continuedAt(celsius(t)));
          if (before === undefined || here === undefined || after === undefined) throw new Error('three states');
          const size = here.capacity + here.groundHeat;
          slopesOf(here).forEach((slope, k) => {
            const left = ((valuesOf(here)[k] ?? Number.NaN) - (valuesOf(before)[k] ?? Number.NaN)) / h;
            const right = ((valuesOf(after)[k] ?? Number.NaN) - (valuesOf(here)[k] ?? Number.NaN)) / h;
            expect(Math.abs(left - slope)).toBeLessThan(1e-5 * size);
            expect(Math.abs(right - slope)).toBeLessThan(1e-5 * size);
          });
        }
      }),
    );
  });

  it('lets a Newton iteration find the fluid of a given ground heat with its own slopes, from far away', () => {
    fc.assert(
      fc.property(between(0.001, 0.999), between(-5, 25), between(50, 5000), (share, start, coupling) => {
        // Fluid that the ground brings to 12 °C less what is drawn over a coupling [W/K]: EFT = 12 − ground heat/coupling.
        let fluid = start;
        let steps = 0;
        const residual = (t: number): number => t - 12 + (share * heating.continuedAt(celsius(t)).groundHeat) / coupling;
        while (Math.abs(residual(fluid)) > 1e-10 && steps < 50) {
          fluid -= residual(fluid) / (1 + (share * heating.continuedAt(celsius(fluid)).groundHeatSlope) / coupling);
          steps += 1;
        }
        expect(Math.abs(residual(fluid))).toBeLessThanOrEqual(1e-10);
        expect(steps).toBeLessThan(12);
      }),
    );
  });

  it('answers 2 K beyond its points along the end slope, says so, and refuses further out', () => {
    const { lowest, highest } = heating.rated;
    const end = heating.at(lowest);
    expect(heating.at(celsius(lowest - 2)).capacity).toBeCloseTo(end.capacity - 2 * end.capacitySlope, 8);
    expect(extrapolationFindings(heating, celsius(lowest - 0.01)).map(({ code }) => code)).toEqual(['map-extrapolated']);
    expect(extrapolationFindings(heating, lowest)).toEqual([]);
    expect(extrapolationFindings(heating, highest)).toEqual([]);
    expect(extrapolationFindings(heating, celsius(highest + 1)).map(({ code }) => code)).toEqual(['map-extrapolated']);
    for (const of of [heating.at, heating.capacityAt, heating.powerAt, heating.copAt, heating.groundHeatAt]) {
      expect(() => of(celsius(lowest - 2.01))).toThrow('enteringFluid');
      expect(() => of(celsius(highest + 2.01))).toThrow('enteringFluid');
      expect(() => of(Number.NaN as Temperature)).toThrow('enteringFluid');
    }
    expect(heating.continuedAt(celsius(-1000)).capacitySlope).toBe(0);
  });

  it('refuses a point given twice, or fewer than two', () => {
    const [first, second] = inventedHeating;
    if (first === undefined || second === undefined) throw new Error('two points');
    expect(() => performanceMap({ mode: 'heating', points: [first, second, first] })).toThrow('points.');
    expect(() => performanceMap({ mode: 'heating', points: [first] })).toThrow('points');
    expect(() => performanceMap({ mode: 'heating', points: [first, { ...second, enteringFluid: celsius(-4.95) }] })).toThrow('0.1 K');
  });

  it('refuses what no unit is: COP at or under 1, units mixed, power and COP both or neither', () => {
    const point = { enteringFluid: celsius(0), capacity: kilowatts(8) };
    const other = { enteringFluid: celsius(10), capacity: kilowatts(10), cop: ratio(4) };
    const map = (first: (typeof inventedHeating)[number]) => () => performanceMap({ mode: 'heating', points: [first, other] });
    expect(map({ ...point, power: electricKilowatts(8) })).toThrow('points.0.power');
    expect(map({ ...point, power: electricKilowatts(0.001) })).toThrow('points.0.power');
    expect(map({ ...point, cop: ratio(1) })).toThrow('points.0.cop');
    expect(map({ ...point, cop: ratio(3.4), power: electricKilowatts(2.35) })).toThrow('points.0');
    expect(map(point)).toThrow('points.0.power');
    // One row in kW where W were meant: the next row's power would exceed its capacity, or the line would fall below nothing.
    expect(map({ ...point, capacity: kilowatts(0.008), cop: ratio(3.4) })).toThrow(/points\.\d\.capacity/u);
  });

  it('accepts a cooling COP that no heating unit has, and not under one half', () => {
    const map = (cop: number) => () =>
      performanceMap({
        mode: 'cooling',
        points: [
          { enteringFluid: celsius(5), capacity: kilowatts(11), cop: ratio(cop) },
          { enteringFluid: celsius(30), capacity: kilowatts(9), cop: ratio(3) },
        ],
      });
    expect(map(0.9)).not.toThrow();
    expect(map(0.4)).toThrow('points.0.cop');
  });

  it('has nothing to say of the invented unit', () => {
    expect(codes({ mode: 'heating', points: inventedHeating })).toEqual([]);
    expect(codes({ mode: 'cooling', points: inventedCooling })).toEqual([]);
  });

  it('mentions two points, and points that run the wrong way or are unusual', () => {
    expect(codes({ mode: 'heating', points: inventedHeating.slice(0, 2) })).toEqual(['few-rating-points']);
    const swapped = inventedHeating.map((point, k) => ({ ...point, enteringFluid: inventedHeating.at(-1 - k)?.enteringFluid ?? celsius(0) }));
    expect(codes({ mode: 'heating', points: swapped })).toEqual(['rating-points-odd', 'rating-points-odd']);
    const poor = inventedHeating.map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: ratio(1.8) }));
    expect(codes({ mode: 'heating', points: poor.slice(0, 3) })).toEqual(['cop-unusual', 'cop-unusual', 'cop-unusual']);
  });

  it('refuses bad input by name', () => {
    const withCop = inventedHeating.slice(0, 3).map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: ratio(3.5) }));
    refuses<PerformanceMapInput>(
      performanceMap,
      performanceMapInputShape,
      { mode: 'heating', points: inventedHeating.slice(0, 3) },
      { more: [{ mode: 'cooling', points: withCop }] },
    );
  });
});
