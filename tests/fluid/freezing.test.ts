import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fluidChoiceShape, freezingPoint, massFractionForFreezingPoint, type FluidChoice, type FreezingTarget } from '../../src/fluid/index.js';
import { celsius, massFraction, massPercent, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const GLYCOL = 'propylene-glycol';
const share: fc.Arbitrary<number> = fc.double({ min: 0, max: 0.6, noNaN: true });
const freezes = (x: number): number => freezingPoint({ fluid: GLYCOL, massFraction: massFraction(x) });

describe('freezingPoint', () => {
  it('falls with the mass fraction', () => {
    fc.assert(
      fc.property(share, share, (one, other) => {
        fc.pre(Math.abs(one - other) > 1e-9);
        expect(freezes(Math.max(one, other))).toBeLessThan(freezes(Math.min(one, other)));
      }),
    );
  });

  it('is inverted by massFractionForFreezingPoint, which never freezes above the target', () => {
    fc.assert(
      fc.property(share, (x) => {
        const target = celsius(freezes(x));
        const found = massFractionForFreezingPoint({ fluid: GLYCOL, freezingPoint: target });
        expect(found).toBeCloseTo(x, 12);
        expect(freezes(found)).toBeLessThanOrEqual(target);
      }),
    );
  });

  it('keeps to the ideal law of dilute solutions within a tenth', () => {
    const molality = 0.05 / 0.95 / 0.076094;
    expect(Math.abs(freezes(0.05) / (-1.86 * molality) - 1)).toBeLessThan(0.1);
  });

  it('is 0 for water, whose share for 0 °C is 0', () => {
    expect(freezingPoint({ fluid: 'water', massFraction: massPercent(0) })).toBe(0);
    expect(massFractionForFreezingPoint({ fluid: 'water', freezingPoint: celsius(0) })).toBe(0);
  });

  it('refuses what no mixture freezes at', () => {
    expect(() => massFractionForFreezingPoint({ fluid: GLYCOL, freezingPoint: celsius(-80) })).toThrow('propylene-glycol freezes between');
    expect(() => massFractionForFreezingPoint({ fluid: GLYCOL, freezingPoint: celsius(0) })).toThrow('freezingPoint');
    expect(() => massFractionForFreezingPoint({ fluid: 'water', freezingPoint: celsius(-1) })).toThrow('freezingPoint');
  });

  it('refuses bad input', () => {
    const shape: Shape<FreezingTarget> = { fluid: fluidChoiceShape.fluid, freezingPoint: 'temperature' };
    refuses<FluidChoice>(freezingPoint, fluidChoiceShape, { fluid: GLYCOL, massFraction: massPercent(25) });
    refuses<FreezingTarget>(massFractionForFreezingPoint, shape, { fluid: GLYCOL, freezingPoint: celsius(-10) });
  });
});
