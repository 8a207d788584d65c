import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  antifreezeCharge,
  correctedFill,
  ETHANOL,
  fluidChoiceShape,
  concentrateShape,
  massFromVolumeFraction,
  mixedFluid,
  PROPYLENE_GLYCOL,
  type FillToCorrect,
  type PouredParts,
} from '../../src/fluid/index.js';
import { kilogramsPerCubicMetre, litres, massFraction, massPercent, volumePercent, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { inwardOf, LIQUIDS, SALTS } from './all-fluids.js';

const GLYCOL = 'propylene-glycol';
const drum = { strength: volumePercent(65), density: kilogramsPerCubicMetre(1045) };
const volume = fc.double({ min: 1, max: 2000, noNaN: true });

describe('mixedFluid', () => {
  it('gives back what antifreezeCharge was asked for', () => {
    fc.assert(
      fc.property(inwardOf(LIQUIDS), volume, (choice, loop) => {
        const { concentrateVolume, waterVolume } = antifreezeCharge({ ...choice, loopVolume: litres(loop) });
        const mixed = mixedFluid({ fluid: choice.fluid, concentrateVolume, waterVolume });
        expect(mixed.massFraction).toBeCloseTo(choice.massFraction, 12);
        expect(litres.of(mixed.solutionVolume)).toBeCloseTo(loop, 8);
      }),
    );
  });

  it('keeps mass and antifreeze of what remained and what was poured', () => {
    fc.assert(
      fc.property(inwardOf(LIQUIDS), volume, volume, (choice, left, water) => {
        const remaining = { massFraction: choice.massFraction, solutionVolume: litres(left) };
        const poured = { fluid: choice.fluid, concentrateVolume: litres(0), waterVolume: litres(water), remaining };
        const before = mixedFluid({ ...poured, waterVolume: litres(0) });
        const after = mixedFluid(poured);
        expect(before.massFraction).toBeCloseTo(choice.massFraction, 12);
        expect(after.solutionMass).toBeCloseTo(before.solutionMass + litres(water) * 998.207, 8);
        expect(after.solutionMass * after.massFraction).toBeCloseTo(before.solutionMass * before.massFraction, 8);
        expect(after.freezingPoint).toBeGreaterThanOrEqual(before.freezingPoint - 1e-12);
      }),
    );
  });

  it('takes the strength of the drum into account', () => {
    const poured = { fluid: GLYCOL, concentrateVolume: litres(100), waterVolume: litres(200) } as const;
    expect(mixedFluid({ ...poured, concentrate: drum }).massFraction).toBeCloseTo((100 * 0.65 * 1.0361) / (104.5 + 200 * 0.998207), 12);
  });

  it('refuses nothing at all, and more than the fits know', () => {
    const nothing = { fluid: GLYCOL, concentrateVolume: litres(0), waterVolume: litres(0) } as const;
    expect(() => mixedFluid(nothing)).toThrow('something poured in');
    expect(() => mixedFluid({ ...nothing, concentrateVolume: litres(100) })).toThrow('where the fits of propylene-glycol end');
    for (const fluid of SALTS) expect(() => mixedFluid({ ...nothing, fluid })).toThrow('dosed by mass');
  });

  it('refuses bad input', () => {
    const shape: Shape<PouredParts> = {
      fluid: fluidChoiceShape.fluid,
      concentrateVolume: 'volume',
      waterVolume: 'volume',
      concentrate: { optional: concentrateShape },
      remaining: { optional: { massFraction: 'mass fraction', solutionVolume: 'volume' } },
    };
    const remaining = { massFraction: massPercent(10), solutionVolume: litres(100) };
    refuses<PouredParts>(mixedFluid, shape, {
      fluid: GLYCOL,
      concentrateVolume: litres(100),
      waterVolume: litres(300),
      concentrate: drum,
      remaining,
    });
  });
});

describe('correctedFill', () => {
  it('drains and adds so that the loop is full of the mixture wanted, in either direction', () => {
    fc.assert(
      fc.property(inwardOf(LIQUIDS), fc.double({ min: 0, max: 0.999, noNaN: true }), volume, (choice, to, loop) => {
        const wanted = massFraction(to * choice.fluid.highestMassFraction);
        const fill = { ...choice, wantedMassFraction: wanted, loopVolume: litres(loop) };
        const { drainedVolume, concentrateVolume, waterVolume } = correctedFill(fill);
        expect(drainedVolume).toBeGreaterThanOrEqual(-1e-12 * loop);
        expect(drainedVolume).toBeLessThanOrEqual(fill.loopVolume * (1 + 1e-12));
        expect(Math.min(concentrateVolume, waterVolume)).toBe(0);
        const remaining = { massFraction: choice.massFraction, solutionVolume: litres(Math.max(0, loop - litres.of(drainedVolume))) };
        const mixed = mixedFluid({ fluid: choice.fluid, concentrateVolume, waterVolume, remaining });
        expect(mixed.massFraction).toBeCloseTo(wanted, 9);
        expect(litres.of(mixed.solutionVolume) / loop).toBeCloseTo(1, 9);
      }),
    );
  });

  it('does nothing when nothing is wanted', () => {
    const fill = { fluid: ETHANOL, massFraction: massPercent(20), wantedMassFraction: massPercent(20), loopVolume: litres(300) };
    const correction = correctedFill(fill);
    expect(litres.of(correction.drainedVolume)).toBeCloseTo(0, 9);
    expect(correction).toMatchObject({ concentrateVolume: 0, waterVolume: 0, simpleExchange: 0 });
  });

  it('lies within 1 to 7 % of the rule by volumes for a usual correction', () => {
    const share = (percent: number): ReturnType<typeof massPercent> =>
      massFromVolumeFraction({ fluid: PROPYLENE_GLYCOL, volumeFraction: volumePercent(percent) });
    const { drainedVolume, concentrateVolume, simpleExchange } = correctedFill({
      fluid: PROPYLENE_GLYCOL,
      massFraction: share(20),
      wantedMassFraction: share(25),
      loopVolume: litres(400),
    });
    for (const each of [drainedVolume, concentrateVolume]) {
      expect(simpleExchange / each).toBeGreaterThan(1.01);
      expect(simpleExchange / each).toBeLessThan(1.07);
    }
  });

  it('refuses a drum that is no stronger than the mixture wanted', () => {
    const thin = { strength: volumePercent(30), density: kilogramsPerCubicMetre(1030) };
    const fill = { fluid: GLYCOL, massFraction: massPercent(20), wantedMassFraction: massPercent(32), loopVolume: litres(400) } as const;
    expect(() => correctedFill({ ...fill, concentrate: thin })).toThrow('stronger than the mixture wanted');
  });

  it('refuses bad input', () => {
    const shape: Shape<FillToCorrect> = {
      ...fluidChoiceShape,
      loopVolume: 'volume',
      wantedMassFraction: 'mass fraction',
      concentrate: { optional: concentrateShape },
    };
    const fill = { fluid: GLYCOL, massFraction: massPercent(20), wantedMassFraction: massPercent(30), loopVolume: litres(400), concentrate: drum };
    refuses<FillToCorrect>(correctedFill, shape, { ...fill, fluid: GLYCOL });
  });
});
