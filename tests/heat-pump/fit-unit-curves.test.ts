import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitUnitCurves, type FlowRatingPoint, performanceMap, type UnitFitInput, unitFitInputShape } from '../../src/heat-pump/index.js';
import { celsius, electricKilowatts, kilowatts, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { inventedCooling, inventedHeating } from './units.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const relative = (found: number, expected: number): number => Math.abs(found / expected - 1);

/** The equations of the invented unit E-1 in heating. */
const capacityOf = (t: number, x: number): number => (8 + 0.22 * t + 0.0006 * t * t) * (0.9 + 0.14 * x - 0.04 * x * x);
const powerOf = (t: number, x: number): number => (2.35 + 0.013 * t + 0.0001 * t * t) * (0.98 + 0.03 * x - 0.01 * x * x);
const point = (t: number, x: number): FlowRatingPoint => ({
  enteringFluid: celsius(t),
  flowRatio: ratio(x),
  capacity: kilowatts(capacityOf(t, x)),
  power: electricKilowatts(powerOf(t, x)),
});
const grid = [-5, 0, 10, 25].flatMap((t) => [0.6, 1, 1.25].map((x) => point(t, x)));
const input: UnitFitInput = { mode: 'heating', ratingOrigin: 'invented', form: 'quadratic', points: grid };

describe('fitUnitCurves', () => {
  it('gives the equations of the invented unit back, over entering fluid and flow', () => {
    const fit = fitUnitCurves(input);
    [8000, 220, 0.6].forEach((term, i) => expect(relative(fit.capacityTerms[i] ?? 0, term)).toBeLessThan(1e-9));
    [0.9, 0.14, -0.04].forEach((term, i) => expect(relative(fit.capacityFlowTerms[i] ?? 0, term)).toBeLessThan(1e-8));
    [2350, 13, 0.1].forEach((term, i) => expect(relative(fit.powerTerms[i] ?? 0, term)).toBeLessThan(1e-9));
    [0.98, 0.03, -0.01].forEach((term, i) => expect(relative(fit.powerFlowTerms[i] ?? 0, term)).toBeLessThan(1e-8));
    expect(fit.degreesOfFreedom).toBe(7);
    expect(fit.worstError).toBeLessThan(1e-12);
    expect(fit.findings).toEqual([]);
    const state = fit.at(celsius(-3), ratio(0.7));
    expect(state.capacity).toBeCloseTo(7186.739, 3);
    expect(state.groundHeat).toBeCloseTo(4883.856, 3);
  });

  it('gives any product back, with a COP that follows from capacity and power', () => {
    const product = fc.record({ a: between(2, 50), b: between(-0.03, 0.03), c: between(-3e-4, 3e-4), f: between(-0.2, 0.3), g: between(-0.1, 0.1) });
    fc.assert(
      fc.property(product, product, between(2.5, 6), (q, p, cop) => {
        const value = ({ a, b, c, f, g }: typeof q, t: number, x: number): number =>
          a * (1 + b * t + c * t * t) * (1 + f * (x - 1) + g * (x - 1) ** 2);
        const unit = { ...p, a: q.a / cop };
        const points = [-5, 2, 9, 20].flatMap((t) =>
          [0.7, 1, 1.2].map((x) => ({
            enteringFluid: celsius(t),
            flowRatio: ratio(x),
            capacity: kilowatts(value(q, t, x)),
            power: electricKilowatts(value(unit, t, x)),
          })),
        );
        fc.pre(points.every(({ capacity, power }) => capacity > 1.1 * power && power > 0 && capacity < 45 * power));
        fc.pre([-5, 0, 5, 12, 20].every((t) => value(q, t, 0.9) > 1.05 * value(unit, t, 0.9) && value(unit, t, 0.9) > 0));
        const fit = fitUnitCurves({ ...input, points });
        for (const t of [-5, 0, 5, 12, 20]) {
          const state = fit.at(celsius(t), ratio(0.9));
          expect(relative(state.capacity, 1000 * value(q, t, 0.9))).toBeLessThan(1e-8);
          expect(relative(state.cop, value(q, t, 0.9) / value(unit, t, 0.9))).toBeLessThan(1e-8);
          expect(relative(state.groundHeat + state.power, state.capacity)).toBeLessThan(1e-12);
        }
      }),
    );
  });

  it('tells the errors of its coefficients as a straight line through three points has them by hand', () => {
    // y = 8, 9, 10.6 at −5, 0, 5: slope 0.26, mean 9.2, residuals 0.1, −0.2, 0.1, so s² = 0.06.
    const points = [8, 9, 10.6].map((y, i) => ({ enteringFluid: celsius(5 * i - 5), capacity: kilowatts(y), power: electricKilowatts(2 + 0.1 * i) }));
    const fit = fitUnitCurves({ ...input, form: 'linear', points });
    expect(fit.capacityTerms[1]).toBeCloseTo(260, 9);
    expect(fit.fitRows.map(({ capacityResidual }) => Math.round(capacityResidual))).toEqual([100, -200, 100]);
    expect(fit.capacityDeviation).toBeCloseTo(1000 * Math.sqrt(0.06), 8);
    expect(fit.termErrors?.capacityTerms[1]).toBeCloseTo(1000 * Math.sqrt(0.06 / 50), 8);
    expect(fit.termErrors?.capacityTerms[0]).toBeCloseTo(1000 * Math.sqrt(0.06 / 3), 8);
    expect(fit.worstError).toBeCloseTo(0.2 / 9, 9);
    expect(fit.worstPoint).toBe(1);
  });

  it('makes rating points from which a map gives the fit back', () => {
    const fit = fitUnitCurves(input);
    const { points, derivedBy, ratingOrigin, findings } = fit.ratingPoints(ratio(0.8));
    const map = performanceMap({ mode: 'heating', points });
    for (const t of [-5, 1.3, 12, 25]) expect(relative(map.at(celsius(t)).capacity, fit.at(celsius(t), ratio(0.8)).capacity)).toBeLessThan(1e-9);
    expect([derivedBy, ratingOrigin, ...findings.map(({ code }) => code)]).toEqual(['polynomial fit', 'invented', 'rating-points-derived']);
  });

  it('has no flow where the points have one, and says when nothing is left to judge it by', () => {
    const fit = fitUnitCurves({ ...input, points: inventedHeating.slice(0, 3) });
    expect([...fit.capacityFlowTerms]).toEqual([1]);
    expect(fit.degreesOfFreedom).toBe(0);
    expect(fit).not.toHaveProperty('termErrors');
    expect(fit.findings.map(({ code }) => code)).toEqual(['fit-without-spare']);
    const cooling = fitUnitCurves({ ...input, mode: 'cooling', points: inventedCooling });
    expect(cooling.at(celsius(28)).groundHeat).toBeCloseTo(cooling.at(celsius(28)).capacity + cooling.at(celsius(28)).power, 9);
  });

  it('says when the form does not suit, and where a parabola turns', () => {
    const row = (t: number, y: number): FlowRatingPoint => ({ enteringFluid: celsius(t), capacity: kilowatts(y), power: electricKilowatts(2) });
    const turning = fitUnitCurves({ ...input, points: [row(0, 8), row(5, 9), row(10, 9.4), row(15, 9.2)] });
    expect(turning.findings.map(({ code }) => code)).toEqual(['fit-turns']);
    const poor = fitUnitCurves({ ...input, form: 'linear', points: [row(0, 8), row(5, 9), row(10, 9.4), row(15, 9.2)] });
    expect(poor.findings.map(({ code }) => code)).toEqual(['fit-poor']);
  });

  it('refuses too few points, points that mix entering fluid and flow, and places they do not reach', () => {
    const [first, second, third] = grid.filter(({ flowRatio }) => flowRatio === 1);
    if (first === undefined || second === undefined || third === undefined) throw new Error('the grid has three rows at rated flow');
    expect(() => fitUnitCurves({ ...input, points: [first, second] })).toThrow('at least 3 entering temperatures');
    expect(() => fitUnitCurves({ ...input, form: 'linear', points: [first, first] })).toThrow('at least 2 entering temperatures');
    expect(() => fitUnitCurves({ ...input, points: [point(-5, 0.8), point(0, 1), point(5, 1.2)] })).toThrow('at least 5');
    const mixed = [-5, 0, 5, 10, 15].map((t) => point(t, 1 + t / 100));
    expect(() => fitUnitCurves({ ...input, form: 'linear', points: mixed })).toThrow('told apart');
    const fit = fitUnitCurves(input);
    expect(() => fit.at(celsius(27.1))).toThrow('enteringFluid');
    expect(() => fit.at(celsius(5), ratio(0.5))).toThrow('flowRatio');
  });

  it('refuses bad input by name', () => {
    const withCop = grid.map(({ enteringFluid, capacity, flowRatio = ratio(1) }) => ({ enteringFluid, capacity, flowRatio, cop: ratio(3.5) }));
    refuses(fitUnitCurves, unitFitInputShape, input, { more: [{ ...input, points: withCop }] });
  });
});
