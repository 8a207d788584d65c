import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fitScaledUnit,
  performanceMap,
  type ScaledPlace,
  scaledPlaceShape,
  type ScaledRatingPoint,
  type ScaledUnitInput,
  scaledUnitInputShape,
} from '../../src/heat-pump/index.js';
import { celsius, electricWatts, ratio, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Lines over all four quantities, of an invented unit. */
const capacity = (load: number, t: number, air: number, flow: number): number => 9000 - 30 * load + 200 * t + 900 * air + 400 * flow;
const power = (load: number, t: number, air: number, flow: number): number => 1200 + 45 * load + 6 * t - 80 * air - 20 * flow;
const point = (load: number, t: number, air: number, flow: number): ScaledRatingPoint => ({
  enteringFluid: celsius(t),
  loadSide: celsius(load),
  loadFlowRatio: ratio(air),
  flowRatio: ratio(flow),
  capacity: watts(capacity(load, t, air, flow)),
  power: electricWatts(power(load, t, air, flow)),
});
const points = [
  point(20, 0, 1, 1),
  point(24, 0, 0.9, 1),
  point(20, 5, 1, 0.7),
  point(18, 10, 0.8, 1.2),
  point(22, -5, 1.1, 0.8),
  point(24, 10, 1, 1),
];
const input: ScaledUnitInput = { mode: 'heating', ratingOrigin: 'invented', points };

describe('fitScaledUnit', () => {
  it('gives lines over all four quantities back', () => {
    const unit = fitScaledUnit(input);
    expect(unit.varying).toEqual(['load side', 'entering fluid', 'load flow', 'source flow']);
    expect(unit.worstError).toBeLessThan(1e-10);
    fc.assert(
      fc.property(between(18, 24), between(-5, 10), between(0.8, 1.1), between(0.7, 1.2), (load, t, air, flow) => {
        const place = { loadSide: celsius(load), enteringFluid: celsius(t), loadFlowRatio: ratio(air), flowRatio: ratio(flow) };
        const state = unit.at(place);
        expect(state.capacity).toBeCloseTo(capacity(load, t, air, flow), 5);
        expect(state.power).toBeCloseTo(power(load, t, air, flow), 5);
        expect(Math.abs(state.groundHeat + state.power - state.capacity)).toBeLessThan(1e-9);
      }),
    );
  });

  it('has coefficients of the published form, temperatures in kelvin over 283.15', () => {
    const unit = fitScaledUnit(input);
    const reference = capacity(20, 0, 1, 1);
    const expected = [9000 - 273.15 * (200 - 30), -30 * 283.15, 200 * 283.15, 900, 400].map((each) => each / reference);
    unit.capacityCoefficients.forEach((each, i) => expect(each).toBeCloseTo(expected[i] ?? Number.NaN, 7));
  });

  it('tells the same whatever point comes first', () => {
    const scattered = points.map((each, i) => ({ ...each, capacity: watts(each.capacity * (1 + 0.004 * (-1) ** i)) }));
    const more = [...scattered, point(21, 3, 0.95, 0.9)];
    const place = { loadSide: celsius(21), enteringFluid: celsius(2), flowRatio: ratio(0.9) };
    const one = fitScaledUnit({ ...input, points: more });
    const other = fitScaledUnit({ ...input, points: [...more].reverse() });
    expect(other.at(place).capacity / one.at(place).capacity).toBeCloseTo(1, 9);
    expect(one.degreesOfFreedom).toBe(2);
    expect(one.capacityCoefficientErrors).toHaveLength(5);
    expect(one.worstError).toBeGreaterThan(1e-3);
  });

  it('leaves out what does not vary, and is asked there alone', () => {
    const plain = [-5, 0, 5, 10].map((t) => point(20, t, 1, 1));
    const unit = fitScaledUnit({ ...input, points: plain });
    expect(unit.varying).toEqual(['entering fluid']);
    expect(unit.at({ enteringFluid: celsius(2), loadSide: celsius(20) }).capacity).toBeCloseTo(capacity(20, 2, 1, 1), 6);
    expect(() => unit.at({ enteringFluid: celsius(2), loadSide: celsius(21) })).toThrow('loadSide');
    expect(() => unit.at({ enteringFluid: celsius(12.5), loadSide: celsius(20) })).toThrow('enteringFluid');
    expect(() => unit.at({ enteringFluid: celsius(2), loadSide: celsius(20), flowRatio: ratio(0.9) })).toThrow('flowRatio');
  });

  it('makes rating points at one load side, labelled', () => {
    const derived = fitScaledUnit(input).ratingPoints({ loadSide: celsius(22), flowRatio: ratio(1.1) });
    expect(derived.findings.map(({ code }) => code)).toEqual(['rating-points-derived']);
    expect(derived.ratingOrigin).toBe('invented');
    expect(performanceMap({ mode: 'heating', points: derived.points }).at(celsius(4)).capacity).toBeCloseTo(capacity(22, 4, 1, 1.1), 5);
    const oneFluid = fitScaledUnit({ ...input, points: [point(20, 0, 1, 1), point(25, 0, 1, 1)] });
    expect(oneFluid.findings.map(({ code }) => code)).toEqual(['fit-without-spare']);
    expect(() => oneFluid.ratingPoints({ loadSide: celsius(22) })).toThrow('two entering temperatures');
  });

  it('refuses too few points, and quantities that always change together', () => {
    expect(() => fitScaledUnit({ ...input, points: points.slice(0, 3) })).toThrow('at least 5');
    const together = [0, 5, 10, 15].map((t) => point(20 + t / 5, t, 1, 1));
    expect(() => fitScaledUnit({ ...input, points: together })).toThrow('without the others');
  });

  it('refuses bad input by name', () => {
    const withCop = points.map(({ power: _, ...rest }) => ({ ...rest, cop: ratio(3.5) }));
    refuses(fitScaledUnit, scaledUnitInputShape, input, { more: [{ ...input, points: withCop }] });
    const place: ScaledPlace = { loadSide: celsius(21), enteringFluid: celsius(2), flowRatio: ratio(0.9), loadFlowRatio: ratio(1) };
    refuses(fitScaledUnit(input).at, scaledPlaceShape, place);
  });
});
