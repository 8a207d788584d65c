import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryBasis, dryingShape, moistureFromDrying, wetBasis, type Drying } from '../../src/soil/index.js';
import { moistureShape, type Moisture } from '../../src/states/index.js';
import { dryBasisFraction, grams, kilograms, pounds, wetBasisFraction } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const drying = { moistMass: grams(512.4), dryMass: grams(431.7), tareMass: grams(102.3) };

describe('moistureFromDrying', () => {
  it('does not care for the unit of mass nor for the weight of the container', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (solids, water, tare) => {
          const [inKilograms, inPounds] = [kilograms, pounds].map((unit) =>
            dryBasis(
              moistureFromDrying({ moistMass: unit(tare + solids + Math.min(water, solids)), dryMass: unit(tare + solids), tareMass: unit(tare) }),
            ),
          );
          expect(inPounds).toBeCloseTo(inKilograms ?? NaN, 9);
          expect(inKilograms).toBeCloseTo(Math.min(water, solids) / solids, 9);
        },
      ),
    );
  });

  it('takes no container as none', () => {
    expect(dryBasis(moistureFromDrying({ moistMass: grams(250), dryMass: grams(200) }))).toBeCloseTo(0.25, 12);
    expect(dryBasis(moistureFromDrying({ moistMass: grams(200), dryMass: grams(200) }))).toBe(0);
  });

  it('refuses weighings that cannot be', () => {
    expect(() => moistureFromDrying({ moistMass: grams(100), dryMass: grams(120) })).toThrow('may be interchanged');
    expect(() => moistureFromDrying({ moistMass: grams(120), dryMass: grams(100), tareMass: grams(100) })).toThrow('tareMass');
    expect(() => moistureFromDrying({ moistMass: grams(300), dryMass: grams(101), tareMass: grams(100) })).toThrow(
      'the dry mass may be without the container',
    );
    refuses<Drying>(moistureFromDrying, dryingShape, drying);
  });
});

describe('dryBasis and wetBasis', () => {
  it('undo one another', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (water) => {
        const dry: Moisture = { basis: 'dry', value: dryBasisFraction(water) };
        const there = wetBasis(dry);
        expect(there).toBeLessThan(1);
        expect(there).toBeLessThanOrEqual(water);
        expect(dryBasis({ basis: 'wet', value: there })).toBeCloseTo(water, 9);
        expect(dryBasis(dry)).toBe(water);
      }),
    );
  });

  it('refuse what is no share', () => {
    const examples = [{ basis: 'wet', value: wetBasisFraction(0.2) }] as const;
    for (const convert of [dryBasis, wetBasis]) {
      refuses(
        ({ moisture }: { readonly moisture: Moisture }) => convert(moisture),
        { moisture: moistureShape },
        { moisture: { basis: 'dry', value: dryBasisFraction(0.2) } },
        { more: [{ moisture: examples[0] }] },
      );
    }
    expect(() => dryBasis({ basis: 'dry', value: dryBasisFraction(25) })).toThrow('per cent given as a share');
    expect(() => dryBasis({ basis: 'wet', value: wetBasisFraction(1) })).toThrow('on dry basis');
  });
});
