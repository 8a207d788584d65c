import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CorrectionsInput, correctedRatingPoints, correctionsInputShape, TYPICAL_CORRECTIONS } from '../../src/heat-pump/index.js';
import { ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { inventedCooling, inventedHeating } from './units.js';

const input: CorrectionsInput = {
  mode: 'heating',
  ratingOrigin: 'maker',
  points: inventedHeating,
  corrections: [
    { cause: 'antifreeze', taken: 'from the maker', capacityFactor: ratio(0.97), inputFactor: ratio(0.995) },
    { cause: 'air flow', taken: 'as typical', capacityFactor: ratio(0.98) },
  ],
};
const factor = fc.double({ min: 5 / 6, max: 1.2, noNaN: true }).map((each) => ratio(each));

describe('correctedRatingPoints', () => {
  it('multiplies, in any order, and back again', () => {
    fc.assert(
      fc.property(factor, factor, factor, factor, (a, b, c, d) => {
        const both = [
          { cause: 'antifreeze', taken: 'from the maker', capacityFactor: a, inputFactor: b },
          { cause: 'source flow', taken: 'from the maker', capacityFactor: c, inputFactor: d },
        ] as const;
        const one = correctedRatingPoints({ ...input, corrections: both });
        const other = correctedRatingPoints({ ...input, corrections: [...both].reverse() });
        expect(one.capacityFactor).toBeCloseTo(a * c, 12);
        const undone = correctedRatingPoints({
          ...input,
          points: one.points,
          corrections: both.map((each) => ({ ...each, capacityFactor: ratio(1 / each.capacityFactor), inputFactor: ratio(1 / each.inputFactor) })),
        });
        inventedHeating.forEach(({ capacity, power = 0 }, i) => {
          expect((one.points[i]?.capacity ?? 0) / (capacity * a * c)).toBeCloseTo(1, 12);
          expect((one.points[i]?.power ?? 0) / (power * b * d)).toBeCloseTo(1, 12);
          expect((other.points[i]?.capacity ?? 0) / (one.points[i]?.capacity ?? 0)).toBeCloseTo(1, 12);
          expect((undone.points[i]?.capacity ?? 0) / capacity).toBeCloseTo(1, 12);
        });
      }),
    );
  });

  it('says which correction is of usual size', () => {
    const { findings, ratingOrigin } = correctedRatingPoints(input);
    expect(findings.map(({ code }) => code)).toEqual(['rating-points-derived', 'correction-typical']);
    expect(ratingOrigin).toBe('maker');
    expect(correctedRatingPoints({ ...input, mode: 'cooling', points: inventedCooling }).points).toHaveLength(8);
  });

  it('refuses a factor outside 0.8 to 1.2 instead of bringing it to the limit, and a cause that comes twice', () => {
    const one = (capacityFactor: number): CorrectionsInput => ({
      ...input,
      corrections: [{ cause: 'antifreeze', taken: 'from the maker', capacityFactor: ratio(capacityFactor) }],
    });
    expect(() => correctedRatingPoints(one(0.79))).toThrow('corrections.0.capacityFactor');
    expect(() => correctedRatingPoints(one(97))).toThrow('not a percentage');
    expect(correctedRatingPoints(one(0.8)).capacityFactor).toBe(0.8);
    expect(() => correctedRatingPoints({ ...input, corrections: [...input.corrections, ...input.corrections].slice(0, 3) })).toThrow('twice');
  });

  it('refuses factors that leave a unit without ground heat', () => {
    const poor = inventedHeating.map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: ratio(1.1) }));
    const corrections = [{ cause: 'antifreeze', taken: 'from the maker', capacityFactor: ratio(0.9) }] as const;
    expect(() => correctedRatingPoints({ ...input, points: poor, corrections })).toThrow('points.0.power');
  });

  it('refuses bad input by name', () => {
    const points = inventedHeating.map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: ratio(3.5) }));
    refuses(correctedRatingPoints, correctionsInputShape, input, { more: [{ ...input, points }] });
  });
});

describe('usual corrections', () => {
  it('lie within what is believed, low before high', () => {
    for (const { capacityFactors, inputFactors = [ratio(1), ratio(1)] } of TYPICAL_CORRECTIONS)
      for (const [low, high] of [capacityFactors, inputFactors]) {
        expect(low).toBeGreaterThanOrEqual(0.8);
        expect(high).toBeLessThanOrEqual(1.2);
        expect(low).toBeLessThanOrEqual(high);
      }
    expect(new Set(TYPICAL_CORRECTIONS.map(({ cause }) => cause))).toEqual(new Set(['antifreeze', 'air flow', 'source flow']));
  });
});
