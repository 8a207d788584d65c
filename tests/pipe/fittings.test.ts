import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FITTING_NAMES, fittingLoss, minorLosses, pressureGradient, type FittedFlow, type FittingState } from '../../src/pipe/index.js';
import { CONSTANT_FITTINGS, FITTINGS } from '../../src/pipe/fittings.data.js';
import {
  diameterInches,
  diameterMetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metres,
  millipascalSeconds,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const anyFitting = fc.constantFrom(...FITTING_NAMES);
const flowing: FittedFlow = {
  pipe: { insideDiameter: diameterInches(0.86) },
  fluid: { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) },
  flow: litresPerSecond(0.19),
  roughness: metres(1.5e-6),
  fittingCounts: [
    { fitting: 'elbow 90 welded', count: 4 },
    { fitting: 'fusion joint', count: 10 },
  ],
};

describe('fittingLoss', () => {
  it('knows every fitting of the tables', () => {
    expect([...FITTING_NAMES].sort()).toEqual([...Object.keys(FITTINGS), ...Object.keys(CONSTANT_FITTINGS)].sort());
  });

  it('never rises with Reynolds number or bore, and has its limits about it', () => {
    fc.assert(
      fc.property(anyFitting, number(0.005, 1), number(0.005, 1), number(1, 1e6), number(1, 1e6), (fitting, a, b, one, other) => {
        const at = (bore: number, reynolds: number): ReturnType<typeof fittingLoss> =>
          fittingLoss({ fitting, insideDiameter: diameterMetres(bore), reynolds: ratio(reynolds) });
        const [narrow, wide] = [Math.min(a, b), Math.max(a, b)];
        const { low, estimate, high } = at(narrow, Math.min(one, other)).lossCoefficient;
        expect(at(narrow, Math.max(one, other)).lossCoefficient.estimate).toBeLessThanOrEqual(estimate);
        expect(at(wide, Math.min(one, other)).lossCoefficient.estimate).toBeLessThanOrEqual(estimate);
        expect(low + high).toBeCloseTo(2 * estimate, 9);
        expect(low).toBeLessThan(high);
      }),
    );
  });

  it('is above the handbook’s for an elbow at the Reynolds numbers of a loop', () => {
    for (const reynolds of [2500, 5000, 10_000]) {
      const { lossCoefficient, steelLossCoefficient } = fittingLoss({
        fitting: 'elbow 90 welded',
        insideDiameter: diameterInches(1.075),
        reynolds: ratio(reynolds),
      });
      expect(lossCoefficient.estimate).toBeGreaterThan(steelLossCoefficient ?? NaN);
    }
  });

  it('refuses bad input', () => {
    const shape: Shape<FittingState> = { fitting: FITTING_NAMES, insideDiameter: 'diameter', reynolds: 'ratio' };
    refuses(fittingLoss, shape, { fitting: 'exit', insideDiameter: diameterInches(1), reynolds: ratio(5000) });
    refuses(fittingLoss, shape, { fitting: 'elbow 45', insideDiameter: diameterInches(1), reynolds: ratio(5000) });
  });
});

describe('minorLosses', () => {
  it('adds up, in any order, in proportion to the counts', () => {
    const one = minorLosses(flowing);
    const reversed = minorLosses({ ...flowing, fittingCounts: [...flowing.fittingCounts].reverse() });
    expect(reversed.fittingsDrop).toBeCloseTo(one.fittingsDrop, 9);
    const twice = minorLosses({ ...flowing, fittingCounts: flowing.fittingCounts.map((each) => ({ ...each, count: 2 * each.count })) });
    expect(twice.fittingsDrop).toBeCloseTo(2 * one.fittingsDrop, 9);
    expect(twice.lossCoefficient.high).toBeCloseTo(2 * one.lossCoefficient.high, 9);
    expect(one.equivalentLength * pressureGradient(flowing)).toBeCloseTo(one.fittingsDrop, 9);
  });

  it('is a few per cent of a circuit: coefficients of 5 beside 152 m of 3/4 in pipe', () => {
    const { equivalentLength } = minorLosses({ ...flowing, fittingCounts: [{ fitting: 'exit', count: 5 }] });
    expect(equivalentLength / 152.4).toBeGreaterThan(0.01);
    expect(equivalentLength / 152.4).toBeLessThan(0.025);
  });

  it('refuses bad input', () => {
    const shape: Shape<FittedFlow> = {
      pipe: { insideDiameter: 'diameter' },
      fluid: { density: 'density', viscosity: 'dynamic viscosity' },
      flow: 'flow',
      roughness: { optional: 'length' },
      fittingCounts: { list: { fitting: FITTING_NAMES, count: 'count' } },
    };
    refuses(minorLosses, shape, flowing);
    expect(() => minorLosses({ ...flowing, flow: litresPerSecond(0) })).toThrow('at standstill');
  });
});
