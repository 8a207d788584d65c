import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkEmitters,
  conditionMap,
  emitterCheckInputShape,
  type EmitterCheckInput,
  emitterOutput,
  type EmitterOutputInput,
  emitterOutputInputShape,
  type EmitterRating,
  emitterWaterShape,
  meanExcess,
  requiredSupply,
  type RequiredSupplyInput,
  requiredSupplyInputShape,
} from '../../src/heat-pump/index.js';
import { celsius, kelvinDifference, kilowatts, ratio, watts, wattsPerKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { between, bilinear, grid } from './tables.js';

const water = (supply: number, back: number, room = 20) => ({
  supplyTemperature: celsius(supply),
  returnTemperature: celsius(back),
  indoor: celsius(room),
});
const radiators: EmitterRating = { emitter: 'radiator', ratedOutput: kilowatts(16), ratedWater: water(75, 65) };
const anyEmitters: fc.Arbitrary<EmitterRating> = fc
  .record({
    emitter: fc.constantFrom('radiator', 'convector', 'floor', 'fan coil'),
    exponent: fc.option(between(0.9, 1.6), { nil: undefined }),
    rated: between(1, 30),
    excessMean: fc.constantFrom('logarithmic', 'arithmetic'),
    back: between(5, 40),
    spread: between(0, 20),
  })
  .map(({ emitter, exponent, rated, excessMean, back, spread }) => ({
    emitter,
    ...(exponent === undefined ? {} : { exponent: ratio(exponent) }),
    ratedOutput: kilowatts(rated),
    ratedWater: { ...water(20 + back + spread, 20 + back), excessMean },
  }));
const check: EmitterCheckInput = {
  emitters: radiators,
  load: kilowatts(8),
  indoor: celsius(20),
  waterSpread: kelvinDifference(8),
  availableSupply: celsius(50),
};

describe('meanExcess', () => {
  it('lies between the excesses of supply and return, the logarithmic below the arithmetic', () => {
    fc.assert(
      fc.property(between(0.1, 60), between(0, 40), (back, spread) => {
        const place = water(20 + Math.min(back + spread, 80), 20 + back);
        const [low, high] = [meanExcess(place), meanExcess({ ...place, excessMean: 'arithmetic' })];
        expect(low).toBeLessThanOrEqual(high * (1 + 1e-12));
        expect(low).toBeGreaterThanOrEqual((place.returnTemperature - 20) * (1 - 1e-12));
        expect(high).toBeLessThanOrEqual((place.supplyTemperature - 20) * (1 + 1e-12));
      }),
    );
    expect(meanExcess(water(50, 50))).toBe(30);
    expect(meanExcess(water(50, 50 - 1e-9))).toBeCloseTo(30, 8);
    expect(() => meanExcess(water(50, 20))).toThrow('returnTemperature');
    refuses(meanExcess, emitterWaterShape, { ...water(50, 40), excessMean: 'logarithmic' });
  });
});

describe('emitterOutput', () => {
  it('gives the rating back, and more with warmer water', () => {
    fc.assert(
      fc.property(anyEmitters, between(0, 10), (emitters, more) => {
        expect(emitterOutput({ emitters, emitterWater: emitters.ratedWater }).emittedHeat).toBeCloseTo(emitters.ratedOutput, 8);
        const { supplyTemperature, returnTemperature, indoor } = emitters.ratedWater;
        const warmer = { supplyTemperature: celsius(supplyTemperature + more), returnTemperature, indoor };
        expect(emitterOutput({ emitters, emitterWater: warmer }).emittedHeat).toBeGreaterThanOrEqual(emitters.ratedOutput * (1 - 1e-12));
      }),
    );
  });

  it('refuses bad input by name', () => {
    const emitters = { ...radiators, exponent: ratio(1.3), ratedWater: { ...water(75, 65), excessMean: 'arithmetic' } } as const;
    refuses<EmitterOutputInput>(emitterOutput, emitterOutputInputShape, { emitters, emitterWater: water(50, 40) });
    expect(() => emitterOutput({ emitters: { ...radiators, ratedWater: water(20.5, 20.4) }, emitterWater: water(50, 40) })).toThrow(
      'emitters.ratedWater',
    );
  });
});

describe('requiredSupply', () => {
  it('is the supply at which the emitters give the load, found again by halving', () => {
    fc.assert(
      fc.property(anyEmitters, between(0.05, 1.5), between(0, 6), between(15, 24), (emitters, share, spread, room) => {
        const load = watts(Math.max(1, share * emitters.ratedOutput));
        const excessMean = emitters.ratedWater.excessMean ?? 'logarithmic';
        const given = (supply: number): number => emitterOutput({ emitters, emitterWater: water(supply, supply - spread, room) }).emittedHeat;
        let [low, high] = [room + spread + 0.02, 100];
        fc.pre(given(low) < load && given(high) > load);
        for (let k = 0; k < 80; k += 1) {
          const middle = (low + high) / 2;
          if (given(middle) < load) low = middle;
          else high = middle;
        }
        const found = requiredSupply({ emitters, load, indoor: celsius(room), waterSpread: kelvinDifference(spread) });
        expect(found.requiredSupply).toBeCloseTo(low, 7);
        expect(found.meanExcess).toBeCloseTo(meanExcess({ ...water(low, low - spread, room), excessMean }), 7);
        const flow = { heatCapacityRate: wattsPerKelvin(load / Math.max(spread, 1e-3)) };
        const byFlow = requiredSupply({ emitters, load, indoor: celsius(room), ...flow });
        if (spread > 0.001) expect(byFlow.requiredSupply).toBeCloseTo(found.requiredSupply, 9);
      }),
    );
  });

  it('refuses what cannot be, and bad input by name', () => {
    const asked = {
      emitters: { ...radiators, exponent: ratio(1.3), ratedWater: { ...water(75, 65), excessMean: 'logarithmic' } },
      load: kilowatts(8),
    } as const;
    const room = { indoor: celsius(20) };
    const spread = { waterSpread: kelvinDifference(8) };
    refuses<RequiredSupplyInput>(
      requiredSupply,
      requiredSupplyInputShape,
      { ...asked, ...room, ...spread },
      { more: [{ ...asked, ...room, heatCapacityRate: wattsPerKelvin(1000) }] },
    );
    expect(() => requiredSupply({ ...asked, ...room })).toThrow('waterSpread');
    expect(() => requiredSupply({ ...asked, ...room, ...spread, heatCapacityRate: wattsPerKelvin(1000) })).toThrow('heatCapacityRate');
    expect(() => requiredSupply({ ...asked, ...room, ...spread, load: kilowatts(80) })).toThrow('load');
    const arithmetic = { ...radiators, ratedWater: { ...water(75, 65), excessMean: 'arithmetic' } } as const;
    expect(() => requiredSupply({ ...asked, ...room, emitters: arithmetic, load: kilowatts(1), waterSpread: kelvinDifference(20) })).toThrow(
      'waterSpread',
    );
    const little = { ...asked, emitters: arithmetic, load: kilowatts(1), heatCapacityRate: wattsPerKelvin(20) };
    expect(() => requiredSupply({ ...little, ...room })).toThrow('heatCapacityRate');
  });
});

describe('checkEmitters', () => {
  it('is short exactly where warmer water is needed than there is, and then by what the water carries', () => {
    fc.assert(
      fc.property(anyEmitters, between(0.1, 1.2), between(0, 8), between(25, 90), (emitters, share, spread, available) => {
        const input = {
          ...check,
          emitters,
          load: watts(share * emitters.ratedOutput),
          waterSpread: kelvinDifference(spread),
          availableSupply: celsius(available),
        };
        const needed = ((): number | undefined => {
          try {
            return requiredSupply(input).requiredSupply;
          } catch {
            return undefined;
          }
        })();
        fc.pre(needed !== undefined && Math.abs(needed - available) > 1e-6);
        const { metShare, emittedHeat, findings } = checkEmitters(input);
        expect(findings.length).toBe((needed ?? 0) > available ? 1 : 0);
        expect(metShare).toBeLessThanOrEqual(1);
        const carried = (emittedHeat / input.load) * spread;
        const back = Math.max(20.01, available - carried);
        const given = emitterOutput({ emitters, emitterWater: water(available, back) }).emittedHeat;
        expect(Math.abs(given - emittedHeat)).toBeLessThan(1e-6 * emitters.ratedOutput);
      }),
    );
  });

  it('shows cooler water and a better COP for larger emitters and for a lower load', () => {
    const map = conditionMap({ mode: 'heating', points: grid(bilinear, [-5, 5, 15], [35, 45, 55]) });
    const { alternatives } = checkEmitters(check, { map, enteringFluid: celsius(-2) });
    const [asIs, quarter, half, twice, tenth, fifth] = alternatives;
    for (const [worse, better] of [
      [asIs, quarter],
      [quarter, half],
      [half, twice],
      [asIs, tenth],
      [tenth, fifth],
    ] as const) {
      expect(better?.requiredSupply).toBeLessThan(worse?.requiredSupply ?? 0);
      expect(better?.cop).toBeGreaterThan(worse?.cop ?? Infinity);
    }
    expect(asIs?.cop).toBe(map.at({ enteringFluid: celsius(-2), loadSide: asIs?.requiredSupply ?? celsius(0) }).cop);
    const far = checkEmitters({ ...check, load: kilowatts(14) }, { map, enteringFluid: celsius(-2) }).alternatives[0];
    expect(far).not.toHaveProperty('cop');
    expect(checkEmitters(check, { map, enteringFluid: celsius(-9) }).alternatives[0]).not.toHaveProperty('cop');
  });

  it('refuses bad input by name', () => {
    const emitters = { ...radiators, exponent: ratio(1.3), ratedWater: { ...water(75, 65), excessMean: 'logarithmic' } } as const;
    refuses<EmitterCheckInput>((input) => checkEmitters(input), emitterCheckInputShape, { ...check, emitters });
    expect(() => checkEmitters({ ...check, availableSupply: celsius(20) })).toThrow('availableSupply');
  });
});
