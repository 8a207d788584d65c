import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  antifreezeCharge,
  fluidChoiceShape,
  concentrateShape,
  massFromVolumeFraction,
  volumeFromMassFraction,
  type AntifreezeFill,
  type FluidByVolume,
  type FluidChoice,
} from '../../src/fluid/index.js';
import { kilogramsPerCubicMetre, litres, massFraction, massPercent, volumeFraction, volumePercent, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const GLYCOL = 'propylene-glycol';
const share: fc.Arbitrary<number> = fc.double({ min: 0, max: 0.6, noNaN: true });
const drum = { strength: volumePercent(65), density: kilogramsPerCubicMetre(1045) };
const fill = (x: number, loop = 400): AntifreezeFill => ({ fluid: GLYCOL, massFraction: massFraction(x), loopVolume: litres(loop) });

describe('volume and mass fractions', () => {
  it('invert each other', () => {
    fc.assert(
      fc.property(share, (x) => {
        const byVolume = volumeFromMassFraction({ fluid: GLYCOL, massFraction: massFraction(x) });
        expect(massFromVolumeFraction({ fluid: GLYCOL, volumeFraction: byVolume })).toBeCloseTo(x, 12);
      }),
    );
  });

  it('are 0 together, and for water', () => {
    expect(volumeFromMassFraction({ fluid: GLYCOL, massFraction: massPercent(0) })).toBe(0);
    expect(massFromVolumeFraction({ fluid: GLYCOL, volumeFraction: volumePercent(0) })).toBe(0);
    expect(massFromVolumeFraction({ fluid: 'water', volumeFraction: volumePercent(0) })).toBe(0);
  });

  it('refuse bad input', () => {
    const shape: Shape<FluidByVolume> = { fluid: fluidChoiceShape.fluid, volumeFraction: 'volume fraction' };
    refuses<FluidChoice>(volumeFromMassFraction, fluidChoiceShape, { fluid: GLYCOL, massFraction: massPercent(25) });
    refuses<FluidByVolume>(massFromVolumeFraction, shape, { fluid: GLYCOL, volumeFraction: volumePercent(25) });
  });
});

describe('antifreezeCharge', () => {
  it('keeps the balance of mass, and of glycol, and scales with the loop', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 1, max: 5000, noNaN: true }), (x, loop) => {
        const charge = antifreezeCharge(fill(x, loop));
        expect(charge.concentrateMass + charge.waterMass).toBeCloseTo(charge.solutionMass, 9);
        expect(charge.concentrateMass / charge.solutionMass).toBeCloseTo(x, 12);
        expect(charge.concentrateVolume + charge.waterVolume - charge.contraction).toBeCloseTo(charge.solutionVolume, 12);
        const one = antifreezeCharge(fill(x, 1));
        expect(charge.waterVolume).toBeCloseTo(loop * one.waterVolume, 9);
        expect(charge.contraction).toBeGreaterThan(-1e-5 * charge.solutionVolume);
      }),
    );
  });

  it('pours more of a weaker concentrate, and less water', () => {
    const [pure, weak] = [antifreezeCharge(fill(0.254)), antifreezeCharge({ ...fill(0.254), concentrate: drum })];
    expect(weak.concentrateVolume * 0.65).toBeCloseTo(pure.concentrateVolume, 12);
    expect(weak.waterVolume).toBeLessThan(pure.waterVolume);
    expect(weak.concentrateMass + weak.waterMass).toBeCloseTo(pure.solutionMass, 9);
  });

  it('fills a loop of water with water', () => {
    const charge = antifreezeCharge({ fluid: 'water', massFraction: massPercent(0), loopVolume: litres(400) });
    expect(charge.concentrateVolume).toBe(0);
    expect(litres.of(charge.waterVolume)).toBeCloseTo(400, 3);
  });

  it('refuses a concentrate that cannot make the mixture, or is lighter than what is in it', () => {
    const thin = { strength: volumeFraction(0.2), density: kilogramsPerCubicMetre(1015) };
    expect(() => antifreezeCharge({ ...fill(0.3), concentrate: thin })).toThrow('stronger than the mixture');
    const light = { strength: volumeFraction(0.96), density: kilogramsPerCubicMetre(900) };
    expect(() => antifreezeCharge({ ...fill(0.3), concentrate: light })).toThrow('the antifreeze in it alone');
  });

  it('refuses bad input', () => {
    const shape: Shape<AntifreezeFill> = { ...fluidChoiceShape, loopVolume: 'volume', concentrate: { optional: concentrateShape } };
    refuses<AntifreezeFill>(antifreezeCharge, shape, { ...fill(0.25), concentrate: drum });
  });
});
