import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  antifreezeForProtection,
  FLUID_NAMES,
  fluidFacts,
  fluidFactsShape,
  fluidFindings,
  fluidConditionShape,
  protectionTemperature,
  type ColdestFluid,
  type Fluid,
  type FluidCondition,
  type ProtectionTarget,
} from '../../src/fluid/index.js';
import { celsius, kelvinDifference, massPercent, volumePercent, type Shape } from '../../src/units/index.js';
import { ALL_FLUIDS } from './all-fluids.js';
import { refuses } from '../support/bad-input.js';
import { everyNumberFinite } from '../support/finite.js';

const GLYCOL = 'propylene-glycol';
const propose = (t: number): ReturnType<typeof antifreezeForProtection> => antifreezeForProtection({ fluid: GLYCOL, protectTo: celsius(t) });
const target: fc.Arbitrary<number> = fc.double({ min: -45, max: 20, noNaN: true });

describe('antifreezeForProtection', () => {
  it('proposes whole per cent by volume, never under the floor, never freezing above the target', () => {
    fc.assert(
      fc.property(target, (t) => {
        const proposal = propose(t);
        const percent = volumePercent.of(proposal.volumeFraction);
        expect(percent).toBeCloseTo(Math.round(percent), 9);
        expect(proposal.volumeFraction).toBeGreaterThanOrEqual(0.25);
        expect(proposal.freezingPoint).toBeLessThanOrEqual(t);
        expect(proposal.reserve).toBeCloseTo(t - proposal.freezingPoint, 12);
        expect(proposal.volumeFraction - proposal.neededVolumeFraction).toBeLessThan(proposal.governedBy === 'protection' ? 0.01 : 0.2501);
      }),
    );
  });

  it('never asks for less when the target is colder', () => {
    fc.assert(
      fc.property(target, target, (one, other) => {
        expect(propose(Math.min(one, other)).volumeFraction).toBeGreaterThanOrEqual(propose(Math.max(one, other)).volumeFraction);
      }),
    );
  });

  it('says what governs', () => {
    expect(propose(-9.6)).toMatchObject({ volumeFraction: 0.25, governedBy: 'inhibitor floor', inhibitorFloor: 0.25 });
    expect(propose(3)).toMatchObject({ volumeFraction: 0.25, governedBy: 'inhibitor floor', neededVolumeFraction: 0 });
    const colder = propose(-12);
    expect(volumePercent.of(colder.volumeFraction)).toBeCloseTo(29, 9);
    expect(colder.governedBy).toBe('protection');
    expect(colder.freezingPointUncertainty).toBe(0.5);
  });

  it('does not add a per cent to a share that is whole already', () => {
    expect(propose(propose(-15).freezingPoint).volumeFraction).toBe(propose(-15).volumeFraction);
  });

  it('lets water protect down to 0 °C and no further', () => {
    expect(antifreezeForProtection({ fluid: 'water', protectTo: celsius(1) })).toMatchObject({
      massFraction: 0,
      governedBy: 'protection',
      reserve: 1,
    });
    expect(() => antifreezeForProtection({ fluid: 'water', protectTo: celsius(-1) })).toThrow('water cannot protect below 0.0 degC');
    expect(() => propose(-60)).toThrow('propylene-glycol cannot protect below');
  });

  it('refuses bad input', () => {
    const shape: Shape<ProtectionTarget> = {
      fluid: FLUID_NAMES,
      protectTo: 'temperature',
      freezingRule: { optional: ['fit', 'warmest source'] },
    };
    refuses<ProtectionTarget>(antifreezeForProtection, shape, { fluid: GLYCOL, protectTo: celsius(-10), freezingRule: 'fit' });
  });
});

describe('protectionTemperature', () => {
  it('takes the colder of the two rules and says which', () => {
    const coldest = { lowestEntering: celsius(-1.1), lowestLeaving: celsius(-4) };
    expect(protectionTemperature(coldest).protectTo).toBeCloseTo(-9.556, 3);
    expect(protectionTemperature({ ...coldest, lowestLeaving: celsius(-2) })).toMatchObject({ governedBy: 'entering fluid' });
    expect(protectionTemperature({ ...coldest, lowestLeaving: celsius(-2) }).protectTo).toBeCloseTo(-9.433, 3);
    expect(protectionTemperature({ ...coldest, belowEntering: kelvinDifference(0), belowLeaving: kelvinDifference(3) })).toEqual({
      protectTo: -7,
      governedBy: 'leaving fluid',
      margin: 3,
    });
  });

  it('refuses a leaving fluid warmer than the entering', () => {
    expect(() => protectionTemperature({ lowestEntering: celsius(-4), lowestLeaving: celsius(-1) })).toThrow('interchanged');
  });

  it('refuses bad input', () => {
    const shape: Shape<ColdestFluid> = {
      lowestEntering: 'temperature',
      lowestLeaving: 'temperature',
      belowEntering: { optional: 'temperature difference' },
      belowLeaving: { optional: 'temperature difference' },
    };
    refuses<ColdestFluid>(protectionTemperature, shape, {
      lowestEntering: celsius(-1),
      lowestLeaving: celsius(-4),
      belowEntering: kelvinDifference(8),
      belowLeaving: kelvinDifference(5),
    });
  });
});

describe('fluidFacts and fluidFindings', () => {
  it('know every fluid by name, and list no other', () => {
    expect(fluidFactsShape.fluid).toEqual(ALL_FLUIDS.map(({ name }) => name));
    for (const record of ALL_FLUIDS) {
      const facts = fluidFacts(record);
      expect(facts.fluid).toBe(record.name);
      expect(everyNumberFinite(facts)).toBe(true);
    }
    for (const fluid of FLUID_NAMES) expect(fluidFacts(fluid).use).toBe('house');
    expect(() => fluidFacts('brandy' as Fluid)).toThrow('fluid: brandy is not allowed');
  });

  it('doubt cold glycol and thin glycol, and nothing about warm glycol or water', () => {
    const codes = (percent: number, t: number): readonly string[] =>
      fluidFindings({ fluid: GLYCOL, massFraction: massPercent(percent), temperature: celsius(t) }).map(({ code }) => code);
    expect(codes(30, -5)).toEqual(['viscosity-uncertain-in-cold']);
    expect(codes(15, 5)).toEqual(['antifreeze-below-inhibitor-floor']);
    expect(codes(30, 5)).toEqual([]);
    expect(fluidFindings({ fluid: 'water', massFraction: massPercent(0), temperature: celsius(1) })).toEqual([]);
  });

  it('do not call the proposed floor too thin', () => {
    const { massFraction } = propose(-5);
    expect(fluidFindings({ fluid: GLYCOL, massFraction, temperature: celsius(10) })).toEqual([]);
  });

  it('refuse bad input', () => {
    refuses<FluidCondition>(fluidFindings, fluidConditionShape, { fluid: GLYCOL, massFraction: massPercent(20), temperature: celsius(-5) });
  });
});
